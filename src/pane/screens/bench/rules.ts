/** When a load may end, as the sheet says it or as the person chose it on the screen. */
import type { TestRecord } from "../../../record/record";
import type { ProgressRule } from "../../../reduction/increment/progress";
import { typedNonZero } from "../../ui/typed-number";
import type { BenchState } from "./bench-state";

/** Minutes of a load of one day. */
const DAY = 1440;

export interface EndRule {
  readonly rule: ProgressRule;
  /** Minutes or times t100; undefined while the rule still needs it. */
  readonly multiple: number | undefined;
}

/** Whether a rule needs a number beside it. */
export const needsMultiple = (rule: ProgressRule): boolean => rule === "fixed" || rule === "multiple";

/** The rule of the sheet: a day, where its loads last a day; otherwise the end of primary by the construction that the sheet reports. */
export const ruleOfSheet = ({ words }: TestRecord): EndRule =>
  words.test_method === "24 h loads"
    ? { rule: "fixed", multiple: DAY }
    : { rule: words.time_method === "root time" ? "root time" : "log time", multiple: 1 };

export function ruleNow(record: TestRecord, { rule, multiple }: Pick<BenchState, "rule" | "multiple">): EndRule {
  if (rule === undefined) return ruleOfSheet(record);
  if (!needsMultiple(rule)) return { rule, multiple: 1 };
  const typed = typedNonZero(multiple);
  return { rule, multiple: typed !== undefined && typed > 0 ? typed : undefined };
}
