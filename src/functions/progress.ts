/** Worksheet functions of a load that is still on: how far consolidation has gone, and whether the load may end. */
import { say, verbatim } from "../reduction/message";
import { notApplicable, type Outcome } from "../reduction/outcome";
import { progress, PROGRESS_RULES, type ExpectedEnd, type ProgressRule } from "../reduction/increment/progress";
import { answer, line, remarksOf, valueOf, type Item } from "./answer";
import { refuseCell, toChoice, toOptionalPositive } from "./cells";
import { reduceSoFar } from "./reduced-curve";

const NO_LIMIT = notApplicable(say`the readings give no such limit yet: go on reading`);

/** The number that the rule needs; 1 if it needs none. */
function toMultiple(rule: ProgressRule, argument: unknown): number {
  if (rule !== "fixed" && rule !== "multiple") return 1;
  const what = rule === "fixed" ? say`the fixed time` : say`the multiple of t100`;
  const value = toOptionalPositive(argument, what);
  if (value === undefined)
    return refuseCell(
      say`the rule "${verbatim(rule)}" needs ${what} after which the load may end: enter it as multiple`,
    );
  if (rule === "multiple" && value < 1)
    return refuseCell(say`the multiple of t100 is ${value}: enter 1 or more, for the load must not end within primary`);
  return value;
}

/**
 * How far consolidation has gone under a load that is still on: degree of consolidation, expected t50, t90, t100 (with a 95 % range) and d100, minutes to go, and whether the load may end. Refuses (#N/A) before half of primary.
 * @customfunction
 * @param times Times since the load was applied, in minutes; the readings so far.
 * @param readings Dial or transducer readings; either direction.
 * @param [item] One of U, t50, t90, t100, t100_low, t100_high, d100, remaining, verdict, remark; left out, the whole table spills.
 * @param [rule] When the load may end: end of primary by "log time" (default) or "root time"; "fixed" minutes; a "multiple" of t100 by log time.
 * @param [multiple] For "fixed" the minutes, for "multiple" how many times t100.
 * @returns A table of label, value and unit; or the one item. U is a ratio; verdict is "over", "not yet" or "cannot be told".
 * @example =CLAY.PROGRESS(A2:A11,B2:B11)
 * @example =CLAY.PROGRESS(A2:A16,B2:B16,"verdict")
 * @example =CLAY.PROGRESS(A2:A11,B2:B11,"remaining","fixed",1440)
 * @example =CLAY.PROGRESS(A2:A16,B2:B16,"remark","multiple",10)
 * @refuses =CLAY.PROGRESS(A2:A8,B2:B8)
 * @refuses =CLAY.PROGRESS(A2:A16,B2:B16,"verdict","multiple")
 * @source The constructions of LOG_TIME and ROOT_TIME on Terzaghi's theory fitted to the readings so far; t100 is where the steepest tangent meets the tail (log time), or where the curve reaches d100 (root time). Second opinion: the rectangular hyperbola of Sridharan, Murthy and Prakash (1987).
 */
export function PROGRESS(times: any[][], readings: any[][], item?: any, rule?: any, multiple?: any): any[][] {
  const chosen = toChoice(rule, say`the rule`, PROGRESS_RULES, PROGRESS_RULES[0]);
  const outcome = progress(reduceSoFar(times, readings), chosen, toMultiple(chosen, multiple));
  const { expected, remaining, verdict } = valueOf(outcome);
  const items: Item[] = [
    endItem(expected, "U", ({ U }) => U, ""),
    endItem(expected, "t50", ({ t50 }) => t50),
    endItem(expected, "t90", ({ t90 }) => t90),
    endItem(expected, "t100", ({ t100 }) => t100),
    endItem(expected, "t100_low", ({ low }) => low),
    endItem(expected, "t100_high", ({ high }) => high),
    endItem(expected, "d100", ({ d100 }) => d100, ""),
    line("remaining", remaining, "min"),
    line("verdict", say([verdict])),
  ];
  return answer(items, remarksOf(outcome), item);
}

/** An item of the expected end; if there is no end, the item says why. */
const endItem = (
  expected: Outcome<ExpectedEnd>,
  label: string,
  read: (end: ExpectedEnd) => number | undefined,
  unit = "min",
): Item =>
  expected.ok
    ? line(label, read(expected.value), unit, NO_LIMIT)
    : line(label, undefined, unit, notApplicable(expected.reason));
