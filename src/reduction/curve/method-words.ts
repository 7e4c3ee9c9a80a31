/**
 * The names of the methods of preconsolidation stress in words for people. The argument of a formula keeps the short
 * name.
 */
import { METHOD_WORDS } from "./methods/words";
import { METHOD_NAMES, type MethodName } from "./preconsolidation";

export { METHOD_WORDS };

/**
 * The method that a text names by its words or its short name, in any case; undefined if the text names none.
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
 * The short name of a row of the table of methods, from its short name or its words; any other text is returned
 * unchanged.
 * @example spreadRowNamed("Not less than") // "low"
 */
export function spreadRowNamed(label: string): string {
  const word = label.trim().toLowerCase();
  return (
    Object.entries(SPREAD_WORDS).find(([name, words]) => name === word || words.toLowerCase() === word)?.[0] ?? label
  );
}
