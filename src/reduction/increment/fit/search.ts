/**
 * A table of linear fits (linear.ts) over the rate cv/Hdr^2: the search cannot miss the best of several minima, and
 * trying the fit without each reading in turn costs little more than one fit.
 *
 * The columns are as long as the series, so that no index runs out: hence each `!`.
 */
import { nth } from "../../numeric/lists";
import type { Series } from "../readings";
import { add, linearFit, solve, sumUp, type LinearFit } from "./linear";
import { creepsAt, degreesAt, type Column, type Curve } from "./model";

/** How sharply creep may begin: 2 is over two log cycles, 7 over half a log cycle. */
export const SHARPNESSES = [2, 3, 4.5, 7];
/**
 * A first time below this share of the last time is not a time that somebody read: the table does not reach down to it.
 */
const LEAST_TIME = 1e-12;

/**
 * The table is made with this sharpness alone, to find the valleys; at the bottom of a valley every sharpness is tried.
 */
const TABLE_SHARPNESS = nth(SHARPNESSES, 1);

const POINTS_PER_DECADE = 14;

export interface Trial extends Curve {
  /** Weighted sum of squared residuals plus the term of the lean on ordinary creep. */
  readonly cost: number;
}

/**
 * Linear fits at equal steps of log rate: half of primary lies anywhere from a decade before the record to three times
 * its end.
 */
export interface Table {
  readonly times: Column;
  /** Readings less the first one, so that their squares lose no digits. */
  readonly y: Column;
  readonly firstReading: number;
  readonly rates: Column;
  /** Degree of consolidation and creep of unit slope: all readings at the first rate, then all at the next. */
  readonly u: Column;
  readonly c: Column;
}

export function tableOf({ times, readings }: Series): Table {
  const last = times[times.length - 1] ?? 0;
  const first = Math.max(times[0] ?? 0, LEAST_TIME * last);
  const firstReading = readings[0] ?? 0;
  const from = 0.2 / 3 / last;
  const decades = Math.log10(30 * (last / first));
  const points = Math.ceil(decades * POINTS_PER_DECADE);
  const rates = Float64Array.from({ length: points + 1 }, (_, i) => from * 10 ** ((decades * i) / points));
  const u = new Float64Array(rates.length * times.length);
  const c = new Float64Array(rates.length * times.length);
  const column = Float64Array.from(times);
  rates.forEach((rate, k) => {
    degreesAt(column, rate, 0, u, k * column.length);
    creepsAt(column, rate, 0, TABLE_SHARPNESS, c, k * column.length);
  });
  return {
    times: column,
    y: Float64Array.from(readings, (reading) => reading - firstReading),
    firstReading,
    rates,
    u,
    c,
  };
}

/** The minima of the cost over the rate, best first; an end of the table may be a minimum. */
export function minima({ y, rates, u, c, firstReading }: Table, weights: Column, lean: number): Trial[] {
  const fit = linearFit();
  const solveAt = (k: number) => {
    sumUp(fit, y, u, c, weights, k * y.length);
    solve(fit, lean);
    return fit.cost;
  };
  const costs = rates.map((_, k) => solveAt(k));
  const least: Trial[] = [];
  costs.forEach((cost, k) => {
    if (costs[k - 1]! < cost || costs[k + 1]! <= cost) return;
    solveAt(k);
    const { primary, tail } = fit;
    least.push({ rate: rates[k]!, sharpness: TABLE_SHARPNESS, primary, tail, d0: firstReading + fit.d0, cost });
  });
  return least.sort((a, b) => a.cost - b.cost);
}

/** The index of the reading that lowers the cost most when it is left out. */
export function mostDoubtful({ y, rates, u, c }: Table, weights: Column, lean: number): number {
  const n = y.length;
  const best = new Float64Array(n).fill(Infinity);
  const fit = linearFit();
  for (let k = 0; k < rates.length; k++) {
    sumUp(fit, y, u, c, weights, k * n);
    for (let i = 0; i < n; i++) {
      const w = weights[i]!;
      if (!w) continue;
      const [yi, ui, ci] = [y[i]!, u[k * n + i]!, c[k * n + i]!];
      add(fit, -w, yi, ui, ci);
      solve(fit, lean);
      add(fit, w, yi, ui, ci);
      if (fit.cost < best[i]!) best[i] = fit.cost;
    }
  }
  return best.indexOf(Math.min(...best));
}

/**
 * Returns the least cost at a rate of all sharpnesses of creep; it stops at the first cost below `enough`. `shift`
 * moves the time zero, minutes.
 */
export function costProfile(table: Table, weights: Column, lean: number, shift: number) {
  const { times, y } = table;
  const fit: LinearFit = linearFit();
  const u = new Float64Array(y.length);
  const c = new Float64Array(y.length);
  return (rate: number, enough: number): number => {
    degreesAt(times, rate, shift, u);
    let least = Infinity;
    for (const sharpness of SHARPNESSES) {
      creepsAt(times, rate, shift, sharpness, c);
      sumUp(fit, y, u, c, weights);
      solve(fit, lean);
      if (fit.cost < least) least = fit.cost;
      if (least < enough) break;
    }
    return least;
  };
}
