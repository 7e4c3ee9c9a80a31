/**
 * Runs of neighbours among whole numbers in rising order: 4, 5, 6, 9 is 4 to 6 and 9.
 * @example runsOf([4, 5, 6, 9]) // [[4, 6], [9, 9]]
 */
export function runsOf(numbers: readonly number[]): (readonly [from: number, to: number])[] {
  const found: [number, number][] = [];
  for (const number of numbers) {
    const last = found[found.length - 1];
    if (last && number === last[1] + 1) last[1] = number;
    else found.push([number, number]);
  }
  return found;
}
