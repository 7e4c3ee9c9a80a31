/**
 * The numbers of one chart as columns of live formulas, wherever on a sheet they come to stand.
 *
 * x of a row that shows nothing is a number all the same, and only its y is #N/A: a chart takes an x that is no number for
 * a reason to count 1, 2, 3 instead.
 */
import { boxAddress, quoted } from "../../workbook/address";
import type { Box, CellPlan, ChartAxis, ChartPlan, ChartSeries } from "../../workbook/port";

/** Addresses on the block's own sheet, fixed ("$C$5"). */
export interface Where {
  /** A column's cells. */
  column(name: string): string;
  /** One of them, from 0. */
  cell(name: string, index: number): string;
  /** The cell between a column's heading and its first cell. */
  head(name: string): string;
}

export interface BlockColumn {
  readonly name: string;
  readonly heading: string;
  /** Cells that the column covers. */
  readonly rows: number;
  /** What the cell above the first one holds. */
  readonly head?: (where: Where) => string;
  /** One formula for each cell, or one that spills over them. */
  readonly cells: (where: Where) => readonly string[];
}

/** A series by the columns of its block; `rows` where it has fewer cells than they. */
export interface BlockSeries extends Omit<ChartSeries, "x" | "y"> {
  readonly x: string;
  readonly y: string;
  readonly rows?: number;
}

export interface SeriesBlock {
  readonly title: string;
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly columns: readonly BlockColumn[];
  readonly series: readonly BlockSeries[];
}

export interface Corner {
  readonly row: number;
  readonly col: number;
}

/** Rows of a block above its numbers: title, headings, heads. */
const HEAD = 3;

/** "'Load 3'!" in front of an address. */
export const onSheet = (sheet: string): string => `${quoted(sheet)}!`;

/** The address of cells of a sheet as a formula of any sheet spells it. */
export const addressOn = (sheet: string, box: Box): string => onSheet(sheet) + boxAddress(box);

export const blockRows = ({ columns }: SeriesBlock): number => HEAD + Math.max(...columns.map(({ rows }) => rows));

const boxIn = ({ columns }: SeriesBlock, { row, col }: Corner, name: string, rows?: number): Box => {
  const index = columns.findIndex((column) => column.name === name);
  if (index < 0) throw new Error(`the block has no column "${name}"`);
  return { row: row + HEAD, col: col + index, rows: rows ?? columns[index].rows, cols: 1 };
};

/** The block's cells with its upper left corner at `corner`. */
export function placeBlock(block: SeriesBlock, corner: Corner): CellPlan[] {
  const where: Where = {
    column: (name) => boxAddress(boxIn(block, corner, name)),
    cell: (name, index) => {
      const { row, col } = boxIn(block, corner, name);
      return boxAddress({ row: row + index, col, rows: 1, cols: 1 });
    },
    head: (name) => {
      const { row, col } = boxIn(block, corner, name);
      return boxAddress({ row: row - 1, col, rows: 1, cols: 1 });
    },
  };
  const cells: CellPlan[] = [{ ...corner, kind: "heading", value: block.title }];
  block.columns.forEach(({ heading, head, cells: formulas }, index) => {
    const col = corner.col + index;
    if (index > 0) cells.push({ row: corner.row, col, kind: "heading" });
    cells.push({ row: corner.row + 1, col, kind: "label", value: heading });
    if (head) cells.push({ row: corner.row + 2, col, kind: "unit", formula: head(where) });
    formulas(where).forEach((formula, row) =>
      cells.push({ row: corner.row + HEAD + row, col, kind: "result", formula }),
    );
  });
  return cells;
}

/** The chart of a block that stands at `corner` of a sheet; without a sheet it is the chart's own. */
export const chartOf = (block: SeriesBlock, corner: Corner, sheet?: string): Omit<ChartPlan, "box"> => ({
  title: block.title,
  x: block.x,
  y: block.y,
  series: block.series.map(({ x, y, rows, ...series }) => ({
    ...series,
    x: { ...(sheet !== undefined && { sheet }), box: boxIn(block, corner, x, rows) },
    y: { ...(sheet !== undefined && { sheet }), box: boxIn(block, corner, y, rows) },
  })),
});
