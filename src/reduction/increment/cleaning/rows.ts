/** The rows of two columns, sorted into readings that count and rows that are left out. */
import { say, type Message } from "../../message";
import { lastOf, nth } from "../../numeric/lists";
import { badInput, given, then, type Outcome } from "../../outcome";
import { leftOut, rowsCalled, withTimeIn } from "./row-words";

/** Readings before averaging; columns, since there may be 100,000. */
export interface Kept {
  readonly times: Float64Array;
  readonly readings: Float64Array;
  /** The row of the range that a reading comes from, by its index. */
  readonly rowOf: (index: number) => number;
}

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

/** Rows whose time occurs in another row too, in order of rows. */
function repeatedRows({ times, rowOf }: Kept): number[] {
  const repeated: number[] = [];
  times.forEach((time, i) => {
    if (time === times[i - 1] || time === times[i + 1]) repeated.push(rowOf(i));
  });
  return repeated.sort((a, b) => a - b);
}

/** What the rows hold; rows are counted from 1. */
interface Sorted {
  /** The readings that count. */
  readonly stretches: readonly Stretch[];
  /** The reading at t = 0, if there is one. */
  readonly zeroReading: number | undefined;
  /** Rows with a reading and no time, and rows with a time and no reading. */
  readonly blankTimes: readonly number[];
  readonly blankReadings: readonly number[];
  /** The first row whose time is before a time above it; 0 if there is none. */
  readonly backRow: number;
  /** Whether each time is later than the one above it. */
  readonly increasing: boolean;
}

/** Sorts the rows; refuses a negative time. */
function sortRows(times: Float64Array, readings: Float64Array, zerosCount: boolean): Outcome<Sorted> {
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
  return given({ stretches, zeroReading, blankTimes, blankReadings, backRow, increasing });
}

/** The readings that count, in order of time, with remarks on the other rows. Refuses a negative time. */
export const readRows = (
  times: Float64Array,
  readings: Float64Array,
  zerosCount: boolean,
): Outcome<Kept & Pick<Sorted, "zeroReading">> =>
  then(
    sortRows(times, readings, zerosCount),
    ({ stretches, zeroReading, blankTimes, blankReadings, backRow, increasing }) => {
      const kept = keptOf(times, readings, stretches, backRow === 0);
      const timed = withTimeIn(times);
      const remarks: Message[] = [];
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
      const repeated = increasing ? [] : repeatedRows(kept);
      if (repeated.length)
        remarks.push(say`${rowsCalled(repeated, timed)} repeat a time: readings at the same time were averaged`);
      return given({ ...kept, zeroReading }, remarks);
    },
  );
