/**
 * From a column of times and one of readings to a clean series. Nothing is altered: what cannot be used is left out, and
 * the remarks name its row.
 *
 * A blank cell is 0 here as well as null: desktop Excel hands blanks over as 0, the web as null, and both must give the
 * same answers. Times never repeat zero, so a zero time after the first row is a blank one.
 */
import { say, digits, listed, type Digits, type Message } from "../message";
import { badInput, given, type Outcome } from "../outcome";
import { median } from "../numeric/median";
import { readingStep } from "../numeric/step";

/** A series in order of time; the arrays have one length. */
export interface Series {
  /** Minutes, increasing, greater than zero. */
  readonly times: readonly number[];
  readonly readings: readonly number[];
  /** The rows of the range that each reading comes from: "row 7", "rows 120 to 136". */
  readonly rows: readonly Message[];
  /** How many readings were averaged into each, at most MOST_WEIGHT. */
  readonly weights: readonly number[];
}

export interface CleanReadings {
  /** What the reductions work on: every reading, or averages of them in equal steps of log time. */
  readonly series: Series;
  /** The reading at t = 0, if there is one. */
  readonly zeroReading: number | undefined;
  /** How many readings were used, before averaging. */
  readonly count: number;
  /** The last time of the range, in minutes. */
  readonly lastTime: number;
  /** The step in which the readings come (dial division, logger digit); 0 if none is visible. Reading unit. */
  readonly step: number;
  /** Largest less smallest reading. */
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

/** Readings beyond this number are averaged in equal steps of log time. */
export const MOST_READINGS = 120;
/** Steps per cycle of log time in that averaging. A study with known truth: fewer blur the inflection, more gain nothing. */
const STEPS_PER_CYCLE = 20;
/** An average counts as this many readings at most: logger noise is not independent from second to second. */
const MOST_WEIGHT = 10;

/** Neighbouring times further apart than this ratio look like a change of unit. Common practice, no source. */
const MOST_JUMP = 30;
/** Times from under 2 s to under 4 min are likelier days: 0.0007 of a day is 1 min. */
const DAYS_FIRST = 0.0015;
const DAYS_LAST = 4;

/** Within a step of so many readings, one off the middle by so many median departures is a spike. */
const READINGS_FOR_SPIKES = 5;
const SPIKE = 10;

/** Readings and the rows that they stand in, before averaging. */
interface Kept {
  times: number[];
  readings: number[];
  rows: number[];
}

const list = (rows: readonly number[]): Message =>
  rows.length === 1
    ? say`row ${rows[0]}`
    : rows.length <= 4
      ? say`rows ${listed(rows.slice(0, -1))} and ${rows[rows.length - 1]}`
      : say`rows ${listed(rows.slice(0, 3))} and ${rows.length - 3} more`;

const leftOut = (rows: readonly number[], why: Message): Message =>
  rows.length === 1 ? say`${list(rows)} is left out: ${why}` : say`${list(rows)} are left out: ${why}`;

/**
 * `zerosCount`: whether a reading of 0 is a reading, as of a transducer that was zeroed; blanks are null or NaN then.
 * Refuses a negative time (naming its row). How few readings are enough is for the methods to say.
 */
export function cleanReadings(
  times: ArrayLike<number | null>,
  readings: ArrayLike<number | null>,
  zerosCount = false,
): Outcome<CleanReadings> {
  const remarks: Message[] = [];
  const blankTimes: number[] = [];
  const blankReadings: number[] = [];
  let kept: Kept = { times: [], readings: [], rows: [] };
  let zeroReading: number | undefined;
  let seen = false;
  let ordered = true;
  let last = 0;
  let least = Infinity;
  let most = -Infinity;

  for (let i = 0; i < times.length; i++) {
    const time = times[i] || 0;
    const reading = readings[i] || 0;
    const isBlank = reading === 0 && !(zerosCount && readings[i] === 0);
    if (time < 0)
      return badInput(
        say`row ${i + 1} of the times is ${time}: a time before the load cannot be used; correct or clear that row`,
      );
    if (time === 0 && isBlank) continue;
    if (time === 0) {
      if (seen) blankTimes.push(i + 1);
      else zeroReading = reading;
    } else if (isBlank) blankReadings.push(i + 1);
    else {
      if (time < last) ordered = false;
      last = time;
      if (reading < least) least = reading;
      if (reading > most) most = reading;
      kept.times.push(time);
      kept.readings.push(reading);
      kept.rows.push(i + 1);
    }
    seen = true;
  }

  const count = kept.times.length;
  if (blankTimes.length)
    remarks.push(leftOut(blankTimes, say`a reading without a time (a time of zero counts only in the first row)`));
  if (blankReadings.length && count) remarks.push(leftOut(blankReadings, say`the reading is blank or zero`));
  if (!ordered) {
    remarks.push(say`the times are not in order: they were sorted`);
    kept = sorted(kept);
  }
  const repeated = repeatedRows(kept);
  if (repeated.length) remarks.push(say`${list(repeated)} repeat a time: readings at the same time were averaged`);
  const step = readingStep(kept.readings);
  const { spikes, ...series } = count > MOST_READINGS ? averageSteps(kept, step) : averageEqualTimes(kept);
  if (spikes.length) remarks.push(leftOut(spikes, say`far off the readings before and after`));
  checkTimes(series, remarks);
  return given(
    { series, zeroReading, count, lastTime: kept.times[count - 1] ?? 0, step, travel: count ? most - least : 0 },
    remarks,
  );
}

function sorted({ times, readings, rows }: Kept): Kept {
  const order = times.map((_, i) => i).sort((a, b) => times[a] - times[b] || a - b);
  return {
    times: order.map((i) => times[i]),
    readings: order.map((i) => readings[i]),
    rows: order.map((i) => rows[i]),
  };
}

/** Rows whose time another row has too, in order of rows. */
function repeatedRows({ times, rows }: Kept): number[] {
  const repeated: number[] = [];
  for (let i = 0; i < times.length; i++)
    if (times[i] === times[i - 1] || times[i] === times[i + 1]) repeated.push(rows[i]);
  return repeated.sort((a, b) => a - b);
}

/** One point for each run of readings up to `end(start)`: the means of time and reading, and where they come from. */
function averageRuns(
  { times, readings, rows }: Kept,
  end: (start: number) => number,
  wrong: (start: number, stop: number) => (reading: number) => boolean,
): Series & { readonly spikes: readonly number[] } {
  const series = { times: [] as number[], readings: [] as number[], rows: [] as Message[], weights: [] as number[] };
  const spikes: number[] = [];
  for (let start = 0; start < times.length;) {
    const stop = end(start);
    const isWrong = wrong(start, stop);
    let n = 0;
    let time = 0;
    let reading = 0;
    for (let i = start; i < stop; i++) {
      if (isWrong(readings[i])) {
        spikes.push(rows[i]);
        continue;
      }
      n++;
      time += times[i];
      reading += readings[i];
    }
    series.times.push(time / n);
    series.readings.push(reading / n);
    series.rows.push(stop - start <= 4 ? list(rows.slice(start, stop)) : say`rows ${rows[start]} to ${rows[stop - 1]}`);
    series.weights.push(Math.min(n, MOST_WEIGHT));
    start = stop;
  }
  return { ...series, spikes };
}

const none = () => () => false;

/** Few readings: one point for each time. */
const averageEqualTimes = (kept: Kept) =>
  averageRuns(
    kept,
    (start) => {
      let stop = start + 1;
      while (kept.times[stop] === kept.times[start]) stop++;
      return stop;
    },
    none,
  );

/**
 * Many readings: their averages in equal steps of log time; the early minutes, less dense than that, keep their own. Within
 * a step a reading far off the middle one is a spike, and left out.
 */
function averageSteps(kept: Kept, step: number) {
  const { times, readings } = kept;
  const width = 10 ** (1 / STEPS_PER_CYCLE);
  let edge = times[0];
  return averageRuns(
    kept,
    (start) => {
      while (edge <= times[start] * (1 + 1e-9)) edge *= width;
      let stop = start + 1;
      while (stop < times.length && times[stop] * (1 + 1e-9) < edge) stop++;
      return stop;
    },
    (start, stop) => {
      let least = Infinity;
      let most = -Infinity;
      for (let i = start; i < stop; i++) {
        if (readings[i] < least) least = readings[i];
        if (readings[i] > most) most = readings[i];
      }
      if (stop - start < READINGS_FOR_SPIKES || most - least <= SPIKE * step) return () => false;
      const middle = median(readings.slice(start, stop));
      const scatter = median(readings.slice(start, stop).map((reading) => Math.abs(reading - middle)));
      const limit = SPIKE * Math.max(scatter, step);
      return (reading) => limit > 0 && Math.abs(reading - middle) > limit;
    },
  );
}

/** Times that look like another unit: a jump of more than 30 times between neighbours, or a record of clock times in days. */
function checkTimes({ times, rows }: Series, remarks: Message[]): void {
  if (times.length < 2) return;
  const jump = times.findIndex((time, i) => i > 0 && time > MOST_JUMP * times[i - 1]);
  if (jump > 0)
    remarks.push(
      say`the time jumps from ${shown(times[jump - 1])} to ${shown(times[jump])} min (${rows[jump]}): are all times in minutes?`,
    );
  if (times[0] < DAYS_FIRST && times[times.length - 1] < DAYS_LAST)
    remarks.push(say`the times look like days (clock times in Excel are days): multiply them by 1440 to have minutes`);
}

const shown = (time: number): Digits => digits(time, 3);
