/**
 * The language of the pane. It is set once, before the first screen is loaded, because each module reads its texts when
 * it is loaded. Another choice takes effect when the pane is loaded again.
 */

import { keep, kept } from "./storage";

export const LANGUAGES = ["en", "de"] as const;

export type Language = (typeof LANGUAGES)[number];

/** The locale in which numbers are written. */
export const LOCALES: Readonly<Record<Language, string>> = { en: "en-US", de: "de-DE" };

/** The file in a language: "help.html" is "help-de.html" in German. */
export const fileIn = (file: string, language: Language): string =>
  language === "en" ? file : file.replace(/\.\w+$/, `-${language}$&`);

const KEY = "clayledger.language";

let current: Language = "en";

export const language = (): Language => current;

export function setLanguage(chosen: Language): void {
  current = chosen;
}

/** The language of the pane for a language tag such as "de-AT"; undefined if the pane does not have it. */
const known = (tag: string | null | undefined): Language | undefined =>
  LANGUAGES.find((one) => one === tag?.toLowerCase().split(/[-_]/)[0]);

/**
 * The language for the first tag that the pane has a language for. Pass the choice of the person, the language of the
 * host, and the languages of the browser.
 */
export const languageFor = (...tags: readonly (string | null | undefined)[]): Language =>
  tags.map(known).find((one) => one !== undefined) ?? "en";

/** The parameter of the address that contains the choice if the browser stores nothing. */
const QUERY = "language";

/**
 * The choice of the person: from the address ("?language=de"), otherwise from the storage of the browser; undefined if
 * there is none.
 */
export const keptLanguage = (query: string): Language | undefined =>
  known(new URLSearchParams(query).get(QUERY)) ?? known(kept(KEY));

/**
 * Stores a choice for the next start; undefined returns to the language of the host. Returns true if it could be
 * stored.
 */
export const keepLanguage = (chosen: Language | undefined): boolean => keep(KEY, chosen);

/** The address of the page with a choice in its query, or without one; the rest of the address stays. */
export function withLanguage(address: string, chosen: Language | undefined): string {
  const url = new URL(address);
  if (chosen) url.searchParams.set(QUERY, chosen);
  else if (url.searchParams.has(QUERY)) url.searchParams.delete(QUERY);
  else return address;
  return url.href;
}
