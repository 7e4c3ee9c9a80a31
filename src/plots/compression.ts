/** The compression curve of a whole test: void ratio upward, or strain downward, against log stress. */
import type { ConstructionLine } from "../reduction/construction";
import type { CurvePicks } from "../reduction/curve/picks";
import { branches, type Branches } from "../reduction/curve/shape/branches";
import { DRAWING_SLOPE } from "../reduction/curve/methods/casagrande";
import { testCurve, type Kind, type LoadPoint, type TestCurve } from "../reduction/curve/shape/points";
import { preconsolidation, type Preconsolidation } from "../reduction/curve/preconsolidation";
import type { MethodName } from "../reduction/curve/method-words";
import { english, say, verbatim, type Message } from "../reduction/message";
import { firstOf } from "../reduction/numeric/lists";
import { given, then, type Outcome } from "../reduction/outcome";
import { fromZero, padded, scaledShape, toAxis, wholeDecades } from "./axes";
import { METHOD_PLOTS } from "./methods";
import { labelIn, type InWords } from "./words";
import type { DrawnScale, PlotAxis, PlotSeries, PlotSpec, SeriesLabel } from "./spec";
import type { Cells } from "./time";

export interface CompressionPlotOptions {
  /** "kPa"; the axis says it. */
  readonly stressUnit?: string;
  /** The method whose construction is drawn; Casagrande's if omitted. */
  readonly method?: MethodName;
  /** Picks by hand, for a reading that has not been calculated yet. */
  readonly picks?: CurvePicks;
  /** The reading of the method for the same cells, if it has been calculated already. */
  readonly yieldReading?: Outcome<Preconsolidation>;
  /** Lines of the curve's own plane that are drawn with the construction, such as the line through a loop. */
  readonly also?: readonly ConstructionLine[];
  /** Series drawn behind, for comparison; in the plane of the method. */
  readonly behind?: readonly PlotSeries[];
  /** Value before the first load, such as e0. */
  readonly initial?: number;
  /** Stresses to mark, such as the in-situ stress. */
  readonly marks?: readonly StressMark[];
  /** The language of titles, axes, letters and notes; English if omitted. */
  readonly inWords?: InWords;
}

export interface StressMark {
  /** "in-situ stress" */
  readonly label: SeriesLabel;
  /** "σ′v0"; the label adds the stress and its unit. */
  readonly letters: string;
  readonly stress: number;
}

type Point = readonly [stress: number, value: number];
const toPoint = ({ stress, value }: LoadPoint): Point => [stress, value];

/**
 * The points of the test in the order of the loads, joined: loading and reloading filled, unloading open, a step at
 * constant stress dashed.
 */
function testSeries(points: readonly LoadPoint[], known: Branches | undefined, words: InWords): PlotSeries[] {
  const unloading = known ? [...known.loops.map(({ unload }) => unload), known.finalUnloading] : [];
  const open = new Set(unloading.flatMap((branch) => branch.slice(1).map(({ row }) => row)));
  const series: PlotSeries[] = [
    { label: "test", style: "joined", points: points.map(toPoint) },
    {
      label: "loading",
      style: "points",
      symbol: "filled",
      points: points.filter(({ row }) => !open.has(row)).map(toPoint),
    },
  ];
  for (const step of known?.wetting ?? [])
    series.push({ label: "wetting", style: "guide", points: step.map(toPoint), letters: labelIn(words, "wetting") });
  const unloaded = points.filter(({ row }) => open.has(row)).map(toPoint);
  if (unloaded.length) series.push({ label: "unloading", style: "points", symbol: "open", points: unloaded });
  return series;
}

export const figures = (value: number): string => String(Number(value.toPrecision(3)));

/** The lines of a method with their labels; the yield point with its stress. */
const constructionSeries = (
  lines: readonly ConstructionLine[],
  x: PlotAxis,
  y: PlotAxis,
  unit: string,
  words: InWords,
): PlotSeries[] =>
  lines.map((line) => ({
    ...toAxis(line, x, y),
    symbol: line.style === "points" ? "cross" : undefined,
    letters: line.style === "guide" ? `σ′p ${figures(firstOf(line.points)[0])} ${unit}` : labelIn(words, line.label),
  }));

/** Vertical lines over the whole height, behind the lines of the test. */
export const markSeries = (marks: readonly StressMark[], y: PlotAxis, unit: string): PlotSeries[] =>
  marks.map(({ label, letters, stress }) => ({
    label,
    style: "guide",
    points: [
      [stress, y.domain[0]],
      [stress, y.domain[1]],
    ],
    letters: `${letters} ${figures(stress)} ${unit}`,
  }));

/** The series behind; a vertical line without points of its own reaches over the whole height. */
const behindIn = (behind: readonly PlotSeries[], { domain }: PlotAxis): PlotSeries[] =>
  behind.map(({ points, ...series }) => {
    const [only] = points.length === 1 ? points : [];
    const whole = only && domain.map((value) => [only[0], value] as const);
    return { ...series, points: whole ?? points, isBehind: true };
  });

export const stressLabel = (unit: string, logarithmic: boolean): Message =>
  logarithmic
    ? say`Effective vertical stress (${verbatim(unit)}), log scale`
    : say`Effective vertical stress (${verbatim(unit)})`;

interface OwnPlane {
  /** What the plane has against stress. */
  readonly quantity: Message;
  readonly unit: string;
  readonly remarks: readonly Message[];
  readonly marks: readonly StressMark[];
  readonly behind: readonly PlotSeries[];
}

/** The plot of a method in its own plane, not on the compression curve: first loading and the lines of the method. */
function ownPlane(
  { method, lines, points }: Preconsolidation,
  { quantity, unit, remarks, marks, behind }: OwnPlane,
  words: InWords,
): PlotSpec {
  const { logarithmic, source } = METHOD_PLOTS[method];
  const of = words(quantity);
  const drawn = lines.flatMap((line) => line.points);
  const up = drawn.map(([, value]) => value);
  const across = [...drawn.map(([stress]) => stress), ...marks.map(({ stress }) => stress)];
  const x: PlotAxis = {
    label: words(stressLabel(unit, logarithmic)),
    scale: logarithmic ? "log" : "linear",
    domain: logarithmic ? wholeDecades(across) : fromZero(across),
    reversed: false,
  };
  const y: PlotAxis = {
    label: of + (logarithmic ? "" : ` (${unit})`),
    scale: "linear",
    domain: padded(up),
    reversed: false,
  };
  const isRead = ({ style }: ConstructionLine): boolean => style === "points" || style === "curve";
  const read = lines.filter(isRead).map((line) => ({
    ...line,
    style: line.style === "curve" ? ("joined" as const) : line.style,
    symbol: "filled" as const,
  }));
  const ruled = lines.filter((line) => !isRead(line));
  return {
    title: of,
    x,
    y,
    series: [
      ...behindIn(behind, y),
      ...markSeries(marks, y, unit),
      ...constructionSeries(ruled, x, y, unit, words),
      ...read,
    ],
    remarks,
    notes: [words(say`${verbatim(source)}. Points used: ${points}.`)],
  };
}

/** The slope of the virgin line as drawn data, from which the scale of the construction is calculated. */
function scaleOf(lines: readonly ConstructionLine[]): DrawnScale | undefined {
  const virgin = lines.find(({ label }) => label === "virgin line")?.points;
  const [start, end] = virgin ?? [];
  if (!start || !end) return undefined;
  const [[x0, y0], [x1, y1]] = [start, end];
  return { perCycle: Math.abs((y1 - y0) / Math.log10(x1 / x0)), slope: DRAWING_SLOPE };
}

const degrees = Math.round((Math.atan(DRAWING_SLOPE) * 180) / Math.PI);

/**
 * The compression curve with the construction of a method, drawn in the plane of the method. Stresses in one unit, void
 * ratios or strains (ratios), in test order. If the method reads no yield, the curve alone, with the reason as
 * `refusal`. Refuses cells that are not a test.
 */
export const compressionPlot = (
  stresses: Cells,
  values: Cells,
  kind: Kind,
  options: CompressionPlotOptions = {},
): Outcome<PlotSpec> => then(testCurve(stresses, values, kind, options.initial), (test) => plotOfTest(test, options));

/** As `compressionPlot`, of a test that was read already. */
export function plotOfTest(test: TestCurve, options: CompressionPlotOptions): Outcome<PlotSpec> {
  const { stressUnit = "kPa", method = "casagrande", yieldReading, marks = [], inWords = english } = options;
  const { also = [], behind = [], picks } = options;
  const { points, kind } = test;
  const known = branches(test);
  if (!known.ok && known.fault === "input") return known;
  const reading = yieldReading ?? preconsolidation(test, { method, picks });
  const { quantity } = METHOD_PLOTS[method];
  if (reading.ok && quantity)
    return given(
      ownPlane(reading.value, { quantity, unit: stressUnit, remarks: reading.remarks, marks, behind }, inWords),
    );
  const lines = reading.ok ? reading.value.lines.filter(({ label }) => label !== "first loading") : [];
  const x: PlotAxis = {
    label: inWords(stressLabel(stressUnit, true)),
    scale: "log",
    domain: wholeDecades([...points, ...marks].map(({ stress }) => stress)),
    reversed: false,
  };
  const y: PlotAxis = {
    label: inWords(kind === "e" ? say`Void ratio e` : say`Axial strain`),
    scale: "linear",
    domain: padded(points.map(({ value }) => value)),
    reversed: kind === "strain",
  };
  const scale = method === "casagrande" ? scaleOf(lines) : undefined;
  const drawn = scale && scaledShape(x, y, scale) ? scale : undefined;
  const tested = testSeries(points, known.ok ? known.value : undefined, inWords);
  return given({
    title: inWords(say`Compression curve`),
    x,
    y,
    series: [
      ...behindIn(behind, y),
      ...markSeries(marks, y, stressUnit),
      ...constructionSeries([...lines, ...also], x, y, stressUnit, inWords),
      ...tested,
    ],
    remarks: reading.ok ? reading.remarks : known.ok ? known.remarks : [],
    refusal: reading.ok ? undefined : reading.reason,
    notes: [
      ...(tested.some(({ symbol }) => symbol === "open")
        ? [say`Filled symbols: loading; open symbols: unloading.`]
        : []),
      ...(scale
        ? [
            drawn
              ? say`Construction made with the virgin line at a slope of ${DRAWING_SLOPE} (${degrees}°); drawn at that scale.`
              : say`Construction made with the virgin line at a slope of ${DRAWING_SLOPE} (${degrees}°); this drawing is not at that scale.`,
          ]
        : []),
    ].map(inWords),
    drawnScale: drawn,
  });
}
