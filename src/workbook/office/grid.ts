/** A sheet plan as the two-dimensional arrays that Excel takes: few large writes in place of one per cell. */
import type { Box, CellPlan, CellValue, SheetPlan } from "../port";
import { LOOK } from "./look";
import { withLocalNames } from "./names";

/** A run of whole rows, small enough for one request. In an array, null leaves a cell alone. */
export interface Block {
  readonly box: Box;
  readonly formulas: (string | number | boolean | null)[][];
  readonly formats: (string | null)[][];
  readonly looks: Excel.SettableCellProperties[][];
}

/** About 200 bytes a cell with its look: a third of a request. */
const CELLS_PER_BLOCK = 1500;

const MONTH = /^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/i;

/** Whether Excel would take a text for something else: a formula, a number, a date, a logical value. */
const isRead = (text: string): boolean =>
  !/^\p{L}/u.test(text) || /^(true|false)$/i.test(text) || (MONTH.test(text) && /\d/.test(text));

/** What to write so that a cell holds a constant just as it is. */
export const constant = (value: CellValue): CellValue =>
  typeof value === "string" && value !== "" && isRead(value) ? `'${value}` : value;

/** What to write so that the cell holds its formula, or its value just as it is. */
function content(cell: CellPlan, plan: SheetPlan): string | number | boolean | null {
  if (cell.formula !== undefined) return withLocalNames(cell.formula, plan.names);
  if (cell.value === undefined || cell.value === "") return null;
  return constant(cell.value);
}

const empty = <T>({ rows, cols }: Box, value: T): T[][] => Array.from({ length: rows }, () => Array(cols).fill(value));

/** Cuts a box into runs of rows of at most `cells` cells. */
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

/** The plan's cells, block by block from the top; blocks without a cell are left out. */
export function blocks(plan: SheetPlan): Block[] {
  const whole: Box = { row: 0, col: 0, rows: plan.rows, cols: plan.cols };
  const cut: Block[] = slices(whole, CELLS_PER_BLOCK).map((box) => ({
    box,
    formulas: empty(box, null),
    formats: empty(box, null),
    looks: empty<Excel.SettableCellProperties>(box, {}),
  }));
  const step = cut[0].box.rows;
  const merged = new Map(plan.merges.map((box) => [`${box.row},${box.col}`, box]));
  for (const cell of plan.cells) {
    const block = cut[Math.floor(cell.row / step)];
    block.formulas[cell.row - block.box.row][cell.col] = content(cell, plan);
    block.formats[cell.row - block.box.row][cell.col] = cell.format ?? null;
    const { rows, cols } = merged.get(`${cell.row},${cell.col}`) ?? { rows: 1, cols: 1 };
    for (let row = cell.row; row < cell.row + rows; row++)
      for (let col = cell.col; col < cell.col + cols; col++) {
        const styled = cut[Math.floor(row / step)];
        styled.looks[row - styled.box.row][col] = { format: lookOf(cell) };
      }
  }
  return cut.filter(({ looks }) => looks.some((row) => row.some(({ format }) => format)));
}

/** A width in characters of the default font as points: 7 pixels a character and 5 of margin, at 96 pixels to the inch. */
export const widthInPoints = (characters: number): number => (7 * characters + 5) * 0.75;
