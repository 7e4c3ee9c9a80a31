/** The Tab key on a protected sheet, as in Excel: it goes to the next cell that may be written, and after the last to the first. */
import { components, stores } from "@odoo/o-spreadsheet";
import { protectionOf } from "../protection";
import type { Zone } from "../zones";

export interface Cell {
  readonly col: number;
  readonly row: number;
}

const START: Cell = { col: -1, row: -1 };
const END: Cell = { col: Infinity, row: Infinity };

const isBefore = (a: Cell, b: Cell): boolean => a.row < b.row || (a.row === b.row && a.col < b.col);

/** The first cell of a zone after another one, along the rows. */
function firstAfter({ left, right, top, bottom }: Zone, { col, row }: Cell): Cell | undefined {
  if (row < top) return { col: left, row: top };
  if (row > bottom) return undefined;
  if (col < right) return { col: Math.max(col + 1, left), row };
  return row < bottom ? { col: left, row: row + 1 } : undefined;
}

/** The last cell of a zone before another one, along the rows. */
function lastBefore({ left, right, top, bottom }: Zone, { col, row }: Cell): Cell | undefined {
  if (row > bottom) return { col: right, row: bottom };
  if (row < top) return undefined;
  if (col > left) return { col: Math.min(col - 1, right), row };
  return row > top ? { col: right, row: row - 1 } : undefined;
}

/**
 * The next open cell to the right, then in the rows below, or the one before it; undefined if no cell is open. `isPassed` tells which
 * cells are passed over: those that a merged cell covers, and hidden ones.
 */
export function nextOpen(
  open: readonly Zone[],
  from: Cell,
  direction: "right" | "left",
  isPassed: (cell: Cell) => boolean,
): Cell | undefined {
  const isRight = direction === "right";
  const step = isRight ? firstAfter : lastBefore;
  const search = (start: Cell): Cell | undefined => {
    for (let at: Cell | undefined = start; at !== undefined;) {
      let next: Cell | undefined;
      for (const zone of open) {
        const cell = step(zone, at);
        if (cell && (!next || (isRight ? isBefore(cell, next) : isBefore(next, cell)))) next = cell;
      }
      if (next && !isPassed(next)) return next;
      at = next;
    }
    return undefined;
  };
  return search(from) ?? search(isRight ? START : END);
}

/** The parts of the engine that move the selection by the Tab key; its types do not include them. */
interface Sheet {
  readonly getters: any;
  readonly selection: any;
}
interface CellEditor {
  readonly getters: any;
  readonly model: Sheet;
  canStopEdition(): boolean;
  stopEdition(direction?: string): void;
}
interface CellGrid {
  readonly env: { readonly model: Sheet };
  isSingleCellOrMergeSelection(): boolean;
  moveInSelection(direction: string): void;
}

const isTab = (direction: string | undefined): direction is "right" | "left" =>
  direction === "right" || direction === "left";

/** Where the Tab key goes on the sheet in front; undefined if the sheet is not protected. */
function aimOf(getters: any, direction: "right" | "left"): Cell | undefined {
  const { sheetId, col, row } = getters.getActivePosition();
  const { on, open } = protectionOf({ getters }, sheetId);
  if (!on) return undefined;
  const isPassed = (cell: Cell): boolean => {
    const main = getters.getMainCellPosition({ sheetId, ...cell });
    const isCovered = main.col !== cell.col || main.row !== cell.row;
    return isCovered || getters.isRowHidden(sheetId, cell.row) || getters.isColHidden(sheetId, cell.col);
  };
  return nextOpen(open, { col, row }, direction, isPassed);
}

// Casts: the engine's types do not include the methods that are corrected here.
const editor = stores.CellComposerStore.prototype as unknown as CellEditor;
const stop = editor.stopEdition;
editor.stopEdition = function (this: CellEditor, direction?: string): void {
  if (!isTab(direction) || !this.canStopEdition()) return stop.call(this, direction);
  // While a formula is typed, another sheet may be in front: the engine goes back to the cell of the formula first.
  stop.call(this);
  const { getters } = this;
  const isSingle = getters.isSingleCellOrMerge(getters.getActiveSheetId(), getters.getSelectedZone());
  const aim = isSingle ? aimOf(getters, direction) : undefined;
  if (aim) this.model.selection.selectCell(aim.col, aim.row);
  else stop.call(this, direction);
};

// Cast: as above.
const grid = components.Grid.prototype as unknown as CellGrid;
const move = grid.moveInSelection;
grid.moveInSelection = function (this: CellGrid, direction: string): void {
  const { getters, selection } = this.env.model;
  const aim = isTab(direction) && this.isSingleCellOrMergeSelection() ? aimOf(getters, direction) : undefined;
  if (aim) selection.selectCell(aim.col, aim.row);
  else move.call(this, direction);
};
