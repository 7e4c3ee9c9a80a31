/** The parts of the data sheet, each with its title on the sheet and the names of its cells. */
import type { Field, Spill, Table } from "./field";
import { LOAD_PARTS, MOST_LOADS, readingsOf } from "./load-table";
import { REMARKS, SECTIONS } from "./main-page";
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

export const SHEET_PARTS: readonly SheetPart[] = [
  ...SECTIONS.map(({ title, panels }) => ({ title, names: namesOf(panels.flat()) })),
  { title: "Remarks", names: namesOf(REMARKS) },
  ...LOAD_PARTS.map(({ title, columns }) => ({ title, names: columns.map(({ name }) => name) })),
  { title: "Readings", names: READINGS.map(({ name }) => name) },
  { title: "Picks by hand", names: namesOf([PICK_TABLE]) },
];
