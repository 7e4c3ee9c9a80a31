/**
 * A movement in the measures that a reviewer judges it by: divisions of the dial (or digits of the logger) where the
 * readings show them, and share of primary.
 */
import { say, digits, type Message } from "../message";
export type Share = (movement: number) => Message;

/** `step` is the division, 0 where the readings show none; `primary` may have either sign. */
export const shareOf =
  (step: number, primary: number): Share =>
  (movement) => {
    const share = digits((100 * movement) / Math.abs(primary), 2);
    return step ? say`${digits(movement / step, 2)} divisions, ${share} % of primary` : say`${share} % of primary`;
  };
