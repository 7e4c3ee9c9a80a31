/**
 * The readings of a logger's file in the order of its lines, and every line that cannot be used, with the reason.
 * Nothing is corrected: a line is taken as it is, or left out and listed.
 */
import { firstOf, lastOf, nth } from "../../reduction/numeric/lists";
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
const HALF_A_DAY = 720;
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

/** Reads the file by the layout, in steps: yields the share that is done, and returns the rows. */
export function* readRows(file: TextFile, layout: Layout): Generator<number, LoggerRows> {
  const lines: number[] = [];
  const times: number[] = [];
  const readings: number[] = [];
  const loads: number[] = [];
  const temperatures: number[] = [];
  let dated = true;
  const restarts: number[] = [];
  const faults: Fault[] = [];
  const { delimiter, timeForm, firstLine } = layout;
  const needed = [layout.time, layout.reading, layout.date, layout.load].filter((col) => col !== null);
  const widest = Math.max(...needed);
  const headings = new Set(file.lines.slice(0, firstLine - 1).map((line) => line.trim()));
  /** Midnights that a clock without dates has passed. */
  let days = 0;
  let loadStart = 0;

  const take = (line: number, row: readonly string[]): void => {
    const fault = (kind: FaultKind, cell: string): void => void faults.push({ line, kind, cell: shown(cell.trim()) });
    const whole = row.join(delimiter);
    if (row.every(isBlank)) return;
    if (headings.has(nth(file.lines, line - 1).trim())) return fault("heading", whole);
    const isCutOff = line === file.lines.length && !file.endsWhole;
    const read = readLine(row, layout, { widest, isCutOff });
    if (!("time" in read)) return fault(...read);
    const { time, reading } = read;
    const timeCell = row[layout.time] ?? "";

    const before = times.at(-1);
    let at = time.minutes + days * 1440;
    if (timeForm === "clock" && !time.dated && before !== undefined && at < before - HALF_A_DAY) {
      days++;
      at += 1440;
      fault("midnight", timeCell);
    }
    if (at === before) return fault(reading === readings.at(-1) ? "repeat" : "same-time", whole);
    if (before !== undefined && at < before) {
      const begins = at <= nth(times, loadStart) || at < Math.min(1, before / 2);
      if (layout.timesRun === "test" || !begins) return fault("back", timeCell);
      restarts.push(times.length);
      loadStart = times.length;
    }
    const load = besideIn(row, layout.load, layout);
    if (layout.load !== null && Number.isNaN(load)) fault("no-load", nth(row, layout.load));
    const lineBefore = lines.at(-1);
    if (isCutOff && lineBefore !== undefined && looksCut(row, nth(file.lines, lineBefore - 1), layout))
      fault("maybe-cut", whole);
    lines.push(line);
    times.push(at);
    readings.push(reading);
    loads.push(load);
    temperatures.push(besideIn(row, layout.temperature, layout));
    dated &&= time.dated;
  };

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
    rows.forEach((row, index) => take(nth(part, index), row));
    yield Math.min(1, (from + CHUNK) / count);
  }
  for (const index of farOff(readings))
    faults.push({ line: nth(lines, index), kind: "far", cell: String(nth(readings, index)) });
  const beside = { ...(layout.temperature != null && { temperatures }), dated: dated && lines.length > 0 };
  return {
    lines,
    times,
    readings,
    loads,
    ...beside,
    ...(isBackwards && { isBackwards }),
    restarts,
    faults: faults.sort((a, b) => a.line - b.line),
  };
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
