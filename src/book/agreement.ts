/** Compares two values: their difference, and whether they agree. */

export interface Compared {
  /** The value less the value by hand. */
  readonly difference: number;
  /** The difference over the value by hand. */
  readonly relative: number;
  readonly agrees: boolean;
}

/**
 * Compares two values. `tolerance` is a ratio to the value by hand, which must not be zero. A difference equal to the
 * tolerance agrees.
 */
export function compare(value: number, byHand: number, tolerance: number): Compared {
  const difference = value - byHand;
  const relative = difference / Math.abs(byHand);
  return { difference, relative, agrees: Math.abs(relative) <= tolerance * (1 + 1e-9) };
}
