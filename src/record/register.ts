/**
 * Reads a register of equipment from a sheet of the workbook or of a file. It has one row per ring, frame, dial, balance
 * or deflection set. Lengths have the unit that the register names, masses are in grams, days are day numbers.
 */
import { convert, unitNamed } from "../reduction/units";
import { everyWord, haveWord } from "../specification/list-words";
import { LENGTH_UNITS } from "../specification/form/unit-choices";
import { inFormula } from "../specification/sentences/told-formula";
import type { CellValue } from "../workbook/port";
import { referenceTo } from "../workbook/references";
import { isoDay } from "../workbook/day-number";
import type { NamedValues, TestRecord } from "./record";
import { agree, REGISTER_UNIT, same, word } from "./register-cells";
import { setState, tableLookup, type DeflectionColumns, type SetRow } from "./register-sets";

export const EQUIPMENT = ["ring", "frame", "dial", "balance", "deflection set"] as const;
export type Equipment = (typeof EQUIPMENT)[number];
/** The kinds of a row: equipment that a data sheet names, or a mass of a frame's hanger. */
export const REGISTER_KINDS = [...EQUIPMENT, "mass"] as const;
export type RegisterKind = (typeof REGISTER_KINDS)[number];

/** A sheet that has this name is a register. */
export const REGISTER_MARK = "register_number";
export const REGISTER_NAMES = [
  "register_kind",
  REGISTER_MARK,
  "register_diameter",
  "register_height",
  "register_mass",
  "register_lever_ratio",
  "register_dial_factor",
  "register_frame",
  "register_disks",
  "register_paper",
  "register_calibrated",
  "register_due",
] as const;
type RegisterName = (typeof REGISTER_NAMES)[number];

/** A row of the register; a blank number is missing here. Lengths are in mm. */
export interface RegisterItem {
  /** The row of the table, counted from 1. */
  readonly row: number;
  readonly kind: RegisterKind;
  readonly number: string;
  readonly diameter?: number;
  readonly height?: number;
  readonly mass?: number;
  readonly leverRatio?: number;
  readonly dialFactor?: number;
  /** Of a deflection set: the number of the frame that it was made with. */
  readonly frame?: string;
  /** Of a deflection set: the day of its run, the disks and the paper, as "2031-03-07, disks A, paper B". */
  readonly about?: string;
  readonly due?: number;
}

/** The day, the disks and the paper of a deflection set in one text; undefined if the register has none of them. */
const aboutSet = (day: number | undefined, disks: string, paper: string): string | undefined =>
  [day === undefined ? "" : isoDay(day), disks, paper].filter((part) => part !== "").join(", ") || undefined;

/** The rows that have a kind and a number; undefined if the register names no unit of length. */
export function readRegister(values: NamedValues): readonly RegisterItem[] | undefined {
  const unit = unitNamed(word(values[REGISTER_UNIT]?.[0]?.[0]), LENGTH_UNITS);
  if (unit === undefined) return undefined;
  const cell = (name: RegisterName, row: number): CellValue | undefined => values[name]?.[row]?.[0];
  const number = (name: RegisterName, row: number): number | undefined => {
    const value = cell(name, row);
    return typeof value === "number" && value > 0 ? value : undefined;
  };
  const length = (name: RegisterName, row: number): number | undefined => {
    const value = number(name, row);
    return value === undefined ? undefined : convert(value, "length", unit, "mm");
  };
  return (values[REGISTER_MARK] ?? []).flatMap(([typed], row): RegisterItem[] => {
    const kind = REGISTER_KINDS.find((one) =>
      everyWord(one).some((named) => same(named, word(cell("register_kind", row)))),
    );
    if (!kind || word(typed) === "") return [];
    return [
      {
        row: row + 1,
        kind,
        number: word(typed),
        diameter: length("register_diameter", row),
        height: length("register_height", row),
        mass: number("register_mass", row),
        leverRatio: number("register_lever_ratio", row),
        dialFactor: length("register_dial_factor", row),
        frame: word(cell("register_frame", row)) || undefined,
        about: aboutSet(
          number("register_calibrated", row),
          word(cell("register_disks", row)),
          word(cell("register_paper", row)),
        ),
        due: number("register_due", row),
      },
    ];
  });
}

/** The cells of the data sheet that contain the numbers of the equipment. */
export const NUMBER_CELLS = {
  ring: "ring_number",
  frame: "frame_number",
  dial: "dial_number",
  balance: "balance_number",
  "deflection set": "deflection_set",
} as const satisfies Record<Equipment, string>;

/** The cells of the data sheet that take values of the register, each with the value. */
const TAKEN = [
  { kind: "ring", of: "diameter", cell: "registered_diameter", measure: "length" },
  { kind: "ring", of: "height", cell: "registered_height", measure: "length" },
  { kind: "ring", of: "mass", cell: "registered_ring_mass", measure: "plain" },
  { kind: "frame", of: "leverRatio", cell: "lever_ratio", measure: "plain" },
  { kind: "frame", of: "due", cell: "frame_calibration_due", measure: "plain" },
  { kind: "dial", of: "dialFactor", cell: "dial_factor", measure: "length" },
  { kind: "dial", of: "due", cell: "dial_calibration_due", measure: "plain" },
  { kind: "balance", of: "due", cell: "balance_calibration_due", measure: "plain" },
  { kind: "deflection set", of: "frame", cell: "deflection_set_frame", measure: "text" },
  { kind: "deflection set", of: "due", cell: "deflection_set_due", measure: "plain" },
  { kind: "deflection set", of: "about", cell: "calibration_date", measure: "text" },
] as const;

/**
 * The cell that takes a constant even where the other values are formulas: it is a person's own text, and has the format of
 * a text, in which a formula would stay a text.
 */
export const ALWAYS_CONSTANT: TakenCell = "calibration_date";

/** The column of the register for each of its values. */
const REGISTER_COLUMNS = {
  diameter: "register_diameter",
  height: "register_height",
  mass: "register_mass",
  leverRatio: "register_lever_ratio",
  dialFactor: "register_dial_factor",
  frame: "register_frame",
  about: "register_calibrated",
  due: "register_due",
} as const;
/** The cells that take values; of the deflection table, the name of its first column. */
export type TakenCell = (typeof TAKEN)[number]["cell"] | "apparatus_stress";

/** The value of the register for a cell of the data sheet, in the unit of the sheet. */
export interface Lookup {
  readonly cell: TakenCell;
  readonly kind: Equipment;
  /** Of the deflection table, how many rows the set has. */
  readonly registered: CellValue;
  /** The present content of the cell; "" if it is blank. Of the deflection table, how many rows it has. */
  readonly held: CellValue;
  readonly state: "blank" | "same" | "differs";
  /** Of the deflection table: the columns of the data sheet, in its units, from the top; "" clears a cell. */
  readonly table?: DeflectionColumns;
}

export interface Lookups {
  readonly lines: readonly Lookup[];
  /** Equipment of the sheet that the register does not contain. */
  readonly unknown: readonly { readonly kind: Equipment; readonly number: string }[];
  /** Equipment whose number is in several rows of the register; the last row counts. */
  readonly repeated: readonly { readonly kind: Equipment; readonly number: string }[];
  /** The deflection set that is in the register without deflections, or with more than the table of the sheet takes. */
  readonly withoutTable?: string;
}

/** The values of the register for the equipment of a data sheet. */
export function lookupsOf(
  record: TestRecord,
  values: NamedValues,
  register: readonly RegisterItem[],
  sets: readonly SetRow[] = [],
): Lookups {
  const unit = unitNamed(record.words.length_unit ?? "", LENGTH_UNITS) ?? "mm";
  const named = EQUIPMENT.flatMap((kind) => {
    const number = word(values[NUMBER_CELLS[kind]]?.[0]?.[0]);
    return number === ""
      ? []
      : [{ kind, number, items: register.filter((item) => item.kind === kind && same(item.number, number)) }];
  });
  const lines = TAKEN.flatMap(({ kind, of, cell, measure }): Lookup[] => {
    const item = named.find((one) => one.kind === kind)?.items.at(-1);
    const value = item?.[of];
    if (value === undefined) return [];
    const registered =
      measure === "length" && typeof value === "number"
        ? Number(convert(value, "length", "mm", unit).toPrecision(12))
        : value;
    const held = values[cell]?.[0]?.[0] ?? "";
    return [
      { cell, kind, registered, held, state: held === "" ? "blank" : agree(held, registered) ? "same" : "differs" },
    ];
  });
  const set = named.find(({ kind, items }) => kind === "deflection set" && items.length > 0);
  const table = set && tableLookup(record, values, set.number, sets);
  const listed = (wanted: (count: number) => boolean) =>
    named.filter(({ items }) => wanted(items.length)).map(({ kind, number }) => ({ kind, number }));
  return {
    lines: [...lines, ...(table ? [{ cell: "apparatus_stress", kind: "deflection set", ...table } as const] : [])],
    unknown: listed((count) => count === 0),
    repeated: listed((count) => count > 1),
    ...(set && !table && { withoutTable: set.number }),
  };
}

/**
 * The formulas of a kind of equipment over the register: how many rows have its number, the sum of a column, and the text
 * of a column in the one row that has the number.
 */
function overRows(register: string, kind: Equipment) {
  const of = (name: string): string => referenceTo(name, register);
  const numbers = of(REGISTER_MARK);
  // A register and a data sheet may be in different languages.
  const sumOf = (call: (rows: string) => string): string =>
    everyWord(kind)
      .map((named) => call(`${of("register_kind")},"${named}",${numbers},{${NUMBER_CELLS[kind]}}`))
      .join("+");
  const number = `{${NUMBER_CELLS[kind]}}`;
  // A number of equipment may stand as a text in one sheet and as a number in the other.
  const isNumber = `((${numbers}=${number}&"")+(${numbers}=${number})>0)`;
  const place = `SUMPRODUCT((${haveWord(of("register_kind"), kind)})*${isNumber}*(ROW(${numbers})-ROW(INDEX(${numbers},1))+1))`;
  return {
    count: sumOf((rows) => `COUNTIFS(${rows})`),
    sum: (column: string): string => sumOf((rows) => `SUMIFS(${of(column)},${rows})`),
    text: (column: string): string => `INDEX(${of(column)},${place})&""`,
    unit: of(REGISTER_UNIT),
  };
}

/**
 * The live formula of a cell of the data sheet that takes a value of the register. It keeps the value given for it as
 * long as the register has no such number, has it in several rows, or has no value for it.
 */
export function liveFormula(register: string, { cell, kind }: Pick<Lookup, "cell" | "kind">, held: CellValue): string {
  const taken = TAKEN.find((one) => one.cell === cell);
  const { count, sum, text, unit } = overRows(register, kind);
  if (taken?.measure === "text") return `=IF(${count}=1,${text(REGISTER_COLUMNS[taken.of])},${inFormula(word(held))})`;
  const value = sum(REGISTER_COLUMNS[taken?.of ?? "mass"]);
  const inUnit = taken?.measure === "length" ? `CLAY.CONVERT_UNIT(${value},${unit},{length_unit})` : value;
  const otherwise = typeof held === "number" ? String(held) : '""';
  return `=IF(AND(${count}=1,${value}>0),${inUnit},${otherwise})`;
}

/** The formula of the cell that names what the register does not have once; "" where it has every number. */
export function liveState(register: string, kinds: readonly Equipment[]): string {
  const lacks = kinds.map((kind) => {
    const { count } = overRows(register, kind);
    const number = `{${NUMBER_CELLS[kind]}}`;
    if (kind === "deflection set") return setState(register, count);
    return `IF(OR(${number}="",${count}=1),"","${kind} "&${number}&IF(${count}=0," is not in the register"," stands in several rows of the register")&": its values were kept; ")`;
  });
  return `=${lacks.join("&")}`;
}
