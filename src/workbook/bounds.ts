/** An entry rule as the comparison that every host knows. */
import type { EntryRule } from "./port";

export interface Bounds {
  readonly operator: "between" | "greaterThan" | "greaterThanOrEqual";
  readonly values: readonly number[];
}

/** Past every number of the trade: between its two signs, a number is all that is wanted. */
const LARGEST = 1e12;
/** Hosts compare with two bounds inclusive of both: more than 0 is as much as this. */
const SMALLEST = 1e-9;

export function boundsOf({ least, above, most }: EntryRule): Bounds {
  if (least !== undefined && most === undefined)
    return { operator: above ? "greaterThan" : "greaterThanOrEqual", values: [least] };
  return {
    operator: "between",
    values: [least === undefined ? -LARGEST : above ? least + SMALLEST : least, most ?? LARGEST],
  };
}

export const titleOf = ({ kind }: EntryRule): string => (kind === "date" ? "Not a date" : "Not a number that fits");

export const CHOICE_TITLE = "Not in the list";

/** At most 225 characters, as Excel takes them. */
export const choiceMessage = (choices: readonly string[]): string =>
  `Choose one of: ${choices.join(", ")}.`.slice(0, 225);
