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
import { usedReadings, type CleanReadings, type Series } from "./readings";
import { judge, LOG_TIME_LIMITS, T_INFLECTION, type Limits, type Signals } from "./signals";
import { smoothCurve, type SmoothCurve } from "./smooth-curve";
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
  /** The early parabola d0 + root sqrt(t), and the span of the readings that it goes through. */
  readonly parabola: { readonly d0: number; readonly root: number; readonly from: number; readonly to: number };
}

/** The parabola rule is true to 0.05 % of primary while U stays below this. */
const PARABOLA_U = 0.5;
/** Tail readings come later than this many times the end of primary, as a hand takes them; */
const TAIL_FROM = 3;
/** or than this, less the primary that is still to come, where the readings follow theory to a share of primary or of their step. */
const TAIL_FROM_BY_THEORY = 1.6;
const FOLLOWS_SHARE = 0.005;
const FOLLOWS_STEP = 0.4;
/** A tail of its own needs this many log cycles; a shorter one takes its slope from the fit. Half a cycle is common practice: 8 h to 24 h. */
const TAIL_CYCLES = 0.25;
const GOOD_TAIL_CYCLES = 0.45;
/** Share of primary by which d0 may differ from pair to pair of the parabola rule without a remark. */
const PAIRS_SHARE = 0.1;

const ADVICE = "try ROOT_TIME";
const REFUSES = "the log-of-time method does not apply:";

/**
 * Refuses a record that gives no d0 or d100 (see signals.ts), and picks that contradict the readings. A pick of d0 or d100
 * lifts the refusals that concern it alone.
 */
export function logTime(clean: CleanReadings, fit: TheoryFit, signals: Signals, picks: Picks = {}): Outcome<LogTime> {
  const { refusal, remarks } = judge(signals, limitsWith(picks), ADVICE);
  if (refusal) return notApplicable(`${REFUSES} ${refusal}`);

  const used = usedReadings(clean, fit);
  const { times } = used;
  const first = times[0];
  const last = times[times.length - 1];
  const curve = smoothCurve(used, fit);

  const parabola = earlyParabola(used, fit, remarks);
  const d0 = picks.d0 ?? parabola.d0;
  const tangent = steepestTangent(curve, fit, first, last);
  const tail = tailLine(clean, used, fit, picks, remarks);
  if (!tail.ok) return tail;
  const { slope, atOneMinute } = tail.value;

  // t100 where the tangent meets the tail.
  const x100 = (atOneMinute - (tangent.reading - tangent.slope * Math.log10(tangent.time))) / (tangent.slope - slope);
  const d100 = picks.d100 ?? atOneMinute + slope * x100;
  const t100 = picks.d100 === undefined ? 10 ** x100 : curve.crossing((_, d) => d - d100, first, last);
  if (t100 === undefined) return badInput(`the picked d100 (${d100}) lies outside the readings: pick it within them`);
  const ran = (d100 - d0) * Math.sign(fit.primary);
  if (picks.d0 === undefined && picks.d100 === undefined && !(ran > 0 && t100 > first && t100 < last))
    return notApplicable(`${REFUSES} the tangent and the tail do not cross within the readings; ${ADVICE}`);
  if (!(ran > 0))
    return badInput(`d0 (${shown(d0)}) and d100 (${shown(d100)}) run against the readings: check the picks`);

  const d50 = (d0 + d100) / 2;
  const t50 = curve.crossing((_, d) => d - d50, first, last);
  if (t50 === undefined || t50 <= first)
    return notApplicable(
      `${REFUSES} half of primary compression was over before the first reading (${shown(first)} min); read earlier`,
    );
  return given(
    {
      d0,
      d50,
      d100,
      t50,
      t100,
      tailSlope: slope,
      tangent,
      tail: tail.value,
      parabola,
    },
    [...remarks, ...pickRemarks(picks, ["d0", "d100", "tail_from", "tail_to"])],
  );
}

const limitsWith = (picks: Picks): Limits => ({
  ...LOG_TIME_LIMITS,
  ...(picks.d100 !== undefined ? { steepness: [0, 0], bend: [0, 0], lastT: [0, 0] } : {}),
  ...(picks.d0 !== undefined ? { firstU: [1, 1], early: [0, 0] } : {}),
});

const degree = (fit: TheoryFit, t: number): number => degreeOfConsolidation(fit.rate * t);

/**
 * d0 by the parabola rule: least squares of d on sqrt t below U = 50 %, which is the rule for every 4:1 pair at once. The
 * pairs one by one must agree.
 */
function earlyParabola({ times, readings, weights }: Series, fit: TheoryFit, remarks: string[]): LogTime["parabola"] {
  let count = times.findIndex((t) => degree(fit, t) > PARABOLA_U);
  if (count < 2) count = 2;
  const roots = times.slice(0, count).map(Math.sqrt);
  const early = readings.slice(0, count);
  const line = straightLine(roots, early, weights.slice(0, count));
  const pairs: number[] = [];
  for (let i = 0, j = 0; i < count; i++) {
    const root = 2 * roots[i];
    while (j < count && roots[j] < root * (1 - 1e-9)) j++;
    if (j === count) break;
    const share = j ? (root - roots[j - 1]) / (roots[j] - roots[j - 1]) : 0;
    pairs.push(2 * early[i] - (share * early[j] + (1 - share) * early[Math.max(j - 1, 0)]));
  }
  const spread = Math.max(...pairs) - Math.min(...pairs);
  if (pairs.length > 1 && spread > PAIRS_SHARE * Math.abs(fit.primary))
    remarks.push(
      `the 4:1 pairs of the early parabola give d0 from ${shown(Math.min(...pairs))} to ${shown(Math.max(...pairs))}: bedding, slow loading or a late start of the clock`,
    );
  return { d0: line.intercept, root: line.slope, from: times[0], to: times[count - 1] };
}

/** Looked for where theory has its own, half a cycle either side. */
function steepestTangent(curve: SmoothCurve, fit: TheoryFit, first: number, last: number): LogTime["tangent"] {
  let steepest = { time: first, reading: 0, slope: 0 };
  for (let k = -12; k <= 12; k++) {
    const time = (T_INFLECTION / fit.rate) * 10 ** (0.05 * k);
    if (time < first || time > last) continue;
    const slope = curve.slope(time);
    if (Math.abs(slope) > Math.abs(steepest.slope)) steepest = { time, reading: curve.at(time), slope };
  }
  return steepest;
}

interface Tail {
  readonly slope: number;
  readonly atOneMinute: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The straight line of the tail on log time: through the readings of the span, less the primary that theory says is still
 * to come and straightened where creep is still beginning; a picked span as it is. Where the tail is too short to have a
 * slope of its own it takes that of the fit.
 */
function tailLine(clean: CleanReadings, used: Series, fit: TheoryFit, picks: Picks, remarks: string[]): Outcome<Tail> {
  const { times, readings, weights } = used;
  const tp = T_END_OF_PRIMARY / fit.rate;
  const byHand = picks.tail_from !== undefined || picks.tail_to !== undefined;
  const follows = fit.misfit < Math.max(FOLLOWS_SHARE * Math.abs(fit.primary), FOLLOWS_STEP * clean.step);
  const from = picks.tail_from ?? (follows ? TAIL_FROM_BY_THEORY : TAIL_FROM) * tp;
  const to = picks.tail_to ?? times[times.length - 1];
  const settled = (i: number): number => {
    if (byHand) return readings[i];
    const begun = fit.tail ? Math.log10(times[i] / tp) - creep(fit.rate, fit.sharpness, times[i]) : 0;
    return readings[i] + fit.primary * (1 - degree(fit, times[i])) + fit.tail * begun;
  };
  let index = times.map((_, i) => i).filter((i) => times[i] >= from && times[i] <= to);
  const cycles = index.length ? Math.log10(times[index[index.length - 1]] / times[index[0]]) : 0;
  if (byHand && index.length < 2)
    return badInput(`the picked tail (${shown(from)} to ${shown(to)} min) holds ${index.length} readings: it needs 2`);
  const own = byHand || (index.length >= 2 && cycles >= TAIL_CYCLES);
  if (!own) index = times.map((_, i) => i).slice(-2);
  if (picks.d100 === undefined && !byHand && cycles < GOOD_TAIL_CYCLES)
    remarks.push(
      own
        ? `the tail is only ${cycles.toFixed(2)} of a log cycle long: its slope is uncertain`
        : "the tail is too short to show its slope: the slope is that of the fit to theory",
    );
  const x = index.map((i) => Math.log10(times[i]));
  const d = index.map(settled);
  const w = index.map((i) => weights[i]);
  const span = { from: times[index[0]], to };
  const line = own ? straightLine(x, d, w) : undefined;
  const slope = line ? line.slope : fit.tail;
  // A tail that runs back is level: no reading of it says that the soil swelled.
  const held = slope * fit.primary < 0 ? 0 : slope;
  if (line && held === slope) return given({ slope, atOneMinute: line.intercept, ...span });
  const total = w.reduce((a, b) => a + b, 0);
  const atOneMinute = d.reduce((sum, value, k) => sum + (w[k] * (value - held * x[k])) / total, 0);
  return given({ slope: held, atOneMinute, ...span });
}

const shown = (value: number): string => String(Number(value.toPrecision(4)));
