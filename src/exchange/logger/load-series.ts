/** The times since a load was applied and its readings, and the selection of them that goes to the sheet. */
import { MOST_READINGS } from "../../reduction/increment/cleaning/averages";
import { firstOf, lastOf, nth } from "../../reduction/numeric/lists";
import { HAND_TIMES } from "../../specification/readings";
import type { Layout } from "./layout";
import type { LoadStep } from "./loads";
import type { LoggerRows } from "./rows";

/**
 * The reading at time 0 of a load, in a file whose times run on. "before": time counts from the first row of the load,
 * and the reading at 0 is the last one before the load (the rule of the trade). "first": the first row of the load.
 * "last row": the last row before the load, and time counts from that row. In a file whose times begin again, it is the
 * row at time 0 of the file if there is one.
 */
export const ZERO_RULES = ["before", "first", "last row"] as const;
export type ZeroRule = (typeof ZERO_RULES)[number];

export interface LoadSeries {
  /** Minutes since the load was applied, increasing. */
  readonly times: readonly number[];
  /** Readings as in the file. */
  readonly readings: readonly number[];
  /** The line of the file for each reading. */
  readonly lines: readonly number[];
  /** Rows left out because their times run back, for instance where two recordings were joined. */
  readonly leftOut: number;
}

/** Rounds to a ten-millionth of a minute: differences of large clock times are not more exact. */
const tidy = (minutes: number): number => Math.round(minutes * 1e7) / 1e7;

/** The whole series of one load. */
export function seriesOf(
  { times, readings, lines }: LoggerRows,
  { from, to }: LoadStep,
  rule: ZeroRule,
  timesRun: Layout["timesRun"],
): LoadSeries {
  const before = from > 0 ? from - 1 : undefined;
  const restarts = timesRun === "load" && (before === undefined || nth(times, from) <= nth(times, before));
  const start = restarts ? 0 : rule === "last row" && before !== undefined ? nth(times, before) : nth(times, from);
  const indices = Array.from({ length: to - from }, (_, i) => from + i);
  const elapsed = (index: number): number => (restarts ? nth(times, index) : tidy(nth(times, index) - start));
  const hasOwnZero = elapsed(from) === 0;
  const takesBefore = before !== undefined && rule !== "first" && !(restarts && hasOwnZero);
  const own = takesBefore && hasOwnZero ? indices.slice(1) : indices;
  const series: Record<"times" | "readings" | "lines", number[]> = { times: [], readings: [], lines: [] };
  let leftOut = 0;
  for (const index of takesBefore ? [before, ...own] : own) {
    const time = index === before ? 0 : elapsed(index);
    if (time <= (series.times.at(-1) ?? -Infinity)) {
      leftOut++;
      continue;
    }
    series.times.push(time);
    series.readings.push(nth(readings, index));
    series.lines.push(nth(lines, index));
  }
  return { ...series, leftOut };
}

export const THINNINGS = ["even", "hand", "all"] as const;
/** "even": evenly in log time; "hand": nearest to the times of a hand schedule; "all": every row. */
export type Thinning = (typeof THINNINGS)[number];

/** Rows per cycle of log time. */
const PER_CYCLE = 20;

/**
 * The first row, then each row that lies a whole step of log time beyond the last row taken. Rows further apart than
 * the step, as in the first minutes, are all kept; the last row is always kept.
 */
function evenly(times: readonly number[], perCycle: number): number[] {
  const step = 10 ** (1 / perCycle);
  const kept: number[] = [];
  let edge = -Infinity;
  times.forEach((time, index) => {
    if (time * (1 + 1e-9) < edge) return;
    kept.push(index);
    edge = time > 0 ? time * step : 0;
  });
  if (kept[kept.length - 1] !== times.length - 1) kept.push(times.length - 1);
  return kept;
}

/** Time 0, the rows nearest in log time to each time of the hand schedule within the series, and the last row. */
function byHand(times: readonly number[]): number[] {
  const last = times.length - 1;
  const kept = new Set([0, last]);
  for (const wanted of HAND_TIMES) {
    if (wanted === 0 || wanted > lastOf(times) * 1.2) continue;
    const away = (index: number): number => Math.abs(Math.log(nth(times, index) / wanted));
    let best = firstOf(times) > 0 ? 0 : 1;
    for (let index = best; index <= last; index++) if (away(index) < away(best)) best = index;
    if (best <= last && away(best) < Math.log(1.5)) kept.add(best);
  }
  return [...kept].sort((a, b) => a - b);
}

/** Indices of the rows that go to the sheet: at most `room`, with larger steps if they do not fit. */
export function thinned(times: readonly number[], how: Thinning, room: number): number[] {
  if (times.length === 0) return [];
  // So few rows are reduced one by one: leaving rows out would save nothing.
  const whole = how === "all" || (how === "even" && times.length <= MOST_READINGS);
  if (whole && times.length <= room) return times.map((_, index) => index);
  if (how === "hand") return byHand(times);
  let perCycle = how === "all" ? 1000 : PER_CYCLE;
  let kept = evenly(times, perCycle);
  while (kept.length > room && perCycle > 1) kept = evenly(times, (perCycle *= 0.9));
  return kept;
}
