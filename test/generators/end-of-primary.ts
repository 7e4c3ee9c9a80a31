/**
 * The end of primary by the two constructions on a curve that is known at every time: the truth with which predictions
 * are compared. It is written here a second time, by bisection and small steps, without code from src.
 */

export interface End {
  /** Minutes on the clock. */
  readonly t100: number;
  readonly d100: number;
}

/** The curve: reading at a time in minutes; t50 in minutes; d0 and d100 of the primary compression that it was made with. */
export interface KnownCurve {
  readonly exact: (clock: number) => number;
  readonly truth: { readonly t50: number; readonly d0: number; readonly d100: number };
}

/** The first time from `from` on at which `above` is true: steps of a fiftieth of a log cycle, then bisection. */
function first(above: (t: number) => boolean, from: number): number {
  const step = 10 ** 0.02;
  let low = from;
  while (!above(low * step)) {
    low *= step;
    if (low > 1e6 * from) return Infinity;
  }
  let high = low * step;
  for (let k = 0; k < 40; k++) {
    const middle = Math.sqrt(low * high);
    if (above(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Log time: the steepest tangent on log t meets the straight line that the tail approaches. */
export function endByLogTime({ exact, truth }: KnownCurve): End {
  const at = (x: number) => exact(10 ** x);
  const slope = (x: number) => (at(x + 0.001) - at(x - 0.001)) / 0.002;
  const sense = Math.sign(truth.d100 - truth.d0);
  const middle = Math.log10(truth.t50) + 0.3;
  let steepest = middle;
  for (let x = middle - 0.6; x <= middle + 0.6; x += 0.01) if (sense * slope(x) > sense * slope(steepest)) steepest = x;
  const far = Math.log10(truth.t50) + 4;
  const tail = at(far + 1) - at(far);
  const x100 = (at(far) - tail * far - at(steepest) + slope(steepest) * steepest) / (slope(steepest) - tail);
  return { t100: 10 ** x100, d100: at(far) + tail * (x100 - far) };
}

/**
 * Root time: the least-squares line of the first 60 % of primary on root t, from the start of the load; d90 where the
 * line with 1.15 times its abscissae meets the curve; d100 a ninth beyond d90; t100 where the curve reaches d100.
 */
export function endByRootTime({ exact, truth }: KnownCurve): End {
  const sense = Math.sign(truth.d100 - truth.d0);
  const share = (t: number) => (exact(t) - truth.d0) / (truth.d100 - truth.d0);
  const end = Math.sqrt(first((t) => share(t) > 0.6, truth.t50 / 10));
  const roots = Array.from({ length: 60 }, (_, i) => (end * (i + 1)) / 60).filter((root) => share(root * root) > 0.05);
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const d = roots.map((root) => exact(root * root));
  const [x, y] = [mean(roots), mean(d)];
  const slope =
    roots.reduce((sum, root, i) => sum + (root - x) * ((d[i] ?? NaN) - y), 0) /
    roots.reduce((sum, root) => sum + (root - x) ** 2, 0);
  const d0 = y - slope * x;
  const t90 = first((t) => sense * (exact(t) - d0 - (slope / 1.15) * Math.sqrt(t)) < 0, end * end);
  const d100 = d0 + (exact(t90) - d0) / 0.9;
  return { t100: first((t) => sense * (exact(t) - d100) > 0, t90), d100 };
}
