/**
 * The curve of an increment between its readings.
 *
 * Aided: the fitted theory plus a local straight line (in log time) through what the readings differ from it. Where theory
 * holds, it is theory; where it does not, it follows the readings. Drawn: the curve through the readings themselves.
 */
import { monotoneCubic } from "../../numeric/monotone-cubic";
import { curveAt, type Curve } from "../fit/model";
import type { Series } from "../readings";

/** Reach of the local line: the standard deviation of its bell of weights, in log cycles. */
const REACH = 0.2;
/** The slope of the smooth curve is taken over so much of a log cycle either side. */
export const SLOPE_REACH = 0.12;

export interface ReadingCurve {
  /** Reading at a time within the record. */
  at(t: number): number;
  /** The first time from `from` on (both within the record) at which `above(t, reading)` changes sign; undefined if none does. */
  crossing(above: (t: number, reading: number) => number, from: number, to: number): number | undefined;
}

export interface SmoothCurve extends ReadingCurve {
  /** d reading / d log10 t, over SLOPE_REACH either side. */
  slope(t: number): number;
}

export function smoothCurve({ times, readings, weights }: Series, curve: Curve): SmoothCurve {
  const x = times.map(Math.log10);
  const r = times.map((t, i) => readings[i] - curveAt(curve, t));

  const residual = (at: number): number => {
    let s0 = 0,
      s1 = 0,
      s2 = 0,
      r0 = 0,
      r1 = 0;
    for (let i = 0; i < x.length; i++) {
      const d = (x[i] - at) / REACH;
      if (d < -4 || d > 4) continue;
      const k = weights[i] * Math.exp(-0.5 * d * d);
      s0 += k;
      s1 += k * d;
      s2 += k * d * d;
      r0 += k * r[i];
      r1 += k * d * r[i];
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

/** Goes through every reading, without a wave between them: what a hand draws with a curved ruler. */
export function curveThroughReadings({ times, readings }: Series): ReadingCurve {
  const curve = monotoneCubic(times.map(Math.log10), readings);
  const at = (t: number) => curve(Math.log10(t));
  return { at, crossing: crossingOf(at) };
}

/** Looked for in steps of a twentieth of a log cycle, then between them. */
const crossingOf =
  (at: ReadingCurve["at"]): ReadingCurve["crossing"] =>
  (above, from, to) => {
    const steps = Math.max(4, Math.ceil(Math.log10(to / from) * 20));
    let low = from;
    const sign = Math.sign(above(low, at(low)));
    if (sign === 0) return low;
    for (let i = 1; i <= steps; i++) {
      const high = i === steps ? to : from * (to / from) ** (i / steps);
      if (Math.sign(above(high, at(high))) !== sign) {
        let a = low;
        let b = high;
        for (let k = 0; k < 40 && b / a > 1 + 1e-10; k++) {
          const middle = Math.sqrt(a * b);
          if (Math.sign(above(middle, at(middle))) === sign) a = middle;
          else b = middle;
        }
        return Math.sqrt(a * b);
      }
      low = high;
    }
    return undefined;
  };
