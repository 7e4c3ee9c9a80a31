/**
 * Text pasted from another program changes the contents of cells, and leaves their look, as in Excel. The engine would take the frame's
 * colour, the font and the number format away.
 * Casts: the engine's types do not include the methods that are corrected here.
 */
import { registries } from "@odoo/o-spreadsheet";
import { TEXT_FORMAT } from "./text";

interface Pasted {
  readonly content: string;
  /** The text itself, where the content is another (a day, a number with a point). */
  readonly typed?: string;
  /** Where the cell was copied; a cell of a text has no place. */
  readonly position?: unknown;
}

interface CellPaster {
  readonly getters: any;
  dispatch(type: string, payload: unknown): void;
  pasteCell(origin: Pasted, target: object, options: PasteOptions): void;
}

type PasteOptions = { readonly pasteOption?: string } | undefined;

/** Whether a cell keeps each entry as the text that was typed. */
export const keepsText = (getters: any, place: object): boolean => getters.getCell(place)?.format === TEXT_FORMAT;

const Paster = registries.clipboardHandlersRegistries.cellHandlers.get("cell") as unknown as { prototype: CellPaster };
const pasteCell = Paster.prototype.pasteCell;
Paster.prototype.pasteCell = function (this: CellPaster, origin: Pasted, target: object, options: PasteOptions): void {
  if (origin.position !== undefined) return pasteCell.call(this, origin, target, options);
  // A text has no look that a person could paste alone.
  if (options?.pasteOption === "onlyFormat") return;
  const content = keepsText(this.getters, target) ? (origin.typed ?? origin.content) : origin.content;
  if (content !== "" || this.getters.getCell(target)) this.dispatch("UPDATE_CELL", { ...target, content });
};

/** The text of a selection without the end of its last line, which other programs write, and which is no further row. */
export const withoutLastEnd = (text: string): string => text.replace(/\r?\n$/, "");
