/** From the cells of a load increment to its reduction: times, readings, picks. */
import { PICK_NAMES, type Picks } from "../reduction/increment/constructions/picks";
import { PROCEDURES } from "../reduction/increment/constructions/procedure";
import type { Increment } from "../reduction/increment/reduce";
import { reducedOnce } from "../reduction/increment/reduced-once";
import { say } from "../reduction/message";
import { toChoice, toPair } from "./cells";
import { toPickValues } from "./pick-cells";

/**
 * A column or row of numbers and blanks, blanks as `blank`; undefined if a cell is something else, which toPair then
 * names. The loop is small, so that the engine compiles it early.
 */
function plainNumbers(range: unknown, blank = 0): Float64Array | undefined {
  if (!Array.isArray(range) || !Array.isArray(range[0])) return undefined;
  const column: unknown[][] = range.length === 1 ? range[0].map((cell) => [cell]) : range;
  const { length } = column;
  const numbers = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    // The index stays within the column: hence the `!`.
    const row = column[i]!;
    const cell = row[0];
    if (row.length !== 1) return undefined;
    if (typeof cell === "number" && cell > -Infinity && cell < Infinity) numbers[i] = cell;
    else if (cell === null || cell === "") numbers[i] = blank;
    else return undefined;
  }
  return numbers;
}

/**
 * A blank cell arrives as 0 from desktop Excel and as null from the web: both are 0 here. Trailing blank rows are
 * dropped.
 */
export function toCurve(times: unknown, readings: unknown, blankReading = 0): [Float64Array, Float64Array] {
  let t = plainNumbers(times);
  let d = plainNumbers(readings, blankReading);
  if (!t || !d || t.length !== d.length) {
    const [timeCells, readingCells] = toPair(times, say`the times`, readings, say`the readings`);
    t = Float64Array.from(timeCells, (cell) => cell ?? 0);
    d = Float64Array.from(readingCells, (cell) => cell ?? blankReading);
  }
  let length = t.length;
  while (length > 0 && !t[length - 1] && !d[length - 1]) length--;
  return [t.subarray(0, length), d.subarray(0, length)];
}

/** Picks of a load from a range of names and values. */
const toPicks = (argument: unknown): Picks => toPickValues(argument, PICK_NAMES);

/** The increment of two ranges of cells, calculated once for each distinct input. */
export const reduce = (
  times: unknown,
  readings: unknown,
  picks?: unknown,
  procedure?: unknown,
  zerosCount = false,
): Increment => {
  const chosen = toPicks(picks);
  const way = toChoice(procedure, say`the procedure`, PROCEDURES, PROCEDURES[0]);
  return reducedOnce(...toCurve(times, readings, zerosCount ? NaN : 0), chosen, way, zerosCount);
};

/**
 * The increment of a load that is still on. Times still to come, with blank readings after the last reading, get no
 * remark.
 */
export const reduceSoFar = (times: unknown, readings: unknown): Increment => {
  const [t, d] = toCurve(times, readings);
  let length = d.length;
  while (length > 0 && !d[length - 1]) length--;
  return reducedOnce(t.subarray(0, length), d.subarray(0, length));
};
