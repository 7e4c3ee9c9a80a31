/** Inserts and deletes whole rows or columns, or blocks of cells: everything after them moves. */
import { accessDenied, Refusal } from "../refusal";
import { COLS, ROWS, type Box } from "./address";
import { keyOf, placeOf, type Book, type Sheet } from "./book";
import { hasLocked } from "./looks";

export type Way = "Down" | "Right" | "Up" | "Left";
/** The new place of a box; undefined if all its cells were deleted. */
export type Moved = (box: Box) => Box | undefined;

export function insertCells(book: Book, sheet: Sheet, box: Box, way: Way): Moved {
  const isWhole = box.cols === COLS || box.rows === ROWS;
  if (
    sheet.protection.on &&
    !(isWhole && sheet.protection.options[box.cols === COLS ? "allowInsertRows" : "allowInsertColumns"])
  )
    throw accessDenied(`The sheet "${sheet.name}" is protected.`);
  return shift(book, sheet, box, way === "Down" ? "rows" : "cols", +1);
}

export function deleteCells(book: Book, sheet: Sheet, box: Box, way: Way): Moved {
  const isWhole = box.cols === COLS || box.rows === ROWS;
  if (sheet.protection.on) {
    const allowed = isWhole && sheet.protection.options[box.cols === COLS ? "allowDeleteRows" : "allowDeleteColumns"];
    // Excel deletes a row of a protected sheet only if all its cells are unlocked.
    if (!allowed || hasLocked(sheet, box))
      throw accessDenied(`The sheet "${sheet.name}" is protected, and cells to be deleted are locked.`);
  }
  return shift(book, sheet, box, way === "Up" ? "rows" : "cols", -1);
}

/** Moves everything after the box by its height or width; deleting removes the content of the box. */
function shift(book: Book, sheet: Sheet, box: Box, along: "rows" | "cols", sign: 1 | -1): Moved {
  if (along === "cols") throw new Refusal("NotImplemented", "The stand-in moves rows only.");
  const { row: top, rows: count, col, cols } = box;
  const inColumns = (c: number): boolean => c >= col && c < col + cols;
  const movedRow = (row: number): number | undefined => {
    if (row < top) return row;
    if (sign > 0) return row + count;
    return row < top + count ? undefined : row - count;
  };
  const moveMap = <T>(map: Map<number, T>): void => {
    const entries = [...map];
    map.clear();
    for (const [key, value] of entries) {
      const [r, c] = placeOf(key);
      const to = inColumns(c) ? movedRow(r) : r;
      if (to !== undefined) map.set(keyOf(to, c), value);
    }
  };
  moveMap(sheet.cells);
  moveMap(sheet.looks);
  moveMap(sheet.notes);
  const movedBox: Moved = (one) => {
    if (one.col < col || one.col + one.cols > col + cols) return one;
    if (sign > 0)
      return one.row >= top
        ? { ...one, row: one.row + count }
        : one.row + one.rows > top
          ? { ...one, rows: one.rows + count }
          : one;
    const cut = Math.max(0, Math.min(one.row + one.rows, top + count) - Math.max(one.row, top));
    const rows = one.rows - cut;
    const row = one.row >= top + count ? one.row - count : Math.min(one.row, top);
    return rows > 0 ? { ...one, row, rows } : undefined;
  };
  sheet.merges = sheet.merges.flatMap((one) => movedBox(one) ?? []);
  sheet.rules = sheet.rules.flatMap((one) => {
    const to = movedBox(one.box);
    return to ? [{ ...one, box: to }] : [];
  });
  for (const name of [...book.names, ...book.sheets.flatMap(({ names }) => names)]) {
    if (name.refers.kind !== "cells") continue;
    const areas = name.refers.areas.map((area) => ({
      ...area,
      box: area.sheet === sheet.id ? movedBox(area.box) : area.box,
    }));
    name.refers = areas.some((area) => !area.box)
      ? { kind: "lost" }
      : { kind: "cells", areas: areas as { sheet: string; box: Box }[] };
  }
  return movedBox;
}
