/**
 * Loads that are still on: the curves of time-curves.ts, read until a degree of consolidation or a time factor, with
 * one more reading at that moment.
 */
import { SCENARIOS, type Scenario, type TimeCurve } from "./time-curves";

const T50_EXACT = 0.19673075;

export interface Cut {
  readonly name: string;
  /** Time factor at the last reading. */
  readonly T: number;
}

/** T by Terzaghi's theory: 0.1967, 0.2864, 0.4028, 0.5671, 0.8481 and 1.1291 at U of 50 to 95 %. */
export const CUTS: readonly Cut[] = [
  { name: "U 50", T: 0.1968 },
  { name: "U 60", T: 0.2864 },
  { name: "U 70", T: 0.4028 },
  { name: "U 80", T: 0.5671 },
  { name: "U 90", T: 0.8481 },
  { name: "U 95", T: 1.1291 },
  { name: "T 1.2", T: 1.2 },
  { name: "T 2", T: 2 },
  { name: "T 4", T: 4 },
];

/** Cuts at 97 % of a time, the end of primary: an answer "over" at this cut comes too soon. */
export const justBefore = (t100: number, { truth }: TimeCurve): Cut => ({
  name: "just before the end",
  T: (0.97 * T50_EXACT * t100) / truth.t50,
});

/** Kinds without an end of primary to predict, or that stop before it. */
const WITHOUT_END =
  /^(no movement|lost in the noise|creep throughout|primary over|first reading at half|stopped at|logger at a steady rate)/;

export const KINDS: readonly Scenario[] = SCENARIOS.filter(({ name }) => !WITHOUT_END.test(name));

/** The readings up to the cut: those of the schedule before 0.8 of its time, and one at the cut. */
export function standing(curve: TimeCurve, { T }: Cut): { times: number[]; readings: number[] } {
  const now = (T * curve.truth.t50) / T50_EXACT;
  const before = curve.times.map((t, i) => ({ t, d: curve.readings[i] ?? 0 })).filter(({ t }) => t < 0.8 * now);
  return {
    times: [...before.map(({ t }) => t), now],
    readings: [...before.map(({ d }) => d), curve.readAt(now)],
  };
}
