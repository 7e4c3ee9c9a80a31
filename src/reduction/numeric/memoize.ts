/**
 * Remembers what was computed of lists of numbers, so that a dozen cells asking for items of one curve reduce it once.
 * Found by a hash, trusted only after every number has been compared; bounded by entries and by numbers held. The loops run over
 * columns of up to 100,000 numbers within their length: hence each `!`.
 */
type Numbers = readonly ArrayLike<number>[];

interface Entry<T> {
  readonly key: Numbers;
  readonly value: T;
  readonly size: number;
}

/** A hash takes about as many numbers of a list: of a longer one, every second, third and so on. */
const HASHED = 2048;

/** FNV-1a over the bits of the numbers; lists are told apart by their lengths. */
function hashOf(lists: Numbers): number {
  const bits = new Float64Array(1);
  const words = new Uint32Array(bits.buffer);
  let hash = 0x811c9dc5;
  const mix = (value: number) => {
    bits[0] = value;
    hash = Math.imul(hash ^ words[0]!, 0x01000193);
    hash = Math.imul(hash ^ words[1]!, 0x01000193);
    hash ^= hash >>> 15;
  };
  for (const list of lists) {
    mix(list.length);
    const stride = Math.ceil(list.length / HASHED);
    for (let i = list.length - 1; i >= 0; i -= stride) mix(list[i]!);
  }
  return hash;
}

const same = (a: Numbers, b: Numbers): boolean =>
  a.length === b.length &&
  a.every((list, k) => {
    const other = b[k]!;
    if (list.length !== other.length) return false;
    for (let i = 0; i < list.length; i++) if (!Object.is(list[i], other[i])) return false;
    return true;
  });

/**
 * A function of lists of numbers that computes each distinct input once while the input is among the last used. The lists are kept: do
 * not write to them.
 * @example memoize((list) => list.length)([1, 2, 3]) // 3
 */
export function memoize<T>(
  compute: (...lists: ArrayLike<number>[]) => T,
  { entries = 256, numbers = 2_000_000 } = {},
): (...lists: ArrayLike<number>[]) => T {
  const held = new Map<number, Entry<T>>();
  let total = 0;
  const drop = (hash: number) => {
    total -= held.get(hash)?.size ?? 0;
    held.delete(hash);
  };
  return (...lists) => {
    const hash = hashOf(lists);
    const found = held.get(hash);
    if (found && same(found.key, lists)) {
      held.delete(hash);
      held.set(hash, found);
      return found.value;
    }
    const value = compute(...lists);
    const size = lists.reduce((sum, list) => sum + list.length, 0);
    drop(hash);
    held.set(hash, { key: lists, value, size });
    total += size;
    for (const oldest of held.keys()) {
      if (held.size <= entries && total <= numbers) break;
      drop(oldest);
    }
    return value;
  };
}
