/**
 * The step in which readings come. The loops run over columns of up to 100,000 numbers within their length: hence each
 * `!`.
 */

/**
 * The step of a list of readings: the largest number of which all differences between readings are whole multiples. 0
 * if there is none above a hundred-thousandth of their range (readings with more digits than any instrument shows).
 * A caller that knows the least and the greatest reading gives them.
 */
export function readingStep(values: ArrayLike<number>, { least, most } = extremesOf(values)): number {
  const count = values.length;
  const range = most - least;
  if (!(range > 0)) return 0;
  const tolerance = 1e-7 * range + 1e-12 * Math.max(Math.abs(least), Math.abs(most));
  const smallest = Math.max(1e-5 * range, 20 * tolerance);
  let step = range;
  let before = NaN;
  for (let i = 0; i < count; i++) {
    const value = values[i]!;
    // Most readings of a logger equal the reading before.
    if (value === before) continue;
    before = value;
    let a = step;
    let b = distance(value - least, step);
    if (b <= tolerance * 10) continue;
    while (b > tolerance * 10) [a, b] = [b, distance(a, b)];
    if (a < smallest) return 0;
    // The range is a whole number of steps; without this division the error of rounding grows with each new step.
    step = range / Math.round(range / a);
  }
  return step;
}

function extremesOf(values: ArrayLike<number>): { readonly least: number; readonly most: number } {
  let least = Infinity;
  let most = -Infinity;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return { least, most };
}

/** How far a value is from the nearest whole multiple of a step. */
const distance = (value: number, step: number): number => Math.abs(value - Math.round(value / step) * step);
