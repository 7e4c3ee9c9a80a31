/**
 * What the readings and the fit say of whether a construction can be trusted, and the limits that parted good answers from
 * bad ones in a numerical study of several thousand increments with known truth (common practice has similar ones; there is
 * no other source).
 */
import type { CleanReadings } from "./readings";
import { degreeOfConsolidation } from "./terzaghi";
import type { TheoryFit } from "./theory-fit";

export interface Signals {
  /** Total movement in steps of the instrument. */
  readonly steps: number;
  /** Primary compression over the noise of a reading. */
  readonly clearness: number;
  /** Steepest slope on the log-time plot over the slope of the tail. */
  readonly steepness: number;
  /** Time factor at the last reading. */
  readonly lastT: number;
  /** Degree of consolidation at the first reading. */
  readonly firstU: number;
  /** Readings between 3 and 50 % of primary. */
  readonly early: number;
  /** Misfit to theory over primary. */
  readonly misfit: number;
}

/** Steepest slope of U on log10 T, at T = 0.404. Calculated from the series. */
const STEEPEST_SLOPE = 0.6868;

export function signalsOf(clean: CleanReadings, fit: TheoryFit): Signals {
  const { times } = clean.series;
  const primary = Math.abs(fit.primary);
  const degrees = times.map((t) => degreeOfConsolidation(fit.rate * (t + fit.timeZero)));
  return {
    steps: clean.step ? clean.travel / clean.step : Infinity,
    clearness: fit.noise ? primary / fit.noise : Infinity,
    steepness: fit.tail ? 1 + (STEEPEST_SLOPE * primary) / Math.abs(fit.tail) : Infinity,
    lastT: fit.rate * times[times.length - 1],
    firstU: degrees[0],
    early: degrees.filter((U) => U >= 0.03 && U <= 0.5).length,
    misfit: fit.misfit / primary,
  };
}

/** Refuse beyond the first, remark beyond the second. */
type Limit = readonly [refuse: number, remark: number];

export interface Limits {
  readonly steps: number;
  readonly clearness: Limit;
  readonly steepness: Limit;
  readonly lastT: Limit;
  readonly firstU: Limit;
  readonly early: Limit;
}

export const LOG_TIME_LIMITS: Limits = {
  steps: 10,
  clearness: [25, 60],
  steepness: [1.3, 2.2],
  lastT: [1.6, 3],
  firstU: [0.4, 0.3],
  early: [2, 3],
};
export const ROOT_TIME_LIMITS: Limits = { ...LOG_TIME_LIMITS, lastT: [0.85, 0.95] };
export const FIT_LIMITS: Limits = {
  steps: 10,
  clearness: [20, 40],
  steepness: [1.3, 1.7],
  lastT: [0.45, 0.9],
  firstU: [0.8, 0.4],
  early: [0, 2],
};
/** Misfit to theory over primary above which the curve is not one of theory. */
const MISFIT = 0.02;

/** Why a method must not answer, or what a reviewer should look at. `advice` ends a refusal: what to do instead. */
export function judge(s: Signals, limits: Limits, advice: string): { refusal?: string; remarks: string[] } {
  if (s.steps < limits.steps)
    return refuse(`the whole movement is only ${shown(s.steps)} steps of the instrument: it is lost in the resolution`);
  if (s.clearness < limits.clearness[0])
    return refuse(
      `primary compression is only ${shown(s.clearness)} times the scatter of the readings: it is lost in the noise`,
    );
  if (s.steepness < limits.steepness[0])
    return refuse(`no inflection in the readings: the curve is nowhere clearly steeper than its tail; ${advice}`);
  if (s.lastT < limits.lastT[0])
    return refuse(
      `the readings stop at about ${percent(degreeOfConsolidation(s.lastT))} of primary compression: not finished enough for this method; ${advice}`,
    );
  if (s.firstU > limits.firstU[0])
    return refuse(
      `about ${percent(s.firstU)} of primary compression was over before the first reading: the beginning cannot be found; read earlier, or reduce the height of the drainage path`,
    );
  if (s.early < limits.early[0])
    return refuse(
      `only ${s.early} of the readings lie in the first half of primary compression: ${limits.early[0]} are needed; read earlier`,
    );

  const remarks: string[] = [];
  if (s.clearness < limits.clearness[1])
    remarks.push(
      `primary compression is only ${shown(s.clearness)} times the scatter of the readings: cv is uncertain`,
    );
  if (s.steepness < limits.steepness[1])
    remarks.push(
      "the tail is nearly as steep as the primary part (much secondary compression): the end of primary is uncertain",
    );
  if (s.lastT < limits.lastT[1])
    remarks.push(
      `the readings stop soon after (or before) the end of primary (T = ${shown(s.lastT)}): the end of primary is uncertain`,
    );
  if (s.firstU > limits.firstU[1])
    remarks.push(
      `about ${percent(s.firstU)} of primary compression was over before the first reading: d0 is uncertain`,
    );
  if (s.early < limits.early[1]) remarks.push(`only ${s.early} readings in the first half of primary compression`);
  if (s.misfit > MISFIT)
    remarks.push(`the readings depart from theory by ${percent(s.misfit)} of primary on average: look at the plot`);
  return { remarks };
}

const refuse = (refusal: string) => ({ refusal, remarks: [] });
const shown = (value: number): string => String(Number(value.toPrecision(2)));
const percent = (ratio: number): string => `${Number((100 * ratio).toPrecision(2))} %`;
