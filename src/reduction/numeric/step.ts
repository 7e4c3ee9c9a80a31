/** Shares of the range of readings: how far a reading may be off its step, and the smallest step that counts. */
const OFF_STEP = 1e-6;
const SMALLEST = 1e-5;

/**
 * The step in which readings come: the largest number of which all differences between readings are whole multiples. 0 if
 * there is none above a hundred-thousandth of their range (readings with more digits than any instrument shows). The
 * caller knows the least and the greatest reading.
 */
export function readingStep(values: ArrayLike<number>, least: number, most: number): number {
  // Without a reading, most is less than least.
  const range = Math.max(most - least, 0);
  const count = values.length;
  let step = range;
  let before = least;
  for (let i = 0; i < count; i++) {
    // A column has up to 100,000 numbers, and the index stays within it: hence the `!`.
    const value = values[i]!;
    // Most readings of a logger equal the reading before.
    if (value === before) continue;
    before = value;
    let a = step;
    let b = distance(value - least, step);
    while (b > OFF_STEP * range) [a, b] = [b, distance(a, b)];
    if (a < SMALLEST * range) return 0;
    // The range is a whole number of steps; without this division the error of rounding grows with each new step.
    step = range / Math.round(range / a);
  }
  return step;
}

/** How far a value is from the nearest whole multiple of a step. */
const distance = (value: number, step: number): number => Math.abs(value - Math.round(value / step) * step);
