/**
 * The report sheet of a test, as a plan. Numbers are live formulas on the cells of the data sheet, rounded once, for
 * display; texts are written when the report is made, and say so. Items that a standard requires and the sheet lacks
 * are listed, never left blank.
 */
import { timeStamp } from "../workbook/time-stamp";
import { ADD_IN_VERSION } from "../specification/versions";
import type { SheetPlan } from "../workbook/port";
import { gap, band, COLUMN_WIDTH, COLUMNS, layOut, paragraph, ROWS_PER_PAGE, type Block } from "./page/page";
import { figures, placeSeries, plotsOf } from "./sections/figures";
import { missingItems, type Missing } from "./sections/required";
import { conduct, identification, loadsOfTest, results, signatures, specimen, timesOfTest } from "./sections/data";
import { DataCells, reportedLoads, type ReportSource } from "./page/source";
import { state, STATE_COLUMNS, STATE_WIDTHS } from "./sections/state";
import { interpretation, intervals, limits } from "./sections/uncertainty";
import { bothWays, byHand, cautions, checks, methods, missing, remarks } from "./sections/words";

export type { KeptLimit, ReportSource } from "./page/source";
export { LIMIT_NAMES, byOf, whyOf } from "./sections/uncertainty";
export type { Missing } from "./sections/required";

/** A name that every report sheet has: the cell holds the name of its data sheet. */
export const REPORT_OF = "report_of";

/** The longest name of a sheet in Excel, less room for " 2" and higher numbers. */
const LONGEST_NAME = 27;

/** The items that a report of this sheet would lack. */
export const missingFromReport = (source: Omit<ReportSource, "now" | "preparedBy" | "paper">): Missing[] => {
  const cells = new DataCells(source as ReportSource);
  const loads = reportedLoads(cells);
  return missingItems(cells, loads, plotsOf(cells, loads).reasons);
};

/** The first lines: what the sheet is, whether it is up to date, how it was made, and what it lacks. */
function title(source: ReportSource, stateLine: Block, lacking: readonly Missing[]): Block[] {
  const required = lacking.filter(({ isRequired }) => isRequired).length;
  const lack = required
    ? `${required} required ${required === 1 ? "item is" : "items are"} missing: see the last part, "Missing from this report".`
    : "No required item is missing.";
  const made = timeStamp(source.now);
  const by = source.preparedBy.trim() || "(not said)";
  return [
    {
      rows: 1,
      cells: [
        { row: 0, col: 0, kind: "title", value: "One-dimensional consolidation test, incremental loading: report" },
      ],
    },
    stateLine,
    {
      rows: 2,
      cells: [
        { row: 0, col: 0, kind: "label", value: "Data sheet" },
        { row: 0, col: 2, kind: "result", value: source.sheet },
        { row: 0, col: 6, kind: "label", value: "Prepared by" },
        { row: 0, col: 8, kind: "result", value: by },
        { row: 1, col: 0, kind: "label", value: "Made on" },
        { row: 1, col: 2, kind: "result", value: made },
        { row: 1, col: 4, kind: "remark", value: lack },
      ],
      names: {
        [REPORT_OF]: { row: 0, col: 2, rows: 1, cols: 1 },
        report_prepared_by: { row: 0, col: 8, rows: 1, cols: 1 },
        report_made: { row: 1, col: 2, rows: 1, cols: 1 },
        report_lack: { row: 1, col: 4, rows: 1, cols: 1 },
      },
    },
    ...paragraph(
      `Numbers are live: they follow the data sheet, rounded once, where they are shown. Sentences (remarks, checks, methods, what is missing) are a snapshot of ${made}.`,
      { kind: "note" },
    ),
  ];
}

/** The head of every page except the first. */
function head(cells: DataCells): Block {
  const parts = ["report_number", "project", "boring", "sample", "specimen"].flatMap((name) => cells.at(name) ?? []);
  const joined = parts.map((reference) => `IF(${reference}="","",${reference}&"  |  ")`).join("&");
  return {
    rows: 2,
    cells: [
      {
        row: 0,
        col: 0,
        kind: "note",
        ...(joined ? { formula: `=${joined}&"consolidation test: report"` } : { value: "Consolidation test: report" }),
      },
    ],
  };
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
  const placed = placeSeries(plots, STATE_COLUMNS + 1);
  const blocks: Block[] = [
    ...title(source, current.line, lacking),
    ...identification(cells),
    ...specimen(cells),
    ...results(cells, loads),
    ...signatures(cells),
    { ...gap, newPage: true },
    ...conduct(cells, loads),
    ...(loads.length
      ? [...loadsOfTest(cells, loads), ...timesOfTest(cells, loads)]
      : [band("Loads"), ...paragraph("The data sheet has no load with a stress or readings."), gap]),
    ...interpretation(cells),
    ...limits(cells, source.limits),
    ...intervals(cells, loads),
    ...figures(plots, placed, source.paper),
    { ...gap, newPage: true },
    ...remarks(cells, loads),
    ...byHand(cells),
    ...bothWays(cells, loads),
    ...checks(cells),
    ...methods(cells, loads),
    ...cautions(),
    ...missing(lacking),
  ];
  const laid = layOut(blocks, ROWS_PER_PAGE[source.paper], head(cells));
  const widths = Object.fromEntries(Array.from({ length: COLUMNS }, (_, col) => [col, COLUMN_WIDTH]));
  const plan: SheetPlan = {
    name: `Report ${source.sheet}`.slice(0, LONGEST_NAME).trim(),
    rows: Math.max(laid.rows, current.rows, placed.rows),
    cols: placed.right,
    cells: [...laid.cells, ...current.cells, ...placed.cells],
    names: { ...laid.names, ...current.names },
    merges: laid.merges,
    columnWidths: { ...widths, ...STATE_WIDTHS },
    freezeRows: 0,
    pages: laid.pages,
    paper: source.paper,
    footer: `Report of ${source.sheet}, Clayledger ${ADD_IN_VERSION}`.replaceAll("&", "&&"),
    isProtected: true,
    charts: laid.charts,
  };
  return { plan, missing: lacking };
}
