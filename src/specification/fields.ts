/** Lists every name of the data sheet with its meaning, for all code that reads a sheet by name. */
import { isSpill, isTable, type Field } from "./field";
import { LOADS, MOST_LOADS, readingsOfLoads } from "./readings";
import type { Measure } from "./measures";
import { ALL_PARTS } from "./parts";

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

/** The fields of the readings for the loads `first` to `last`. */
const readings = (first: number, last: number): NamedField[] =>
  readingsOfLoads(first, last).map((column) => ({ ...column, kind: "input", column: true }));

/** The fields of every sheet, whatever the number of its loads. */
export const FIELDS_APART_FROM_READINGS: readonly NamedField[] = ALL_PARTS.flatMap((part): NamedField[] => {
  if (isSpill(part)) return [{ ...part, measure: "text", kind: "result", column: true }];
  if (!isTable(part)) return [{ ...part, column: false }];
  return part.columns.flatMap(({ kind, startInput, ...column }): NamedField[] => [
    ...(startInput ? [{ ...column, ...startInput, kind: "input" as const, column: false }] : []),
    ...(kind === "label" ? [] : [{ ...column, kind, column: true }]),
  ]);
});

/**
 * The fields of a sheet with this number of loads. 0 means that the sheet does not number its loads: it gets the usual
 * number.
 */
export const fieldsFor = (loads: number): readonly NamedField[] => [
  ...FIELDS_APART_FROM_READINGS,
  ...readings(1, loads || LOADS),
];

/** The fields of a sheet with the usual number of loads. */
export const FIELDS = fieldsFor(LOADS);

/** The additional fields for the readings of a sheet with more loads. */
export const MORE_FIELDS: readonly NamedField[] = readings(LOADS + 1, MOST_LOADS);
