/**
 * Finds a dial that was reset, touched or moved to another range while a load stood: the readings before and after follow
 * one curve, but for a jump between two of them.
 */
import { digits, say, type Message } from "../message";
import { nth } from "../numeric/lists";
import type { Outcome } from "../outcome";
import { fitTheory, type TheoryFit } from "./fit/theory-fit";
import { rowWithTime, type CleanReadings } from "./readings";

/** A jump is looked for if the readings miss theory by more than this share of their travel. */
const LOOK = 0.03;
/** Readings on each side of the jump: with fewer, a wrong reading explains as much. */
const ON_EACH_SIDE = 3;
/** A longer series is averaged in steps of log time, and its steps hide where the jump lies. */
const MOST_POINTS = 40;
/** Without the jump, the misfit falls to this share, and below FOLLOWS of primary. */
const FALLS_TO = 0.2;
const FOLLOWS = 0.02;
/** A smaller jump, as a share of primary, is not told from noise. */
const SMALLEST = 0.1;

interface Jump {
  /** The index of the first reading after the jump. */
  readonly index: number;
  readonly by: number;
  readonly fit: TheoryFit;
}

/** The fit without a jump of a given size. */
function without(clean: CleanReadings, index: number, by: number): Outcome<TheoryFit> {
  const readings = clean.series.readings.map((reading, i) => (i < index ? reading : reading - by));
  const travel = Math.max(...readings) - Math.min(...readings);
  return fitTheory({ ...clean, series: { ...clean.series, readings }, travel });
}

/** The jump before a reading: its size follows from the movement between the readings beside it. */
function jumpAt(clean: CleanReadings, index: number): Jump[] {
  const { readings } = clean.series;
  const moved = (i: number): number => nth(readings, i) - nth(readings, i - 1);
  const by = moved(index) - (moved(index - 1) + moved(index + 1)) / 2;
  const found = without(clean, index, by);
  return found.ok ? [{ index, by, fit: found.value }] : [];
}

/** The jump without which the readings follow theory; undefined if there is none. */
function jumpIn(clean: CleanReadings, fit: TheoryFit): Jump | undefined {
  const { readings } = clean.series;
  const last = readings.length - ON_EACH_SIDE;
  if (readings.length > MOST_POINTS || last < ON_EACH_SIDE || fit.misfit < LOOK * clean.travel) return undefined;
  const places = Array.from({ length: last - ON_EACH_SIDE + 1 }, (_, i) => ON_EACH_SIDE + i);
  const [best] = places.flatMap((index) => jumpAt(clean, index)).sort((a, b) => a.fit.misfit - b.fit.misfit);
  if (!best) return undefined;
  const primary = Math.abs(best.fit.primary);
  const follows = best.fit.misfit < FALLS_TO * fit.misfit && best.fit.misfit < FOLLOWS * primary;
  return follows && best.fit.leftOut.length === 0 && Math.abs(best.by) > SMALLEST * primary ? best : undefined;
}

/** A dial that jumped while the load stood. */
export interface DialJump {
  /** What the remark on the load says, and every other place that speaks of the jump. */
  readonly said: Message;
  /** The time of the first reading after the jump, minutes. */
  readonly time: number;
}

/** The jump of the dial within the load; undefined if the dial did not jump. */
export function dialJump(clean: CleanReadings, fit: TheoryFit): DialJump | undefined {
  const jump = jumpIn(clean, fit);
  if (!jump) return undefined;
  const said = say`the readings jump by ${digits(jump.by, 3)} at ${rowWithTime(clean.series, jump.index)}, and follow one curve without the jump: was the dial reset or touched? The deformation of this load and of every later load contains the jump`;
  return { said, time: nth(clean.series.times, jump.index) };
}
