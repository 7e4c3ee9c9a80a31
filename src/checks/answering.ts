/** How every question is answered, in the order of the table. */
import { readRecord, RECORD_NAMES, type NamedValues } from "../record/record";
import type { Answer, Answering, Thresholds } from "./check";
import { BY_HAND_CHECKS } from "./questions/by-hand";
import { CLASSIFICATION_CHECKS } from "./questions/classification";
import { CONSTRUCTION_CHECKS } from "./questions/constructions";
import { GROUND_CHECKS } from "./questions/ground";
import { LOAD_CHECKS } from "./questions/loads";
import { READING_CHECKS } from "./questions/readings";
import { RECORD_CHECKS } from "./questions/record";
import { SIZE_CHECKS } from "./questions/sizes";
import { WATER_CHECKS } from "./questions/water";
import { WETTING_CHECKS } from "./questions/wetting";
import { YIELD_CHECKS } from "./questions/yield";

export const ANSWERING: readonly Answering[] = [
  WATER_CHECKS,
  SIZE_CHECKS,
  LOAD_CHECKS,
  READING_CHECKS,
  CONSTRUCTION_CHECKS,
  YIELD_CHECKS,
  GROUND_CHECKS,
  RECORD_CHECKS,
  BY_HAND_CHECKS,
  CLASSIFICATION_CHECKS,
  WETTING_CHECKS,
]
  .flat()
  .sort((a, b) => (a.id < b.id ? -1 : 1));

/** Names among the limits of a firm that no question has. */
export const unknownThresholds = (thresholds: Thresholds): string[] =>
  Object.keys(thresholds).filter((key) => {
    const [id, name] = key.split(".");
    return !ANSWERING.some((one) => one.id === id && name !== undefined && name in one.limits);
  });

/** Every question answered from values by name; the result also lists names that no record has. */
export function answersOf(
  values: NamedValues,
  thresholds?: Thresholds,
): { answered: { id: string; answer: Answer }[]; unknown: string[] } {
  const record = readRecord(values);
  return {
    answered: ANSWERING.map(({ id, evaluate }) => ({ id, answer: evaluate(record, thresholds) })),
    unknown: Object.keys(values).filter((name) => !RECORD_NAMES.includes(name)),
  };
}
