/**
 * The compression curve as two straight lines joined by a rounding: a soft knee.
 *
 *   u = a + b x + c r + g f (1 - exp(-r / f)),   r = w ln(1 + exp((x - k) / w)),   x = log10 of stress
 *
 * b is the slope before the knee, b + c the slope at the end, k the corner and w the width of the rounding, in log
 * cycles; a sharp corner is w = 0. g, used only where the virgin part flattens, is the excess of slope just past the
 * knee, which fades over f. Given k and w the law is linear in a, b, c, g (knee-laws.ts), so a search over a grid of k
 * and w, then refined, cannot miss the best fit (knee-search.ts).
 */
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
export function ramp(d: number, w: number): number {
  if (w === 0) return Math.max(d, 0);
  const z = d / w;
  return z > 30 ? d : z < -30 ? 0 : w * Math.log1p(Math.exp(z));
}

/** Share of the rise in slope that has been reached at distance d past the corner. */
function ramped(d: number, w: number): number {
  if (w === 0) return d < 0 ? 0 : d > 0 ? 1 : 0.5;
  return 1 / (1 + Math.exp(-d / w));
}

/** The ramp of the excess, which levels off. */
export const levelled = (r: number): number => FADE * (1 - Math.exp(-r / FADE));

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
