/**
 * The numbers of one chart as columns of live formulas, which can be placed anywhere on a sheet.
 *
 * In a row that shows nothing, x is nevertheless a number and only y is #N/A: if an x is not a number, a chart counts
 * 1, 2, 3 instead.
 */
import { boxAddress, quoted } from "../../workbook/address";
import { nth } from "../../reduction/numeric/lists";
import type { Box, CellPlan, ChartAxis, ChartPlan, ChartSeries } from "../../workbook/port";

/** Addresses of the block's cells on its own sheet, fixed ("$C$5"). */
export interface Where {
  /** The cells of a column. */
  column(name: string): string;
  /** One cell of a column, from 0. */
  cell(name: string, index: number): string;
  /** The cell between the heading of a column and its first cell. */
  head(name: string): string;
}

export interface BlockColumn {
  readonly name: string;
  readonly heading: string;
  /** Number of cells that the column covers. */
  readonly rows: number;
  /** Content of the cell above the first one. */
  readonly head?: (where: Where) => string;
  /** One formula for each cell, or one formula that spills over them. */
  readonly cells: (where: Where) => readonly string[];
}

/** A series by the columns of its block; `rows` if it has fewer cells than the columns. */
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

/** Rows of a block above its numbers: title, headings, and the cells between a heading and the first number. */
const HEAD = 3;

/** "'Load 3'!", to put before an address. */
const onSheet = (sheet: string): string => `${quoted(sheet)}!`;

/** The address of cells of a sheet, in the form that a formula on any sheet uses. */
export const addressOn = (sheet: string, box: Box): string => onSheet(sheet) + boxAddress(box);

export const blockRows = ({ columns }: SeriesBlock): number => HEAD + Math.max(...columns.map(({ rows }) => rows));

const boxIn = ({ columns }: SeriesBlock, { row, col }: Corner, name: string, rows?: number): Box => {
  const index = columns.findIndex((column) => column.name === name);
  if (index < 0) throw new Error(`the block has no column "${name}"`);
  return { row: row + HEAD, col: col + index, rows: rows ?? nth(columns, index).rows, cols: 1 };
};

/** The cells of the block with its upper left corner at `corner`. */
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

/** The chart of a block at `corner` of a sheet; without `sheet` it is the sheet of the chart. */
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
