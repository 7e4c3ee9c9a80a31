/** Keeps an old object if the new one is equal, so that nothing that depends on it is calculated or drawn again. */

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * Returns the next value, built from parts of the value before wherever they are equal, or the value before itself if
 * all of it is equal. Both must be plain data: no classes, no cycles.
 */
export function kept<T>(before: T | undefined, next: T): T {
  if (Object.is(before, next) || before === undefined) return next;
  const made = Array.isArray(next)
    ? keptList(Array.isArray(before) ? before : [], next)
    : isPlain(next)
      ? keptRecord(isPlain(before) ? before : {}, next)
      : next;
  // Each part is a part of the next value or equal to one, so the whole has the type of the next value.
  return (isSame(before, made) ? before : made) as T;
}

const keptList = (before: readonly unknown[], next: readonly unknown[]): unknown[] =>
  next.map((value, index) => kept(before[index], value));

const keptRecord = (
  before: Readonly<Record<string, unknown>>,
  next: Readonly<Record<string, unknown>>,
): Record<string, unknown> =>
  Object.fromEntries(Object.entries(next).map(([key, value]) => [key, kept(before[key], value)]));

/** True if both values have identical parts. */
function isSame(one: unknown, other: unknown): boolean {
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((value, index) => Object.is(value, other[index]));
  if (!isPlain(one) || !isPlain(other)) return Object.is(one, other);
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length && keys.every((key) => key in other && Object.is(one[key], other[key]))
  );
}
