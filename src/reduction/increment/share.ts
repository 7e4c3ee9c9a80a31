/** A movement as a reviewer weighs it: in divisions of the dial (or digits of the logger) where they show, and in share of primary. */
import { say, digits, type Message } from "../message";
export type Share = (movement: number) => Message;

/** `step` is the division, 0 where the readings show none; `primary` may have either sign. */
export const shareOf =
  (step: number, primary: number): Share =>
  (movement) => {
    const share = digits((100 * movement) / Math.abs(primary), 2);
    return step ? say`${digits(movement / step, 2)} divisions, ${share} % of primary` : say`${share} % of primary`;
  };
