/**
 * A click on the editor of an entry that has just ended belongs to the cell below it. The engine takes the editor off the page with the
 * next frame; until then, which takes long on a busy page, a click there opened the editor of another cell: of the one that Enter had
 * moved to.
 * Casts: the engine's types do not include the methods that are corrected here.
 */
import { components } from "@odoo/o-spreadsheet";

interface CellEditor {
  readonly env: { isMobile(): boolean };
  readonly props: {
    /** True for the editor over a cell, and not for the one above the sheet. */
    readonly isDefaultFocus: boolean;
    readonly composerStore: { readonly editionMode: string };
  };
  readonly contentHelper: { readonly el: HTMLElement };
  onMousedown(event: PointerEvent): void;
  onClick(event: MouseEvent): void;
}

const editor = components.Composer.prototype as unknown as CellEditor;
const { onMousedown, onClick } = editor;

/** Whether the entry has ended, and the editor only waits to be taken off the page. */
const isOver = ({ env, props }: CellEditor): boolean =>
  props.isDefaultFocus && props.composerStore.editionMode === "inactive" && !env.isMobile();

/** Gives an event to what lies below the editor. */
function passDown(event: PointerEvent, box: HTMLElement): void {
  box.style.pointerEvents = "none";
  const below = document.elementFromPoint(event.clientX, event.clientY);
  box.style.pointerEvents = "";
  below?.dispatchEvent(new PointerEvent(event.type, event));
}

editor.onMousedown = function (this: CellEditor, event: PointerEvent): void {
  const box = this.contentHelper.el.closest<HTMLElement>(".o-grid-composer");
  if (!box || !isOver(this)) return onMousedown.call(this, event);
  event.stopPropagation();
  passDown(event, box);
};

editor.onClick = function (this: CellEditor, event: MouseEvent): void {
  if (!isOver(this)) onClick.call(this, event);
};
