/**
 * d0 of the log-time construction: early movement grows with the square root of time, so it doubles from t to 4t.
 *
 * Aided: least squares of d on sqrt t, which satisfies every 4:1 pair at once. Drawn, or where a pair is picked: one
 * pair.
 */
import { say, digits, type Message } from "../../message";
import { levelShown } from "../level-decimals";
import { badInput, given, type Outcome } from "../../outcome";
import { disturbedRemark, lineOf, straightBeginning } from "./beginning";
import type { Picks } from "./picks";
import { logTimeRefuses } from "./refusals";
import type { Series } from "../readings";
import { shareOf } from "../share";
import type { ReadingCurve } from "./smooth-curve";
import { degreeOfConsolidation } from "../fit/terzaghi";
import type { TheoryFit } from "../fit/theory-fit";
import { firstOf, lastOf, nth } from "../../numeric/lists";

/** The parabola d0 + root sqrt(t), and the span of times in which it holds. */
export interface Parabola {
  readonly d0: number;
  readonly root: number;
  readonly from: number;
  readonly to: number;
}

/**
 * A 4:1 pair: a time, four times that time, and the readings at both. d0 lies before the first reading by the distance
 * from the first to the second.
 */
export interface Pair {
  readonly time: number;
  readonly reading: number;
  readonly fourTimes: number;
  readonly readingAtFour: number;
}

/**
 * The parabola departs from theory by 0.05 % of primary at most while U is below PARABOLA_U, and by 0.4 % below
 * MOST_PARABOLA_U.
 */
const PARABOLA_U = 0.5;
const MOST_PARABOLA_U = 0.6;
/** Two readings are a pair if the later time is four times the earlier time, to within this share. */
const FOUR_TO_ONE = 0.005;
/**
 * d0 may differ from pair to pair by this share of primary, or by PAIRS_STEPS steps of the instrument, without a
 * remark: rounding alone makes three steps.
 */
const PAIRS_SHARE = 0.03;
const PAIRS_STEPS = 3;
/**
 * The pairs of a dense record are averaged to this many, as many as a hand schedule gives, so that noise does not cause
 * the remark.
 */
const MOST_PAIRS = 5;

/**
 * The least-squares parabola through the readings below U = 50 %, without the disturbed first readings; at least two.
 * Adds a remark where single pairs disagree.
 */
export function earlyParabola(used: Series, fit: TheoryFit, step: number, remarks: Message[]): Parabola {
  const { times, readings } = used;
  const past = times.findIndex((t) => degreeOfConsolidation(fit.rate * t) > PARABOLA_U);
  const beginning = straightBeginning(used, fit);
  const start = beginning && past - beginning.start >= 2 ? beginning.start : 0;
  const end = Math.max(past < 0 ? times.length : past, 2);
  const roots = times.slice(start, end).map(Math.sqrt);
  const early = readings.slice(start, end);
  const line = lineOf(used, start, end);
  const share = shareOf(step, fit.primary);
  if (beginning && start) remarks.push(...disturbedRemark(used, beginning, share));
  const pairs = averaged(pairsOf(roots, early));
  const [least, most] = [Math.min(...pairs), Math.max(...pairs)];
  if (pairs.length > 1 && most - least > Math.max(PAIRS_SHARE * Math.abs(fit.primary), PAIRS_STEPS * step))
    remarks.push(
      say`the 4:1 pairs of the early parabola give d0 from ${levelShown(least, step)} to ${levelShown(most, step)}, ${share(most - least)} apart: bedding, slow loading or a late start of the clock`,
    );
  return { d0: line.intercept, root: line.slope, from: nth(times, start), to: nth(times, end - 1) };
}

/**
 * d0 from the pair of every reading whose fourfold time lies within the readings given, interpolated linearly on sqrt
 * t.
 */
function pairsOf(roots: readonly number[], readings: readonly number[]): number[] {
  const pairs: number[] = [];
  for (let i = 0, j = 0; i < roots.length; i++) {
    const root = 2 * nth(roots, i);
    while (j < roots.length && nth(roots, j) < root * (1 - 1e-9)) j++;
    if (j === roots.length) break;
    const share = j ? (root - nth(roots, j - 1)) / (nth(roots, j) - nth(roots, j - 1)) : 0;
    pairs.push(2 * nth(readings, i) - (share * nth(readings, j) + (1 - share) * nth(readings, Math.max(j - 1, 0))));
  }
  return pairs;
}

function averaged(pairs: readonly number[]): number[] {
  const size = Math.ceil(pairs.length / MOST_PAIRS);
  const groups = size ? Math.floor(pairs.length / size) : 0;
  return Array.from({ length: groups }, (_, k) => {
    const group = pairs.slice(k * size, (k + 1) * size);
    return group.reduce((a, b) => a + b, 0) / group.length;
  });
}

/** Two points of the parabola that are a 4:1 pair; the second may lie past half of primary. */
export function pairOnParabola({ d0, root, from, to }: Parabola): Pair {
  const time = Math.max(from, Math.min(to / 4, Math.sqrt((from * to) / 4)));
  return {
    time,
    reading: d0 + root * Math.sqrt(time),
    fourTimes: 4 * time,
    readingAtFour: d0 + 2 * root * Math.sqrt(time),
  };
}

/**
 * The picked pair. Without a pick, the earliest undisturbed reading that has a reading at four times its time, before
 * half of primary. Where no reading has one, the earliest reading before half of primary, and the curve through the
 * readings at four times its time.
 */
export function pairOfReadings(
  { times }: Series,
  curve: ReadingCurve,
  fit: TheoryFit,
  from: number,
  picks: Picks,
  remarks: Message[],
): Outcome<Pair> {
  const last = lastOf(times);
  const picked = picks.pair_at;
  if (picked !== undefined && !(picked >= firstOf(times) && 4 * picked <= last))
    return badInput(
      say`the picked 4:1 pair at ${picked} min and four times it must lie within the readings (${digits(firstOf(times), 4)} to ${digits(last, 4)} min)`,
    );
  const before = (U: number) => times.filter((t) => t >= from && degreeOfConsolidation(4 * fit.rate * t) <= U);
  const isPair = (t: number) => times.some((other) => Math.abs(other / (4 * t) - 1) <= FOUR_TO_ONE);
  const candidates = before(PARABOLA_U);
  const time = picked ?? candidates.find(isPair) ?? candidates[0] ?? before(MOST_PARABOLA_U)[0];
  if (time === undefined)
    return logTimeRefuses(
      say`no reading and four times its time lie before half of primary compression; read earlier, or pick d0`,
    );
  const fourTimes = times.find((other) => Math.abs(other / (4 * time) - 1) <= FOUR_TO_ONE) ?? 4 * time;
  const U = degreeOfConsolidation(fit.rate * fourTimes);
  if (U > PARABOLA_U)
    remarks.push(say`the 4:1 pair reaches ${Math.round(100 * U)} % of primary compression: d0 is uncertain`);
  return given({ time, reading: curve.at(time), fourTimes, readingAtFour: curve.at(fourTimes) });
}

/** The parabola through a pair. */
export function parabolaThrough({ time, reading, fourTimes, readingAtFour }: Pair): Parabola {
  const root = (readingAtFour - reading) / (Math.sqrt(fourTimes) - Math.sqrt(time));
  return { d0: reading - root * Math.sqrt(time), root, from: time, to: fourTimes };
}
