/** The reviewer's questions as one table, and their answers for a record. */
import { readRecord, RECORD_NAMES, type NamedValues, type TestRecord } from "../datasheet/record";
import type { Answer, Check, Thresholds } from "./check";
import { CURVE_CHECKS } from "./curve";
import { LOAD_CHECKS } from "./loads";
import { RECORD_CHECKS } from "./records";
import { SPECIMEN_CHECKS } from "./specimen";
import { TIME_CURVE_CHECKS } from "./time-curves";

export type { Answer, Check, Figure, Severity, Status, Thresholds } from "./check";
export { shown } from "./check";

export const CHECKS: readonly Check[] = [
  ...SPECIMEN_CHECKS,
  ...LOAD_CHECKS,
  ...TIME_CURVE_CHECKS,
  ...CURVE_CHECKS,
  ...RECORD_CHECKS,
].sort((a, b) => (a.id < b.id ? -1 : 1));

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
