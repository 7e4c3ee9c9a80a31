/**
 * The language of the pane. It is set once, before the first screen is loaded: words are bound as a module loads, so that
 * another choice takes effect when the pane is loaded again.
 */

import { keep, kept } from "./storage";

export const LANGUAGES = ["en", "de"] as const;

export type Language = (typeof LANGUAGES)[number];

/** How numbers are written. */
export const LOCALES: Readonly<Record<Language, string>> = { en: "en-US", de: "de-DE" };

const KEY = "clayledger.language";

let current: Language = "en";

export const language = (): Language => current;

export function setLanguage(chosen: Language): void {
  current = chosen;
}

/** A language tag ("de-AT") as a language that the pane has. */
const known = (tag: string | null | undefined): Language | undefined =>
  LANGUAGES.find((one) => one === tag?.toLowerCase().split(/[-_]/)[0]);

/** The first of the tags that the pane has a language for: what was chosen, what the host shows, what the browser asks for. */
export const languageFor = (...tags: readonly (string | null | undefined)[]): Language =>
  tags.map(known).find((one) => one !== undefined) ?? "en";

/** The query of the page's address that carries a choice where nothing may be kept. */
const QUERY = "language";

/** What was chosen: with the address ("?language=de"), else on this machine; undefined where nothing was. */
export const keptLanguage = (query: string): Language | undefined =>
  known(new URLSearchParams(query).get(QUERY)) ?? known(kept(KEY));

/** Keeps a choice for the next time; undefined goes back to the host's language. Says whether it could be kept. */
export const keepLanguage = (chosen: Language | undefined): boolean => keep(KEY, chosen);

/** The address of the page with a choice in its query, or without one; all else of it stays. */
export function withLanguage(address: string, chosen: Language | undefined): string {
  const url = new URL(address);
  if (chosen) url.searchParams.set(QUERY, chosen);
  else if (url.searchParams.has(QUERY)) url.searchParams.delete(QUERY);
  else return address;
  return url.href;
}
