/**
 * The points of a series: each reading of a short record, or the averages of a long one in equal steps of log time,
 * without its spikes.
 */
import { say, type Message } from "../../message";
import { firstOf, nth } from "../../numeric/lists";
import { median } from "../../numeric/median";
import type { Series } from "../readings";
import { rowsCalled } from "./row-words";
import type { Kept } from "./rows";

/** More readings than this are averaged in equal steps of log time. */
export const MOST_READINGS = 120;
/**
 * Steps per log cycle in the averaging. A study with known truth showed: fewer steps blur the inflection, more gain
 * nothing.
 */
const STEPS_PER_CYCLE = 20;
/** An average weighs as much as this many readings at most: logger noise is not independent from second to second. */
const MOST_WEIGHT = 10;

/**
 * Within a step of at least this many readings, a reading is a spike if it is off the median by more than SPIKE median
 * departures.
 */
const READINGS_FOR_SPIKES = 5;
const SPIKE = 10;

/** Neighbouring readings that become one point, from the index `start` to before `stop`. */
interface Run {
  readonly start: number;
  readonly stop: number;
  /** The sum of the times, and that of the readings. */
  readonly time: number;
  readonly reading: number;
  readonly least: number;
  readonly most: number;
}

function runOf(times: Float64Array, readings: Float64Array, start: number, stop: number): Run {
  let time = 0;
  let reading = 0;
  let least = Infinity;
  let most = -Infinity;
  for (let i = start; i < stop; i++) {
    // The index stays within the columns: hence each `!`.
    const one = readings[i]!;
    time += times[i]!;
    reading += one;
    if (one < least) least = one;
    if (one > most) most = one;
  }
  return { start, stop, time, reading, least, most };
}

/**
 * The runs of a record: of a short one, the readings of each time; of a long one, the readings of equal steps of log
 * time. The early minutes have fewer readings than steps, and keep each reading.
 */
export function runsOf({ times, readings }: Kept): Run[] {
  const end = times.length > MOST_READINGS ? endOfStep(times) : endOfTime(times);
  const runs: Run[] = [];
  for (let start = 0; start < times.length;) {
    const stop = end(start);
    runs.push(runOf(times, readings, start, stop));
    start = stop;
  }
  return runs;
}

/**
 * One point for each run: the means of time and reading, and the rows they come from. Within a run of a long record a
 * reading far from the median is a spike, and is left out.
 */
export function averagesOf(
  { times, readings, rowOf }: Kept,
  runs: readonly Run[],
  step: number,
): Series & { readonly spikes: readonly number[] } {
  const series: { times: number[]; readings: number[]; rows: Message[]; weights: number[] } = {
    times: [],
    readings: [],
    rows: [],
    weights: [],
  };
  const spikes: number[] = [];
  const isLong = times.length > MOST_READINGS;
  for (const run of runs) {
    const { start, stop } = run;
    const isWrong = isLong && wrongIn(readings.subarray(start, stop), run, step);
    let n = stop - start;
    let { time, reading } = run;
    if (isWrong) {
      const isUsed = (_: number, i: number): boolean => !isWrong(nth(readings, start + i));
      const used = readings.subarray(start, stop).filter(isUsed);
      n = used.length;
      ({ time, reading } = runOf(times.subarray(start, stop).filter(isUsed), used, 0, n));
      for (let i = start; i < stop; i++) if (isWrong(nth(readings, i))) spikes.push(rowOf(i));
    }
    const [first, last] = [rowOf(start), rowOf(stop - 1)];
    series.times.push(time / n);
    series.readings.push(reading / n);
    series.rows.push(
      stop - start <= 4
        ? rowsCalled(Array.from({ length: stop - start }, (_, i) => rowOf(start + i)))
        : say`rows ${first} to ${last}`,
    );
    series.weights.push(Math.min(n, MOST_WEIGHT));
  }
  return { ...series, spikes };
}

/** Returns whether a reading of a run is a spike; undefined if none is. */
function wrongIn(run: Float64Array, { least, most }: Run, step: number): ((reading: number) => boolean) | undefined {
  if (run.length < READINGS_FOR_SPIKES || most - least <= SPIKE * step) return undefined;
  const middle = median(run);
  const scatter = median(run.map((reading) => Math.abs(reading - middle)));
  const limit = SPIKE * Math.max(scatter, step);
  return limit > 0 ? (reading) => Math.abs(reading - middle) > limit : undefined;
}

/** Returns the end of the readings of one time, by their beginning. */
const endOfTime =
  (times: Float64Array) =>
  (start: number): number => {
    let stop = start + 1;
    while (times[stop] === times[start]) stop++;
    return stop;
  };

/** The index of the last time before an edge; `from` is the index of one before it. The times rise. */
function lastBefore(times: Float64Array, edge: number, from: number): number {
  let [low, high] = [from, times.length];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (nth(times, middle) * (1 + 1e-9) < edge) low = middle;
    else high = middle;
  }
  return low;
}

/** Returns the end of a step of log time, by its beginning. */
function endOfStep(times: Float64Array): (start: number) => number {
  const width = 10 ** (1 / STEPS_PER_CYCLE);
  let edge = firstOf(times);
  return (start) => {
    while (edge <= nth(times, start) * (1 + 1e-9)) edge *= width;
    return 1 + lastBefore(times, edge, start);
  };
}
