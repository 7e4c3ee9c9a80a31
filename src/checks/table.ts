/** The reviewer's questions as one table. */
import type { Check } from "./check";
import { CLASSIFICATION_CHECKS } from "./questions/classification";
import { CURVE_CHECKS } from "./questions/curve";
import { LOAD_CHECKS } from "./questions/loads";
import { RECORD_CHECKS } from "./questions/record";
import { SPECIMEN_CHECKS } from "./questions/specimen";
import { TIME_CURVE_CHECKS } from "./questions/time-curves";
import { WETTING_CHECKS } from "./questions/wetting";

export const CHECKS: readonly Check[] = [
  ...SPECIMEN_CHECKS,
  ...LOAD_CHECKS,
  ...TIME_CURVE_CHECKS,
  ...CURVE_CHECKS,
  ...CLASSIFICATION_CHECKS,
  ...RECORD_CHECKS,
  ...WETTING_CHECKS,
].sort((a, b) => (a.id < b.id ? -1 : 1));
