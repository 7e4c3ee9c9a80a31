/** Elements of a list that the caller knows to exist. A missing element is a fault of the program, and throws. */

/** The value at an index from 0. */
export function nth<T>(list: ArrayLike<T>, index: number): T {
  const value = list[index];
  if (value === undefined) throw new RangeError(`a list of ${list.length} has no place ${index}`);
  return value;
}

export const firstOf = <T>(list: ArrayLike<T>): T => nth(list, 0);
export const lastOf = <T>(list: ArrayLike<T>): T => nth(list, list.length - 1);
