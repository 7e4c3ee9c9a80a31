/**
 * The void index of the test against log stress, beside the intrinsic compression line of reconstituted clay and the
 * sedimentation compression line of natural clay.
 */
import {
  intrinsic,
  intrinsicLine,
  LINE_STRESSES,
  SEDIMENTATION_SENSITIVITY,
  sedimentationLine,
} from "../reduction/curve/intrinsic";
import { testCurve, type TestCurve } from "../reduction/curve/shape/points";
import { english, fixed, say } from "../reduction/message";
import { given, then, type Outcome } from "../reduction/outcome";
import { convert } from "../reduction/units";
import { padded, wholeDecades } from "./axes";
import { stressLabel } from "./compression";
import type { PlotSeries, PlotSpec, SeriesLabel } from "./spec";
import type { Cells } from "./time";
import { labelIn, type InWords } from "./words";

export interface IntrinsicPlotOptions {
  /** The unit of the stresses; kPa if it is left out. */
  readonly stressUnit?: string;
  /** As a ratio. */
  readonly liquidLimit: number;
  readonly specificGravity: number;
  readonly initialVoidRatio: number;
  readonly inSituStress?: number;
  /** The language of titles, axes, letters and notes; English if omitted. */
  readonly inWords?: InWords;
}

/** The keys of the series; `words.ts` contains their words. */
export const INTRINSIC_LABELS = {
  test: "void index of the test",
  loads: "void index of the loads",
  intrinsic: "intrinsic compression line",
  sedimentation: "sedimentation compression line",
  inSitu: "in situ",
} as const;

/**
 * The void index (e - e*100) / C*c of each load. Stresses in one unit, void ratios, in test order; a blank is null.
 * Refuses what `intrinsic` and `testCurve` refuse.
 */
export const intrinsicPlot = (stresses: Cells, voidRatios: Cells, options: IntrinsicPlotOptions): Outcome<PlotSpec> =>
  then(testCurve(stresses, voidRatios, "e", options.initialVoidRatio), (test) => plotOf(test, options));

function plotOf(test: TestCurve, options: IntrinsicPlotOptions): Outcome<PlotSpec> {
  const {
    stressUnit = "kPa",
    liquidLimit,
    specificGravity,
    initialVoidRatio,
    inSituStress,
    inWords = english,
  } = options;
  return then(intrinsic(liquidLimit, specificGravity), ({ e100, Cc }) => {
    const index = (voidRatio: number): number => (voidRatio - e100) / Cc;
    const curve = test.points.map(({ stress, value }) => [stress, index(value)] as const);
    const inSitu = inSituStress === undefined ? [] : [[inSituStress, index(initialVoidRatio)] as const];
    const line = (at: (stress: number) => number) =>
      LINE_STRESSES.map((stress) => [convert(stress, "stress", "kPa", stressUnit), at(stress)] as const);
    const lines = [line(intrinsicLine), line(sedimentationLine)] as const;
    const drawn = [...curve, ...inSitu, ...lines[0], ...lines[1]];
    const lettered = (label: SeriesLabel, style: PlotSeries["style"], points: PlotSeries["points"]): PlotSeries => ({
      ...{ label, style, points },
      letters: labelIn(inWords, label),
    });
    return given({
      title: inWords(say`Void index`),
      x: {
        label: inWords(stressLabel(stressUnit, true)),
        scale: "log",
        domain: wholeDecades(drawn.map(([stress]) => stress)),
        reversed: false,
      },
      y: {
        label: inWords(say`Void index`),
        scale: "linear",
        domain: padded(drawn.map(([, value]) => value)),
        reversed: false,
      },
      series: [
        { label: INTRINSIC_LABELS.test, style: "joined", points: curve },
        { label: INTRINSIC_LABELS.loads, style: "points", symbol: "filled", points: curve },
        lettered(INTRINSIC_LABELS.intrinsic, "construction", lines[0]),
        lettered(INTRINSIC_LABELS.sedimentation, "guide", lines[1]),
        ...(inSitu.length > 0
          ? [{ ...lettered(INTRINSIC_LABELS.inSitu, "points", inSitu), symbol: "open" as const }]
          : []),
      ],
      remarks: [],
      notes: [
        inWords(
          say`e*100 is ${fixed(e100, 3)} and C*c ${fixed(Cc, 3)}, by correlation with the liquid limit (Burland 1990).`,
        ),
        inWords(
          say`The sedimentation compression line is drawn at ${SEDIMENTATION_SENSITIVITY} times the stress of the intrinsic line: from memory, no printed numbers were found.`,
        ),
      ],
    });
  });
}
