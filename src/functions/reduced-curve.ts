/** From the cells of a load increment to its reduction: times, readings, picks. */
import { PICK_NAMES, pickNamed, type Picks } from "../reduction/increment/constructions/picks";
import { PROCEDURES } from "../reduction/increment/constructions/procedure";
import type { Increment } from "../reduction/increment/reduce";
import { reducedOnce } from "../reduction/increment/reduced-once";
import { isOmitted, refuseCell, toCell, toChoice, toPair } from "./cells";

/**
 * A column or row of numbers and blanks, blanks as `blank`; undefined if a cell is something else, which toPair then
 * names.
 */
function plainNumbers(range: unknown, blank = 0): Float64Array | undefined {
  if (!Array.isArray(range) || !Array.isArray(range[0])) return undefined;
  const cells = range.length === 1 ? range[0] : range;
  const numbers = new Float64Array(cells.length);
  for (let i = 0; i < cells.length; i++) {
    const cell = range.length === 1 ? cells[i] : cells[i].length === 1 ? cells[i][0] : undefined;
    if (typeof cell === "number" && Number.isFinite(cell)) numbers[i] = cell;
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
    const [timeCells, readingCells] = toPair(times, "the times", readings, "the readings");
    t = Float64Array.from(timeCells, (cell) => cell ?? 0);
    d = Float64Array.from(readingCells, (cell) => cell ?? blankReading);
  }
  let length = t.length;
  while (length > 0 && !t[length - 1] && !d[length - 1]) length--;
  return [t.subarray(0, length), d.subarray(0, length)];
}

const PICK_COLUMNS = "the picks must be a range of two columns: names and values";

/** A pick given in words by its short name; any other cell as it is. */
export const asPick = (cell: unknown): unknown => (typeof cell === "string" ? pickNamed(cell) : cell);

/**
 * Picks from a range of names and values; a row without a value (blank, or 0, since desktop Excel passes a blank cell
 * as 0) leaves the automatic choice. A third column, as LOAD_PICKS returns it, says where the row stands.
 */
function toPicks(argument: unknown): Picks {
  if (isOmitted(argument) || argument === 0) return {};
  if (!Array.isArray(argument)) return refuseCell(PICK_COLUMNS);
  const rows: unknown[][] = Array.isArray(argument[0]) ? argument : [argument];
  const picks: Partial<Record<keyof Picks, number>> = {};
  rows.forEach((row, i) => {
    const place = row.length === 3 && typeof row[2] === "string" ? row[2] : undefined;
    const where = place || `row ${i + 1} of the picks`;
    if (isOmitted(row[0]) || row[0] === 0) return;
    if (row.length !== 2 && place === undefined) return refuseCell(PICK_COLUMNS);
    const name = toChoice(asPick(row[0]), `the name in ${where}`, PICK_NAMES, PICK_NAMES[0]);
    const value = toCell(row[1], where);
    if (value) picks[name] = value;
  });
  return picks;
}

/** The increment of two ranges of cells, calculated once for each distinct input. */
export const reduce = (
  times: unknown,
  readings: unknown,
  picks?: unknown,
  procedure?: unknown,
  zerosCount = false,
): Increment => {
  const chosen = toPicks(picks);
  const way = toChoice(procedure, "the procedure", PROCEDURES, PROCEDURES[0]);
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
