/**
 * The deflection sets of a register: one row for each stress of a set, with its deflections on loading and on unloading.
 * A data sheet that names a set takes them into its deflection table.
 */
import { convert, unitNamed } from "../reduction/units";
import { DEFLECTION } from "../specification/form/apparatus";
import { LENGTH_UNITS, STRESS_UNITS } from "../specification/form/unit-choices";
import type { CellValue } from "../workbook/port";
import { referenceTo } from "../workbook/references";
import type { NamedValues, TestRecord } from "./record";
import { agree, REGISTER_STRESS_UNIT, REGISTER_UNIT, same, word } from "./register-cells";

/** The number of the set and the number of its row, as "D-1/3": a formula finds a row by it. */
export const SET_KEY = "register_set_key";
export const SET_NAMES = [
  "register_set",
  "register_set_stress",
  "register_set_loading",
  "register_set_unloading",
] as const;
export const SET_NUMBER = SET_NAMES[0];

/** A row of a set; stress in kPa, deflections in mm. */
export interface SetRow {
  readonly set: string;
  readonly stress: number;
  readonly loading?: number;
  readonly unloading?: number;
}

/** The columns of the deflection table of the data sheet, with those of a set. */
const COLUMNS = [
  { name: "apparatus_stress", of: "stress", column: "register_set_stress" },
  { name: "apparatus_loading", of: "loading", column: "register_set_loading" },
  { name: "apparatus_unloading", of: "unloading", column: "register_set_unloading" },
] as const;
/** The columns of the data sheet, in its units, from the top; "" clears a cell. */
export type DeflectionColumns = Readonly<Record<(typeof COLUMNS)[number]["name"], readonly CellValue[]>>;

/** The rows of the sets that have a number, a stress above zero and a deflection; none without both units. */
export function readSets(values: NamedValues): readonly SetRow[] {
  const cell = (name: string, row = 0): CellValue => values[name]?.[row]?.[0] ?? "";
  const length = unitNamed(word(cell(REGISTER_UNIT)), LENGTH_UNITS);
  const stress = unitNamed(word(cell(REGISTER_STRESS_UNIT)), STRESS_UNITS);
  if (length === undefined || stress === undefined) return [];
  const deflection = (name: string, row: number): number | undefined => {
    const typed = cell(name, row);
    return typeof typed === "number" ? convert(typed, "length", length, "mm") : undefined;
  };
  return (values[SET_NUMBER] ?? []).flatMap(([number], row): SetRow[] => {
    const at = cell("register_set_stress", row);
    const loading = deflection("register_set_loading", row);
    const unloading = deflection("register_set_unloading", row);
    if (word(number) === "" || typeof at !== "number" || !(at > 0)) return [];
    if (loading === undefined && unloading === undefined) return [];
    return [{ set: word(number), stress: convert(at, "stress", stress, "kPa"), loading, unloading }];
  });
}

/** The deflection table of a data sheet beside the set that the sheet names. */
export interface TableLookup {
  /** How many rows the set has. */
  readonly registered: number;
  /** How many rows of the data sheet are filled. */
  readonly held: number;
  readonly state: "blank" | "same" | "differs";
  readonly table: DeflectionColumns;
}

/** A number in the unit of the sheet, to the twelve digits that a conversion keeps. */
const rounded = (value: number): number => Number(value.toPrecision(12));

/**
 * The deflection table for the set of a data sheet; undefined if the register has no row of the set, or more rows than
 * the table of the sheet.
 */
export function tableLookup(
  record: TestRecord,
  values: NamedValues,
  number: string,
  sets: readonly SetRow[],
): TableLookup | undefined {
  const rows = sets.filter(({ set }) => same(set, number));
  const length = unitNamed(record.words.length_unit ?? "", LENGTH_UNITS) ?? "mm";
  const stress = unitNamed(record.words.stress_unit ?? "", STRESS_UNITS) ?? "kPa";
  const room = values.apparatus_stress?.length ?? DEFLECTION.rows;
  if (rows.length === 0 || rows.length > room) return undefined;
  const inSheet = (row: SetRow | undefined, of: (typeof COLUMNS)[number]["of"]): CellValue => {
    const value = row?.[of];
    if (value === undefined) return "";
    return rounded(of === "stress" ? convert(value, "stress", "kPa", stress) : convert(value, "length", "mm", length));
  };
  const column = (of: (typeof COLUMNS)[number]["of"]): CellValue[] =>
    Array.from({ length: room }, (_, row) => inSheet(rows[row], of));
  const table: DeflectionColumns = {
    apparatus_stress: column("stress"),
    apparatus_loading: column("loading"),
    apparatus_unloading: column("unloading"),
  };
  const held = (name: keyof DeflectionColumns, row: number): CellValue => values[name]?.[row]?.[0] ?? "";
  const filled = COLUMNS.map(({ name }) => table[name].filter((_, row) => held(name, row) !== "").length);
  const isSame = COLUMNS.every(({ name }) => table[name].every((value, row) => agree(held(name, row), value)));
  return {
    registered: rows.length,
    held: Math.max(...filled),
    state: isSame ? "same" : filled.every((count) => count === 0) ? "blank" : "differs",
    table,
  };
}

const NUMBER = "{deflection_set}";

/** The rows of the set in the register; the formulas keep what the sheet had unless there are 1 to `DEFLECTION.rows`. */
const rowsOf = (register: string): string => `COUNTIF(${referenceTo(SET_NUMBER, register)},${NUMBER})`;

/** The live formulas of the deflection table, by column from the top. */
export function liveTable(register: string, table: DeflectionColumns): Readonly<Record<string, string[]>> {
  const of = (name: string): string => referenceTo(name, register);
  const isThere = `AND(${rowsOf(register)}>0,${rowsOf(register)}<=${DEFLECTION.rows})`;
  const formula = (column: string, row: number, held: CellValue): string => {
    const value = `INDEX(${of(column)},MATCH(${NUMBER}&"/${row + 1}",${of(SET_KEY)},0))`;
    const [from, to] =
      column === "register_set_stress"
        ? [of(REGISTER_STRESS_UNIT), "{stress_unit}"]
        : [of(REGISTER_UNIT), "{length_unit}"];
    const kept = typeof held === "number" ? String(held) : '""';
    return `=IF(${isThere},IFERROR(IF(${value}="","",CLAY.CONVERT_UNIT(${value},${from},${to})),""),${kept})`;
  };
  return Object.fromEntries(
    COLUMNS.map(({ name, column }) => [name, table[name].map((held, row) => formula(column, row, held))]),
  );
}

/** What a formula says of the set that the register does not have once, or with no or too many rows. */
export const setState = (register: string, count: string): string =>
  `IF(${NUMBER}="","",IF(${count}=0,"deflection set "&${NUMBER}&" is not in the register: its values were kept; ",` +
  `IF(${count}>1,"deflection set "&${NUMBER}&" stands in several rows of the register: its values were kept; ","")&` +
  `IF(${rowsOf(register)}=0,"deflection set "&${NUMBER}&" has no deflections in the register: the table was kept; ","")&` +
  `IF(${rowsOf(register)}>${DEFLECTION.rows},"deflection set "&${NUMBER}&" has more than ${DEFLECTION.rows} rows: the table was kept; ","")))`;
