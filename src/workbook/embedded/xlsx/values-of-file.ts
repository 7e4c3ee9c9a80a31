/**
 * The values that a file holds for formulas which the sheet on this page cannot calculate. They are written again when the workbook is
 * saved, as long as the formula stands where it stood: a reader that does not calculate shows them, and Excel is asked to calculate them.
 */
import type { Model } from "../engine";
import { formulaAt } from "../typing/locale";
import { boxOf } from "../../address";

/** A value as the file holds it: the kind of the cell (`t`), and the text of `<v>`. */
export interface FileValue {
  readonly kind: string;
  readonly text: string;
}

interface Kept extends FileValue {
  readonly formula: string;
}

interface Place {
  readonly sheetId: string;
  readonly row: number;
  readonly col: number;
}

/** By the getters of a model: the values by sheet and place. */
const values = new WeakMap<object, ReadonlyMap<string, Kept>>();

const keyOf = ({ sheetId, row, col }: Place): string => `${sheetId} ${row} ${col}`;

/** Keeps the values of an opened file, by the name of the sheet and the address. */
export function keepFileValues(
  { getters }: Model,
  bySheet: Iterable<readonly [sheet: string, values: ReadonlyMap<string, FileValue>]>,
): void {
  const kept = new Map<string, Kept>();
  for (const [sheet, found] of bySheet)
    for (const [at, value] of found) {
      const sheetId = getters.getSheetIdByName(sheet);
      const box = boxOf(at);
      if (sheetId === undefined || !box) continue;
      const place = { sheetId, row: box.row, col: box.col };
      kept.set(keyOf(place), { ...value, formula: formulaAt(getters, place) });
    }
  if (kept.size > 0) values.set(getters, kept);
}

/** The value of the file for the formula of a cell, if the cell has this formula still. */
export function fileValueAt({ getters }: Model, place: Place): FileValue | undefined {
  const kept = values.get(getters)?.get(keyOf(place));
  return kept?.formula === formulaAt(getters, place) ? kept : undefined;
}
