/** The cells of the data sheet as a record reads them, and their labels for people; formulas use names instead. */
import type { Measure } from "../specification/measures";
import { OLD_PICK_CHOICES, PICK_CHOICES, PICK_OF } from "../specification/pick-choices";
import { MOST_LOADS, readingsOfLoads } from "../specification/readings";
import { CELL_LINES, LANGUAGE_TAGS, WORD_LINE } from "./cell-rows";
import { LANGUAGE_CELL } from "../specification/text/language";
import { labelByName } from "./labels/label-by-name";
import { OLD_WORDS, type LoadResultName, type LoadWordName, type NumberName } from "./names";
import type { RemarkName, ResultName, WordName } from "./names";

export interface Cell<N extends string = string> {
  readonly name: N;
  /** Says what the cell is away from its place on the sheet. */
  readonly label: string;
  readonly measure: Measure;
  readonly choices?: readonly string[];
  /** The short names that sheets of an older version use instead of the choices. */
  readonly alsoReads?: readonly string[];
  /** The choices in each other language, in the order of `LANGUAGE_TAGS`, with a semicolon between them. */
  readonly elsewhere?: readonly string[];
}

/**
 * The cells of a text of lines. `cell-rows.ts` makes the lines from the list of names of the same group and from the
 * measures of the specification: `cell-rows.test.ts` compares the cells with both.
 */
const cellsOf = <N extends string>(lines: string): readonly Cell<N>[] =>
  lines.split("\n").map((line) => {
    const [name = "", label, measure, listed, ...elsewhere] = line.split("|");
    return {
      // The names of a group are in its lines.
      name: name as N,
      label: label || labelByName(name),
      // The specification has only measures.
      measure: (measure || "text") as Measure,
      choices: name === PICK_OF ? PICK_CHOICES : listed?.split(";"),
      alsoReads: name === PICK_OF ? OLD_PICK_CHOICES : undefined,
      elsewhere,
    };
  });

/** Every cell and column of the sheet, but the readings of the loads, by the groups of a record. */
export const CELL_GROUPS = {
  numbers: cellsOf<NumberName>(CELL_LINES.numbers),
  words: cellsOf<WordName>(CELL_LINES.words),
  results: cellsOf<ResultName>(CELL_LINES.results),
  remarks: cellsOf<RemarkName>(CELL_LINES.remarks),
  loadResults: cellsOf<LoadResultName>(CELL_LINES.loadResults),
  loadWords: cellsOf<LoadWordName>(CELL_LINES.loadWords),
  others: cellsOf(CELL_LINES.others),
};

/** All these cells. */
export const CELLS: readonly Cell[] = Object.values<readonly Cell[]>(CELL_GROUPS).flat();

/** A word of another language: its English word, the tag of the language, and the word itself. */
type Elsewhere = readonly [english: string, language: string | undefined, own: string];

/** The words of a cell in other languages, by the words in lower case. */
const wordsElsewhere = ({ choices = [], elsewhere = [] }: Cell): (readonly [string, Elsewhere])[] =>
  elsewhere.flatMap((words, language) =>
    words
      .split(";")
      .flatMap((word, index) =>
        word ? [[word.toLowerCase(), [choices[index] ?? word, LANGUAGE_TAGS[language], word]] as const] : [],
      ),
  );

const ELSEWHERE: ReadonlyMap<string, Elsewhere> = new Map([...CELLS, ...cellsOf(WORD_LINE)].flatMap(wordsElsewhere));

const foundElsewhere = (text: string): Elsewhere | undefined => ELSEWHERE.get(text.trim().toLowerCase());

/**
 * The English word of a list or a state, from its word in another language of a sheet, in any case; any other text is
 * returned unchanged.
 * @example englishWord("Fällt") // "fall"
 * @example englishWord("m2/a") // "m2/yr"
 */
export const englishWord = (text: string): string => foundElsewhere(text)?.[0] ?? text;

/**
 * The tag of the language of a word of a list, or of a word by which a formula asks; undefined for an English word, and
 * for any other text.
 * @example languageOfWord("Bemerkung") // "de"
 */
export const languageOfWord = (text: string): string | undefined => foundElsewhere(text)?.[1];

/**
 * The word in the language with this tag, by its English word in any case; a word that is the same in every language is
 * returned unchanged.
 * @example wordElsewhere("de", "Together") // "Zusammen"
 */
export function wordElsewhere(language: string, english: string): string {
  const small = english.toLowerCase();
  for (const [known, tag, own] of ELSEWHERE.values()) if (tag === language && known.toLowerCase() === small) return own;
  return english;
}

/** Cells without a list that hold its words: results that show a state, and the columns of the table of picks. */
const WITHOUT_LIST = [
  "load_branch",
  "load_method",
  "load_procedure",
  "curve_point",
  "test_state",
  "pick_load",
  "pick_before",
  "pick_after",
];

/** Names that a firm may add or that only older sheets have, with their measures. */
const EXTRA: readonly { readonly name: string; readonly label?: string; readonly measure: Measure }[] = [
  { name: "template_version", measure: "count" },
  { name: "load_number", measure: "count" },
  { name: "load_mass", measure: "mass" },
  { name: "override_of", measure: "text" },
  { name: "override_reason", measure: "text" },
  { name: "override_by", measure: "text" },
  ...OLD_WORDS.map((name) => ({ name, label: labelByName(name), measure: "text" as const })),
  { name: LANGUAGE_CELL, measure: "text" },
];

const inPlainLetters = (name: string): string => name.replaceAll("_", " ");

/** Every cell that a record is read from, by its name: also the readings of as many loads as a sheet can have. */
export const CELL_BY_NAME: ReadonlyMap<string, Cell> = new Map(
  [
    ...EXTRA.map((extra) => ({ label: inPlainLetters(extra.name), ...extra })),
    ...CELLS,
    ...readingsOfLoads(1, MOST_LOADS),
  ].map((cell) => [cell.name, cell]),
);

/** The English words of the list of a cell; none if it has no list, and for a unit. */
export const choicesOf = (name: string): readonly string[] => CELL_BY_NAME.get(name)?.choices ?? [];

/** True if the words of a cell are those of a list or of a state. */
export const hasWords = (name: string): boolean =>
  CELL_BY_NAME.get(name)?.choices !== undefined || WITHOUT_LIST.includes(name);

/**
 * The text of a cell as the program knows it: a word of a list or of a state in English.
 * @example textOf("drainage", "beidseitig") // "double"
 * @example textOf("project", "Feldkurve") // "Feldkurve"
 */
export const textOf = (name: string, text: string): string => (hasWords(name) ? englishWord(text) : text);

/**
 * The label of a cell in a sentence. A name that the sheet does not have is returned with spaces instead of
 * underscores.
 * @example labelOf("preconsolidation_low") // "Preconsolidation stress, not less than"
 */
export const labelOf = (name: string): string => CELL_BY_NAME.get(name)?.label ?? inPlainLetters(name);
