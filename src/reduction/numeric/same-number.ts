/** Two numbers that differ by no more than this share of the greater one differ by rounding only. */
export const ROUNDING = 1e-9;

/**
 * Whether two numbers differ by rounding only, as a stress calculated from a force and the same stress in a calibration,
 * or a stress that was converted from another unit.
 * @example [sameNumber(100, 100.00000001), sameNumber(100, 100.001)] // [true, false]
 */
export const sameNumber = (a: number, b: number): boolean =>
  Math.abs(a - b) <= ROUNDING * Math.max(Math.abs(a), Math.abs(b));
