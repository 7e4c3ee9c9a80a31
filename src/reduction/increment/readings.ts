/**
 * From a column of times and a column of readings to a clean series. Nothing is altered: a reading that cannot be used
 * is left out, and a remark names its row.
 *
 * A blank cell may be 0 as well as null: desktop Excel passes a blank cell as 0, the web as null, and both must give
 * the same answers. Only the first time of a load is zero, so a zero time after the first row is a blank cell.
 */
import { say, digits, listed, type Message, type Value } from "../message";
import { badInput, given, type Outcome } from "../outcome";
import { firstOf, lastOf, nth } from "../numeric/lists";
import { median } from "../numeric/median";
import { readingStep } from "../numeric/step";
import { straightLine, type FittedLine } from "../numeric/straight-line";

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

/** The least-squares line on log of time through the points at indices. */
export const lineOnLogTime = ({ times, readings, weights }: Series, index: readonly number[]): FittedLine =>
  straightLine(
    index.map((i) => Math.log10(nth(times, i))),
    index.map((i) => nth(readings, i)),
    index.map((i) => nth(weights, i)),
  );

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
 * A record whose first time is between these, min, and whose times are all whole minutes of a day, was probably typed as minutes and
 * seconds, which a sheet takes for hours and minutes: 0:30 becomes 0.0208 of a day. By hand nobody reads before 0:05. Common practice,
 * no source.
 */
const CLOCK_LEAST = 4.9 / 1440;
const CLOCK_FIRST = 0.03;
/**
 * Times that are all whole steps of 0.05 s, of which a minute has this many, are those of a logger: they may be whole minutes
 * of a day as well, as 0.25 s, which is 6/1440 min.
 */
const STEPS_OF_LOGGER = 1200;
/**
 * A logger reads in equal steps: half of its first EQUAL_STEPS steps take half of their time, within EQUAL_WITHIN because times are
 * rounded. Nobody reads a dial so often in equal steps. Common practice, no source.
 */
const EQUAL_STEPS = 12;
const EQUAL_WITHIN = 0.1;
/**
 * A logger takes a whole number of readings a second, within RATE_WITHIN of it. Multiples of SELDOM other than OFTEN do not count: few
 * loggers take so many, and a logger that reads every minute and writes days seems to take 24 a second. Common practice, no source.
 */
const RATE_WITHIN = 0.03;
const SELDOM = 12;
const OFTEN = 60;

/**
 * Times that begin above DATES_FROM and end within DATES_SPAN times the first are dates of Excel (46,000 is in 2025): no
 * record of minutes begins two weeks after loading and spans so little.
 */
const DATES_FROM = 20_000;
const DATES_SPAN = 1.02;

/**
 * Within a step of at least this many readings, a reading is a spike if it is off the median by more than SPIKE median
 * departures.
 */
const READINGS_FOR_SPIKES = 5;
const SPIKE = 10;

/** Readings before averaging; columns, since there may be 100,000. */
interface Kept {
  readonly times: Float64Array;
  readonly readings: Float64Array;
  /** The row of the range that a reading comes from, by its index. */
  readonly rowOf: (index: number) => number;
}

/** Rows of the range, of many only the first three, each as `called` calls it. */
const list = (rows: readonly number[], called: (row: number) => Value = Number): Message =>
  rows.length === 1
    ? say`row ${called(firstOf(rows))}`
    : rows.length <= 4
      ? say`rows ${listed(rows.slice(0, -1).map(called))} and ${called(lastOf(rows))}`
      : say`rows ${listed(rows.slice(0, 3).map(called))} and ${rows.length - 3} more`;

/** A row with its time, by which a person finds the reading on the sheet: "9 (15 min)". */
const withTime = (row: Value, time: number): Message => say`${row} (${digits(time, 4)} min)`;

/** The row of a point with its time: "row 9 (15 min)". */
export const rowWithTime = ({ rows, times }: Series, index: number): Message =>
  withTime(nth(rows, index), nth(times, index));

const leftOut = (rows: readonly number[], why: Message, called?: (row: number) => Value): Message =>
  rows.length === 1 ? say`${list(rows, called)} is left out: ${why}` : say`${list(rows, called)} are left out: ${why}`;

/** Rows from the first to before the second, counted from 0. */
type Stretch = [from: number, to: number];

/**
 * The first row from `from` on whose time is not later than the time before it (`last` at the start), or whose reading
 * is 0 or blank.
 *
 * This loop stands alone, and nothing is copied in it, for speed: the engine compiles a small function early. In the
 * first reduction of 50,000 readings this saves 3 ms of 50.
 */
function endOfStretch(times: Float64Array, readings: Float64Array, from: number, last: number): number {
  const { length } = times;
  let row = from;
  for (; row < length; row++) {
    // The index stays within the columns: hence each `!`.
    const time = times[row]!;
    if (!(time > last && readings[row]!)) break;
    last = time;
  }
  return row;
}

/** The readings of some stretches, in order of time, and of equal times in order of rows; one stretch as it stands. */
function keptOf(times: Float64Array, readings: Float64Array, stretches: readonly Stretch[], inOrder: boolean): Kept {
  const [[from, to] = [0, 0]] = stretches;
  if (stretches.length < 2 && inOrder)
    return {
      times: times.subarray(from, to),
      readings: readings.subarray(from, to),
      rowOf: (index) => from + index + 1,
    };
  const rows = stretches
    .flatMap(([first, end]) => Array.from({ length: end - first }, (_, i) => first + i))
    .sort((a, b) => nth(times, a) - nth(times, b));
  return {
    times: Float64Array.from(rows, (row) => nth(times, row)),
    readings: Float64Array.from(rows, (row) => nth(readings, row)),
    rowOf: (index) => nth(rows, index) + 1,
  };
}

/** Converts null to NaN; the reduction treats both as a blank. A typed column is returned as it is. */
export const columnOf = (cells: ArrayLike<number | null>): Float64Array =>
  cells instanceof Float64Array ? cells : Float64Array.from(cells, (cell) => cell ?? NaN);

/**
 * `zerosCount`: whether 0 is a reading, as of a transducer that was zeroed; a blank must then be null or NaN. Refuses a
 * negative time (naming its row) and dates in the place of times. Each method says how few readings are enough.
 */
export function cleanReadings(
  timeCells: ArrayLike<number | null>,
  readingCells: ArrayLike<number | null>,
  zerosCount = false,
): Outcome<CleanReadings> {
  const [times, readings] = [columnOf(timeCells), columnOf(readingCells)];
  const remarks: Message[] = [];
  const blankTimes: number[] = [];
  const blankReadings: number[] = [];
  const stretches: Stretch[] = [];
  let zeroReading: number | undefined;
  let seen = false;
  let backRow = 0;
  let increasing = true;
  let last = 0;
  const keep = (from: number, to: number): void => {
    const before = stretches[stretches.length - 1];
    if (before?.[1] === from) before[1] = to;
    else stretches.push([from, to]);
    last = nth(times, to - 1);
    seen = true;
  };

  for (let from = 0; from < times.length;) {
    const i = endOfStretch(times, readings, from, last);
    if (i > from) keep(from, i);
    from = i + 1;
    if (i === times.length) break;
    const time = times[i] || 0;
    const reading = readings[i] || 0;
    const isBlank = reading === 0 && !(zerosCount && readings[i] === 0);
    if (time > 0 && !isBlank) {
      if (time <= last) increasing = false;
      if (time < last) backRow ||= i + 1;
      keep(i, i + 1);
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

  /** A row of the range with its time. */
  const timed = (row: number): Message => withTime(row, nth(times, row - 1));
  const kept = keptOf(times, readings, stretches, backRow === 0);
  const count = kept.times.length;
  if (blankTimes.length)
    remarks.push(leftOut(blankTimes, say`a reading without a time (a time of zero counts only in the first row)`));
  // Times of the schedule after the last reading are not left out: nothing was read then.
  const lastRow = stretches.length ? lastOf(stretches)[1] : 0;
  const blankBetween = blankReadings.filter((row) => row < lastRow);
  if (blankBetween.length) remarks.push(leftOut(blankBetween, say`the reading is blank or zero`, timed));
  if (backRow > 0)
    remarks.push(
      say`the time in row ${timed(backRow)} is before a time above it: the times are not in order and were sorted; correct it if the clock was wrong`,
    );
  const [first, end] = [kept.times[0] ?? 0, kept.times[count - 1] ?? 0];
  if (count > 1 && first > DATES_FROM && end < DATES_SPAN * first)
    return badInput(
      say`the times (${digits(first, 7)} to ${digits(end, 7)}) look like dates with clock times: enter minutes since the load was applied, the time of the reading less that of loading, times 1440`,
    );
  const repeated = increasing ? [] : repeatedRows(kept);
  if (repeated.length)
    remarks.push(say`${list(repeated, timed)} repeat a time: readings at the same time were averaged`);
  const runs = runsOf(kept);
  const least = Math.min(...runs.map((run) => run.least));
  const most = Math.max(...runs.map((run) => run.most));
  const step = readingStep(kept.readings, least, most);
  const { spikes, ...series } = averagesOf(kept, runs, step);
  if (spikes.length) remarks.push(leftOut(spikes, say`far off the readings before and after`, timed));
  checkTimes(series, kept.times, remarks);
  return given(
    { series, zeroReading, count, lastTime: kept.times[count - 1] ?? 0, step, travel: count ? most - least : 0 },
    remarks,
  );
}

/** Rows whose time occurs in another row too, in order of rows. */
function repeatedRows({ times, rowOf }: Kept): number[] {
  const repeated: number[] = [];
  times.forEach((time, i) => {
    if (time === times[i - 1] || time === times[i + 1]) repeated.push(rowOf(i));
  });
  return repeated.sort((a, b) => a - b);
}

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
function runsOf({ times, readings }: Kept): Run[] {
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
function averagesOf(
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
        ? list(Array.from({ length: stop - start }, (_, i) => rowOf(start + i)))
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

/** Whether all times are whole numbers of a unit of which `inOne` make one minute. */
const areWhole = (times: readonly number[], inOne: number): boolean =>
  times.every((time) => Math.abs(((time * inOne + 0.5) % 1) - 0.5) < 1e-6);

/** Whether the times are minutes of a logger that takes a whole number of readings a second; false of fewer times. */
function areOfLogger(times: Float64Array): boolean {
  // Without so many times these are NaN, and each comparison is false.
  const all = times[EQUAL_STEPS]! - times[0]!;
  const half = times[EQUAL_STEPS / 2]! - times[0]!;
  const step = (all * 60) / EQUAL_STEPS;
  const rate = Math.round(1 / step);
  return (
    Math.abs(half / all - 0.5) < EQUAL_WITHIN / 2 &&
    Math.abs(rate * step - 1) < RATE_WITHIN &&
    (rate === OFTEN || rate % SELDOM > 0)
  );
}

/**
 * Adds a remark on times that look like another unit: neighbours that differ by more than MOST_JUMP times, or times in
 * days. `all` are the times before averaging.
 */
function checkTimes({ times, rows }: Series, all: Float64Array, remarks: Message[]): void {
  if (times.length < 2) return;
  const jump = times.findIndex((time, i) => i > 0 && time > MOST_JUMP * nth(times, i - 1));
  if (jump > 0)
    remarks.push(
      say`the time jumps from ${digits(nth(times, jump - 1), 3)} to ${digits(nth(times, jump), 3)} min (${nth(rows, jump)}): are all times in minutes?`,
    );
  const first = firstOf(times);
  const areDays = first < DAYS_FIRST && lastOf(times) < DAYS_LAST;
  const areClock =
    first > CLOCK_LEAST && first < CLOCK_FIRST && areWhole(times, 1440) && !areWhole(times, STEPS_OF_LOGGER);
  if ((areDays || areClock) && !areOfLogger(all))
    remarks.push(say`the times look like days, as a sheet keeps the clock time 0:15: enter minutes`);
}
