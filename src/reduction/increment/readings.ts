/**
 * From a column of times and one of readings to a clean series. Nothing is altered: what cannot be used is left out, and
 * the remarks name its row.
 *
 * A blank cell is 0 here as well as null: desktop Excel hands blanks over as 0, the web as null, and both must give the
 * same answers. Times never repeat zero, so a zero time after the first row is a blank one.
 */
import { badInput, given, type Outcome } from "../outcome";
import { readingStep } from "../numeric/step";

/** A series in order of time; the arrays have one length. */
export interface Series {
  /** Minutes, increasing, greater than zero. */
  readonly times: readonly number[];
  readonly readings: readonly number[];
  /** The rows of the range that each reading comes from, in words: "row 7", "rows 120 to 136". */
  readonly rows: readonly string[];
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

/** Readings beyond this number are averaged in equal steps of log time. */
export const MOST_READINGS = 120;
/** Steps per cycle of log time in that averaging. A study with known truth: fewer blur the inflection, more gain nothing. */
const STEPS_PER_CYCLE = 20;
/** An average counts as this many readings at most: logger noise is not independent from second to second. */
const MOST_WEIGHT = 10;

interface Row {
  readonly time: number;
  readonly reading: number;
  readonly row: number;
}

const list = (rows: readonly number[]): string =>
  rows.length === 1
    ? `row ${rows[0]}`
    : rows.length <= 4
      ? `rows ${rows.slice(0, -1).join(", ")} and ${rows[rows.length - 1]}`
      : `rows ${rows.slice(0, 3).join(", ")} and ${rows.length - 3} more`;

const verb = (rows: readonly number[]): string => (rows.length === 1 ? "is" : "are");

/** Refuses a negative time (naming its row). How few readings are enough is for the methods to say. */
export function cleanReadings(
  times: ArrayLike<number | null>,
  readings: ArrayLike<number | null>,
): Outcome<CleanReadings> {
  const remarks: string[] = [];
  const blankTimes: number[] = [];
  const blankReadings: number[] = [];
  const rows: Row[] = [];
  let zeroReading: number | undefined;
  let seen = false;
  let ordered = true;
  let last = -Infinity;

  for (let i = 0; i < times.length; i++) {
    const time = times[i] || 0;
    const reading = readings[i] || 0;
    if (time < 0)
      return badInput(
        `row ${i + 1} of the times is ${time}: a time before the load cannot be used; correct or clear that row`,
      );
    if (time === 0 && reading === 0) continue;
    if (time === 0) {
      if (seen) blankTimes.push(i + 1);
      else zeroReading = reading;
    } else if (reading === 0) blankReadings.push(i + 1);
    else {
      if (time < last) ordered = false;
      last = time;
      rows.push({ time, reading, row: i + 1 });
    }
    seen = true;
  }

  if (blankTimes.length)
    remarks.push(
      `${list(blankTimes)} ${verb(blankTimes)} left out: a reading without a time (a time of zero counts only in the first row)`,
    );
  if (blankReadings.length && rows.length)
    remarks.push(`${list(blankReadings)} ${verb(blankReadings)} left out: the reading is blank or zero`);
  if (!ordered) {
    remarks.push("the times are not in order: they were sorted");
    rows.sort((a, b) => a.time - b.time || a.row - b.row);
  }

  const step = readingStep(rows.map(({ reading }) => reading));
  const series = averageSteps(averageEqualTimes(rows, remarks), rows.length);
  let least = Infinity;
  let most = -Infinity;
  for (const { reading } of rows) {
    if (reading < least) least = reading;
    if (reading > most) most = reading;
  }
  checkTimes(series, remarks);
  return given(
    {
      series,
      zeroReading,
      count: rows.length,
      lastTime: rows.length ? rows[rows.length - 1].time : 0,
      step,
      travel: rows.length ? most - least : 0,
    },
    remarks,
  );
}

/** Rows in order of time to one reading for each time. */
function averageEqualTimes(rows: readonly Row[], remarks: string[]): Series & { readonly row: readonly number[] } {
  const series = {
    times: [] as number[],
    readings: [] as number[],
    rows: [] as string[],
    weights: [] as number[],
    row: [] as number[],
  };
  const repeated: number[] = [];
  for (let i = 0; i < rows.length;) {
    let next = i + 1;
    let sum = rows[i].reading;
    while (next < rows.length && rows[next].time === rows[i].time) sum += rows[next++].reading;
    const same = rows.slice(i, next).map(({ row }) => row);
    if (same.length > 1) repeated.push(...same);
    series.times.push(rows[i].time);
    series.readings.push(sum / same.length);
    series.rows.push(list(same));
    series.weights.push(1);
    series.row.push(rows[i].row);
    i = next;
  }
  if (repeated.length)
    remarks.push(`${list(repeated.sort((a, b) => a - b))} repeat a time: readings at the same time were averaged`);
  return series;
}

/** Many readings to their averages in equal steps of log time, so that the early minutes keep their own; few stay as they are. */
function averageSteps(all: Series & { readonly row: readonly number[] }, count: number): Series {
  if (count <= MOST_READINGS) return { times: all.times, readings: all.readings, rows: all.rows, weights: all.weights };
  const series = { times: [] as number[], readings: [] as number[], rows: [] as string[], weights: [] as number[] };
  const stepOf = (time: number) => Math.floor(Math.log10(time / all.times[0]) * STEPS_PER_CYCLE + 1e-9);
  for (let i = 0; i < all.times.length;) {
    const bin = stepOf(all.times[i]);
    let next = i;
    let time = 0;
    let reading = 0;
    while (next < all.times.length && (next === i || stepOf(all.times[next]) === bin)) {
      time += all.times[next];
      reading += all.readings[next];
      next++;
    }
    const n = next - i;
    series.times.push(time / n);
    series.readings.push(reading / n);
    series.rows.push(n === 1 ? all.rows[i] : `rows ${all.row[i]} to ${all.row[next - 1]}`);
    series.weights.push(Math.min(n, MOST_WEIGHT));
    i = next;
  }
  return series;
}

/** Times that look like another unit: a jump of more than 30 times between neighbours, or a record of clock times in days. */
function checkTimes({ times, rows }: Series, remarks: string[]): void {
  if (times.length < 2) return;
  const jump = times.findIndex((time, i) => i > 0 && time > 30 * times[i - 1]);
  if (jump > 0)
    remarks.push(
      `the time jumps from ${shown(times[jump - 1])} to ${shown(times[jump])} min (${rows[jump]}): are all times in minutes?`,
    );
  if (times[0] < 0.0015 && times[times.length - 1] < 20)
    remarks.push("the times look like days (clock times in Excel are days): multiply them by 1440 to have minutes");
}

const shown = (time: number): string => String(Number(time.toPrecision(3)));
