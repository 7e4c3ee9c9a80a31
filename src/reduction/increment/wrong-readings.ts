/**
 * Finds wrong readings (a misread dial, a slammed door, a spike of the logger): the fit to theory is much better
 * without them.
 */
import { lowest, parameterCount, type Descent } from "./fit/descent";
import { curveAt, type Column } from "./fit/model";
import { mostDoubtful, type Trial } from "./fit/search";
import type { Series } from "./readings";

export interface WrongReading {
  /** Index into the series. */
  readonly index: number;
  /** Distance from the curve of the other readings, with its sign, in the reading unit. */
  readonly off: number;
}

/**
 * A reading is wrong if leaving it out lowers the residual sum by this F, and it lies off the curve by more than
 * WRONG_SHARE of primary.
 */
const WRONG_F = 60;
const WRONG_SHARE = 0.05;
const FEWEST_TO_JUDGE = 8;
/** At most this many wrong readings, or one in ONE_IN of a long series. */
const MOST_WRONG = 2;
const ONE_IN = 15;

/**
 * Leaves out the most doubtful reading, then the next, as long as enough remain. The answer is the longest such list
 * whose last reading is clearly wrong and whose readings all lie off the curve. Neighbours that lie off to the same
 * side belong to the curve and are not wrong. `rounding` is the variance of a step of the instrument.
 */
export function wrongReadings(
  { times, readings }: Series,
  descent: Descent,
  weights: Column,
  lean: number,
  rounding: number,
): { wrong: WrongReading[]; best: Trial } {
  const n = times.length;
  const off = (trial: Trial, i: number) => (readings[i] ?? NaN) - curveAt(trial, times[i] ?? NaN);
  let trial = lowest(descent, weights, lean);
  let found: { wrong: WrongReading[]; best: Trial } = { wrong: [], best: trial };
  const left = Float64Array.from(weights);
  const out: number[] = [];
  while (out.length < Math.max(MOST_WRONG, Math.floor(n / ONE_IN)) && n - out.length >= FEWEST_TO_JUDGE) {
    const worst = times.reduce((most, _, i) => (left[i] ? Math.max(most, Math.abs(off(trial, i))) : most), 0);
    if (worst < 0.5 * WRONG_SHARE * Math.abs(trial.primary)) break;
    const index = mostDoubtful(descent.table, left, lean);
    left[index] = 0;
    out.push(index);
    const without = lowest(descent, left, lean);
    const freedom = n - out.length - parameterCount(without);
    const F = (trial.cost - without.cost) / (without.cost / freedom + rounding);
    trial = without;
    const wrong = out.map((i) => ({ index: i, off: off(trial, i) }));
    const standOff = wrong.every((reading) => Math.abs(reading.off) > WRONG_SHARE * Math.abs(trial.primary));
    const neighbours = wrong.some((a) => wrong.some((b) => b.index === a.index + 1 && a.off * b.off > 0));
    if (F > WRONG_F && standOff && !neighbours) found = { wrong, best: trial };
  }
  return found;
}
