/**
 * Remembers what was computed of lists of numbers, so that a dozen cells asking for items of one curve reduce it once.
 * Found by a hash, trusted only after every number has been compared; bounded by entries and by numbers held.
 *
 * Numbers are compared as whole numbers of 32 bits, two for each: until the engine has compiled a loop, every fraction
 * that the loop reads takes memory. The loops run over up to 100,000 numbers within their length: hence each `!`.
 */
type Bits = readonly Int32Array[];

interface Entry<T> {
  readonly key: Bits;
  readonly value: T;
  readonly size: number;
}

function bitsOf(list: ArrayLike<number>): Int32Array {
  const { buffer, byteOffset, length } = list instanceof Float64Array ? list : Float64Array.from(list);
  return new Int32Array(buffer, byteOffset, 2 * length);
}

/** A hash takes about as many numbers of a list: of a longer one, every second, third and so on. */
const HASHED = 2048;

const PRIME = 0x01000193;

/** FNV-1a over the bits of the numbers; lists are told apart by their lengths. */
function hashOf(key: Bits): number {
  let hash = 0x811c9dc5;
  for (const bits of key) {
    hash = Math.imul(hash ^ bits.length, PRIME);
    const stride = 2 * Math.ceil(bits.length / 2 / HASHED);
    for (let i = bits.length - 2; i >= 0; i -= stride) {
      hash = Math.imul(hash ^ bits[i]!, PRIME);
      hash = Math.imul(hash ^ bits[i + 1]!, PRIME);
      hash ^= hash >>> 15;
    }
  }
  return hash;
}

function sameBits(a: Int32Array, b: Int32Array): boolean {
  const { length } = a;
  if (length !== b.length) return false;
  for (let i = 0; i < length; i++) if (a[i]! !== b[i]!) return false;
  return true;
}

const same = (a: Bits, b: Bits): boolean => a.length === b.length && a.every((bits, k) => sameBits(bits, b[k]!));

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
    const key = lists.map(bitsOf);
    const hash = hashOf(key);
    const found = held.get(hash);
    if (found && same(found.key, key)) {
      held.delete(hash);
      held.set(hash, found);
      return found.value;
    }
    const value = compute(...lists);
    const size = lists.reduce((sum, list) => sum + list.length, 0);
    drop(hash);
    held.set(hash, { key, value, size });
    total += size;
    for (const oldest of held.keys()) {
      if (held.size <= entries && total <= numbers) break;
      drop(oldest);
    }
    return value;
  };
}
