/**
 * From a column of times and a column of readings to a clean series. Nothing is altered: a reading that cannot be used
 * is left out, and a remark names its row.
 *
 * A blank cell may be 0 as well as null: desktop Excel passes a blank cell as 0, the web as null, and both must give
 * the same answers. Only the first time of a load is zero, so a zero time after the first row is a blank cell.
 */
import { say, digits, listed, type Message } from "../message";
import { badInput, given, type Outcome } from "../outcome";
import { firstOf, lastOf, nth } from "../numeric/lists";
import { median } from "../numeric/median";
import { readingStep } from "../numeric/step";

/** A series in order of time; the arrays have the same length. */
export interface Series {
  /** Minutes, increasing, greater than zero. */
  readonly times: readonly number[];
  readonly readings: readonly number[];
  /** The rows of the range that each point comes from: "row 7", "rows 120 to 136". */
  readonly rows: readonly Message[];
  /** How many readings were averaged into each point, at most MOST_WEIGHT. */
  readonly weights: readonly number[];
}

export interface CleanReadings {
  /** The series that the reductions use: every reading, or averages of the readings in equal steps of log time. */
  readonly series: Series;
  /** The reading at t = 0, if there is one. */
  readonly zeroReading: number | undefined;
  /** How many readings were used, before averaging. */
  readonly count: number;
  /** The last time of the range, in minutes. */
  readonly lastTime: number;
  /**
   * The step in which the readings come (dial division, logger digit), in the reading unit; 0 if the readings show
   * none.
   */
  readonly step: number;
  /** Largest reading less smallest. */
  readonly travel: number;
}

/** The series without the readings that were found wrong. */
export function usedReadings({ series }: CleanReadings, { leftOut }: { readonly leftOut: readonly number[] }): Series {
  if (!leftOut.length) return series;
  const kept = <T>(values: readonly T[]) => values.filter((_, i) => !leftOut.includes(i));
  return {
    times: kept(series.times),
    readings: kept(series.readings),
    rows: kept(series.rows),
    weights: kept(series.weights),
  };
}

/** The indices of the times from one time to another, both included. */
export const indicesFrom = (times: readonly number[], from: number, to = Infinity): number[] =>
  times.flatMap((time, index) => (time >= from && time <= to ? [index] : []));

/** More readings than this are averaged in equal steps of log time. */
export const MOST_READINGS = 120;
/**
 * Steps per log cycle in the averaging. A study with known truth showed: fewer steps blur the inflection, more gain
 * nothing.
 */
const STEPS_PER_CYCLE = 20;
/** An average weighs as much as this many readings at most: logger noise is not independent from second to second. */
const MOST_WEIGHT = 10;

/** A larger ratio of neighbouring times looks like a change of unit. Common practice, no source. */
const MOST_JUMP = 30;
/**
 * A record whose first time is below DAYS_FIRST and whose last is below DAYS_LAST is probably in days, not minutes:
 * 0.0007 of a day is 1 min.
 */
const DAYS_FIRST = 0.0015;
const DAYS_LAST = 4;

/**
 * Within a step of at least this many readings, a reading is a spike if it is off the median by more than SPIKE median
 * departures.
 */
const READINGS_FOR_SPIKES = 5;
const SPIKE = 10;

/** Readings and their rows, before averaging; columns, since there may be 100,000. */
interface Kept {
  readonly times: Float64Array;
  readonly readings: Float64Array;
  readonly rows: Int32Array;
}

const list = (rows: readonly number[]): Message =>
  rows.length === 1
    ? say`row ${firstOf(rows)}`
    : rows.length <= 4
      ? say`rows ${listed(rows.slice(0, -1))} and ${lastOf(rows)}`
      : say`rows ${listed(rows.slice(0, 3))} and ${rows.length - 3} more`;

const leftOut = (rows: readonly number[], why: Message): Message =>
  rows.length === 1 ? say`${list(rows)} is left out: ${why}` : say`${list(rows)} are left out: ${why}`;

/**
 * `zerosCount`: whether 0 is a reading, as of a transducer that was zeroed; a blank must then be null or NaN. Refuses a
 * negative time (naming its row). Each method says how few readings are enough.
 */
export function cleanReadings(
  times: ArrayLike<number | null>,
  readings: ArrayLike<number | null>,
  zerosCount = false,
): Outcome<CleanReadings> {
  const remarks: Message[] = [];
  const blankTimes: number[] = [];
  const blankReadings: number[] = [];
  const keptTimes = new Float64Array(times.length);
  const keptReadings = new Float64Array(times.length);
  const keptRows = new Int32Array(times.length);
  let count = 0;
  let zeroReading: number | undefined;
  let seen = false;
  let backRow = 0;
  let increasing = true;
  let last = 0;
  let least = Infinity;
  let most = -Infinity;

  for (let i = 0; i < times.length; i++) {
    const time = times[i] || 0;
    const reading = readings[i] || 0;
    const isBlank = reading === 0 && !(zerosCount && readings[i] === 0);
    if (time > 0 && !isBlank) {
      if (time <= last) increasing = false;
      if (time < last && backRow === 0) backRow = i + 1;
      last = time;
      if (reading < least) least = reading;
      if (reading > most) most = reading;
      keptTimes[count] = time;
      keptReadings[count] = reading;
      keptRows[count] = i + 1;
      count++;
    } else if (time < 0)
      return badInput(
        say`row ${i + 1} of the times is ${time}: a time before the load cannot be used; correct or clear that row`,
      );
    else if (time > 0) blankReadings.push(i + 1);
    else if (isBlank) continue;
    else if (seen) blankTimes.push(i + 1);
    else zeroReading = reading;
    seen = true;
  }

  const asGiven: Kept = {
    times: keptTimes.subarray(0, count),
    readings: keptReadings.subarray(0, count),
    rows: keptRows.subarray(0, count),
  };
  if (blankTimes.length)
    remarks.push(leftOut(blankTimes, say`a reading without a time (a time of zero counts only in the first row)`));
  // Times of the schedule after the last reading are not left out: nothing was read then.
  const lastRow = keptRows[count - 1] ?? 0;
  const blankBetween = blankReadings.filter((row) => row < lastRow);
  if (blankBetween.length) remarks.push(leftOut(blankBetween, say`the reading is blank or zero`));
  if (backRow > 0)
    remarks.push(
      say`the time in row ${backRow} is before a time above it: the times are not in order and were sorted; correct it if the clock was wrong`,
    );
  const kept = backRow > 0 ? sorted(asGiven) : asGiven;
  const repeated = increasing ? [] : repeatedRows(kept);
  if (repeated.length) remarks.push(say`${list(repeated)} repeat a time: readings at the same time were averaged`);
  const step = readingStep(kept.readings, { least, most });
  const { spikes, ...series } = count > MOST_READINGS ? averageSteps(kept, step) : averageEqualTimes(kept);
  if (spikes.length) remarks.push(leftOut(spikes, say`far off the readings before and after`));
  checkTimes(series, remarks);
  return given(
    { series, zeroReading, count, lastTime: kept.times[count - 1] ?? 0, step, travel: count ? most - least : 0 },
    remarks,
  );
}

function sorted({ times, readings, rows }: Kept): Kept {
  const order = Array.from(times, (_, i) => i).sort((a, b) => nth(times, a) - nth(times, b) || a - b);
  return {
    times: Float64Array.from(order, (i) => nth(times, i)),
    readings: Float64Array.from(order, (i) => nth(readings, i)),
    rows: Int32Array.from(order, (i) => nth(rows, i)),
  };
}

/** Rows whose time occurs in another row too, in order of rows. */
function repeatedRows({ times, rows }: Kept): number[] {
  const repeated = rows.filter((_, i) => times[i] === times[i - 1] || times[i] === times[i + 1]);
  return [...repeated.sort()];
}

/** Whether a reading is wrong; undefined if none of the run is. */
type Wrong = ((reading: number) => boolean) | undefined;

interface Sums {
  readonly time: number;
  readonly reading: number;
  /** Largest reading less smallest. */
  readonly travel: number;
}

function sumsOf(times: Float64Array, readings: Float64Array): Sums {
  let time = 0;
  let reading = 0;
  let least = Infinity;
  let most = -Infinity;
  for (let i = 0; i < times.length; i++) {
    // The index stays within the columns: hence each `!`.
    const one = readings[i]!;
    time += times[i]!;
    reading += one;
    if (one < least) least = one;
    if (one > most) most = one;
  }
  return { time, reading, travel: most - least };
}

/**
 * One point for each run of readings up to `end(start)`: the means of time and reading, and the rows they come from.
 */
function averageRuns(
  { times, readings, rows }: Kept,
  end: (start: number) => number,
  wrongIn: (run: Float64Array, travel: number) => Wrong,
): Series & { readonly spikes: readonly number[] } {
  const series: { times: number[]; readings: number[]; rows: Message[]; weights: number[] } = {
    times: [],
    readings: [],
    rows: [],
    weights: [],
  };
  const spikes: number[] = [];
  for (let start = 0; start < times.length;) {
    const stop = end(start);
    const run = readings.subarray(start, stop);
    const from = rows.subarray(start, stop);
    let n = run.length;
    let sums = sumsOf(times.subarray(start, stop), run);
    const isWrong = wrongIn(run, sums.travel);
    if (isWrong) {
      const isUsed = (_: number, i: number): boolean => !isWrong(nth(run, i));
      const used = run.filter(isUsed);
      for (const row of from.filter((_, i) => isWrong(nth(run, i)))) spikes.push(row);
      n = used.length;
      sums = sumsOf(times.subarray(start, stop).filter(isUsed), used);
    }
    series.times.push(sums.time / n);
    series.readings.push(sums.reading / n);
    series.rows.push(from.length <= 4 ? list([...from]) : say`rows ${firstOf(from)} to ${lastOf(from)}`);
    series.weights.push(Math.min(n, MOST_WEIGHT));
    start = stop;
  }
  return { ...series, spikes };
}

/** A short record: one point for each time. */
const averageEqualTimes = (kept: Kept) =>
  averageRuns(
    kept,
    (start) => {
      let stop = start + 1;
      while (kept.times[stop] === kept.times[start]) stop++;
      return stop;
    },
    () => undefined,
  );

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

/**
 * A long record: averages in equal steps of log time. The early minutes have fewer readings than steps, and keep each
 * reading. Within a step a reading far from the median is a spike, and is left out.
 */
function averageSteps(kept: Kept, step: number) {
  const { times } = kept;
  const width = 10 ** (1 / STEPS_PER_CYCLE);
  let edge = firstOf(times);
  const end = (start: number): number => {
    while (edge <= nth(times, start) * (1 + 1e-9)) edge *= width;
    return 1 + lastBefore(times, edge, start);
  };
  const wrongIn = (run: Float64Array, travel: number): Wrong => {
    if (run.length < READINGS_FOR_SPIKES || travel <= SPIKE * step) return undefined;
    const middle = median(run);
    const scatter = median(run.map((reading) => Math.abs(reading - middle)));
    const limit = SPIKE * Math.max(scatter, step);
    return limit > 0 ? (reading) => Math.abs(reading - middle) > limit : undefined;
  };
  return averageRuns(kept, end, wrongIn);
}

/**
 * Adds a remark on times that look like another unit: neighbours that differ by more than MOST_JUMP times, or times in
 * days.
 */
function checkTimes({ times, rows }: Series, remarks: Message[]): void {
  if (times.length < 2) return;
  const jump = times.findIndex((time, i) => i > 0 && time > MOST_JUMP * nth(times, i - 1));
  if (jump > 0)
    remarks.push(
      say`the time jumps from ${digits(nth(times, jump - 1), 3)} to ${digits(nth(times, jump), 3)} min (${nth(rows, jump)}): are all times in minutes?`,
    );
  if (firstOf(times) < DAYS_FIRST && lastOf(times) < DAYS_LAST)
    remarks.push(say`the times look like days (clock times in Excel are days): multiply them by 1440 to have minutes`);
}
