/**
 * The beginning of an increment, where movement grows with the square root of time: the straight part of the root-time
 * plot, and the parabola of the log-time plot. Both constructions leave out the same disturbed first readings.
 */
import { say, listed, type Message } from "../../message";
import { straightLine, type FittedLine } from "../../numeric/straight-line";
import { rowWithTime } from "../cleaning/row-words";
import { indicesFrom, type Series } from "../readings";
import type { Share } from "../share";
import { degreeOfConsolidation } from "../fit/terzaghi";
import type { TheoryFit } from "../fit/theory-fit";
import { firstOf, lastOf, nth } from "../../numeric/lists";

/** The curve on sqrt t departs from a straight line by 0.5 % of primary at most, up to this U. */
const STRAIGHT_U = 0.6;
/**
 * The earliest readings are left out of the straight part while that divides the mean squared residual by TRIM_GAIN,
 * but no more than TRIM_SHARE of them.
 */
const TRIM_GAIN = 4;
const TRIM_SHARE = 0.4;
/** Up to this many disturbed readings may hide one another: the line then fits only when all of them are left out. */
const TRIM_TOGETHER = 3;

/** Readings of a series from `start` on, up to but not `end`, and their least-squares line on sqrt t. */
export interface Beginning {
  readonly start: number;
  readonly end: number;
  readonly line: FittedLine;
  /** How many first readings lie off the line of the other readings, and are left out. */
  readonly disturbed: number;
}

/** The least-squares line on sqrt t through the readings from `start` on, up to but not `end`. */
export const lineOf = ({ times, readings, weights }: Series, start: number, end: number): FittedLine =>
  straightLine(times.slice(start, end).map(Math.sqrt), readings.slice(start, end), weights.slice(start, end));

/**
 * The straight part up to U = 60 % by the fit, without the first readings that lie off it; undefined with fewer than 2
 * readings.
 */
export function straightBeginning(used: Series, fit: TheoryFit): Beginning | undefined {
  const { times } = used;
  const past = times.findIndex((t) => degreeOfConsolidation(fit.rate * t) > STRAIGHT_U);
  const end = past < 0 ? times.length : past;
  if (end < 2) return undefined;
  const most = Math.min(Math.ceil(TRIM_SHARE * end) - 1, end - 3);
  const meanSquare = (start: number, line: FittedLine) => line.rss / (end - start - 2);
  let start = 0;
  let line = lineOf(used, 0, end);
  for (let next = 1; next <= Math.min(most, start + TRIM_TOGETHER); next++) {
    const shorter = lineOf(used, next, end);
    if (meanSquare(start, line) < TRIM_GAIN * Math.max(meanSquare(next, shorter), fit.noise ** 2)) continue;
    start = next;
    line = shorter;
  }
  return { start, end, line, disturbed: start };
}

/** The part between two times picked by hand; undefined with fewer than 2 readings. */
export function pickedBeginning(used: Series, from = 0, to?: number): Beginning | undefined {
  const inSpan = indicesFrom(used.times, from, to);
  if (inSpan.length < 2) return undefined;
  const [start, end] = [firstOf(inSpan), lastOf(inSpan) + 1];
  return { start, end, line: lineOf(used, start, end), disturbed: 0 };
}

/** The remark on the first readings that were left out: the largest distance from the line, and their rows. */
export function disturbedRemark(used: Series, { line, disturbed }: Beginning, share: Share): Message[] {
  if (!disturbed) return [];
  const { times, readings, rows } = used;
  const off = Math.max(
    ...rows
      .slice(0, disturbed)
      .map((_, i) => Math.abs(nth(readings, i) - line.intercept - line.slope * Math.sqrt(nth(times, i)))),
  );
  const which = listed(rows.slice(0, disturbed).map((_, i) => rowWithTime(used, i)));
  return [
    disturbed === 1
      ? say`the first reading, ${which}, stands off the straight part on root time by up to ${share(off)} and is left out of the beginning: bedding, slow loading or a late start of the clock`
      : say`the first ${disturbed} readings, ${which}, stand off the straight part on root time by up to ${share(off)} and are left out of the beginning: bedding, slow loading or a late start of the clock`,
  ];
}
