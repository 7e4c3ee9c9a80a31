/**
 * The curve of an increment between its readings.
 *
 * Aided: the fitted theory plus a local straight line (in log time) through the residuals. Where the readings follow
 * theory, the curve is theory; where they depart, the curve follows the readings. Drawn: the curve through the readings
 * themselves.
 */
import { monotoneCubic } from "../../numeric/monotone-cubic";
import { nth } from "../../numeric/lists";
import { rootBetween } from "../../numeric/root";
import { curveAt, type Curve } from "../fit/model";
import type { Series } from "../readings";

/** Reach of the local line: the standard deviation of its Gaussian weights, in log cycles. */
const REACH = 0.2;
/** The slope of the smooth curve is taken from this many log cycles before a time to as many after it. */
export const SLOPE_REACH = 0.12;

export interface ReadingCurve {
  /** Reading at a time within the record. */
  at(t: number): number;
  /** The first time from `from` on (both within the record) at which `above(t, reading)` changes sign; undefined if none does. */
  crossing(above: (t: number, reading: number) => number, from: number, to: number): number | undefined;
}

export interface SmoothCurve extends ReadingCurve {
  /** d reading / d log10 t, from SLOPE_REACH before to SLOPE_REACH after. */
  slope(t: number): number;
}

export function smoothCurve({ times, readings, weights }: Series, curve: Curve): SmoothCurve {
  const x = Float64Array.from(times, Math.log10);
  const off = Float64Array.from(times, (t, i) => nth(readings, i) - curveAt(curve, t));
  const count = times.length;

  const residual = (at: number): number => {
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let r0 = 0;
    let r1 = 0;
    // The index stays within the columns: hence each `!`.
    for (let i = 0; i < count; i++) {
      const d = (x[i]! - at) / REACH;
      if (d < -4) continue;
      if (d > 4) break;
      const k = weights[i]! * Math.exp(-0.5 * d * d);
      s0 += k;
      s1 += k * d;
      s2 += k * d * d;
      r0 += k * off[i]!;
      r1 += k * d * off[i]!;
    }
    if (!s0) return 0;
    const det = s0 * s2 - s1 * s1;
    return det > 0.02 * s0 * s0 ? (s2 * r0 - s1 * r1) / det : r0 / s0;
  };

  const at = (t: number) => curveAt(curve, t) + residual(Math.log10(t));
  return {
    at,
    slope: (t) => (at(t * 10 ** SLOPE_REACH) - at(t * 10 ** -SLOPE_REACH)) / (2 * SLOPE_REACH),
    crossing: crossingOf(at),
  };
}

/** Goes through every reading without waves between them, as a person draws it with a curved ruler. */
export function curveThroughReadings({ times, readings }: Series): ReadingCurve {
  const curve = monotoneCubic(times.map(Math.log10), readings);
  const at = (t: number) => curve(Math.log10(t));
  return { at, crossing: crossingOf(at) };
}

/** Tolerance of a crossing, in ln t. */
const CLOSE = 1e-12;

/** Searches in steps of a twentieth of a log cycle, then refines within the step. */
const crossingOf =
  (at: ReadingCurve["at"]): ReadingCurve["crossing"] =>
  (above, from, to) => {
    const value = (lnTime: number): number => above(Math.exp(lnTime), at(Math.exp(lnTime)));
    const steps = Math.max(4, Math.ceil(Math.log10(to / from) * 20));
    const [first, last] = [Math.log(from), Math.log(to)];
    let low = first;
    let atLow = above(from, at(from));
    if (atLow === 0) return from;
    for (let i = 1; i <= steps; i++) {
      const high = i === steps ? last : first + ((last - first) * i) / steps;
      const atHigh = i === steps ? above(to, at(to)) : value(high);
      if (Math.sign(atHigh) !== Math.sign(atLow))
        return Math.exp(rootBetween(value, { low, atLow, high, atHigh }, CLOSE));
      low = high;
      atLow = atHigh;
    }
    return undefined;
  };
