/**
 * Signals from the readings and the fit that show whether a construction can be trusted, and their limits. A numerical
 * study of increments with known truth (test/study/signals.ts) chose the limits that separate good answers from bad;
 * common practice has similar limits, and there is no other source.
 */
import { say, digits, type Message } from "../message";
import { curveSlope } from "./fit/model";
import { lineOnLogTime, usedReadings, type CleanReadings, type Series } from "./readings";
import { degreeOfConsolidation } from "./fit/terzaghi";
import type { TheoryFit } from "./fit/theory-fit";
import { firstOf, lastOf, nth } from "../numeric/lists";

export interface Signals {
  /** Total movement in steps of the instrument. */
  readonly steps: number;
  /** Primary compression in steps of the instrument. */
  readonly primarySteps: number;
  /** Primary compression over the noise of a reading. */
  readonly clearness: number;
  /** Steepest slope on the log-time plot over the slope of the tail, by the fit. */
  readonly steepness: number;
  /** The steepness by the readings alone, over half log cycles; infinite where the record stops before a tail. */
  readonly bend: number;
  /** Time factor at the last reading. */
  readonly lastT: number;
  /** Degree of consolidation at the first reading. */
  readonly firstU: number;
  /** Readings between 3 and 50 % of primary. */
  readonly early: number;
  /** Misfit to theory over primary. */
  readonly misfit: number;
  /**
   * Misfit over the scatter of a reading about its neighbours: above 1 where several readings in a row lie to one side
   * of theory.
   */
  readonly drift: number;
}

/** T of the steepest slope of U on log T. Calculated from the series. */
export const T_INFLECTION = 0.40418;

export function signalsOf(clean: CleanReadings, fit: TheoryFit): Signals {
  const { times } = clean.series;
  const primary = Math.abs(fit.primary);
  const lastT = fit.rate * lastOf(times);
  const degrees = times.map((t) => degreeOfConsolidation(fit.rate * (t + fit.timeZero)));
  return {
    steps: clean.step ? clean.travel / clean.step : Infinity,
    primarySteps: clean.step ? primary / clean.step : Infinity,
    clearness: fit.noise ? primary / fit.noise : Infinity,
    steepness: fit.tail ? Math.abs(curveSlope(fit, T_INFLECTION / fit.rate) / fit.tail) : Infinity,
    bend: lastT < TAIL_T ? Infinity : bendOf(usedReadings(clean, fit)),
    lastT,
    firstU: firstOf(degrees),
    early: degrees.filter((U) => U >= 0.03 && U <= 0.5).length,
    misfit: fit.misfit / primary,
    drift: fit.scatter ? fit.misfit / fit.scatter : 0,
  };
}

/** A tail of half a log cycle has begun by this T. */
const TAIL_T = 3;
const HALF_CYCLE = 10 ** 0.5;

/** Every shortest run of at least three times that spans at least half a log cycle, as indices. */
export function halfCycleSpans(times: readonly number[]): number[][] {
  const spans: number[][] = [];
  let end = 0;
  for (let start = 0; start < times.length; start++) {
    while (end < times.length && (end < start + 2 || nth(times, end) < nth(times, start) * HALF_CYCLE * (1 - 1e-9)))
      end++;
    if (end === times.length) break;
    spans.push(Array.from({ length: end - start + 1 }, (_, k) => start + k));
  }
  return spans;
}

/** The steepest slope over the last slope on log time, each through readings over at least half a log cycle. */
function bendOf(used: Series): number {
  const slopes = halfCycleSpans(used.times).map((span) => Math.abs(lineOnLogTime(used, span).slope));
  return slopes.length ? Math.max(...slopes) / lastOf(slopes) : Infinity;
}

/** The method refuses beyond the first number, and remarks beyond the second. */
type Limit = readonly [refuse: number, remark: number];

export interface Limits {
  readonly steps: number;
  /** Below this there is a remark. At 40 steps an error of half a step is 5 % of log-time cv, at 20 steps 10 %. */
  readonly primarySteps: number;
  readonly clearness: Limit;
  readonly steepness: Limit;
  readonly bend: Limit;
  readonly lastT: Limit;
  readonly firstU: Limit;
  readonly early: Limit;
}

/**
 * The figures beside each limit: of the curves that no other limit refuses, the share whose cv is off by more than 15
 * %, first where the limit refuses, then where it remarks, then where it says nothing. "-" means that no curve lies
 * there; `early` catches most cases of a late first reading. A limit that refuses good answers stays because its
 * message is true: one reading shows no parabola. Run test/study/signals.ts to see the figures.
 */
export const LOG_TIME_LIMITS: Limits = {
  steps: 10,
  primarySteps: 40,
  clearness: [25, 60], // 66 %, 19 %, 0 %
  steepness: [1.5, 2.2], // 0 %, 0 %, 1 %
  bend: [1.3, 1.7], // 100 %, 0 %, 1 %
  lastT: [1.6, 3], // 76 %, 0 %, 2 %
  firstU: [0.4, 0.3], // -, 0 %, 1 %
  early: [2, 3], // 0 %, 0 %, 1 %
};
export const ROOT_TIME_LIMITS: Limits = {
  steps: 10,
  primarySteps: 40,
  clearness: [25, 60], // 85 %, 40 %, 2 %
  steepness: [1.5, 2.2], // 17 %, 1 %, 4 %
  bend: [1.2, 1.7], // 100 %, 3 %, 4 %
  lastT: [0.85, 0.95], // 100 %, 11 %, 4 %
  firstU: [0.4, 0.3], // -, 3 %, 4 %
  early: [2, 3], // 12 %, 1 %, 4 %
};
export const FIT_LIMITS: Limits = {
  steps: 10,
  primarySteps: 20,
  clearness: [20, 40], // 49 %, 23 %, 0 %
  steepness: [1.3, 1.7], // 48 %, 10 %, 1 %
  bend: [1.1, 1.5], // 100 %, 22 %, 1 %
  lastT: [0.45, 0.9], // 8 %, 1 %, 1 %
  firstU: [0.8, 0.4], // 45 %, 0 %, 1 %
  early: [0, 2], // -, 0 %, 1 %
};
/** The limits without those that a pick lifts: of the end of primary, and of its beginning. */
export const liftedLimits = (limits: Limits, endIsPicked: boolean, beginningIsPicked: boolean): Limits => ({
  ...limits,
  ...(endIsPicked && { steepness: [0, 0], bend: [0, 0], lastT: [0, 0] }),
  ...(beginningIsPicked && { firstU: [1, 1], early: [0, 0] }),
});

/**
 * Above this misfit over primary the readings depart from theory; above MISFIT_ONE_SIDED they do if several in a row
 * lie to one side. In test/study/signals.ts 95 in 100 curves of theory, on dials and loggers, have a misfit below 0.7 %
 * and a drift below 1.4; 95 in 100 have more than 0.8 % and 2.1 if they are exponentials, 1.4 % and 1.9 hyperbolas, 1.4
 * % and 1.4 two stages, 2.5 % stick and slip.
 */
export const MISFIT = 0.012;
const MISFIT_ONE_SIDED = 0.007;
const DRIFT = 1.5;

/** Why a method must refuse, or what a reviewer should look at. `advice` ends a refusal and says what to do instead. */
export function judge(s: Signals, limits: Limits, advice: Message): { refusal?: Message; remarks: Message[] } {
  if (s.steps < limits.steps)
    return refuse(
      say`the whole movement is only ${digits(s.steps, 2)} steps of the instrument: it is lost in the resolution`,
    );
  if (s.clearness < limits.clearness[0])
    return refuse(
      say`primary compression is only ${digits(s.clearness, 2)} times the scatter of the readings: it is lost in the noise`,
    );
  if (s.lastT < limits.lastT[0])
    return refuse(
      say`the readings stop at about ${percent(degreeOfConsolidation(s.lastT))} of primary compression: not finished enough for this method; ${advice}`,
    );
  if (s.steepness < limits.steepness[0] || s.bend < limits.bend[0])
    return refuse(say`no inflection in the readings: the curve is nowhere clearly steeper than its tail; ${advice}`);
  if (s.firstU > limits.firstU[0])
    return refuse(
      say`about ${percent(s.firstU)} of primary compression was over before the first reading: the beginning cannot be found; read earlier, with a logger if need be`,
    );
  if (s.early < limits.early[0])
    return refuse(
      say`only ${s.early} of the readings lie in the first half of primary compression: ${limits.early[0]} are needed; read earlier`,
    );

  const remarks: Message[] = [];
  if (s.primarySteps < limits.primarySteps)
    remarks.push(
      say`primary compression is only ${digits(s.primarySteps, 2)} steps of the instrument: cv is uncertain`,
    );
  if (s.clearness < limits.clearness[1])
    remarks.push(
      say`primary compression is only ${digits(s.clearness, 2)} times the scatter of the readings: cv is uncertain`,
    );
  if (s.steepness < limits.steepness[1] || s.bend < limits.bend[1])
    remarks.push(
      say`the tail is nearly as steep as the primary part (much secondary compression): the end of primary is uncertain`,
    );
  if (s.lastT < limits.lastT[1])
    remarks.push(
      say`the readings stop soon after (or before) the end of primary (T = ${digits(s.lastT, 2)}): the end of primary is uncertain`,
    );
  if (s.firstU > limits.firstU[1])
    remarks.push(
      say`about ${percent(s.firstU)} of primary compression was over before the first reading: d0 is uncertain`,
    );
  if (s.early < limits.early[1]) remarks.push(say`only ${s.early} readings in the first half of primary compression`);
  if (s.misfit > MISFIT)
    remarks.push(say`the readings depart from theory by ${percent(s.misfit)} of primary on average: look at the plot`);
  else if (s.misfit > MISFIT_ONE_SIDED && s.drift > DRIFT)
    remarks.push(
      say`the readings depart from theory by ${percent(s.misfit)} of primary on average, several in a row to the same side: look at the plot`,
    );
  return { remarks };
}

const refuse = (refusal: Message) => ({ refusal, remarks: [] });
const percent = (ratio: number): Message => say`${digits(100 * ratio, 2)} %`;
