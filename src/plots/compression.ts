/** The compression curve of a whole test: void ratio upward, or strain downward, against log stress. */
import { branches, type Branches } from "../reduction/curve/branches";
import { testCurve, type Kind, type LoadPoint } from "../reduction/curve/points";
import { given, then, type Outcome } from "../reduction/outcome";
import { padded, wholeDecades } from "./axes";
import type { PlotSeries, PlotSpec } from "./spec";
import type { Cells } from "./time";

export interface CompressionPlotOptions {
  /** "kPa"; the axis says it. */
  readonly stressUnit?: string;
}

const toPoint = ({ stress, value }: LoadPoint): readonly [number, number] => [stress, value];

/** Loading and unloading of a test whose branches are known: filled and open symbols, joined in test order. */
function testSeries(points: readonly LoadPoint[], known: Branches | undefined): PlotSeries[] {
  const unloaded = new Set(
    known
      ? [...known.loops.flatMap(({ unload }) => unload.slice(1)), ...known.finalUnloading.slice(1)].map(
          ({ row }) => row,
        )
      : [],
  );
  const series: PlotSeries[] = [
    { label: "test", style: "curve", lettered: false, points: points.map(toPoint) },
    {
      label: "loading",
      style: "points",
      symbol: "filled",
      lettered: false,
      points: points.filter(({ row }) => !unloaded.has(row)).map(toPoint),
    },
  ];
  if (unloaded.size)
    series.push({
      label: "unloading",
      style: "points",
      symbol: "open",
      lettered: false,
      points: points.filter(({ row }) => unloaded.has(row)).map(toPoint),
    });
  return series;
}

/** Stresses in one unit, void ratios or strains (ratios), in test order. Refuses what the reduction cannot read as a test. */
export const compressionPlot = (
  stresses: Cells,
  values: Cells,
  kind: Kind,
  { stressUnit = "kPa" }: CompressionPlotOptions = {},
): Outcome<PlotSpec> =>
  then(testCurve(stresses, values, kind), ({ points }) => {
    const known = branches({ kind, points });
    if (!known.ok && known.fault === "input") return known;
    return given({
      title: "Compression curve",
      x: {
        label: `Effective vertical stress (${stressUnit}), log scale`,
        scale: "log",
        domain: wholeDecades(points.map(({ stress }) => stress)),
        reversed: false,
      },
      y: {
        label: kind === "e" ? "Void ratio e" : "Axial strain",
        scale: "linear",
        domain: padded(points.map(({ value }) => value)),
        reversed: kind === "strain",
      },
      series: testSeries(points, known.ok ? known.value : undefined),
      remarks: known.ok ? known.remarks : [],
      refusal: known.ok ? undefined : known.reason,
      notes: [],
    });
  });
