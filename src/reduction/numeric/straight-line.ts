export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

export interface FittedLine extends Line {
  /** Weighted sum of squared residuals. */
  readonly rss: number;
  /** Weighted mean of x. */
  readonly middle: number;
}

/**
 * Least-squares line of y on x, weighted where weights are given. The slope is NaN if all x are equal or there are
 * fewer than two points. The lists have the same length, and every index stays within it: hence each `!`.
 * @example straightLine([0, 1, 2], [1, 3, 5]) // { slope: 2, intercept: 1, rss: 0, middle: 1 }
 */
export function straightLine(
  x: readonly number[],
  y: readonly number[],
  w: readonly number[] = x.map(() => 1),
): FittedLine {
  let total = 0;
  let mx = 0;
  let my = 0;
  for (let i = 0; i < x.length; i++) {
    const weight = w[i]!;
    total += weight;
    mx += weight * x[i]!;
    my += weight * y[i]!;
  }
  mx /= total;
  my /= total;
  let xx = 0;
  let xy = 0;
  for (let i = 0; i < x.length; i++) {
    const off = x[i]! - mx;
    xx += w[i]! * off * off;
    xy += w[i]! * off * (y[i]! - my);
  }
  const slope = xy / xx;
  const intercept = my - slope * mx;
  let rss = 0;
  for (let i = 0; i < x.length; i++) rss += w[i]! * (y[i]! - intercept - slope * x[i]!) ** 2;
  return { slope, intercept, rss, middle: mx };
}

/**
 * The value of a line at x.
 * @example at({ slope: 2, intercept: 1 }, 3) // 7
 */
export const at = (line: Line, x: number): number => line.intercept + line.slope * x;

/** Where two lines meet; NaN or infinite if they are parallel. */
export const meetingPoint = (a: Line, b: Line): number => (b.intercept - a.intercept) / (a.slope - b.slope);
