/** The data sheet that readings go to: its present content, and the cells that are written. */
import { nth } from "../../reduction/numeric/lists";
import { convert, unitNamed, UNITS } from "../../reduction/units";
import { englishWord } from "../../record/cells";
import { usedRows } from "../../record/standing-load";
import type { CellValue, NamedColumns } from "../../workbook/port";
import { wordIn } from "../../specification/list-words";
import { LANGUAGE_CELL, languageOf, type SheetLanguage } from "../../specification/text/language";
import { MOST_LOADS, readingsName, timesName } from "../../specification/readings";
import type { Layout } from "./layout";

const numbers = Array.from({ length: MOST_LOADS }, (_, index) => index + 1);

/** The names that are read from the sheet before it is written. */
export const TARGET_NAMES: readonly string[] = [
  "load_number",
  "load_stress",
  "load_started",
  "load_temperature",
  "date_started",
  "date_ended",
  "zero_reading",
  "dial_factor",
  "dial_sense",
  "length_unit",
  "stress_unit",
  "seating_stress",
  "diameter",
  "frame_number",
  "test_remarks",
  LANGUAGE_CELL,
  ...numbers.flatMap((load) => [timesName(load), readingsName(load)]),
];

export interface TargetLoad {
  /** In the unit of the sheet. */
  readonly stress?: number;
  /** Date and temperature of the load; "" if the cell is blank, undefined if the sheet has none. */
  readonly started?: CellValue | undefined;
  readonly temperature?: CellValue | undefined;
  /** Row of the load table, from 0, if it differs from the number of the load. */
  readonly row?: number;
  /** How many readings the load holds. */
  readonly held: number;
  /** Rows down to the last that holds a time or a reading. */
  readonly used: number;
}

export interface Target {
  /** The loads of the sheet, from load 1. */
  readonly loads: readonly TargetLoad[];
  /** How many rows each load has for readings. */
  readonly room: number;
  readonly zeroReading: CellValue;
  readonly dialFactor: CellValue;
  /** The language of the words that are written into the sheet; English if it is left out. */
  readonly language?: SheetLanguage;
  /** "rise" or "fall", whatever the language of the sheet. */
  readonly dialSense: CellValue;
  readonly lengthUnit: string;
  readonly stressUnit: string;
  readonly seating?: number;
  /** mm */
  readonly diameter?: number;
  readonly frame: string;
  /** The dates on which the test started and ended; "" if the cell is blank, undefined if the sheet has none. */
  readonly testStarted?: CellValue | undefined;
  readonly testEnded?: CellValue | undefined;
  /** The test remarks; undefined if the sheet has no cell for them. */
  readonly remarks?: CellValue;
}

const numberOf = (value: CellValue): number | undefined => (typeof value === "number" ? value : undefined);

/** The data sheet, from the values that `WorkbookPort.readNames` gives for TARGET_NAMES. */
export function targetOf(found: Readonly<Record<string, readonly (readonly CellValue[])[]>>): Target {
  const column = (name: string): CellValue[] => (found[name] ?? []).map(([value = ""]) => value);
  const single = (name: string): CellValue => column(name)[0] ?? "";
  const unit = (name: string, names: readonly string[], otherwise: string): string =>
    unitNamed(String(single(name)), names) ?? otherwise;
  const lengthUnit = unit("length_unit", Object.keys(UNITS.length), "mm");
  const diameter = numberOf(single("diameter"));
  const stresses = column("load_stress");
  const loadNumbers = column("load_number");
  // A row that a person put into the load table has no number, and moves the loads below it.
  const rowOf = (load: number): number => {
    const row = loadNumbers.indexOf(load);
    return row < 0 ? load - 1 : row;
  };
  const present = numbers.filter((load) => found[timesName(load)] && found[readingsName(load)]);
  return {
    loads: present.map((load) => ({
      stress: numberOf(stresses[rowOf(load)] ?? ""),
      started: column("load_started")[rowOf(load)],
      temperature: column("load_temperature")[rowOf(load)],
      row: rowOf(load),
      held: column(readingsName(load)).filter((value) => value !== "").length,
      used: Math.max(usedRows(column(timesName(load))), usedRows(column(readingsName(load)))),
    })),
    room: Math.min(
      ...present.map((load) => Math.min(column(timesName(load)).length, column(readingsName(load)).length)),
    ),
    zeroReading: single("zero_reading"),
    dialFactor: single("dial_factor"),
    language: languageOf(found),
    dialSense: englishWord(String(single("dial_sense"))),
    lengthUnit,
    stressUnit: unit("stress_unit", Object.keys(UNITS.stress), "kPa"),
    seating: numberOf(single("seating_stress")),
    diameter: diameter === undefined ? undefined : convert(diameter, "length", lengthUnit, "mm"),
    frame: String(single("frame_number")).trim(),
    testStarted: column("date_started")[0],
    testEnded: column("date_ended")[0],
    ...(found.test_remarks ? { remarks: single("test_remarks") } : {}),
  };
}

/** A cell of the sheet whose value decides how the sheet reads the readings of the file. */
export interface InputChange {
  readonly name: "dial_factor" | "dial_sense" | "zero_reading";
  /** "" where the cell is blank. */
  readonly now: CellValue;
  /** The value that the file needs; "" for a dial factor that the file does not show, and that the person types. */
  readonly wanted: CellValue;
}

/** No division of a dial is as long as this, in mm: divisions are 0.01 mm or shorter (common practice, no source). */
const LONG_DIVISION = 0.1;

/** The dial factor that the file needs; undefined if the factor of the sheet may stand. */
function factorWanted({ dialFactor, lengthUnit }: Target, { readingUnit }: Layout): CellValue | undefined {
  if (readingUnit !== "div") return Number(convert(1, "length", readingUnit, lengthUnit).toPrecision(12));
  const length = numberOf(dialFactor);
  return length !== undefined && convert(length, "length", lengthUnit, "mm") >= LONG_DIVISION ? "" : undefined;
}

/**
 * Cells that differ from what the file needs. Readings are written in the unit of the file, so the dial factor must be
 * the length of that unit, and for divisions of a dial no whole millimetre or inch; the dial sense must be the direction of the readings; and the zero reading must be the
 * reading under the seating stress, if the file has one.
 */
export function inputChanges(target: Target, layout: Layout, seatingReading?: number): InputChange[] {
  const wanted: [InputChange["name"], CellValue, CellValue | undefined][] = [
    ["dial_factor", target.dialFactor, factorWanted(target, layout)],
    ["dial_sense", target.dialSense, layout.sense],
    ["zero_reading", target.zeroReading, seatingReading],
  ];
  return wanted.flatMap(([name, now, value]) =>
    value === undefined || value === now ? [] : [{ name, now, wanted: value }],
  );
}

/** What goes wrong if a cell is kept as it is, where the readings need another value. */
export type Misreading =
  /** Every deformation comes out so many times too large, or too small. */
  | { readonly what: "too large" | "too small"; readonly times: number }
  /** Every deformation is wrong by this length or these divisions, whichever the readings are. */
  | { readonly what: "shifted"; readonly by: number }
  /** Compression is taken for swelling, and swelling for compression. */
  | { readonly what: "turned round" };

/**
 * How the sheet misreads the file if the cell stays as it is; undefined where that is not known: for a blank cell, for one
 * without a number, and where the file does not show which value the cell needs.
 */
export function misreading({ name, now, wanted }: InputChange): Misreading | undefined {
  if (now === "" || wanted === "") return undefined;
  if (name === "dial_sense") return { what: "turned round" };
  if (typeof now !== "number" || typeof wanted !== "number") return undefined;
  if (name === "zero_reading") return { what: "shifted", by: Math.abs(now - wanted) };
  if (!(now > 0 && wanted > 0)) return undefined;
  return now > wanted ? { what: "too large", times: now / wanted } : { what: "too small", times: wanted / now };
}

/** The readings that go to one load of the sheet. */
export interface LoadFilling {
  readonly load: number;
  readonly times: readonly number[];
  readonly readings: readonly number[];
  /** In the unit of the sheet; written only if the sheet has no stress for the load. */
  readonly stress?: number;
}

const padded = (values: readonly number[], rows: number): CellValue[] =>
  Array.from({ length: Math.max(rows, values.length) }, (_, index) => values[index] ?? "");

/**
 * The columns to write: times and readings of each load, in place of everything that stood there, and the stresses that
 * are blank.
 */
export function columnsFor(
  target: Target,
  loads: readonly LoadFilling[],
  changes: readonly InputChange[] = [],
): NamedColumns {
  const columns: Record<string, (CellValue | null)[]> = {};
  const stresses: (CellValue | null)[] = [];
  for (const { load, times, readings, stress } of loads) {
    const { row = load - 1, used, stress: standing } = nth(target.loads, load - 1);
    columns[timesName(load)] = padded(times, used);
    columns[readingsName(load)] = padded(readings, used);
    if (stress === undefined || standing !== undefined) continue;
    while (stresses.length <= row) stresses.push(null);
    stresses[row] = Number(stress.toPrecision(6));
  }
  if (stresses.length > 0) columns.load_stress = stresses;
  for (const { name, wanted } of changes)
    columns[name] = [typeof wanted === "string" ? wordIn(target.language ?? "en", wanted) : wanted];
  return columns;
}
