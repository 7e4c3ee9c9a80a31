/**
 * Least-squares fit of Terzaghi's theory, with initial and secondary compression, to the readings of an increment.
 *
 * A table over the rate finds every minimum (search.ts); from the best one the Levenberg-Marquardt engine goes to the
 * bottom (descent.ts). A reading is wrong if the fit is much better without it (wrong-readings.ts); the time zero is
 * wrong if the fit is much better with the zero free. The interval of cv ends where the residual sum has risen by the
 * amount that Student's t allows (interval.ts).
 */
import { say, digits, type Message } from "../../message";
import { given, notApplicable, type Outcome } from "../../outcome";
import { bottom, descentOf, parameterCount, valleys } from "./descent";
import { allowedRise, rateInterval } from "./interval";
import { curveAt, type Curve } from "./model";
import type { CleanReadings } from "../readings";
import { CREEP_SPREAD } from "./linear";
import { tableOf, type Trial } from "./search";
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

export function fitTheory(clean: CleanReadings): Outcome<TheoryFit> {
  const { series, step, travel } = clean;
  const { times, readings, rows } = series;
  const n = times.length;
  if (n < FEWEST_READINGS)
    return notApplicable(
      n === 1
        ? say`${FEWEST_READINGS} readings at different times are needed; there is ${n}`
        : say`${FEWEST_READINGS} readings at different times are needed; there are ${n}`,
    );
  if (!(travel > 0)) return notApplicable(say`all readings are the same: there is no movement to reduce`);

  const remarks: Message[] = [];
  const weights = Float64Array.from(series.weights);
  const rounding = (step * step) / 12;
  const table = tableOf(series);
  const descent = descentOf(table);
  /** The weight of the lean on ordinary creep: the noise over the spread of creep, squared. */
  const leanOf = (variance: number, primary: number) => variance / (CREEP_SPREAD * (Math.abs(primary) || travel)) ** 2;
  let lean = leanOf(Math.max(rounding, (2e-4 * travel) ** 2), travel);
  const residual = (curve: Curve, i: number, shift = 0) =>
    nth(readings, i) - curveAt(curve, Math.max(nth(times, i) + shift, 0));
  const residualSum = (curve: Curve, shift = 0) =>
    weights.reduce((sum, w, i) => (w ? sum + w * residual(curve, i, shift) ** 2 : sum), 0);

  const judged = wrongReadings(series, descent, weights, lean, rounding);
  let best: Trial = judged.best;
  const leftOut = judged.wrong.map(({ index }) => index);
  for (const { index, off } of judged.wrong) {
    weights[index] = 0;
    remarks.push(
      say`${nth(rows, index)} is left out as a wrong reading: ${digits(nth(readings, index), 3)} lies ${digits(Math.abs(off), 3)} off the curve of the other readings`,
    );
  }

  const used = n - leftOut.length;
  const varianceOf = (trial: Trial, shift = 0, parameters = parameterCount(trial)) =>
    Math.max(residualSum(trial, shift) / Math.max(used - parameters, 1), rounding);
  const residuals = times.map((_, i) => residual(best, i)).filter((_, i) => weights[i]);
  lean = leanOf(Math.max(Math.min(varianceOf(best), roughness(residuals)), rounding), best.primary);
  const [deepest, ...others] = valleys(descent, weights, lean);
  if (deepest) best = bottom(descent, weights, lean, deepest);

  let timeZero = 0;
  let parameters = parameterCount(best);
  if (used >= READINGS_TO_JUDGE_ZERO) {
    const total = weights.reduce((a, b) => a + b, 0);
    const timeAt = (share: number) => nth(times, Math.floor(share * n));
    const late = HIDDEN_READINGS.map((share) => -LATE_START * timeAt(share));
    const starts = best.cost < total * (READINGS_FOLLOW * best.primary) ** 2 ? [0] : [0, ...late];
    const from = best;
    const freed = starts
      .map((start) => descent.polish(weights, from, lean, start))
      .reduce((a, b) => (b.cost < a.cost ? b : a));
    const F = (best.cost - freed.cost) / (freed.cost / (used - parameters - 1) + rounding);
    const gain = (best.cost - freed.cost) / total;
    const matters = gain > (TIME_ZERO_SHARE * best.primary) ** 2;
    if (F > TIME_ZERO_F && matters && Math.abs(freed.shift) < MOST_TIME_ZERO * timeAt(FIFTH)) {
      best = freed;
      timeZero = freed.shift;
      parameters++;
      remarks.push(
        timeZero > 0
          ? say`the readings fit better if the load came ${digits(timeZero * 60, 3)} s before the clock was started: check the time zero; the fit allows for it, the constructions do not`
          : say`the readings fit better if the load came ${digits(-timeZero * 60, 3)} s after the clock was started: check the time zero; the fit allows for it, the constructions do not`,
      );
    }
  }

  const variance = varianceOf(best, timeZero, parameters);
  const freedom = Math.max(used - parameters, 1);
  const weighted = times
    .map((_, i) => Math.sqrt(nth(weights, i)) * residual(best, i, timeZero))
    .filter((_, i) => weights[i]);
  const rise = allowedRise(weighted, variance, freedom);
  const other = others.find(
    ({ cost, rate }) => cost - best.cost < rise && Math.abs(Math.log(rate / best.rate)) > Math.log(OTHER_ANSWER),
  );
  if (other)
    remarks.push(
      say`the readings fit a cv ${digits(other.rate / best.rate, 3)} times this one nearly as well: do not rely on either`,
    );
  const [low, high] = rateInterval(table, weights, best, lean, timeZero, rise);
  return given(
    {
      rate: best.rate,
      d0: best.d0,
      primary: best.primary,
      tail: best.tail,
      sharpness: best.sharpness,
      d100: best.d0 + best.primary,
      rateLow: low,
      rateHigh: high,
      misfit: Math.sqrt(residualSum(best, timeZero) / weights.reduce((a, b) => a + b, 0)),
      noise: Math.sqrt(variance),
      scatter: Math.sqrt(
        Math.max(roughness(times.map((_, i) => residual(best, i, timeZero)).filter((_, i) => weights[i])), rounding),
      ),
      timeZero,
      ...(other ? { otherRate: other.rate } : {}),
      leftOut,
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
