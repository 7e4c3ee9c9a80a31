/**
 * The size of a sheet of a file: enough for its cells, and limited room for ranges that lead to blank cells. Ranges
 * beyond the sheet are cut.
 */
import { say, verbatim, type Message } from "../../../reduction/message";
import { helpers } from "@odoo/o-spreadsheet";
import { boxOf } from "../../address";
import { addressOf, toZone, type Zone } from "../zones";
import { LAST_COLUMN } from "../../rules/names";

/** The part of the engine's data on a sheet that gives its size. */
export interface Sized {
  readonly name: string;
  rowNumber: number;
  colNumber: number;
}

/** A range without content makes no sheet larger than this many cells. */
const MOST_ROOM = 5e6;
/** The most merged cells of a sheet; the engine stores them one by one. */
const MOST_MERGED = 500_000;

/** Makes the sheet large enough for a cell, unless it would become too large. */
export function makeRoom(sheet: Sized, { col, row }: { readonly col: number; readonly row: number }): void {
  const rows = Math.max(sheet.rowNumber, row + 1);
  const cols = Math.max(sheet.colNumber, col + 1);
  if (!(rows * cols <= MOST_ROOM)) return;
  sheet.rowNumber = rows;
  sheet.colNumber = cols;
}

/** The part of a zone within the sheet; undefined if it lies outside. */
export function within<Z extends Zone>(zone: Z, { rowNumber, colNumber }: Sized): Z | undefined {
  const right = Math.min(zone.right, colNumber - 1);
  const bottom = Math.min(zone.bottom, rowNumber - 1);
  return zone.left <= right && zone.top <= bottom ? { ...zone, right, bottom } : undefined;
}

/** Ranges of a list ("A1:B2"), cut to the sheet. */
export const rangesWithin = (ranges: readonly string[], sheet: Sized): string[] =>
  ranges.flatMap((range) => {
    const box = boxOf(range) ?? wholeLines(range);
    const zone = box && within("rows" in box ? toZone(box) : box, sheet);
    return zone ? [addressOf(zone)] : [];
  });

/** The zone of whole columns ("A:C") or rows ("1:3"), without an end. */
function wholeLines(range: string): Zone | undefined {
  const [, left, right] = /^\$?([A-Z]+):\$?([A-Z]+)$/.exec(range) ?? [];
  if (left && right)
    return { left: helpers.lettersToNumber(left), right: helpers.lettersToNumber(right), top: 0, bottom: Infinity };
  const [, top, bottom] = /^\$?(\d+):\$?(\d+)$/.exec(range) ?? [];
  return top && bottom ? { left: 0, right: Infinity, top: Number(top) - 1, bottom: Number(bottom) - 1 } : undefined;
}

/** A number for each cell of a zone. */
const placesOf = ({ left, right, top, bottom }: Zone): number[] =>
  Array.from({ length: bottom - top + 1 }, (_, row) =>
    Array.from({ length: right - left + 1 }, (__, col) => (top + row) * LAST_COLUMN + left + col),
  ).flat();

/**
 * Merged ranges of more than one cell that do not overlap, cut to the sheet, with a sentence if some were cut or left
 * out.
 */
export function mergesWithin(merges: readonly string[], sheet: Sized): { merges: string[]; remarks: Message[] } {
  const kept: string[] = [];
  const taken = new Set<number>();
  let changed = 0;
  for (const merge of merges) {
    const box = boxOf(merge);
    if (!box) {
      changed++;
      continue;
    }
    const whole = toZone(box);
    makeRoom(sheet, { col: whole.right, row: whole.bottom });
    const zone = within(whole, sheet);
    const size = zone ? (zone.right - zone.left + 1) * (zone.bottom - zone.top + 1) : 0;
    if (!zone || size < 2 || taken.size + size > MOST_MERGED) {
      if (box.rows * box.cols > 1) changed++;
      continue;
    }
    const places = placesOf(zone);
    if (places.some((place) => taken.has(place))) {
      changed++;
      continue;
    }
    for (const place of places) taken.add(place);
    if (zone.right !== whole.right || zone.bottom !== whole.bottom) changed++;
    kept.push(addressOf(zone));
  }
  return {
    merges: kept,
    remarks:
      changed > 0
        ? [
            say`Merged cells of "${verbatim(sheet.name)}" that overlap, or reach far beyond its cells, were cut or left out (${changed}).`,
          ]
        : [],
  };
}
