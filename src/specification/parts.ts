/** The whole data sheet but its readings in one list, and its parts with their titles and the names of their cells. */
import { isTable, type Column, type Part } from "./field";
import { LOAD_PARTS, LOAD_TABLE } from "./load-table";
import { MOST_LOADS, readingsOf } from "./readings";
import { FORM, MISSING, REMARKS, RESULTS, SECTIONS, TYPED_REMARKS, type Section } from "./main-page";
import { PICK_TABLE } from "./pick-table";

/** Every field, table and spill of the sheet but the readings of its loads. */
export const ALL_PARTS: readonly Part[] = [
  ...SECTIONS.flatMap(({ panels }) => panels.flat()),
  MISSING,
  ...TYPED_REMARKS,
  ...REMARKS,
  LOAD_TABLE,
  PICK_TABLE,
];

export interface SheetPart {
  readonly title: string;
  readonly names: readonly string[];
}

/** The names of columns, and of the inputs in their start row. */
export const namesOfColumns = (columns: readonly Column[]): string[] =>
  columns.flatMap(({ name, startInput }) => [name, ...(startInput ? [startInput.name] : [])]);

export const namesOf = (parts: readonly Part[]): string[] =>
  parts.flatMap((part) => (isTable(part) ? namesOfColumns(part.columns) : [part.name]));

const READINGS = Array.from({ length: MOST_LOADS }, (_, index) => readingsOf(index + 1)).flat();

const ofSection = ({ title, panels }: Section): SheetPart => ({ title, names: namesOf(panels.flat()) });

/** In the order of the work: the form, the readings, what is worked out, and what is remarked. */
export const SHEET_PARTS: readonly SheetPart[] = [
  ...FORM.map(ofSection),
  { title: "Readings", names: READINGS.map(({ name }) => name) },
  ...LOAD_PARTS.map(({ title, columns }) => ({ title, names: namesOfColumns(columns) })),
  { title: "Picks by hand", names: namesOf([PICK_TABLE]) },
  ...RESULTS.map(ofSection),
  { title: "Remarks", names: namesOf([...TYPED_REMARKS, ...REMARKS]) },
];
