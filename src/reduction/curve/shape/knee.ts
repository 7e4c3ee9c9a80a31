/**
 * The compression curve as two straight lines joined by a rounding: a soft knee.
 *
 *   u = a + b x + c r + g f (1 - exp(-r / f)),   r = w ln(1 + exp((x - k) / w)),   x = log10 of stress
 *
 * b is the slope before the knee, b + c the slope at the end, k the corner and w the width of the rounding, in log
 * cycles; a sharp corner is w = 0. g, used only where the virgin part flattens, is the excess of slope just past the
 * knee, which fades over f. Given k and w the law is linear in a, b, c, g, so a search over a grid of k and w, refined,
 * cannot miss the best fit.
 */
import { solveQr } from "../../numeric/qr";

export interface Knee {
  readonly corner: number;
  readonly width: number;
  readonly start: number;
  readonly before: number;
  readonly rise: number;
  /** Excess of the slope just past the knee over its last value; it fades over `FADE` log cycles. 0 for a straight virgin part. */
  readonly excess: number;
  /** Sum of squared residuals. */
  readonly misfit: number;
}

/** Log cycles over which the steep start of a bent virgin part (a sensitive clay) fades. */
const FADE = 0.5;

/** w ln(1 + exp(d / w)), which is max(d, 0) for w = 0. */
function ramp(d: number, w: number): number {
  if (w === 0) return Math.max(d, 0);
  const z = d / w;
  return z > 30 ? d : z < -30 ? 0 : w * Math.log1p(Math.exp(z));
}

/** Share of the rise in slope that is complete at distance d past the corner. */
function ramped(d: number, w: number): number {
  if (w === 0) return d < 0 ? 0 : d > 0 ? 1 : 0.5;
  return 1 / (1 + Math.exp(-d / w));
}

/** The ramp of the excess: it levels off. */
const levelled = (r: number): number => FADE * (1 - Math.exp(-r / FADE));

/** Compression at x. */
export function kneeAt({ corner, width, start, before, rise, excess }: Knee, x: number): number {
  const r = ramp(x - corner, width);
  return start + before * x + rise * r + (excess ? excess * levelled(r) : 0);
}

/** Slope at x. */
export function slopeAt({ corner, width, before, rise, excess }: Knee, x: number): number {
  const p = ramped(x - corner, width);
  return before + p * (rise + (excess ? excess * Math.exp(-ramp(x - corner, width) / FADE) : 0));
}

/** Second derivative at x; for a rounded corner (width above zero). */
export function bendingAt({ corner, width, rise, excess }: Knee, x: number): number {
  const p = ramped(x - corner, width);
  const fading = excess ? excess * Math.exp(-ramp(x - corner, width) / FADE) : 0;
  return ((p * (1 - p)) / width) * (rise + fading) - (p * p * fading) / FADE;
}

/** The best law for a given corner and width; the slope before the knee is not allowed below zero. */
export function kneeFor(x: readonly number[], u: readonly number[], corner: number, width: number): Knee {
  const n = x.length;
  const r = new Array<number>(n);
  let mx = 0;
  let mr = 0;
  let mu = 0;
  for (let i = 0; i < n; i++) {
    r[i] = ramp(x[i] - corner, width);
    mx += x[i] / n;
    mr += r[i] / n;
    mu += u[i] / n;
  }
  let xx = 0;
  let xr = 0;
  let rr = 0;
  let xu = 0;
  let ru = 0;
  for (let i = 0; i < n; i++) {
    const dx = x[i] - mx;
    const dr = r[i] - mr;
    const du = u[i] - mu;
    xx += dx * dx;
    xr += dx * dr;
    rr += dr * dr;
    xu += dx * du;
    ru += dr * du;
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
  const start = mu - before * mx - rise * mr;
  let misfit = 0;
  for (let i = 0; i < n; i++) misfit += (u[i] - start - before * x[i] - rise * r[i]) ** 2;
  return { corner, width, start, before, rise, excess: 0, misfit };
}

/**
 * A law whose part before the knee steepens on log of stress: its slope grows as stress to the power `exponent`, up to its
 * value at the corner, `before`. The exponent is Janbu's: 0 is straight on log of stress (as `kneeFor`), 1 a constant modulus,
 * straight on stress. Source: Janbu, N. (1963), "Soil compressibility as determined by oedometer and triaxial tests", Proc.
 * European Conf. Soil Mech. Found. Eng., Wiesbaden, vol. 1, 19-25 (from memory): M = m pa (stress / pa)^(1 - exponent).
 * Only `corner`, `width` and `misfit` of what it gives are those of the law; without a knee that steepens it fits nothing.
 */
export function steepeningKneeFor(
  x: readonly number[],
  u: readonly number[],
  corner: number,
  width: number,
  exponent: number,
): Knee {
  const n = x.length;
  const p = new Array<number>(n);
  const r = new Array<number>(n);
  let mp = 0;
  let mr = 0;
  let mu = 0;
  for (let i = 0; i < n; i++) {
    r[i] = ramp(x[i] - corner, width);
    p[i] = (Math.exp(exponent * Math.LN10 * (x[i] - corner - r[i])) - 1) / (exponent * Math.LN10);
    mp += p[i] / n;
    mr += r[i] / n;
    mu += u[i] / n;
  }
  let pp = 0;
  let pr = 0;
  let rr = 0;
  let pu = 0;
  let ru = 0;
  let uu = 0;
  for (let i = 0; i < n; i++) {
    const dp = p[i] - mp;
    const dr = r[i] - mr;
    const du = u[i] - mu;
    pp += dp * dp;
    pr += dp * dr;
    rr += dr * dr;
    pu += dp * du;
    ru += dr * du;
    uu += du * du;
  }
  const determinant = pp * rr - pr * pr;
  const known = determinant > 1e-10 * pp * rr;
  const before = known ? (pu * rr - ru * pr) / determinant : 0;
  const virgin = known ? (ru * pp - pu * pr) / determinant : 0;
  const misfit = before >= 0 && virgin > before ? uu - before * pu - virgin * ru : Infinity;
  return { corner, width, start: mu - before * mp - virgin * mr, before, rise: virgin - before, excess: 0, misfit };
}

/**
 * The same law held to a virgin line that is already drawn: only the slope before the knee is free. For curves whose
 * virgin part has two points, or bends, and so cannot give the slope after the knee by itself.
 */
export function kneeOnto(
  x: readonly number[],
  u: readonly number[],
  corner: number,
  width: number,
  virgin: { readonly slope: number; readonly intercept: number },
): Knee {
  let rr = 0;
  let ry = 0;
  let yy = 0;
  for (let i = 0; i < x.length; i++) {
    const r = ramp(corner - x[i], width);
    const y = u[i] - virgin.intercept - virgin.slope * x[i];
    rr += r * r;
    ry += r * y;
    yy += y * y;
  }
  const rise = rr > 0 ? Math.max(0, Math.min(ry / rr, virgin.slope)) : 0;
  return {
    corner,
    width,
    start: virgin.intercept + rise * corner,
    before: virgin.slope - rise,
    rise,
    excess: 0,
    misfit: yy - 2 * rise * ry + rise * rise * rr,
  };
}

/**
 * The law with a virgin part that is steepest just past the knee and flattens, as in sensitive clay. Falls back on the
 * straight law where the readings show no such excess.
 */
export function bentKneeFor(x: readonly number[], u: readonly number[], corner: number, width: number): Knee {
  const n = x.length;
  const columns = new Float64Array(4 * n);
  for (let i = 0; i < n; i++) {
    const r = ramp(x[i] - corner, width);
    columns[i] = 1;
    columns[n + i] = x[i];
    columns[2 * n + i] = r;
    columns[3 * n + i] = levelled(r);
  }
  const [start, before, rise, excess] = solveQr(columns, n, 4, Float64Array.from(u));
  if (before < 0 || excess <= 0 || rise < 0) return kneeFor(x, u, corner, width);
  const knee = { corner, width, start, before, rise, excess, misfit: 0 };
  return { ...knee, misfit: x.reduce((sum, value, i) => sum + (u[i] - kneeAt(knee, value)) ** 2, 0) };
}

/** Widths tried, in log cycles. */
export const WIDTHS = [0, 0.025, 0.05, 0.08, 0.12, 0.17, 0.24];
const WIDEST = 0.3;
/** Corners tried per log cycle. */
const CORNERS = 25;

/** Moves of the refinement in corner and width; the slanting ones follow the valley in which the two trade off. */
const DIRECTIONS = [
  [1, 0],
  [0, 1],
  [1, 1],
  [1, -1],
  [2, 1],
  [2, -1],
  [1, 2],
  [1, -2],
].flatMap(([c, w]) => [[c, w] as const, [-c, -w] as const]);

/**
 * Where loads are too few to tell the rounding, laws of many widths fit alike: a width departing from the usual one by a
 * tenth of a cycle costs as much as a misfit of 0.02 percent of the compression, so that one of them is chosen.
 */
const USUAL = { width: 0.05, weight: (0.0002 / 0.1) ** 2 };
const cost = (knee: Knee): number => knee.misfit + USUAL.weight * (knee.width - USUAL.width) ** 2;

/** A law for a given corner and width. */
export type Trial = (corner: number, width: number) => Knee;

/** A fit better by less than this is the same fit: a thousandth of a thousandth of the compression, squared. */
const SAME_FIT = 1e-12;

/** The best law over corners between two x and all widths: a grid, refined by halving steps. */
export function bestKnee(trial: Trial, low: number, high: number): Knee {
  const count = Math.max(1, Math.ceil((high - low) * CORNERS));
  let best = trial(low, 0);
  let least = cost(best);
  for (let i = 0; i <= count; i++)
    for (const width of WIDTHS) {
      const knee = trial(low + ((high - low) * i) / count, width);
      const value = cost(knee);
      if (value < least - SAME_FIT) {
        best = knee;
        least = value;
      }
    }
  return refinedKnee(trial, low, high, best);
}

/** The best law near a corner and a width, by halving steps. */
export function refinedKnee(trial: Trial, low: number, high: number, near: Pick<Knee, "corner" | "width">): Knee {
  let best = trial(Math.min(high, Math.max(low, near.corner)), near.width);
  let least = cost(best);
  for (let step = 0.5 / CORNERS; step > 2e-5;) {
    const { corner, width } = best;
    let moved = false;
    for (const [c, w] of DIRECTIONS) {
      const [to, wide] = [corner + c * step, Math.max(0, width + w * step)];
      if (wide > WIDEST || to < low || to > high) continue;
      const knee = trial(to, wide);
      const value = cost(knee);
      if (value < least - SAME_FIT) {
        best = knee;
        least = value;
        moved = true;
      }
    }
    if (!moved) step /= 2;
  }
  return best;
}
