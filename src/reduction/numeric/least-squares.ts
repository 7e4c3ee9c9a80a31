/**
 * Non-linear least squares by the Levenberg-Marquardt method: trust-region damping with the scaling of Moré (1978), each
 * step solved by Householder QR of the damped Jacobian (no normal equations).
 *
 * It descends into the valley that it starts in: the fit to theory starts it at the minima of a table (search.ts).
 * test/published/nist.test.ts compares it with NIST's certified regressions: it reaches six digits from 19 of their 20
 * starts; the 20th start lies in another valley, and from the lowest point of a table it reaches them too.
 * (ml-levenberg-marquardt 5.1.0 reaches them from 11 of 20.)
 *
 * Sources: Marquardt (1963); Moré (1978), Lecture Notes in Mathematics 630; damping of Nielsen (1999), IMM-REP-1999-05.
 *
 * The indices stay within arrays of known lengths, which the compiler cannot see: hence each `!`.
 */
import { solveQr } from "./qr";

export interface LeastSquaresProblem {
  /** How many residuals there are. */
  readonly count: number;
  /**
   * Writes the weighted residuals of a trial, observed less calculated or the reverse; NaN or infinity marks an
   * impossible trial.
   */
  readonly residuals: (parameters: Float64Array, into: Float64Array) => void;
  /**
   * Writes d residual / d parameter: `count` values for the first parameter, then for the next. It is called only for
   * the trial of the last call of `residuals`, so that both can share their work.
   */
  readonly jacobian: (parameters: Float64Array, into: Float64Array) => void;
  readonly start: readonly number[];
  readonly maxIterations?: number;
  /** The last step is the one that can lower the sum of squares by no more than this share; 1e-14 if omitted. */
  readonly negligibleGain?: number;
}

export interface LeastSquaresResult {
  readonly parameters: readonly number[];
  /** Sum of squared residuals. */
  readonly rss: number;
  readonly iterations: number;
  /** False if the iterations ran out before the steps became negligible. */
  readonly converged: boolean;
}

/** The working arrays of the engine. */
export interface Workspace {
  readonly parameters: Float64Array;
  readonly trial: Float64Array;
  readonly current: Float64Array;
  readonly next: Float64Array;
  readonly J: Float64Array;
  readonly damped: Float64Array;
  readonly right: Float64Array;
  readonly scale: Float64Array;
  readonly step: Float64Array;
}

/**
 * Arrays for problems of this many residuals and parameters. Passing them again saves making arrays: a tenth of the
 * time of the fit to theory.
 */
export function workspaceFor(count: number, size: number): Workspace {
  const rows = count + size;
  const of = (length: number) => new Float64Array(length);
  return {
    parameters: of(size),
    trial: of(size),
    current: of(count),
    next: of(count),
    J: of(count * size),
    damped: of(rows * size),
    right: of(rows),
    scale: of(size),
    step: of(size),
  };
}

/** The sum of squares; infinite if a value is NaN. */
export const sumOfSquares = (values: Float64Array): number => {
  const { length } = values;
  let sum = 0;
  for (let i = 0; i < length; i++) sum += values[i]! * values[i]!;
  return Number.isFinite(sum) ? sum : Infinity;
};

const FIRST_DAMPING = 1e-3;
/** A parameter has converged if a step changes it by less than this share. */
const STILL = 1e-11;

/** Descends from the start to the bottom of its valley. */
export function levenbergMarquardt(
  { count, residuals, jacobian, start, maxIterations = 500, negligibleGain = 1e-14 }: LeastSquaresProblem,
  workspace = workspaceFor(count, start.length),
): LeastSquaresResult {
  const size = start.length;
  const rows = count + size;
  const { J, damped, right, scale, step } = workspace;
  let { parameters, trial, current, next } = workspace;
  parameters.set(start);
  scale.fill(0);
  let damping = FIRST_DAMPING;
  let growth = 2;
  residuals(parameters, current);
  let rss = sumOfSquares(current);
  jacobian(parameters, J);

  for (let iteration = 1; iteration <= maxIterations; iteration++) {
    damped.fill(0);
    for (let j = 0; j < size; j++) {
      const slopes = J.subarray(j * count, (j + 1) * count);
      damped.set(slopes, j * rows);
      scale[j] = Math.max(scale[j]!, Math.sqrt(sumOfSquares(slopes)));
      damped[j * rows + count + j] = Math.sqrt(damping) * (scale[j]! || 1);
    }
    right.fill(0);
    right.set(current);
    // The step that leaves least of the residuals is taken back.
    solveQr(damped, rows, size, right, step);
    let negligible = true;
    for (let j = 0; j < size; j++) {
      trial[j] = parameters[j]! - step[j]!;
      if (Math.abs(step[j]!) > STILL * (Math.abs(parameters[j]!) + 1e-30)) negligible = false;
    }
    residuals(trial, next);
    const nextRss = sumOfSquares(next);

    let linear = 0;
    for (let i = 0; i < count; i++) {
      let value = current[i]!;
      for (let j = 0; j < size; j++) value -= J[j * count + i]! * step[j]!;
      linear += value * value;
    }
    const gain = (rss - nextRss) / (rss - linear);
    const better = nextRss < rss || (nextRss === rss && negligible);
    const flat = better && rss - nextRss <= negligibleGain * rss && rss - linear <= negligibleGain * rss;
    if (better) {
      [parameters, trial] = [trial, parameters];
      [current, next] = [next, current];
      rss = nextRss;
      damping *= Math.max(1 / 3, 1 - (2 * gain - 1) ** 3);
      growth = 2;
    } else {
      damping *= growth;
      growth *= 2;
    }
    if (negligible || flat) return { parameters: [...parameters], rss, iterations: iteration, converged: true };
    if (better) jacobian(parameters, J);
  }
  return { parameters: [...parameters], rss, iterations: maxIterations, converged: false };
}
