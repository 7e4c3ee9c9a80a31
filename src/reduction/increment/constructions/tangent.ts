/**
 * The steepest tangent of the log-of-time construction.
 *
 * Aided: the steepest slope of the smooth curve. Drawn, or where a span is picked: the least-squares line through readings.
 */
import { say } from "../../message";
import { badInput, given, type Outcome } from "../../outcome";
import type { Picks } from "./picks";
import { logTimeRefuses, TRY_ROOT_TIME } from "./refusals";
import { indicesFrom, lineOnLogTime, type Series } from "../readings";
import { halfCycleSpans, T_INFLECTION } from "../signals";
import { SLOPE_REACH, type SmoothCurve } from "./smooth-curve";
import type { TheoryFit } from "../fit/theory-fit";
import { firstOf, lastOf, nth } from "../../numeric/lists";

/** A point of the tangent, its slope per log cycle of time, and the span of times that it was taken from. */
export interface Tangent {
  readonly time: number;
  readonly reading: number;
  readonly slope: number;
  readonly from: number;
  readonly to: number;
}

/** The steepest slope within half a log cycle of the inflection of theory. */
export function steepestTangent(curve: SmoothCurve, fit: TheoryFit, first: number, last: number): Tangent {
  let steepest = { time: first, slope: 0 };
  for (let k = -12; k <= 12; k++) {
    const time = (T_INFLECTION / fit.rate) * 10 ** (0.05 * k);
    if (time < first || time > last) continue;
    const slope = curve.slope(time);
    if (Math.abs(slope) > Math.abs(steepest.slope)) steepest = { time, slope };
  }
  const { time } = steepest;
  const reach = 10 ** SLOPE_REACH;
  return { ...steepest, reading: curve.at(time), from: time / reach, to: time * reach };
}

/**
 * Two slopes that differ by less than this share differ by rounding of the arithmetic only (readings come in whole
 * divisions): the earlier line is taken.
 */
const SAME_SLOPE = 1e-9;

/**
 * The line through the picked span, or the steepest line through at least three readings over at least half a log
 * cycle.
 */
export function tangentOfReadings(used: Series, fit: TheoryFit, picks: Picks): Outcome<Tangent> {
  const { times } = used;
  const through = (index: readonly number[]): Tangent => {
    const { intercept, slope, middle } = lineOnLogTime(used, index);
    return {
      time: 10 ** middle,
      reading: intercept + slope * middle,
      slope,
      from: nth(times, firstOf(index)),
      to: nth(times, lastOf(index)),
    };
  };
  const sense = Math.sign(fit.primary);
  const steepest = halfCycleSpans(times)
    .map(through)
    .reduce<Tangent | undefined>(
      (a, b) => (a && sense * b.slope <= sense * a.slope + SAME_SLOPE * Math.abs(a.slope) ? a : b),
      undefined,
    );
  const { tangent_from: from = steepest?.from, tangent_to: to = steepest?.to } = picks;
  if (picks.tangent_from === undefined && picks.tangent_to === undefined)
    return steepest && sense * steepest.slope > 0
      ? given(steepest)
      : logTimeRefuses(say`no three readings show a steepest part; ${TRY_ROOT_TIME}`);
  const index = indicesFrom(times, from ?? 0, to);
  if (index.length < 2)
    return badInput(
      index.length === 1
        ? say`the picked tangent (${from ?? firstOf(times)} to ${to ?? lastOf(times)} min) holds 1 reading: it needs 2`
        : say`the picked tangent (${from ?? firstOf(times)} to ${to ?? lastOf(times)} min) holds no readings: it needs 2`,
    );
  const tangent = through(index);
  return sense * tangent.slope > 0
    ? given(tangent)
    : badInput(
        say`the picked tangent (${from ?? firstOf(times)} to ${to ?? lastOf(times)} min) runs against the readings: check the picks`,
      );
}
