/**
 * The words of lists, and of states that formulas show, in the languages of a sheet. The program knows the English words;
 * formulas take the words of every language, because a person may paste rows of another sheet.
 */
import { choices as german } from "./text/de/choices";
import { SHEET_LANGUAGES, type SheetLanguage } from "./text/language";

/** The words of each language but English, by the English words. */
const WORDS: Readonly<Record<Exclude<SheetLanguage, "en">, ReadonlyMap<string, string>>> = {
  de: new Map(Object.entries(german)),
};

/** The languages of a sheet other than English. */
export const OTHER_LANGUAGES = SHEET_LANGUAGES.filter((language) => language !== "en");

/** The states that formulas show and others compare, by the cells that show them; load_method and load_procedure show words of lists. */
export const STATES = ["loading", "unloading", "end", "running", "over"] as const;

/** The words that stand in the table of picks without a list. */
export const TYPED_WORDS = ["curve", "automatic", "none"] as const;

/**
 * The words by which a formula asks a worksheet function for texts: an item that is a text, where the reason of a refusal
 * stands, what a table shows, and the language itself. The answer is in the language of the word.
 */
export const ASKING_WORDS = [
  ...["remark", "class", "verdict", "largest", "soil", "from"],
  ...["error", "words"],
  ...["all", "open"],
  "English",
  // Rows of the table of methods in words.
  ...["Spread", "Not less than", "Not more than", "Together"],
] as const;

/**
 * The word of a list in the language of a sheet, by its English word; names and units are the same in every language.
 * @example wordIn("de", "fall") // "fällt"
 * @example wordIn("de", "kPa") // "kPa"
 */
export const wordIn = (language: SheetLanguage, english: string): string =>
  language === "en" ? english : (WORDS[language].get(english) ?? english);

/** A word in every language of a sheet, English first, each once: formulas compare "ring" and "Ring" as equal. */
export function everyWord(english: string): string[] {
  const words = [english, ...OTHER_LANGUAGES.map((language) => wordIn(language, english))];
  const small = words.map((word) => word.toLowerCase());
  return words.filter((_, index) => small.indexOf(small[index] ?? "") === index);
}

/**
 * A condition of a formula: the cell, or the expression, shows this word in any language.
 * @example isWord("{dial_sense}", "fall") // OR({dial_sense}="fall",{dial_sense}="fällt")
 */
export const isWord = (cell: string, ...english: readonly string[]): string =>
  isOneOf(cell, english.flatMap(everyWord));

/** A condition of a formula: the cell, or the expression, shows one of these texts. */
export function isOneOf(cell: string, texts: readonly string[]): string {
  const each = texts.map((text) => `${cell}="${text}"`);
  return each.length === 1 ? each.join("") : `OR(${each.join(",")})`;
}

/** As `isWord`, of each cell of a column: 1 where the cell has one of the words, otherwise 0. A factor needs brackets around it. */
export const haveWord = (cells: string, ...english: readonly string[]): string =>
  english
    .flatMap(everyWord)
    .map((word) => `(${cells}="${word}")`)
    .join("+");

/** A condition of a formula: a cell of the column shows this word in any language. */
export const hasWord = (cells: string, english: string): string =>
  `${everyWord(english)
    .map((word) => `IFERROR(MATCH("${word}",${cells},0),0)`)
    .join("+")}>0`;

/** A text of a formula that is a word of a list in the language of the sheet: "<fall>" until `formulaIn` puts it there. */
export const shownWord = (english: string): string => `"<${english}>"`;

/** The English word of a text "<fall>"; undefined for any other text. */
export const wordShown = (text: string): string | undefined => /^<(.+)>$/.exec(text)?.[1];
