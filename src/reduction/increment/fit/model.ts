/**
 * The curve that theory expects of one increment: initial compression, Terzaghi's primary compression, and secondary
 * compression that begins smoothly at the end of primary,
 *
 *   d(t) = d0 + primary U(rate t) + tail/m log10(1 + (t/tp)^m),   rate tp = 1.10135,
 *
 * so that long after primary d rises by `tail` per log cycle along a straight line that passes d100 = d0 + primary at
 * tp, where the steepest tangent of the primary curve meets d100. They are the tail and the end of primary of the
 * log-time construction.
 */
import { consolidationRate, degreeOfConsolidation, T_END_OF_PRIMARY } from "./terzaghi";

export interface Curve {
  /** cv / Hdr^2, per minute. */
  readonly rate: number;
  readonly d0: number;
  /** d100 - d0, with the sense of the readings. */
  readonly primary: number;
  /** Creep per log cycle of time, with the sense of the readings. */
  readonly tail: number;
  /** m: how sharply creep begins. */
  readonly sharpness: number;
}

/** t/tp, from a time factor T. */
export const pastEnd = (T: number): number => T / T_END_OF_PRIMARY;

/**
 * x^m. The sharpnesses that the fit tries (search.ts) are written as products for speed: a tenth of the time of `**`.
 */
export function power(x: number, m: number): number {
  const square = x * x;
  switch (m) {
    case 2:
      return square;
    case 3:
      return square * x;
    case 4.5:
      return square * square * Math.sqrt(x);
    case 7:
      return square * square * square * x;
    default:
      return x ** m;
  }
}

/** Creep of unit slope, log10(1 + (t/tp)^m) / m, from (t/tp)^m; at late times it approaches the line log10(t/tp). */
export const creepOfPower = (powered: number, m: number): number => Math.log1p(powered) / (m * Math.LN10);

/** The slope of the creep of unit slope, from (t/tp)^m: 0 early, 1 late. */
export const onsetOfPower = (powered: number): number => 1 / (1 + 1 / powered);

/** Creep of unit slope at time t. */
export const creep = (rate: number, sharpness: number, t: number): number =>
  creepOfPower(power(pastEnd(rate * t), sharpness), sharpness);

export const curveAt = (c: Curve, t: number): number =>
  c.d0 + c.primary * degreeOfConsolidation(c.rate * t) + (c.tail ? c.tail * creep(c.rate, c.sharpness, t) : 0);

/** d reading / d log10 t. */
export const curveSlope = (c: Curve, t: number): number =>
  c.primary * c.rate * t * Math.LN10 * consolidationRate(c.rate * t) +
  c.tail * onsetOfPower(power(pastEnd(c.rate * t), c.sharpness));
