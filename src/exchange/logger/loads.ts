/**
 * Finds the loads of a test in the rows of its logger: from the load column, from times that begin again, or from
 * logging that becomes faster.
 */
import { firstOf, nth } from "../../reduction/numeric/lists";
import { median } from "../../reduction/numeric/median";
import { axialStress } from "../../reduction/loading";
import { convert } from "../../reduction/units";
import type { Layout } from "./layout";
import type { LoggerRows } from "./rows";

/** Rows from `from` up to, not including, `to`, under one load. */
export interface LoadStep {
  readonly from: number;
  readonly to: number;
  /** The number of the load on the data sheet, from 1; null if the stretch is not a load, such as the seating. */
  readonly load: number | null;
}

export const WAYS_TO_FIND = ["load", "restart", "interval", "none"] as const;
export type WayToFind = (typeof WAYS_TO_FIND)[number];

/**
 * A new load begins where the load column departs from its level by more than this share and by more than SCATTERS
 * times its own scatter, and stays there.
 */
const SHARE = 0.05;
const SCATTERS = 6;
/** A change of load stays if it holds for this many rows. */
const STAYS = 3;
/** This many rows settle the level of a load; later rows are compared with that level, even if they leave it slowly. */
const LEVEL_ROWS = 9;
/** A stretch shorter than this, in minutes, between one load and the next is the ramp to the next load. */
const RAMP = 1;
/** A load begins where the interval between rows becomes shorter by this factor. */
const QUICKENED = 8;

/** The ways in which the loads of this file can be found, the most reliable first. */
export function waysFor(rows: LoggerRows, layout: Layout): WayToFind[] {
  const ways: WayToFind[] = [];
  if (layout.load !== null) ways.push("load");
  if (layout.timesRun === "load") ways.push("restart");
  else ways.push("interval");
  return layout.timesRun === "load" && rows.restarts.length > 0 && layout.loadKind !== "number"
    ? ["restart", ...ways.filter((way) => way !== "restart"), "none"]
    : [...ways, "none"];
}

/** The rows whose load is known, each with the load. */
const knownLoads = (loads: readonly number[]): { readonly at: number; readonly load: number }[] =>
  loads.flatMap((load, at) => (Number.isNaN(load) ? [] : [{ at, load }]));

/** Rows at which the number of the load changes. */
function byNumber({ loads }: LoggerRows): number[] {
  const known = knownLoads(loads);
  return known.flatMap(({ at, load }, i) => (i > 0 && load !== nth(known, i - 1).load ? [at] : []));
}

function byLoad({ times, loads }: LoggerRows): number[] {
  const known = knownLoads(loads);
  if (known.length < 2) return [];
  const scatter = SCATTERS * median(known.slice(1).map(({ load }, i) => Math.abs(load - nth(known, i).load)));
  const differs = (a: number, b: number): boolean =>
    Math.abs(a - b) > Math.max(SHARE * Math.max(Math.abs(a), Math.abs(b)), scatter);

  const starts: number[] = [];
  let level = firstOf(known).load;
  let first = [level];
  for (let i = 1; i < known.length; i++) {
    const departs = ({ load }: { readonly load: number }): boolean => differs(load, level);
    const row = nth(known, i);
    if (departs(row) && known.slice(i, i + STAYS).every(departs)) {
      starts.push(row.at);
      // While the load still climbs from row to row, the level follows it.
      while (i + 1 < known.length && differs(nth(known, i + 1).load, nth(known, i).load)) i++;
      first = [];
    } else if (departs(row)) continue;
    if (first.length < LEVEL_ROWS) level = median((first = [...first, nth(known, i).load]));
  }
  return withoutRamps(starts, times, loads);
}

/** Leaves out a start that continues the one before it in the same direction within a minute. */
function withoutRamps(starts: readonly number[], times: readonly number[], loads: readonly number[]): number[] {
  const kept: number[] = [];
  const carriesOn = (start: number, before: number): boolean => {
    const passed = nth(times, start) - nth(times, before);
    const [was, jumped, now] = [nth(loads, before - 1), nth(loads, before), nth(loads, start)];
    return passed >= 0 && passed < RAMP && (now - jumped) * (jumped - was) > 0;
  };
  for (const start of starts) {
    const before = kept.at(-1);
    if (before === undefined || before === 0 || !carriesOn(start, before)) kept.push(start);
  }
  return kept;
}

/** Starts where the interval between rows becomes much shorter: at the row before the first short interval. */
function byInterval({ times }: LoggerRows): number[] {
  const starts: number[] = [];
  for (let i = 2; i + 1 < times.length; i++) {
    const at = nth(times, i);
    const [before, after] = [at - nth(times, i - 1), nth(times, i + 1) - at];
    if (after > 0 && before > QUICKENED * after && i - (starts.at(-1) ?? -Infinity) > STAYS) starts.push(i);
  }
  return starts;
}

/** The first row of each stretch; the first is 0. */
function startsOf(rows: LoggerRows, layout: Layout, way: WayToFind): number[] {
  if (way === "none") return [0];
  if (way === "restart") return [0, ...rows.restarts];
  if (way === "interval") return [0, ...byInterval(rows)];
  // Where times begin again, a load begins, whatever the load column says.
  const changes = layout.loadKind === "number" ? byNumber(rows) : byLoad(rows);
  return [...new Set([0, ...changes, ...rows.restarts])].sort((a, b) => a - b);
}

/**
 * A sheet has 48 loads at most; with ramps and seatings a file has a few times as many stretches. More than this are
 * not loads.
 */
export const MOST_STRETCHES = 200;

/** The loads as stretches of rows, without numbers. */
export function findLoads(rows: LoggerRows, layout: Layout, way: WayToFind): LoadStep[] {
  const starts = startsOf(rows, layout, way);
  if (rows.lines.length === 0) return [];
  return starts.map((from, index) => ({ from, to: starts[index + 1] ?? rows.lines.length, load: null }));
}

/** Joins a stretch to the one before it. */
export const joinToBefore = (steps: readonly LoadStep[], index: number): LoadStep[] =>
  steps.flatMap((step, i) => (i === index - 1 ? [{ ...step, to: nth(steps, index).to }] : i === index ? [] : [step]));

/** Begins a new stretch at a row within one; returns the same stretches if one begins at the row. */
export function splitAt(steps: readonly LoadStep[], row: number): LoadStep[] {
  return steps.flatMap((step) =>
    row > step.from && row < step.to
      ? [
          { ...step, to: row },
          { from: row, to: step.to, load: null },
        ]
      : [step],
  );
}

/** The median of the load column under a stretch; undefined if the column has no value there. */
export function levelOf({ loads }: LoggerRows, { from, to }: LoadStep): number | undefined {
  const known = loads.slice(from, to).filter((load) => !Number.isNaN(load));
  return known.length > 0 ? median(known) : undefined;
}

/** The stress of a level in `unit`; undefined if it cannot be calculated. A force needs the diameter (mm). */
export function stressOf(
  level: number | undefined,
  layout: Layout,
  unit: string,
  diameter?: number,
): number | undefined {
  if (level === undefined || layout.loadKind === "number") return undefined;
  if (layout.loadKind === "stress") return convert(level, "stress", layout.loadUnit, unit);
  if (level === 0) return 0;
  const force = convert(level, "force", layout.loadUnit, "N");
  const stress = axialStress(force, diameter ?? NaN, layout.lever);
  return stress.ok ? convert(stress.value, "stress", "kPa", unit) : undefined;
}

/** Stresses within this share of each other are one load: a measured stress is never exactly the nominal stress. */
const NEAR = 0.05;

const near = (a: number, b: number): boolean => Math.abs(a - b) <= NEAR * Math.max(Math.abs(a), Math.abs(b));

/**
 * Gives the stretches load numbers, in test order: the number of the load on the sheet with the same stress, else of
 * the next load if its stress is blank; if no stress is known, the next load without readings (`held` has the number of
 * readings of each load). A first stretch without stress, or under the seating stress, is not a load. If the file numbers
 * the loads, its numbers are taken.
 */
export function numbered(
  steps: readonly LoadStep[],
  stresses: readonly (number | undefined)[],
  sheet: {
    readonly stresses: readonly (number | undefined)[];
    readonly seating: number | undefined;
    readonly held?: readonly number[];
  },
  numbers?: readonly (number | undefined)[],
): LoadStep[] {
  const most = sheet.stresses.length;
  if (numbers)
    return steps.map((step, i) => {
      const number = numbers[i];
      return { ...step, load: number !== undefined && number >= 1 && number <= most ? Math.round(number) : null };
    });
  const known = sheet.stresses.some((stress) => stress !== undefined);
  let next = 0;
  return steps.map((step, i) => {
    const stress = stresses[i];
    if (
      i === 0 &&
      stress !== undefined &&
      (stress <= 0 || (sheet.seating !== undefined && near(stress, sheet.seating)))
    )
      return { ...step, load: null };
    if (known && stress !== undefined) {
      const found = sheet.stresses.findIndex(
        (wanted, at) => at >= next && wanted !== undefined && near(wanted, stress),
      );
      if (found >= 0) next = found + 1;
      else if (next < most && sheet.stresses[next] === undefined) next++;
      else return { ...step, load: null };
    } else {
      next++;
      while ((sheet.held?.[next - 1] ?? 0) > 0) next++;
    }
    return { ...step, load: next <= most ? next : null };
  });
}

/** Why a stretch goes past loads of the sheet, or to none of them. */
export type Passing =
  /** The stress of the stretch is that of a later load of the sheet; the loads passed have no readings. */
  | { readonly is: "stress"; readonly passed: readonly number[] }
  /** The loads passed have readings already. */
  | { readonly is: "readings"; readonly passed: readonly number[] }
  /** No load of the sheet after this one has the stress of the stretch. */
  | { readonly is: "none"; readonly after: number };

/**
 * For each stretch, as `numbered` gave it a load: why the load is not the next one; undefined if it is. `onSheet` and
 * `held` have the stress and the number of readings of each load of the sheet.
 */
export function passings(
  steps: readonly LoadStep[],
  stresses: readonly (number | undefined)[],
  onSheet: readonly (number | undefined)[],
  held: readonly number[],
): (Passing | undefined)[] {
  let before = 0;
  return steps.map(({ load }, i) => {
    if (load === null) return i > 0 && stresses[i] !== undefined ? { is: "none", after: before } : undefined;
    const all = Array.from({ length: Math.max(0, load - before - 1) }, (_, at) => before + 1 + at);
    before = load;
    const isHeld = (one: number): boolean => (held[one - 1] ?? 0) > 0;
    if (stresses[i] === undefined || onSheet[load - 1] === undefined) {
      const passed = all.filter(isHeld);
      return passed.length > 0 ? { is: "readings", passed } : undefined;
    }
    const passed = all.filter((one) => !isHeld(one));
    return passed.length > 0 ? { is: "stress", passed } : undefined;
  });
}

/** Loads that were given to two or more stretches. */
export function givenTwice(steps: readonly LoadStep[]): number[] {
  const given = steps.map(({ load }) => load).filter((load) => load !== null);
  return [...new Set(given.filter((load, index) => given.indexOf(load) !== index))];
}
