/**
 * Finds a dial that was reset, touched or moved to another range while a load stood: the readings before and after follow
 * one curve, but for a jump between two of them.
 */
import { digits, say, type Message } from "../message";
import { nth } from "../numeric/lists";
import { possibleJumps, type PossibleJump } from "./fit/jump-search";
import { tableOf } from "./fit/search";
import { fitTheory, type TheoryFit } from "./fit/theory-fit";
import { rowWithTime } from "./cleaning/row-words";
import type { CleanReadings } from "./readings";

/** A jump is looked for if the readings miss theory by more than this share of their travel, or the fit finds the time zero off. */
const LOOK = 0.004;
/** Readings on each side of the jump: with fewer, a wrong reading explains as much. */
const ON_EACH_SIDE = 3;
/** A place is tried if a step there, at one rate of the table, brings the misfit below this share; at most TRIED places are. */
const PROMISES = 0.5;
const TRIED = 3;
/**
 * A jump is believed if without it the misfit falls to this share, below TO_JUMP of the jump and below FOLLOWS of primary, and
 * the residual sum falls by this F. No source: the limits keep jumps out of every made curve that has none
 * (test/reduction/increment/dial-jump.test.ts).
 */
const FALLS_TO = 1 / 3;
const TO_JUMP = 0.1;
const FOLLOWS = 0.02;
const JUMP_F = 60;
/** A smaller jump, as a share of primary, is not told from noise. */
const SMALLEST = 0.05;

interface Jump {
  /** The index of the first reading after the jump. */
  readonly index: number;
  readonly by: number;
  /** The readings with the jump taken off those after it, and their fit. */
  readonly clean: CleanReadings;
  readonly fit: TheoryFit;
}

/** The jump before a reading, and the fit without it; none if that fit needs another time zero, or leaves a reading out. */
function jumpAt(clean: CleanReadings, { index, by }: PossibleJump): Jump[] {
  const readings = clean.series.readings.map((reading, i) => (i < index ? reading : reading - by));
  const travel = Math.max(...readings) - Math.min(...readings);
  const without = { ...clean, series: { ...clean.series, readings }, travel };
  const found = fitTheory(without);
  return found.ok && !found.value.timeZero && !found.value.leftOut.length
    ? [{ index, by, clean: without, fit: found.value }]
    : [];
}

/** The jump without which the readings follow theory; undefined if there is none. */
function jumpIn(clean: CleanReadings, fit: TheoryFit): Jump | undefined {
  const { series } = clean;
  if (series.times.length < 2 * ON_EACH_SIDE + 2 || (fit.misfit < LOOK * clean.travel && !fit.timeZero))
    return undefined;
  const weights = Float64Array.from(series.weights);
  const promising = (PROMISES * fit.misfit) ** 2 * weights.reduce((sum, weight) => sum + weight, 0);
  const [best] = possibleJumps(tableOf(series), weights, ON_EACH_SIDE)
    .slice(0, TRIED)
    .filter(({ cost }) => cost < promising)
    .flatMap((jump) => jumpAt(clean, jump))
    .sort((one, other) => one.fit.misfit - other.fit.misfit);
  if (!best) return undefined;
  const { misfit, primary, noise } = best.fit;
  const F = (series.times.length * (fit.misfit ** 2 - misfit ** 2)) / noise ** 2;
  const allowed = Math.min(FALLS_TO * fit.misfit, TO_JUMP * Math.abs(best.by), FOLLOWS * Math.abs(primary));
  return F > JUMP_F && misfit < allowed && Math.abs(best.by) > SMALLEST * Math.abs(primary) ? best : undefined;
}

/** A dial that jumped while the load stood. */
export interface DialJump {
  /** What the remark on the load says, and every other place that speaks of the jump. */
  readonly said: Message;
  /** The time of the first reading after the jump, minutes. */
  readonly time: number;
  /** The size of the jump, with its sign, in the reading unit. */
  readonly by: number;
  /**
   * The readings before the jump, and those after it less the jump, as a person moves them back on the plot: the fit and the
   * constructions use them. Their levels stand on the dial as it was before the jump. The readings of the record stay.
   */
  readonly clean: CleanReadings;
  /** The fit to these. */
  readonly fit: TheoryFit;
}

/** The remark on every result that is read off the readings less the jump. */
export const JUMP_LEFT_OUT = say`the fit and the constructions leave the jump out: d0 to d100 are readings of the dial before it`;

/** The jump of the dial within the load, and the readings without it; undefined if the dial did not jump. */
export function dialJump(readings: CleanReadings, first: TheoryFit): DialJump | undefined {
  const found = jumpIn(readings, first);
  if (!found) return undefined;
  const { index, by, clean, fit } = found;
  const said = say`the readings jump by ${digits(by, 3)} at ${rowWithTime(clean.series, index)}, and follow one curve without the jump: was the dial reset or touched? The deformation at the end of this load and of every later load contains the jump`;
  return { said, time: nth(clean.series.times, index), by, clean, fit };
}
