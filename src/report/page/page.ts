/**
 * The pages of the report: blocks of rows that stay together, laid out one below the other on pages of a fixed number
 * of rows.
 */
import type { Box, CellPlan, ChartPlan } from "../../workbook/port";
import { wrapped } from "./text";

export const COLUMNS = 12;
export const COLUMN_WIDTH = 8;
/** Width of a column, and average width of a letter of running text, in pixels of Excel's default font. */
const COLUMN_PIXELS = COLUMN_WIDTH * 7 + 5;
const LETTER_PIXELS: Readonly<Partial<Record<CellPlan["kind"], number>>> = { result: 7, note: 5.9 };
/** A safe number of letters of running text from a column to the edge of the page. */
export const lettersFrom = (col: number, kind: CellPlan["kind"] = "label", until = COLUMNS): number =>
  Math.floor(((until - col) * COLUMN_PIXELS) / (LETTER_PIXELS[kind] ?? 6.6));

/**
 * Rows of Excel's default height on a page, at the scale of the page's width: A4 is narrower and longer than Letter.
 */
export const ROWS_PER_PAGE = { A4: 53, Letter: 48 } as const;

/** Rows that stay together; rows are counted from the top of the block. */
export interface Block {
  readonly rows: number;
  readonly cells: readonly CellPlan[];
  readonly names?: Readonly<Record<string, Box>>;
  readonly charts?: readonly ChartPlan[];
  readonly merges?: readonly Box[];
  /** Stays on the page of the block after it. */
  readonly withNext?: boolean;
  /** Begins a page. */
  readonly newPage?: boolean;
}

export interface LaidOut {
  readonly rows: number;
  readonly cells: CellPlan[];
  readonly names: Record<string, Box>;
  readonly charts: ChartPlan[];
  readonly merges: Box[];
  readonly pages: Box[];
}

const down = <T extends { readonly row: number }>(one: T, rows: number): T => ({ ...one, row: one.row + rows });

/** Lays the blocks out on pages; every page except the first begins with `head`. */
export function layOut(blocks: readonly Block[], rowsPerPage: number, head: Block): LaidOut {
  const laid: LaidOut = { rows: 0, cells: [], names: {}, charts: [], merges: [], pages: [] };
  let [top, row] = [0, 0];
  const place = (block: Block): void => {
    laid.cells.push(...block.cells.map((cell) => down(cell, row)));
    for (const [name, box] of Object.entries(block.names ?? {})) laid.names[name] = down(box, row);
    for (const chart of block.charts ?? []) laid.charts.push({ ...chart, box: down(chart.box, row) });
    laid.merges.push(...(block.merges ?? []).map((box) => down(box, row)));
    row += block.rows;
  };
  const endPage = (): void => {
    if (row > top) laid.pages.push({ row: top, col: 0, rows: row - top, cols: COLUMNS });
    top = row;
  };
  /** Rows of a block and of all blocks that must stay with it. */
  const together = (from: number): number => {
    let rows = 0;
    for (let i = from; i < blocks.length; i++) {
      rows += blocks[i].rows;
      if (!blocks[i].withNext) break;
    }
    return rows;
  };
  blocks.forEach((block, index) => {
    const isFirst = row === top;
    const follows = index > 0 && blocks[index - 1].withNext;
    if (!isFirst && (block.newPage || (!follows && row - top + together(index) > rowsPerPage))) {
      endPage();
      place(head);
    }
    // A blank row at the top of a page is dropped.
    if (block.cells.length === 0 && !block.charts && row - top <= head.rows) return;
    place(block);
  });
  endPage();
  return { ...laid, rows: row };
}

export const gap: Block = { rows: 1, cells: [] };

/** A heading that runs across some columns. */
export function band(title: string, options: { withNext?: boolean; newPage?: boolean } = {}): Block {
  const cells = Array.from({ length: COLUMNS }, (_, col): CellPlan => ({
    row: 0,
    col,
    kind: "heading",
    ...(col === 0 ? { value: title } : {}),
  }));
  return { rows: 1, cells, withNext: true, ...options };
}

/** Running text, one block per line, so that any line may go to the next page; `lead` stands before the first line. */
export function paragraph(text: string, { col = 0, lead = "", kind = "label" as CellPlan["kind"] } = {}): Block[] {
  const lines = wrapped(text, lettersFrom(col, kind));
  return lines.map((line, index): Block => ({
    rows: 1,
    cells: [
      ...(index === 0 && lead ? [{ row: 0, col: 0, kind: "label" as const, value: lead }] : []),
      { row: 0, col, kind, value: line },
    ],
    // The first two lines stay together, and so do the last two.
    withNext: lines.length > 1 && (index === 0 || index === lines.length - 2),
  }));
}

/** Paragraphs, each with a mark in front. */
export const list = (texts: readonly string[], mark = "-"): Block[] =>
  texts.flatMap((text, index) => paragraph(text, { col: 1, lead: mark === "1" ? `${index + 1}.` : `      ${mark}` }));
