import { nth } from "./lists";

/**
 * The middle of the values, the upper of the two middle values if their number is even; NaN for an empty list.
 * @example median([3, 1, 2]) // 2
 * @example median([1, 2, 3, 4]) // 3
 */
export const median = (values: Iterable<number>): number => {
  const sorted = new Float64Array(values).sort();
  return sorted[sorted.length >> 1] ?? NaN;
};

/**
 * The middle of numbers in rising order, the mean of the two middle ones if their number is even.
 * @example medianOfSorted([1, 2, 3, 4]) // 2.5
 */
export function medianOfSorted(sorted: readonly number[]): number {
  const middle = (sorted.length - 1) / 2;
  return (nth(sorted, Math.floor(middle)) + nth(sorted, Math.ceil(middle))) / 2;
}
