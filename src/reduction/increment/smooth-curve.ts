/**
 * The smooth curve that a hand would draw through the readings of an increment: the fitted theory plus a local straight
 * line (in log time) through what the readings differ from it. Where theory holds, it is theory; where it does not, it
 * follows the readings.
 */
import { curveAt, type Curve } from "./model";
import type { Series } from "./readings";

/** Reach of the local line: the standard deviation of its bell of weights, in log cycles. */
const REACH = 0.2;

export interface SmoothCurve {
  /** Reading at a time within the record. */
  at(t: number): number;
  /** d reading / d log10 t, over a quarter of a cycle either side. */
  slope(t: number): number;
  /** The first time from `from` on (both within the record) at which `above(t, reading)` changes sign; undefined if none does. */
  crossing(above: (t: number, reading: number) => number, from: number, to: number): number | undefined;
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
  const HALF = 0.12;
  return {
    at,
    slope: (t) => (at(t * 10 ** HALF) - at(t * 10 ** -HALF)) / (2 * HALF),
    crossing(above, from, to) {
      const steps = Math.max(4, Math.ceil(Math.log10(to / from) * 20));
      let low = from;
      let sign = Math.sign(above(low, at(low)));
      if (sign === 0) return low;
      for (let i = 1; i <= steps; i++) {
        const high = i === steps ? to : from * (to / from) ** (i / steps);
        const next = Math.sign(above(high, at(high)));
        if (next !== sign) {
          let a = low,
            b = high;
          for (let k = 0; k < 40 && b / a > 1 + 1e-10; k++) {
            const middle = Math.sqrt(a * b);
            if (Math.sign(above(middle, at(middle))) === sign) a = middle;
            else b = middle;
          }
          return Math.sqrt(a * b);
        }
        low = high;
        sign = next;
      }
      return undefined;
    },
  };
}
