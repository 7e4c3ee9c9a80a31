/** The reviewer's questions answered for a record. */
import type { TestRecord } from "../record/record";
import type { Answer, Check, Thresholds } from "./check";
import { CHECKS } from "./table";

export type { Answer, Check, Severity, Status, Thresholds } from "./check";
export { unknownThresholds } from "./answering";
export { shown } from "./check";
export { CHECKS } from "./table";

export interface Answered {
  readonly check: Check;
  readonly answer: Answer;
}

/**
 * Every question answered, in the order of the table; `previous` is another test, for questions that compare two tests.
 */
export const runChecks = (record: TestRecord, thresholds?: Thresholds, previous?: TestRecord): Answered[] =>
  CHECKS.map((check) => ({ check, answer: check.evaluate(record, thresholds, previous) }));
