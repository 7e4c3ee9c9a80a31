/**
 * The log-of-time construction: d0 from the early parabola, the steepest tangent, the line through the tail, d100 at their
 * crossing, t50 at half way.
 *
 * Sources: Casagrande & Fadum (1940); ASTM D2435 and ISO 17892-5 describe the same construction.
 */
import { say, digits, listed, type Message } from "../../message";
import { levelShown } from "../level-decimals";
import { badInput, given, type Outcome, type Refusal } from "../../outcome";
import { earlyParabola, pairOfReadings, pairOnParabola, parabolaThrough, type Pair, type Parabola } from "./parabola";
import { pickRemarks, type PickName, type Picks } from "./picks";
import type { Procedure } from "./procedure";
import { logTimeRefuses, TRY_ROOT_TIME } from "./refusals";
import { usedReadings, type CleanReadings } from "../readings";
import { shareOf } from "../share";
import { judge, liftedLimits, LOG_TIME_LIMITS, type Signals } from "../signals";
import { curveThroughReadings, smoothCurve } from "./smooth-curve";
import { cyclesPast, noSlope, tailLine, type Tail } from "./tail";
import { steepestTangent, tangentOfReadings, type Tangent } from "./tangent";
import type { TheoryFit } from "../fit/theory-fit";
import { firstOf, lastOf } from "../../numeric/lists";

export interface LogTime {
  readonly d0: number;
  readonly d50: number;
  readonly d100: number;
  /** Minutes. */
  readonly t50: number;
  readonly t100: number;
  /** Reading per log cycle of time, negative where readings fall; absent where too few readings past t100 show it. */
  readonly tailSlope?: number;
  /** Why there is no tail slope. */
  readonly noTailSlope?: Message;
  readonly tangent: Tangent;
  /** The line through the tail, as drawn. */
  readonly tail: Tail;
  readonly parabola: Parabola;
  /** Drawn procedure: the pair that gives d0. Aided: two points of the parabola. */
  readonly pair: Pair;
}

/** The picks that the construction uses; LINE_PICKS are the picks of its two lines. */
const LINE_PICKS: readonly PickName[] = ["tail_from", "tail_to", "tangent_from", "tangent_to"];
const USED_PICKS: readonly PickName[] = ["d0", "d100", "pair_at", ...LINE_PICKS];

/**
 * Refuses a record that gives no d0 or d100 (see signals.ts), and picks that contradict the readings. A pick of d0 or d100
 * lifts the refusals that concern it alone.
 */
export function logTime(
  clean: CleanReadings,
  fit: TheoryFit,
  signals: Signals,
  picks: Picks,
  procedure: Procedure,
): Outcome<LogTime> {
  const limits = liftedLimits(LOG_TIME_LIMITS, picks.d100 !== undefined, picks.d0 !== undefined);
  const { refusal, remarks } = judge(signals, limits, TRY_ROOT_TIME);
  if (refusal) return logTimeRefuses(refusal);

  const drawn = procedure === "drawn";
  const used = usedReadings(clean, fit);
  const { times } = used;
  const first = firstOf(times);
  const last = lastOf(times);
  const smooth = smoothCurve(used, fit);
  const curve = drawn ? curveThroughReadings(used) : smooth;
  const share = shareOf(clean.step, fit.primary);

  const early = earlyParabola(used, fit, clean.step, remarks);
  const byPair = (drawn && picks.d0 === undefined) || picks.pair_at !== undefined;
  const pair = byPair ? pairOfReadings(used, curve, fit, early.from, picks, remarks) : given(pairOnParabola(early));
  if (!pair.ok) return pair;
  const parabola = byPair ? parabolaThrough(pair.value) : early;
  const d0 = picks.d0 ?? parabola.d0;

  const byHand = picks.tangent_from !== undefined || picks.tangent_to !== undefined;
  const tangent =
    drawn || byHand ? tangentOfReadings(used, fit, picks) : given(steepestTangent(smooth, fit, first, last));
  if (!tangent.ok) return tangent;
  const tail = tailLine(clean, used, fit, picks, procedure, share);
  if (!tail.ok) return tail;
  remarks.push(...tail.remarks);
  if (LINE_PICKS.some((name) => picks[name] !== undefined) && tangent.value.to > tail.value.from * (1 + 1e-9))
    remarks.push(
      say`the tangent (${digits(tangent.value.from, 4)} to ${digits(tangent.value.to, 4)} min) and the tail (${digits(tail.value.from, 4)} to ${digits(tail.value.to, 4)} min) overlap: move an end of one of them`,
    );
  const { slope, atOneMinute } = tail.value;

  // t100 is where the tangent meets the tail.
  const { time, reading, slope: steepest } = tangent.value;
  const x100 = (atOneMinute - (reading - steepest * Math.log10(time))) / (steepest - slope);
  const d100 = picks.d100 ?? atOneMinute + slope * x100;
  const t100 = picks.d100 === undefined ? 10 ** x100 : curve.crossing((_, d) => d - d100, first, last);
  if (t100 === undefined)
    return badInput(say`the picked d100 (${d100}) lies outside the readings: pick it within them`);
  const crosses = picks.d100 !== undefined || (t100 > first && t100 < last);
  const runs = (d100 - d0) * Math.sign(fit.primary) > 0;
  const isPicked = (names: readonly PickName[]) => names.some((name) => picks[name] !== undefined);
  if (!crosses && isPicked(LINE_PICKS))
    return badInput(say`the tangent and the tail do not cross within the readings: pick the tangent on the steepest part, or a later tail`) // prettier-ignore
  if (!crosses || (!runs && !isPicked(USED_PICKS)))
    return logTimeRefuses(say`the tangent and the tail do not cross within the readings; ${TRY_ROOT_TIME}`);
  if (!runs) return backward(d0, d100, clean.step);

  const d50 = (d0 + d100) / 2;
  const t50 = curve.crossing((_, d) => d - d50, first, last);
  if (t50 === undefined || t50 <= first)
    return logTimeRefuses(
      say`half of primary compression was over before the first reading (${digits(first, 4)} min); read earlier`,
    );
  const byTail = picks.tail_from !== undefined || picks.tail_to !== undefined;
  const short = noSlope(byTail ? tail.value.cycles : cyclesPast(times, t100));
  if (short) remarks.push(say`${short}; the slope of the tail is not given`);
  else if (!tail.value.own) remarks.push(say`the slope of the tail is that of the fit to theory: it is uncertain`);
  return given(
    {
      d0,
      d50,
      d100,
      t50,
      t100,
      ...(short ? { noTailSlope: short } : { tailSlope: slope }),
      tangent: tangent.value,
      tail: tail.value,
      parabola,
      pair: pair.value,
    },
    [
      ...remarks,
      ...pickRemarks(picks, USED_PICKS),
      ...(drawn ? [drawnRemark(picks, pair.value, tangent.value, tail.value)] : []),
    ],
  );
}

/** What a person needs to draw the same construction by hand: the times of the pair and the spans of the two lines. */
function drawnRemark(picks: Picks, pair: Pair, tangent: Tangent, tail: Tail): Message {
  const marks = [
    ...(picks.d0 === undefined ? [say`4:1 pair at ${digits(pair.time, 4)} and ${digits(pair.fourTimes, 4)} min`] : []),
    ...(picks.d100 === undefined
      ? [
          say`tangent through the readings from ${digits(tangent.from, 4)} to ${digits(tangent.to, 4)} min`,
          say`tail through those from ${digits(tail.from, 4)} to ${digits(tail.to, 4)} min`,
        ]
      : []),
  ];
  return marks.length ? say`log time as drawn: ${listed(marks)}` : say`log time as drawn: by the picks`;
}

/** Refuses picks by which the load would move against its readings. */
const backward = (d0: number, d100: number, step: number): Refusal =>
  badInput(
    say`d0 (${levelShown(d0, step)}) and d100 (${levelShown(d100, step)}) run against the readings: check the picks`,
  );
