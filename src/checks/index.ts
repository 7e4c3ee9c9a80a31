/** The reviewer's questions answered for a record. */
import { readRecord, RECORD_NAMES, type NamedValues, type TestRecord } from "../record/record";
import type { Answer, Check, Thresholds } from "./check";
import { CHECKS } from "./table";

export type { Answer, Check, Figure, Severity, Status, Thresholds } from "./check";
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

/** Names among the limits of a firm that no question has. */
export const unknownThresholds = (thresholds: Thresholds): string[] =>
  Object.keys(thresholds).filter((key) => {
    const [id, name] = key.split(".");
    return !CHECKS.some((check) => check.id === id && name !== undefined && name in check.limits);
  });

/** Every question answered from values by name; the result also lists names that no record has. */
export const checkValues = (
  values: NamedValues,
  thresholds?: Thresholds,
): { answered: Answered[]; unknown: string[] } => ({
  answered: runChecks(readRecord(values), thresholds),
  unknown: Object.keys(values).filter((name) => !RECORD_NAMES.includes(name)),
});
