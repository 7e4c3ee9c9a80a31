/** Places of a list that the caller knows to be there. A place that is not is a fault of the program, and thrown. */

/** The value at an index from 0. */
export function nth<T>(list: ArrayLike<T>, index: number): T {
  const value = list[index];
  if (value === undefined) throw new RangeError(`a list of ${list.length} has no place ${index}`);
  return value;
}

export const firstOf = <T>(list: ArrayLike<T>): T => nth(list, 0);
export const lastOf = <T>(list: ArrayLike<T>): T => nth(list, list.length - 1);
