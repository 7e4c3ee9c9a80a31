/** An entry rule as a comparison that every host knows. */
import { ENGLISH_HOST_WORDS } from "../host-words";
import type { EntryRule, HostWords } from "../port";

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

/** What a host shows when it refuses an entry: at most 32 characters in the title, and 225 in the message. */
export interface Refusal {
  readonly title: string;
  readonly message: string;
}

export const refusalOf = ({ kind, message }: EntryRule, words: HostWords = ENGLISH_HOST_WORDS): Refusal => ({
  title: kind === "date" ? words.notDate : words.notNumber,
  message,
});

/** The refusal of a word that is not among the choices; the list is cut to the most that Excel takes. */
export const refusalOfChoice = (choices: readonly string[], words: HostWords = ENGLISH_HOST_WORDS): Refusal => ({
  title: words.notListed,
  message: `${words.chooseOne} ${choices.join(", ")}.`.slice(0, 225),
});
