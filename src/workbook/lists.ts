/**
 * A list of cells lies along an axis: down a column, or across a row. The cells of a name are counted along it, from 0, so
 * that nothing else needs to know how a table lies.
 */
import { cellAddress } from "./address";
import type { Box, CellValue } from "./port";

/** Whether the cells of a list stand side by side in one row. */
export const liesAcross = ({ rows, cols }: Box): boolean => rows === 1 && cols > 1;

/** The number of cells of a list. */
export const lengthOf = (box: Box): number => (liesAcross(box) ? box.cols : box.rows);

/** The cells of a list from one place on, in the order of the list. */
export const partOfList = (box: Box, from: number, length: number): Box =>
  liesAcross(box)
    ? { row: box.row, col: box.col + from, rows: 1, cols: length }
    : { row: box.row + from, col: box.col, rows: length, cols: 1 };

/** One cell of a list. */
export const cellOfList = (box: Box, index: number): Pick<Box, "row" | "col"> => {
  const { row, col } = partOfList(box, index, 1);
  return { row, col };
};

/** The place of a cell in its list. */
export const indexInList = (box: Box, { row, col }: Pick<Box, "row" | "col">): number =>
  liesAcross(box) ? col - box.col : row - box.row;

/** Whether a cell is one of the cells of a box, which may have several rows and columns. */
export const isIn = ({ row, col }: Pick<Box, "row" | "col">, box: Box): boolean =>
  row >= box.row && row < box.row + box.rows && col >= box.col && col < box.col + box.cols;

/** The address of one cell of a list: "B4". */
export function addressInList(box: Box, index: number): string {
  const { row, col } = cellOfList(box, index);
  return cellAddress(row, col);
}

/** Values as a port gives them, with a single row of several cells turned into a column. */
export const asColumn = (values: readonly (readonly CellValue[])[]): readonly (readonly CellValue[])[] => {
  const [row] = values;
  return row && values.length === 1 && row.length > 1 ? row.map((value) => [value]) : values;
};
