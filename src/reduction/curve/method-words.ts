/**
 * The names of the methods of preconsolidation stress in words for people. The argument of a formula keeps the short
 * name.
 */
import { englishOf, say, type Message } from "../message";

/** The names as messages. */
export const METHOD_SAID = {
  casagrande: say`Casagrande`,
  work: say`Work`,
  bilog: say`Bilogarithmic`,
  intersection: say`Intersection`,
  pacheco_silva: say`Pacheco Silva`,
  janbu: say`Janbu`,
} as const satisfies Readonly<Record<string, Message>>;

export type MethodName = keyof typeof METHOD_SAID;
/** TypeScript types Object.keys as strings; these are the names in the table above. */
export const METHOD_NAMES = Object.keys(METHOD_SAID) as MethodName[];

/** The names as texts of cells. */
export const METHOD_WORDS = englishOf(METHOD_SAID);

/**
 * The method that a text names by its words or its short name, in any case; undefined if the text names none.
 * @example methodNamed("Pacheco Silva") // "pacheco_silva"
 */
export function methodNamed(text: string): MethodName | undefined {
  const word = text.trim().toLowerCase();
  return METHOD_NAMES.find((name) => name === word || METHOD_WORDS[name].toLowerCase() === word);
}

/** The rows of the table of methods in words, by their short names. */
export const SPREAD_WORDS = {
  ...METHOD_WORDS,
  median: "Median",
  spread: "Spread",
  low: "Not less than",
  high: "Not more than",
  verdict: "Together",
  remark: "Remark",
};

export type SpreadRow = keyof typeof SPREAD_WORDS;

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
