/**
 * What cells of a data sheet show in words, put into one language: for a report, or for a summary of sheets in several languages.
 */
import { LUNNE_NAMES } from "../reduction/curve/sample-quality";
import { COLLAPSE_NAMES } from "../reduction/wetting";
import { english, say, type Message } from "../reduction/message";
import { unitsOf } from "../reduction/units";
import { everyWord, isOneOf, OTHER_LANGUAGES, wordIn } from "../specification/list-words";
import { inFormula } from "../specification/sentences/told-formula";
import type { SheetLanguage } from "../specification/text/language";
import { choicesOf } from "./cells";
import { told } from "./told";

/** Words of cells for which there are others than the lists of the data sheet, by the names of the cells. */
const CHOICES: Readonly<Record<string, readonly Message[]>> = {
  load_branch: [say`loading`, say`unloading`, say`wetting`],
  swelling_method: [say`measured`, say`load back`, say`constant volume`, say`zero strain`],
  collapse_class: Object.values(COLLAPSE_NAMES),
  curve_point: [say`end`],
  quality_class: Object.values(LUNNE_NAMES),
};

/** The units of the cells whose units differ between languages. */
const UNITS_OF_TIME: Readonly<Record<string, readonly string[]>> = {
  cv_unit: unitsOf("cv"),
  conductivity_unit: unitsOf("conductivity"),
};

/** A word as cells of sheets of any language show it, and as it is shown in the wanted language. */
export interface ShownWord {
  readonly each: readonly string[];
  readonly own: string;
}

/** What a cell shows on a sheet of any language: the word of a list, or the answer of a worksheet function. */
const everyText = (choice: Message): string[] => [
  ...new Set([...everyWord(english(choice)), ...OTHER_LANGUAGES.map((language) => told(choice, language))]),
];

/**
 * The words that a cell of this name can show, of which any is another in the wanted language; `inWords` puts a message into that
 * language.
 */
export function shownWords(
  name: string,
  language: SheetLanguage,
  inWords: (choice: Message) => string = (choice) => told(choice, language),
): ShownWord[] {
  const messages = CHOICES[name];
  const words = messages
    ? messages.map((choice) => ({ each: everyText(choice), own: inWords(choice) }))
    : [...choicesOf(name), ...(UNITS_OF_TIME[name] ?? [])].map((choice) => ({
        each: everyWord(choice),
        own: wordIn(language, choice),
      }));
  return words.filter(({ each, own }) => each.some((one) => one !== own));
}

/** An expression for the word of a cell in the wanted language, whatever the language of the sheet; any other text is kept. */
export const wordedExpression = (reference: string, words: readonly ShownWord[]): string =>
  words.reduceRight(
    (otherwise, { each, own }) => `IF(${isOneOf(reference, each)},${inFormula(own)},${otherwise})`,
    reference,
  );

/** The same of a text that a cell showed. */
export const wordedText = (text: string, words: readonly ShownWord[]): string =>
  words.find(({ each }) => each.includes(text))?.own ?? text;
