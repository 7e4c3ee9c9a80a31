/**
 * The plots of the report. Their series are live formulas in columns beside the pages of the report's own sheet.
 * Because the report is a single sheet, it is made completely or not at all.
 */
import { wettingPlaces } from "../../record/wetting";
import { digits, say, verbatim, type Message } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import type { CellPlan, ChartPlan } from "../../workbook/port";
import { band, COLUMNS, gap, paragraph, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";
import { blockRows, chartOf, placeBlock, type SeriesBlock } from "../charts/series-block";
import { yieldMethodOf } from "../../record/reduced-test";
import { seriesOf, type DataPlot } from "../charts/series";
import { roundedDomain, stepsOf } from "../../workbook/look/chart-axis";

/** Number of time curves side by side, and of larger plots. */
const ACROSS = 4;
const LARGE_ACROSS = 2;
/** The rows of a time curve, and of a larger plot. A page of Letter is shorter than a page of A4. */
const ROWS = { A4: 10, Letter: 9 } as const;
const LARGE_ROWS = { A4: 18, Letter: 15 } as const;

export interface ReportPlots {
  /** The curve of the first page, and the same curve in strain instead of void ratio, or the other way round. */
  readonly compression?: SeriesBlock | undefined;
  readonly other?: SeriesBlock | undefined;
  readonly field?: SeriesBlock | undefined;
  readonly cv?: SeriesBlock | undefined;
  readonly cAlpha?: SeriesBlock | undefined;
  /** Strain against time of each stage of wetting. */
  readonly swell: readonly SeriesBlock[];
  /** One for each load with readings, in test order. */
  readonly times: readonly SeriesBlock[];
  /** Why a plot is missing that a report should have. */
  readonly reasons: readonly Message[];
}

/** The title of a small plot, without boring and sample, which stand at the head of the page. */
function titleOf(cells: DataCells, { number, row }: Pick<ReportedLoad, "number" | "row">): string {
  const stress = cells.number("load_stress", row);
  const load = say`Load ${number}`;
  return cells.words(
    stress === undefined ? load : say`${load}, ${digits(stress, 4)} ${verbatim(cells.text("stress_unit"))}`,
  );
}

/** The loads of the stages of wetting where there are several; else undefined once, for the stage of the results. */
function stagesOf({ source: { record } }: DataCells): readonly (number | undefined)[] {
  const loads = wettingPlaces(record).map((at) => nth(record.loads, at).number);
  return loads.length > 1 ? loads : [undefined];
}

/** The plots of a data sheet; each time curve has the construction that reduces its load. */
export function plotsOf(cells: DataCells, loads: readonly ReportedLoad[]): ReportPlots {
  const { sheet, names, values, curve = "e" } = cells.source;
  const reasons: Message[] = [];
  const made = (plot: DataPlot, what: Message, isRequired = true): SeriesBlock | undefined => {
    const block = seriesOf({ sheet, names, values, inWords: cells.words }, plot);
    if (block.ok) return block.value;
    if (isRequired) reasons.push(say`${what}: ${block.reason}`);
    return undefined;
  };
  const method = yieldMethodOf(cells.source.record);
  const curveIn = (value: "e" | "strain", isRequired: boolean): SeriesBlock | undefined =>
    made({ plot: "compression", value, method }, say`compression curve with the lines of the method`, false) ??
    made({ plot: "compression", value }, say`compression curve`, isRequired);
  const compression = curveIn(curve, true);
  const other = curveIn(curve === "e" ? "strain" : "e", false);
  const field = made({ plot: "field" }, say`field curve`, false);
  const cv = made({ plot: "cv", by: "both" }, say`cv against stress`);
  const cAlpha = made({ plot: "c alpha", stressScale: "log" }, say`C alpha against stress`, false);
  const swell = stagesOf(cells).flatMap(
    (load) => made({ plot: "swell", load }, say`wetting against time`, false) ?? [],
  );
  const read = loads.filter(({ readings }) => readings > 0);
  const times = read.flatMap(({ number, row }) => {
    const chosen = cells.text("load_method", row) || cells.text("time_method");
    const plot = chosen === "root time" ? "root time" : "log time";
    const block = made({ plot, load: number }, say`time curve of load ${number}`);
    return block ? { ...block, title: titleOf(cells, { number, row }) } : [];
  });
  if (read.length === 0) reasons.push(say`time curves: no load has readings`);
  return { compression, other, field, cv, cAlpha, swell, times, reasons };
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
export function placeSeries(cells: DataCells, plots: ReportPlots, left: number): Placed {
  const { compression, other, field, cv, cAlpha, swell, times } = plots;
  const blocks = [compression, other, field, cv, cAlpha, ...swell, ...times].filter((block) => block !== undefined);
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
    value: cells.words(
      say`What the plots are drawn from, not printed. A point that does not show has #N/A for its y, on purpose.`,
    ),
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
  rows,
  cells: [],
  charts: charts.map((chart, index) => ({
    ...chart,
    box: { row: 0, col: (index * COLUMNS) / across, rows, cols: COLUMNS / across },
  })),
});

/** The chart with smaller texts, and without names beside its lines: a small plot has no room for them. */
const small = (chart: Omit<ChartPlan, "box">): Omit<ChartPlan, "box"> => ({
  ...chart,
  isSmall: true,
  y: chart.y.scale === "linear" ? { ...chart.y, domain: roundedDomain(chart.y.domain, stepsOf(true)) } : chart.y,
  series: chart.series.map((series) => ({ ...series, lettered: false })),
});

/** Charts in rows, with `across` of them side by side. */
const inRows = (charts: readonly Omit<ChartPlan, "box">[], rows: number, across: number): Block[] =>
  Array.from({ length: Math.ceil(charts.length / across) }, (_, row) =>
    abreast(charts.slice(row * across, (row + 1) * across), rows, across),
  );

/**
 * The heights of the plots over their usual heights that the report tries: the highest with which it has the fewest pages, none of
 * them nearly blank, and its time curves on as few of them as can be.
 */
export const PLOT_HEIGHTS: readonly number[] = [1.3, 1.2, 1.1, 1, 0.95, 0.9, 0.85, 0.8, 0.75];

/** What the symbols of the larger plots are; a chart has no legend, which would cover its points. */
const symbolsOf = ({ field, cv, cAlpha }: ReportPlots): Message[] => [
  say`Compression curve: loading filled, unloading open or grey.`,
  ...(field
    ? [say`Field curve: crosses at the yield of the laboratory curve, and where the field curve meets it.`]
    : []),
  ...(cv
    ? [say`cv: circles by log time, triangles by root time, a line through the cv reported, virgin loads filled.`]
    : []),
  ...(cAlpha ? [say`C alpha: virgin loads filled.`] : []),
];

/** The chart without names beside its crosses, which would cover its points. */
const unnamedCrosses = (chart: Omit<ChartPlan, "box">): Omit<ChartPlan, "box"> => ({
  ...chart,
  series: chart.series.map((series) => (series.symbol === "cross" ? { ...series, lettered: false } : series)),
});

/** All plots except the one on the first page, the larger ones and the time curves; a page never ends within a row of them. */
export function figures(
  cells: DataCells,
  plots: ReportPlots,
  placed: Placed,
  height: number,
): { readonly large: readonly Block[]; readonly small: readonly Block[] } {
  const t = cells.words;
  const { other, field, cv, cAlpha, swell, times, reasons } = plots;
  const { paper } = cells.source;
  const large = [other, field, cv, cAlpha, ...swell].flatMap((block) => {
    return block ? [unnamedCrosses(placed.chart(block))] : [];
  });
  const ofTimes = times.map((block) => small(placed.chart(block)));
  const rows = (usual: typeof ROWS | typeof LARGE_ROWS): number => Math.round(height * usual[paper]);
  return {
    large: [
      band(t(say`Plots`)),
      ...reasons.flatMap((reason) => paragraph(t(say`Not drawn: ${reason}.`))),
      ...inRows(large, rows(LARGE_ROWS), LARGE_ACROSS),
      ...(large.length ? paragraph(symbolsOf(plots).map(t).join(" "), { kind: "note" }) : []),
      gap,
    ],
    small: ofTimes.length ? [band(t(say`Time curves`)), ...inRows(ofTimes, rows(ROWS), ACROSS), gap] : [],
  };
}
