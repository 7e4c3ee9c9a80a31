/** From the table of linear fits to the floor of a valley, by the Levenberg-Marquardt engine. */
import { levenbergMarquardt } from "../../numeric/least-squares";
import { creep, creepOnset, curveAt } from "./model";
import type { Series } from "../readings";
import { minima, ORDINARY_CREEP, SHARPNESSES, type Table, type Trial } from "./search";
import { consolidationRate, degreeOfConsolidation } from "./terzaghi";

/** A trial whose time zero is free: the load came `shift` minutes before the clock. */
export interface Zeroed extends Trial {
  readonly shift: number;
}

/** From a trial to the bottom of its valley; with `shift`, the time zero is free as well. */
export function polish(series: Series, weights: readonly number[], from: Trial, lean: number, shift?: number): Zeroed {
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
  const clock = (i: number, zero: number) => Math.max(times[i] + zero, 0);
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
      // Before the load nothing moves.
      if (T === 0) return Array.from({ length: start.length }, (_, j) => (j === 1 ? roots[k] : 0));
      const onset = hasTail ? (curve.tail * creepOnset(curve.rate, curve.sharpness, t)) / Math.LN10 : 0;
      const slope = curve.primary * T * consolidationRate(T) + onset;
      const row = [slope, 1, degreeOfConsolidation(T)];
      if (hasTail) row.push(creep(curve.rate, curve.sharpness, t));
      if (free) row.push(slope / t);
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

/** More valleys than this have not been seen. */
const MOST_VALLEYS = 3;

/** The floors of the valleys, deepest first, with the sharpness of the table. */
export const valleys = (table: Table, weights: readonly number[], lean: number): Trial[] =>
  minima(table, weights, lean)
    .slice(0, MOST_VALLEYS)
    .map((trial) => polish(table.series, weights, trial, lean))
    .sort((a, b) => a.cost - b.cost);

/** The floor of the best valley, quickly. */
export const lowest = (table: Table, weights: readonly number[], lean: number): Trial =>
  polish(table.series, weights, minima(table, weights, lean)[0], lean);

/** The floor of a valley over the sharpnesses of creep, from its floor at the sharpness of the table. */
export const bottom = (table: Table, weights: readonly number[], lean: number, floor: Trial): Trial =>
  SHARPNESSES.map((sharpness) =>
    sharpness === floor.sharpness
      ? floor
      : polish(table.series, weights, { ...floor, sharpness, cost: Infinity }, lean),
  ).reduce((a, b) => (b.cost < a.cost ? b : a));

/** How many parameters a trial was fitted with. */
export const parameterCount = (trial: Trial): number => (trial.tail ? 4 : 3);
