/**
 * Printed pages as a file keeps them: areas of pages that stand side by side or one below the other, and the breaks that cut the
 * areas into pages again. A print area of every single page would have more than the 255 characters that Excel's object model
 * takes. Excel ignores breaks where it fits a sheet to pages ("Insert, move, or delete page breaks", Microsoft), so the scale is a
 * number.
 */
import type { Box } from "./port";

export interface Printing {
  readonly areas: readonly Box[];
  /** Rows and columns, from 0, that begin a page. */
  readonly rowBreaks: readonly number[];
  readonly colBreaks: readonly number[];
}

const isBelow = (box: Box, page: Box): boolean =>
  page.row === box.row + box.rows && page.col === box.col && page.cols === box.cols;
const isBeside = (box: Box, page: Box): boolean =>
  page.col === box.col + box.cols && page.row === box.row && page.rows === box.rows;

/** The pages that areas and breaks come to: of each area from the left, then down. */
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

/** Pages in as few areas as give the same pages in the same order; each by itself where a break would cut another one. */
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

/** The largest number of a row or column in a file, from 0, as breaks name it. */
const LAST = { rowBreaks: 16_383, colBreaks: 1_048_575 } as const;
export type Breaks = keyof typeof LAST;
export const BREAKS = Object.keys(LAST) as Breaks[];

/** A break as the file has it: it stands behind the row or column of a number, counted from 1, all across the sheet. */
export const breakAttributes = (kind: Breaks, at: number): Record<string, string> => ({
  id: String(at),
  max: String(LAST[kind]),
  man: "1",
});

/** Inches. */
export const MARGINS = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.6, header: 0.2, footer: 0.3 } as const;

/** Points, upright. */
const PAPERS = { A4: [595.3, 841.9], Letter: [612, 792] } as const;
const INCH = 72;
/** Printers and fonts differ by a little: pages are made as much smaller. */
const ROOM = 0.98;
/** A page that would have to be made smaller than this part of its width's own scale runs on over several. */
const LEAST = 0.8;

/**
 * Points of a column of a width as a file has it, in digits of Arial 10: 5.56 points wide by the font's own measure, as LibreOffice
 * counts them; Excel counts 7 pixels, 5.25 points.
 */
export const pointsAcross = (width: number): number => width * 5.56;
/** Width of a column that a file says nothing of, in characters. */
export const USUAL_WIDTH = 9.14;

export interface Size {
  /** Points. */
  readonly width: number;
  readonly height: number;
}

/** The scale in percent, never over 100, at which the widest page is as wide as the paper and the highest one no higher. */
export function scaleOf(pages: readonly Size[], paper: keyof typeof PAPERS, isLandscape: boolean): number {
  const [short, long] = PAPERS[paper];
  const across = (isLandscape ? long : short) - (MARGINS.left + MARGINS.right) * INCH;
  const down = (isLandscape ? short : long) - (MARGINS.top + MARGINS.bottom) * INCH;
  const byWidth = Math.min(1, (ROOM * across) / Math.max(...pages.map(({ width }) => width)));
  const byHeight = pages.map(({ height }) => (ROOM * down) / height).filter((scale) => scale >= LEAST * byWidth);
  return Math.max(10, Math.floor(100 * Math.min(byWidth, ...byHeight)));
}
