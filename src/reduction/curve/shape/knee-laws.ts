/**
 * The soft knee fitted to points, for a given corner and width: the constants that remain are linear.
 *
 * A search calls a law a thousand times. So a law is made once for its points, with everything that does not depend on
 * corner and width, and writes its result into one object: this takes a third of the time of making a law for each
 * call.
 *
 * The columns of a law are as long as its points, and every index stays within them: hence each `!`.
 */
import { solveQr } from "../../numeric/qr";
import { kneeAt, levelled, ramp, type Knee } from "./knee";

/** Gives the best knee of a law for a given corner and width, and writes it into `into` if that is given. */
export type KneeLaw = (corner: number, width: number, into?: { -readonly [K in keyof Knee]: Knee[K] }) => Knee;

/**
 * A knee to be overwritten. NaN and not 0, so that the engine stores floating-point numbers in every field from the
 * start.
 */
export const emptyKnee = (): Knee => ({
  corner: NaN,
  width: NaN,
  start: NaN,
  before: NaN,
  rise: NaN,
  excess: NaN,
  misfit: NaN,
});

/** The values less their mean, and the mean. */
function centred(values: readonly number[]): { readonly mean: number; readonly values: Float64Array } {
  let mean = 0;
  for (const value of values) mean += value / values.length;
  return { mean, values: Float64Array.from(values, (value) => value - mean) };
}

/** Sum of the products of two columns. */
function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** Two straight lines with a rounding; the slope before the knee is not allowed below zero. */
export function straightLaw(x: readonly number[], u: readonly number[]): KneeLaw {
  const n = x.length;
  const { mean: mx, values: dx } = centred(x);
  const { mean: mu, values: du } = centred(u);
  const [xx, xu] = [product(dx, dx), product(dx, du)];
  const dr = new Float64Array(n);
  return (corner, width, into = emptyKnee()) => {
    let mr = 0;
    for (let i = 0; i < n; i++) {
      const r = ramp(x[i]! - corner, width);
      dr[i] = r;
      mr += r;
    }
    mr /= n;
    let xr = 0;
    let rr = 0;
    let ru = 0;
    for (let i = 0; i < n; i++) {
      const r = dr[i]! - mr;
      dr[i] = r;
      xr += dx[i]! * r;
      rr += r * r;
      ru += r * du[i]!;
    }
    const determinant = xx * rr - xr * xr;
    let before = 0;
    let rise = 0;
    if (determinant > 1e-10 * xx * rr) {
      before = (xu * rr - ru * xr) / determinant;
      rise = (ru * xx - xu * xr) / determinant;
      if (before < 0) {
        before = 0;
        rise = ru / rr;
      }
    } else before = xu / xx;
    let misfit = 0;
    for (let i = 0; i < n; i++) {
      const off = du[i]! - before * dx[i]! - rise * dr[i]!;
      misfit += off * off;
    }
    into.corner = corner;
    into.width = width;
    into.start = mu - before * mx - rise * mr;
    into.before = before;
    into.rise = rise;
    into.excess = 0;
    into.misfit = misfit;
    return into;
  };
}

/**
 * A law whose part before the knee steepens on log of stress: its slope grows as stress to the power `exponent`, up to
 * `before` at the corner. The exponent is Janbu's: 0 is straight on log of stress (as `straightLaw`), 1 a constant
 * modulus, straight on stress. Source: Janbu, N. (1963), "Soil compressibility as determined by oedometer and triaxial
 * tests", Proc. European Conf. Soil Mech. Found. Eng., Wiesbaden, vol. 1, 19-25 (from memory): M = m pa (stress /
 * pa)^(1 - exponent). Only `corner`, `width` and `misfit` of the knee that it gives describe this law; it does not fit
 * a curve that does not steepen.
 */
export function steepeningLaw(x: readonly number[], u: readonly number[], exponent: number): KneeLaw {
  const n = x.length;
  const { mean: mu, values: du } = centred(u);
  const growth = exponent * Math.LN10;
  const dp = new Float64Array(n);
  const dr = new Float64Array(n);
  return (corner, width, into = emptyKnee()) => {
    let mp = 0;
    let mr = 0;
    for (let i = 0; i < n; i++) {
      const past = x[i]! - corner;
      const r = ramp(past, width);
      const p = (Math.exp(growth * (past - r)) - 1) / growth;
      dr[i] = r;
      dp[i] = p;
      mp += p;
      mr += r;
    }
    mp /= n;
    mr /= n;
    let pp = 0;
    let pr = 0;
    let rr = 0;
    let pu = 0;
    let ru = 0;
    for (let i = 0; i < n; i++) {
      const p = (dp[i]! -= mp);
      const r = (dr[i]! -= mr);
      const d = du[i]!;
      pp += p * p;
      pr += p * r;
      rr += r * r;
      pu += p * d;
      ru += r * d;
    }
    const determinant = pp * rr - pr * pr;
    const known = determinant > 1e-10 * pp * rr;
    const before = known ? (pu * rr - ru * pr) / determinant : 0;
    const virgin = known ? (ru * pp - pu * pr) / determinant : 0;
    const steepens = before >= 0 && virgin > before;
    // From the residuals, as in the held law.
    let misfit = steepens ? 0 : Infinity;
    for (let i = 0; steepens && i < n; i++) misfit += (du[i]! - before * dp[i]! - virgin * dr[i]!) ** 2;
    into.corner = corner;
    into.width = width;
    into.start = mu - before * mp - virgin * mr;
    into.before = before;
    into.rise = virgin - before;
    into.excess = 0;
    into.misfit = misfit;
    return into;
  };
}

/**
 * The straight law held to a virgin line that is already drawn: only the slope before the knee is free. For curves
 * whose virgin part has two points, or bends, and cannot give the slope after the knee.
 */
export function heldLaw(
  x: readonly number[],
  u: readonly number[],
  virgin: { readonly slope: number; readonly intercept: number },
): KneeLaw {
  const offLine = Float64Array.from(u, (value, i) => value - virgin.intercept - virgin.slope * x[i]!);
  const ramps = new Float64Array(x.length);
  return (corner, width, into = emptyKnee()) => {
    let rr = 0;
    let ry = 0;
    for (let i = 0; i < x.length; i++) {
      const r = ramp(corner - x[i]!, width);
      ramps[i] = r;
      rr += r * r;
      ry += r * offLine[i]!;
    }
    const rise = rr > 0 ? Math.max(0, Math.min(ry / rr, virgin.slope)) : 0;
    // From the residuals: as a difference of large sums it is rounded by a thousandth of what the search tells apart.
    let misfit = 0;
    for (let i = 0; i < x.length; i++) misfit += (offLine[i]! - rise * ramps[i]!) ** 2;
    into.corner = corner;
    into.width = width;
    into.start = virgin.intercept + rise * corner;
    into.before = virgin.slope - rise;
    into.rise = rise;
    into.excess = 0;
    into.misfit = misfit;
    return into;
  };
}

/**
 * The law with a virgin part that is steepest just past the knee and flattens, as in sensitive clay. Returns the
 * straight law if the readings do not show the excess.
 */
export function bentLaw(x: readonly number[], u: readonly number[]): KneeLaw {
  const n = x.length;
  const straight = straightLaw(x, u);
  const columns = new Float64Array(4 * n);
  const right = new Float64Array(n);
  const solution = new Float64Array(4);
  return (corner, width, into = emptyKnee()) => {
    for (let i = 0; i < n; i++) {
      const r = ramp(x[i]! - corner, width);
      columns[i] = 1;
      columns[n + i] = x[i]!;
      columns[2 * n + i] = r;
      columns[3 * n + i] = levelled(r);
      right[i] = u[i]!;
    }
    solveQr(columns, n, 4, right, solution);
    const [start, before, rise, excess] = [solution[0]!, solution[1]!, solution[2]!, solution[3]!];
    if (before < 0 || excess <= 0 || rise < 0) return straight(corner, width, into);
    into.corner = corner;
    into.width = width;
    into.start = start;
    into.before = before;
    into.rise = rise;
    into.excess = excess;
    into.misfit = 0;
    let misfit = 0;
    for (let i = 0; i < n; i++) {
      const off = u[i]! - kneeAt(into, x[i]!);
      misfit += off * off;
    }
    into.misfit = misfit;
    return into;
  };
}
