/** Scrolls the sheet in front to a cell that the pane shows. */
import type { Dispatching, Model } from "./engine";
import type { Zone } from "./zones";

/** The rows that stay in sight above the cell: the heading of its part, and the headings and units of its table. */
const HEADING_ROWS = 6;
/** The columns that stay in sight to the left of the cell: its label. */
const LABEL_COLUMNS = 3;

/**
 * Scrolls so that a cell that was out of sight stands near the top left corner, with its headings and its label. (The
 * engine scrolls only until the cell is in sight, at the edge of the window.) `before` is what was in sight.
 */
export function bringUp(model: Model, { top: row, left: col }: Zone, before: Zone): void {
  const { getters } = model;
  const sheetId = getters.getActiveSheetId();
  const { xSplit, ySplit } = getters.getPaneDivisions(sheetId);
  const { scrollX, scrollY } = getters.getActiveSheetScrollInfo();
  const isInSight = (at: number, from: number, to: number, split: number) => at < split || (at >= from && at < to);
  const start = (dimension: "ROW" | "COL", split: number, at: number) =>
    getters.getColRowOffset(dimension, split, Math.max(split, at), sheetId);
  // Cast: the engine's types list every command in one union, which plain data cannot satisfy.
  (model as unknown as Dispatching).dispatch("SET_VIEWPORT_OFFSET", {
    offsetX: isInSight(col, before.left, before.right, xSplit) ? scrollX : start("COL", xSplit, col - LABEL_COLUMNS),
    offsetY: isInSight(row, before.top, before.bottom, ySplit) ? scrollY : start("ROW", ySplit, row - HEADING_ROWS),
  });
}
