/**
 * The words of a data sheet in one language. The specification is English; each other language has tables of the same
 * shape in a folder of its own, whose keys are the English texts. `test/specification/text.test.ts` names every text
 * that a language lacks.
 */
import { english, type Value } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import type { HostWords } from "../../workbook/port";
import { CHECKED_INPUTS, limitsIn } from "../head/impossible";
import type { Limits } from "../measures";
import { wordIn, wordShown } from "../list-words";
import { ALL_ADOPTABLE } from "../results/adoptable";
import { numberWithin } from "../sentences/of-head";
import { de } from "./de";
import { en } from "./en";
import type { SheetLanguage } from "./language";

/** Stands between project, boring, sample and specimen where they share a line. */
export const BETWEEN = "  |  ";

type Table = Readonly<Record<string, string>>;

export interface SheetWords {
  readonly language: SheetLanguage;
  readonly decimalSign: "." | ",";
  /** Titles, headings of columns, units and lines of text. */
  readonly titles: Table;
  readonly labels: Table;
  readonly notes: Table;
  /** The texts that formulas show. */
  readonly formulas: Table;
  /** What is typed into the demonstration, by the names of its cells. */
  readonly demo: Table;
  /** Texts of the sheets beside the data sheet. */
  readonly beside: Table;
  /** The words that the host shows of the sheet. */
  readonly host: HostWords;
  /** "a number greater than 0 and not more than 60" */
  readonly within: (limits: Limits) => string;
  /** The sentence that refuses an entry: what the cell is called, and what it takes. */
  readonly enterNumber: (called: string, within: string) => string;
  /** What to enter for a load that was taken off; it follows the sentence that refuses a 0. */
  readonly takenOff: string;
  readonly enterDate: (called: string, isMoment: boolean) => string;
}

const WORDS: Readonly<Record<SheetLanguage, SheetWords>> = { en, de };

export const wordsOf = (language: SheetLanguage): SheetWords => WORDS[language];

type Values = readonly (string | number)[];

/** A text with values in the places {0}, {1}, ... */
const filled = (text: string, values: Values): string =>
  text.replace(/\{(\d)\}/g, (_, index) => String(values[Number(index)] ?? ""));

/** A title of the data sheet. */
export const titleIn = ({ titles }: SheetWords, text: string, ...values: Values): string =>
  filled(titles[text] ?? text, values);

/** A text of a sheet beside the data sheet. */
export const besideIn = ({ beside, titles }: SheetWords, text: string, ...values: Values): string =>
  filled(beside[text] ?? titles[text] ?? text, values);

/** Spaces before a label set it off below the label above it. */
const INDENT = /^ */;

/** The numbered labels, such as "Times of load 7". */
const NUMBERED = /\d+$/;

export function labelIn({ labels }: SheetWords, label: string): string {
  const [indent = ""] = INDENT.exec(label) ?? [];
  const own = label.trim();
  const [number] = NUMBERED.exec(own) ?? [];
  const numbered = number === undefined ? undefined : labels[own.replace(NUMBERED, "{0}")]?.replace("{0}", number);
  const found = labels[label] ?? labels[own] ?? numbered ?? own;
  return `${indent}${found.trimStart()}`;
}

export const noteIn = ({ notes }: SheetWords, note: string | undefined): string | undefined =>
  note === undefined ? undefined : (notes[note] ?? note);

/** The words of a list, and the word that stands in its cell at the start. */
export const choicesIn = <T extends { readonly choices?: readonly string[]; readonly value?: unknown }>(
  { language }: SheetWords,
  { choices, value }: T,
): { readonly choices?: readonly string[]; readonly value?: string } => ({
  ...(choices && { choices: choices.map((word) => wordIn(language, word)) }),
  ...(choices && typeof value === "string" && { value: wordIn(language, value) }),
});

const { numbers, columns, words: choices, classes, cvColumns, ofLoad } = CHECKED_INPUTS;

/** The limits of entries, by the part of the English sentence that asks for a number: ": enter a number. ". */
const LIMITS_BY_PART: ReadonlyMap<string, Limits> = new Map(
  [...numbers, ...columns, ...classes, ...cvColumns].map((input) => {
    const limits = limitsIn(input);
    return [`: enter ${english(numberWithin(limits))}. `, limits];
  }),
);

/** The texts that begin a sentence with the label of a cell: the label, and what follows it in English. */
const BEGUN_BY_LABEL: ReadonlyMap<string, { readonly label: string; readonly end: string }> = new Map(
  [
    ...[...numbers, ...columns, ...choices, ...classes, ...cvColumns, ofLoad].map(({ label }) => ({
      label,
      end: ", ",
    })),
    ...ALL_ADOPTABLE.map(({ label }) => ({ label, end: " adopted: " })),
  ].map((begun) => [`${begun.label.trim()}${begun.end}`, begun]),
);

/** The text of a formula; a text that the table lacks is an argument of a function or a word that is compared, and stays. */
export function textInFormula(words: SheetWords, text: string): string {
  const word = wordShown(text);
  if (word !== undefined) return wordIn(words.language, word);
  if (words.language === "en") return text;
  const found = words.formulas[text];
  if (found !== undefined) return found;
  const limits = LIMITS_BY_PART.get(text);
  if (limits) return (words.formulas[": enter {0}. "] ?? ": enter {0}. ").replace("{0}", words.within(limits));
  const begun = BEGUN_BY_LABEL.get(text);
  return begun ? labelIn(words, begun.label).trim() + (words.formulas[`{0}${begun.end}`] ?? begun.end) : text;
}

/** A formula with the texts that it shows in the language of the sheet. */
export const formulaIn = (words: SheetWords, formula: string): string =>
  formula.replace(/"((?:[^"]|"")*)"/g, (_, text: string) => `"${textInFormula(words, text)}"`);

/** What may follow on a sentence, or on the name of an input, in a text of a formula. */
const ENDS = ["; ", " ", ", "];

/** A part of a sentence that stands between values, or at one of its ends. */
function partOnSheet({ formulas }: SheetWords, part: string): string {
  const end = ENDS.find((one) => formulas[part + one] !== undefined) ?? "";
  return formulas[part] ?? formulas[`{0}${part}`] ?? formulas[part + end]?.slice(0, -end.length) ?? part;
}

/** A sentence of the sheet's own as its formulas show it. A label stands in the language of the sheet. */
export function shownOnSheet(words: SheetWords, value: Value): string {
  if (typeof value === "number" || "digits" in value) return english(value);
  if ("verbatim" in value) return value.cell === undefined ? value.verbatim : labelIn(words, value.verbatim).trim();
  if ("listed" in value) return value.listed.map((one) => shownOnSheet(words, one)).join(value.between);
  return value.said
    .map(
      (part, index) => (index > 0 ? shownOnSheet(words, nth(value.values, index - 1)) : "") + partOnSheet(words, part),
    )
    .join("");
}
