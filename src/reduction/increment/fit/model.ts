/**
 * The curve that theory expects of one increment: initial compression, Terzaghi's primary compression, and secondary
 * compression that begins smoothly at the end of primary,
 *
 *   d(t) = d0 + primary U(rate t) + tail/m log10(1 + (t/tp)^m),   rate tp = 1.10135,
 *
 * so that long after primary d rises by `tail` per log cycle along a straight line that passes d100 = d0 + primary at tp,
 * where the steepest tangent of the primary curve meets its end: the line and the point of the log-time construction.
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

/** Creep of unit slope at time t, and the line it approaches: log10(t/tp). */
export const creep = (rate: number, sharpness: number, t: number): number =>
  creepSince(Math.log((rate * t) / T_END_OF_PRIMARY), sharpness);

/** The same by ln(t/tp). */
export function creepSince(lnTime: number, sharpness: number): number {
  const x = sharpness * lnTime;
  if (x < -36) return 0;
  return (x > 36 ? x : Math.log1p(Math.exp(x))) / (sharpness * Math.LN10);
}

/** The share of a log cycle of creep per cycle that is under way at t: 0 early, 1 late. */
export const creepOnset = (rate: number, sharpness: number, t: number): number =>
  1 / (1 + ((rate * t) / T_END_OF_PRIMARY) ** -sharpness);

export const curveAt = (c: Curve, t: number): number =>
  c.d0 + c.primary * degreeOfConsolidation(c.rate * t) + (c.tail ? c.tail * creep(c.rate, c.sharpness, t) : 0);

/** d reading / d log10 t. */
export const curveSlope = (c: Curve, t: number): number =>
  c.primary * c.rate * t * Math.LN10 * consolidationRate(c.rate * t) + c.tail * creepOnset(c.rate, c.sharpness, t);
