/**
 * Notes on cells, which the engine does not have: they follow the sheet through undo, moved rows and copies, and show
 * on hover.
 * Casts: the engine's types do not include the plugins, commands, getters and components that are added here.
 */
import { CorePlugin, coreTypes, helpers, registries } from "@odoo/o-spreadsheet";

const SET_NOTES = "CLAYLEDGER_SET_NOTES";

export interface Note {
  readonly col: number;
  readonly row: number;
  readonly text: string;
}

interface Place {
  readonly sheetId: string;
  readonly col: number;
  readonly row: number;
}

/** The getters that the plugin adds to the getters of the engine. */
export interface NoteGetters {
  getNote(place: Place): string | undefined;
  getNotes(sheetId: string): Note[];
}

interface KeptNote {
  readonly range: { readonly sheetId: string; readonly zone: { readonly left: number; readonly top: number } };
  readonly text: string;
}

class NotesPlugin extends CorePlugin {
  static override getters = ["getNote", "getNotes"] as never;
  readonly notes: readonly KeptNote[] = [];

  getNote({ sheetId, col, row }: Place): string | undefined {
    return this.notes.find(
      ({ range }) => range.sheetId === sheetId && range.zone.left === col && range.zone.top === row,
    )?.text;
  }

  getNotes(sheetId: string): Note[] {
    return this.notes
      .filter(({ range }) => range.sheetId === sheetId)
      .map(({ range, text }) => ({ col: range.zone.left, row: range.zone.top, text }));
  }

  override adaptRanges({ applyChange }: any): void {
    const moved = this.notes.flatMap((note) => {
      const { changeType, range } = applyChange(note.range);
      return changeType === "REMOVE" ? [] : changeType === "NONE" ? [note] : [{ ...note, range }];
    });
    if (moved.length !== this.notes.length || moved.some((note, i) => note !== this.notes[i])) this.#keep(moved);
  }

  override handle(command: any): void {
    if (command.type === SET_NOTES) this.#keep([...this.notes, ...this.#made(command.sheetId, command.notes)]);
    if (command.type === "DUPLICATE_SHEET")
      this.#keep([...this.notes, ...this.#made(command.sheetIdTo, this.getNotes(command.sheetId))]);
  }

  override import(data: any): void {
    this.#keep(data.sheets.flatMap(({ id, notes = [] }: any) => this.#made(id, notes)));
  }

  override export(data: any): void {
    for (const sheet of data.sheets) sheet.notes = this.getNotes(sheet.id);
  }

  #made(sheetId: string, notes: readonly Note[]): KeptNote[] {
    return notes.map(({ col, row, text }) => ({
      range: this.getters.getRangeFromZone(sheetId, { left: col, right: col, top: row, bottom: row }),
      text,
    }));
  }

  #keep(notes: readonly KeptNote[]): void {
    (this.history as any).update("notes", notes);
  }
}

coreTypes.add(SET_NOTES as never);
// The engine asks for the inverse of a command in a shared session; no session is shared here.
registries.inverseCommandRegistry.add(SET_NOTES, (command) => [command]);
registries.corePluginRegistry.add("clayledger_notes", NotesPlugin as never);

/** The command that puts notes on a new sheet. */
export const setNotes = (sheetId: string, notes: readonly Note[]) => ({ type: SET_NOTES, sheetId, notes });

/** The getters of the engine, with those of the plugin. */
export const noteGetters = (model: { readonly getters: unknown }): NoteGetters => model.getters as NoteGetters;

/** Pixels of a wide note, as `host.css` has them. */
const WIDE = 320;

/**
 * Where a note opens: beside its cell, so that it hides no cell of the same column; below it if there is no room on either side,
 * as of cells that are merged over the whole sheet.
 */
function cornerOf(position: Place, getters: any): "top-right" | "bottom-left" {
  const { col, row } = position;
  const zone = getters.getMerge(position) ?? { left: col, right: col, top: row, bottom: row };
  const { x, width } = getters.getVisibleRect(zone);
  const room = Math.max(x, getters.getSheetViewDimensionWithHeaders().width - x - width);
  return room >= WIDE ? "top-right" : "bottom-left";
}

/** Shows the note of a cell on hover with the component given; the message of an error takes precedence. */
export function showNotesWith(component: unknown): void {
  registries.cellPopoverRegistry.add("ClayledgerNote", {
    onHover: (position: Place, getters: unknown) => {
      const text = (getters as NoteGetters).getNote(position);
      return text === undefined
        ? { isOpen: false }
        : { isOpen: true, props: { text }, Component: component, cellCorner: cornerOf(position, getters) };
    },
  } as never);
}

/** The cell of a note: "B4". */
export const noteCell = ({ col, row }: Note): string => helpers.toXC(col, row);
