/** Time curves of one increment: deformation, compression downward, against the logarithm or the root of time. */
import type { ConstructionLine } from "../reduction/construction";
import { logTimeLines, rootTimeLines } from "../reduction/increment/constructions/lines";
import type { DialJump } from "../reduction/increment/dial-jump";
import { MOST_READINGS } from "../reduction/increment/cleaning/averages";
import type { CleanReadings } from "../reduction/increment/readings";
import { reduceIncrement, type Increment } from "../reduction/increment/reduce";
import { english, say, type Message } from "../reduction/message";
import { firstOf, lastOf, nth } from "../reduction/numeric/lists";
import { badInput, given, type Outcome } from "../reduction/outcome";
import { fromZero, padded, toAxis, wholeDecades } from "./axes";
import type { PlotAxis, PlotSeries, PlotSpec } from "./spec";
import { labelIn, type InWords } from "./words";

export type Cells = readonly (number | null)[];

export interface TimePlotOptions {
  /** The quantity of the readings with its unit: "Dial reading (mm)". */
  readonly readingLabel?: string;
  /** The reduction of the same cells, if it has been calculated already. */
  readonly increment?: Increment;
  /**
   * Whether readings rise or fall when the specimen compresses; if omitted, the load is taken to compress the specimen.
   */
  readonly sense?: "rise" | "fall";
  /** The language of titles, axes, letters and notes; English if omitted. */
  readonly inWords?: InWords;
}

/** The series of the readings after a jump of the dial as the construction uses them. */
export const LESS_THE_JUMP = "readings less the jump";

type Point = readonly [x: number, y: number];

/**
 * Every row with a time and a reading, wrong readings too: the reader judges what the method left out. Zero is a time
 * in the first row only. Long logger series are drawn as the averages that the reduction uses.
 */
function plotted(times: Cells, readings: Cells, { cleaned }: Increment): Point[] {
  if (cleaned.ok && cleaned.value.count > MOST_READINGS) {
    const { series, zeroReading } = cleaned.value;
    const averages = series.times.map((time, index): Point => [time, nth(series.readings, index)]);
    return zeroReading === undefined ? averages : [[0, zeroReading], ...averages];
  }
  const points: Point[] = [];
  times.forEach((time, index) => {
    const reading = readings[index];
    if (time === null || time < 0 || reading == null) return;
    if (time === 0 ? points.length === 0 : reading !== 0) points.push([time, reading]);
  });
  return points;
}

/** Whether the readings rise or fall from the first to the last. */
function senseOf(readings: Cells): "rise" | "fall" {
  const read = readings.filter((reading) => reading !== null);
  return read.length > 1 && lastOf(read) < firstOf(read) ? "fall" : "rise";
}

interface TimeAxis {
  readonly title: Message;
  /** The x axis, from the x of the readings and of the marks of the construction. */
  readonly x: (
    xs: readonly number[],
    marked: readonly number[],
  ) => Omit<PlotAxis, "label"> & { readonly label: Message };
  readonly coordinate: (time: number) => number;
}

function timePlot(
  { title, x: axisFor, coordinate }: TimeAxis,
  times: Cells,
  readings: Cells,
  increment: Increment,
  lines: Outcome<readonly ConstructionLine[]>,
  { inWords = english, readingLabel = inWords(say`Deformation`), sense = senseOf(readings) }: TimePlotOptions,
): Outcome<PlotSpec> {
  if (!lines.ok && lines.fault === "input") return lines;
  const points = plotted(times, readings, increment).map(([time, reading]): Point => [coordinate(time), reading]);
  if (points.length === 0)
    return badInput(
      say`there is no row with both a time and a reading: select the column of times and that of readings`,
    );
  const drawn = lines.ok ? lines.value.filter(({ label }) => label !== "readings") : [];
  const marked = drawn.filter(({ style }) => style === "guide").flatMap((line) => line.points);
  const moved = drawn.filter((line) => line.label === LESS_THE_JUMP).flatMap((line) => line.points);
  const xs = points.map(([at]) => at);
  const { label, ...axis } = axisFor(
    xs,
    marked.map(([at]) => at),
  );
  const x: PlotAxis = { ...axis, label: inWords(label) };
  const beyond = xs.filter((at) => at > x.domain[1]).length;
  const y: PlotAxis = {
    label: readingLabel,
    scale: "linear",
    domain: padded([...points, ...marked, ...moved].map(([, d]) => d)),
    // Compression is drawn downward, whether the readings rise or fall.
    reversed: sense === "rise",
  };
  return given({
    title: inWords(title),
    x,
    y,
    series: [
      // Marks of the construction are crosses, so that nobody takes them for readings.
      ...drawn.map((line): PlotSeries => ({
        ...toAxis(line, x, y),
        letters: labelIn(inWords, line.label),
        ...(line.style === "points" ? { symbol: "cross" as const } : {}),
      })),
      { label: "readings", style: "points", symbol: "filled", points },
    ],
    remarks: lines.ok ? lines.remarks : [],
    refusal: lines.ok ? undefined : lines.reason,
    notes:
      beyond === 0
        ? []
        : [
            inWords(
              beyond === 1
                ? say`1 later reading is beyond the frame.`
                : say`${beyond} later readings are beyond the frame.`,
            ),
          ],
  });
}

/** The lines of a method with its remarks, or the reason why there are none. */
const linesOf = <T>(
  method: Outcome<T>,
  { cleaned, jump }: Increment,
  lines: (clean: CleanReadings, method: T, jump?: DialJump) => ConstructionLine[],
): Outcome<ConstructionLine[]> =>
  !method.ok ? method : !cleaned.ok ? cleaned : given(lines(cleaned.value, method.value, jump), method.remarks);

const LOG_TIME: TimeAxis = {
  title: say`Log of time`,
  x: (xs) => ({ label: say`Time (min), log scale`, scale: "log", domain: wholeDecades(xs), reversed: false }),
  coordinate: (time) => time,
};

/**
 * A root-time plot ends at this multiple of root t90, so that the construction fills the frame. Common practice, no
 * source.
 */
const BEYOND_T90 = 2.5;

const ROOT_TIME: TimeAxis = {
  title: say`Root of time`,
  x: (xs, marked) => {
    const last = Math.max(...xs);
    const end = marked.length ? Math.min(last, BEYOND_T90 * Math.max(...marked)) : last;
    return { label: say`Root of time (√min)`, scale: "root", domain: fromZero([end]), reversed: false };
  },
  coordinate: Math.sqrt,
};

/**
 * Readings against log10 of time in whole decades, with the log-of-time construction. Times in minutes, null is a
 * blank. If the method does not apply, the readings alone, with the reason as `refusal`. Refuses cells that are not a
 * time curve.
 */
export function logTimePlot(times: Cells, readings: Cells, options: TimePlotOptions = {}): Outcome<PlotSpec> {
  const { increment = reduceIncrement(times, readings) } = options;
  const lines = linesOf(increment.logTime, increment, logTimeLines);
  return timePlot(LOG_TIME, times, readings, increment, lines, options);
}

/**
 * Readings against the root of time from 0, with the root-time construction. Arguments and refusals as for
 * `logTimePlot`.
 */
export function rootTimePlot(times: Cells, readings: Cells, options: TimePlotOptions = {}): Outcome<PlotSpec> {
  const { increment = reduceIncrement(times, readings) } = options;
  const lines = linesOf(increment.rootTime, increment, rootTimeLines);
  return timePlot(ROOT_TIME, times, readings, increment, lines, options);
}
