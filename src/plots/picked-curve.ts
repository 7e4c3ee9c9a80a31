/**
 * The compression curve with the construction of a method as a person picked it: with the lines of recompression, loop
 * and unloading, and the other methods behind.
 */
import type { ConstructionLine, LineLabel } from "../reduction/construction";
import { recompressionIndex, swellingIndex, type Index } from "../reduction/curve/indices";
import type { CurvePicks } from "../reduction/curve/picks";
import { METHOD_PLOTS } from "./methods";
import type { Preconsolidation, Spread } from "../reduction/curve/preconsolidation";
import type { MethodName } from "../reduction/curve/method-words";
import type { MethodReading } from "../reduction/curve/methods/method";
import { branches } from "../reduction/curve/shape/branches";
import { standingPicks } from "../reduction/curve/standing-picks";
import type { LoadPoint, TestCurve } from "../reduction/curve/shape/points";
import { at, straightLine } from "../reduction/numeric/straight-line";
import type { Outcome } from "../reduction/outcome";
import { plotOfTest, type CompressionPlotOptions } from "./compression";
import type { PlotSeries, PlotSpec } from "./spec";

export interface PickedCurveOptions extends Pick<CompressionPlotOptions, "stressUnit" | "marks" | "inWords"> {
  readonly method: MethodName;
  readonly picks: CurvePicks;
  /** The reading of the method with the picks. */
  readonly reading: Outcome<Preconsolidation>;
  /** All methods without picks, for the lines behind. */
  readonly spread: Outcome<Spread>;
}

/** The straight line through points of one branch, on log of stress. */
function lineOf(label: LineLabel, points: readonly LoadPoint[]): ConstructionLine {
  const x = points.map(({ stress }) => Math.log10(stress));
  const line = straightLine(
    x,
    points.map(({ value }) => value),
  );
  const ends = [Math.min(...x), Math.max(...x)];
  return { label, style: "construction", points: ends.map((end) => [10 ** end, at(line, end)]) };
}

/** The lines from which an index was taken. */
const linesOf = (label: LineLabel, index: Outcome<Index>): ConstructionLine[] =>
  index.ok ? index.value.readings.map((points) => lineOf(label, points)) : [];

const inCurvePlane = (method: MethodName): boolean => METHOD_PLOTS[method].quantity === undefined;

/** A method behind: its lines where the plane is that of the curve, otherwise a mark at its stress. */
function behindOf(method: MethodName, { stress, lines }: MethodReading, sharesPlane: boolean): PlotSeries[] {
  if (sharesPlane && inCurvePlane(method))
    return lines.filter(({ style }) => style === "construction" || style === "guide");
  return [{ label: "preconsolidation stress", style: "guide", points: [[stress, 0]] }];
}

/** The lines that a hand draws beside the construction: recompression, the line through the loop, unloading. */
function linesBeside(test: TestCurve, picks: CurvePicks, method: MethodName): ConstructionLine[] {
  const { recompression_from: from = 0, recompression_to: to = 0, loop_from: loop } = standingPicks(test, picks);
  const known = branches(test);
  const before = known.ok
    ? known.value.firstLoading.filter(({ stress }) => stress >= from * 0.999 && stress <= to * 1.001)
    : [];
  const recompression = before.length > 1 && method !== "intersection" ? [lineOf("recompression line", before)] : [];
  const reloading = loop === undefined ? [] : linesOf("reloading", recompressionIndex(test, undefined, picks));
  return [...recompression, ...reloading, ...linesOf("unloading", swellingIndex(test, undefined, picks))];
}

/** Refuses what `compressionPlot` refuses. */
export function pickedCurvePlot(test: TestCurve, options: PickedCurveOptions): Outcome<PlotSpec> {
  const { method, picks, reading, spread, ...look } = options;
  const sharesPlane = inCurvePlane(method);
  const others = spread.ok ? spread.value.methods.filter((other) => other.method !== method) : [];
  const behind = others.flatMap((other) =>
    other.result.ok ? behindOf(other.method, other.result.value, sharesPlane) : [],
  );
  const also = sharesPlane ? linesBeside(test, picks, method) : [];
  return plotOfTest(test, { ...look, method, yieldReading: reading, also, behind });
}
