/** The only module that writes and reads cell addresses. Rows and columns are counted from 0. */
import { nth } from "../reduction/numeric/lists";
import type { Box } from "./port";

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

/** A is 0, AA is 26. */
export const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** The box of "B4" or "B4:C18", as a port gives an address; undefined if it is not one block of cells. */
export function boxOf(address: string): Box | undefined {
  const found = /^\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/i.exec(address);
  if (!found) return undefined;
  const [left, top] = [nth(found, 1), nth(found, 2)];
  const [right = left, bottom = top] = found.slice(3);
  const [row, col] = [Number(top) - 1, columnNumber(left)];
  return { row, col, rows: Number(bottom) - row, cols: columnNumber(right) - col + 1 };
}

/** The name of a sheet in a formula: always in quotes, with each apostrophe doubled. */
export const quoted = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;

/** The name of a sheet as a formula has it: between quotes with each apostrophe doubled, or bare. */
export const unquoted = <B extends string | undefined>(inQuotes: string | undefined, bare: B): string | B =>
  inQuotes?.replaceAll("''", "'") ?? bare;
