/**
 * A load that is still on: how far consolidation has gone, when primary will be over, and whether it is over.
 *
 * The fit to theory continues the readings beyond the last one, and the construction of the rule is made on the fitted
 * curve (end-of-primary.ts). As soon as the record is long enough for the construction itself, its numbers are taken.
 * The range (end-range.ts) holds both.
 */
import { say, digits, fixed, type Message } from "../message";
import { given, notApplicable, type Outcome } from "../outcome";
import { endOfPrimary, timeOf, type EndOfPrimary, type EndRule } from "./end-of-primary";
import { endRange } from "./end-range";
import { hyperbola, HYPERBOLA_FROM, HYPERBOLA_TO } from "./hyperbola";
import { curveAt } from "./fit/model";
import { usedReadings, type CleanReadings, type Series } from "./readings";
import type { Increment } from "./reduce";
import { FIT_LIMITS, judge, MISFIT, signalsOf, type Limits } from "./signals";
import { GO_ON } from "./constructions/refusals";
import { smoothCurve } from "./constructions/smooth-curve";
import { cyclesPast, noSlope } from "./constructions/tail";
import { degreeOfConsolidation } from "./fit/terzaghi";
import { FEWEST_READINGS, type TheoryFit } from "./fit/theory-fit";

/** When a load may end: at the end of primary by a construction, at a fixed time, or at a multiple of t100 by log time. */
export const PROGRESS_RULES = ["log time", "root time", "fixed", "multiple"] as const;
export type ProgressRule = (typeof PROGRESS_RULES)[number];

export type Verdict = "over" | "not yet" | "cannot be told";

/** Times are minutes on the clock of the readings. */
export interface ExpectedEnd extends EndOfPrimary {
  /** Share of the way from d0 to d100 that the last reading has covered, 0 to 1. */
  readonly U: number;
  /** Limits of t100; absent where the readings give none. */
  readonly low?: number;
  readonly high?: number;
}

export interface Progress {
  readonly expected: Outcome<ExpectedEnd>;
  /** Minutes from the last reading to the end by the rule; 0 once it is past. */
  readonly remaining: number;
  readonly verdict: Verdict;
}

const NO_INFLECTION = say`the curve is nowhere clearly steeper than its tail; ${GO_ON}`;

/** The limits of the fit, without those that need a finished record. */
const LIMITS: Limits = { ...FIT_LIMITS, lastT: [0, 0], early: [0, 0] };
/** Below this degree of consolidation at the last reading, `progress` refuses. */
const LEAST_U = 0.5;

/**
 * `multiple` is the minutes of the rule "fixed", or the number of times t100 of the rule "multiple". Refuses before
 * half of primary, and where the readings show no consolidation; the rule "fixed" still answers how long the load has
 * to stay on.
 * @example progress(load, "log time").value.verdict // "over"
 * @example progress(load, "fixed", 2880).value.remaining // 1440
 */
export function progress(increment: Increment, rule: ProgressRule, multiple = 1): Outcome<Progress> {
  const { cleaned } = increment;
  if (!cleaned.ok) return cleaned;
  const clean = cleaned.value;
  const last = clean.lastTime;
  if (!clean.count) return notApplicable(say`there are no readings yet: enter a time and a reading`);
  const expected = expectedEnd(increment, rule === "root time" ? rule : "log time");
  if (rule === "fixed") {
    const over = last >= multiple;
    const value: Progress = { expected, remaining: Math.max(multiple - last, 0), verdict: over ? "over" : "not yet" };
    const remarks = expected.ok ? [primaryRemark(expected.value, last), ...expected.remarks] : [expected.reason];
    return given(value, [
      over
        ? say`the fixed time of ${digits(multiple, 3)} min is over`
        : say`the fixed time of ${digits(multiple, 3)} min is not over`,
      ...remarks,
    ]);
  }
  if (!expected.ok) return expected;
  const end = expected.value;
  const factor = rule === "multiple" ? multiple : 1;
  const value: Progress = {
    expected,
    remaining: Math.max(factor * end.t100 - last, 0),
    verdict: verdictOf(end, last / factor),
  };
  const wait = say`${digits(factor, 3)} times t100 is ${digits(factor * end.t100, 3)} min: ${SAID[value.verdict]}`;
  return given(value, [...(rule === "multiple" ? [wait] : []), primaryRemark(end, last), ...expected.remarks]);
}

const SAID: Readonly<Record<Verdict, Message>> = {
  over: say`it is over`,
  "not yet": say`it is not over`,
  "cannot be told": say`whether it is over cannot be told yet, ${GO_ON}`,
};

/**
 * The range decides, not the expected time: a load whose time lies within the range is called neither over nor not
 * over.
 */
function verdictOf({ low, high }: ExpectedEnd, time: number): Verdict {
  if (high !== undefined && time >= high) return "over";
  return low !== undefined && time < low ? "not yet" : "cannot be told";
}

function primaryRemark(end: ExpectedEnd, last: number): Message {
  const { t100, low, high } = end;
  const at = last >= t100 ? say`t100 is ${digits(t100, 3)} min` : say`t100 is expected at ${digits(t100, 3)} min`;
  const time =
    low === undefined
      ? at
      : high === undefined
        ? say`${at} (${digits(low, 3)} or later)`
        : say`${at} (${digits(low, 3)} to ${digits(high, 3)})`;
  switch (verdictOf(end, last)) {
    case "over":
      return say`primary compression is over: ${time}`;
    case "not yet":
      return say`primary compression is not over: ${time}`;
    case "cannot be told":
      return say`whether primary compression is over cannot be told yet: ${time}; ${GO_ON}`;
  }
}

/**
 * The end of primary by a construction, predicted or drawn. Refuses before half of primary, and readings that show no
 * consolidation.
 */
export function expectedEnd(increment: Increment, rule: EndRule): Outcome<ExpectedEnd> {
  const { cleaned, theory, jump } = increment;
  if (!cleaned.ok) return cleaned;
  const clean = jump?.clean ?? cleaned.value;
  const count = clean.series.times.length;
  if (count < FEWEST_READINGS)
    return notApplicable(
      count === 1
        ? say`the end of primary needs ${FEWEST_READINGS} readings at different times, and there is ${count}: ${GO_ON}`
        : say`the end of primary needs ${FEWEST_READINGS} readings at different times, and there are ${count}: ${GO_ON}`,
    );
  if (!theory.ok) return theory;
  const fit = theory.value;
  const last = clean.lastTime;
  const signals = signalsOf(clean, fit);
  const { refusal } = judge(signals, LIMITS, GO_ON);
  // A fit that these limits pass has an end: they refuse the same steepness as the construction on the fitted curve.
  const foretold = refusal ? undefined : endOfPrimary(rule, fit);
  if (!foretold) return notApplicable(say`the end of primary cannot be told: ${refusal ?? NO_INFLECTION}`);

  const used = usedReadings(clean, fit);
  const drawn = drawnEnd(increment, rule, used, fit);
  const onClock = (t: number) => t - fit.timeZero;
  const { d0, d100, t50, t90, t100 } = drawn ?? {
    ...foretold,
    t50: onClock(foretold.t50),
    t90: onClock(foretold.t90),
    t100: onClock(foretold.t100),
  };
  const U = Math.min((curveAt(fit, last + fit.timeZero) - d0) / (d100 - d0), 1);
  if (U < LEAST_U)
    return notApplicable(
      say`the end of primary cannot be foretold before half of it is over, and the readings show about ${Math.round(100 * U)} %: ${GO_ON}`,
    );

  const departed = signals.misfit > MISFIT;
  // Readings that depart from theory predict nothing; then only the construction, if it can be drawn, gives a range.
  const limits = departed && !drawn ? {} : limitsOf(used, fit, rule, foretold, t100, departed ? DEPARTED : 0);
  const end: ExpectedEnd = { d0, d100, t50, t90, t100, ...limits, U };
  return given(end, [
    ...(limits.low === undefined ? [departs(signals.misfit)] : []),
    ...secondaryRemark(clean, end, last),
    ...secondOpinion(used, fit, foretold, end),
    ...cleaned.remarks,
    ...theory.remarks,
  ]);
}

/**
 * The end by the construction on the readings; the fit continues the curve only where the readings stop short of d100.
 */
function drawnEnd(increment: Increment, rule: EndRule, used: Series, fit: TheoryFit): EndOfPrimary | undefined {
  const { logTime, rootTime } = increment;
  const { times } = used;
  const [first, last] = [times[0] ?? 0, times[times.length - 1] ?? 0];
  const smooth = smoothCurve(used, fit);
  const reached = (reading: number, from = first): number | undefined => {
    const seen = smooth.crossing((_, d) => d - reading, from, last);
    if (seen !== undefined) return seen;
    const foretold = timeOf(fit, reading);
    return foretold === undefined ? undefined : foretold - fit.timeZero;
  };
  if (rule === "log time" && logTime.ok) {
    const { d0, d100, t50, t100 } = logTime.value;
    const t90 = reached(d0 + 0.9 * (d100 - d0), t50);
    return t90 === undefined ? undefined : { d0, d100, t50, t90, t100 };
  }
  if (rule === "root time" && rootTime.ok) {
    const { d0, d100, t90 } = rootTime.value;
    const [t50, t100] = [reached(d0 + 0.5 * (d100 - d0)), reached(d100, t90)];
    return t50 === undefined || t100 === undefined ? undefined : { d0, d100, t50, t90, t100 };
  }
  return undefined;
}

/** How much wider the range of a drawn end is, in ln t, where the readings depart from theory. */
const DEPARTED = 0.4;

/** The range of t100, around the predicted end and the drawn end; wider by `more` in ln t. */
function limitsOf(
  used: Series,
  fit: TheoryFit,
  rule: EndRule,
  foretold: EndOfPrimary,
  t100: number,
  more: number,
): { low?: number; high?: number } {
  const { earlier, later } = endRange(used, fit, rule, foretold);
  const times = [t100, foretold.t100 - fit.timeZero];
  const low = Math.min(...times) * Math.exp(-Math.hypot(earlier, more));
  const high = Math.max(...times) * Math.exp(Math.hypot(later, more));
  return { low, ...(Number.isFinite(high) ? { high } : {}) };
}

const departs = (misfit: number): Message =>
  say`the readings depart from theory by ${digits(100 * misfit, 2)} % of primary on average, so theory cannot foretell the end: look at the plot`;

function secondaryRemark({ series }: CleanReadings, { t100 }: EndOfPrimary, last: number): Message[] {
  if (last < t100) return [];
  const cycles = cyclesPast(series.times, t100);
  if (!cycles) return [say`no secondary compression is seen yet`];
  return [
    noSlope(cycles)
      ? say`${fixed(cycles, 2)} of a log cycle of secondary compression is seen, too little for its slope`
      : say`${fixed(cycles, 2)} of a log cycle of secondary compression is seen`,
  ];
}

/** The remark with t100 by the rectangular hyperbola, where enough readings lie between U of 60 and 90 %. */
function secondOpinion(used: Series, fit: TheoryFit, foretold: EndOfPrimary, end: ExpectedEnd): Message[] {
  const inside = used.times
    .map((clock, i) => ({ t: clock + fit.timeZero, moved: (used.readings[i] ?? 0) - fit.d0 }))
    .filter(({ t }) => {
      const U = degreeOfConsolidation(fit.rate * t);
      return U >= HYPERBOLA_FROM && U <= HYPERBOLA_TO;
    });
  const other = hyperbola(inside.map(({ t }) => t), inside.map(({ moved }) => moved)); // prettier-ignore
  if (!other) return [];
  const t100 = (foretold.t100 * fit.rate) / other.rate - fit.timeZero;
  const { low = t100, high = t100 } = end;
  const agrees = t100 >= low && t100 <= high;
  return [
    agrees
      ? say`the rectangular hyperbola puts t100 at ${digits(t100, 3)} min`
      : say`the rectangular hyperbola puts t100 at ${digits(t100, 3)} min, outside that range: look at the plot`,
  ];
}
