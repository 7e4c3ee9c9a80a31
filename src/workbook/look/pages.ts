/**
 * Printed pages in the form of a file: areas of pages that stand side by side or one below the other, and the breaks
 * that cut the areas into pages. A print area of every single page would have more than the 255 characters that Excel's
 * object model takes. Excel ignores breaks if it fits a sheet to pages ("Insert, move, or delete page breaks",
 * Microsoft), so the scale is a number.
 */
import type { Box } from "../port";

export interface Printing {
  readonly areas: readonly Box[];
  /** Rows and columns, from 0, at which a page begins. */
  readonly rowBreaks: readonly number[];
  readonly colBreaks: readonly number[];
}

const isBelow = (box: Box, page: Box): boolean =>
  page.row === box.row + box.rows && page.col === box.col && page.cols === box.cols;
const isBeside = (box: Box, page: Box): boolean =>
  page.col === box.col + box.cols && page.row === box.row && page.rows === box.rows;

/** The pages that areas and breaks give: in each area from the left, then down. */
export const pagesOf = ({ areas, rowBreaks, colBreaks }: Printing): Box[] =>
  areas.flatMap((area) =>
    cut(area.row, area.rows, rowBreaks).flatMap(([row, rows]) =>
      cut(area.col, area.cols, colBreaks).map(([col, cols]) => ({ row, col, rows, cols })),
    ),
  );

const sorted = (breaks: readonly number[]): number[] => [...new Set(breaks)].sort((a, b) => a - b);

function cut(from: number, count: number, breaks: readonly number[]): [first: number, count: number][] {
  const inside = sorted(breaks).filter((at) => at > from && at < from + count);
  const firsts = [from, ...inside];
  return firsts.map((first, index) => [first, (firsts[index + 1] ?? from + count) - first]);
}

/**
 * Pages in the fewest areas that give the same pages in the same order; an area of its own for a page that a break of
 * another area would cut.
 */
export function printingOf(pages: readonly Box[]): Printing {
  const areas: Box[] = [];
  const rowBreaks: number[] = [];
  const colBreaks: number[] = [];
  let joined: "down" | "across" | undefined;
  for (const { row, col, rows, cols } of pages) {
    const last = areas.at(-1);
    const page = { row, col, rows, cols };
    if (last && joined !== "across" && isBelow(last, page)) {
      areas[areas.length - 1] = { ...last, rows: last.rows + rows };
      rowBreaks.push(row);
      joined = "down";
    } else if (last && joined !== "down" && isBeside(last, page)) {
      areas[areas.length - 1] = { ...last, cols: last.cols + cols };
      colBreaks.push(col);
      joined = "across";
    } else {
      areas.push(page);
      joined = undefined;
    }
  }
  const printing = { areas, rowBreaks: sorted(rowBreaks), colBreaks: sorted(colBreaks) };
  const isSame = pagesOf(printing).length === pages.length;
  return isSame ? printing : { areas: [...pages], rowBreaks: [], colBreaks: [] };
}

/** The last row or column of a break in a file, from 0. */
const LAST = { rowBreaks: 16_383, colBreaks: 1_048_575 } as const;
export type Breaks = keyof typeof LAST;
/** Object.keys returns strings; these are the keys of the table above. */
export const BREAKS = Object.keys(LAST) as Breaks[];

/**
 * The attributes of a break in the file: it comes after the row or column with a number, counted from 1, and runs
 * across the whole sheet.
 */
export const breakAttributes = (kind: Breaks, at: number): Record<string, string> => ({
  id: String(at),
  max: String(LAST[kind]),
  man: "1",
});

/** Inches. */
export const MARGINS = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.6, header: 0.2, footer: 0.3 } as const;

/** Points, in portrait. */
const PAPERS = { A4: [595.3, 841.9], Letter: [612, 792] } as const;
const INCH = 72;
/** Printers and fonts differ a little: pages are made smaller by this factor. */
const ROOM = 0.98;
/** A page that would need a scale below this part of the scale for its width continues on further pages. */
const LEAST = 0.8;

/**
 * The width in points of a column, from its width in a file, which counts digits of Arial 10: 5.56 points per digit by
 * the font, as LibreOffice counts; Excel counts 7 pixels, 5.25 points.
 */
export const pointsAcross = (width: number): number => width * 5.56;
/** Width in characters of a column whose width the file does not give. */
export const USUAL_WIDTH = 9.14;

export interface Size {
  /** Points. */
  readonly width: number;
  readonly height: number;
}

/**
 * The scale in percent, at most 100, at which the widest page is as wide as the paper, and the highest page no higher
 * than the paper.
 */
export function scaleOf(pages: readonly Size[], paper: keyof typeof PAPERS, isLandscape: boolean): number {
  const [short, long] = PAPERS[paper];
  const across = (isLandscape ? long : short) - (MARGINS.left + MARGINS.right) * INCH;
  const down = (isLandscape ? short : long) - (MARGINS.top + MARGINS.bottom) * INCH;
  const byWidth = Math.min(1, (ROOM * across) / Math.max(...pages.map(({ width }) => width)));
  const byHeight = pages.map(({ height }) => (ROOM * down) / height).filter((scale) => scale >= LEAST * byWidth);
  return Math.max(10, Math.floor(100 * Math.min(byWidth, ...byHeight)));
}
