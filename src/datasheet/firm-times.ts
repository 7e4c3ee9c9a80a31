/** Whether cells that a person selects as times look like times, before they get their names. */
import type { SeriesLie } from "./firm-layout";
import type { Box, CellValue } from "../workbook/port";

/**
 * The cells of each selected column or row, in the order of the blocks. `values` are those of all blocks, side by side, as
 * a selection gives them.
 */
export function cellsOfLines(
  boxes: readonly Box[],
  values: readonly (readonly CellValue[])[],
  lie: SeriesLie,
): readonly (readonly CellValue[])[] {
  let left = 0;
  return boxes.flatMap(({ cols }) => {
    const block = values.map((row) => row.slice(left, left + cols));
    left += cols;
    return lie === "rows" ? block : Array.from({ length: cols }, (_, col) => block.map((row) => row[col] ?? ""));
  });
}

/** Fewer numbers than these tell nothing. */
const FEWEST = 3;
/** The last time of a load is at least so many times its first: readings of a dial, and days, stay closer together. */
const SPAN = 3;

/**
 * False if the numbers fall somewhere, or if the last is less than three times the first that is not zero. Blank cells and
 * texts do not count.
 * @example looksLikeTimes([0, 0.25, 1, 4, 15]) // true
 */
export function looksLikeTimes(cells: readonly CellValue[]): boolean {
  const numbers = cells.filter((cell) => typeof cell === "number");
  if (numbers.length < FEWEST) return true;
  const first = numbers.find((number) => number > 0) ?? 0;
  return numbers.every((number, at) => at === 0 || number >= numbers[at - 1]!) && numbers.at(-1)! >= SPAN * first;
}
