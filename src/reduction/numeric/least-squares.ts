/**
 * Non-linear least squares by the Levenberg-Marquardt method: trust-region damping with the scaling of Moré (1978), each
 * step solved by Householder QR of the damped Jacobian (no normal equations).
 *
 * It goes down into the valley that it starts in: the fit to theory starts it at the lowest places of a table (search.ts). It is
 * held against NIST's certified regressions in test/published/nist.test.ts: six digits from 19 of their 20 starts, and from the
 * lowest place of a table where the 20th lies in another valley. (ml-levenberg-marquardt 5.1.0 reaches them from 11 of 20.)
 *
 * Sources: Marquardt (1963); Moré (1978), Lecture Notes in Mathematics 630; damping of Nielsen (1999), IMM-REP-1999-05.
 */
import { solveQr } from "./qr";

export interface LeastSquaresProblem {
  /** Weighted residuals, observed less calculated or the reverse, at a trial; NaN or infinite marks a trial that cannot be. */
  readonly residuals: (parameters: readonly number[]) => number[];
  /** d residual / d parameter, one row per residual. */
  readonly jacobian: (parameters: readonly number[]) => number[][];
  readonly start: readonly number[];
  readonly maxIterations?: number;
  /** A step is the last if it can lower the sum of squares by no more than this share; 1e-14 if left out. */
  readonly negligibleGain?: number;
}

export interface LeastSquaresResult {
  readonly parameters: number[];
  /** Sum of squared residuals. */
  readonly rss: number;
  readonly iterations: number;
  /** False if the iterations ran out before the steps became negligible. */
  readonly converged: boolean;
}

const sumOfSquares = (values: readonly number[]): number => {
  let sum = 0;
  for (const value of values) sum += value * value;
  return Number.isFinite(sum) ? sum : Infinity;
};

const FIRST_DAMPING = 1e-3;

/** From a start down to the floor of its valley. */
export function levenbergMarquardt({
  residuals,
  jacobian,
  start,
  maxIterations = 500,
  negligibleGain = 1e-14,
}: LeastSquaresProblem): LeastSquaresResult {
  const size = start.length;
  let parameters = [...start];
  let current = residuals(parameters);
  let rss = sumOfSquares(current);
  const scale = new Array<number>(size).fill(0);
  let damping = FIRST_DAMPING;
  let growth = 2;
  let J = jacobian(parameters);

  for (let iteration = 1; iteration <= maxIterations; iteration++) {
    const rows = J.length + size;
    const damped = new Float64Array(rows * size);
    const right = new Float64Array(rows);
    for (let j = 0; j < size; j++) {
      let squares = 0;
      for (let i = 0; i < J.length; i++) {
        damped[j * rows + i] = J[i][j];
        squares += J[i][j] * J[i][j];
      }
      scale[j] = Math.max(scale[j], Math.sqrt(squares));
      damped[j * rows + J.length + j] = Math.sqrt(damping) * (scale[j] || 1);
    }
    for (let i = 0; i < J.length; i++) right[i] = -current[i];
    const step = solveQr(damped, rows, size, right);
    const trial = parameters.map((value, j) => value + step[j]);
    const next = residuals(trial);
    const nextRss = sumOfSquares(next);

    let linear = 0;
    for (let i = 0; i < J.length; i++) {
      let value = current[i];
      for (let j = 0; j < size; j++) value += J[i][j] * step[j];
      linear += value * value;
    }
    const negligible = parameters.every((value, j) => Math.abs(step[j]) <= 1e-11 * (Math.abs(value) + 1e-30));
    const gain = (rss - nextRss) / (rss - linear);
    if (nextRss < rss || (nextRss === rss && negligible)) {
      const flat = rss - nextRss <= negligibleGain * rss && rss - linear <= negligibleGain * rss;
      parameters = trial;
      current = next;
      rss = nextRss;
      damping *= Math.max(1 / 3, 1 - (2 * gain - 1) ** 3);
      growth = 2;
      if (negligible || flat) return { parameters, rss, iterations: iteration, converged: true };
      J = jacobian(parameters);
    } else {
      if (negligible) return { parameters, rss, iterations: iteration, converged: true };
      damping *= growth;
      growth *= 2;
    }
  }
  return { parameters, rss, iterations: maxIterations, converged: false };
}
