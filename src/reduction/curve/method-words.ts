/** The methods of preconsolidation stress in the trade's words, for people; a formula's argument keeps the short name. */
import { METHOD_WORDS } from "./methods/words";
import { METHOD_NAMES, type MethodName } from "./preconsolidation";

export { METHOD_WORDS };

/**
 * The method that a text calls by its words or its short name, in capitals or not; undefined where it calls none.
 * @example methodNamed("Pacheco Silva") // "pacheco_silva"
 */
export function methodNamed(text: string): MethodName | undefined {
  const word = text.trim().toLowerCase();
  return METHOD_NAMES.find((name) => name === word || METHOD_WORDS[name].toLowerCase() === word);
}

/** The rows of the table of methods in words, by their short names. */
export const SPREAD_WORDS: Readonly<Record<string, string>> = {
  ...METHOD_WORDS,
  median: "Median",
  spread: "Spread",
  low: "Not less than",
  high: "Not more than",
  verdict: "Together",
  remark: "Remark",
};

/**
 * The short name of a row of the table of methods, whether the sheet has that or the words for it; any other text as it is.
 * @example spreadRowNamed("Not less than") // "low"
 */
export function spreadRowNamed(label: string): string {
  const word = label.trim().toLowerCase();
  return (
    Object.entries(SPREAD_WORDS).find(([name, words]) => name === word || words.toLowerCase() === word)?.[0] ?? label
  );
}
