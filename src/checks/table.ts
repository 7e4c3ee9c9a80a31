/** The reviewer's questions as one table. */
import type { Check } from "./check";
import { CURVE_CHECKS } from "./curve";
import { LOAD_CHECKS } from "./loads";
import { RECORD_CHECKS } from "./records";
import { SPECIMEN_CHECKS } from "./specimen";
import { TIME_CURVE_CHECKS } from "./time-curves";

export const CHECKS: readonly Check[] = [
  ...SPECIMEN_CHECKS,
  ...LOAD_CHECKS,
  ...TIME_CURVE_CHECKS,
  ...CURVE_CHECKS,
  ...RECORD_CHECKS,
].sort((a, b) => (a.id < b.id ? -1 : 1));
