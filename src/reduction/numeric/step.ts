/**
 * The step of a list of readings: the largest number of which all differences between readings are whole multiples. 0
 * if there is none above a hundred-thousandth of their range (readings with more digits than any instrument shows).
 */
export function readingStep(values: ArrayLike<number> & Iterable<number>): number {
  let least = Infinity;
  let most = -Infinity;
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const range = most - least;
  if (!(range > 0)) return 0;
  const tolerance = 1e-7 * range + 1e-12 * Math.max(Math.abs(least), Math.abs(most));
  const smallest = Math.max(1e-5 * range, 20 * tolerance);
  let step = range;
  for (const value of values) {
    let a = step;
    let b = distance(value - least, step);
    while (b > tolerance * 10) [a, b] = [b, distance(a, b)];
    if (a < smallest) return 0;
    // The range is a whole number of steps; without this division the error of rounding grows with each new step.
    step = range / Math.round(range / a);
  }
  return step;
}

/** How far a value is from the nearest whole multiple of a step. */
const distance = (value: number, step: number): number => Math.abs(value - Math.round(value / step) * step);
