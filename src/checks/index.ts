/** The reviewer's questions answered for a record. */
import type { TestRecord } from "../record/record";
import type { Answer, Thresholds } from "./check";
import type { OtherTest } from "./questions/other-tests";
import { CHECKS, type Check } from "./table";

export type { Answer, Severity, Status, Thresholds } from "./check";
export type { OtherTest } from "./questions/other-tests";
export type { Check } from "./table";
export { unknownThresholds } from "./answering";
export { shown } from "./check";
export { CHECKS } from "./table";

export interface Answered {
  readonly check: Check;
  readonly answer: Answer;
}

/** Every question answered, in the order of the table; `others` are the other data sheets of the workbook. */
export const runChecks = (record: TestRecord, thresholds?: Thresholds, others?: readonly OtherTest[]): Answered[] =>
  CHECKS.map((check) => ({ check, answer: check.evaluate(record, thresholds, others) }));
