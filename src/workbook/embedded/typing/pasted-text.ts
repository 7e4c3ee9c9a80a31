/**
 * Text pasted from another program changes the contents of cells, and leaves their look, as in Excel. The engine would take the frame's
 * colour, the font and the number format away.
 * Casts: the engine's types do not include the methods that are corrected here.
 */
import { registries } from "@odoo/o-spreadsheet";

interface Pasted {
  readonly content: string;
  /** Where the cell was copied; a cell of a text has no place. */
  readonly position?: unknown;
}

interface CellPaster {
  readonly getters: any;
  dispatch(type: string, payload: unknown): void;
  pasteCell(origin: Pasted, target: object, options: unknown): void;
}

const Paster = registries.clipboardHandlersRegistries.cellHandlers.get("cell") as unknown as { prototype: CellPaster };
const pasteCell = Paster.prototype.pasteCell;
Paster.prototype.pasteCell = function (this: CellPaster, origin: Pasted, target: object, options: unknown): void {
  if (origin.position !== undefined) pasteCell.call(this, origin, target, options);
  else if (origin.content !== "" || this.getters.getCell(target))
    this.dispatch("UPDATE_CELL", { ...target, content: origin.content });
};

/** The text of a selection without the end of its last line, which other programs write, and which is no further row. */
export const withoutLastEnd = (text: string): string => text.replace(/\r?\n$/, "");
