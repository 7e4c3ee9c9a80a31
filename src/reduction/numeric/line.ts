/** The least-squares line through points. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

/** Line of y on x through two points or more; through fewer, or through equal x, the slope is NaN. */
export function leastSquaresLine(x: readonly number[], y: readonly number[]): Line {
  const n = x.length;
  const mx = x.reduce((sum, v) => sum + v, 0) / n;
  const my = y.reduce((sum, v) => sum + v, 0) / n;
  let sxx = 0;
  let sxy = 0;
  for (let i = 0; i < n; i++) {
    sxx += (x[i] - mx) ** 2;
    sxy += (x[i] - mx) * (y[i] - my);
  }
  const slope = sxy / sxx;
  return { slope, intercept: my - slope * mx };
}

export const at = (line: Line, x: number): number => line.intercept + line.slope * x;

/** Where two lines meet; NaN or infinite for parallels. */
export const meetingPoint = (a: Line, b: Line): number => (b.intercept - a.intercept) / (a.slope - b.slope);
