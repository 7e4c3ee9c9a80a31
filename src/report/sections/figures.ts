/**
 * The plots of the report: two or three on a page, time curves eight on a page. Their series are live formulas in
 * columns of the report sheet, beside its pages, so that the report is one sheet: it is made completely, or not at all.
 */
import { english } from "../../reduction/message";
import type { CellPlan, ChartPlan } from "../../workbook/port";
import { band, COLUMNS, gap, paragraph, ROWS_PER_PAGE, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";
import { blockRows, chartOf, placeBlock, type SeriesBlock } from "../charts/series-block";
import { seriesOf, type DataPlot } from "../charts/series";

const ACROSS = 2;
const DOWN = 4;

export interface ReportPlots {
  readonly compression?: SeriesBlock;
  readonly cv?: SeriesBlock;
  readonly cAlpha?: SeriesBlock;
  /** One for each load with readings, in test order. */
  readonly times: readonly SeriesBlock[];
  /** Why a plot is missing that a report should have. */
  readonly reasons: readonly string[];
}

/** The plots of a data sheet; each time curve has the construction that reduces its load. */
export function plotsOf(cells: DataCells, loads: readonly ReportedLoad[]): ReportPlots {
  const { sheet, names, values } = cells.source;
  const reasons: string[] = [];
  const made = (plot: DataPlot, what: string, isRequired = true): SeriesBlock | undefined => {
    const block = seriesOf({ sheet, names, values }, plot);
    if (block.ok) return block.value;
    if (isRequired) reasons.push(`${what}: ${english(block.reason)}`);
    return undefined;
  };
  const compression =
    made(
      { plot: "compression", value: "e", method: "casagrande" },
      "compression curve with Casagrande's lines",
      false,
    ) ?? made({ plot: "compression", value: "e" }, "compression curve");
  const cv = made({ plot: "cv", by: "both" }, "cv against stress");
  const cAlpha = made({ plot: "c alpha" }, "C alpha against stress", false);
  const times = loads
    .filter(({ readings }) => readings > 0)
    .flatMap(({ number, row }) => {
      const chosen = cells.text("load_method", row) || cells.text("time_method");
      const plot = chosen === "root time" ? "root time" : "log time";
      return made({ plot, load: number }, `time curve of load ${number}`) ?? [];
    });
  if (times.length === 0 && !reasons.some((reason) => reason.startsWith("time curve")))
    reasons.push("time curves: no load has readings");
  return { compression, cv, cAlpha, times, reasons };
}

/** The series of a plot in the columns beside the pages, and its chart. */
export interface Placed {
  readonly cells: readonly CellPlan[];
  readonly rows: number;
  /** The next free column. */
  readonly right: number;
  readonly chart: (block: SeriesBlock) => Omit<ChartPlan, "box">;
}

/** First row of the series, below their note. */
const TOP = 2;

/** Lays the series of all plots out side by side, from a column on. */
export function placeSeries(plots: ReportPlots, left: number): Placed {
  const { compression, cv, cAlpha, times } = plots;
  const blocks = [compression, cv, cAlpha, ...times].filter((block) => block !== undefined);
  const corners = new Map<SeriesBlock, { row: number; col: number }>();
  let col = left;
  for (const block of blocks) {
    corners.set(block, { row: TOP, col });
    col += block.columns.length + 1;
  }
  const note: CellPlan = {
    row: 0,
    col: left,
    kind: "note",
    value: "What the plots are drawn from, not printed. A point that does not show has #N/A for its y, on purpose.",
  };
  return {
    cells: blocks.length ? [note, ...blocks.flatMap((block) => placeBlock(block, corners.get(block)!))] : [],
    rows: blocks.length ? TOP + Math.max(...blocks.map(blockRows)) : 0,
    right: col,
    chart: (block) => chartOf(block, corners.get(block)!),
  };
}

/** Charts side by side, of equal width. */
const abreast = (charts: readonly Omit<ChartPlan, "box">[], rows: number, across: number): Block => ({
  rows: rows + 1,
  cells: [],
  charts: charts.map((chart, index) => ({
    ...chart,
    box: { row: 0, col: (index * COLUMNS) / across, rows, cols: COLUMNS / across },
  })),
});

/** The chart without names beside its lines: a small plot has no room for them. */
const unlettered = (chart: Omit<ChartPlan, "box">): Omit<ChartPlan, "box"> => ({
  ...chart,
  series: chart.series.map((series) => ({ ...series, lettered: false })),
});

/** The pages of plots. */
export function figures(plots: ReportPlots, placed: Placed, paper: "A4" | "Letter"): Block[] {
  const { compression, cv, cAlpha, times, reasons } = plots;
  const height = ROWS_PER_PAGE[paper];
  const small = [cv, cAlpha].filter((block) => block !== undefined).map(placed.chart);
  const blocks: Block[] = [
    band("Plots", { newPage: true }),
    ...reasons.flatMap((reason) => paragraph(`Not drawn: ${reason}.`)),
    ...(compression ? [abreast([placed.chart(compression)], Math.floor(height / 2), 1)] : []),
    ...(small.length ? [abreast(small, Math.floor(height / 2) - 8, ACROSS)] : []),
  ];
  const rows = Math.floor((height - 3) / DOWN) - 1;
  for (let first = 0; first < times.length; first += ACROSS) {
    if ((first / ACROSS) % DOWN === 0)
      blocks.push(band(first === 0 ? "Time curves" : "Time curves, continued", { newPage: true }));
    blocks.push(
      abreast(
        times.slice(first, first + ACROSS).map((block) => unlettered(placed.chart(block))),
        rows,
        ACROSS,
      ),
    );
  }
  return [...blocks, gap];
}
