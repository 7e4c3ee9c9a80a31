/**
 * From the table of linear fits to the floor of a valley, by the Levenberg-Marquardt engine.
 *
 * The engine moves the rate (and the time zero, where it is free) alone; at each trial d0, primary and tail follow by linear least
 * squares. A third of the time that it takes with all of them free. The Jacobian is that of the residuals less the part that
 * d0, primary and tail take up: Kaufman, L. (1975), "A variable projection method for solving separable nonlinear least squares
 * problems", BIT 15, 49-57 (from memory).
 *
 * The columns are as long as the series, so that no index runs out: hence each `!`.
 */
import { levenbergMarquardt } from "../../numeric/least-squares";
import { ORDINARY_CREEP, type Column } from "./linear";
import { creepOfPower, onsetOfPower, pastEnd, power } from "./model";
import { minima, SHARPNESSES, type Table, type Trial } from "./search";
import { consolidationRate, degreeOfConsolidation } from "./terzaghi";

/** A trial whose time zero is free: the load came `shift` minutes before the clock. */
export interface Zeroed extends Trial {
  readonly shift: number;
}

/** A step that can lower the cost by no more than this share is the last: cv is then the least-squares one to 1e-9. */
const NEGLIGIBLE_GAIN = 1e-15;

/** From a trial to the bottom of its valley; with `shift`, the time zero is free as well. */
export function polish(table: Table, weights: Column, from: Trial, lean: number, shift?: number): Zeroed {
  const free = shift !== undefined;
  const separable = separableFit(table, weights, from, lean);
  const { parameters, rss } = levenbergMarquardt({
    count: table.y.length + 1,
    residuals: (p, into) => separable.residuals(Math.exp(p[0]!), p[1] ?? 0, into),
    jacobian: (_, into) => separable.jacobian(into, free),
    start: free ? [Math.log(from.rate), shift] : [Math.log(from.rate)],
    maxIterations: 40,
    negligibleGain: NEGLIGIBLE_GAIN,
  });
  if (rss > from.cost && !free) return { ...from, shift: 0 };
  const [ln = 0, zero = 0] = parameters;
  return separable.trial(Math.exp(ln), zero);
}

/** Residuals at a rate and a time zero, d0, primary and tail solved for, and how they change with ln rate and time zero. */
function separableFit(
  { times, y, firstReading }: Table,
  weights: Column,
  { sharpness, tail: hasTail }: Trial,
  lean: number,
) {
  const n = y.length;
  const roots = weights.map(Math.sqrt);
  const leaning = Math.sqrt(lean);
  const total = weights.reduce((a, b) => a + b, 0);
  const mean = (column: Column): number => {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += weights[i]! * column[i]!;
    return sum / total;
  };
  const centre = (column: Column): number => {
    const middle = mean(column);
    for (let i = 0; i < n; i++) column[i]! -= middle;
    return middle;
  };
  /** Weighted sum of the products of two columns. */
  const product = (a: Column, b: Column): number => {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += weights[i]! * a[i]! * b[i]!;
    return sum;
  };

  // All columns are less their means: d0 is solved for by that.
  const d = Float64Array.from(y);
  const meanReading = centre(d);
  const clock = new Float64Array(n);
  const T = new Float64Array(n);
  const powers = new Float64Array(n);
  const u = new Float64Array(n);
  const c = new Float64Array(n);
  const slope = new Float64Array(n);
  let [uu, uc, cc] = [0, 0, 0];
  let [primary, tail] = [0, 0];
  let [meanU, meanC] = [0, 0];

  /** a and b of the least-squares a u + b c to a column whose products with u and c are given; without creep b is 0. */
  const solved = (withU: number, withC: number, creeps: boolean): [a: number, b: number] => {
    const det = uu * cc - uc * uc;
    if (creeps && det > 1e-10 * uu * cc) return [(withU * cc - withC * uc) / det, (withC * uu - withU * uc) / det];
    return [uu > 1e-14 ? withU / uu : 0, 0];
  };

  const residuals = (rate: number, zero: number, into: Float64Array): void => {
    for (let i = 0; i < n; i++) {
      clock[i] = Math.max(times[i]! + zero, 0);
      T[i] = rate * clock[i]!;
      powers[i] = power(pastEnd(T[i]!), sharpness);
      u[i] = degreeOfConsolidation(T[i]!);
      c[i] = creepOfPower(powers[i]!, sharpness);
    }
    meanU = centre(u);
    meanC = centre(c);
    uu = product(u, u) + lean * ORDINARY_CREEP * ORDINARY_CREEP;
    cc = product(c, c) + lean;
    uc = product(u, c) - lean * ORDINARY_CREEP;
    const [withU, withC] = [product(u, d), product(c, d)];
    [primary, tail] = solved(withU, withC, hasTail !== 0);
    // Creep never runs against primary: where it would, there is none.
    if (tail !== 0 && !(primary * tail > 0)) [primary, tail] = solved(withU, withC, false);
    for (let i = 0; i < n; i++) into[i] = roots[i]! * (primary * u[i]! + tail * c[i]! - d[i]!);
    into[n] = leaning * (tail - ORDINARY_CREEP * primary);
  };

  /** The part of `slope` that a change of d0, primary and tail does not take up, from `at` on. */
  const project = (into: Float64Array, at: number): void => {
    centre(slope);
    const [a, b] = solved(product(slope, u), product(slope, c), tail !== 0);
    for (let i = 0; i < n; i++) into[at + i] = roots[i]! * (slope[i]! - a * u[i]! - b * c[i]!);
    into[at + n] = leaning * (ORDINARY_CREEP * a - b);
  };

  /** At the rate and the time zero that `residuals` was asked last. */
  const jacobian = (into: Float64Array, free: boolean): void => {
    const perLnRate = (i: number): number =>
      T[i] === 0 ? 0 : primary * T[i]! * consolidationRate(T[i]!) + (tail * onsetOfPower(powers[i]!)) / Math.LN10;
    for (let i = 0; i < n; i++) slope[i] = perLnRate(i);
    project(into, 0);
    if (!free) return;
    for (let i = 0; i < n; i++) slope[i] = clock[i] === 0 ? 0 : perLnRate(i) / clock[i]!;
    project(into, n + 1);
  };

  const trial = (rate: number, shift: number): Zeroed => {
    const all = new Float64Array(n + 1);
    residuals(rate, shift, all);
    const d0 = firstReading + meanReading - primary * meanU - tail * meanC;
    return { rate, sharpness, primary, tail, d0, shift, cost: all.reduce((sum, value) => sum + value * value, 0) };
  };
  return { residuals, jacobian, trial };
}

/** More valleys than this have not been seen. */
const MOST_VALLEYS = 3;

/** The floors of the valleys, deepest first, with the sharpness of the table. */
export const valleys = (table: Table, weights: Column, lean: number): Trial[] =>
  minima(table, weights, lean)
    .slice(0, MOST_VALLEYS)
    .map((trial) => polish(table, weights, trial, lean))
    .sort((a, b) => a.cost - b.cost);

/** The floor of the best valley, quickly. */
export function lowest(table: Table, weights: Column, lean: number): Trial {
  const [best] = minima(table, weights, lean);
  if (!best) throw new RangeError("a table without rates has no minimum");
  return polish(table, weights, best, lean);
}

/** The floor of a valley over the sharpnesses of creep, from its floor at the sharpness of the table. */
export const bottom = (table: Table, weights: Column, lean: number, floor: Trial): Trial =>
  SHARPNESSES.filter((sharpness) => sharpness !== floor.sharpness)
    .map((sharpness) => polish(table, weights, { ...floor, sharpness, cost: Infinity }, lean))
    .reduce<Trial>((a, b) => (b.cost < a.cost ? b : a), floor);

/** How many parameters a trial was fitted with. */
export const parameterCount = (trial: Trial): number => (trial.tail ? 4 : 3);
