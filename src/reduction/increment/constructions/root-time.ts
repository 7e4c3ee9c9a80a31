/**
 * The root-of-time construction: the straight early part of the curve on sqrt t, its intercept d0, the line with abscissae
 * 1.15 times as large, d90 where that line meets the curve.
 *
 * On exact theory it gives cv 1.5 % high and d100 0.35 % of primary low. The cause is the convention (1.15 for 1.1546,
 * and the curve departs from a straight line by U = 60 %), and is kept.
 *
 * Sources: Taylor (1942, 1948); ASTM D2435 and ISO 17892-5 describe the same construction.
 */
import { say, digits, type Message } from "../../message";
import { badInput, given, type Outcome } from "../../outcome";
import { disturbedRemark, pickedBeginning, straightBeginning } from "./beginning";
import { LINE_FACTOR } from "../cv";
import { pickRemarks, type Picks } from "./picks";
import type { Procedure } from "./procedure";
import { rootTimeRefuses, TRY_LOG_TIME } from "./refusals";
import { usedReadings, type CleanReadings, type Series } from "../readings";
import { shareOf, type Share } from "../share";
import { judge, liftedLimits, ROOT_TIME_LIMITS, type Signals } from "../signals";
import { curveThroughReadings, smoothCurve } from "./smooth-curve";
import type { TheoryFit } from "../fit/theory-fit";
import { firstOf, lastOf, nth } from "../../numeric/lists";

export interface RootTime {
  readonly d0: number;
  readonly d90: number;
  readonly d100: number;
  /** Minutes. */
  readonly t90: number;
  /** The straight part: reading per root minute, and the span of times that it goes through. */
  readonly straight: { readonly slope: number; readonly from: number; readonly to: number };
}

/**
 * Mean departure of the readings from the straight part, over primary: above `none` the method refuses, above `remark`
 * it remarks.
 */
const CROOKED = { none: 0.05, remark: 0.02 };

/**
 * Refuses a record without a straight part or whose readings do not bracket the crossing (see also signals.ts), and picks
 * that contradict the readings. A pick of d0, d90 or the straight part lifts the refusals that concern it alone.
 */
export function rootTime(
  clean: CleanReadings,
  fit: TheoryFit,
  signals: Signals,
  picks: Picks,
  procedure: Procedure,
): Outcome<RootTime> {
  const limits = liftedLimits(ROOT_TIME_LIMITS, picks.d90 !== undefined, picks.d0 !== undefined || byHand(picks));
  const { refusal, remarks } = judge(signals, limits, TRY_LOG_TIME);
  if (refusal) return rootTimeRefuses(refusal);

  const used = usedReadings(clean, fit);
  const drawn = procedure === "drawn";
  const curve = drawn ? curveThroughReadings(used) : smoothCurve(used, fit);
  const first = firstOf(used.times);
  const last = lastOf(used.times);

  const straight = straightPart(used, fit, picks, shareOf(clean.step, fit.primary), remarks);
  if (!straight.ok) return straight;
  const { d0, slope, from, to } = straight.value;

  const onLine = (t: number) => d0 + (slope / LINE_FACTOR) * Math.sqrt(t);
  const picked = picks.d90;
  const t90 =
    picked === undefined
      ? curve.crossing((t, d) => d - onLine(t), to, last)
      : curve.crossing((_, d) => d - picked, first, last);
  if (picked !== undefined && (t90 === undefined || (picked - d0) * fit.primary <= 0))
    return badInput(say`the picked d90 (${picked}) lies outside the readings: pick it within them`);
  if (t90 === undefined || (picked === undefined && t90 <= to * (1 + 1e-9)))
    return rootTimeRefuses(say`the ${LINE_FACTOR} line does not meet the curve within the readings; ${TRY_LOG_TIME}`);
  const d90 = picked ?? onLine(t90);
  return given({ d0, d90, d100: d0 + (d90 - d0) / 0.9, t90, straight: { slope, from, to } }, [
    ...remarks,
    ...pickRemarks(picks, ["d0", "d90", "straight_from", "straight_to"]),
    ...(drawn
      ? [say`root time as drawn: straight part through the readings from ${digits(from, 4)} to ${digits(to, 4)} min`]
      : []),
  ]);
}

const byHand = (picks: Picks): boolean => picks.straight_from !== undefined || picks.straight_to !== undefined;

interface StraightPart {
  readonly d0: number;
  /** Reading per root minute. */
  readonly slope: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The straight part by least squares of d on sqrt t: the readings up to 60 % of primary, without the disturbed first
 * readings, or the picked span; through the picked d0 if there is one.
 */
function straightPart(
  used: Series,
  fit: TheoryFit,
  picks: Picks,
  share: Share,
  remarks: Message[],
): Outcome<StraightPart> {
  const { times, readings, weights } = used;
  const picked = byHand(picks);
  const beginning = picked
    ? pickedBeginning(used, picks.straight_from, picks.straight_to)
    : straightBeginning(used, fit);
  if (!beginning)
    return picked
      ? badInput(say`the picked straight part holds fewer than 2 readings: it needs 2`)
      : rootTimeRefuses(say`fewer than 2 readings in the straight part; read earlier`);
  const { start, end, line } = beginning;
  remarks.push(...disturbedRemark(used, beginning, share));

  const d0 = picks.d0 ?? line.intercept;
  const slope = picks.d0 === undefined ? line.slope : slopeThrough(d0, times, readings, weights, start, end);
  const primary = Math.abs(fit.primary);
  const crooked = Math.sqrt(line.rss / weights.slice(start, end).reduce((a, b) => a + b, 0)) / primary;
  const against = slope * fit.primary <= 0;
  if (against && (picked || picks.d0 !== undefined))
    return badInput(say`the picked straight part runs against the readings: check the picks`);
  if (against || (!picked && crooked > CROOKED.none))
    return rootTimeRefuses(say`there is no straight part at the beginning; ${TRY_LOG_TIME}`);
  if (crooked > CROOKED.remark)
    remarks.push(say`the readings stand off the straight part by ${Math.round(100 * crooked)} % of primary on average`);
  return given({ d0, slope, from: nth(times, start), to: nth(times, end - 1) });
}

/** The slope on sqrt t, by least squares, of a line that starts at d0. */
function slopeThrough(
  d0: number,
  times: readonly number[],
  readings: readonly number[],
  weights: readonly number[],
  start: number,
  end: number,
): number {
  let xx = 0;
  let xy = 0;
  for (let i = start; i < end; i++) {
    xx += nth(weights, i) * nth(times, i);
    xy += nth(weights, i) * Math.sqrt(nth(times, i)) * (nth(readings, i) - d0);
  }
  return xy / xx;
}
