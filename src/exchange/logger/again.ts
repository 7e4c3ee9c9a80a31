/**
 * Reads a logger's file again while it is still being written: compares it with the lines that were kept, and finds
 * what is new for each load. Nothing of the sheet is replaced, and no reading comes twice.
 */
import { nth } from "../../reduction/numeric/lists";
import type { CellValue, NamedColumns } from "../../workbook/port";
import { loadSuffix } from "../../specification/readings";
import type { Layout } from "./layout";
import { seriesOf, thinned, THINNINGS, ZERO_RULES, type Thinning, type ZeroRule } from "./load-series";
import { findLoads, levelOf, numbered, stressOf, WAYS_TO_FIND, type LoadStep, type WayToFind } from "./loads";
import type { LoggerRows } from "./rows";
import { columnsFor, type Target } from "./target";

/** What is remembered of a file that was read: how its loads were found, and which lines went to which load. */
export interface ReadBefore {
  readonly choices: { readonly way: WayToFind; readonly rule: ZeroRule; readonly thinning: Thinning };
  /** The first and the last line of each load that went to the sheet, from 1. */
  readonly loads: readonly { readonly load: number; readonly fromLine: number; readonly toLine: number }[];
  /** The lines at which the file itself showed a load to begin. */
  readonly starts: readonly number[];
  /** The last line that was read. */
  readonly to: number;
}

/**
 * Rows at the end of a file that is still being written wait: whether a new load has begun shows only after three rows
 * under it.
 */
const WAITING_ROWS = 3;

export type Comparison =
  | { readonly is: "same" }
  /** `recut`: the last line that was kept had been cut short; the file now has it whole. */
  | { readonly is: "grown"; readonly recut?: number }
  /** The lines, from 1, that differ, and the lines that are missing. */
  | { readonly is: "changed"; readonly lines: readonly number[]; readonly missing: number };

/** Compares the lines that were kept with those of the file now. */
export function compareLines(kept: readonly string[], now: readonly string[]): Comparison {
  const lines: number[] = [];
  const last = kept.length - 1;
  let recut: number | undefined;
  for (let index = 0; index < Math.min(kept.length, now.length); index++) {
    if (kept[index] === now[index]) continue;
    if (index === last && nth(now, index).startsWith(nth(kept, index))) recut = index + 1;
    else lines.push(index + 1);
  }
  const missing = Math.max(0, kept.length - now.length);
  if (lines.length > 0 || missing > 0) return { is: "changed", lines, missing };
  if (recut !== undefined) return { is: "grown", recut };
  return now.length > kept.length ? { is: "grown" } : { is: "same" };
}

/** The lines at which the file shows loads to begin, up to a line. */
export const startLines = (rows: LoggerRows, layout: Layout, way: WayToFind, to: number): number[] =>
  findLoads(rows, layout, way)
    .map(({ from }) => nth(rows.lines, from))
    .filter((line) => line <= to);

/** The new readings of one load. */
export interface Addition {
  readonly load: number;
  /** True if the load was not on the sheet before. */
  readonly isNew: boolean;
  readonly fromLine: number;
  readonly toLine: number;
  /** New rows of the file, and how many of them go to the sheet. */
  readonly rows: number;
  readonly times: readonly number[];
  readonly readings: readonly number[];
  /** The row of the readings, from 0, at which they are written. */
  readonly at: number;
  /** In the unit of the sheet; of a new load. */
  readonly stress?: number;
}

export interface Continued {
  readonly additions: readonly Addition[];
  /** Loads that begin in the new lines and already hold readings, or have no place on the sheet. */
  readonly without: readonly { readonly load: number | null; readonly fromLine: number; readonly toLine: number }[];
  readonly read: ReadBefore;
}

export interface Again {
  readonly rows: LoggerRows;
  readonly layout: Layout;
  readonly before: ReadBefore;
  /** The sheet now, with the times that its loads hold. */
  readonly target: Target;
  readonly timesOnSheet: (load: number) => readonly number[];
  /** The line that was cut short before; its reading is written again, in place of the last one of its load. */
  readonly recut?: number;
  /** True if nothing more will be written to the file: its last rows need not wait. */
  readonly isFinished: boolean;
}

/** The index of the first row at or after a line. */
const rowAt = (rows: LoggerRows, line: number): number => {
  const found = rows.lines.findIndex((one) => one >= line);
  return found < 0 ? rows.lines.length : found;
};

/** The stretches of all rows: those that were read before stand, new ones follow from the rows after them. */
function stepsOf({ rows, layout, before, target }: Again, end: number, starts: readonly number[]): LoadStep[] {
  const known = before.loads.map(({ load, fromLine, toLine }): LoadStep => ({
    from: rowAt(rows, fromLine),
    to: rowAt(rows, toLine + 1),
    load,
  }));
  const readTo = rowAt(rows, before.to + 1);
  const begins = starts.map((line) => rowAt(rows, line)).filter((row) => row >= readTo && row < end);
  // Rows up to the next start belong to the load that the rows before them went to.
  const open = known.findIndex(({ to }) => to === readTo);
  const firstStart = begins[0] ?? end;
  const grown = known.map((step, index) => (index === open ? { ...step, to: Math.max(readTo, firstStart) } : step));
  const fresh = begins.map((from, index): LoadStep => ({ from, to: begins[index + 1] ?? end, load: null }));
  const last = Math.max(0, ...before.loads.map(({ load }) => load));
  const levels = fresh.map((step) => levelOf(rows, step));
  const stresses = levels.map((level) => stressOf(level, layout, target.stressUnit, target.diameter));
  const numbers = layout.load !== null && layout.loadKind === "number" ? levels : undefined;
  const called = numbered(
    fresh,
    stresses,
    {
      stresses: target.loads.slice(last).map(({ stress }) => stress),
      seating: before.to === 0 ? target.seating : undefined,
    },
    numbers?.map((number) => (number === undefined ? undefined : number - last)),
  );
  return [...grown, ...called.map((step) => ({ ...step, load: step.load === null ? null : step.load + last }))];
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(a));

/** The first line at which the file now shows a load to begin and did not before, or the reverse. */
function changedStart(starts: readonly number[], { starts: startsBefore, to }: ReadBefore): number | undefined {
  const seen = starts.filter((line) => line <= to);
  return [...seen, ...startsBefore]
    .sort((a, b) => a - b)
    .find((line) => !seen.includes(line) || !startsBefore.includes(line));
}

/** Of the new readings as many as there is room for, spread over them. */
function fittingOf(wanted: readonly number[], times: readonly number[], room: number): readonly number[] {
  if (wanted.length <= room) return wanted;
  const timesWanted = wanted.map((index) => nth(times, index));
  return thinned(timesWanted, "all", Math.max(0, room)).map((index) => nth(wanted, index));
}

/** What the rows of a load bring: `used` are the rows of its readings that are taken, `newFrom` is the first new line. */
function additionOf(
  again: Again,
  step: LoadStep,
  load: number,
  used: number,
  newFrom: number,
  isNew: boolean,
): Addition {
  const { rows, layout, before, target, timesOnSheet, recut } = again;
  const series = seriesOf(rows, step, before.choices.rule, layout.timesRun);
  const replaces = !isNew && recut !== undefined && series.lines.includes(recut);
  const at = isNew ? 0 : used - (replaces ? 1 : 0);
  const standing = isNew ? [] : timesOnSheet(load).slice(0, at);
  const fresh = series.times.map((_, index) => index).filter((index) => isNew || nth(series.lines, index) >= newFrom);
  const chosen = new Set(thinned(series.times, before.choices.thinning, target.room));
  const wanted = fresh.filter(
    (index) =>
      (chosen.has(index) || index === fresh.at(-1)) && !standing.some((time) => near(time, nth(series.times, index))),
  );
  const fitting = fittingOf(wanted, series.times, target.room - at);
  const stress = isNew ? stressOf(levelOf(rows, step), layout, target.stressUnit, target.diameter) : undefined;
  return {
    load,
    isNew,
    fromLine: Math.max(nth(rows.lines, step.from), newFrom),
    toLine: nth(rows.lines, step.to - 1),
    rows: fresh.length,
    times: fitting.map((index) => nth(series.times, index)),
    readings: fitting.map((index) => nth(series.readings, index)),
    at,
    ...(stress !== undefined && { stress }),
  };
}

/**
 * What is new for each load, with the record of what is then read. Refuses, with the line, if the lines that were read
 * no longer show the same loads.
 */
export function continued(
  again: Again,
): { readonly ok: true; readonly value: Continued } | { readonly ok: false; readonly line: number } {
  const { rows, layout, before, target, recut, isFinished } = again;
  const end = isFinished ? rows.lines.length : Math.max(0, rows.lines.length - WAITING_ROWS);
  const to = Math.max(before.to, rows.lines[end - 1] ?? 0);
  const starts = startLines(rows, layout, before.choices.way, to);
  const changed = changedStart(starts, before);
  if (changed !== undefined && before.to > 0) return { ok: false, line: changed };
  const newFrom = recut ?? before.to + 1;
  const additions: Addition[] = [];
  const without: Continued["without"][number][] = [];
  const loads = [...before.loads];
  for (const step of stepsOf(again, end, starts)) {
    if (step.to <= step.from) continue;
    const { load } = step;
    const [fromLine, toLine] = [nth(rows.lines, step.from), nth(rows.lines, step.to - 1)];
    if (toLine < newFrom) continue;
    const earlier = before.loads.find((one) => one.load === load);
    const place = load === null ? undefined : target.loads[load - 1];
    if (load === null || !place || (!earlier && place.held > 0)) {
      without.push({ load, fromLine, toLine });
      continue;
    }
    additions.push(additionOf(again, step, load, place.used, newFrom, !earlier));
    if (earlier) loads[loads.indexOf(earlier)] = { ...earlier, toLine };
    else loads.push({ load, fromLine, toLine });
  }
  return { ok: true, value: { additions, without, read: { choices: before.choices, loads, starts, to } } };
}

/** The columns to write: new loads from the top, others below the readings that they hold, which stay as they are. */
export function columnsAgain(target: Target, additions: readonly Addition[]): NamedColumns {
  const fresh = additions.filter(({ isNew }) => isNew);
  const columns: Record<string, readonly (CellValue | null)[]> = { ...columnsFor(target, fresh) };
  for (const { load, isNew, at, times, readings } of additions) {
    if (isNew || times.length === 0) continue;
    const held = new Array<null>(at).fill(null);
    columns[`times_${loadSuffix(load)}`] = [...held, ...times];
    columns[`readings_${loadSuffix(load)}`] = [...held, ...readings];
  }
  return columns;
}

const isLine = (value: unknown): value is number => typeof value === "number" && Number.isInteger(value) && value >= 0;

/** The record from its cell on the sheet of the file; undefined if the cell is missing or was changed. */
export function readBeforeFrom(text: string): ReadBefore | undefined {
  let read: unknown;
  try {
    read = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (read === null || typeof read !== "object") return undefined;
  const { choices, loads, starts, to } = read as Partial<Record<keyof ReadBefore, unknown>>; // Each part is checked below.
  if (!isLine(to) || !Array.isArray(starts) || !starts.every(isLine) || !Array.isArray(loads)) return undefined;
  const areLoads = loads.every(
    (one: unknown) =>
      one !== null &&
      typeof one === "object" &&
      ["load", "fromLine", "toLine"].every((key) => isLine((one as Record<string, unknown>)[key])), // An object has keys.
  );
  if (!areLoads || choices === null || typeof choices !== "object") return undefined;
  const { way, rule, thinning } = choices as Partial<Record<string, unknown>>; // Each part is checked below.
  const isOneOf = (value: unknown, words: readonly unknown[]): boolean => words.includes(value);
  const sound = isOneOf(way, WAYS_TO_FIND) && isOneOf(rule, ZERO_RULES) && isOneOf(thinning, THINNINGS);
  // The checks above have covered every part of the record.
  return sound ? (read as ReadBefore) : undefined;
}
