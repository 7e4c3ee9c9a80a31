/**
 * Terzaghi's theory of one-dimensional consolidation, exact: average degree of consolidation U of a layer with uniform
 * initial excess pressure against the time factor T = cv t / Hdr^2.
 *
 * Source: Terzaghi & Froehlich (1936); Taylor (1948), Fundamentals of Soil Mechanics, ch. 10.
 */
import { say } from "../../message";
import { badInput, given, type Outcome } from "../../outcome";

/**
 * Below this T the short-time series is its first term alone, U = 2 sqrt(T / pi): the next term is about exp(-1/T),
 * less than 1e-17. Above it the Fourier series needs 14 terms at most.
 */
const SHORT_TIME = 0.025;

/** Above this T, 1 - U is less than 1e-17. */
const LONG_TIME = 16;

/** T at which the steepest tangent of U on log T meets the line U = 1. Calculated from the series. */
export const T_END_OF_PRIMARY = 1.10135;

/**
 * Degree of consolidation (0 to 1) at a time factor, to 1e-15. Zero at and below T = 0.
 * @example degreeOfConsolidation(0.197) // 0.5003
 * @example degreeOfConsolidation(0.848) // 0.9
 */
export function degreeOfConsolidation(T: number): number {
  if (!(T > 0)) return 0;
  if (T < SHORT_TIME) return 2 * Math.sqrt(T / Math.PI);
  return T > LONG_TIME ? 1 : 1 - remaining(T);
}

/** M^2 of the first term: M = (2k+1) pi/2, so that M^2 of term k is (2k+1)^2 times it. */
const FIRST_M2 = (Math.PI / 2) ** 2;
/** A term below this share of the sum does not change it. */
const NEGLIGIBLE = 1e-17;

function toTheEighth(x: number): number {
  const squared = x * x;
  const fourth = squared * squared;
  return fourth * fourth;
}

/**
 * 1 - U by the Fourier series, sum of 2/M^2 exp(-M^2 T); for T of SHORT_TIME and more.
 *
 * For speed exp(-M^2 T) of each term is the previous one times exp(-8 k FIRST_M2 T): one exponential in place of one
 * for each term, which takes a third to a half of the time.
 */
function remaining(T: number): number {
  let power = Math.exp(-FIRST_M2 * T);
  const ratio = toTheEighth(power);
  let step = ratio;
  let sum = 0;
  for (let odd = 1; ; odd += 2) {
    const term = ((2 / FIRST_M2) * power) / (odd * odd);
    sum += term;
    if (!(term > NEGLIGIBLE * sum)) return sum;
    power *= step;
    step *= ratio;
  }
}

/** dU/dT at a time factor greater than zero: the sum of 2 exp(-M^2 T), calculated as in `remaining`. */
export function consolidationRate(T: number): number {
  if (T < SHORT_TIME) return 1 / Math.sqrt(Math.PI * T);
  let power = Math.exp(-FIRST_M2 * T);
  const ratio = toTheEighth(power);
  let step = ratio;
  let sum = 0;
  for (;;) {
    const term = 2 * power;
    sum += term;
    if (!(term > NEGLIGIBLE * sum)) return sum;
    power *= step;
    step *= ratio;
  }
}

const SHORT_TIME_DEGREE = degreeOfConsolidation(SHORT_TIME);

/**
 * The time factor at a degree of consolidation (0 to less than 1), to 1e-10: Newton's method on ln(1 - U), started from
 * the first Fourier term. Refuses 1 and more (theory never reaches 1) and less than 0.
 * @example timeFactor(0.5) // 0.1967
 * @example timeFactor(0.9) // 0.8481
 * @example timeFactor(1) // refused: the degree of consolidation is 1: give a ratio from 0 to less than 1 (0.9 for 90 %; theory never
 *   reaches 1)
 */
export function timeFactor(degree: number): Outcome<number> {
  if (!(degree >= 0 && degree < 1))
    return badInput(
      say`the degree of consolidation is ${degree}: give a ratio from 0 to less than 1 (0.9 for 90 %; theory never reaches 1)`,
    );
  if (degree <= SHORT_TIME_DEGREE) return given((Math.PI / 4) * degree * degree);
  const target = Math.log1p(-degree);
  let T = degree < 0.6 ? (Math.PI / 4) * degree * degree : (-4 / Math.PI ** 2) * (target - Math.log(8 / Math.PI ** 2));
  for (let step = 0; step < 20; step++) {
    const left = remaining(T);
    const change = ((Math.log(left) - target) * left) / consolidationRate(T);
    T += change;
    if (Math.abs(change) <= 1e-15 * T) break;
  }
  return given(T);
}
