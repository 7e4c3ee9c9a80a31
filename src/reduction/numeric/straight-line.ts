export interface StraightLine {
  readonly slope: number;
  readonly intercept: number;
  /** Weighted sum of squared residuals. */
  readonly rss: number;
}

/** Weighted straight line of y on x. */
export function straightLine(x: readonly number[], y: readonly number[], w: readonly number[]): StraightLine {
  const total = w.reduce((a, b) => a + b, 0);
  const mx = x.reduce((s, value, i) => s + w[i] * value, 0) / total;
  const my = y.reduce((s, value, i) => s + w[i] * value, 0) / total;
  const xx = x.reduce((s, value, i) => s + w[i] * (value - mx) ** 2, 0);
  const xy = x.reduce((s, value, i) => s + w[i] * (value - mx) * (y[i] - my), 0);
  const slope = xx > 0 ? xy / xx : 0;
  const intercept = my - slope * mx;
  const rss = x.reduce((s, value, i) => s + w[i] * (y[i] - intercept - slope * value) ** 2, 0);
  return { slope, intercept, rss };
}
