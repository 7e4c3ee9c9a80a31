/**
 * The pages of the report: blocks of rows that stay together, laid out one below the other on pages of a fixed number
 * of rows.
 */
import { lastOf, nth } from "../../reduction/numeric/lists";
import type { Box, CellPlan, ChartPlan } from "../../workbook/port";
import { pointsOf, wrapped } from "./text";

export const COLUMNS = 12;
export const COLUMN_WIDTH = 8.3;
/** The width of a column in points that Excel gives to this number of characters of its default font. */
const COLUMN_POINTS = (Math.round(COLUMN_WIDTH * 7 + 5) * 72) / 96;
/** Points between the text and both sides of a cell, and the share of the rest that a line may fill: printers differ. */
const PADDING = 4;
const FILLED = 0.97;

/** Width for running text between two columns, in points. */
export const roomFrom = (col: number, until = COLUMNS): number => ((until - col) * COLUMN_POINTS - PADDING) * FILLED;

/** True if a text fits on one line from one column to another. */
export const fits = (text: string, kind: CellPlan["kind"], col: number, until = COLUMNS): boolean =>
  pointsOf(text, kind) <= roomFrom(col, until);

/** Height of every row except the first, in points: one line of text. */
export const ROW_HEIGHT = 11.25;
/** The height of a row of headings, in points: a line of bold text, and the rule below it. */
export const HEADING_HEIGHT = 12.75;
/** The height of the row below a heading, in points: its letters do not touch the rule. */
export const BELOW_HEADING = 12.75;
/** The height of the first row, which contains the title. */
export const TITLE_HEIGHT = 18;

/**
 * The number of rows on a page that has the width of the page: A4 is narrower and longer than Letter. By the narrowest
 * margins of both hosts one more row would fit; the title of the first page needs it.
 */
export const ROWS_PER_PAGE = { A4: 72, Letter: 65 } as const;

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
  /** A block that may continue on the next page: the least rows before the end of the page, and the function that gives both parts. */
  readonly split?: {
    readonly least: number;
    /** The first part has at most `rows` rows; the second part repeats the headings. */
    readonly at: (rows: number) => readonly [Block, Block];
  };
}

export interface LaidOut {
  readonly rows: number;
  readonly cells: CellPlan[];
  readonly names: Record<string, Box>;
  readonly charts: ChartPlan[];
  readonly merges: Box[];
  readonly pages: Box[];
  /** Heights of the rows, in points. */
  readonly heights: number[];
}

/** Whether the block is the blank row between two parts, which is half as high as a line. */
const isGap = (block: Block): boolean => block.cells.length === 0 && !block.charts;
const headingsOf = new WeakMap<Block, ReadonlySet<number>>();
/** The rows of a block that hold headings; they are looked for once, because every arrangement that is tried asks for them. */
function headingRows(block: Block): ReadonlySet<number> {
  const known = headingsOf.get(block);
  if (known) return known;
  const rows = new Set(block.cells.flatMap(({ kind, row }) => (kind === "heading" ? [row] : [])));
  headingsOf.set(block, rows);
  return rows;
}
/** Height of a block in lines of text, with what the row below its last heading is higher. */
function lines(block: Block): number {
  if (isGap(block)) return block.rows / 2;
  const headings = headingRows(block);
  const below = [...headings].filter((row) => !headings.has(row + 1)).length;
  return (
    block.rows + (headings.size * (HEADING_HEIGHT - ROW_HEIGHT) + below * (BELOW_HEADING - ROW_HEIGHT)) / ROW_HEIGHT
  );
}
/** The number of lines of blocks that stand below one another. */
export const linesOf = (blocks: readonly Block[]): number => blocks.reduce((sum, block) => sum + lines(block), 0);

const down = <T extends { readonly row: number }>(one: T, rows: number): T => ({ ...one, row: one.row + rows });

/** Blocks with the rows in which they begin, and their pages. */
export interface Arranged {
  readonly placed: readonly { readonly block: Block; readonly row: number }[];
  readonly rows: number;
  readonly pages: readonly Box[];
  readonly heights: readonly number[];
}

/** Arranges the blocks on pages; every page except the first begins with `head` and half a blank row. */
export function arrange(blocks: readonly Block[], rowsPerPage: number, head: Block): Arranged {
  const placed: { block: Block; row: number }[] = [];
  const pages: Box[] = [];
  const heights: number[] = [];
  let [top, row, filled] = [0, 0, 0];
  let isBelow = false;
  const place = (block: Block): void => {
    placed.push({ block, row });
    const headings = headingRows(block);
    const height = isGap(block) ? ROW_HEIGHT / 2 : ROW_HEIGHT;
    for (let at = 0; at < block.rows; at++) {
      heights.push(headings.has(at) ? HEADING_HEIGHT : isBelow ? BELOW_HEADING : height);
      isBelow = headings.has(at);
    }
    row += block.rows;
    filled += lines(block);
  };
  const endPage = (): void => {
    if (row > top) pages.push({ row: top, col: 0, rows: row - top, cols: COLUMNS });
    top = row;
    filled = 0;
  };
  const nextPage = (): void => {
    endPage();
    place(head);
    place(gap);
  };
  /** The lines of a block and of all blocks that must stay on the same page with it. */
  const together = (from: number): number => {
    let rows = 0;
    for (let i = from; i < blocks.length; i++) {
      const block = blocks[i];
      if (!block) break;
      rows += block.split?.least ?? lines(block);
      if (!block.withNext) break;
    }
    return rows;
  };
  blocks.forEach((block, index) => {
    const isFirst = row === top;
    const follows = blocks[index - 1]?.withNext === true;
    if (!isFirst && (block.newPage || (!follows && filled + together(index) > rowsPerPage))) {
      nextPage();
    }
    // A blank row at the top of a page is dropped.
    if (isGap(block) && row - top <= head.rows + gap.rows) return;
    let rest = block;
    while (rest.split && filled + lines(rest) > rowsPerPage) {
      // The headings of both parts take more than a line each.
      const [part, remainder] = rest.split.at(Math.floor(rowsPerPage - filled - (lines(rest) - rest.rows)));
      place(part);
      nextPage();
      rest = remainder;
    }
    place(rest);
  });
  endPage();
  heights[0] = TITLE_HEIGHT;
  return { placed, rows: row, pages, heights };
}

/** Cells, names, charts and merged cells of arranged blocks, at their places. */
export function layOut({ placed, rows, pages, heights }: Arranged): LaidOut {
  const laid: LaidOut = {
    rows,
    cells: [],
    names: {},
    charts: [],
    merges: [],
    pages: [...pages],
    heights: [...heights],
  };
  for (const { block, row } of placed) {
    laid.cells.push(...block.cells.map((cell) => down(cell, row)));
    for (const [name, box] of Object.entries(block.names ?? {})) laid.names[name] = down(box, row);
    for (const chart of block.charts ?? []) laid.charts.push({ ...chart, box: down(chart.box, row) });
    laid.merges.push(...(block.merges ?? []).map((box) => down(box, row)));
  }
  return laid;
}

/** A last page with fewer lines than this looks like a remainder, and another page with more blank lines like a last one. */
const [LEAST_ON_LAST, MOST_BLANK] = [12, 15];

/** What is worse in a layout comes first: its pages, a last page of a few lines, half blank pages, and the pages on which small charts stand. */
function faultsOf({ pages, heights, placed }: Arranged): readonly number[] {
  const filled = pages.map(
    ({ row, rows }) => heights.slice(row, row + rows).reduce((sum, height) => sum + height, 0) / ROW_HEIGHT,
  );
  const whole = Math.max(...filled);
  const pagesOfSmall = placed.flatMap(({ block, row }) =>
    (block.charts ?? []).flatMap(({ box, isSmall }) =>
      isSmall ? [pages.filter((page) => page.row <= row + box.row).length] : [],
    ),
  );
  return [
    pages.length,
    Number(lastOf(filled) < LEAST_ON_LAST),
    filled.slice(0, -1).filter((lines) => lines < whole - MOST_BLANK).length,
    new Set(pagesOfSmall).size,
  ];
}

/** The arrangement with the fewest faults, the first of several. */
export function fullestOf(arrangements: readonly Arranged[]): Arranged {
  const isBetter = (one: readonly number[], than: readonly number[]): boolean => {
    const at = one.findIndex((fault, index) => fault !== than[index]);
    return at >= 0 && nth(one, at) < nth(than, at);
  };
  const judged = arrangements.map((arranged) => ({ arranged, faults: faultsOf(arranged) }));
  return judged.reduce((best, one) => (isBetter(one.faults, best.faults) ? one : best)).arranged;
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

/**
 * Running text, one block per line, so that any line may go to the next page; `lead` stands in the first column before the first
 * line, and each line begins with its part of `indent`, that of the first line or that of the others.
 */
export function paragraph(
  text: string,
  {
    col = 0,
    until = COLUMNS,
    lead = "",
    kind = "label",
    indent: [first, others] = ["", ""],
  }: {
    col?: number;
    until?: number;
    lead?: string;
    kind?: CellPlan["kind"];
    indent?: readonly [first: string, others: string];
  } = {},
): Block[] {
  const lines = wrapped(text, roomFrom(col, until) - pointsOf(first, kind), (piece) => pointsOf(piece, kind));
  return lines.map((line, index): Block => ({
    rows: 1,
    cells: [
      ...(index === 0 && lead ? [{ row: 0, col: 0, kind: "label" as const, value: lead }] : []),
      { row: 0, col, kind, value: (index === 0 ? first : others) + line },
    ],
    // The first two lines stay together, and so do the last two.
    withNext: lines.length > 1 && (index === 0 || index === lines.length - 2),
  }));
}

/** The mark before a paragraph of a list, and as much blank before its other lines. */
const MARK = ["   -  ", "      "] as const;

/** Paragraphs, each with a mark in front. */
export const list = (texts: readonly string[]): Block[] => texts.flatMap((text) => paragraph(text, { indent: MARK }));

/** The same list, with two short paragraphs side by side. */
export function listAbreast(texts: readonly string[]): Block[] {
  const half = COLUMNS / 2;
  const blocks: Block[] = [];
  for (let index = 0; index < texts.length; index++) {
    const [left, right] = [texts[index] ?? "", texts[index + 1]];
    if (right !== undefined && [left, right].every((text) => fits(MARK[0] + text, "label", half))) {
      const cells = [left, right].map((text, side): CellPlan => ({
        row: 0,
        col: side * half,
        kind: "label",
        value: MARK[0] + text,
      }));
      blocks.push({ rows: 1, cells });
      index++;
    } else blocks.push(...list([left]));
  }
  return blocks;
}
