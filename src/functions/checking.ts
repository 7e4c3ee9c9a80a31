/** Worksheet functions for checking a hand calculation. */
import { refuseCell, toOptionalPositive, toPair } from "./cells";

/** Arithmetic done by hand with rounded steps agrees within this. Common practice, no source. */
const TOLERANCE = 0.01;

/**
 * Compares reduced values with values worked out by hand: difference, relative difference (to the hand value), and
 * "agrees" or "differs", one row for each pair.
 * @customfunction
 * @helpurl https://github.com/clayledger/clayledger#functions
 * @param reduced The value, or a column or row of values, that the worksheet gives.
 * @param by_hand The values by hand, in the same order; a row without one is left blank.
 * @param [tolerance] Greatest relative difference that still agrees, as a ratio; 0.01 (1 %) if left out.
 * @returns Three cells for each pair.
 */
export function COMPARE(reduced: any[][], by_hand: any[][], tolerance?: any): any[][] {
  const limit = toOptionalPositive(tolerance, "the tolerance") ?? TOLERANCE;
  if (limit >= 1) return refuseCell(`the tolerance is ${limit}: enter it as a ratio, 0.05 for 5 %`);
  const [ours, theirs] = toPair(reduced, "the reduced values", by_hand, "the values by hand");
  if (theirs.every((value) => !value))
    return refuseCell("the value by hand is blank or zero: enter it, there is nothing to compare with");
  return ours.map((value, index) => {
    const hand = theirs[index];
    if (!hand) return ["", "", ""];
    const difference = (value ?? 0) - hand;
    const relative = difference / Math.abs(hand);
    // A difference of exactly the tolerance agrees, whatever the last binary digit says.
    return [difference, relative, Math.abs(relative) <= limit * (1 + 1e-9) ? "agrees" : "differs"];
  });
}
