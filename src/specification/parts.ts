/** The parts of the data sheet, each with its title on the sheet and the names of its cells. */
import type { Field, Spill, Table } from "./field";
import { LOAD_PARTS, MOST_LOADS, readingsOf } from "./load-table";
import { FORM, REMARKS, RESULTS, TYPED_REMARKS, type Section } from "./main-page";
import { PICK_TABLE } from "./pick-table";

export interface SheetPart {
  readonly title: string;
  readonly names: readonly string[];
}

const namesOf = (parts: readonly (Field | Table | Spill)[]): string[] =>
  parts.flatMap((part) =>
    "columns" in part
      ? part.columns.flatMap(({ name, startInput }) => [name, ...(startInput ? [startInput.name] : [])])
      : [part.name],
  );

const READINGS = Array.from({ length: MOST_LOADS }, (_, index) => readingsOf(index + 1)).flat();

const ofSection = ({ title, panels }: Section): SheetPart => ({ title, names: namesOf(panels.flat()) });

/** In the order of the work: the form, the readings, what is worked out, and what is remarked. */
export const SHEET_PARTS: readonly SheetPart[] = [
  ...FORM.map(ofSection),
  { title: "Readings", names: READINGS.map(({ name }) => name) },
  ...LOAD_PARTS.map(({ title, columns }) => ({ title, names: namesOf([{ columns, rows: 0 }]) })),
  { title: "Picks by hand", names: namesOf([PICK_TABLE]) },
  ...RESULTS.map(ofSection),
  { title: "Remarks", names: namesOf([...TYPED_REMARKS, ...REMARKS]) },
];
