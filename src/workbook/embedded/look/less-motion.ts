/**
 * Whoever asks the system for less motion sees a changed value at once: the engine would let it fade in, and draw the sheet again with
 * each frame of a fifth of a second.
 * Casts: the engine's types do not include the inner parts of its store.
 */
import { stores } from "@odoo/o-spreadsheet";

interface Grid {
  preventNewAnimationsInNextFrame: boolean;
  addNewAnimations(boxes: unknown, before: unknown, time?: number): void;
}

const asksForLess = (): boolean => window.matchMedia("(prefers-reduced-motion: reduce)").matches;

const grid = stores.GridRenderer.prototype as unknown as Grid;
const { addNewAnimations } = grid;
grid.addNewAnimations = function (this: Grid, boxes: unknown, before: unknown, time?: number): void {
  this.preventNewAnimationsInNextFrame ||= asksForLess();
  addNewAnimations.call(this, boxes, before, time);
};
