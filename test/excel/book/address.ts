/** Addresses in A1 style, on the grid of 1,048,576 rows and 16,384 columns. */
import { invalidArgument } from "../refusal";

export const ROWS = 1_048_576;
export const COLS = 16_384;

export interface Box {
  readonly row: number;
  readonly col: number;
  readonly rows: number;
  readonly cols: number;
}

const lettersOf = (col: number): string =>
  col < 26 ? String.fromCharCode(65 + col) : lettersOf(Math.floor(col / 26) - 1) + lettersOf(col % 26);

export const columnOf = (letters: string): number =>
  [...letters.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;

const ONE = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})(?::\$?([A-Z]{1,3})\$?([1-9]\d{0,6}))?$/i;
const WHOLE_COLUMNS = /^\$?([A-Z]{1,3}):\$?([A-Z]{1,3})$/i;
const WHOLE_ROWS = /^\$?([1-9]\d{0,6}):\$?([1-9]\d{0,6})$/;

const between = (row1: number, col1: number, row2: number, col2: number): Box => ({
  row: Math.min(row1, row2),
  col: Math.min(col1, col2),
  rows: Math.abs(row2 - row1) + 1,
  cols: Math.abs(col2 - col1) + 1,
});

/** The box of an address of one area, without its sheet; undefined if it is not an address. */
export function boxOf(address: string): Box | undefined {
  const one = ONE.exec(address);
  let box: Box | undefined;
  if (one) {
    const [, letters, digits, lastLetters = letters, lastDigits = digits] = one;
    box = between(Number(digits) - 1, columnOf(letters), Number(lastDigits) - 1, columnOf(lastLetters));
  }
  const columns = WHOLE_COLUMNS.exec(address);
  if (columns) box = { ...between(0, columnOf(columns[1]), 0, columnOf(columns[2])), rows: ROWS };
  const rows = WHOLE_ROWS.exec(address);
  if (rows) box = { ...between(Number(rows[1]) - 1, 0, Number(rows[2]) - 1, 0), cols: COLS };
  return box && isOnGrid(box) ? box : undefined;
}

const isOnGrid = ({ row, col, rows, cols }: Box): boolean =>
  [row, col, rows, cols].every(Number.isInteger) &&
  row >= 0 &&
  col >= 0 &&
  rows > 0 &&
  cols > 0 &&
  row + rows <= ROWS &&
  col + cols <= COLS;

export function onGrid(box: Box): Box {
  if (!isOnGrid(box)) throw invalidArgument(`There are no such cells: ${JSON.stringify(box)}.`);
  return box;
}

export function addressOf({ row, col, rows, cols }: Box, dollar = ""): string {
  if (rows === ROWS && cols < COLS) return `${dollar}${lettersOf(col)}:${dollar}${lettersOf(col + cols - 1)}`;
  if (cols === COLS) return `${dollar}${row + 1}:${dollar}${row + rows}`;
  const cell = (r: number, c: number): string => `${dollar}${lettersOf(c)}${dollar}${r + 1}`;
  return rows === 1 && cols === 1 ? cell(row, col) : `${cell(row, col)}:${cell(row + rows - 1, col + cols - 1)}`;
}

/** "R4C2:R9C2", whole rows "R4:R9" and whole columns "C2:C3", with the letters of row and column of Excel's language ("R C"). */
export function numberedAddress({ row, col, rows, cols }: Box, letters: string): string {
  const [ofRow, ofCol] = letters.split(" ");
  const cell = (r: number, c: number): string =>
    (cols === COLS || rows < ROWS ? `${ofRow}${r + 1}` : "") + (rows === ROWS || cols < COLS ? `${ofCol}${c + 1}` : "");
  return rows === 1 && cols === 1 ? cell(row, col) : `${cell(row, col)}:${cell(row + rows - 1, col + cols - 1)}`;
}

export const quoted = (sheet: string): string =>
  /^[A-Za-z_\u00C0-\uFFFF][\w.\u00C0-\uFFFF]*$/.test(sheet) && !boxOf(sheet)
    ? sheet
    : `'${sheet.replaceAll("'", "''")}'`;

/** A sheet name without the quotes that a reference puts around it. */
export const unquoted = (text: string): string =>
  text.startsWith("'") && text.endsWith("'") ? text.slice(1, -1).replaceAll("''", "'") : text;

export const inside = (box: Box, row: number, col: number): boolean =>
  row >= box.row && col >= box.col && row < box.row + box.rows && col < box.col + box.cols;

export const overlap = (a: Box, b: Box): boolean =>
  a.row < b.row + b.rows && b.row < a.row + a.rows && a.col < b.col + b.cols && b.col < a.col + a.cols;

export const holds = (outer: Box, inner: Box): boolean =>
  inside(outer, inner.row, inner.col) && inside(outer, inner.row + inner.rows - 1, inner.col + inner.cols - 1);

export function intersection(a: Box, b: Box): Box | undefined {
  if (!overlap(a, b)) return undefined;
  const row = Math.max(a.row, b.row);
  const col = Math.max(a.col, b.col);
  return {
    row,
    col,
    rows: Math.min(a.row + a.rows, b.row + b.rows) - row,
    cols: Math.min(a.col + a.cols, b.col + b.cols) - col,
  };
}

export function around(boxes: readonly Box[]): Box {
  const row = Math.min(...boxes.map((box) => box.row));
  const col = Math.min(...boxes.map((box) => box.col));
  const bottom = Math.max(...boxes.map((box) => box.row + box.rows));
  const right = Math.max(...boxes.map((box) => box.col + box.cols));
  return { row, col, rows: bottom - row, cols: right - col };
}

export function* cellsOf({ row, col, rows, cols }: Box): Generator<[row: number, col: number]> {
  for (let r = row; r < row + rows; r++) for (let c = col; c < col + cols; c++) yield [r, c];
}
