/**
 * Checks whether a reading that a person is about to write lies off the curve of the earlier readings, because it was
 * misread or mistyped.
 */
import { say, type Message } from "../message";
import { figure } from "../outcome";
import { firstOf, lastOf } from "../numeric/lists";
import { levelShown } from "./level-decimals";
import { curveAt } from "./fit/model";
import type { Increment } from "./reduce";

/**
 * The allowed distance of a reading from the fitted curve, as a share of the movement so far. Common practice, no
 * source.
 */
const OFF_FIT = 0.15;
/**
 * The distance that is ignored, as a multiple of the steps of the instrument, and as a multiple of the noise of the
 * readings.
 */
const STEPS = 10;
const NOISES = 8;
/** Without a fit: the allowed movement backwards, as a share of the movement so far. */
const BACK = 0.15;
/**
 * Without a fit: the allowed multiple of the movement that follows the root of time. After an early delay, readings run
 * ahead of it.
 */
const AHEAD = 3;

/**
 * The lowest and the highest reading that a person would expect at a time; undefined if there are fewer than two
 * readings.
 */
function expected(
  { cleaned, theory, jump }: Increment,
  time: number,
): readonly [low: number, high: number] | undefined {
  if (!cleaned.ok) return undefined;
  const { series, zeroReading, step, travel } = jump?.clean ?? cleaned.value;
  const { times, readings } = series;
  if (readings.length + Number(zeroReading !== undefined) < 2) return undefined;
  if (theory.ok) {
    const middle = curveAt(theory.value, time + theory.value.timeZero) + (jump && time >= jump.time ? jump.by : 0);
    const slack = Math.max(OFF_FIT * travel, STEPS * step, NOISES * theory.value.noise);
    return [middle - slack, middle + slack];
  }
  const last = lastOf(readings);
  const moved = last - (zeroReading ?? firstOf(readings));
  const ahead = (AHEAD * Math.sqrt(Math.max(time / lastOf(times), 1)) - 1) * moved;
  const ends = [last - BACK * moved, last + ahead];
  return [Math.min(...ends) - STEPS * step, Math.max(...ends) + STEPS * step];
}

/**
 * The question to ask before a reading is written, from the increment so far, the time in minutes and the reading in the unit of its
 * readings. Undefined if the reading follows the others, or if there are too few of them.
 * @example offCurve(load, 2880, 0.2125) // undefined
 * @example offCurve(load, 2880, 0.2521) // "the reading 0.2521 lies off the curve: at 2880 min about 0.207 to 0.2222 is expected; check it"
 */
export function offCurve(increment: Increment, time: number, reading: number): Message | undefined {
  const range = expected(increment, time);
  if (!range || (reading >= range[0] && reading <= range[1])) return undefined;
  const [low, high] = range;
  // A range of what is expected has no more decimals than the readings themselves.
  const shownStep = increment.cleaned.ok ? 10 * increment.cleaned.value.step : 0;
  return say`the reading ${figure(reading)} lies off the curve: at ${figure(time)} min about ${levelShown(low, shownStep)} to ${levelShown(high, shownStep)} is expected; check it`;
}
