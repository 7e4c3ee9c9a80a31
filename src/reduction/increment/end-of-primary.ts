/**
 * The end of primary by a construction on the fitted curve, which goes on beyond the last reading. It draws on the
 * curve the lines that constructions/log-time.ts and root-time.ts draw through readings, so that the predicted t100 and
 * the t100 of the finished record mean the same.
 *
 * Log time: t100 is where the steepest tangent meets the line of the tail; without creep that is at T = 1.10135. Root
 * time: d100 lies a ninth beyond d90; t100 is where the curve reaches d100. The construction itself names no t100, and
 * the curve is flat there: about T = 2.6 without creep, T = 1.5 to 2 with the creep of an ordinary clay.
 */
import { straightLine } from "../numeric/straight-line";
import { LINE_FACTOR } from "./cv";
import { creep, creepSlope, curveAt, type Curve } from "./fit/model";
import { T_INFLECTION } from "./signals";
import { consolidationRate, degreeOfConsolidation } from "./fit/terzaghi";

export const END_RULES = ["log time", "root time"] as const;
export type EndRule = (typeof END_RULES)[number];

/**
 * Readings, and minutes since loading. t50 and t90 are where the curve has gone 50 and 90 % of the way from d0 to d100.
 */
export interface EndOfPrimary {
  readonly d0: number;
  readonly d100: number;
  readonly t50: number;
  readonly t90: number;
  readonly t100: number;
}

type Lines = Pick<EndOfPrimary, "d0" | "d100" | "t100">;

/** Undefined where the curve has no part clearly steeper than its tail, or the lines do not meet on the curve. */
export function endOfPrimary(rule: EndRule, curve: Curve): EndOfPrimary | undefined {
  const lines = linesOn(rule, curve);
  if (!lines) return undefined;
  const { d0, d100 } = lines;
  const t50 = timeOf(curve, d0 + 0.5 * (d100 - d0));
  const t90 = timeOf(curve, d0 + 0.9 * (d100 - d0));
  return t50 === undefined || t90 === undefined ? undefined : { ...lines, t50, t90 };
}

/** t100 alone, without the other times: endRange asks for it on many curves. */
export const endTime = (rule: EndRule, curve: Curve): number | undefined => linesOn(rule, curve)?.t100;

const linesOn = (rule: EndRule, curve: Curve): Lines | undefined =>
  rule === "log time" ? byLogTime(curve) : byRootTime(curve);

/**
 * Points where the steepest tangent is sought: around the inflection of theory, in steps of 0.02 log cycles. U at each,
 * and dU / d log10 T.
 */
const TANGENT_STEPS = 15;
const TANGENTS = Array.from({ length: 2 * TANGENT_STEPS + 1 }, (_, k) => {
  const T = T_INFLECTION * 10 ** (0.02 * (k - TANGENT_STEPS));
  return { T, U: degreeOfConsolidation(T), slope: T * consolidationRate(T) * Math.LN10 };
});
/**
 * Below this ratio of the steepest slope to the slope of the tail there is no inflection; the limit that FIT_LIMITS in
 * signals.ts has too.
 */
const LEAST_STEEPNESS = 1.3;

/** Calculated in shares of primary and in time factors, which do not depend on the rate. */
function byLogTime({ rate, d0, primary, tail, onset }: Curve): Lines | undefined {
  const share = tail / primary;
  let steepest = { T: 1, U: 0, slope: 0 };
  for (const { T, U, slope } of TANGENTS) {
    const steep = slope + share * creepSlope(onset, T);
    if (steep > steepest.slope) steepest = { T, U: U + share * creep(onset, T), slope: steep };
  }
  if (!(steepest.slope > LEAST_STEEPNESS * share)) return undefined;
  const tailAt = (T: number) => 1 + share * Math.log10(T / onset.begins);
  const T100 = steepest.T * 10 ** ((tailAt(steepest.T) - steepest.U) / (steepest.slope - share));
  return { d0, d100: d0 + primary * tailAt(T100), t100: T100 / rate };
}

/** Time factor at U = 60 %, where the straight part on root time ends. */
const STRAIGHT_T = 0.2864;
const STRAIGHT_POINTS = 20;

function byRootTime(curve: Curve): Lines | undefined {
  const end = Math.sqrt(STRAIGHT_T / curve.rate);
  const roots = Array.from({ length: STRAIGHT_POINTS }, (_, i) => (end * (i + 1)) / STRAIGHT_POINTS);
  const { slope, intercept: d0 } = straightLine(roots, roots.map((root) => curveAt(curve, root * root))); // prettier-ignore
  const sense = Math.sign(curve.primary);
  const t90 = firstTime(curve, STRAIGHT_T, (t, d) => sense * (d - d0 - (slope / LINE_FACTOR) * Math.sqrt(t)) < 0);
  if (t90 === undefined) return undefined;
  const d100 = d0 + (curveAt(curve, t90) - d0) / 0.9;
  const t100 = timeOf(curve, d100);
  return t100 === undefined ? undefined : { d0, d100, t100 };
}

/** The time at which the curve reaches a reading; undefined where it never does. */
export function timeOf(curve: Curve, reading: number): number | undefined {
  const sense = Math.sign(curve.primary);
  return firstTime(curve, FROM_T, (_, d) => sense * (d - reading) > 0);
}

/** Time factors between which a time is sought. */
const FROM_T = 1e-3;
const TO_T = 100;

/**
 * The earliest time from which `isPast` holds, by bisection of ln t; undefined where it holds at `fromT` already, or
 * never.
 */
function firstTime(curve: Curve, fromT: number, isPast: (t: number, reading: number) => boolean): number | undefined {
  const past = (t: number) => isPast(t, curveAt(curve, t));
  let low = fromT / curve.rate;
  let high = TO_T / curve.rate;
  if (past(low) || !past(high)) return undefined;
  while (high / low > 1 + 1e-7) {
    const middle = Math.sqrt(low * high);
    if (past(middle)) high = middle;
    else low = middle;
  }
  return high;
}
