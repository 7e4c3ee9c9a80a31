/** A load that follows theory exactly, with the fit that made it: what each part of a construction must find is known. */
import type { Picks } from "../../../../src/reduction/increment/constructions/picks";
import type { Procedure } from "../../../../src/reduction/increment/constructions/procedure";
import { curveAt } from "../../../../src/reduction/increment/fit/model";
import { timeFactor } from "../../../../src/reduction/increment/fit/terzaghi";
import type { TheoryFit } from "../../../../src/reduction/increment/fit/theory-fit";
import type { CleanReadings, Series } from "../../../../src/reduction/increment/readings";
import type { Signals } from "../../../../src/reduction/increment/signals";
import { english, say } from "../../../../src/reduction/message";
import type { Outcome } from "../../../../src/reduction/outcome";
import { BY_HAND } from "../../../generators/time-curves";

/** T at which the steepest tangent of theory meets the end of primary. Source: as in fit/terzaghi.ts. */
const T_END = 1.10135;

/** d0 of 1000 divisions, primary of 400, creep of 20 a log cycle; primary ends at 44 min (t50 of 7.87 min). */
export const FIT: TheoryFit = {
  ...{
    rate: 0.025,
    d0: 1000,
    primary: 400,
    tail: 20,
    onset: { sharpness: 3, begins: 1.10135 },
    d100: 1400,
    rateLow: 0.024,
    rateHigh: 0.026,
  },
  ...{ misfit: 0.1, noise: 0.1, scatter: 0.1, timeZero: 0, leftOut: [] },
};
export const END = T_END / FIT.rate;

/** Minutes at which the fit has reached a degree of consolidation. */
export function timeAt(U: number): number {
  const T = timeFactor(U);
  if (!T.ok) throw new Error(`no time factor for ${U}`);
  return T.value / FIT.rate;
}

/** Readings at times, numbered from row 1, each of one reading. */
export const seriesOf = (times: readonly number[], reading: (t: number, index: number) => number): Series => ({
  times,
  readings: times.map(reading),
  rows: times.map((_, i) => say`row ${i + 1}`),
  weights: times.map(() => 1),
});

export const exact = (times: readonly number[] = BY_HAND, fit = FIT): Series => seriesOf(times, (t) => curveAt(fit, t));

export const cleanOf = (series: Series, step = 1): CleanReadings => ({
  ...{ series, step, zeroReading: undefined, count: series.times.length },
  ...{ lastTime: Math.max(...series.times), travel: Math.max(...series.readings) - Math.min(...series.readings) },
});

/** The signals of a record that every limit passes without a remark. */
const GOOD: Signals = {
  ...{ steps: 500, primarySteps: 400, clearness: 300, steepness: 6, bend: 5 },
  ...{ lastT: 10, firstU: 0.05, early: 6, misfit: 0.002, drift: 1 },
};

/** What a construction is asked of, where it is not the exact load. */
export interface Asked {
  readonly series?: Series;
  readonly signals?: Partial<Signals>;
  readonly procedure?: Procedure;
  readonly fit?: TheoryFit;
}

type Construction<T> = (
  clean: CleanReadings,
  fit: TheoryFit,
  signals: Signals,
  picks: Picks,
  procedure: Procedure,
) => Outcome<T>;

/** A construction of the exact load, or of what is asked in its place. */
export const construct =
  <T>(construction: Construction<T>) =>
  (picks: Picks = {}, { series = exact(), signals = {}, procedure = "aided", fit = FIT }: Asked = {}): Outcome<T> =>
    construction(cleanOf(series), fit, { ...GOOD, ...signals }, picks, procedure);

/** The value of an outcome that is not refused. */
export function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
}

/** The remarks of an outcome, or its fault and reason. */
export const saidOf = (outcome: Outcome<unknown>): string =>
  outcome.ok ? outcome.remarks.map(english).join("; ") : `${outcome.fault}: ${english(outcome.reason)}`;
