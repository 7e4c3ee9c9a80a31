/**
 * Where the readings of a load may jump: at each rate of the table, the linear fit of d0, primary and tail is compared with
 * the same fit and a step between two readings.
 */
import type { Column } from "./model";
import type { Table } from "./search";

export interface PossibleJump {
  /** The index of the first reading after the jump. */
  readonly index: number;
  /** The size of the step, with its sign, in the reading unit. */
  readonly by: number;
}

/** Weighted sum of the products of two columns. */
const product = (a: Column, b: Column, weights: Column): number =>
  a.reduce((sum, value, i) => sum + (weights[i] ?? 0) * value * (b[i] ?? 0), 0);

/** What is left of a column when its share of each column of a basis is taken from it. */
const rest = (column: Column, basis: readonly Column[], weights: Column): Column =>
  basis.reduce((left, one) => {
    const share = product(left, one, weights);
    return left.map((value, i) => value - share * (one[i] ?? 0));
  }, column);

/** A column that depends on those before it to this share of its square adds nothing to the basis. */
const DEPENDENT = 1e-9;

/** Columns of unit length, each at right angles to the others, that span the given columns. */
function basisOf(columns: readonly Column[], weights: Column): Column[] {
  const basis: Column[] = [];
  for (const column of columns) {
    const left = rest(column, basis, weights);
    const square = product(left, left, weights);
    if (square > DEPENDENT * product(column, column, weights))
      basis.push(left.map((value) => value / Math.sqrt(square)));
  }
  return basis;
}

/** For each place of a step, the best of all rates; the best places first. `least` is how many readings stand on each side. */
export function possibleJumps({ y, u, c, rates }: Table, weights: Column, least: number): PossibleJump[] {
  const n = y.length;
  const costs = new Float64Array(n).fill(Infinity);
  const sizes = new Float64Array(n);
  const ones = new Float64Array(n).fill(1);
  rates.forEach((_, k) => {
    const columns = [ones, u.subarray(k * n, (k + 1) * n), c.subarray(k * n, (k + 1) * n)];
    const basis = basisOf(columns, weights);
    const left = rest(y, basis, weights);
    const cost = product(left, left, weights);
    let [weight, off] = [0, 0];
    const shares = basis.map(() => 0);
    for (let i = n - 1; i >= least; i--) {
      const w = weights[i] ?? 0;
      weight += w;
      off += w * (left[i] ?? 0);
      const free =
        weight - shares.reduce((sum, share, j) => sum + (shares[j] = share + w * (basis[j]?.[i] ?? 0)) ** 2, 0);
      const withStep = cost - off ** 2 / free;
      if (i > n - least || !(free > DEPENDENT * weight) || !(withStep < (costs[i] ?? 0))) continue;
      costs[i] = withStep;
      sizes[i] = off / free;
    }
  });
  return [...costs.keys()]
    .filter((i) => costs[i] !== Infinity)
    .sort((a, b) => (costs[a] ?? 0) - (costs[b] ?? 0))
    .map((index) => ({ index, by: sizes[index] ?? 0 }));
}
