/** Every name of the data sheet with what it means, for whoever reads a sheet by name. */
import type { Field } from "./field";
import { LOAD_TABLE, LOADS, readingsOf } from "./load-table";
import { REMARKS, SECTIONS } from "./main-page";
import type { Measure } from "./measures";

export interface NamedField {
  readonly name: string;
  readonly label: string;
  readonly measure: Measure;
  readonly kind: Field["kind"];
  readonly note?: string;
  readonly choices?: readonly string[];
  /** Whether the name covers a column of cells. */
  readonly column: boolean;
}

const single = (field: Field): NamedField => ({ ...field, column: false });

const parts = [...SECTIONS.flatMap(({ panels }) => panels.flat()), ...REMARKS, LOAD_TABLE];

const readings = Array.from({ length: LOADS }, (_, index) => readingsOf(index + 1)).flat();

export const FIELDS: readonly NamedField[] = [
  ...parts.flatMap((part) =>
    "spills" in part
      ? [{ ...part, measure: "text" as const, kind: "result" as const, column: true }]
      : "columns" in part
        ? part.columns.flatMap(({ kind, ...column }) => (kind === "label" ? [] : [{ ...column, kind, column: true }]))
        : [single(part)],
  ),
  ...readings.map((column): NamedField => ({ ...column, kind: "input", column: true })),
];
