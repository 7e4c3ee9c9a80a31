/**
 * The rows of the tables of adopted values: what stands in one, what the test gives beside it, and the cells that adopt
 * a value or take it back. This module does not use the workbook.
 */
import { cvWithin, givenFor } from "../../../checks/questions/by-hand";
import type { NamedValues, TestRecord } from "../../../record/record";
import { reduced } from "../../../record/reduced-test";
import {
  ADOPTABLE,
  ALL_ADOPTABLE,
  CV_RANGES,
  type AdoptableName,
  type CvRangeName,
} from "../../../specification/results/adoptable";
import { unitCellOf } from "../../../specification/measures";
import { isoDay } from "../../../workbook/day-number";
import type { CellValue, NamedColumns } from "../../../workbook/port";
import type { Results } from "./results";

export type AdoptedName = AdoptableName | CvRangeName;

export const ADOPTED_NAMES: readonly AdoptedName[] = ALL_ADOPTABLE.map(({ name }) => name);

/** The columns of an adoption on the sheet. */
interface Columns {
  readonly value: string;
  readonly by: string;
  readonly day: string;
  readonly reason: string;
  readonly from?: string;
  readonly to?: string;
}

const signed = (table: string) => ({ by: `${table}_by`, day: `${table}_day`, reason: `${table}_reason` });

const INDICES: Columns = { value: "adopted_value", ...signed("adopted") };
const CVS: Columns = {
  ...{ value: "adopted_cv", ...signed("adopted_cv") },
  ...{ from: "adopted_cv_from", to: "adopted_cv_to" },
};

const cvRow = (name: AdoptedName): number => CV_RANGES.findIndex((one) => one.name === name);

export const isCv = (name: AdoptedName): boolean => cvRow(name) >= 0;

const columnsOf = (name: AdoptedName): Columns => (isCv(name) ? CVS : INDICES);

const rowOf = (name: AdoptedName): number =>
  isCv(name) ? cvRow(name) : ADOPTABLE.findIndex((one) => one.name === name);

/** The names of the cells that an adoption of this quantity writes. */
export const cellNames = (name: AdoptedName): readonly string[] => Object.values(columnsOf(name));

/** What stands in the row of a quantity, by the name of the column. */
export type Standing = Readonly<Record<string, CellValue>>;

export const standingOf = (values: NamedValues, name: AdoptedName): Standing =>
  Object.fromEntries(cellNames(name).map((column) => [column, values[column]?.[rowOf(name)]?.[0] ?? ""]));

export const sameStanding = (one: Standing, other: Standing): boolean => JSON.stringify(one) === JSON.stringify(other);

const isBlank = (value: CellValue | undefined): boolean => String(value ?? "").trim() === "";

/** An adoption as it stands on the sheet; the day as yyyy-mm-dd or as it was typed. */
export interface Adoption {
  readonly value: CellValue;
  readonly by: string;
  readonly day: string;
  readonly reason: string;
}

/** The adoption in a row; undefined if its value, initials, day and reason are all blank. */
export function adoptionIn(standing: Standing, name: AdoptedName): Adoption | undefined {
  const { value, by, day, reason } = columnsOf(name);
  if ([value, by, day, reason].every((column) => isBlank(standing[column]))) return undefined;
  const said = (column: string): string => String(standing[column] ?? "").trim();
  const dayCell = standing[day];
  return {
    value: standing[value] ?? "",
    by: said(by),
    day: typeof dayCell === "number" ? isoDay(dayCell) : said(day),
    reason: said(reason),
  };
}

/** The stresses typed in the row of a cv, those that are not blank. */
export const stressesIn = (standing: Standing): readonly CellValue[] =>
  ["adopted_cv_from", "adopted_cv_to"].flatMap((column) => {
    const value = standing[column];
    return value === undefined || isBlank(value) ? [] : [value];
  });

const numberAt = (values: NamedValues, name: string, row: number): number | undefined => {
  const value = values[name]?.[row]?.[0];
  return typeof value === "number" ? value : undefined;
};

/** What the sheet has for a quantity beside what is typed in the pane; numbers in the units of the sheet. */
export interface AdoptRow {
  readonly name: AdoptedName;
  /** Cells without a name on the sheet. If there is one, nothing can be adopted. */
  readonly missing: readonly string[];
  readonly standing: Standing;
  readonly constructed?: number;
  /** The stresses of a cv that the sheet uses now. */
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  readonly stressUnit: string;
}

export function adoptRow(values: NamedValues, name: AdoptedName): AdoptRow {
  const row = rowOf(name);
  const word = (cell: string | undefined): string => (cell ? String(values[cell]?.[0]?.[0] ?? "").trim() : "");
  const measure = ALL_ADOPTABLE.find((one) => one.name === name)?.measure;
  return {
    name,
    missing: cellNames(name).filter((column) => (values[column]?.length ?? 0) <= row),
    standing: standingOf(values, name),
    constructed: numberAt(values, isCv(name) ? "adopted_cv_constructed" : "adopted_constructed", row),
    ...(isCv(name) && {
      low: numberAt(values, "adopted_cv_low", row),
      high: numberAt(values, "adopted_cv_high", row),
    }),
    unit: word(measure && unitCellOf(measure)),
    stressUnit: word("stress_unit"),
  };
}

export type Range = readonly [least: number, greatest: number];

/**
 * The range that a value is held against, as the checks do: the methods' stresses, the slopes of the steps, C alpha of the loads, cv of
 * the loads that end between the stresses. If there is none, it is the value of the constructions alone.
 */
export function rangeGiven(
  { name, constructed, low, high }: AdoptRow,
  values: NamedValues,
  record: TestRecord,
  methods: Results["methods"],
  stresses: { readonly from?: number; readonly to?: number } = {},
): Range | undefined {
  const { from = low, to = high } = stresses;
  const given = (): readonly number[] => {
    if (name === "preconsolidation_stress") return methods ? [methods.least, methods.greatest] : [];
    const index = ADOPTABLE.find((one) => one.name === name)?.name;
    if (index) return givenFor(index, record, reduced(record));
    if (from === undefined || to === undefined) return [];
    const loads = (values.load_stress ?? []).map((_, row) => ({
      stress: numberAt(values, "load_stress", row),
      cv: numberAt(values, "cv_chosen", row),
    }));
    return cvWithin(loads, from, to);
  };
  const found = given();
  if (found.length > 0) return [Math.min(...found), Math.max(...found)];
  return constructed === undefined ? undefined : [constructed, constructed];
}

export interface Adopting {
  readonly value: number;
  /** Stresses that were typed; undefined leaves the cells as they are. */
  readonly from?: number;
  readonly to?: number;
  readonly reason: string;
  readonly by: string;
  /** The number of the day in a cell. */
  readonly day: number;
}

/** Puts each value into the row of the quantity; undefined leaves a cell as it is. */
function inRow(name: AdoptedName, cells: readonly (readonly [string | undefined, CellValue | undefined])[]) {
  const above = new Array<null>(rowOf(name)).fill(null);
  return Object.fromEntries(
    cells.flatMap(([column, value]): [string, NamedColumns[string]][] =>
      column === undefined || value === undefined ? [] : [[column, [...above, value]]],
    ),
  );
}

/** The cells that adopt a value. A blank reason clears the reason of an earlier value. */
export function cellsToAdopt(name: AdoptedName, { value, from, to, reason, by, day }: Adopting): NamedColumns {
  const columns = columnsOf(name);
  return inRow(name, [
    [columns.value, value],
    [columns.by, by],
    [columns.day, day],
    [columns.reason, reason],
    [columns.from, from],
    [columns.to, to],
  ]);
}

/** The cells that take an adoption back; typed stresses stay, because they bound what the loads give too. */
export function cellsToTakeBack(name: AdoptedName): NamedColumns {
  const { value, by, day, reason } = columnsOf(name);
  return inRow(
    name,
    [value, by, day, reason].map((column) => [column, ""] as const),
  );
}

/** Whether writing the cells would replace something that stands in the row. */
export const replaces = (cells: NamedColumns, standing: Standing): boolean =>
  Object.keys(cells).some((column) => !isBlank(standing[column]));

/** The names whose cells are blank: a value goes into them only if they are still blank. */
export const blankAmong = (cells: NamedColumns, standing: Standing): readonly string[] =>
  Object.keys(cells).filter((column) => isBlank(standing[column]));
