/**
 * Least-squares fit of Terzaghi's theory, with immediate compression and creep, to the readings of an increment.
 *
 * A table over the rate finds every minimum; from the best ones the Levenberg-Marquardt engine goes to the bottom. A wrong
 * reading is found by how much the fit gains when it is left out, an error of the time zero by how much it gains when the
 * zero is free. The interval of cv is where the profile of the residual sum rises by Student's t, widened for residuals
 * that follow one another and for the model's own share.
 */
import { given, notApplicable, type Outcome } from "../outcome";
import { levenbergMarquardt } from "../numeric/least-squares";
import { studentsT95 } from "../numeric/students-t";
import { creep, creepOnset, curveAt, type Curve } from "./model";
import type { CleanReadings, Series } from "./readings";
import {
  CREEP_SPREAD,
  minima,
  mostDoubtful,
  ORDINARY_CREEP,
  SHARPNESSES,
  tableOf,
  trialAt,
  type Table,
  type Trial,
} from "./search";
import { consolidationRate, degreeOfConsolidation } from "./terzaghi";

export interface TheoryFit extends Curve {
  readonly d100: number;
  /** 95 % interval of the rate (and so of cv, as ratios). */
  readonly rateLow: number;
  readonly rateHigh: number;
  /** Root of the mean squared residual, reading unit. */
  readonly misfit: number;
  /** Standard deviation of a reading by the residuals, not less than that of rounding. */
  readonly noise: number;
  /** Minutes by which loading seems to have begun before (+) or after (-) the clock; 0 where the readings do not show it. */
  readonly timeZero: number;
  /** Indices into the series of readings left out as wrong. */
  readonly leftOut: readonly number[];
}

export const FEWEST_READINGS = 6;

/** A reading is wrong if leaving it out lowers the residual sum by this F, and it stands off by this share of primary. */
const WRONG_F = 60;
const WRONG_SHARE = 0.05;
const READINGS_TO_JUDGE_ONE = 8;
const MOST_WRONG = 2;
/** The time zero is off if freeing it lowers the residual sum by this F; beyond these minutes it is something else. */
const TIME_ZERO_F = 20;
const MOST_TIME_ZERO = 0.3;
const READINGS_TO_JUDGE_ZERO = 10;
/** The model's own share in the uncertainty of ln cv, from simulation with creep and noise that it does not know. */
const MODEL_SHARE = 0.0075;
/** A second minimum is told of if its rate differs by this ratio. */
const OTHER_ANSWER = 1.35;

interface Zeroed extends Trial {
  readonly shift: number;
}

/** From a trial to the bottom of its valley; with `shift`, the time zero is free as well. */
function polish(series: Series, weights: readonly number[], from: Trial, lean: number, shift?: number): Zeroed {
  const { times, readings } = series;
  const used = times.map((_, i) => i).filter((i) => weights[i] > 0);
  const roots = used.map((i) => Math.sqrt(weights[i]));
  const leaning = Math.sqrt(lean);
  const free = shift !== undefined;
  const hasTail = from.tail !== 0;
  const unpack = (p: readonly number[]) => ({
    curve: { rate: Math.exp(p[0]), d0: p[1], primary: p[2], tail: hasTail ? p[3] : 0, sharpness: from.sharpness },
    zero: free ? p[p.length - 1] : 0,
  });
  const clock = (i: number, zero: number) => Math.max(times[i] + zero, 1e-9);
  const residuals = (p: readonly number[]) => {
    const { curve, zero } = unpack(p);
    const rows = used.map((i, k) => roots[k] * (curveAt(curve, clock(i, zero)) - readings[i]));
    rows.push(leaning * (curve.tail - ORDINARY_CREEP * curve.primary));
    return rows;
  };
  const jacobian = (p: readonly number[]) => {
    const { curve, zero } = unpack(p);
    const rows = used.map((i, k) => {
      const t = clock(i, zero);
      const T = curve.rate * t;
      const onset = hasTail ? (curve.tail * creepOnset(curve.rate, curve.sharpness, t)) / Math.LN10 : 0;
      const slope = curve.primary * T * consolidationRate(T) + onset;
      const row = [slope, 1, degreeOfConsolidation(T)];
      if (hasTail) row.push(creep(curve.rate, curve.sharpness, t));
      if (free) row.push(times[i] + zero > 1e-9 ? slope / t : 0);
      return row.map((value) => value * roots[k]);
    });
    const last = [0, 0, -leaning * ORDINARY_CREEP];
    if (hasTail) last.push(leaning);
    if (free) last.push(0);
    return [...rows, last];
  };
  const start = [Math.log(from.rate), from.d0, from.primary];
  if (hasTail) start.push(from.tail);
  if (free) start.push(shift);
  const { parameters, rss } = levenbergMarquardt({
    residuals,
    jacobian,
    start,
    maxIterations: 40,
    negligibleGain: 1e-8,
  });
  const { curve, zero } = unpack(parameters);
  if (curve.tail * curve.primary < 0) return polish(series, weights, { ...from, tail: 0 }, lean, shift);
  return rss <= from.cost || free ? { ...curve, cost: rss, shift: zero } : { ...from, shift: 0 };
}

/** The bottom of the best valley, over the sharpnesses of creep. */
const bottom = (table: Table, weights: readonly number[], lean: number, from: Trial): Trial =>
  SHARPNESSES.map((sharpness) => polish(table.series, weights, { ...from, sharpness, cost: Infinity }, lean)).reduce(
    (a, b) => (b.cost < a.cost ? b : a),
  );

const parameterCount = (trial: Trial): number => (trial.tail ? 4 : 3);

export function fitTheory(clean: CleanReadings): Outcome<TheoryFit> {
  const { series, step, travel } = clean;
  const { times, readings, rows } = series;
  const n = times.length;
  if (n < FEWEST_READINGS)
    return notApplicable(
      `${FEWEST_READINGS} readings at different times are needed; there ${n === 1 ? "is" : "are"} ${n}`,
    );
  if (!(travel > 0)) return notApplicable("all readings are the same: there is no movement to reduce");

  const remarks: string[] = [];
  const weights = [...series.weights];
  const rounding = (step * step) / 12;
  const table = tableOf(series);
  /** The weight of the lean on ordinary creep: that of its spread in units of the noise. */
  const leanOf = (variance: number, primary: number) => variance / (CREEP_SPREAD * (Math.abs(primary) || travel)) ** 2;
  let lean = leanOf(Math.max(rounding, (2e-4 * travel) ** 2), travel);
  const residual = (curve: Curve, i: number, shift = 0) =>
    readings[i] - curveAt(curve, Math.max(times[i] + shift, 1e-9));
  const residualSum = (curve: Curve, shift = 0) =>
    weights.reduce((sum, w, i) => (w ? sum + w * residual(curve, i, shift) ** 2 : sum), 0);

  const lowest = (weights: readonly number[]) => polish(series, weights, minima(table, weights, lean)[0], lean);
  let best: Trial = lowest(weights);
  const leftOut: number[] = [];
  while (leftOut.length < MOST_WRONG && n - leftOut.length >= READINGS_TO_JUDGE_ONE) {
    const worst = times.reduce((most, _, i) => (weights[i] ? Math.max(most, Math.abs(residual(best, i))) : most), 0);
    if (worst < 0.5 * WRONG_SHARE * Math.abs(best.primary)) break;
    const index = mostDoubtful(table, weights, lean);
    const reduced = weights.map((w, i) => (i === index ? 0 : w));
    const without = lowest(reduced);
    const freedom = n - leftOut.length - 1 - parameterCount(without);
    const F = (best.cost - without.cost) / (without.cost / freedom + rounding);
    const jump = Math.abs(residual(without, index));
    if (!(F > WRONG_F && jump > WRONG_SHARE * Math.abs(without.primary))) break;
    leftOut.push(index);
    weights[index] = 0;
    best = without;
    remarks.push(
      `${rows[index]} is left out as a wrong reading: ${shown(readings[index])} stands ${shown(jump)} off the curve of the others`,
    );
  }

  const used = n - leftOut.length;
  const varianceOf = (trial: Trial, shift = 0, parameters = parameterCount(trial)) =>
    Math.max(residualSum(trial, shift) / Math.max(used - parameters, 1), rounding);
  const residuals = times.map((_, i) => residual(best, i)).filter((_, i) => weights[i]);
  lean = leanOf(Math.max(Math.min(varianceOf(best), roughness(residuals)), rounding), best.primary);
  const [first, ...others] = minima(table, weights, lean);
  best = bottom(table, weights, lean, first);

  let timeZero = 0;
  let parameters = parameterCount(best);
  if (used >= READINGS_TO_JUDGE_ZERO) {
    const freed = polish(series, weights, best, lean, 0);
    const F = (best.cost - freed.cost) / (freed.cost / (used - parameters - 1) + rounding);
    if (F > TIME_ZERO_F && Math.abs(freed.shift) < MOST_TIME_ZERO) {
      best = freed;
      timeZero = freed.shift;
      parameters++;
      remarks.push(
        `the readings fit better if the load came ${shown(Math.abs(timeZero) * 60)} s ${timeZero > 0 ? "before" : "after"} the clock was started: check the time zero`,
      );
    }
  }

  const variance = varianceOf(best, timeZero, parameters);
  const freedom = Math.max(used - parameters, 1);
  const weighted = times
    .map((_, i) => Math.sqrt(weights[i]) * residual(best, i, timeZero))
    .filter((_, i) => weights[i]);
  const rise = studentsT95(freedom) ** 2 * variance * following(weighted);
  const other = others.find(
    ({ cost, rate }) => cost - best.cost < rise && Math.abs(Math.log(rate / best.rate)) > Math.log(OTHER_ANSWER),
  );
  if (other)
    remarks.push(
      `the readings fit a cv ${shown(other.rate / best.rate)} times this one nearly as well: do not rely on either`,
    );
  const [low, high] = interval(series, weights, best, lean, timeZero, rise);
  return given(
    {
      rate: best.rate,
      d0: best.d0,
      primary: best.primary,
      tail: best.tail,
      sharpness: best.sharpness,
      d100: best.d0 + best.primary,
      rateLow: low,
      rateHigh: high,
      misfit: Math.sqrt(residualSum(best, timeZero) / weights.reduce((a, b) => a + b, 0)),
      noise: Math.sqrt(variance),
      timeZero,
      leftOut,
    },
    remarks,
  );
}

/** Variance of a reading by how far each residual is from half way between its neighbours: it does not count a smooth misfit. */
function roughness(residuals: readonly number[]): number {
  let sum = 0;
  for (let i = 1; i < residuals.length - 1; i++)
    sum += (residuals[i] - (residuals[i - 1] + residuals[i + 1]) / 2) ** 2 / 1.5;
  return sum / (residuals.length - 2);
}

/** (1 + r) / (1 - r) by the correlation r of each residual with the next: how much less the readings tell than if independent. */
function following(residuals: readonly number[]): number {
  let squares = 0;
  let products = 0;
  residuals.forEach((value, i) => {
    squares += value * value;
    if (i) products += value * residuals[i - 1];
  });
  const r = squares ? Math.min(Math.max(products / squares, 0), 0.9) : 0;
  return (1 + r) / (1 - r);
}

/** The rates at which the profile of the cost has risen by `rise`, widened by the model's share; open sides end at 0 and infinity. */
function interval(
  series: Series,
  weights: readonly number[],
  best: Trial,
  lean: number,
  shift: number,
  rise: number,
): [low: number, high: number] {
  const side = (direction: 1 | -1): number => {
    const inside = (x: number) =>
      trialAt(series, weights, best.rate * Math.exp(direction * x), lean, shift).cost - best.cost < rise;
    let low = 0;
    let high = 0.02;
    while (inside(high)) {
      low = high;
      high *= 2;
      if (high > 6) return Infinity;
    }
    while (high - low > 0.01 * high + 2e-4) {
      const middle = (low + high) / 2;
      if (inside(middle)) low = middle;
      else high = middle;
    }
    return Math.hypot(high, MODEL_SHARE);
  };
  return [best.rate * Math.exp(-side(-1)), best.rate * Math.exp(side(1))];
}

const shown = (value: number): string => String(Number(value.toPrecision(3)));
