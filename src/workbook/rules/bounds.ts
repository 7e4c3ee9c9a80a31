/** An entry rule as a comparison that every host knows. */
import type { EntryRule } from "../port";

export interface Bounds {
  readonly operator: "between" | "greaterThan" | "greaterThanOrEqual";
  readonly values: readonly [least: number, ...most: number[]];
}

/** Larger than every number of the trade: a rule from -LARGEST to LARGEST accepts every number. */
const LARGEST = 1e12;
/** Hosts compare with both bounds included: more than 0 becomes at least this. */
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

/** The message of a list of choices, at most 225 characters, the most that Excel takes. */
export const choiceMessage = (choices: readonly string[]): string =>
  `Choose one of: ${choices.join(", ")}.`.slice(0, 225);
