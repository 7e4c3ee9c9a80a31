/**
 * A smooth curve through points that never overshoots them: a cubic between neighbours, with slopes at the points that
 * keep rising stretches rising. `x` must increase; at least two points. Before the first point and after the last the
 * curve is level.
 *
 * Source: Fritsch & Butland (1984), SIAM J. Sci. Stat. Comput. 5(2), from memory.
 *
 * x, y and the slopes have the same length, and every index stays within it: hence each `!`.
 */
export function monotoneCubic(x: readonly number[], y: readonly number[]): (x: number) => number {
  const n = x.length;
  const step = (i: number): number => x[i + 1]! - x[i]!;
  const chord = (i: number): number => (y[i + 1]! - y[i]!) / step(i);
  /** At an end: the slope of the parabola through three points, limited so that the curve does not overshoot. */
  const end = (h0: number, h1: number, s0: number, s1: number) => {
    const slope = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
    if (slope * s0 <= 0) return 0;
    // Between chords of the same sign the slope is below 2 s0.
    return Math.abs(slope) > 3 * Math.abs(s0) ? 3 * s0 : slope;
  };
  const slopes = x.map((_, i) => {
    if (n === 2) return chord(0);
    if (i === 0) return end(step(0), step(1), chord(0), chord(1));
    if (i === n - 1) return end(step(n - 2), step(n - 3), chord(n - 2), chord(n - 3));
    const [before, after] = [chord(i - 1), chord(i)];
    if (before * after <= 0) return 0;
    const [w1, w2] = [2 * step(i) + step(i - 1), step(i) + 2 * step(i - 1)];
    return (w1 + w2) / (w1 / before + w2 / after);
  });
  return (at) => {
    let low = 0;
    let high = n - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (x[middle]! <= at) low = middle;
      else high = middle;
    }
    const h = step(low);
    const s = Math.min(Math.max((at - x[low]!) / h, 0), 1);
    const r = 1 - s;
    const ends = y[low]! * (1 + 2 * s) * r * r + y[high]! * s * s * (1 + 2 * r);
    return ends + h * s * r * (slopes[low]! * r - slopes[high]! * s);
  };
}
