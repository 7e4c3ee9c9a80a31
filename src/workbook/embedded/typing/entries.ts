/**
 * What a person types or pastes with the other decimal mark. With the point as mark, "63,500" may be 63.5 or 63500, and with the comma
 * "63.500" may be either: the sheet takes neither by itself. It refuses the cell, and the page asks.
 * Casts: the engine's types do not include the plugins, commands, getters and components that are added here.
 */
import { listed, say, verbatim, type Value } from "../../../reduction/message";
import { CorePlugin, registries, stores } from "@odoo/o-spreadsheet";
import { cellAddress } from "../../address";
import { faultOfText } from "../../limits";
import { isLifted, mayWrite, protectionOf, tellRefusal } from "../protection";
import { dayWithPoints } from "./days";
import { keepsText, withoutLastEnd } from "./pasted-text";
import { TEXT_FORMAT } from "./text";

/** A refused cell, with the text that was typed. */
export interface DoubtfulEntry {
  readonly sheetId: string;
  readonly row: number;
  readonly col: number;
  readonly typed: string;
}

/** All cells refused in one command; `isMixed` is true if other cells of it were accepted as numbers with a decimal mark. */
export interface DoubtfulEntries {
  readonly entries: readonly DoubtfulEntry[];
  readonly isMixed: boolean;
}

/** A character that nobody types. It marks a number that was typed with a point although the comma is the decimal mark. */
const MARKED = "\u2063";
const WITH_COMMA = /^\s*[-+]?(?=[\d.,]*\d)[\d.,]*,[\d.,]*(?:e[-+]?\d+)?\s*%?$/i;
const WITH_POINT = /^\s*[-+]?(?=[\d.]*\d)[\d.]*\.[\d.]*(?:e[-+]?\d+)?\s*%?$/i;

let onDoubt: (found: DoubtfulEntries) => void = () => undefined;

/** The function that asks the person. */
export const askAboutEntries = (ask: (found: DoubtfulEntries) => void): void => void (onDoubt = ask);

let waiting: DoubtfulEntry[] = [];
let taken = 0;
let isPlanned = false;

/** Runs after the present command. */
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
    const fault = content.startsWith("=") ? undefined : faultOfText(content);
    if (fault) {
      const cell = verbatim(cellAddress(row, col));
      if (mayWrite(protectionOf({ getters: this.getters }, sheetId), col, row))
        tellRefusal(say`${cell} was not changed: ${fault}. Shorten the text.`, { sheetId, row, col });
      return "CancelledForUnknownReason";
    }
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

/**
 * What is stored, with the comma as decimal mark, of an entry that the engine would misread: a day with points, or a number with a
 * point.
 */
const marked = (raw: string, locale: { readonly decimalSeparator: string }): string | undefined =>
  locale.decimalSeparator === ","
    ? (dayWithPoints(raw) ?? (WITH_POINT.test(raw) ? MARKED + raw : undefined))
    : undefined;

/** The parts of the engine's cell editor and of its reader of pasted text that convert typed text to stored content. */
interface Editor {
  readonly getters: any;
  readonly _currentContent: string;
  readonly currentEditedCell: object;
  getCurrentCanonicalContent(): string;
}
interface Pasted {
  readonly cells: readonly (readonly { content: string; typed?: string }[])[];
}
interface PasteReader {
  readonly getters: any;
  convertTextToClipboardData(text: string): Pasted;
}

// The engine's type definitions do not include the methods that are corrected here.
const editor = stores.CellComposerStore.prototype as unknown as Editor;
const canonical = editor.getCurrentCanonicalContent;
editor.getCurrentCanonicalContent = function (this: Editor): string {
  const { getters, _currentContent: raw } = this;
  const changed = marked(raw, getters.getLocale());
  if (changed === undefined) return canonical.call(this);
  return keepsText(getters, this.currentEditedCell) ? raw : changed;
};

const Reader = registries.clipboardHandlersRegistries.cellHandlers.get("cell") as unknown as { prototype: PasteReader };
const convert = Reader.prototype.convertTextToClipboardData;
Reader.prototype.convertTextToClipboardData = function (this: PasteReader, copied: string): Pasted {
  const text = withoutLastEnd(copied);
  const data = convert.call(this, text);
  const rows = text.replace(/\r/g, "").split("\n").map((row) => row.split("\t")); // prettier-ignore
  data.cells.forEach((cells, row) =>
    cells.forEach((cell, col) => {
      const raw = rows[row]?.[col] ?? "";
      const changed = marked(raw, this.getters.getLocale());
      if (changed !== undefined) Object.assign(cell, { content: changed, typed: raw });
    }),
  );
  return data;
};

/** The number of an entry if its only mark is the decimal mark; undefined if it has several marks. */
export function asDecimal({ typed }: DoubtfulEntry): string | undefined {
  const marks = typed.match(/[.,]/g) ?? [];
  return marks.length === 1 ? typed.replace(",", ".") : undefined;
}

const MOST_NAMED = 5;

/** The refused cells in words, such as "B4 (63,500), B5 (61,2) and 7 more". */
export function namedEntries(entries: readonly DoubtfulEntry[]): Value {
  const named = entries
    .slice(0, MOST_NAMED)
    .map(({ row, col, typed }) => verbatim(`${cellAddress(row, col)} (${typed})`));
  const more = entries.length - named.length;
  return more > 0 ? say`${listed(named)} and ${more} more` : listed(named);
}
