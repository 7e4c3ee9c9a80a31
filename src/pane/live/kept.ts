/** Keeps what is equal, so that what hangs on it is not worked out or drawn again. */

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * The next value, made of parts of the one before where these are equal; the one before itself where all of it is equal. Both
 * are plain data: no classes, no circles.
 */
export function kept<T>(before: T | undefined, next: T): T {
  if (Object.is(before, next) || before === undefined) return next;
  const made = Array.isArray(next)
    ? keptList(Array.isArray(before) ? before : [], next)
    : isPlain(next)
      ? keptRecord(isPlain(before) ? before : {}, next)
      : next;
  // The parts are those of the next value or equal to them, so the whole is of its type.
  return (isSame(before, made) ? before : made) as T;
}

const keptList = (before: readonly unknown[], next: readonly unknown[]): unknown[] =>
  next.map((value, index) => kept(before[index], value));

const keptRecord = (
  before: Readonly<Record<string, unknown>>,
  next: Readonly<Record<string, unknown>>,
): Record<string, unknown> =>
  Object.fromEntries(Object.entries(next).map(([key, value]) => [key, kept(before[key], value)]));

/** Whether two values have the very same parts. */
function isSame(one: unknown, other: unknown): boolean {
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((value, index) => Object.is(value, other[index]));
  if (!isPlain(one) || !isPlain(other)) return Object.is(one, other);
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length && keys.every((key) => key in other && Object.is(one[key], other[key]))
  );
}
