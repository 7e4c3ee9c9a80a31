/** The field compression curve beside the laboratory curve, void ratio against log stress. */
import { curveAt } from "../reduction/curve/curve-at";
import { FIELD_FACTOR, fieldCurve, type FieldCurveInput } from "../reduction/curve/field-curve";
import { testCurve, type TestCurve } from "../reduction/curve/shape/points";
import { english, fixed, say, type Message } from "../reduction/message";
import { given, then, type Outcome } from "../reduction/outcome";
import { padded, wholeDecades } from "./axes";
import { stressLabel } from "./compression";
import type { PlotAxis, PlotSeries, PlotSpec, SeriesLabel } from "./spec";
import type { Cells } from "./time";
import { labelIn, type InWords } from "./words";

export interface FieldPlotOptions extends Omit<FieldCurveInput, "test"> {
  /** The unit, such as "kPa", for the label of the axis. */
  readonly stressUnit?: string;
  /** The language of titles, axes, letters and notes; English if omitted. */
  readonly inWords?: InWords;
}

/** The keys of the series; `words.ts` contains their words. */
export const FIELD_LABELS = {
  laboratory: "laboratory curve",
  loads: "laboratory loads",
  field: "field curve",
  inSitu: "in situ",
  fieldYield: "yield of the field curve",
  laboratoryYield: "yield of the laboratory curve",
  meeting: "field curve meets laboratory line",
} as const;

type Point = readonly [stress: number, voidRatio: number];

/** The points of the plot, each with its letters. */
function marksOf(line: readonly Point[], laboratoryYield: Point | undefined, words: InWords): PlotSeries[] {
  const mark = (label: SeriesLabel, symbol: PlotSeries["symbol"], points: readonly Point[]): PlotSeries[] =>
    points.length === 0 ? [] : [{ label, style: "points", symbol, points, letters: labelIn(words, label) }];
  return [
    ...mark(FIELD_LABELS.inSitu, "open", line.slice(0, 1)),
    ...mark(FIELD_LABELS.fieldYield, "open", line.slice(1, -1)),
    ...mark(FIELD_LABELS.laboratoryYield, "cross", laboratoryYield ? [laboratoryYield] : []),
    ...mark(FIELD_LABELS.meeting, "cross", line.slice(-1)),
  ];
}

/**
 * The field curve by Schmertmann, from the in-situ point over the preconsolidation stress to the laboratory line at `factor`
 * times the initial void ratio; in normally consolidated clay from the in-situ point. Stresses in one unit, void ratios, in test
 * order; a blank is null. Refuses what `fieldCurve` refuses.
 */
export const fieldCurvePlot = (stresses: Cells, voidRatios: Cells, options: FieldPlotOptions): Outcome<PlotSpec> =>
  then(testCurve(stresses, voidRatios, "e", options.initialVoidRatio), (test) => plotOf(test, options));

function plotOf(test: TestCurve, options: FieldPlotOptions): Outcome<PlotSpec> {
  const { stressUnit = "kPa", factor = FIELD_FACTOR, inWords = english } = options;
  const found = fieldCurve({ test, ...options });
  if (!found.ok) return found;
  const line = found.value.points.map(({ stress, voidRatio }): Point => [stress, voidRatio]);
  const laboratory = test.points.map(({ stress, value }): Point => [stress, value]);
  const bend = line.slice(1, -1)[0];
  const yieldStress = options.preconsolidationStress ?? bend?.[0];
  const atYield = yieldStress === undefined ? undefined : curveAt(test, yieldStress);
  const laboratoryYield: Point | undefined =
    yieldStress !== undefined && atYield?.ok ? [yieldStress, atYield.value] : undefined;
  const drawn = [...laboratory, ...line];
  const x: PlotAxis = {
    label: inWords(stressLabel(stressUnit, true)),
    scale: "log",
    domain: wholeDecades(drawn.map(([stress]) => stress)),
    reversed: false,
  };
  const y: PlotAxis = {
    label: inWords(say`Void ratio e`),
    scale: "linear",
    domain: padded(drawn.map(([, voidRatio]) => voidRatio)),
    reversed: false,
  };
  const notes: Message[] = [
    say`The field curve meets the laboratory line at ${factor} e0; its Cc is ${fixed(found.value.compressionIndex, 3)}.`,
    ...(bend ? [] : [say`Normally consolidated: the field curve begins at the in-situ stress.`]),
  ];
  return given({
    title: inWords(say`Field curve`),
    x,
    y,
    series: [
      { label: FIELD_LABELS.laboratory, style: "joined", points: laboratory },
      { label: FIELD_LABELS.loads, style: "points", symbol: "filled", points: laboratory },
      { label: FIELD_LABELS.field, style: "construction", points: line, letters: labelIn(inWords, FIELD_LABELS.field) },
      ...marksOf(line, laboratoryYield, inWords),
    ],
    remarks: found.remarks,
    notes: notes.map(inWords),
  });
}
