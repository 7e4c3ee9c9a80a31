/** Writes into cells and reads from them, and refuses what Excel refuses. */
import { accessDenied, invalidArgument, Refusal } from "../refusal";
import { cellsOf, holds, inside, overlap, type Box } from "./address";
import { keyOf, placeOf, type Cell, type Sheet, type Value } from "./book";
import { entered } from "./entry";
import { hasLocked, isLocked, lookOf } from "./looks";

/** Refuses a change of looks, sizes or objects on a protected sheet, unless the protection allows it. */
export function mayChange(sheet: Sheet, allowance: string): void {
  if (sheet.protection.on && sheet.protection.options[allowance] !== true)
    throw accessDenied(`The sheet "${sheet.name}" is protected, and ${allowance} is not set.`);
}

/** Refuses a change on a protected sheet that no option allows. */
export function mustBeOpen(sheet: Sheet): void {
  if (sheet.protection.on) throw accessDenied(`The sheet "${sheet.name}" is protected.`);
}

export function shapeCheck(array: unknown, box: Box, what: string): asserts array is unknown[][] {
  const isRight =
    Array.isArray(array) &&
    array.length === box.rows &&
    array.every((row) => Array.isArray(row) && row.length === box.cols);
  if (!isRight)
    throw invalidArgument(
      `The number of rows or columns in the input array of ${what} doesn't match the size of the range (${box.rows} by ${box.cols}).`,
    );
}

/** Writes an array of entries over a box; null leaves a cell unchanged. Nothing is written if one entry is refused. */
export function writeEntries(sheet: Sheet, box: Box, array: unknown, what: string): void {
  shapeCheck(array, box, what);
  const changes: [row: number, col: number, cell: Cell | undefined][] = [];
  for (const [index, line] of array.entries())
    for (const [offset, entry] of line.entries()) {
      if (entry === null) continue;
      const row = box.row + index;
      const col = box.col + offset;
      if (sheet.protection.on && isLocked(sheet, row, col))
        throw accessDenied(`The sheet "${sheet.name}" is protected, and cell ${row + 1}, ${col + 1} is locked.`);
      const merged = sheet.merges.find((one) => inside(one, row, col));
      const isCorner = merged?.row === row && merged.col === col;
      if (merged && !isCorner && entry !== "")
        throw new Refusal(
          "MergedRangeConflict",
          "A part of merged cells cannot be written: write into their first cell.",
        );
      const block = sheet.arrays.find((one) => inside(one, row, col));
      if (block && !holds(box, block)) throw new Refusal("InvalidOperation", "You can't change part of an array.");
      changes.push([row, col, entered(entry, String(lookOf(sheet, row, col, "numberFormat")))]);
    }
  sheet.arrays = sheet.arrays.filter(
    (one) => !(holds(box, one) && changes.some(([row, col]) => inside(one, row, col))),
  );
  for (const [row, col, cell] of changes) {
    const key = keyOf(row, col);
    // A blank written into a spill leaves the spill unchanged.
    if (!cell && sheet.cells.get(key)?.filledFrom) continue;
    if (cell) sheet.cells.set(key, cell);
    else sheet.cells.delete(key);
  }
}

export const cellAt = (sheet: Sheet, row: number, col: number): Cell | undefined => sheet.cells.get(keyOf(row, col));

/** In loops: of a large box, most of the time went to Array.from. */
function grid<T>(box: Box, one: (row: number, col: number) => T): T[][] {
  const rows: T[][] = [];
  for (let row = box.row; row < box.row + box.rows; row++) {
    const line: T[] = [];
    for (let col = box.col; col < box.col + box.cols; col++) line.push(one(row, col));
    rows.push(line);
  }
  return rows;
}

/** Excel returns no array of more than five million cells. */
const MOST_CELLS = 5_000_000;

function mayRead(box: Box): void {
  if (box.rows * box.cols > MOST_CELLS)
    throw new Refusal("RangeExceedsLimit", "The cell count in the range has exceeded the maximum supported number.");
}

export function valuesOf(sheet: Sheet, box: Box): Value[][] {
  mayRead(box);
  return grid(box, (row, col) => cellAt(sheet, row, col)?.value ?? "");
}

export function formulasOf(sheet: Sheet, box: Box): Value[][] {
  mayRead(box);
  return grid(box, (row, col) => {
    const cell = cellAt(sheet, row, col);
    // A cell filled by a spill has no formula of its own: its value is returned.
    return cell?.formula ?? cell?.value ?? "";
  });
}

export const looksOf = (sheet: Sheet, box: Box, path: string): unknown[][] => {
  mayRead(box);
  return grid(box, (row, col) => lookOf(sheet, row, col, path));
};

/** The smallest box around the cells with content (or, unless only values count, with a format). */
export function usedBox(sheet: Sheet, within: Box, valuesOnly: boolean): Box | undefined {
  const keys = [...sheet.cells.keys(), ...(valuesOnly ? [] : [...sheet.looks.keys(), ...sheet.notes.keys()])];
  const boxes: Box[] = [];
  for (const key of keys) {
    const [row, col] = placeOf(key);
    if (inside(within, row, col)) boxes.push({ row, col, rows: 1, cols: 1 });
  }
  if (boxes.length === 0) return undefined;
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  for (const { row, col } of boxes) {
    top = Math.min(top, row);
    left = Math.min(left, col);
    bottom = Math.max(bottom, row);
    right = Math.max(right, col);
  }
  return { row: top, col: left, rows: bottom - top + 1, cols: right - left + 1 };
}

export function merge(sheet: Sheet, box: Box): void {
  mustBeOpen(sheet);
  if (box.rows * box.cols === 1) return;
  const met = sheet.merges.filter((one) => overlap(one, box));
  if (met.some((one) => !holds(box, one)))
    throw new Refusal("MergedRangeConflict", "The cells overlap merged cells that reach beyond them.");
  if (sheet.arrays.some((one) => overlap(one, box)))
    throw new Refusal("InvalidOperation", "Array formulas aren't valid in merged cells.");
  sheet.merges = [...sheet.merges.filter((one) => !holds(box, one)), box];
  // Only the first cell of a merge keeps its content.
  for (const [row, col] of cellsOf(box)) if (row !== box.row || col !== box.col) sheet.cells.delete(keyOf(row, col));
}

export function unmerge(sheet: Sheet, box: Box): void {
  mustBeOpen(sheet);
  sheet.merges = sheet.merges.filter((one) => !overlap(one, box));
}

export function clearContents(sheet: Sheet, box: Box): void {
  if (sheet.protection.on && hasLocked(sheet, box))
    throw accessDenied(`The sheet "${sheet.name}" is protected, and cells of it are locked.`);
  if (sheet.arrays.some((one) => overlap(one, box) && !holds(box, one)))
    throw new Refusal("InvalidOperation", "You can't change part of an array.");
  for (const [key, cell] of [...sheet.cells])
    if (inside(box, ...placeOf(key)) && !cell.filledFrom) sheet.cells.delete(key);
}
