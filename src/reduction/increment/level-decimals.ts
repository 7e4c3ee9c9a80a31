/** How many decimals a level of the readings (d0, d50, d90, d100) is shown with. */
import { digits, type Digits } from "../message";
import type { Outcome } from "../outcome";
import type { CleanReadings } from "./readings";

/**
 * The decimals of the step of the readings and one more, because a construction reads between two steps; undefined if the
 * readings show no step (0).
 * @example levelDecimals(0.002) // 4
 * @example levelDecimals(1) // 1
 */
export const levelDecimals = (step: number): number | undefined =>
  step > 0 ? Math.max(0, 1 + Math.ceil(-Math.log10(step) - 1e-9)) : undefined;

/**
 * The decimals of the levels of a load; undefined also if its readings cannot be used.
 * @example decimalsOfLevels(cleanReadings([0, 1, 2, 4], [10, 12, 14, 20])) // 1
 */
export const decimalsOfLevels = (cleaned: Outcome<CleanReadings>): number | undefined =>
  cleaned.ok ? levelDecimals(cleaned.value.step) : undefined;

/** Significant digits of a level, if the readings show no step; and more than any reading has. */
const WITHOUT_STEP = 4;
const ALL = 15;

/**
 * A level of the readings as a message shows it: to the step of the readings and one digit more, without zeros at its end.
 * @example levelShown(1203.4312, 1) // "1203.4"
 * @example levelShown(1203.4312, 0) // "1203"
 */
export function levelShown(level: number, step: number): Digits {
  const decimals = levelDecimals(step);
  return decimals === undefined ? digits(level, WITHOUT_STEP) : digits(Number(level.toFixed(decimals)), ALL);
}
