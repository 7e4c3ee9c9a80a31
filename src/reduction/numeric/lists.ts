/** Elements of a list that the caller knows to exist. A missing element is a fault of the program, and throws. */

/**
 * The value at an index from 0.
 * @example nth([10, 20, 30], 1) // 20
 */
export function nth<T>(list: ArrayLike<T>, index: number): T {
  const value = list[index];
  if (value === undefined) throw new RangeError(`a list of ${list.length} has no place ${index}`);
  return value;
}

/** @example firstOf([10, 20, 30]) // 10 */
export const firstOf = <T>(list: ArrayLike<T>): T => nth(list, 0);
/** @example lastOf([10, 20, 30]) // 30 */
export const lastOf = <T>(list: ArrayLike<T>): T => nth(list, list.length - 1);

/**
 * Pairs of each value with the next one.
 * @example neighbours([10, 20, 40]) // [[10, 20], [20, 40]]
 */
export const neighbours = <T>(list: readonly T[]): [before: T, value: T][] =>
  list.slice(1).map((value, index) => [nth(list, index), value]);
