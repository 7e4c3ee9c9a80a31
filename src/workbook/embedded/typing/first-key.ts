/**
 * The first key that a person types on a selected cell starts a new entry. The engine keeps the old content of the cell in its hidden
 * editor until the next frame: a second key in the same frame came behind the old content and the first key, so that "13" typed on
 * a cell with 12 gave 1213. This happens while the page is busy. Here the editor gets the new entry at once.
 * Casts: the engine's types do not include the methods that are corrected here.
 */
import { components } from "@odoo/o-spreadsheet";

interface CellEditor {
  readonly props: {
    readonly composerStore: {
      readonly editionMode: string;
      readonly composerSelection: { readonly start: number; readonly end: number };
    };
  };
  readonly contentHelper: { selectRange(start: number, end: number): void };
  onInput(event: InputEvent): void;
  processContent(): void;
}

const editor = components.Composer.prototype as unknown as CellEditor;
const onInput = editor.onInput;
editor.onInput = function (this: CellEditor, event: InputEvent): void {
  const { composerStore } = this.props;
  const wasInactive = composerStore.editionMode === "inactive";
  onInput.call(this, event);
  // While an input method composes a character, the editor belongs to it.
  if (!wasInactive || composerStore.editionMode === "inactive" || event.isComposing) return;
  this.processContent();
  const { start, end } = composerStore.composerSelection;
  this.contentHelper.selectRange(start, end);
};
