/**
 * What a record knows of each cell of the data sheet, as plain data: the build of the worksheet functions runs this file
 * and bundles its values (`src/host/build/values-only.mjs`), so that the formulas and notes of the specification stay out.
 */
import { REQUIRED } from "../specification/required";
import { FIELDS_APART_FROM_READINGS } from "../specification/fields";
import { unitCellOf } from "../specification/measures";
import { ASKING_WORDS, everyWord, OTHER_LANGUAGES, STATES, TYPED_WORDS, wordIn } from "../specification/list-words";
import { PICK_OF } from "../specification/pick-choices";
import { labelByName } from "./labels/label-by-name";
import { labelsAlone } from "./labels/labels-alone";
import { LOAD_RESULTS, LOAD_WORDS, NUMBERS, REMARKS, RESULTS, WORDS } from "./names";

const LABELS = labelsAlone(FIELDS_APART_FROM_READINGS);

/** No word of a list has this sign; units have a slash. */
const BETWEEN_CHOICES = ";";

/** The cells with a unit: a record reads them by the table of units, and not by their choices. */
const UNIT_CELLS = new Set<string | undefined>(FIELDS_APART_FROM_READINGS.map(({ measure }) => unitCellOf(measure)));

const FIELDS = new Map(FIELDS_APART_FROM_READINGS.map((field) => [field.name, field]));

/** The words of a list in another language, in the same order; a word that is the same in English is left out. */
const wordsElsewhere = (choices: readonly string[]): string[] =>
  OTHER_LANGUAGES.map((language) => {
    const words = choices.map((word) => {
      const own = wordIn(language, word);
      return own === word ? "" : own;
    });
    return words.some((word) => word !== "") ? words.join(BETWEEN_CHOICES) : "";
  });

/** The line of a cell. Parts that follow from the name, and empty parts at the end, are left out. */
const lineOf = (name: string): string => {
  const field = FIELDS.get(name);
  if (!field) throw new Error(`the data sheet has no cell ${name}`);
  const { measure, choices = [] } = field;
  const label = LABELS.get(name) ?? "";
  const isUnit = UNIT_CELLS.has(name);
  const parts = [
    name,
    label === labelByName(name) ? "" : label,
    measure === "text" ? "" : measure,
    isUnit || name === PICK_OF ? "" : choices.join(BETWEEN_CHOICES),
    ...wordsElsewhere(isUnit ? [] : choices),
  ];
  const separators = [...parts.join("")].filter((letter) => letter === "\n" || letter === "|");
  if (separators.length > 0) throw new Error(`the cell ${name} has a letter that separates parts of its line`);
  return parts.join("|").replace(/\|+$/, "");
};

const linesOf = (names: readonly string[]): string => names.map(lineOf).join("\n");

const LISTED = new Set<string>([NUMBERS, WORDS, RESULTS, REMARKS, LOAD_RESULTS, LOAD_WORDS].flat());

/**
 * Every cell and column of the sheet, but the readings of the loads: a line for each, "name|label|measure|choices|choices in German".
 * Without a label, it is the name in plain letters; without a measure, it is "text". Choices have a semicolon between them.
 * `cells.ts` reads the lines. One text takes half the bytes of lists.
 */
export const CELL_LINES = {
  numbers: linesOf(NUMBERS),
  words: linesOf(WORDS),
  results: linesOf(RESULTS),
  remarks: linesOf(REMARKS),
  loadResults: linesOf(LOAD_RESULTS),
  loadWords: linesOf(LOAD_WORDS),
  others: linesOf([...FIELDS.keys()].filter((name) => !LISTED.has(name))),
};

/** The units that another language writes in its own way. */
const UNITS_ELSEWHERE = FIELDS_APART_FROM_READINGS.filter(({ name }) => UNIT_CELLS.has(name))
  .flatMap(({ choices = [] }) => choices)
  .filter((unit) => everyWord(unit).length > 1);

const WORDS_OF_NO_LIST = [...STATES, ...TYPED_WORDS, ...ASKING_WORDS, ...UNITS_ELSEWHERE];

/** The words of no list, as the line of a cell without a name. */
export const WORD_LINE = [
  ...["", "", ""],
  WORDS_OF_NO_LIST.join(BETWEEN_CHOICES),
  ...wordsElsewhere(WORDS_OF_NO_LIST),
].join("|");

/** The tags of the languages in the order of their words in a line. */
export const LANGUAGE_TAGS: readonly string[] = OTHER_LANGUAGES;

/** A cell that a report requires, or several of which one is enough; or a column that needs a value for each load. */
export type RequiredCell = readonly [string, ...string[]] | { readonly ofLoads: string };

/** What a report requires, in its order. */
export const REQUIRED_CELLS: readonly RequiredCell[] = REQUIRED.flatMap(({ needs, ofLoads = [] }): RequiredCell[] => [
  ...needs.flatMap((need): RequiredCell[] => {
    const [first, ...others] = typeof need === "string" ? [need] : need;
    return first === undefined ? [] : [[first, ...others]];
  }),
  ...ofLoads.map((name) => ({ ofLoads: name })),
]);
