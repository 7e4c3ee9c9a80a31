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

/** Every question answered, in order of the table; `previous` is another test, for what is compared between two. */
export const runChecks = (record: TestRecord, thresholds?: Thresholds, previous?: TestRecord): Answered[] =>
  CHECKS.map((check) => ({ check, answer: check.evaluate(record, thresholds, previous) }));

/** Names among a firm's limits that no question has. */
export const unknownThresholds = (thresholds: Thresholds): string[] =>
  Object.keys(thresholds).filter((key) => {
    const [id, name] = key.split(".");
    return !CHECKS.some((check) => check.id === id && name in check.limits);
  });

/** The same from values by name; names that no record has are given back. */
export const checkValues = (
  values: NamedValues,
  thresholds?: Thresholds,
): { answered: Answered[]; unknown: string[] } => ({
  answered: runChecks(readRecord(values), thresholds),
  unknown: Object.keys(values).filter((name) => !RECORD_NAMES.includes(name)),
});
