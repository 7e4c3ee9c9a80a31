/** The looks of cells: fonts, fills, borders, alignment, number formats, and whether they are locked. */
import { inside, cellsOf, type Box } from "./address";
import { keyOf, placeOf, type Sheet } from "./book";

const DEFAULTS: Readonly<Record<string, unknown>> = {
  numberFormat: "General",
  "format.protection.locked": true,
  "format.protection.formulaHidden": false,
  "format.font.name": "Aptos Narrow",
  "format.font.size": 11,
  "format.font.bold": false,
  "format.font.italic": false,
  "format.font.color": "#000000",
  "format.font.underline": "None",
  "format.font.strikethrough": false,
  "format.fill.color": "#FFFFFF",
  "format.horizontalAlignment": "General",
  "format.verticalAlignment": "Bottom",
  "format.wrapText": false,
  "format.shrinkToFit": false,
  "format.indentLevel": 0,
  "format.textOrientation": 0,
  "format.readingOrder": "Context",
};

/** Above this many cells a look is stored for the whole area, not cell by cell. */
const LARGE = 5_000;

export function lookOf(sheet: Sheet, row: number, col: number, path: string): unknown {
  const own = sheet.looks.get(keyOf(row, col));
  if (own && Object.hasOwn(own, path)) return own[path];
  let value = DEFAULTS[path];
  for (const area of sheet.areaLooks) if (area.path === path && inside(area.box, row, col)) value = area.value;
  return value;
}

export function setLook(sheet: Sheet, box: Box, path: string, value: unknown): void {
  if (box.rows * box.cols <= LARGE) {
    for (const [row, col] of cellsOf(box)) {
      const key = keyOf(row, col);
      const own = sheet.looks.get(key);
      if (own) own[path] = value;
      else sheet.looks.set(key, { [path]: value });
    }
    return;
  }
  for (const [key, own] of sheet.looks) if (Object.hasOwn(own, path) && inside(box, ...placeOf(key))) delete own[path];
  sheet.areaLooks.push({ box, path, value });
}

/** The look that all cells of a box share; null if they differ, as in Excel. */
export function sharedLook(sheet: Sheet, box: Box, path: string): unknown {
  const first = lookOf(sheet, box.row, box.col, path);
  for (const at of sampled(sheet, box)) if (lookOf(sheet, ...at, path) !== first) return null;
  return first ?? null;
}

/** All cells of a small box; of a large one, its corners and the cells with a look of their own. */
function* sampled(sheet: Sheet, box: Box): Generator<[row: number, col: number]> {
  if (box.rows * box.cols <= LARGE) return yield* cellsOf(box);
  yield [box.row, box.col];
  yield [box.row + box.rows - 1, box.col + box.cols - 1];
  for (const key of sheet.looks.keys()) if (inside(box, ...placeOf(key))) yield placeOf(key);
}

export const isLocked = (sheet: Sheet, row: number, col: number): boolean =>
  lookOf(sheet, row, col, "format.protection.locked") !== false;

/** Whether any cell of a box is locked. */
export const hasLocked = (sheet: Sheet, box: Box): boolean => {
  for (const at of sampled(sheet, box)) if (isLocked(sheet, ...at)) return true;
  return false;
};
