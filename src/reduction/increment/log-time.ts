/**
 * The log-of-time construction: d0 from the early parabola, the steepest tangent, the line through the tail, d100 at their
 * crossing, t50 at half way.
 *
 * Sources: Casagrande & Fadum (1940); ASTM D2435 and ISO 17892-5 describe the same construction.
 */
import { badInput, given, notApplicable, type Outcome } from "../outcome";
import { straightLine } from "../numeric/straight-line";
import { creep } from "./model";
import { pickRemarks, type Picks } from "./picks";
import type { CleanReadings } from "./readings";
import { judge, LOG_TIME_LIMITS, type Limits, type Signals } from "./signals";
import { smoothCurve } from "./smooth-curve";
import { degreeOfConsolidation, T_END_OF_PRIMARY } from "./terzaghi";
import type { TheoryFit } from "./theory-fit";

export interface LogTime {
  readonly d0: number;
  readonly d50: number;
  readonly d100: number;
  /** Minutes. */
  readonly t50: number;
  readonly t100: number;
  /** Reading per log cycle of time, with its sense. */
  readonly tailSlope: number;
  /** The steepest tangent: a point of it and its slope per log cycle. */
  readonly tangent: { readonly time: number; readonly reading: number; readonly slope: number };
  /** The tail: reading at t = 1 min of its line, and the span of the readings that it goes through. */
  readonly tail: { readonly atOneMinute: number; readonly from: number; readonly to: number };
  /** The early parabola d0 + root sqrt(t), and the last time used for it. */
  readonly parabola: { readonly root: number; readonly from: number; readonly to: number };
}

/** The parabola rule is true to 0.05 % of primary while U stays below this. */
const PARABOLA_U = 0.5;
/** Tail readings come later than this many times the end of primary, as a hand takes them; */
const TAIL_FROM = 3;
/** or than this, less the primary that is still to come, where the readings follow theory to a share of primary or of their step. */
const TAIL_FROM_BY_THEORY = 1.6;
const FOLLOWS_SHARE = 0.005;
const FOLLOWS_STEP = 0.4;
/** A tail of its own needs this many log cycles; a shorter one takes its slope from the fit. */
const TAIL_CYCLES = 0.25;

const ADVICE = "try ROOT_TIME";

export function logTime(clean: CleanReadings, fit: TheoryFit, signals: Signals, picks: Picks = {}): Outcome<LogTime> {
  const limits: Limits = {
    ...LOG_TIME_LIMITS,
    ...(picks.d100 !== undefined ? { steepness: [0, 0], bend: [0, 0], lastT: [0, 0] } : {}),
    ...(picks.d0 !== undefined ? { firstU: [1, 1], early: [0, 0] } : {}),
  };
  const { refusal, remarks } = judge(signals, limits, ADVICE);
  if (refusal) return notApplicable(`the log-of-time method does not apply: ${refusal}`);

  const { times, readings } = clean.series;
  const weights = clean.series.weights.map((w, i) => (fit.leftOut.includes(i) ? 0 : w));
  const used = times.map((_, i) => i).filter((i) => weights[i] > 0);
  const curve = smoothCurve(clean.series, weights, fit);
  const first = times[0];
  const last = times[times.length - 1];
  const tp = T_END_OF_PRIMARY / fit.rate;
  const degree = (t: number) => degreeOfConsolidation(fit.rate * t);

  // Early parabola: least squares of d on sqrt t, the 4:1 rule of all pairs at once.
  let early = used.filter((i) => degree(times[i]) <= PARABOLA_U);
  if (early.length < 2) early = used.slice(0, 2);
  const parabola = straightLine(
    early.map((i) => Math.sqrt(times[i])),
    early.map((i) => readings[i]),
    early.map((i) => weights[i]),
  );
  const d0 = picks.d0 ?? parabola.intercept;

  // Steepest tangent, looked for where theory has its own.
  let tangent = { time: first, reading: 0, slope: 0 };
  for (let k = 0; k <= 24; k++) {
    const t = (0.404 / fit.rate) * 10 ** (-0.6 + 0.05 * k);
    if (t < first || t > last) continue;
    const slope = curve.slope(t);
    if (Math.abs(slope) > Math.abs(tangent.slope)) tangent = { time: t, reading: curve.at(t), slope };
  }

  // Tail: readings well after primary, less the primary that is still to come, straightened where creep begins.
  const follows = fit.misfit < Math.max(FOLLOWS_SHARE * Math.abs(fit.primary), FOLLOWS_STEP * clean.step);
  const tailFrom = picks.tail_from ?? (follows ? TAIL_FROM_BY_THEORY : TAIL_FROM) * tp;
  const tailTo = picks.tail_to ?? last;
  const tailed = used.filter((i) => times[i] >= tailFrom && times[i] <= tailTo);
  const byHand = picks.tail_from !== undefined || picks.tail_to !== undefined;
  const settled = (i: number) =>
    byHand
      ? readings[i]
      : readings[i] +
        fit.primary * (1 - degree(times[i])) +
        fit.tail * (Math.log10(times[i] / tp) - (fit.tail ? creep(fit.rate, fit.sharpness, times[i]) : 0));
  const cycles = tailed.length ? Math.log10(times[tailed[tailed.length - 1]] / times[tailed[0]]) : 0;
  let tail: { slope: number; intercept: number };
  let from: number;
  if (tailed.length >= 2 && (cycles >= TAIL_CYCLES || byHand)) {
    tail = straightLine(
      tailed.map((i) => Math.log10(times[i])),
      tailed.map(settled),
      tailed.map((i) => weights[i]),
    );
    from = times[tailed[0]];
  } else {
    if (byHand) return badInput(`the picked tail holds ${tailed.length} readings: at least 2 are needed`);
    const late = used.slice(-2);
    const slope = fit.tail;
    const mean = late.reduce((s, i) => s + settled(i) - slope * Math.log10(times[i]), 0) / late.length;
    tail = { slope, intercept: mean };
    from = times[late[0]];
    if (picks.d100 === undefined)
      remarks.push("the tail is too short to show its slope: the slope is that of the fit to theory");
  }
  if (tail.slope * fit.primary < 0)
    tail = { slope: 0, intercept: tail.intercept + tail.slope * Math.log10(Math.sqrt(from * tailTo)) };

  // t100 where the tangent meets the tail.
  const x100 =
    (tail.intercept - (tangent.reading - tangent.slope * Math.log10(tangent.time))) / (tangent.slope - tail.slope);
  const t100 = 10 ** x100;
  const d100 = picks.d100 ?? tail.intercept + tail.slope * x100;
  if (picks.d100 === undefined && !(t100 > first && t100 < last))
    return notApplicable(
      `the log-of-time method does not apply: the tangent and the tail do not cross within the readings; ${ADVICE}`,
    );
  if (picks.d100 !== undefined) {
    const beyond = (d100 - readings[used[used.length - 1]]) * Math.sign(fit.primary);
    if (beyond > 0)
      return badInput(
        `the picked d100 (${d100}) lies beyond the last reading (${readings[used[used.length - 1]]}): pick it within the readings`,
      );
  }
  if ((d100 - d0) * fit.primary <= 0 && picks.d0 === undefined && picks.d100 === undefined)
    return notApplicable(`the log-of-time method does not apply: no inflection in the readings; ${ADVICE}`);
  if ((d100 - d0) * fit.primary <= 0)
    return badInput(
      `the picked d0 and d100 run against the readings (d0 = ${shown(d0)}, d100 = ${shown(d100)}): check the picks`,
    );

  const d50 = (d0 + d100) / 2;
  const t50 = curve.crossing((_, reading) => reading - d50, first, last);
  if (t50 === undefined || t50 <= first)
    return notApplicable(
      `the log-of-time method does not apply: half of primary compression was over before the first reading (${shown(first)} min); read earlier`,
    );

  return given(
    {
      d0,
      d50,
      d100,
      t50,
      t100,
      tailSlope: tail.slope,
      tangent,
      tail: { atOneMinute: tail.intercept, from, to: tailTo },
      parabola: { root: parabola.slope, from: times[early[0]], to: times[early[early.length - 1]] },
    },
    [...remarks, ...pickRemarks(picks, ["d0", "d100", "tail_from", "tail_to"])],
  );
}

const shown = (value: number): string => String(Number(value.toPrecision(4)));
