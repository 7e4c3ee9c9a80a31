/**
 * The report sheet of a test, as a plan. Numbers are live formulas on the cells of the data sheet, rounded once, for
 * display; texts are written when the report is made, and say so. Items that a standard requires and the sheet lacks
 * are listed, never left blank.
 */
import { say, verbatim } from "../reduction/message";
import { timeStamp } from "../workbook/time-stamp";
import { ADD_IN_VERSION } from "../specification/versions";
import type { ChartPlan, SheetPlan } from "../workbook/port";
import {
  arrange,
  band,
  COLUMN_WIDTH,
  COLUMNS,
  fullestOf,
  gap,
  layOut,
  linesOf,
  paragraph,
  ROWS_PER_PAGE,
  type Block,
} from "./page/page";
import { inFormula } from "../specification/sentences/told-formula";
import { figures, placeSeries, PLOT_HEIGHTS, plotsOf, type Placed, type ReportPlots } from "./sections/figures";
import { missingItems, type Missing } from "./sections/required";
import { classification } from "./sections/classification";
import { design } from "./sections/design";
import { conduct, identification, specimen } from "./sections/specimen";
import { heightsOfTest } from "./sections/heights";
import { conditionsOfLoads, loadsOfTest } from "./sections/loads";
import { indices, interpretation } from "./sections/interpretation";
import { DataCells, reportedLoads, type ReportedLoad, type ReportSource } from "./page/source";
import { issueBlock, issueLine } from "./issue";
import { CHOICES, CHOICES_ROW, state, STATE_COLUMNS, STATE_WIDTHS } from "./sections/state";
import { caution, results, signatures, threeRemarks } from "./sections/summary";
import { limits } from "./sections/limits";
import { timeCurves } from "./sections/time-curves";
import { intervals } from "./sections/uncertainty";
import { byHand, cautions, checks, methods, missing, remarks } from "./sections/words";
import { BETWEEN, wordsOf } from "../specification/text/words";

export type { KeptLimit, ReportSource } from "./page/source";
export { LIMIT_NAMES, byOf, whyOf } from "./sections/limits";
export type { Missing } from "./sections/required";

/** A name that every report sheet has: the cell holds the name of its data sheet. */
export const REPORT_OF = "report_of";
/** The cells that store the choices of a report; the next report of the sheet offers these choices again. */
export const REPORT_LANGUAGE = "report_language";
export const REPORT_CURVE = "report_curve";
export const REPORT_NAMES: readonly string[] = [REPORT_OF, REPORT_LANGUAGE, REPORT_CURVE];

/** The longest name of a sheet in Excel, less room for " 2" and higher numbers. */
const LONGEST_NAME = 27;

/** The choices of the report, in cells beside its pages. */
function chosen({ language = "en", curve = "e" }: ReportSource): Pick<SheetPlan, "cells" | "names"> {
  const kept = [
    [REPORT_LANGUAGE, language],
    [REPORT_CURVE, curve],
  ] as const;
  return {
    cells: kept.map(([, value], index) => ({ row: CHOICES_ROW, col: CHOICES + index, kind: "note", value })),
    names: Object.fromEntries(
      kept.map(([name], index) => [name, { row: CHOICES_ROW, col: CHOICES + index, rows: 1, cols: 1 }]),
    ),
  };
}

/** The items that a report of this sheet would lack. */
export const missingFromReport = (source: Omit<ReportSource, "now" | "preparedBy" | "paper">): Missing[] => {
  // The list of missing items ignores the parts that are left out.
  const cells = new DataCells(source as ReportSource);
  const loads = reportedLoads(cells);
  return missingItems(cells, loads, plotsOf(cells, loads).reasons);
};

/** The first lines: what the sheet is, whether it is up to date, how it was made, and what it lacks. */
function title(cells: DataCells, stateLine: Block, lacking: readonly Missing[]): Block[] {
  const t = cells.words;
  const { source } = cells;
  const required = lacking.filter(({ isRequired }) => isRequired).length;
  const lack =
    required === 0
      ? say`No required item is missing.`
      : required === 1
        ? say`1 required item is missing: see the last part.`
        : say`${required} required items are missing: see the last part.`;
  const made = timeStamp(source.now);
  const by = source.preparedBy.trim() || t(say`(not said)`);
  return [
    {
      rows: 1,
      cells: [
        {
          row: 0,
          col: 0,
          kind: "title",
          value: t(say`One-dimensional consolidation test, incremental loading: report`),
        },
      ],
    },
    stateLine,
    {
      rows: 2,
      cells: [
        { row: 0, col: 0, kind: "label", value: t(say`Data sheet`) },
        { row: 0, col: 2, kind: "result", value: source.sheet },
        { row: 0, col: 6, kind: "label", value: t(say`Prepared by`) },
        { row: 0, col: 8, kind: "result", value: by },
        { row: 1, col: 0, kind: "label", value: t(say`Made on`) },
        { row: 1, col: 2, kind: "result", value: made },
        { row: 1, col: 6, kind: "remark", value: t(lack) },
      ],
      names: {
        [REPORT_OF]: { row: 0, col: 2, rows: 1, cols: 1 },
        report_prepared_by: { row: 0, col: 8, rows: 1, cols: 1 },
        report_made: { row: 1, col: 2, rows: 1, cols: 1 },
        report_lack: { row: 1, col: 6, rows: 1, cols: 1 },
      },
    },
    gap,
  ];
}

/** A note on which parts of the report follow the data sheet. */
const snapshot = (cells: DataCells): Block[] =>
  paragraph(
    cells.words(
      say`Numbers are live: they follow the data sheet, rounded once, where they are shown. Sentences (remarks, checks, methods, what is missing) are a snapshot of ${verbatim(timeStamp(cells.source.now))} by Clayledger ${verbatim(ADD_IN_VERSION)}.`,
    ),
    { kind: "note" },
  );

/** The head of every page except the first. */
function head(cells: DataCells): Block {
  const parts = ["report_number", "project", "boring", "sample", "specimen"].flatMap((name) => cells.at(name) ?? []);
  const joined = parts.map((reference) => `IF(${reference}="","",${reference}&"${BETWEEN}")`).join("&");
  const words = cells.words(say`consolidation test: report`);
  return {
    rows: 1,
    cells: [
      { row: 0, col: 0, kind: "note", ...(joined ? { formula: `=${joined}&${inFormula(words)}` } : { value: words }) },
    ],
  };
}

/** Rows of the curve on the first page: the rows that the other parts leave. */
function rowsOfCurve(source: ReportSource, others: readonly Block[]): number {
  const used = linesOf(others);
  // 2 rows: the heading of the results, and the blank row below them.
  return Math.min(MOST_CURVE_ROWS, Math.floor(ROWS_PER_PAGE[source.paper] - used - 2));
}
/** The most rows of the curve: a higher curve is no easier to read. */
const MOST_CURVE_ROWS = 36;

/** The first page: what the sheet is, the results beside the curve, remarks and signatures. */
function firstPage(
  cells: DataCells,
  loads: readonly ReportedLoad[],
  stateLine: Block,
  lacking: readonly Missing[],
  chart: Omit<ChartPlan, "box"> | undefined,
): Block[] {
  const { source } = cells;
  const before = [
    ...title(cells, stateLine, lacking),
    ...(source.issue ? issueLine(cells, source.issue) : []),
    ...identification(cells),
  ];
  const after = [...threeRemarks(cells, lacking), ...signatures(cells), ...caution(cells)];
  return [
    ...before,
    ...results(cells, loads, { chart, rows: rowsOfCurve(source, [...before, ...after]) }),
    ...after,
    { ...gap, newPage: true },
  ];
}

/** The pages behind the first, up to the checks. */
function details(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const none = say`The data sheet has no load with a stress or readings.`;
  return [
    ...snapshot(cells),
    ...specimen(cells),
    ...classification(cells),
    ...conduct(cells, loads),
    ...(loads.length
      ? loadsOfTest(cells, loads)
      : [band(cells.words(say`Loads`)), ...paragraph(cells.words(none)), gap]),
    // Text stands between tables and plots: it may continue on the next page, so that no page is left half empty.
    ...remarks(cells, loads),
    ...(loads.length ? [...heightsOfTest(cells, loads), ...conditionsOfLoads(cells, loads)] : []),
    ...indices(cells),
    ...design(cells),
    ...interpretation(cells),
    ...limits(cells, cells.source.limits),
    ...intervals(cells),
    ...(loads.length ? timeCurves(cells, loads) : []),
    ...byHand(cells),
    ...checks(cells),
  ];
}

/** The pages with the height and the order of plots and texts that fill them best. */
function laidOut(
  cells: DataCells,
  plots: ReportPlots,
  placed: Placed,
  text: readonly Block[],
  lacks: readonly Block[],
) {
  const explained = [...methods(cells, reportedLoads(cells)), ...cautions(cells)];
  const top = head(cells);
  return layOut(
    fullestOf(
      PLOT_HEIGHTS.flatMap((height) => {
        const { large, small } = figures(cells, plots, placed, height);
        return [
          [...large, ...small, ...explained],
          [...large, ...explained, ...small],
          [...explained, ...large, ...small],
          [...explained, { ...gap, newPage: true }, ...large, ...small],
        ].map((rest) => arrange([...text, ...rest, ...lacks], ROWS_PER_PAGE[cells.source.paper], top));
      }),
    ),
  );
}

/**
 * The report of a data sheet. Its name is the next free one of "Report Sheet": an earlier report is never overwritten.
 */
export function reportSheet(source: ReportSource): { plan: SheetPlan; missing: readonly Missing[] } {
  const cells = new DataCells(source);
  const loads = reportedLoads(cells);
  const plots = plotsOf(cells, loads);
  const lacking = missingItems(cells, loads, plots.reasons);
  const current = state(cells, loads);
  const placed = placeSeries(cells, plots, STATE_COLUMNS + 1);
  const issue = source.issue && issueBlock(cells, source.issue, placed.right + 1);
  const choices = chosen(source);
  const chart = plots.compression && placed.chart(plots.compression);
  const text = [...firstPage(cells, loads, current.line, lacking, chart), ...details(cells, loads)];
  const laid = laidOut(cells, plots, placed, text, missing(cells, lacking));
  const widths = Object.fromEntries(Array.from({ length: COLUMNS }, (_, col) => [col, COLUMN_WIDTH]));
  const rows = Math.max(laid.rows, current.rows, placed.rows, issue?.rows ?? 0);
  const plan: SheetPlan = {
    name: `${cells.words(say`Report`)} ${source.sheet}`.slice(0, LONGEST_NAME).trim(),
    rows,
    cols: issue?.right ?? placed.right,
    cells: [...laid.cells, ...current.cells, ...choices.cells, ...placed.cells, ...(issue?.cells ?? [])],
    names: { ...laid.names, ...current.names, ...choices.names, ...issue?.names },
    merges: laid.merges,
    columnWidths: { ...widths, ...STATE_WIDTHS },
    rowHeights: Object.fromEntries(laid.heights.entries()),
    freezeRows: 0,
    pages: laid.pages,
    paper: source.paper,
    footer: cells
      .words(say`Report of ${verbatim(source.sheet)}, Clayledger ${verbatim(ADD_IN_VERSION)}`)
      .replaceAll("&", "&&"),
    hostWords: wordsOf(cells.language).host,
    isProtected: true,
    charts: laid.charts,
  };
  return { plan, missing: lacking };
}
