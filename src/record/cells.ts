/** The cells of the data sheet as a record reads them, and their labels for people; formulas use names instead. */
import type { Measure } from "../specification/measures";
import { MOST_LOADS, readingsOfLoads } from "../specification/readings";
import { CELL_ROWS, type CellRow } from "./cell-rows";
import { labelByName } from "./label-by-name";
import { OLD_WORDS } from "./names";

export interface Cell {
  readonly name: string;
  /** Says what the cell is away from its place on the sheet. */
  readonly label: string;
  readonly measure: Measure;
  readonly choices?: readonly string[];
  /** The short names that sheets of an older version use instead of the choices. */
  readonly alsoReads?: readonly string[];
}

const cellOf = ([name, label, measure = "text", choices, alsoReads]: CellRow): Cell => ({
  name,
  label: label || labelByName(name),
  measure,
  choices,
  alsoReads,
});

/** Every cell and column of the sheet, but the readings of the loads. */
export const CELLS: readonly Cell[] = Object.values<readonly CellRow[]>(CELL_ROWS).flat().map(cellOf);

const LABELS: ReadonlyMap<string, string> = new Map([
  ...[...CELLS, ...readingsOfLoads(1, MOST_LOADS)].map(({ name, label }) => [name, label] as const),
  ...OLD_WORDS.map((name) => [name, labelByName(name)] as const),
]);

/**
 * The label of a cell in a sentence. A name that the sheet does not have is returned with spaces instead of
 * underscores.
 * @example labelOf("preconsolidation_low") // "Preconsolidation stress, not less than"
 */
export const labelOf = (name: string): string => LABELS.get(name) ?? name.replaceAll("_", " ");
