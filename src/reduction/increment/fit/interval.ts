/** The 95 % interval of the rate cv/Hdr^2, from how the cost rises on either side of the best rate. */
import { studentsT95 } from "../../numeric/students-t";
import type { Column } from "./model";
import { onsetsAt, trialsAt, type Table, type Trial } from "./search";

/**
 * The share of the model in the uncertainty of ln cv. With it the interval holds the true cv of 96 % of simulated
 * curves (scenarios.test.ts).
 */
const MODEL_SHARE = 0.0075;

/**
 * By how much the cost may rise within the interval: Student's t^2 times the variance, more where neighbouring
 * residuals are correlated.
 */
export const allowedRise = (residuals: readonly number[], variance: number, freedom: number): number =>
  studentsT95(freedom) ** 2 * variance * following(residuals);

/**
 * (1 + r) / (1 - r), r being the correlation of each residual with the next: correlated readings tell less than
 * independent ones.
 */
function following(residuals: readonly number[]): number {
  let squares = 0;
  let products = 0;
  let before = 0;
  for (const value of residuals) {
    squares += value * value;
    products += value * before;
    before = value;
  }
  const r = squares ? Math.min(Math.max(products / squares, 0), 0.9) : 0;
  return (1 + r) / (1 - r);
}

/** How far from the best rate, in ln rate, `inside` stays true to one side; infinite where it stays true for ever. */
export function sideOf(inside: (x: number) => boolean): number {
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
  return high;
}

/**
 * The rates at which the cost has risen by `rise`, widened by the share of the model; a side without a limit ends at 0
 * or infinity.
 */
export function rateInterval(
  table: Table,
  weights: Column,
  best: Trial,
  lean: number,
  shift: number,
  rise: number,
): [low: number, high: number] {
  const trialAt = trialsAt(table, weights, lean, shift, onsetsAt(best.rate, table.times));
  const limit = best.cost + rise;
  const side = (direction: 1 | -1): number =>
    Math.hypot(
      sideOf((x) => trialAt(best.rate * Math.exp(direction * x), limit).cost < limit),
      MODEL_SHARE,
    );
  return [best.rate * Math.exp(-side(-1)), best.rate * Math.exp(side(1))];
}
