/**
 * What a person types or pastes with the other decimal mark. With the point as mark, "63,500" may be 63.5 or 63500, and with the comma
 * "63.500" may be either: the sheet takes neither by itself. It refuses the cell, and the page asks.
 * Casts: the engine's types list its own plugins, commands, getters and components, and not those that are added here.
 */
import { CorePlugin, registries, stores } from "@odoo/o-spreadsheet";
import { cellAddress } from "../address";
import { isLifted, mayWrite, protectionOf } from "./protection";
import { TEXT_FORMAT } from "./text";

/** A cell that was refused, with what was typed. */
export interface DoubtfulEntry {
  readonly sheetId: string;
  readonly row: number;
  readonly col: number;
  readonly typed: string;
}

/** All cells that were refused in one go; `isMixed` says that others of them were taken as numbers with a decimal mark. */
export interface DoubtfulEntries {
  readonly entries: readonly DoubtfulEntry[];
  readonly isMixed: boolean;
}

/** Stands before a number that was typed with a point where the comma is the mark. Nobody types this character. */
const MARKED = "\u2063";
const WITH_COMMA = /^\s*[-+]?(?=[\d.,]*\d)[\d.,]*,[\d.,]*(?:e[-+]?\d+)?\s*%?$/i;
const WITH_POINT = /^\s*[-+]?(?=[\d.]*\d)[\d.]*\.[\d.]*(?:e[-+]?\d+)?\s*%?$/i;

let onDoubt: (found: DoubtfulEntries) => void = () => undefined;

/** Who asks the person. */
export const askAboutEntries = (ask: (found: DoubtfulEntries) => void): void => void (onDoubt = ask);

let waiting: DoubtfulEntry[] = [];
let taken = 0;
let isPlanned = false;

/** After the command under way. */
function plan(): void {
  if (isPlanned) return;
  isPlanned = true;
  queueMicrotask(() => {
    const found = { entries: waiting, isMixed: taken > 0 };
    waiting = [];
    taken = 0;
    isPlanned = false;
    if (found.entries.length > 0) onDoubt(found);
  });
}

class EntriesPlugin extends CorePlugin {
  override allowDispatch(command: any): any {
    if (command.type !== "UPDATE_CELL" || typeof command.content !== "string" || isLifted()) return "Success";
    const { sheetId, row, col, content } = command;
    const typed = content.startsWith(MARKED) ? content.slice(MARKED.length) : content;
    const isDoubtful = typed !== content || WITH_COMMA.test(content);
    if (!isDoubtful) {
      if (WITH_POINT.test(content)) {
        taken++;
        plan();
      }
      return "Success";
    }
    const format = command.format ?? this.getters.getCell({ sheetId, row, col })?.format;
    if (format === TEXT_FORMAT && typed === content) return "Success";
    if (!mayWrite(protectionOf({ getters: this.getters }, sheetId), col, row)) return "Success";
    waiting.push({ sheetId, row, col, typed: typed.trim() });
    plan();
    return "CancelledForUnknownReason";
  }
}

registries.corePluginRegistry.add("clayledger_entries", EntriesPlugin as never);

const marked = (raw: string, locale: { readonly decimalSeparator: string }): string | undefined =>
  locale.decimalSeparator === "," && WITH_POINT.test(raw) ? MARKED + raw : undefined;

/** The engine's editor of a cell, and its reader of pasted text, as far as they turn what is typed into what is stored. */
interface Editor {
  readonly getters: any;
  readonly _currentContent: string;
  getCurrentCanonicalContent(): string;
}
interface Pasted {
  readonly cells: readonly (readonly { content: string }[])[];
}
interface PasteReader {
  readonly getters: any;
  convertTextToClipboardData(text: string): Pasted;
}

// The engine's typings hide what is put right here.
const editor = stores.CellComposerStore.prototype as unknown as Editor;
const canonical = editor.getCurrentCanonicalContent;
editor.getCurrentCanonicalContent = function (this: Editor): string {
  return marked(this._currentContent, this.getters.getLocale()) ?? canonical.call(this);
};

const Reader = registries.clipboardHandlersRegistries.cellHandlers.get("cell") as unknown as { prototype: PasteReader };
const convert = Reader.prototype.convertTextToClipboardData;
Reader.prototype.convertTextToClipboardData = function (this: PasteReader, text: string): Pasted {
  const data = convert.call(this, text);
  const rows = text.replace(/\r/g, "").split("\n").map((row) => row.split("\t")); // prettier-ignore
  data.cells.forEach((cells, row) =>
    cells.forEach((cell, col) => {
      cell.content = marked(rows[row]?.[col] ?? "", this.getters.getLocale()) ?? cell.content;
    }),
  );
  return data;
};

/** The number that an entry is if its one mark is the decimal mark; undefined where it has several marks. */
export function asDecimal({ typed }: DoubtfulEntry): string | undefined {
  const marks = typed.match(/[.,]/g) ?? [];
  return marks.length === 1 ? typed.replace(",", ".") : undefined;
}

const MOST_NAMED = 5;

/** "B4 (63,500), B5 (61,2) and 7 more" */
export function namedEntries(entries: readonly DoubtfulEntry[]): string {
  const named = entries.slice(0, MOST_NAMED).map(({ row, col, typed }) => `${cellAddress(row, col)} (${typed})`);
  const more = entries.length - named.length;
  return `${named.join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}
