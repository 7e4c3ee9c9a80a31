/**
 * Least-squares fit of Terzaghi's theory, with initial and secondary compression, to the readings of an increment.
 *
 * A table over the rate finds every minimum (search.ts); from the best one the Levenberg-Marquardt engine goes to the
 * bottom (descent.ts). A reading is wrong if the fit is much better without it (wrong-readings.ts); the time zero is
 * wrong if the fit is much better with the zero free. The interval of cv ends where the residual sum has risen by the
 * amount that Student's t allows (interval.ts).
 */
import { say, digits, type Message } from "../../message";
import { figure, given, notApplicable, type Outcome } from "../../outcome";
import { bottom, descentOf, parameterCount, valleys, type Descent, type Zeroed, withEarlyCreep } from "./descent";
import { allowedRise, rateInterval } from "./interval";
import { curveAt, type Curve } from "./model";
import { rowWithTime } from "../cleaning/row-words";
import type { CleanReadings, Series } from "../readings";
import { CREEP_SPREAD } from "./linear";
import { tableOf, type Trial } from "./search";
import { T_END_OF_PRIMARY } from "./terzaghi";
import { wrongReadings } from "../wrong-readings";
import { nth } from "../../numeric/lists";

export interface TheoryFit extends Curve {
  readonly d100: number;
  /** 95 % interval of the rate (and so of cv, as ratios). */
  readonly rateLow: number;
  readonly rateHigh: number;
  /** Root of the mean squared residual, reading unit. */
  readonly misfit: number;
  /** Standard deviation of a reading, from the residuals; at least that of rounding. */
  readonly noise: number;
  /**
   * Scatter of a reading about its neighbours, at least that of rounding. A smooth departure from theory does not count
   * as scatter.
   */
  readonly scatter: number;
  /** Minutes by which loading seems to have begun before (+) or after (-) the clock; 0 where the readings do not show it. */
  readonly timeZero: number;
  /** The rate of a second answer that the readings fit nearly as well; absent if there is only one answer. */
  readonly otherRate?: number;
  /** Indices into the series: the readings left out as wrong. */
  readonly leftOut: readonly number[];
}

/** The compression of a load ends at its last reading, also where the fit leaves it out. It begins as a slip does at the head of a sheet. */
export const LAST_LEFT_OUT: Message = say`check whether the last reading was mistyped: the load ends with it`;

export const FEWEST_READINGS = 6;

/**
 * The time zero is off if freeing it lowers the residual sum by this F, and lowers the mean residual by more than
 * TIME_ZERO_SHARE of primary.
 */
const TIME_ZERO_F = 12;
const TIME_ZERO_SHARE = 3e-4;
/**
 * An error of the time zero is not believed beyond MOST_TIME_ZERO of the time that stands a fifth of the way through
 * the record: 0.4 min on the schedule of 0.1, 0.25, 0.5 min to 24 h.
 */
const FIFTH = 0.2;
const MOST_TIME_ZERO = 0.8;
/**
 * The search for the time zero starts from 0, and from LATE_START of the time of the first reading and of the readings
 * a tenth and a fifth of the way through. A load that came after the clock is not found from 0 if first readings were
 * taken before it.
 */
const HIDDEN_READINGS = [0, 0.1, FIFTH];
const LATE_START = 0.9;
/** The search starts from 0 alone, where the mean residual is below this share of primary. */
const READINGS_FOLLOW = 0.003;
const READINGS_TO_JUDGE_ZERO = 10;
/** A second valley that is as deep gets a remark if its rate differs by this ratio. */
const OTHER_ANSWER = 1.35;

/**
 * Distances from the curve of the readings that are not left out (weight 0), for a load that came `shift` minutes before
 * the clock.
 */
const residualsOf = ({ times, readings }: Series, weights: Float64Array, curve: Curve, shift: number): number[] =>
  times.map((time, i) => nth(readings, i) - curveAt(curve, Math.max(time + shift, 0))).filter((_, i) => weights[i]);

const isUsed = (weight: number): boolean => weight > 0;
const sumOf = (weights: Float64Array): number => weights.reduce((a, b) => a + b, 0);

/**
 * The fit with late creep and its time zero free, if the readings show clearly that the load did not come with the clock;
 * `best` is the best fit on the clock, `late` that with late creep.
 */
function withFreeZero(
  descent: Descent,
  weights: Float64Array,
  best: Trial,
  late: Trial,
  lean: number,
  rounding: number,
): Zeroed | undefined {
  const { times } = descent.table;
  const used = weights.filter(isUsed).length;
  if (used < READINGS_TO_JUDGE_ZERO) return undefined;
  const total = sumOf(weights);
  const timeAt = (share: number) => nth(times, Math.floor(share * times.length));
  const hidden = HIDDEN_READINGS.map((share) => -LATE_START * timeAt(share));
  const starts = best.cost < total * (READINGS_FOLLOW * best.primary) ** 2 ? [0] : [0, ...hidden];
  const freed = starts
    .map((start) => descent.polish(weights, late, lean, start))
    .reduce((a, b) => (b.cost < a.cost ? b : a));
  const gain = best.cost - freed.cost;
  const F = gain / (freed.cost / (used - parameterCount(best) - 1) + rounding);
  const matters = gain / total > (TIME_ZERO_SHARE * best.primary) ** 2;
  return F > TIME_ZERO_F && matters && Math.abs(freed.shift) < MOST_TIME_ZERO * timeAt(FIFTH) ? freed : undefined;
}

const zeroRemark = ({ shift }: Zeroed): Message =>
  say`the readings fit better if the load came ${digits(Math.abs(shift) * 60, 2)} s ${shift > 0 ? say`before` : say`after`} the clock was started: check the time zero; the fit allows for it, the constructions do not`;

/** Why readings cannot be fitted; undefined if they can. */
function refusalOf({ series: { times }, travel }: CleanReadings): Message | undefined {
  const n = times.length;
  if (n < FEWEST_READINGS)
    return n === 1
      ? say`${FEWEST_READINGS} readings at different times are needed; there is ${n}`
      : say`${FEWEST_READINGS} readings at different times are needed; there are ${n}`;
  return travel > 0 ? undefined : say`all readings are the same: there is no movement to reduce`;
}

export function fitTheory(clean: CleanReadings): Outcome<TheoryFit> {
  const refusal = refusalOf(clean);
  if (refusal) return notApplicable(refusal);
  const { series, step, travel } = clean;
  const remarks: Message[] = [];
  const weights = Float64Array.from(series.weights);
  const rounding = (step * step) / 12;
  const table = tableOf(series);
  const descent = descentOf(table);
  /** The weight of the lean on ordinary creep: the noise over the spread of creep, squared. */
  const leanOf = (variance: number, primary: number) => variance / (CREEP_SPREAD * (Math.abs(primary) || travel)) ** 2;
  let lean = leanOf(Math.max(rounding, (2e-4 * travel) ** 2), travel);

  const { wrong, best: first } = wrongReadings(series, descent, weights, lean, rounding);
  for (const { index, off } of wrong) {
    weights[index] = 0;
    remarks.push(
      say`${rowWithTime(series, index)} is left out as a wrong reading: ${figure(nth(series.readings, index))} lies ${digits(Math.abs(off), 3)} off the curve of the other readings`,
    );
    if (index === series.times.length - 1) remarks.push(LAST_LEFT_OUT);
  }
  /** The weights of the readings that are used. */
  const used = weights.filter(isUsed);
  const squares = (residuals: readonly number[]) => residuals.reduce((sum, off, i) => sum + nth(used, i) * off ** 2, 0);
  const freedom = (parameters: number) => Math.max(used.length - parameters, 1);
  const varianceOf = (residuals: readonly number[], parameters: number) =>
    Math.max(squares(residuals) / freedom(parameters), rounding);
  const offFirst = residualsOf(series, weights, first, 0);
  const spread = Math.min(varianceOf(offFirst, parameterCount(first)), roughness(offFirst));
  lean = leanOf(Math.max(spread, rounding), first.primary);
  const [deepest, ...others] = valleys(descent, weights, lean);
  const late = deepest ? bottom(descent, weights, lean, deepest) : first;
  const onClock = withEarlyCreep(descent, weights, lean, late);

  const freed = withFreeZero(descent, weights, onClock, late, lean, rounding);
  if (freed) remarks.push(zeroRemark(freed));
  const best = freed ?? onClock;
  const timeZero = freed?.shift ?? 0;
  const parameters = parameterCount(onClock) + (freed ? 1 : 0);

  const residuals = residualsOf(series, weights, best, timeZero);
  const variance = varianceOf(residuals, parameters);
  const weighted = residuals.map((off, i) => Math.sqrt(nth(used, i)) * off);
  const rise = allowedRise(weighted, variance, freedom(parameters));
  const other = others.find(
    ({ cost, rate }) => cost - best.cost < rise && Math.abs(Math.log(rate / best.rate)) > Math.log(OTHER_ANSWER),
  );
  if (other)
    remarks.push(
      say`the readings fit a cv ${digits(other.rate / best.rate, 3)} times this one nearly as well: do not rely on either`,
    );
  const [rateLow, rateHigh] = rateInterval(table, weights, best, lean, timeZero, rise);
  const { rate, d0, primary, tail, onset } = best;
  return given(
    {
      ...{ rate, d0, primary, tail, onset },
      d100: d0 + primary + tail * Math.log10(T_END_OF_PRIMARY / onset.begins),
      ...{ rateLow, rateHigh },
      misfit: Math.sqrt(squares(residuals) / sumOf(used)),
      noise: Math.sqrt(variance),
      scatter: Math.sqrt(Math.max(roughness(residuals), rounding)),
      timeZero,
      ...(other ? { otherRate: other.rate } : {}),
      leftOut: wrong.map(({ index }) => index),
    },
    remarks,
  );
}

/**
 * Variance of a reading, from the distance of each residual to half way between its neighbours; a smooth misfit does
 * not count.
 */
function roughness(residuals: readonly number[]): number {
  let sum = 0;
  for (let i = 1; i < residuals.length - 1; i++)
    sum += (nth(residuals, i) - (nth(residuals, i - 1) + nth(residuals, i + 1)) / 2) ** 2 / 1.5;
  return sum / (residuals.length - 2);
}
