export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

export interface FittedLine extends Line {
  /** Weighted sum of squared residuals. */
  readonly rss: number;
}

/** Least-squares line of y on x, weighted where weights are given; through equal x, or fewer than two, the slope is NaN. */
export function straightLine(
  x: readonly number[],
  y: readonly number[],
  w: readonly number[] = x.map(() => 1),
): FittedLine {
  const total = w.reduce((a, b) => a + b, 0);
  const mx = x.reduce((s, value, i) => s + w[i] * value, 0) / total;
  const my = y.reduce((s, value, i) => s + w[i] * value, 0) / total;
  const xx = x.reduce((s, value, i) => s + w[i] * (value - mx) ** 2, 0);
  const xy = x.reduce((s, value, i) => s + w[i] * (value - mx) * (y[i] - my), 0);
  const slope = xy / xx;
  const intercept = my - slope * mx;
  const rss = x.reduce((s, value, i) => s + w[i] * (y[i] - intercept - slope * value) ** 2, 0);
  return { slope, intercept, rss };
}

export const at = (line: Line, x: number): number => line.intercept + line.slope * x;

/** Where two lines meet; NaN or infinite for parallels. */
export const meetingPoint = (a: Line, b: Line): number => (b.intercept - a.intercept) / (a.slope - b.slope);
