/** The cells of the data sheet as a record reads them, and their labels for people; formulas use names instead. */
import type { Measure } from "../specification/measures";
import { OLD_PICK_CHOICES, PICK_CHOICES, PICK_OF } from "../specification/pick-choices";
import { MOST_LOADS, readingsOfLoads } from "../specification/readings";
import { CELL_LINES } from "./cell-rows";
import { labelByName } from "./label-by-name";
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
}

/**
 * The cells of a text of lines. `cell-rows.ts` makes the lines from the list of names of the same group and from the
 * measures of the specification: `cell-rows.test.ts` compares the cells with both.
 */
const cellsOf = <N extends string>(lines: string): readonly Cell<N>[] =>
  lines.split("\n").map((line) => {
    const [name = "", label, measure, choices] = line.split("|");
    const isPick = name === PICK_OF;
    return {
      // The names of a group are in its lines.
      name: name as N,
      label: label || labelByName(name),
      // The specification has only measures.
      measure: (measure || "text") as Measure,
      choices: isPick ? PICK_CHOICES : choices?.split("/"),
      alsoReads: isPick ? OLD_PICK_CHOICES : undefined,
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

/** These cells and the readings of as many loads as a sheet can have. */
export const CELLS_AND_READINGS: readonly Cell[] = [...CELLS, ...readingsOfLoads(1, MOST_LOADS)];

const LABELS: ReadonlyMap<string, string> = new Map([
  ...CELLS_AND_READINGS.map(({ name, label }) => [name, label] as const),
  ...OLD_WORDS.map((name) => [name, labelByName(name)] as const),
]);

/**
 * The label of a cell in a sentence. A name that the sheet does not have is returned with spaces instead of
 * underscores.
 * @example labelOf("preconsolidation_low") // "Preconsolidation stress, not less than"
 */
export const labelOf = (name: string): string => LABELS.get(name) ?? name.replaceAll("_", " ");
