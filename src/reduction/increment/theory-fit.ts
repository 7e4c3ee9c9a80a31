/**
 * Least-squares fit of Terzaghi's theory to the readings of an increment.
 *
 * Given the rate cv/Hdr^2 the curve is linear in the rest, so a search over log rate across the record and a decade before
 * it cannot miss the best of several minima; from the best of each creep sharpness the Levenberg-Marquardt engine goes on
 * to the minimum. A wrong reading is found by how much the fit gains when it is left out. Creep is allowed only when the
 * record goes far enough beyond primary to show it; before that it would trade with primary compression.
 */
import { given, notApplicable, type Outcome } from "../outcome";
import { leastSquares } from "../numeric/least-squares";
import { studentsT95 } from "../numeric/students-t";
import { creep, creepOnset, curveAt, type Curve } from "./model";
import type { CleanReadings, Series } from "./readings";
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
  /** Index into the series of readings left out as wrong. */
  readonly leftOut: readonly number[];
}

export const FEWEST_READINGS = 6;

const SHARPNESSES = [2, 3, 4.5, 7];
const POINTS_PER_DECADE = 14;
/** Creep is fitted only where the last reading lies beyond this T. */
const T_FOR_CREEP = 1.8;
/** A reading is wrong if leaving it out lowers the residual sum by this F, and it stands off by this share of primary. */
const WRONG_F = 60;
const WRONG_SHARE = 0.05;
const READINGS_TO_JUDGE_ONE = 8;
const MOST_WRONG = 2;
/** The model's own share in the uncertainty of cv, from simulation with creep and noise it does not know. */
const MODEL_SHARE = 0.03;

interface Trial extends Curve {
  readonly rss: number;
}

/** Least squares of d0, primary and tail (creep, where `sharpness` > 0, never against primary) at a given rate. */
function linearFit(series: Series, weights: readonly number[], rate: number, sharpness: number, shift = 0): Trial {
  const { times, readings } = series;
  let w = 0,
    y = 0,
    u = 0,
    c = 0,
    yy = 0,
    uu = 0,
    cc = 0,
    uy = 0,
    cy = 0,
    uc = 0;
  const origin = readings[0];
  for (let i = 0; i < times.length; i++) {
    const wi = weights[i];
    if (!wi) continue;
    const t = Math.max(times[i] + shift, 0);
    const yi = readings[i] - origin;
    const ui = degreeOfConsolidation(rate * t);
    const ci = sharpness && t > 0 ? creep(rate, sharpness, t) : 0;
    w += wi;
    y += wi * yi;
    u += wi * ui;
    c += wi * ci;
    yy += wi * yi * yi;
    uu += wi * ui * ui;
    cc += wi * ci * ci;
    uy += wi * ui * yi;
    cy += wi * ci * yi;
    uc += wi * ui * ci;
  }
  return solve(origin, rate, sharpness, { w, y, u, c, yy, uu, cc, uy, cy, uc });
}

interface Sums {
  w: number;
  y: number;
  u: number;
  c: number;
  yy: number;
  uu: number;
  cc: number;
  uy: number;
  cy: number;
  uc: number;
}

function solve(origin: number, rate: number, sharpness: number, s: Sums): Trial {
  const yy = s.yy - (s.y * s.y) / s.w;
  const uu = s.uu - (s.u * s.u) / s.w;
  const uy = s.uy - (s.u * s.y) / s.w;
  let primary = uu > 1e-14 ? uy / uu : 0;
  let tail = 0;
  let rss = yy - primary * uy;
  if (sharpness) {
    const cc = s.cc - (s.c * s.c) / s.w;
    const cy = s.cy - (s.c * s.y) / s.w;
    const uc = s.uc - (s.u * s.c) / s.w;
    const det = uu * cc - uc * uc;
    if (det > 1e-10 * uu * cc) {
      const p = (uy * cc - cy * uc) / det;
      const q = (cy * uu - uy * uc) / det;
      if (p * q > 0) {
        primary = p;
        tail = q;
        rss = yy - p * uy - q * cy;
      }
    }
  }
  const d0 = origin + (s.y - primary * s.u - tail * s.c) / s.w;
  return { rate, sharpness, primary, tail, d0, rss: Math.max(rss, 0) };
}

/** log-spaced rates with T = 0.2 (half of primary) anywhere from a decade before the record to three times its length. */
function trialRates({ times }: Series): number[] {
  const from = 0.2 / (3 * times[times.length - 1]);
  const decades = Math.log10(0.2 / (times[0] / 10) / from);
  const points = Math.ceil(decades * POINTS_PER_DECADE);
  return Array.from({ length: points + 1 }, (_, i) => from * 10 ** ((decades * i) / points));
}

const sharpnessesAt = (series: Series, rate: number): readonly number[] =>
  rate * series.times[series.times.length - 1] > T_FOR_CREEP ? SHARPNESSES : [0];

/** The best trial at a rate over the creep sharpnesses that the record can show there. */
function bestAt(series: Series, weights: readonly number[], rate: number, shift = 0): Trial {
  let best: Trial | undefined;
  for (const sharpness of sharpnessesAt(series, rate)) {
    const trial = linearFit(series, weights, rate, sharpness, shift);
    if (!best || trial.rss < best.rss) best = trial;
  }
  return best as Trial;
}

/** The minima of the profile over the rate, best first. */
function minima(series: Series, weights: readonly number[], shift = 0): Trial[] {
  const trials = trialRates(series).map((rate) => bestAt(series, weights, rate, shift));
  return trials
    .filter(
      (trial, i) => trial.rss <= (trials[i - 1]?.rss ?? Infinity) && trial.rss <= (trials[i + 1]?.rss ?? Infinity),
    )
    .sort((a, b) => a.rss - b.rss);
}

/** From a trial to the minimum near it; with `shift`, the time zero is free as well. */
function polish(series: Series, weights: readonly number[], from: Trial, shift?: number): Trial & { shift: number } {
  const { times, readings } = series;
  const used = times.map((_, i) => i).filter((i) => weights[i] > 0);
  const roots = used.map((i) => Math.sqrt(weights[i]));
  const free = shift !== undefined;
  const hasTail = from.tail !== 0;
  const unpack = (p: readonly number[]) => ({
    curve: { rate: Math.exp(p[0]), d0: p[1], primary: p[2], tail: hasTail ? p[3] : 0, sharpness: from.sharpness },
    shift: free ? p[p.length - 1] : 0,
  });
  const residuals = (p: readonly number[]) => {
    const { curve, shift } = unpack(p);
    return used.map((i, k) => roots[k] * (curveAt(curve, Math.max(times[i] + shift, 1e-9)) - readings[i]));
  };
  const jacobian = (p: readonly number[]) => {
    const { curve, shift } = unpack(p);
    return used.map((i, k) => {
      const t = Math.max(times[i] + shift, 1e-9);
      const T = curve.rate * t;
      const onset = hasTail ? (curve.tail * creepOnset(curve.rate, curve.sharpness, t)) / Math.LN10 : 0;
      const slope = curve.primary * T * consolidationRate(T) + onset;
      const row = [slope, 1, degreeOfConsolidation(T)];
      if (hasTail) row.push(creep(curve.rate, curve.sharpness, t));
      if (free) row.push(times[i] + shift > 1e-9 ? slope / t : 0);
      return row.map((value) => value * roots[k]);
    });
  };
  const start = [Math.log(from.rate), from.d0, from.primary];
  if (hasTail) start.push(from.tail);
  if (free) start.push(shift);
  const found = leastSquares({ residuals, jacobian, start, maxIterations: 60 });
  const end = unpack(found.parameters);
  if (end.curve.tail * end.curve.primary < 0)
    return polish(series, weights, linearFit(series, weights, end.curve.rate, 0, end.shift), shift);
  return found.rss <= from.rss ? { ...end.curve, rss: found.rss, shift: end.shift } : { ...from, shift: shift ?? 0 };
}

/** The best minimum, each sharpness and each near-best starting minimum tried. */
function bestFit(series: Series, weights: readonly number[]): Trial {
  const starts = minima(series, weights).slice(0, 2);
  const trials = starts
    .flatMap((start) =>
      sharpnessesAt(series, start.rate).map((sharpness) => linearFit(series, weights, start.rate, sharpness)),
    )
    .filter((trial) => trial.rss < 3 * starts[0].rss + 1e-300)
    .map((trial) => polish(series, weights, trial));
  return [...trials, ...starts].reduce((a, b) => (b.rss < a.rss ? b : a));
}

/** The reading whose leaving out lowers the residual sum most, and the sum without it. */
function mostDoubtful(series: Series, weights: readonly number[]): { index: number; trial: Trial } {
  let index = -1;
  let best: Trial | undefined;
  const reduced = [...weights];
  for (let i = 0; i < weights.length; i++) {
    if (!weights[i]) continue;
    reduced[i] = 0;
    const [trial] = minima(series, reduced);
    reduced[i] = weights[i];
    if (!best || trial.rss < best.rss) [index, best] = [i, trial];
  }
  return { index, trial: best as Trial };
}

const parameterCount = (trial: Trial): number => (trial.tail ? 4 : 3);

export function fitTheory(clean: CleanReadings): Outcome<TheoryFit> {
  const { series, step } = clean;
  const n = series.times.length;
  if (n < FEWEST_READINGS)
    return notApplicable(
      `the fit to theory needs ${FEWEST_READINGS} readings at different times; there ${n === 1 ? "is" : "are"} ${n}`,
    );
  if (!(clean.travel > 0)) return notApplicable("all readings are the same: there is no movement to reduce");

  const remarks: string[] = [];
  const weights = [...series.weights];
  const leftOut: number[] = [];
  let best = bestFit(series, weights);
  while (leftOut.length < MOST_WRONG && n - leftOut.length >= READINGS_TO_JUDGE_ONE) {
    const worst = Math.max(
      ...series.times.map((t, i) => (weights[i] ? Math.abs(curveAt(best, t) - series.readings[i]) : 0)),
    );
    if (worst < 0.6 * WRONG_SHARE * Math.abs(best.primary)) break;
    const { index, trial } = mostDoubtful(series, weights);
    const freedom = n - leftOut.length - 1 - parameterCount(trial);
    const floor = ((step * step) / 12) * (freedom + 1);
    const F = (best.rss - trial.rss) / ((trial.rss + floor) / freedom);
    const jump = Math.abs(series.readings[index] - curveAt(trial, series.times[index]));
    if (!(F > WRONG_F && jump > WRONG_SHARE * Math.abs(trial.primary))) break;
    leftOut.push(index);
    weights[index] = 0;
    remarks.push(
      `${series.rows[index]} is left out as a wrong reading: ${shown(series.readings[index])} stands ${shown(jump)} off the curve of its neighbours`,
    );
    best = bestFit(series, weights);
  }

  const used = n - leftOut.length;
  let timeZero = 0;
  let parameters = parameterCount(best);
  if (used >= 10) {
    const shifted = [0.05, -0.05]
      .map((start) => polish(series, weights, best, start))
      .reduce((a, b) => (b.rss < a.rss ? b : a));
    const freedom = used - parameters - 1;
    const floor = ((step * step) / 12) * used;
    if (
      (best.rss - shifted.rss) / ((shifted.rss + floor) / freedom) > TIME_ZERO_F &&
      Math.abs(shifted.shift) < MOST_TIME_ZERO
    ) {
      best = shifted;
      timeZero = shifted.shift;
      parameters++;
      remarks.push(
        `the readings fit better if the load was applied ${shown(Math.abs(timeZero) * 60)} s ${timeZero > 0 ? "before" : "after"} the clock was started: check the time zero`,
      );
    }
  }

  const freedom = Math.max(used - parameters, 1);
  const roundingRss = ((step * step) / 12) * freedom;
  const noise = Math.sqrt(Math.max(best.rss, roundingRss) / freedom);
  const { low, high } = interval(series, weights, best, timeZero, freedom, roundingRss);
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
      misfit: Math.sqrt(best.rss / sum(weights)),
      noise,
      timeZero,
      leftOut,
    },
    remarks,
  );
}

const TIME_ZERO_F = 20;
/** Minutes: beyond this it is not a late hand on the clock. */
const MOST_TIME_ZERO = 0.3;

/**
 * Where the profile of the residual sum over the rate rises by Student's t^2 (widened by the residuals' own correlation),
 * then widened by the model's share.
 */
function interval(
  series: Series,
  weights: readonly number[],
  best: Trial,
  shift: number,
  freedom: number,
  roundingRss: number,
): { low: number; high: number } {
  const residuals = series.times
    .map((t, i) => Math.sqrt(weights[i]) * (series.readings[i] - curveAt(best, Math.max(t + shift, 1e-9))))
    .filter((_, i) => weights[i] > 0);
  let lag = 0;
  for (let i = 1; i < residuals.length; i++) lag += residuals[i] * residuals[i - 1];
  const r = Math.min(Math.max(lag / (best.rss || 1), 0), 0.9);
  const rise = ((studentsT95(freedom) ** 2 * Math.max(best.rss, roundingRss)) / freedom) * ((1 + r) / (1 - r));
  const side = (direction: 1 | -1): number => {
    const excess = (x: number) =>
      bestAt(series, weights, best.rate * Math.exp(direction * x), shift).rss - best.rss - rise;
    let inside = 0;
    let outside = 0.02;
    while (excess(outside) < 0) {
      inside = outside;
      outside *= 2;
      if (outside > 7) return Infinity;
    }
    for (let i = 0; i < 12 && outside - inside > 1e-4; i++) {
      const middle = (inside + outside) / 2;
      if (excess(middle) < 0) inside = middle;
      else outside = middle;
    }
    return Math.hypot(outside, MODEL_SHARE);
  };
  return { low: best.rate * Math.exp(-side(-1)), high: best.rate * Math.exp(side(1)) };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const shown = (value: number): string => String(Number(value.toPrecision(3)));
