/**
 * The readings of a logger's file in the order of its lines, and every line that cannot be used, with the reason.
 * Nothing is corrected: a line is taken as it is, or left out and listed.
 */
import { firstOf, lastOf, nth } from "../../reduction/numeric/lists";
import { DAY_MINUTES } from "../../workbook/day-number";
import { numberIn, timeIn } from "./cell";
import type { TextFile } from "./decode";
import { runsBackwards } from "./direction";
import type { Layout } from "./layout";
import { cellsOf } from "./table";

/** What may be wrong with a line; lines with one of KEPT_KINDS are used nevertheless. */
export type FaultKind =
  | "blank"
  | "text"
  | "code"
  | "short"
  | "cut"
  | "maybe-cut"
  | "heading"
  | "words"
  | "back"
  | "repeat"
  | "same-time"
  | "no-load"
  | "midnight"
  | "far";

export const KEPT_KINDS: readonly FaultKind[] = ["maybe-cut", "no-load", "midnight", "far"];

export interface Fault {
  /** Line of the file, from 1. */
  readonly line: number;
  readonly kind: FaultKind;
  /** The content of the cell, shortened. */
  readonly cell: string;
}

/** The lines that are used, as columns of equal length. */
export interface LoggerRows {
  readonly lines: readonly number[];
  /** Minutes as in the file: from its own zero, from 1970, or from midnight. */
  readonly times: readonly number[];
  readonly readings: readonly number[];
  /** In the unit of the column; NaN if the line has no load. */
  readonly loads: readonly number[];
  /** Degrees Celsius; NaN if the line has none. Left out if the file has no such column. */
  readonly temperatures?: readonly number[];
  /** Whether every time includes a date, so that the minutes count from 1970. */
  readonly dated?: boolean;
  /** True if the file begins with its newest line: the rows then come from the last line to the first. */
  readonly isBackwards?: boolean;
  /** Indices of rows at which the times begin again, without the first row. */
  readonly restarts: readonly number[];
  readonly faults: readonly Fault[];
}

/** Lines read between two reports of progress. */
const CHUNK = 1000;
const SHOWN = 40;

const shown = (text: string): string => (text.length > SHOWN ? `${text.slice(0, SHOWN - 1)}…` : text);
const isBlank = (cell: string | undefined): boolean => cell === undefined || cell.trim() === "";

interface Line {
  readonly time: { readonly minutes: number; readonly dated: boolean };
  readonly reading: number;
}

/** The time and the reading of a line, or what is wrong with it and the cell that shows it. */
function readLine(
  row: readonly string[],
  layout: Layout,
  { widest, isCutOff }: { readonly widest: number; readonly isCutOff: boolean },
): Line | readonly [FaultKind, string] {
  const { decimal, timeForm, dateOrder } = layout;
  const whole = row.join(layout.delimiter);
  const timeCell = row[layout.time] ?? "";
  const readingCell = row[layout.reading] ?? "";
  const time = timeIn(timeCell, timeForm, decimal, dateOrder, layout.date === null ? undefined : row[layout.date]);
  const reading = numberIn(readingCell, decimal);
  if (row.length <= widest)
    return [isCutOff ? "cut" : row.length === 1 || time === undefined ? "words" : "short", whole];
  if (time === undefined && reading === undefined && !isBlank(timeCell)) return ["words", whole];
  if (time === undefined) return isBlank(timeCell) ? ["blank", whole] : ["text", timeCell];
  if (reading === undefined) return isBlank(readingCell) ? ["blank", whole] : ["text", readingCell];
  return layout.noReading.includes(reading) ? ["code", readingCell] : { time, reading };
}

/** The number in a column that a file may have; NaN if the line has none there. */
function besideIn(row: readonly string[], column: number | null | undefined, { decimal, noReading }: Layout): number {
  const found = column == null ? undefined : numberIn(row[column] ?? "", decimal);
  return found === undefined || noReading.includes(found) ? NaN : found;
}

/** Whether a line looks cut off: its last cell has fewer digits than the same cell of the line before. */
const looksCut = (row: readonly string[], before: string, { delimiter }: Layout): boolean => {
  const cells = firstOf(cellsOf([before], delimiter));
  return row.length === cells.length && lastOf(row).length < lastOf(cells).length;
};

/** The number of lines that show in which direction a file runs. */
const SHOW_DIRECTION = 200;

/** Whether the file begins with its newest line; a clock without dates does not show it. */
function beginsWithNewest({ lines }: TextFile, layout: Layout): boolean {
  if (layout.timesRun !== "test") return false;
  const first = lines.slice(layout.firstLine - 1, layout.firstLine - 1 + SHOW_DIRECTION);
  const read = cellsOf(first, layout.delimiter).flatMap((row) => {
    const line = readLine(row, layout, { widest: Math.max(layout.time, layout.reading), isCutOff: false });
    return "time" in line ? [line.time] : [];
  });
  if (layout.timeForm === "clock" && !read.every(({ dated }) => dated)) return false;
  return runsBackwards(read.map(({ minutes }) => minutes));
}

/** The lines of a file, taken one after the other: those that are used become rows, the others faults. */
class TakenLines {
  readonly #file: TextFile;
  readonly #layout: Layout;
  /** The last of the columns that every line needs. */
  readonly #widest: number;
  readonly #headings: ReadonlySet<string>;
  readonly #lines: number[] = [];
  readonly #times: number[] = [];
  readonly #readings: number[] = [];
  readonly #loads: number[] = [];
  readonly #temperatures: number[] = [];
  readonly #restarts: number[] = [];
  readonly #faults: Fault[] = [];
  #isDated = true;
  /** Midnights that a clock without dates has passed. */
  #days = 0;
  /** The row at which the times began last. */
  #loadStart = 0;

  constructor(file: TextFile, layout: Layout) {
    this.#file = file;
    this.#layout = layout;
    const needed = [layout.time, layout.reading, layout.date, layout.load].filter((col) => col !== null);
    this.#widest = Math.max(...needed);
    this.#headings = new Set(file.lines.slice(0, layout.firstLine - 1).map((line) => line.trim()));
  }

  #fault(line: number, kind: FaultKind, cell: string): void {
    this.#faults.push({ line, kind, cell: shown(cell.trim()) });
  }

  /** The minutes of a time since the first midnight of a clock without dates, as they are if the file has dates. */
  #minutesOf({ minutes, dated }: Line["time"], line: number, timeCell: string): number {
    const at = minutes + this.#days * DAY_MINUTES;
    const before = this.#times.at(-1);
    const isPastMidnight =
      this.#layout.timeForm === "clock" && !dated && before !== undefined && at < before - DAY_MINUTES / 2;
    if (!isPastMidnight) return at;
    this.#days++;
    this.#fault(line, "midnight", timeCell);
    return at + DAY_MINUTES;
  }

  /** What is wrong with a time after the row before; undefined if nothing is. A time at which a load begins is noted. */
  #outOfOrder(at: number, reading: number): "repeat" | "same-time" | "back" | undefined {
    const before = this.#times.at(-1);
    if (before === undefined || at > before) return undefined;
    if (at === before) return reading === this.#readings.at(-1) ? "repeat" : "same-time";
    const begins = at <= nth(this.#times, this.#loadStart) || at < Math.min(1, before / 2);
    if (this.#layout.timesRun === "test" || !begins) return "back";
    this.#loadStart = this.#times.length;
    this.#restarts.push(this.#loadStart);
    return undefined;
  }

  take(line: number, row: readonly string[]): void {
    const [file, layout] = [this.#file, this.#layout];
    const whole = row.join(layout.delimiter);
    if (row.every(isBlank)) return;
    if (this.#headings.has(nth(file.lines, line - 1).trim())) return this.#fault(line, "heading", whole);
    const isCutOff = line === file.lines.length && !file.endsWhole;
    const read = readLine(row, layout, { widest: this.#widest, isCutOff });
    if (!("time" in read)) return this.#fault(line, ...read);
    const { time, reading } = read;
    const timeCell = row[layout.time] ?? "";
    const at = this.#minutesOf(time, line, timeCell);
    const wrong = this.#outOfOrder(at, reading);
    if (wrong) return this.#fault(line, wrong, wrong === "back" ? timeCell : whole);
    const load = besideIn(row, layout.load, layout);
    if (layout.load !== null && Number.isNaN(load)) this.#fault(line, "no-load", nth(row, layout.load));
    const lineBefore = this.#lines.at(-1);
    if (isCutOff && lineBefore !== undefined && looksCut(row, nth(file.lines, lineBefore - 1), layout))
      this.#fault(line, "maybe-cut", whole);
    this.#lines.push(line);
    this.#times.push(at);
    this.#readings.push(reading);
    this.#loads.push(load);
    this.#temperatures.push(besideIn(row, layout.temperature, layout));
    this.#isDated &&= time.dated;
  }

  /** All that was taken, with the readings that lie far from the others listed as faults. */
  rows(): LoggerRows {
    const [lines, readings, temperatures] = [this.#lines, this.#readings, this.#temperatures];
    const far = farOff(readings).map((index): Fault => ({
      ...{ line: nth(lines, index), kind: "far", cell: String(nth(readings, index)) },
    }));
    return {
      ...{ lines, readings, times: this.#times, loads: this.#loads, restarts: this.#restarts },
      ...(this.#layout.temperature != null && { temperatures }),
      dated: this.#isDated && lines.length > 0,
      faults: [...this.#faults, ...far].sort((a, b) => a.line - b.line),
    };
  }
}

/** Reads the file by the layout, in steps: yields the share that is done, and returns the rows. */
export function* readRows(file: TextFile, layout: Layout): Generator<number, LoggerRows> {
  const { delimiter, firstLine } = layout;
  const taken = new TakenLines(file, layout);
  const isBackwards = beginsWithNewest(file, layout);
  const lineAt = (index: number): number => (isBackwards ? file.lines.length - index : firstLine + index);
  const count = Math.max(0, file.lines.length - firstLine + 1);
  for (let from = 0; from < count; from += CHUNK) {
    const size = Math.min(CHUNK, count - from);
    const part = Array.from({ length: size }, (_, index) => lineAt(from + index));
    const rows = cellsOf(
      part.map((line) => nth(file.lines, line - 1)),
      delimiter,
    );
    rows.forEach((row, index) => taken.take(nth(part, index), row));
    yield Math.min(1, (from + CHUNK) / count);
  }
  return { ...taken.rows(), ...(isBackwards && { isBackwards }) };
}

/**
 * A reading may be the code of a broken sensor if it lies outside the middle nine tenths of the readings by more than
 * this many times their range.
 */
const FAR = 10;

function farOff(readings: readonly number[]): number[] {
  if (readings.length < 20) return [];
  const sorted = Float64Array.from(readings).sort();
  const low = nth(sorted, Math.floor(0.05 * sorted.length));
  const high = nth(sorted, Math.floor(0.95 * sorted.length));
  const limit = FAR * (high - low);
  if (limit === 0) return [];
  return readings.flatMap((reading, index) => (reading < low - limit || reading > high + limit ? [index] : []));
}
