/** Lists every name of the data sheet with its meaning, for all code that reads a sheet by name. */
import type { Field } from "./field";
import { LOAD_TABLE, LOADS, MOST_LOADS, readingsOf } from "./load-table";
import { MISSING, REMARKS, SECTIONS, TYPED_REMARKS } from "./main-page";
import type { Measure } from "./measures";
import { PICK_TABLE } from "./pick-table";

export interface NamedField {
  readonly name: string;
  readonly label: string;
  readonly measure: Measure;
  readonly kind: Field["kind"];
  readonly note?: string;
  readonly choices?: readonly string[];
  readonly alsoReads?: readonly string[];
  /** True if the name covers a column of cells. */
  readonly column: boolean;
}

const single = (field: Field): NamedField => ({ ...field, column: false });

const parts = [
  ...SECTIONS.flatMap(({ panels }) => panels.flat()),
  MISSING,
  ...TYPED_REMARKS,
  ...REMARKS,
  LOAD_TABLE,
  PICK_TABLE,
];

/** The fields of the readings for the loads `first` to `last`. */
const readings = (first: number, last: number): NamedField[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => readingsOf(first + index))
    .flat()
    .map((column) => ({ ...column, kind: "input", column: true }));

/** The fields of a sheet with the usual number of loads. */
export const FIELDS: readonly NamedField[] = [
  ...parts.flatMap((part) =>
    "spills" in part
      ? [{ ...part, measure: "text" as const, kind: "result" as const, column: true }]
      : "columns" in part
        ? part.columns.flatMap(({ kind, startInput, ...column }): NamedField[] => [
            ...(startInput ? [{ ...column, ...startInput, kind: "input" as const, column: false }] : []),
            ...(kind === "label" ? [] : [{ ...column, kind, column: true }]),
          ])
        : [single(part)],
  ),
  ...readings(1, LOADS),
];

/** The additional fields for the readings of a sheet with more loads. */
export const MORE_FIELDS: readonly NamedField[] = readings(LOADS + 1, MOST_LOADS);

const READINGS_OF_USUAL = new Set(readings(1, LOADS).map(({ name }) => name));
const ALL_LOADS = FIELDS.filter(({ name }) => !READINGS_OF_USUAL.has(name));

/**
 * The fields of a sheet with this number of loads. 0 means that the sheet does not number its loads: it gets the usual
 * number.
 */
export const fieldsFor = (loads: number): readonly NamedField[] => [...ALL_LOADS, ...readings(1, loads || LOADS)];
