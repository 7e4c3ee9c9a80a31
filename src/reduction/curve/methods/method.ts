/** The result of a preconsolidation method, and the parts that the methods draw it with. */
import type { ConstructionLine, LineLabel } from "../../construction";
import { say, digits, type Digits, type Message } from "../../message";
import type { Outcome } from "../../outcome";
import { valueAt, type FirstLoading } from "../shape/first-loading";
import { kneeAt } from "../shape/knee";
import type { CurveReading } from "./reading";
import type { Run } from "../shape/straight-parts";
import { at, type Line } from "../../numeric/straight-line";
import { lastOf, nth } from "../../numeric/lists";

export interface MethodReading {
  /** Preconsolidation stress, in the unit of the stresses. */
  readonly stress: number;
  /** The points that the method used, in words with their stresses. */
  readonly points: Message;
  /** The construction, in the coordinates of the plot of the method. */
  readonly lines: readonly ConstructionLine[];
}

export interface MethodOptions {
  /** Slope at which the virgin line is drawn (Casagrande's construction only). */
  readonly drawingSlope?: number;
}

/** Reads the preconsolidation stress off a curve. */
export type Method = (reading: CurveReading, options: MethodOptions) => Outcome<MethodReading>;

/**
 * A stress as a person would write it.
 * @example shown(82.4567) // "82.46"
 */
export const shown = (stress: number): Digits => digits(stress, 4);

export const stresses = ({ points }: FirstLoading, { from, to }: Run): Message =>
  say`${shown(nth(points, from).stress)} to ${shown(nth(points, to).stress)}`;

export const straightPoints = (curve: FirstLoading, recompression: Run, virgin: Run): Message =>
  say`recompression ${stresses(curve, recompression)}, virgin ${stresses(curve, virgin)}`;

/**
 * The part of the virgin stretch nearest to yield: at least three points, and as many as lie within 0.65 log cycle. For
 * planes in which the virgin line is straight only near yield, or where far points would outweigh the near ones.
 */
export function nearYield({ x }: FirstLoading, { from, to }: Run): Run {
  let end = Math.min(from + 2, to);
  while (end < to && nth(x, end + 1) - nth(x, from) <= 0.65) end++;
  return { from, to: end };
}

/** First-loading points in stress and value. */
export const loadingPoints = ({ points }: FirstLoading): ConstructionLine => ({
  label: "first loading",
  style: "points",
  points: points.map(({ stress, value }) => [stress, value]),
});

/** The smooth curve of a reading, in stress and value. */
export function smoothCurve({ curve, knee, law }: CurveReading): ConstructionLine {
  const low = nth(curve.x, law.run.from);
  const high = nth(curve.x, law.run.to);
  const count = 60;
  return {
    label: "smooth curve",
    style: "curve",
    points: Array.from({ length: count + 1 }, (_, i) => {
      const x = low + ((high - low) * i) / count;
      return [10 ** x, valueAt(curve, kneeAt(knee, x))];
    }),
  };
}

/** A straight line of the e-log plane between two x, in stress and value. */
export const ruled = (
  curve: FirstLoading,
  label: LineLabel,
  line: Line,
  from: number,
  to: number,
): ConstructionLine => ({
  label,
  style: "construction",
  points: [from, to].map((x) => [10 ** x, valueAt(curve, at(line, x))] as const),
});

/** The vertical line at the preconsolidation stress, between two values of the method's plot. */
export const yieldMark = (stress: number, from: number, to: number): ConstructionLine => ({
  label: "preconsolidation stress",
  style: "guide",
  points: [
    [stress, from],
    [stress, to],
  ],
});

/** The vertical line from the yield point on the virgin line to the level of the last reading. */
export const yieldGuide = (curve: FirstLoading, virginLine: Line, x: number): ConstructionLine =>
  yieldMark(10 ** x, valueAt(curve, at(virginLine, x)), valueAt(curve, lastOf(curve.u)));

/** The straight line before or after yield, through two points of the method's plot. */
export const yieldLine = (side: "before" | "after", points: ConstructionLine["points"]): ConstructionLine => ({
  label: `line ${side} yield`,
  style: "construction",
  points,
});
