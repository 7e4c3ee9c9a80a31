/**
 * The language of the pane. It is set once, before the first screen is loaded: words are bound as a module loads, so that
 * another choice takes effect when the pane is loaded again.
 */

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

/** Where a choice is kept, if the browser allows it: in a frame of another's page it may not, and storage itself throws. */
function storage(): Storage | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}

/** The query of the page's address that carries a choice where nothing may be kept. */
const QUERY = "language";

/** What was chosen: with the address ("?language=de"), else on this machine; undefined where nothing was. */
export function keptLanguage(query: string): Language | undefined {
  try {
    return known(new URLSearchParams(query).get(QUERY)) ?? known(storage()?.getItem(KEY));
  } catch {
    return undefined;
  }
}

/** Keeps a choice for the next time; undefined goes back to the host's language. Says whether it could be kept. */
export function keepLanguage(chosen: Language | undefined): boolean {
  const kept = storage();
  if (!kept) return false;
  try {
    if (chosen) kept.setItem(KEY, chosen);
    else kept.removeItem(KEY);
    return true;
  } catch {
    return false;
  }
}

/** The address of the page with a choice in its query, or without one; all else of it stays. */
export function withLanguage(address: string, chosen: Language | undefined): string {
  const url = new URL(address);
  if (chosen) url.searchParams.set(QUERY, chosen);
  else if (url.searchParams.has(QUERY)) url.searchParams.delete(QUERY);
  else return address;
  return url.href;
}
