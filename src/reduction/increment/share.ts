/**
 * A movement in the measures that a reviewer judges it by: whole divisions of the dial where the readings show them,
 * otherwise as much as the readings differ, and share of primary.
 */
import { say, digits, type Message } from "../message";
export type Share = (movement: number) => Message;

/** `step` is the least step of the readings, 0 where they show none; `primary` may have either sign. */
export const shareOf =
  (step: number, primary: number): Share =>
  (movement) => {
    const share = digits((100 * movement) / Math.abs(primary), 2);
    if (!step) return say`${share} % of primary`;
    return step === 1
      ? say`${digits(movement, 2)} divisions, ${share} % of primary`
      : say`${digits(movement, 2)} in the readings, ${share} % of primary`;
  };
