/** Measures the width of texts on paper, and breaks them into lines. */
import { LOOKS } from "../../workbook/look/look";
import type { CellKind } from "../../workbook/port";

/**
 * Advance widths in thousandths of the font size, measured in Liberation Sans Regular, which has the widths of Arial;
 * italic letters have the same widths. A character that is not listed counts as wide as a figure.
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
/** The factor by which a line of bold text is at most wider, for ordinary words. */
const BOLD = 1.08;

const WIDTH = new Map(WIDTHS.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)));

/**
 * The size of letters in points if the look of a cell gives none. It is 9 in Excel; it is 10 in a file of the embedded
 * sheet, whose columns are 6 percent wider.
 */
const USUAL_SIZE = 9.5;

/** The width in points of a text in a cell of this kind. */
export const pointsOf = (text: string, kind: CellKind = "label"): number =>
  ([...text].reduce((sum, letter) => sum + (WIDTH.get(letter) ?? FIGURE), 0) / 1000) *
  (LOOKS[kind].size ?? USUAL_SIZE) *
  (LOOKS[kind].bold ? BOLD : 1);

/**
 * How many characters from the first on fit into a width, at least 1; the whole text does not. It is found by halves: a cell may hold
 * a word of 32,767 characters.
 */
function charactersThatFit(text: string, width: number, measure: (piece: string) => number): number {
  let [fits, over] = [1, 2];
  while (over < text.length && measure(text.slice(0, over)) <= width) [fits, over] = [over, 2 * over];
  over = Math.min(over, text.length);
  while (over - fits > 1) {
    const middle = (fits + over) >> 1;
    if (measure(text.slice(0, middle)) <= width) fits = middle;
    else over = middle;
  }
  return fits;
}

/**
 * Breaks a text at spaces into lines of at most `width`. A longer word is broken too, so that nothing is cut off.
 * `measure` gives the width of a text; by default each character counts 1.
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
      const fits = charactersThatFit(rest, width, measure);
      lines.push(rest.slice(0, fits));
      rest = rest.slice(fits);
    }
    line = line ? `${line} ${rest}` : rest;
  }
  if (line) lines.push(line);
  return lines;
}
