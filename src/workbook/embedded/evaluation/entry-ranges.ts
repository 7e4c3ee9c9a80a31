/**
 * Evaluates the numbers and texts that a step in slices has written, column by column and before the formulas that read them.
 * Casts: the engine's types do not include the inner parts of its evaluator.
 */
import type { Evaluator, HeldCell, Place, SheetRange } from "./engine-parts";

/** At most so many cells are evaluated before the page may react: about 3 ms. */
const ROWS = 500;

/**
 * The ranges of written cells, if all of them hold a number, a text, or nothing, and no formula fills any of them; undefined otherwise, as a
 * formula may then have to leave cells that it filled.
 */
export function rangesOfEntries(evaluator: Evaluator, written: readonly Place[]): SheetRange[] | undefined {
  const ranges: SheetRange[] = [];
  for (const { sheetId, col, row } of written) {
    const cell: HeldCell | undefined = evaluator.getters.getCell({ sheetId, col, row });
    if (cell?.isFormula) return undefined;
    const last = ranges.at(-1);
    const { top = 0, bottom = 0, left } = last?.zone ?? {};
    const isBelow = last?.sheetId === sheetId && left === col && bottom + 1 === row && row - top < ROWS;
    if (isBelow) ranges[ranges.length - 1] = { sheetId, zone: { top, bottom: row, left: col, right: col } };
    else ranges.push({ sheetId, zone: { top: row, bottom: row, left: col, right: col } });
  }
  const { spreadingRelations } = evaluator;
  const isFilled = ({ sheetId, zone }: SheetRange): boolean =>
    [...spreadingRelations.searchFormulaPositionsSpreadingOn(sheetId, zone)].length > 0;
  return ranges.some(isFilled) ? undefined : ranges;
}
