/** The only place that spells a cell address. Rows and columns are counted from 0. */
import type { Box } from "../workbook/port";

/** 0 is A, 26 is AA. */
export const columnLetters = (col: number): string =>
  (col >= 26 ? columnLetters(Math.floor(col / 26) - 1) : "") + String.fromCharCode(65 + (col % 26));

/** "B4" */
export const cellAddress = (row: number, col: number): string => `${columnLetters(col)}${row + 1}`;

/** "$B$4" or "$B$4:$C$18", as a defined name is stored. */
export function boxAddress({ row, col, rows, cols }: Box): string {
  const absolute = (r: number, c: number) => `$${columnLetters(c)}$${r + 1}`;
  const first = absolute(row, col);
  return rows === 1 && cols === 1 ? first : `${first}:${absolute(row + rows - 1, col + cols - 1)}`;
}
