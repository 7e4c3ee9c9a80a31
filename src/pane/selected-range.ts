/** The selected range as two series of numbers: which columns (or rows) pair, where the headings end, and what cannot be read. */
import { badInput, given, type Outcome } from "../reduction/outcome";
import type { CellValue, Selection } from "../workbook/port";

/** A column of the selection (a row, where the selection lies on its side). */
export interface Line {
  /** "Column B" or "Row 4", with the heading where there is one: "Column B: Reading (mm)". */
  readonly name: string;
  /** The heading cells above the numbers, joined: "Reading (mm)"; "" where there are none. */
  readonly heading: string;
  readonly cells: readonly CellValue[];
  /** Where the n-th cell stands: "B7". */
  readonly cellName: (index: number) => string;
}

export interface Range {
  readonly sheet: string;
  readonly address: string;
  readonly lines: readonly Line[];
  /** Where the numbers begin, as messages count them from 1: "sheet row 5", or "column C" for a range on its side. */
  readonly begins: string;
}

/** A blank cell is null, as the reduction takes it. */
export interface Pair {
  readonly first: readonly (number | null)[];
  readonly second: readonly (number | null)[];
}

const columnLetters = (col: number): string =>
  col < 26 ? String.fromCharCode(65 + col) : columnLetters(Math.floor(col / 26) - 1) + columnLetters(col % 26);

const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** Row and column, from 0, of the first cell of an address; A1 where it names whole columns or rows. */
function corner(address: string): { row: number; col: number } {
  const local = address.slice(address.lastIndexOf("!") + 1);
  const [, letters, digits] = /^\$?([A-Za-z]*)\$?(\d*)/.exec(local) ?? [];
  return { row: digits ? Number(digits) - 1 : 0, col: letters ? columnNumber(letters) : 0 };
}

const isBlank = (cell: CellValue): boolean => typeof cell === "string" && cell.trim() === "";
const isText = (cell: CellValue): boolean => typeof cell === "string" && !isBlank(cell);
const looksLikeError = (cell: CellValue): boolean =>
  typeof cell === "string" && /^#[A-Z/0-9_]+[!?]?$/.test(cell.trim());

/** Fewer than two lines, or a single pair of cells, is not a curve: null asks for a selection. */
export function rangeOf(selection: Selection): Range | null {
  const rows = selection.values;
  const cols = rows[0]?.length ?? 0;
  const onItsSide = rows.length < cols && rows.length >= 2;
  const { row, col } = corner(selection.address);
  const count = onItsSide ? rows.length : cols;
  const size = onItsSide ? cols : rows.length;
  if (count < 2 || size < 2) return null;

  const cells = Array.from({ length: count }, (_, line) =>
    Array.from({ length: size }, (_, index) => (onItsSide ? rows[line][index] : rows[index][line])),
  );
  const numberAt = (index: number): boolean => cells.some((line) => typeof line[index] === "number");
  let headings = 0;
  while (headings < size && !numberAt(headings)) headings++;
  if (headings === size) return null;

  const lines = cells
    .map((line, offset): Line => {
      const heading = line
        .slice(0, headings)
        .filter((cell) => isText(cell) && !looksLikeError(cell))
        .join(" ")
        .trim();
      const place = onItsSide ? `Row ${row + offset + 1}` : `Column ${columnLetters(col + offset)}`;
      return {
        name: heading ? `${place}: ${heading}` : place,
        heading,
        cells: line.slice(headings),
        cellName: (index) =>
          onItsSide
            ? `${columnLetters(col + headings + index)}${row + offset + 1}`
            : `${columnLetters(col + offset)}${row + headings + index + 1}`,
      };
    })
    .filter(({ cells: values }) => values.some((cell) => !isBlank(cell)));
  return lines.length < 2
    ? null
    : {
        sheet: selection.sheet,
        address: selection.address,
        lines,
        begins: onItsSide ? `column ${columnLetters(col + headings)}` : `sheet row ${row + headings + 1}`,
      };
}

/** The numbers of one line; refuses text, logical values and error cells by the cell's name. */
function numbersOf(line: Line): Outcome<(number | null)[]> {
  const values: (number | null)[] = [];
  for (const [index, cell] of line.cells.entries()) {
    if (typeof cell === "number") values.push(cell);
    else if (isBlank(cell)) values.push(null);
    else if (looksLikeError(cell)) return badInput(`${line.cellName(index)} shows ${cell}: mend that cell first`);
    else
      return badInput(
        `${line.cellName(index)} holds ${
          typeof cell === "boolean" ? (cell ? "TRUE" : "FALSE") : `the text "${cell}"`
        } where a number is needed: correct or clear that cell`,
      );
  }
  return given(values);
}

/** Two lines as numbers, without the blank rows below the last entry. */
export function pairOf(range: Range, firstLine: number, secondLine: number): Outcome<Pair> {
  const first = numbersOf(range.lines[firstLine]);
  if (!first.ok) return first;
  const second = numbersOf(range.lines[secondLine]);
  if (!second.ok) return second;
  let length = first.value.length;
  while (length > 0 && first.value[length - 1] === null && second.value[length - 1] === null) length--;
  return given({ first: first.value.slice(0, length), second: second.value.slice(0, length) });
}
