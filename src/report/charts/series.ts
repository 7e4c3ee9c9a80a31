/**
 * The numbers of a plot as live formulas on the cells of a data sheet, or on two columns of any sheet, with a chart of
 * them: if a reading changes, the chart changes. Formulas name cells by sheet and address, which both hosts understand.
 *
 * The ends of the axes are fixed when the series are made, as in the pane's plot of the same numbers: whole decades of
 * time and stress, round numbers elsewhere. If the host fitted an axis, it would begin at zero or end at odd numbers,
 * and the lines of a construction could not reach it. Later readings within the ends appear by themselves; for readings
 * beyond them the chart must be inserted again.
 */
import { cAlphaPlot, cvPlot } from "../../plots/coefficients";
import { compressionPlot } from "../../plots/compression";
import type { PlotSpec } from "../../plots/spec";
import { logTimePlot, rootTimePlot, type Cells } from "../../plots/time";
import { labelIn, type InWords } from "../../plots/words";
import type { MethodName } from "../../reduction/curve/method-words";
import type { TimeMethod } from "../../reduction/increment/constructions/picks";
import { english, say, verbatim } from "../../reduction/message";
import { badInput, given, then, type Outcome } from "../../reduction/outcome";
import { MOST_LOADS, readingsName } from "../../specification/readings";
import type { Box } from "../../workbook/port";
import { cAlphaOf, coefficientBlock, cvOf } from "./coefficient-series";
import { compressionOf, curveBlock } from "./compression-series";
import { fieldOf } from "./field";
import { intrinsicOf } from "./intrinsic";
import type { SeriesBlock } from "./series-block";
import { Sheet, sourceOf, type DataSheet, type DrawnColumns } from "./sheet-cells";
import { swellOf } from "./swell-series";
import { timeBlock, timeOf } from "./time-series";

export type { SeriesBlock } from "./series-block";
export type { DataSheet } from "./sheet-cells";
export { chartsSheet, seriesSheet } from "./series-sheet";

export type DataPlot =
  | { readonly plot: "compression"; readonly value: "e" | "strain"; readonly method?: MethodName }
  | { readonly plot: "log time" | "root time"; readonly load: number }
  | { readonly plot: "cv"; readonly by: "chosen" | TimeMethod | "both" }
  | { readonly plot: "field" }
  /** Of the stage of wetting that a load is; without a load, of the one that the results of the sheet are of. */
  | { readonly plot: "swell"; readonly load?: number }
  | { readonly plot: "intrinsic" }
  /** The scale of the stresses; even if omitted. */
  | { readonly plot: "c alpha"; readonly stressScale?: "linear" | "log" };

/** Two columns of a sheet, of equal length, with their numbers; a blank is null. */
export interface RangePlot {
  readonly plot: "log time" | "root time" | "compression e" | "compression strain" | "cv" | "c alpha";
  readonly sheet: string;
  readonly x: Box;
  readonly y: Box;
  readonly xs: Cells;
  readonly ys: Cells;
  readonly method?: MethodName;
  /** Replaces the title of the plot. */
  readonly title?: string;
  readonly xLabel?: string;
  readonly yLabel?: string;
  /** Puts the other texts of the plot into words; English if it is left out. */
  readonly inWords?: InWords;
}

/** A plot of a data sheet. Refuses, with the reason, if cells are missing or hold nothing to draw. */
export function seriesOf(data: DataSheet, plot: DataPlot): Outcome<SeriesBlock> {
  const sheet = new Sheet(data);
  return then(blockOf(sheet, plot), (block) => given(named(block, sheet.words)));
}

function blockOf(sheet: Sheet, plot: DataPlot): Outcome<SeriesBlock> {
  if (plot.plot === "compression") return compressionOf(sheet, plot.value, plot.method);
  if (plot.plot === "cv") return cvOf(sheet, plot.by);
  if (plot.plot === "c alpha") return cAlphaOf(sheet, plot.stressScale);
  if (plot.plot === "field") return fieldOf(sheet);
  if (plot.plot === "swell") return swellOf(sheet, plot.load);
  if (plot.plot === "intrinsic") return intrinsicOf(sheet);
  return timeOf(sheet, plot.plot, plot.load);
}

/** The block with the names of its series, and the headings of its columns, in a language. */
const named = (block: SeriesBlock, words: InWords): SeriesBlock => ({
  ...block,
  columns: block.columns.map((column) => ({ ...column, heading: labelIn(words, column.heading) })),
  series: block.series.map((series) => ({ ...series, name: labelIn(words, series.name) })),
});

/** The time curves of all loads that have one, in test order. Refuses if no load has one. */
export function everyLoad(data: DataSheet, plot: "log time" | "root time"): Outcome<SeriesBlock[]> {
  const sheet = new Sheet(data);
  const made = Array.from({ length: MOST_LOADS }, (_, index) => index + 1)
    .filter((load) => sheet.numbers(readingsName(load)).some((reading) => reading !== null))
    .flatMap((load) => {
      const block = timeOf(sheet, plot, load);
      return block.ok ? [named(block.value, sheet.words)] : [];
    });
  return made.length
    ? given(made)
    : badInput(say`the sheet "${verbatim(data.sheet)}" has no load with readings to draw`);
}

/** A plot of two columns of a sheet. Refuses, with the reason, if they hold nothing to draw. */
export function seriesOfRange(range: RangePlot): Outcome<SeriesBlock> {
  const { plot, sheet, x, y, xs, ys, method, inWords = english } = range;
  const rows = Math.min(x.rows, y.rows);
  const [across, up] = [sourceOf(sheet, x, rows), sourceOf(sheet, y, rows)];
  const labelled = (spec: PlotSpec): PlotSpec => ({
    ...spec,
    title: range.title ?? spec.title,
    x: { ...spec.x, label: range.xLabel ?? spec.x.label },
    y: { ...spec.y, label: range.yLabel ?? spec.y.label },
  });
  const made = (spec: Outcome<PlotSpec>, block: (spec: PlotSpec) => DrawnColumns): Outcome<SeriesBlock> =>
    then(spec, (own) => {
      const drawn = labelled(own);
      return given(named({ title: drawn.title, ...block(drawn) }, inWords));
    });
  switch (plot) {
    case "log time":
    case "root time":
      return made((plot === "log time" ? logTimePlot : rootTimePlot)(xs, ys, { inWords }), (spec) =>
        timeBlock(plot, { times: across, readings: up, shown: rows }, sheet, [x, y], spec, inWords),
      );
    case "compression e":
    case "compression strain": {
      const kind = plot === "compression e" ? "e" : "strain";
      return made(compressionPlot(xs, ys, kind, { method, inWords }), (spec) =>
        curveBlock({ stresses: across, value: up.cell, values: up.whole, kind, method }, spec, inWords),
      );
    }
    case "cv":
      return made(
        cvPlot(
          xs,
          ys,
          ys.map(() => null),
          { inWords },
        ),
        (spec) =>
          coefficientBlock(
            {
              stresses: across,
              sets: [{ name: "cv", shape: "circle", values: up }],
              joined: { name: "test", values: up },
              at: "mean",
            },
            spec,
          ),
      );
    case "c alpha":
      return made(cAlphaPlot(xs, ys, { inWords }), (spec) =>
        coefficientBlock(
          {
            stresses: across,
            sets: [{ name: "C alpha", shape: "circle", values: up }],
            joined: { name: "test", values: up },
            at: "end",
          },
          spec,
        ),
      );
  }
}
