/**
 * A test record: the content of a data sheet, read by its names. It takes the values as `WorkbookPort.readNames` gives
 * them, so that every sheet with these names can be read, whatever its layout and even if names are missing.
 *
 * Units are converted once, here: lengths to mm, stresses to kPa, cv to m2/yr, densities to Mg/m3, mv to m2/MN, k to
 * m/s, depths to m; masses are g, times minutes, water contents, strains and saturations ratios. Readings stay
 * divisions of the dial as typed; the dial factor is in mm. Nothing is guessed: a cell with unusable content gives no
 * value, and is listed.
 */
import { isoDay, isoMoment } from "../workbook/day-number";
import { say, verbatim, listed, listWord, type Verbatim, type Message } from "../reduction/message";
import { OF_CURVE } from "../reduction/curve/picks";
import { pickNamed, standingRows, type PickedThing } from "../reduction/increment/constructions/picks";
import { convert, unitNamed, unitsOf, type Quantity } from "../reduction/units";
import { isError } from "../workbook/cell-error";
import { asColumn } from "../workbook/lists";
import type { CellValue } from "../workbook/port";
import { LOADS, loadSuffix, readingsOfLoads } from "../specification/readings";
import { isDate, unitCellOf, type Measure } from "../specification/measures";
import { ADOPTABLE, ALL_ADOPTABLE } from "../specification/results/adoptable";
import { CELL_BY_NAME, CELL_GROUPS, CELLS, labelOf, textOf } from "./cells";
import { adoptedCalled, adoptedOf, type Adopted } from "./adopted";
import { PICK_COLUMNS, type RecordedPick } from "./picks";
import { LANGUAGE_CELL } from "../specification/text/language";
import { rulesOf } from "../specification/versions";
import {
  OLD_WORDS,
  type LoadResultName,
  type LoadWordName,
  type NumberName,
  type RemarkName,
  type ResultName,
  type WordName,
} from "./names";

export type * from "./names";

/** A cell that could not be used, or should be looked at. */
export interface Fault {
  readonly name: string;
  /** Row of a column, from 1. */
  readonly row?: number;
  readonly kind: "text" | "number as text" | "error" | "logical value" | "date" | "unit" | "choice";
  /** What the cell holds, and the remedy. */
  readonly sentence: Message;
}

/** A row of the readings of a load; a blank is absent. */
export interface Reading {
  readonly row: number;
  readonly time?: number;
  readonly reading?: number;
}

export interface LoadRecord {
  readonly number: number;
  /** Row of the load table, from 1: equal to the load number, unless rows were put in between the loads. */
  readonly row: number;
  readonly stress?: number;
  /** True if water was added under the load. */
  readonly inundated: boolean;
  /** True if the load is marked as a stage of wetting. */
  readonly wetting: boolean;
  /** yyyy-mm-dd */
  readonly started?: string;
  /** The moment of loading as a day number, with the time of day as its fraction. */
  readonly appliedAt?: number;
  /** Mass on the hanger in kg and temperature in degrees Celsius: columns that a firm may add. */
  readonly hangerMass?: number;
  readonly temperature?: number;
  /** Rows with a time or a reading, up to the last row with a reading. */
  readonly readings: readonly Reading[];
  readonly results: Readonly<Partial<Record<LoadResultName, number>>>;
  readonly words: Readonly<Partial<Record<LoadWordName, string>>>;
}

export interface Tin {
  readonly number?: string;
  readonly mass?: number;
  readonly andWet?: number;
  readonly andDry?: number;
}

export interface DeflectionRow {
  readonly stress?: number;
  readonly loading?: number;
  readonly unloading?: number;
}

/** A value replaced by hand, in columns that a firm may add (override_of, override_reason, override_by) or by a pick that counts. */
export interface Override {
  readonly of: string;
  readonly reason?: string;
  readonly by?: string;
  /** The row of the table of picks that replaced the value, with its load and its pick in lower case. */
  readonly pick?: RecordedPick & { readonly load: PickedThing; readonly of: string };
}

export interface TestRecord {
  /** The name of the language of the sheet's own words, as the sheet has it (`languageNamed`). */
  readonly sheetLanguage?: string;
  /** Version of the data sheet; absent if the sheet does not say. */
  readonly version?: number;
  readonly numbers: Readonly<Partial<Record<NumberName, number>>>;
  /** Dates are yyyy-mm-dd; units are spelt as in the unit table. */
  readonly words: Readonly<Partial<Record<WordName, string>>>;
  readonly tins: readonly Tin[];
  readonly deflections: readonly DeflectionRow[];
  readonly loads: readonly LoadRecord[];
  readonly overrides: readonly Override[];
  /** Values that the engineer adopted instead of the results of the constructions. */
  readonly adopted?: Adopted;
  /** Filled rows of the table of picks by hand, in their order; the last row of a load and pick counts. */
  readonly picks: readonly RecordedPick[];
  /** The register from which the registered numbers of the ring came; absent if they were typed. */
  readonly registerSource?: string;
  /** Results that the sheet shows. */
  readonly results: Readonly<Partial<Record<ResultName, number>>>;
  readonly remarks: Readonly<Partial<Record<RemarkName, string>>>;
  /** Names of the specification that the sheet does not have. */
  readonly missing: readonly string[];
  readonly faults: readonly Fault[];
}

/** Values by name, as `WorkbookPort.readNames` gives them. */
export type NamedValues = Readonly<Record<string, readonly (readonly CellValue[])[]>>;

type ConvertedMeasure =
  "length" | "factor" | "stress" | "cv" | "density" | "compressibility" | "conductivity" | "depth";

/** The measures whose unit stands in a cell of the sheet, with their unit in a record. */
export const RECORD_UNITS: Readonly<
  Record<ConvertedMeasure, { readonly quantity: Quantity; readonly to: string; readonly plural: Message }>
> = {
  length: { quantity: "length", to: "mm", plural: say`lengths` },
  factor: { quantity: "length", to: "mm", plural: say`lengths` },
  stress: { quantity: "stress", to: "kPa", plural: say`stresses` },
  cv: { quantity: "cv", to: "m2/yr", plural: say`coefficients of consolidation` },
  density: { quantity: "density", to: "Mg/m3", plural: say`densities` },
  compressibility: { quantity: "mv", to: "m2/MN", plural: say`values of mv` },
  conductivity: { quantity: "conductivity", to: "m/s", plural: say`values of k` },
  depth: { quantity: "length", to: "m", plural: say`depths` },
};

const isConverted = (measure: Measure): measure is ConvertedMeasure => measure in RECORD_UNITS;

/** Object.keys returns strings; these are the keys of the table above. */
const UNIT_QUANTITIES: ReadonlyMap<string, Quantity> = new Map(
  (Object.keys(RECORD_UNITS) as ConvertedMeasure[]).flatMap((measure) => {
    const cell = unitCellOf(measure);
    return cell ? [[cell, RECORD_UNITS[measure].quantity] as const] : [];
  }),
);

const QUANTITY_NAMES: Readonly<Record<Quantity, Message>> = {
  stress: say`stress`,
  length: say`length`,
  cv: say`cv`,
  density: say`density`,
  mv: say`mv`,
  conductivity: say`conductivity`,
  force: say`force`,
};

/** Every name that a record is read from, for `readNames`. */
export const RECORD_NAMES: readonly string[] = [...CELL_BY_NAME.keys()];

/** The name of a cell in a sentence: "Ring + dry soil (ring_and_dry)". */
export const cellCalled = (name: string): string => `${labelOf(name)} (${name})`;

/** The name of a cell in a sentence, as a value of a message. */
export const cellNamed = (name: string): Verbatim => ({
  verbatim: cellCalled(name),
  cell: name,
  label: labelOf(name),
});

/** The bare name of a cell as a value of a message. */
export const nameOf = (name: string): Verbatim => ({ verbatim: name, cell: name, label: labelOf(name) });

const LAST_DAY = 2_958_465;
/**
 * Whether a number looks like a date: Excel stores dates of this century as whole numbers in this range, which no mass,
 * length or ratio has.
 */
const looksLikeDate = (value: number): boolean => Number.isInteger(value) && value >= 36_526 && value <= 73_050;
const NEVER_DATES: readonly Measure[] = ["mass", "length", "ratio", "percent", "strain", "depth", "factor"];

const isNumeric = (text: string): boolean => /^[+-]?[\d.,'’\s]*\d[\d.,'’\s]*(e[+-]?\d+)?%?$/i.test(text);

/** Reads cells one by one and collects the faults. */
class Reader {
  readonly faults: Fault[] = [];
  readonly #values: NamedValues;
  readonly #units = new Map<string, string>();

  constructor(values: NamedValues) {
    // A table may lie on its side: its columns are rows then.
    this.#values = Object.fromEntries(Object.entries(values).map(([name, cells]) => [name, asColumn(cells)]));
    for (const [name, quantity] of UNIT_QUANTITIES) {
      const typed = this.#text(name, 0);
      if (typed === undefined) continue;
      const known = unitNamed(typed, unitsOf(quantity));
      if (known) this.#units.set(name, known);
      else
        this.#fault(
          name,
          0,
          "unit",
          say`holds "${verbatim(typed)}", which is no unit of ${QUANTITY_NAMES[quantity]}: enter one of the list`,
        );
    }
  }

  rows(name: string): number {
    return this.#values[name]?.length ?? 0;
  }

  /** The rows in which one of these columns holds anything. */
  filledRows(names: readonly string[]): number[] {
    const found = new Set<number>();
    for (const name of names)
      this.#values[name]?.forEach(([cell], row) => {
        if (cell != null && (typeof cell !== "string" || cell.trim() !== "")) found.add(row);
      });
    return [...found].sort((a, b) => a - b);
  }

  number(name: string, row = 0): number | undefined {
    const cell = this.#cell(name, row);
    if (cell === "") return undefined;
    const { measure } = CELL_BY_NAME.get(name)!;
    if (typeof cell === "boolean")
      return this.#fault(name, row, "logical value", say`holds ${verbatim(String(cell))}: enter a number`);
    if (typeof cell === "string") {
      const text = cell.trim();
      if (isError(text))
        return this.#fault(name, row, "error", say`shows ${verbatim(text)}: look at the cells that it needs`);
      return isNumeric(text)
        ? this.#fault(
            name,
            row,
            "number as text",
            say`holds "${verbatim(text)}" stored as text: re-enter it as a number`,
          )
        : this.#fault(name, row, "text", say`holds "${short(text)}" where a number is needed: correct or clear it`);
    }
    if (NEVER_DATES.includes(measure) && looksLikeDate(cell))
      return this.#fault(
        name,
        row,
        "date",
        say`holds ${cell}, which looks like a date (${verbatim(isoDay(cell))}): re-enter it`,
      );
    const where = unitCellOf(measure);
    if (!isConverted(measure) || where === undefined) return cell;
    const { quantity, to, plural } = RECORD_UNITS[measure];
    const unit = this.#units.get(where);
    if (unit !== undefined) return convert(cell, quantity, unit, to);
    const sentence = say`gives no unit, so that ${plural} cannot be read: enter the unit`;
    if (!this.faults.some((fault) => fault.name === where)) this.#fault(where, 0, "unit", sentence);
    return undefined;
  }

  word(name: string, row = 0): string | undefined {
    const { measure, choices, alsoReads = [] } = CELL_BY_NAME.get(name)!;
    if (isDate(measure)) return this.#date(name, row);
    if (UNIT_QUANTITIES.has(name)) return this.#units.get(name);
    const text = this.#text(name, row);
    if (text === undefined) return text;
    const own = textOf(name, text);
    if (!choices) return own;
    const found = [...choices, ...alsoReads].find((choice) => choice.toLowerCase() === own.toLowerCase());
    return (
      found ??
      this.#fault(name, row, "choice", say`holds "${short(text)}": choose one of ${listed(choices.map(listWord))}`)
    );
  }

  /** A number, or a word instead of one. */
  value(name: string, row: number): number | string | undefined {
    const cell = this.#cell(name, row);
    if (typeof cell === "number") return cell;
    const text = this.#text(name, row);
    return text === undefined ? undefined : textOf(name, text);
  }

  /** A day number, with the time of day as its fraction. */
  dayNumber(name: string, row: number): number | undefined {
    const cell = this.#cell(name, row);
    return typeof cell === "number" && cell >= 1 && cell <= LAST_DAY ? cell : undefined;
  }

  /** A date with its time of day, or the text in its place. */
  moment(name: string, row: number): string | undefined {
    const cell = this.#cell(name, row);
    return typeof cell === "number" && cell >= 1 && cell <= LAST_DAY ? isoMoment(cell) : this.#text(name, row);
  }

  /** Values of the names for which the sheet has one. */
  pick<N extends string, T>(
    cells: readonly { readonly name: N }[],
    read: (name: N) => T | undefined,
  ): Partial<Record<N, T>> {
    const found: Partial<Record<N, T>> = {};
    for (const { name } of cells) {
      const value = read(name);
      if (value !== undefined) found[name] = value;
    }
    return found;
  }

  #cell(name: string, row: number): CellValue {
    const cell = this.#values[name]?.[row]?.[0] ?? "";
    return typeof cell === "string" && cell.trim() === "" ? "" : cell;
  }

  #text(name: string, row: number): string | undefined {
    const cell = this.#cell(name, row);
    if (cell === "") return undefined;
    const text = String(cell).trim();
    if (isError(text))
      return this.#fault(name, row, "error", say`shows ${verbatim(text)}: look at the cells that it needs`);
    return text;
  }

  #date(name: string, row: number): string | undefined {
    const cell = this.#cell(name, row);
    if (cell === "") return undefined;
    if (typeof cell === "number" && cell >= 1 && cell <= LAST_DAY) return isoDay(cell);
    return this.#fault(
      name,
      row,
      "date",
      say`holds "${short(String(cell))}", which is no date here: re-enter the date`,
    );
  }

  #fault(name: string, row: number, kind: Fault["kind"], said: Message): undefined {
    const column = this.rows(name) > 1;
    const sentence = column ? say`${cellNamed(name)}, row ${row + 1}, ${said}` : say`${cellNamed(name)} ${said}`;
    this.faults.push({ name, ...(column ? { row: row + 1 } : {}), kind, sentence });
    return undefined;
  }
}

const short = (text: string): Verbatim => verbatim(text.length > 30 ? `${text.slice(0, 30)}...` : text);

/** A test record from a sheet's values by name. */
export function readRecord(values: NamedValues): TestRecord {
  const reader = new Reader(values);
  const number = (name: string) => reader.number(name);
  const word = (name: string) => reader.word(name);
  const version = number("template_version");
  const picks = readPicks(reader, version);
  const adopted = readAdopted(reader);
  const loads = readLoads(reader);
  const record = {
    version,
    sheetLanguage: word(LANGUAGE_CELL),
    numbers: reader.pick(CELL_GROUPS.numbers, number),
    words: reader.pick([...CELL_GROUPS.words, ...OLD_WORDS.map((name) => ({ name }))], word),
    tins: rowsOf(reader, ["tin_number", "tin_mass", "tin_and_wet", "tin_and_dry"], (row): Tin => ({
      number: reader.word("tin_number", row),
      mass: reader.number("tin_mass", row),
      andWet: reader.number("tin_and_wet", row),
      andDry: reader.number("tin_and_dry", row),
    })).filter(({ mass, andWet, andDry }) => mass !== undefined || andWet !== undefined || andDry !== undefined),
    deflections: rowsOf(reader, ["apparatus_stress", "apparatus_loading", "apparatus_unloading"], (row) => ({
      stress: reader.number("apparatus_stress", row),
      loading: reader.number("apparatus_loading", row),
      unloading: reader.number("apparatus_unloading", row),
    })).filter((row) => Object.values(row).some((value) => value !== undefined)),
    overrides: [...readOverrides(reader), ...overridesOf(picks), ...overridesOfAdopted(adopted)],
    adopted,
    picks,
    registerSource: reader.word("register_source"),
    loads: loads.filter(isUsed),
    results: reader.pick(CELL_GROUPS.results, number),
    remarks: reader.pick(CELL_GROUPS.remarks, word),
  };
  const last = Math.max(...loads.map((load) => load.number));
  const missing = [...CELLS, ...readingsOfLoads(1, last || LOADS)]
    .map(({ name }) => name)
    .filter((name) => !(name in values));
  return { ...record, missing, faults: reader.faults };
}

const rowsOf = <T>(reader: Reader, names: readonly string[], read: (row: number) => T): T[] =>
  Array.from({ length: Math.max(...names.map((name) => reader.rows(name))) }, (_, row) => read(row));

function readLoads(reader: Reader): LoadRecord[] {
  const rows = Math.max(reader.rows("load_stress"), LOADS);
  return Array.from({ length: rows }, (_, row): LoadRecord => {
    const number = reader.rows("load_number") > 0 ? (reader.number("load_number", row) ?? 0) : row + 1;
    const series = `_${loadSuffix(number)}`;
    const mark = reader.word("load_mark", row);
    return {
      number,
      row: row + 1,
      stress: reader.number("load_stress", row),
      inundated: mark !== undefined,
      wetting: mark === "wetting",
      started: reader.word("load_started", row),
      appliedAt: reader.dayNumber("load_started", row),
      hangerMass: reader.number("load_mass", row),
      temperature: reader.number("load_temperature", row),
      readings: CELL_BY_NAME.has(`times${series}`) ? readReadings(reader, `times${series}`, `readings${series}`) : [],
      results: reader.pick(CELL_GROUPS.loadResults, (name) => reader.number(name, row)),
      words: reader.pick(CELL_GROUPS.loadWords, (name) => reader.word(name, row)),
    };
  });
}

/** Whether a row is a load in use: a row without a number was put in between the loads, and is not a load. */
const isUsed = ({ number, stress, readings }: LoadRecord): boolean =>
  number > 0 && (stress !== undefined || readings.length > 0);

const readOverrides = (reader: Reader): Override[] =>
  rowsOf(reader, ["override_of"], (row) => ({
    of: reader.word("override_of", row) ?? "",
    reason: reader.word("override_reason", row),
    by: reader.word("override_by", row),
  })).filter(({ of }) => of !== "");

/** The short name of a pick; the sheet contains either the short name or its words. */
const pickOf = (text: string | undefined): string | undefined => (text === undefined ? undefined : pickNamed(text));

/** Stresses of the table are in the sheet's unit; they are left out if the unit is not known. */
function readAdopted(reader: Reader): Adopted {
  const unit = reader.word("stress_unit");
  const rows = rowsOf(reader, ["adopted_value"], (row) => {
    const typed = reader.number("adopted_value", row);
    const isStress = ADOPTABLE[row]?.measure === "stress";
    const value = !isStress || typed === undefined ? typed : unit && convert(typed, "stress", unit, "kPa");
    return { value: typeof value === "number" ? value : undefined, ...signatureOf(reader, "adopted", row) };
  });
  const ofCv = rowsOf(reader, ["adopted_cv"], (row) => ({
    value: reader.number("adopted_cv", row),
    from: reader.number("adopted_cv_low", row),
    to: reader.number("adopted_cv_high", row),
    ...signatureOf(reader, "adopted_cv", row),
  }));
  return adoptedOf(rows, ofCv);
}

const signatureOf = (reader: Reader, table: "adopted" | "adopted_cv", row: number) => ({
  reason: reader.word(`${table}_reason`, row),
  by: reader.word(`${table}_by`, row),
  day: reader.word(`${table}_day`, row),
});

const overridesOfAdopted = (adopted: Adopted): Override[] =>
  ALL_ADOPTABLE.flatMap(({ name }) => {
    const value = adopted[name];
    return value ? [{ of: adoptedCalled(name), reason: value.reason, by: value.by }] : [];
  });

function readPicks(reader: Reader, version: number | undefined): RecordedPick[] {
  const isOfCurve = (row: number): boolean =>
    rulesOf({ version }).curveIsPicked && String(reader.value("pick_load", row)).toLowerCase() === OF_CURVE;
  const rows = rowsOf(reader, PICK_COLUMNS, (row): RecordedPick => ({
    row: row + 1,
    load: isOfCurve(row) ? OF_CURVE : reader.number("pick_load", row),
    of: pickOf(reader.word("pick_of", row)),
    before: reader.value("pick_before", row),
    after: reader.value("pick_after", row),
    reason: reader.word("pick_reason", row),
    by: reader.word("pick_by", row),
    when: reader.moment("pick_when", row),
  }));
  return rows.filter((pick) => Object.values(pick).filter((cell) => cell !== undefined).length > 1);
}

/** The picks that count, as overrides. */
function overridesOf(picks: readonly RecordedPick[]): Override[] {
  const picked = [...new Set(picks.flatMap(({ load }) => load ?? []))];
  return picked.flatMap((load) =>
    [...standingRows(picks, load)].map(([of, pick]) => ({
      of: load === OF_CURVE ? `${of} of the curve` : `${of} of load ${load}`,
      reason: pick.reason,
      by: pick.by,
      pick: { ...pick, load, of },
    })),
  );
}

/** Rows of the time schedule after the last reading are left out: nothing was read then. */
function readReadings(reader: Reader, times: string, readings: string): Reading[] {
  // Of the 2,000 rows of a load most are blank.
  const rows = reader.filledRows([times, readings]).map((row): Reading => ({
    row: row + 1,
    time: reader.number(times, row),
    reading: reader.number(readings, row),
  }));
  const last = rows.filter(({ reading }) => reading !== undefined).at(-1)?.row ?? 0;
  return rows.filter(({ row, time, reading }) => row <= last && (time !== undefined || reading !== undefined));
}
