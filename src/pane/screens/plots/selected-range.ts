/**
 * Reads the selected range as two series of numbers: which columns (or rows) form a pair, where the headings end, and
 * which cells cannot be read.
 */
import { columnLetters, columnNumber } from "../../../workbook/address";
import { firstOf, nth } from "../../../reduction/numeric/lists";
import { asTyped } from "../../../reduction/message";
import { badInput, given, type Outcome } from "../../../reduction/outcome";
import { UNITS } from "../../../reduction/units";
import type { Box, CellValue, Selection } from "../../../workbook/port";
import { text } from "../../text";

const words = text.plot;

/** A column of the selection, or a row if the series lie in rows. */
export interface Line {
  /** "B: Reading (mm)", or "Column B" if the column has no heading. */
  readonly name: string;
  /** The joined heading cells above the numbers: "Reading (mm)"; "" if there are none. */
  readonly heading: string;
  readonly cells: readonly CellValue[];
  /** The address of a cell by its index in the line: "B7". */
  readonly cellName: (index: number) => string;
  /** The position of the cells; missing for a row, because no chart can be made from it. */
  readonly box?: Box;
}

export interface Range {
  readonly sheet: string;
  readonly address: string;
  readonly lines: readonly Line[];
  /** The start of the numbers; messages count from it: "sheet row 5", or "column C" if the series lie in rows. */
  readonly begins: string;
}

/** Two series. A blank cell is null, as the reduction expects it. */
export interface Pair {
  readonly first: readonly (number | null)[];
  readonly second: readonly (number | null)[];
}

interface Corners {
  readonly row: number;
  /** The column on the sheet for each column of the values. */
  readonly cols: readonly number[];
}

/**
 * The row and the columns (counted from 0) of an address with blocks that stand side by side ("B4:B18,D4:D18"). For
 * whole columns or rows, the missing row or column counts as 0.
 */
function cornersOf(address: string, count: number): Corners {
  const blocks = address.split(",").map((block) => {
    const local = block.slice(block.lastIndexOf("!") + 1);
    const [first = [], last = first] = local.split(":").map((cell) => /^\$?([A-Za-z]*)\$?(\d*)/.exec(cell) ?? []);
    const col = first[1] ? columnNumber(first[1]) : 0;
    return { row: first[2] ? Number(first[2]) - 1 : 0, col, width: last[1] ? columnNumber(last[1]) - col + 1 : count };
  });
  const cols = blocks.flatMap(({ col, width }) => Array.from({ length: width }, (_, offset) => col + offset));
  // A single block is as wide as its values, even if its address is incomplete.
  const { row, col } = firstOf(blocks);
  return { row, cols: cols.length === count ? cols : Array.from({ length: count }, (_, offset) => col + offset) };
}

const isBlank = (cell: CellValue): boolean => typeof cell === "string" && cell.trim() === "";
const isText = (cell: CellValue): boolean => typeof cell === "string" && !isBlank(cell);
const looksLikeError = (cell: CellValue): boolean =>
  typeof cell === "string" && /^#[A-Z/0-9_]+[!?]?$/.test(cell.trim());

/** The number of rows below the first number in which a heading is still looked for. */
const HEADING_ROWS = 8;

/**
 * The heading cells of each line. They end before the first number, or at a later row near the top that consists of
 * text without a number, if every number above that row has text beside it ("12.5", "kPa" above "Time", "Reading").
 * Cells above such a number belong to other data; therefore the words of the heading start at `from`, below the number.
 */
function headingsOf(cells: readonly (readonly CellValue[])[], size: number): { from: number; to: number } {
  const at = (index: number): CellValue[] => cells.map((line) => nth(line, index));
  const hasNumber = (index: number): boolean => at(index).some((cell) => typeof cell === "number");
  const texts = (index: number): number => at(index).filter((cell) => isText(cell) && !looksLikeError(cell)).length;
  let from = 0;
  let to = 0;
  while (to < size && !hasNumber(to)) to++;
  const end = Math.min(size, to + HEADING_ROWS);
  for (let index = to, above = to; index < end && texts(index) > 0; index++)
    if (hasNumber(index)) above = index + 1;
    else if (texts(index) >= 2) [from, to] = [above, index + 1];
  return { from, to };
}

const UNIT_WORDS = ["min", "div", "mm", "cm", "in", ...Object.keys(UNITS.stress)];

/** Joins the words of a heading; a unit in a cell of its own is put in brackets: "Reading (mm)". */
function headingOf(cells: readonly CellValue[]): string {
  const words = cells.filter((cell) => isText(cell) && !looksLikeError(cell)).map((cell) => String(cell).trim());
  const last = words.at(-1);
  return words.length > 1 && last !== undefined && UNIT_WORDS.includes(last)
    ? `${words.slice(0, -1).join(" ")} (${last})`
    : words.join(" ");
}

/**
 * The unit at the end of a heading, in brackets, after a comma or after "in": "mm" in "Reading (mm)", "kPa" in "Spannung in
 * kPa"; undefined if the heading names none.
 */
export const unitOf = (heading: string): string | undefined =>
  /(?:[[(,]|\sin\s)\s*([^\s[\](),]+)\s*[\])]?$/.exec(heading.trim())?.[1];

/**
 * Reads the selection as lines. Returns null if it has fewer than two lines or only one pair of cells, which is no
 * curve.
 */
export function rangeOf(selection: Selection): Range | null {
  const rows = selection.values;
  const cols = rows[0]?.length ?? 0;
  const headed = rows.length > 2 && !firstOf(rows).some((cell) => typeof cell === "number");
  const onItsSide = rows.length < cols && rows.length >= 2 && !headed;
  const { row, cols: places } = cornersOf(selection.address, cols);
  const count = onItsSide ? rows.length : cols;
  const size = onItsSide ? cols : rows.length;
  if (count < 2 || size < 2) return null;

  const cells = Array.from({ length: count }, (_, line) =>
    Array.from({ length: size }, (_, index) => (onItsSide ? nth(nth(rows, line), index) : nth(nth(rows, index), line))),
  );
  const { from, to: headings } = headingsOf(cells, size);
  if (headings === size) return null;

  const lines = cells
    .map((line, offset): Line => {
      const heading = headingOf(line.slice(from, headings));
      const place = onItsSide ? String(row + offset + 1) : columnLetters(nth(places, offset));
      const size = line.length - headings;
      return {
        name: heading ? `${place}: ${heading}` : onItsSide ? words.row(place) : words.column(place),
        heading,
        cells: line.slice(headings),
        cellName: (index) =>
          onItsSide
            ? `${columnLetters(nth(places, headings + index))}${row + offset + 1}`
            : `${columnLetters(nth(places, offset))}${row + headings + index + 1}`,
        box: onItsSide ? undefined : { row: row + headings, col: nth(places, offset), rows: size, cols: 1 },
      };
    })
    .filter(({ cells: values }) => values.some((cell) => !isBlank(cell)));
  return lines.length < 2
    ? null
    : {
        sheet: selection.sheet,
        address: selection.address,
        lines,
        begins: onItsSide ? words.inColumn(columnLetters(nth(places, headings))) : words.inRow(row + headings + 1),
      };
}

/** The numbers of one line. Refuses text, logical values and error cells, and names the cell. */
function numbersOf(line: Line): Outcome<(number | null)[]> {
  const values: (number | null)[] = [];
  for (const [index, cell] of line.cells.entries()) {
    if (typeof cell === "number") values.push(cell);
    else if (isBlank(cell)) values.push(null);
    else if (looksLikeError(cell)) return badInput(asTyped(words.shows(line.cellName(index), String(cell))));
    else
      return badInput(
        asTyped(
          typeof cell === "boolean"
            ? words.holdsLogical(line.cellName(index), cell ? "TRUE" : "FALSE")
            : words.holdsText(line.cellName(index), cell),
        ),
      );
  }
  return given(values);
}

/** Two lines as numbers, without the blank rows below the last entry. */
export function pairOf(range: Range, firstLine: number, secondLine: number): Outcome<Pair> {
  const first = numbersOf(nth(range.lines, firstLine));
  if (!first.ok) return first;
  const second = numbersOf(nth(range.lines, secondLine));
  if (!second.ok) return second;
  let length = first.value.length;
  while (length > 0 && first.value[length - 1] === null && second.value[length - 1] === null) length--;
  return given({ first: first.value.slice(0, length), second: second.value.slice(0, length) });
}
