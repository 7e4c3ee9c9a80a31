/** Decides when a load may end: by the rule of the sheet, or by the rule that the person chose on the screen. */
import type { TestRecord } from "../../../record/record";
import type { ProgressRule } from "../../../reduction/increment/progress";
import { END_RULES, type EndRuleWords } from "../../../specification/form/end-rules";
import { DAY_MINUTES } from "../../../workbook/day-number";
import { typedNonZero } from "../../ui/typed-number";
import type { BenchState } from "./bench-state";

export interface EndRule {
  readonly rule: ProgressRule;
  /** Minutes or a multiple of t100; undefined while the person has not typed the number that the rule needs. */
  readonly multiple: number | undefined;
}

/** True if a rule needs a number. */
export const needsMultiple = (rule: ProgressRule): boolean => rule === "fixed" || rule === "multiple";

/** The rules of the sheet. */
const RULES: Readonly<Record<EndRuleWords, ProgressRule>> = {
  "fixed time": "fixed",
  "t100 by log time": "log time",
  "t100 by root time": "root time",
  "multiple of t100": "multiple",
};

/**
 * The rule chosen on the sheet. If none is chosen: one day if its loads last one day; otherwise the end of primary by the construction that the
 * sheet reports.
 */
function ruleOfSheet({ words, numbers }: TestRecord): EndRule {
  const chosen = END_RULES.find((one) => one === words.load_end_rule);
  if (chosen !== undefined) {
    const rule = RULES[chosen];
    if (!needsMultiple(rule)) return { rule, multiple: 1 };
    return { rule, multiple: numbers.load_end_number ?? (rule === "fixed" ? DAY_MINUTES : undefined) };
  }
  return words.test_method === "24 h loads"
    ? { rule: "fixed", multiple: DAY_MINUTES }
    : { rule: words.time_method === "root time" ? "root time" : "log time", multiple: 1 };
}

export function ruleNow(record: TestRecord, { rule, multiple }: Pick<BenchState, "rule" | "multiple">): EndRule {
  if (rule === undefined) return ruleOfSheet(record);
  if (!needsMultiple(rule)) return { rule, multiple: 1 };
  const typed = typedNonZero(multiple);
  return { rule, multiple: typed !== undefined && typed > 0 ? typed : undefined };
}
