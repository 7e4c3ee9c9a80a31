/**
 * The Levenberg-Marquardt engine goes from a minimum of the table of linear fits down to the bottom of the valley.
 *
 * The engine moves the rate (and the time zero, where it is free) alone; at each trial d0, primary and tail follow by
 * linear least squares. This takes a third of the time that five free parameters take. The Jacobian leaves out the part
 * of the residuals that d0, primary and tail take up: Kaufman, L. (1975), "A variable projection method for solving
 * separable nonlinear least squares problems", BIT 15, 49-57 (from memory).
 *
 * The columns are as long as the series, so that no index runs out: hence each `!`.
 */
import { levenbergMarquardt, sumOfSquares, workspaceFor } from "../../numeric/least-squares";
import { ORDINARY_CREEP, solveProducts, unsolved } from "./linear";
import { creepsAt, curveSlope, degreesAt, type Column } from "./model";
import { EARLY_ONSET, LATE_ONSETS, minima, onsetsAt, TABLE_ONSET, type Table, type Trial } from "./search";

/** A trial whose time zero is free: the load came `shift` minutes before the clock. */
export interface Zeroed extends Trial {
  readonly shift: number;
}

/**
 * A step that can lower the cost by no more than this share is the last step: cv is then within 1e-9 of the
 * least-squares value.
 */
const NEGLIGIBLE_GAIN = 1e-16;

/** Descends from trials of one table, in arrays that are made once for all of them. */
export interface Descent {
  readonly table: Table;
  /** The bottom of the valley that a trial lies in; with `shift`, the time zero is free as well. */
  polish(weights: Column, from: Trial, lean: number, shift?: number): Zeroed;
}

export function descentOf(table: Table): Descent {
  const separable = separableFit(table);
  const count = table.y.length + 1;
  const { rates } = table;
  const [slowest, fastest] = [rates[0] ?? 0, rates[rates.length - 1] ?? Infinity];
  const [fixedZero, freeZero] = [workspaceFor(count, 1), workspaceFor(count, 2)];
  return {
    table,
    polish(weights, from, lean, shift) {
      const free = shift !== undefined;
      separable.prepare(weights, from, lean);
      const { parameters, rss } = levenbergMarquardt(
        {
          count,
          residuals: (p, into) => separable.residuals(Math.exp(p[0]!), p[1] ?? 0, into),
          jacobian: (_, into) => separable.jacobian(into, free),
          start: free ? [Math.log(from.rate), shift] : [Math.log(from.rate)],
          maxIterations: 40,
          negligibleGain: NEGLIGIBLE_GAIN,
        },
        free ? freeZero : fixedZero,
      );
      const [ln = 0, zero = 0] = parameters;
      const rate = Math.exp(ln);
      // A valley that runs out of the table has no bottom: root-time readings alone fit any slow rate.
      const outside = rate < slowest || rate > fastest;
      return !free && (outside || rss > from.cost) ? { ...from, shift: 0 } : separable.trial(rate, zero);
    },
  };
}

/** Subtracts the mean from a column, and returns the mean; `total` is the sum of the weights. */
export function centre(values: Column, weights: Column, total: number): number {
  const { length } = values;
  let sum = 0;
  for (let i = 0; i < length; i++) sum += weights[i]! * values[i]!;
  const mean = sum / total;
  for (let i = 0; i < length; i++) values[i]! -= mean;
  return mean;
}

/** Weighted sum of the products of two columns. */
export function product(a: Column, b: Column, weights: Column): number {
  const { length } = a;
  let sum = 0;
  for (let i = 0; i < length; i++) sum += weights[i]! * a[i]! * b[i]!;
  return sum;
}

/**
 * The residuals at a rate and a time zero, with d0, primary and tail solved for, and their derivatives by ln rate and
 * time zero.
 */
function separableFit({ times, y, firstReading }: Table) {
  const n = y.length;
  const column = () => new Float64Array(n);
  /**
   * `roots` are the square roots of the weights. Readings, U and creep each have their mean subtracted, which solves
   * for d0.
   */
  const [roots, d, u, c] = [column(), column(), column(), column()];
  /** The derivatives of the residuals by ln rate and by the time zero. */
  const [byLnRate, byZero] = [column(), column()];
  const all = new Float64Array(n + 1);
  let weights: Column = column();
  let [lean, leaning, total] = [0, 0, 0];
  /** The last trial. */
  const last = { rate: NaN, zero: NaN, onset: TABLE_ONSET, ...unsolved() };
  let meanD = 0;

  /** Prepares for trials with the onset of creep of `from`. */
  const prepare = (w: Column, from: Trial, weightOfLean: number): void => {
    weights = w;
    lean = weightOfLean;
    leaning = Math.sqrt(lean);
    last.onset = from.onset;
    total = 0;
    for (let i = 0; i < n; i++) {
      total += w[i]!;
      roots[i] = Math.sqrt(w[i]!);
    }
    d.set(y);
    meanD = centre(d, weights, total);
  };

  /** Writes, from `at` on, what is left of some values when `a` times U and `b` times creep are taken from it. */
  const leave = (values: Column, a: number, b: number, into: Column, at = 0): void => {
    for (let i = 0; i < n; i++) into[at + i] = roots[i]! * (values[i]! - a * u[i]! - b * c[i]!);
    into[at + n] = leaning * (ORDINARY_CREEP * a - b);
  };

  /** Its loops stand in small functions: the engine compiles them in half of the time that all loops in one take. */
  const residuals = (rate: number, zero: number, into: Column): void => {
    degreesAt(times, rate, zero, u);
    creepsAt(times, rate, zero, last.onset, c);
    last.rate = rate;
    last.zero = zero;
    const [meanU, meanC] = [centre(u, weights, total), centre(c, weights, total)];
    last.uu = product(u, u, weights) + lean * ORDINARY_CREEP * ORDINARY_CREEP;
    last.cc = product(c, c, weights) + lean;
    last.uc = product(u, c, weights) - lean * ORDINARY_CREEP;
    solveProducts(last, product(u, d, weights), product(c, d, weights));
    const { primary, tail } = last;
    last.d0 = meanD - primary * meanU - tail * meanC;
    leave(d, primary, tail, into);
  };

  /** Writes, from `at` on, the part of a derivative that a change of d0, primary and tail does not take up. */
  const project = (slope: Column, into: Column, at: number): void => {
    centre(slope, weights, total);
    const [us, cs] = [product(u, slope, weights), product(c, slope, weights)];
    const { uu, uc, cc, det, tail } = last;
    const a = tail ? (us * cc - cs * uc) / det : uu > 1e-14 ? us / uu : 0;
    const b = tail ? (cs * uu - us * uc) / det : 0;
    leave(slope, a, b, into, at);
  };

  /** The derivatives at the last trial: 0 before the load. A change of ln rate moves the curve as one of ln t does. */
  const slopes = (): void => {
    for (let i = 0; i < n; i++) {
      const t = times[i]! + last.zero;
      byLnRate[i] = t > 0 ? -curveSlope(last, t) / Math.LN10 : 0;
      byZero[i] = t > 0 ? byLnRate[i]! / t : 0;
    }
  };

  /** At the rate and the time zero of the last call of `residuals`. */
  const jacobian = (into: Column, free: boolean): void => {
    slopes();
    project(byLnRate, into, 0);
    if (free) project(byZero, into, n + 1);
  };

  const trial = (rate: number, shift: number): Zeroed => {
    residuals(rate, shift, all);
    const { onset, primary, tail, d0 } = last;
    return { rate, onset, primary, tail, d0: firstReading + d0, shift, cost: sumOfSquares(all) };
  };
  return { prepare, residuals, jacobian, trial };
}

/** No record has shown more valleys than this. */
const MOST_VALLEYS = 3;

/** The bottoms of the valleys, deepest first, with the onset of creep of the table. */
export const valleys = ({ table, polish }: Descent, weights: Column, lean: number): Trial[] =>
  minima(table, weights, lean)
    .slice(0, MOST_VALLEYS)
    .map((trial) => polish(weights, trial, lean))
    .sort((a, b) => a.cost - b.cost);

/** The bottom of the valley at the lowest point of the table, without a look into the other valleys. */
export function lowest({ table, polish }: Descent, weights: Column, lean: number): Trial {
  const [best] = minima(table, weights, lean);
  if (!best) throw new RangeError("a table without rates has no minimum");
  return polish(weights, best, lean);
}

/** The bottom of a valley over the onsets of late creep, starting at its bottom for the onset of the table. */
export const bottom = ({ polish }: Descent, weights: Column, lean: number, floor: Trial): Trial =>
  LATE_ONSETS.filter((onset) => onset !== floor.onset)
    .map((onset) => polish(weights, { ...floor, onset, cost: Infinity }, lean))
    .reduce<Trial>((a, b) => (b.cost < a.cost ? b : a), floor);

/**
 * Creep that begins within primary is believed if it lowers the cost by this F: about the square of Student's t of a
 * parameter at 95 %.
 */
const EARLY_F = 4;

/** The fit with creep that begins within primary, if the readings show that it does; else the fit with late creep. */
export function withEarlyCreep({ polish, table }: Descent, weights: Column, lean: number, late: Trial): Trial {
  if (!onsetsAt(late.rate, table.times).includes(EARLY_ONSET)) return late;
  const early = polish(weights, { ...late, onset: EARLY_ONSET, cost: Infinity }, lean);
  return late.cost > early.cost * (1 + EARLY_F / (table.y.length - 4)) ? early : late;
}

/** How many parameters were fitted in a trial. */
export const parameterCount = (trial: Trial): number => (trial.tail ? 4 : 3);
