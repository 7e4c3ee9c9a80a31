/** Converts a sheet plan to the two-dimensional arrays of Excel: a few large writes in place of one per cell. */
import { firstOf, nth } from "../../reduction/numeric/lists";
import type { Box, CellPlan, CellValue, SheetPlan } from "../port";
import { LOOK } from "./look/look";
import { withLocalNames } from "./names";

/** A run of whole rows, small enough for one request. null in an array leaves a cell unchanged. */
export interface Block {
  readonly box: Box;
  readonly formulas: (string | number | boolean | null)[][];
  readonly formats: (string | null)[][];
  readonly looks: Excel.SettableCellProperties[][];
}

/** A cell with its look takes about 200 bytes, so that a block takes a third of a request. */
const CELLS_PER_BLOCK = 1500;

const MONTH = /^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/i;

/** Whether Excel would read a text as something else: a formula, a number, a date, a logical value. */
const isRead = (text: string): boolean =>
  !/^\p{L}/u.test(text) || /^(true|false)$/i.test(text) || (MONTH.test(text) && /\d/.test(text));

/** The content to write so that a cell holds exactly a constant. */
export const constant = (value: CellValue): CellValue =>
  typeof value === "string" && value !== "" && isRead(value) ? `'${value}` : value;

/** The content to write so that the cell holds its formula, or exactly its value. */
function content(cell: CellPlan, plan: SheetPlan): string | number | boolean | null {
  if (cell.formula !== undefined) return withLocalNames(cell.formula, plan.names);
  if (cell.value === undefined || cell.value === "") return null;
  return constant(cell.value);
}

const empty = <T>({ rows, cols }: Box, value: T): T[][] => Array.from({ length: rows }, () => Array(cols).fill(value));

/** Cuts a box into runs of rows with at most `cells` cells. */
export function slices({ row, col, rows, cols }: Box, cells: number): Box[] {
  const step = Math.max(1, Math.floor(cells / cols));
  return Array.from({ length: Math.ceil(rows / step) }, (_, index) => ({
    row: row + index * step,
    col,
    rows: Math.min(step, rows - index * step),
    cols,
  }));
}

const ALIGNMENTS: Readonly<Record<NonNullable<CellPlan["align"]>, Excel.CellPropertiesFormat["horizontalAlignment"]>> =
  {
    left: "Left",
    center: "Center",
    right: "Right",
  };

const lookOf = ({ kind, align, wrap }: CellPlan): Excel.CellPropertiesFormat => ({
  ...LOOK[kind],
  ...(align && { horizontalAlignment: ALIGNMENTS[align] }),
  ...(wrap && { wrapText: true, verticalAlignment: "Top" }),
});

/** The cells of a plan, block by block from the top, without blocks that have no cell. */
export function blocks(plan: SheetPlan): Block[] {
  const whole: Box = { row: 0, col: 0, rows: plan.rows, cols: plan.cols };
  const cut: Block[] = slices(whole, CELLS_PER_BLOCK).map((box) => ({
    box,
    formulas: empty(box, null),
    formats: empty(box, null),
    looks: empty<Excel.SettableCellProperties>(box, {}),
  }));
  const step = firstOf(cut).box.rows;
  const blockOf = (row: number): Block => nth(cut, Math.floor(row / step));
  const merged = new Map(plan.merges.map((box) => [`${box.row},${box.col}`, box]));
  for (const cell of plan.cells) {
    const block = blockOf(cell.row);
    nth(block.formulas, cell.row - block.box.row)[cell.col] = content(cell, plan);
    nth(block.formats, cell.row - block.box.row)[cell.col] = cell.format ?? null;
    const { rows, cols } = merged.get(`${cell.row},${cell.col}`) ?? { rows: 1, cols: 1 };
    for (let row = cell.row; row < cell.row + rows; row++)
      for (let col = cell.col; col < cell.col + cols; col++) {
        const styled = blockOf(row);
        nth(styled.looks, row - styled.box.row)[col] = { format: lookOf(cell) };
      }
  }
  return cut.filter(({ looks }) => looks.some((row) => row.some(({ format }) => format)));
}

/**
 * From a width in characters of the default font to points: 7 pixels per character and 5 of margin, at 96 pixels per
 * inch.
 */
export const widthInPoints = (characters: number): number => (7 * characters + 5) * 0.75;
