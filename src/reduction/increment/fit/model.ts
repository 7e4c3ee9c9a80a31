/**
 * The curve that theory expects of one increment: initial compression, Terzaghi's primary compression, and secondary
 * compression that begins smoothly at the end of primary, or within it,
 *
 *   d(t) = d0 + primary U(T) + tail/m log10(1 + (T/begins)^m),   T = rate t,
 *
 * so that long after primary d rises by `tail` per log cycle along a straight line that passes d0 + primary at T = `begins`.
 * At T = 1.10135, where the steepest tangent of the primary curve meets d0 + primary, the line passes d100. This line is the
 * tail of the log-time construction, and d100 its end of primary: d100 contains the creep before the end of primary.
 */
import { consolidationRate, degreeOfConsolidation } from "./terzaghi";

export interface Curve {
  /** cv / Hdr^2, per minute. */
  readonly rate: number;
  readonly d0: number;
  /** Primary compression, without creep, with the sense of the readings. */
  readonly primary: number;
  /** Creep per log cycle of time, with the sense of the readings. */
  readonly tail: number;
  readonly onset: Onset;
}

/** How creep begins. */
export interface Onset {
  /** m: how sharply. */
  readonly sharpness: number;
  /** The time factor at which the line of the tail passes d0 + primary. */
  readonly begins: number;
}

/**
 * x^m, for an m of which the double is a whole number: the product of squares of squares of the root. For speed: this
 * takes a quarter of the time of `**`, and the same steps for every m, so that code compiled for one sharpness serves
 * the next.
 */
export function power(x: number, m: number): number {
  let square = Math.sqrt(x);
  let product = 1;
  for (let left = 2 * m; left > 0; left >>= 1) {
    if (left & 1) product *= square;
    square *= square;
  }
  return product;
}

/** The slope of the creep of unit slope at a time factor: 0 early, 1 late. */
export const creepSlope = ({ sharpness, begins }: Onset, T: number): number =>
  1 / (1 + 1 / power(T / begins, sharpness));

/** Creep of unit slope at a time factor, log10(1 + (T/begins)^m) / m; late it approaches the line log10(T/begins). */
export const creep = ({ sharpness, begins }: Onset, T: number): number =>
  Math.log1p(power(T / begins, sharpness)) / (sharpness * Math.LN10);

/** A column of numbers. The loops below stay within the columns: hence each `!`. */
export type Column = Float64Array;

/** Writes, from a place on, the degrees of consolidation of a load that came `shift` minutes before the clock. */
export function degreesAt(times: Column, rate: number, shift: number, into: Column, from = 0): void {
  const { length } = times;
  for (let i = 0; i < length; i++) into[from + i] = degreeOfConsolidation(rate * (times[i]! + shift));
}

/** Writes, from a place on, the creep of unit slope of the same load; 0 before the load. */
export function creepsAt(times: Column, rate: number, shift: number, onset: Onset, into: Column, from = 0): void {
  const { length } = times;
  for (let i = 0; i < length; i++) into[from + i] = creep(onset, rate * Math.max(times[i]! + shift, 0));
}

export const curveAt = (c: Curve, t: number): number =>
  c.d0 + c.primary * degreeOfConsolidation(c.rate * t) + (c.tail ? c.tail * creep(c.onset, c.rate * t) : 0);

/** d reading / d log10 t. */
export const curveSlope = (c: Curve, t: number): number =>
  c.primary * c.rate * t * Math.LN10 * consolidationRate(c.rate * t) + c.tail * creepSlope(c.onset, c.rate * t);
