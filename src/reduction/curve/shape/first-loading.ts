/** First loading in the coordinates of every method: log of stress, and compression as a share of the whole. */
import type { Branches } from "./branches";
import type { Kind, LoadPoint, TestCurve } from "./points";
import { firstOf, lastOf } from "../../numeric/lists";

export interface FirstLoading {
  readonly kind: Kind;
  readonly points: readonly LoadPoint[];
  /** log10 of stress. */
  readonly x: readonly number[];
  /** Compression from the first point, as a share of `range`: the same numbers for void ratio and for strain. */
  readonly u: readonly number[];
  /** Height of the specimen in any unit: 1 + e, or 1 - strain. */
  readonly height: readonly number[];
  /** Change of value over first loading, in void ratio or strain. */
  readonly range: number;
  /** Compression (as `u`) before the first load; 0 if the test does not give it. */
  readonly initial: number;
}

export function firstLoading(test: TestCurve, { firstLoading: points, seating }: Branches): FirstLoading {
  const values = points.map(({ value }) => value);
  const sign = test.kind === "e" ? -1 : 1;
  const range = Math.abs(lastOf(values) - firstOf(values));
  const initial = seating.length || test.initial === undefined ? 0 : (sign * (test.initial - firstOf(values))) / range;
  return {
    kind: test.kind,
    points,
    x: points.map(({ stress }) => Math.log10(stress)),
    u: values.map((value) => (sign * (value - firstOf(values))) / range),
    height: values.map((value) => (test.kind === "e" ? 1 + value : 1 - value)),
    range,
    initial: Math.min(initial, 0),
  };
}

/** Converts a compression `u` to a void ratio or strain. */
export const valueAt = (curve: FirstLoading, u: number): number =>
  firstOf(curve.points).value + (curve.kind === "e" ? -1 : 1) * u * curve.range;
