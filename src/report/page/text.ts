/** Lines of running text: how wide a text is on paper, and where it is broken. */
import { LOOKS } from "../../workbook/look";
import type { CellKind } from "../../workbook/port";

/**
 * Advance widths in thousandths of the font's size, measured in Liberation Sans Regular, which has the widths of Arial; slanted
 * letters are as wide. What is not listed counts as wide as a figure.
 */
const WIDTHS: readonly (readonly [thousandths: number, letters: string])[] = [
  [200, "'′ijl"],
  [278, " !,./:;I[]\\ft|"],
  [333, "()-`r²³„“”·"],
  [375, '*"{}'],
  [500, "Jcksvxyz^√±"],
  [590, "+<=>~FTZßα"],
  [667, "&ABEKPSVXYÄσ"],
  [722, "CDHNRUwÜ"],
  [778, "GOQÖ"],
  [833, "Mm"],
  [944, "%W@"],
];
const FIGURE = 556;
/** Bold letters are wider by this much at the most that a whole line comes to, in ordinary words. */
const BOLD = 1.08;

const WIDTH = new Map(WIDTHS.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)));

/**
 * Points of a cell's letters where its look gives none: 9 in Excel, and 10 in a file of the embedded sheet, whose columns are
 * wider by 6 percent.
 */
const USUAL_SIZE = 9.5;

/** Width of a text in points, as a cell of a kind shows it. */
export const pointsOf = (text: string, kind: CellKind = "label"): number =>
  ([...text].reduce((sum, letter) => sum + (WIDTH.get(letter) ?? FIGURE), 0) / 1000) *
  (LOOKS[kind].size ?? USUAL_SIZE) *
  (LOOKS[kind].bold ? BOLD : 1);

/**
 * Text in lines of at most `width`, broken at spaces; a longer word is broken where it must be. Nothing is cut. `measure` gives
 * the width of a text; letters count one each unless it is given.
 */
export function wrapped(text: string, width: number, measure = (piece: string): number => piece.length): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter(Boolean)) {
    let rest = word;
    if (line && measure(`${line} ${rest}`) > width) {
      lines.push(line);
      line = "";
    }
    while (!line && measure(rest) > width) {
      let fits = rest.length - 1;
      while (fits > 1 && measure(rest.slice(0, fits)) > width) fits--;
      lines.push(rest.slice(0, fits));
      rest = rest.slice(fits);
    }
    line = line ? `${line} ${rest}` : rest;
  }
  if (line) lines.push(line);
  return lines;
}
