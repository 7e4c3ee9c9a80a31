/** The plots on the report's pages: two large ones on a page, time curves eight on a page. */
import { band, COLUMNS, gap, paragraph, ROWS_PER_PAGE, type Block } from "./report-page";
import type { ReportCharts, UnplacedChart } from "./report-source";

const ACROSS = 2;
const DOWN = 4;

/** A row of charts side by side, each as wide as its share of the page. */
const abreast = (charts: readonly UnplacedChart[], rows: number, across: number): Block => ({
  rows: rows + 1,
  cells: [],
  charts: charts.map((chart, index) => ({
    chart,
    box: { row: 0, col: (index * COLUMNS) / across, rows, cols: COLUMNS / across },
  })),
});

export function figures({ compression, cv, cAlpha, times, reasons }: ReportCharts, paper: "A4" | "Letter"): Block[] {
  const height = ROWS_PER_PAGE[paper];
  const blocks: Block[] = [];
  const whole = [compression, cv, cAlpha].filter((chart) => chart !== undefined);
  if (whole.length || reasons.length) {
    blocks.push(band("Plots", { newPage: true }));
    for (const reason of reasons) blocks.push(...paragraph(`Not drawn: ${reason}`));
    if (compression) blocks.push(abreast([compression], Math.floor(height / 2), 1));
    const small = [cv, cAlpha].filter((chart) => chart !== undefined);
    if (small.length) blocks.push(abreast(small, Math.floor(height / 2) - 6, ACROSS));
  }
  const rows = Math.floor((height - 3) / DOWN) - 1;
  for (let first = 0; first < times.length; first += ACROSS) {
    const row = abreast(times.slice(first, first + ACROSS), rows, ACROSS);
    const isTop = (first / ACROSS) % DOWN === 0;
    if (isTop) blocks.push(band(first === 0 ? "Time curves" : "Time curves, continued", { newPage: true }));
    blocks.push(row);
  }
  return blocks.length ? [...blocks, gap] : [];
}
