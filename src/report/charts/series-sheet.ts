/** Blocks of series side by side on a sheet. Their charts stand before them, or on another sheet. */
import type { CellPlan, ChartPlan, SheetPlan } from "../../workbook/port";
import type { InWords } from "../../plots/words";
import { english, say } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import { blockRows, chartOf, placeBlock, type SeriesBlock } from "./series-block";

/** Rows above the blocks, with a title that says what the sheet is. */
const TOP = 2;
/** A blank column between two blocks. */
const GAP = 1;

/** Size of a chart in cells: three charts fill the width of a page. */
const CHART = { rows: 22, cols: 6 };
/** Size of a chart if there are only one or two. */
const LARGE_CHART = { rows: 32, cols: 10 };
const ACROSS = 3;
/** Rows of charts on a printed page. */
const DOWN = 3;

const NOTE = say`Every number here is a formula: it follows the cells that it comes from. x of a point that does not show is any number, its y is #N/A.`;

/** The plan of the series from column `left` on, and the corner of each block. */
function laidOut(name: string, blocks: readonly SeriesBlock[], left: number, inWords: InWords) {
  let col = left;
  const corners = blocks.map(({ columns }) => {
    const corner = { row: TOP, col };
    col += columns.length + GAP;
    return corner;
  });
  const cells: CellPlan[] = [
    { row: 0, col: left, kind: "note", value: inWords(NOTE) },
    ...blocks.flatMap((block, index) => placeBlock(block, nth(corners, index))),
  ];
  const plan: SheetPlan = {
    name,
    rows: TOP + Math.max(...blocks.map(blockRows)) + 1,
    cols: col,
    cells,
    names: {},
    columnWidths: {},
    merges: [],
    freezeRows: 0,
  };
  return { plan, corners };
}

/** A sheet of series alone, and their charts for another sheet; `sheet` is the name that the sheet of series got. */
export function seriesSheet(
  name: string,
  blocks: readonly SeriesBlock[],
  inWords: InWords = english,
): { plan: SheetPlan; charts: (sheet: string) => Omit<ChartPlan, "box">[] } {
  const { plan, corners } = laidOut(name, blocks, 0, inWords);
  return { plan, charts: (sheet) => blocks.map((block, index) => chartOf(block, nth(corners, index), sheet)) };
}

/** A sheet with the charts of the blocks in a grid, which is printed, and their series to the right of it. */
export function chartsSheet(
  name: string,
  blocks: readonly SeriesBlock[],
  paper: "A4" | "Letter" = "A4",
  inWords: InWords = english,
): SheetPlan {
  const across = blocks.length <= 2 ? 1 : ACROSS;
  const { rows, cols } = across === 1 ? LARGE_CHART : CHART;
  const down = Math.ceil(blocks.length / across);
  const { plan, corners } = laidOut(name, blocks, across * cols + GAP, inWords);
  const charts = blocks.map((block, index): ChartPlan => ({
    ...chartOf(block, nth(corners, index)),
    box: { row: Math.floor(index / across) * rows, col: (index % across) * cols, rows, cols },
  }));
  return {
    ...plan,
    rows: Math.max(plan.rows, down * rows),
    charts,
    pages: Array.from({ length: Math.ceil(down / DOWN) }, (_, page) => ({
      row: page * DOWN * rows,
      col: 0,
      rows: Math.min(DOWN, down - page * DOWN) * rows,
      cols: across * cols,
    })),
    paper,
  };
}
