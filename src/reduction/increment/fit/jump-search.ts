/**
 * Where the readings of a load may jump: at each rate of the table, the linear fit of d0, primary and tail is compared with
 * the same fit and a step between two readings. The columns are as long as the series: hence each `!`.
 */
import { centre, product } from "./descent";
import type { Column } from "./model";
import type { Table } from "./search";

export interface PossibleJump {
  /** The index of the first reading after the jump. */
  readonly index: number;
  /** The size of the step, with its sign, in the reading unit. */
  readonly by: number;
  /** Weighted sum of squared residuals with the step. */
  readonly cost: number;
}

/** A square that fell below this share of what it was is nothing but rounding. */
const NOTHING_LEFT = 1e-9;

/** Takes from a column its part along another column, of which the square is `square`. */
function takeOut(column: Column, along: Column, square: number, weights: Column): void {
  const share = product(column, along, weights) / square;
  for (let i = 0; i < column.length; i++) column[i]! -= share * along[i]!;
}

/** For each place of a step, the best of all rates; the best places first. `least` is how many readings stand on each side. */
export function possibleJumps({ y, u, c, rates }: Table, weights: Column, least: number): PossibleJump[] {
  const n = y.length;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const [costs, sizes] = [new Float64Array(n).fill(Infinity), new Float64Array(n)];
  const [d, a, b] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  for (let k = 0; k < rates.length; k++) {
    d.set(y);
    a.set(u.subarray(k * n, (k + 1) * n));
    b.set(c.subarray(k * n, (k + 1) * n));
    for (const column of [d, a, b]) centre(column, weights, total);
    const aa = product(a, a, weights);
    const before = product(b, b, weights);
    if (!(aa > 0)) continue;
    takeOut(d, a, aa, weights);
    takeOut(b, a, aa, weights);
    const bb = product(b, b, weights);
    const hasTail = bb > NOTHING_LEFT * before;
    if (hasTail) takeOut(d, b, bb, weights);
    const cost = product(d, d, weights);
    let [weight, off, alongA, alongB] = [0, 0, 0, 0];
    for (let i = n - 1; i >= least; i--) {
      const w = weights[i]!;
      weight += w;
      off += w * d[i]!;
      alongA += w * a[i]!;
      alongB += w * b[i]!;
      const free = weight - weight ** 2 / total - alongA ** 2 / aa - (hasTail ? alongB ** 2 / bb : 0);
      const withStep = cost - off ** 2 / free;
      if (i > n - least || !(free > NOTHING_LEFT * weight) || !(withStep < costs[i]!)) continue;
      costs[i] = withStep;
      sizes[i] = off / free;
    }
  }
  return Array.from(costs, (cost, index) => ({ index, by: sizes[index]!, cost }))
    .filter(({ cost }) => cost < Infinity)
    .sort((one, other) => one.cost - other.cost);
}
