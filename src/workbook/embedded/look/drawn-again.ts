/**
 * While a changed value fades in, the engine draws the sheet again with each frame, as it last drew it. A frame can come after that sheet
 * has gone (undo of its insertion) and before the page has drawn the one in front: the engine then threw an error for a sheet that it
 * does not find. Such a frame is left out here.
 * Casts: the engine's types do not include the inner parts of its store.
 */
import { stores } from "@odoo/o-spreadsheet";

interface Renderer {
  readonly context?: { readonly sheetId: string };
  readonly model: { readonly getters: { tryGetSheet(sheetId: string): unknown } };
  draw(context?: unknown, time?: number): string;
}

const renderer = stores.RendererStore.prototype as unknown as Renderer;
const { draw } = renderer;
renderer.draw = function (this: Renderer, context?: unknown, time?: number): string {
  const isGone = !context && this.context && !this.model.getters.tryGetSheet(this.context.sheetId);
  return isGone ? "noStateChange" : draw.call(this, context, time);
};
