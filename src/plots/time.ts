/** Time curves of one increment: deformation, increasing downward, against the logarithm or the root of time. */
import type { ConstructionLine } from "../reduction/construction";
import { badInput, given, type Outcome } from "../reduction/outcome";
import { fromZero, padded, wholeDecades } from "./axes";
import type { PlotAxis, PlotSeries, PlotSpec } from "./spec";

export type Cells = readonly (number | null)[];

export interface TimePlotOptions {
  /** What the readings are, with their unit: "Dial reading (mm)". */
  readonly readingLabel?: string;
}

type Point = readonly [x: number, y: number];

/** The rows that hold both a time and a reading; a zero time is one only in the first row that has a reading. */
function plotted(times: Cells, readings: Cells): Point[] {
  const points: Point[] = [];
  times.forEach((time, index) => {
    const reading = readings[index];
    if (time === null || time < 0 || reading === null || reading === undefined) return;
    if (time === 0 && points.length > 0) return;
    points.push([time, reading]);
  });
  return points.sort(([a], [b]) => a - b);
}

/** A construction line as the plot draws it: every line but the readings themselves is lettered. */
const seriesOf = (line: ConstructionLine): PlotSeries => ({ ...line, lettered: line.style !== "points" });

/** The vertical domain holds the readings and what the guides mark; a tangent may run out of the frame. */
function verticalDomain(readings: readonly Point[], lines: readonly ConstructionLine[]): [number, number] {
  const marked = lines.filter(({ style }) => style === "guide").flatMap(({ points }) => points);
  return padded([...readings, ...marked].map(([, y]) => y));
}

function timePlot(
  title: string,
  xOf: (xs: readonly number[]) => PlotAxis,
  toX: (time: number) => number,
  times: Cells,
  readings: Cells,
  lines: Outcome<readonly ConstructionLine[]>,
  { readingLabel = "Deformation" }: TimePlotOptions,
): Outcome<PlotSpec> {
  const points = plotted(times, readings).map(([time, reading]): Point => [toX(time), reading]);
  if (points.length === 0)
    return badInput("there is no row with both a time and a reading: select the two columns again");
  if (!lines.ok && lines.fault === "input") return lines;
  const drawn = lines.ok ? lines.value.filter(({ style }) => style !== "points") : [];
  return given({
    title,
    x: xOf(points.map(([x]) => x)),
    y: { label: readingLabel, scale: "linear", domain: verticalDomain(points, drawn), reversed: true },
    series: [...drawn.map(seriesOf), { label: "readings", style: "points", symbol: "filled", lettered: false, points }],
    notes: lines.ok ? lines.remarks : [lines.reason],
  });
}

/** Placeholder until the reduction's lines are wired. */
const none: Outcome<readonly ConstructionLine[]> = given([]);

/** Readings against log10 of time in whole decades, with the log-of-time construction. Times in minutes. */
export const logTimePlot = (times: Cells, readings: Cells, options: TimePlotOptions = {}): Outcome<PlotSpec> =>
  timePlot(
    "Log of time",
    (xs) => ({ label: "Time (min), log scale", scale: "log", domain: wholeDecades(xs), reversed: false }),
    (time) => time,
    times,
    readings,
    none,
    options,
  );

/** Readings against the root of time from 0, with the root-time construction. Times in minutes. */
export const rootTimePlot = (times: Cells, readings: Cells, options: TimePlotOptions = {}): Outcome<PlotSpec> =>
  timePlot(
    "Root of time",
    (xs) => ({ label: "Root of time (√min)", scale: "root", domain: fromZero(xs), reversed: false }),
    Math.sqrt,
    times,
    readings,
    none,
    options,
  );
