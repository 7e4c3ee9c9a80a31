/**
 * A table of linear fits (linear.ts) over the rate cv/Hdr^2: the search cannot miss the best of several minima, and
 * trying the fit without each reading in turn costs little more than one fit.
 *
 * The columns are as long as the series, so that no index runs out: hence each `!`.
 */
import type { Series } from "../readings";
import { add, linearFit, solve, sumUp, type LinearFit } from "./linear";
import { creepsAt, degreesAt, type Column, type Curve, type Onset } from "./model";
import { T_END_OF_PRIMARY } from "./terzaghi";

const onset = (sharpness: number, begins = T_END_OF_PRIMARY): Onset => ({ sharpness, begins });

/** The table is made with this onset of creep alone, to find the valleys; at the bottom of a valley every onset is tried. */
export const TABLE_ONSET = onset(3);

/** Creep that begins at the end of primary: over two log cycles, over one, or over half of one. */
export const LATE_ONSETS = [onset(2), TABLE_ONSET, onset(7)];
/**
 * Creep that begins within primary: its line leaves d0 + primary at T = 0.6, which is U = 82 %. On made curves of which every
 * part creeps from when it came (made-curves/early-creep.test.ts), late creep alone gives a cv that is off by 8 % on half of
 * the curves and by 14 to 16 % on one in ten, mostly low; with this onset by 4 %, and by 7 to 9 %. An onset at T = 0.5 or 0.65
 * does as well.
 */
export const EARLY_ONSET = onset(2, 0.6);
const ONSETS = [...LATE_ONSETS, EARLY_ONSET];

/** A record that ends before this T does not tell early creep from primary: it is fitted with late creep. */
const EARLY_SHOWS = 3;

/** The onsets of creep that are tried about a rate. */
export const onsetsAt = (rate: number, times: Column): readonly Onset[] =>
  rate * times[times.length - 1]! < EARLY_SHOWS ? LATE_ONSETS : ONSETS;

/**
 * A first time below this share of the last time is not a time that somebody read: the table does not reach down to it.
 */
const LEAST_TIME = 1e-12;

const POINTS_PER_DECADE = 14;

export interface Trial extends Curve {
  /** Weighted sum of squared residuals plus the term of the lean on ordinary creep. */
  readonly cost: number;
}

/** The times and the readings of a series. */
interface Columns {
  readonly times: Column;
  /** Readings less the first one, so that their squares lose no digits. */
  readonly y: Column;
  readonly firstReading: number;
}

export function columnsOf({ times, readings }: Series): Columns {
  const firstReading = readings[0] ?? 0;
  return {
    times: Float64Array.from(times),
    y: Float64Array.from(readings, (reading) => reading - firstReading),
    firstReading,
  };
}

/**
 * Linear fits at equal steps of log rate: half of primary lies anywhere from a decade before the record to three times
 * its end.
 */
export interface Table extends Columns {
  readonly rates: Column;
  /** Degree of consolidation and creep of unit slope: all readings at the first rate, then all at the next. */
  readonly u: Column;
  readonly c: Column;
}

export function tableOf(series: Series): Table {
  const columns = columnsOf(series);
  const { times } = columns;
  const last = times[times.length - 1] ?? 0;
  const first = Math.max(times[0] ?? 0, LEAST_TIME * last);
  const from = 0.2 / 3 / last;
  const decades = Math.log10(30 * (last / first));
  const points = Math.ceil(decades * POINTS_PER_DECADE);
  const rates = Float64Array.from({ length: points + 1 }, (_, i) => from * 10 ** ((decades * i) / points));
  const u = new Float64Array(rates.length * times.length);
  const c = new Float64Array(rates.length * times.length);
  rates.forEach((rate, k) => {
    degreesAt(times, rate, 0, u, k * times.length);
    creepsAt(times, rate, 0, TABLE_ONSET, c, k * times.length);
  });
  return { ...columns, rates, u, c };
}

const trialOf = (
  { cost, solved: { d0, primary, tail } }: LinearFit,
  rate: number,
  onset: Onset,
  firstReading: number,
): Trial => ({ rate, onset, primary, tail, d0: firstReading + d0, cost });

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
    least.push(trialOf(fit, rates[k]!, TABLE_ONSET, firstReading));
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
 * Returns the best trial at a rate, of some onsets of creep, of a load that came `shift` minutes before the clock;
 * it stops at the first trial whose cost is below `enough`.
 */
export function trialsAt(
  { times, y, firstReading }: Columns,
  weights: Column,
  lean: number,
  shift: number,
  onsets: readonly Onset[],
) {
  const fit = linearFit();
  const u = new Float64Array(y.length);
  const c = new Float64Array(y.length);
  return (rate: number, enough = 0): Trial => {
    degreesAt(times, rate, shift, u);
    let best: Trial = { rate, onset: TABLE_ONSET, primary: 0, tail: 0, d0: firstReading, cost: Infinity };
    for (const onset of onsets) {
      creepsAt(times, rate, shift, onset, c);
      sumUp(fit, y, u, c, weights);
      solve(fit, lean);
      if (fit.cost < best.cost) best = trialOf(fit, rate, onset, firstReading);
      if (best.cost < enough) break;
    }
    return best;
  };
}
