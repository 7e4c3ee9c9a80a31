/**
 * Removes the cells of each sheet from the engine's export before the engine writes them: the engine builds and parses the
 * text of every cell several times. Two things only the engine knows: the number of each style in the file, and the spelling
 * of each formula for Excel. Cells beside the sheet ask the engine for them, one cell for each style and one for each
 * formula. `rows.ts` then writes the rows.
 */
import { helpers, registries, UIPlugin } from "@odoo/o-spreadsheet";
// This plugin comes last: after all others that add to the export.
import "../engine";
import type { Zone } from "../zones";
import { MOST_COLS } from "./cells";
import { heldText } from "./escapes";
import { all, first } from "./xml";

/** A cell's place as one number. */
export const placeOf = (row: number, col: number): number => row * MOST_COLS + col;
export const rowOf = (place: number): number => Math.floor(place / MOST_COLS);
export const colOf = (place: number): number => place % MOST_COLS;

/** What the engine's data say of a row. */
export interface RowLook {
  readonly size?: number;
  readonly isHidden?: boolean;
  readonly outlineLevel?: number;
  readonly collapsed?: boolean;
}

export interface TakenSheet {
  readonly rows: Readonly<Record<number, RowLook>>;
  /** Number of each cell's look in `styleAt`. */
  readonly looks: ReadonlyMap<number, number>;
  /** Where the engine was asked for the style of each look. */
  readonly styleAt: readonly string[];
  /** Where the engine was asked for the spelling of the formula at a place. */
  readonly formulaAt: ReadonlyMap<number, string>;
  /** Zones whose cells are texts, whatever they look like: headings and totals of tables. */
  readonly texts: readonly Zone[];
}

/** The part of the engine's data that is touched here; its own type says less than it holds. */
interface ExportedSheet {
  readonly id: string;
  rows: Record<number, RowLook>;
  rowNumber: number;
  colNumber: number;
  cells: Record<string, string | undefined>;
  cellValues: Record<string, unknown>;
  formulaSpillRanges: Record<string, string>;
  styles: Record<string, number>;
  formats: Record<string, number>;
  borders: Record<string, number>;
  readonly images: readonly unknown[];
  readonly charts: readonly unknown[];
  readonly tables: readonly { readonly range: string; readonly config: { readonly totalRow: boolean } }[];
}

/** Questions to the engine in a row. */
const ACROSS = 100;

const LOOKS = ["styles", "formats", "borders"] as const;

/** The looks of all cells: the numbers of style, format and lines of each, and whether its text has several lines. */
function looksOf(sheet: ExportedSheet): Map<number, [number, number, number, boolean]> {
  const found = new Map<number, [number, number, number, boolean]>();
  const at = (place: number): [number, number, number, boolean] => {
    const known = found.get(place);
    if (known) return known;
    const look: [number, number, number, boolean] = [0, 0, 0, false];
    found.set(place, look);
    return look;
  };
  LOOKS.forEach((kind, index) => {
    for (const [address, id] of Object.entries(sheet[kind])) {
      const { left, right, top, bottom } = helpers.toZone(address);
      for (let row = top; row <= Math.min(bottom, sheet.rowNumber - 1); row++)
        for (let col = left; col <= Math.min(right, sheet.colNumber - 1); col++) at(placeOf(row, col))[index] = id;
    }
  });
  for (const [address, content] of Object.entries(sheet.cells)) {
    if (!content?.includes("\n")) continue;
    const { row, col } = helpers.toCartesian(address);
    at(placeOf(row, col))[3] = true;
  }
  return found;
}

/** Headings of tables, and totals; the engine leaves out tables of one row. */
function textsOf(sheet: ExportedSheet): Zone[] {
  return sheet.tables.flatMap(({ range, config }) => {
    const zone = helpers.toZone(range);
    if (zone.top === zone.bottom) return [];
    const heading = { ...zone, bottom: zone.top };
    return config.totalRow ? [heading, { ...zone, top: zone.bottom }] : [heading];
  });
}

const isLink = (content: string): boolean => content.startsWith("[");

/** Takes a sheet's cells off the engine's data, and puts the questions in their place. */
function take(sheet: ExportedSheet): TakenSheet {
  const { rows, rowNumber, colNumber, cells, cellValues } = sheet;
  const looks = looksOf(sheet);
  const texts = textsOf(sheet);
  const asked: ExportedSheet = Object.assign(sheet, {
    ...{ cells: {}, cellValues: {}, formulaSpillRanges: {}, styles: {}, formats: {}, borders: {} },
  });
  // What else of the file is made from cells: links, and the headings of tables.
  for (const [address, content] of Object.entries(cells)) {
    if (!content) continue;
    const { row, col } = helpers.toCartesian(address);
    const isOfTable = texts.some(
      ({ left, right, top, bottom }) => row >= top && row <= bottom && col >= left && col <= right,
    );
    if (isOfTable || isLink(content)) asked.cells[address] = content;
  }
  let count = 0;
  const next = (): string => helpers.toXC(colNumber + (count % ACROSS), Math.floor(count++ / ACROSS));

  const numbers = new Map<string, number>();
  const styleAt: string[] = [];
  const lookOf = new Map<number, number>();
  for (const [place, look] of looks) {
    const key = look.join();
    let number = numbers.get(key);
    if (number === undefined) {
      number = styleAt.length;
      const at = next();
      styleAt.push(at);
      numbers.set(key, number);
      LOOKS.forEach((kind, index) => {
        const id = Number(look[index]);
        if (id > 0) asked[kind][at] = id;
      });
      if (look[3]) asked.cells[at] = "\n";
    }
    lookOf.set(place, number);
  }
  const formulaAt = new Map<number, string>();
  for (const [address, content] of Object.entries(cells)) {
    if (!content?.startsWith("=") || cellValues[address] === undefined) continue;
    const { row, col } = helpers.toCartesian(address);
    const at = next();
    formulaAt.set(placeOf(row, col), at);
    asked.cells[at] = content;
    asked.cellValues[at] = 0;
  }
  asked.rowNumber = Math.ceil(count / ACROSS);
  // The engine counts the rows above a picture, and above a chart of its own.
  if (sheet.images.length + sheet.charts.length > 0) asked.rowNumber = Math.max(asked.rowNumber, rowNumber);
  else asked.rows = {};
  asked.colNumber = colNumber + ACROSS;
  return { rows, looks: lookOf, styleAt, formulaAt, texts };
}

/** What the export under way has taken, in the order of the sheets. */
let taken: TakenSheet[] = [];

/** Spells every text within as a file does, in its place. Data addresses of pictures hold nothing that needs it. */
function holdTexts(within: any): void {
  for (const [key, value] of Object.entries<unknown>(within))
    if (typeof value === "string") {
      if (!value.startsWith("data:")) within[key] = heldText(value);
    } else if (value !== null && typeof value === "object") holdTexts(value);
}

class TakingPlugin extends UIPlugin {
  override exportForExcel(data: any): void {
    taken = data.sheets.map(take);
    holdTexts(data);
  }
}

registries.featurePluginRegistry.add("clayledger_taking", TakingPlugin as never);

/** What the last export has taken. */
export function takenNow(): readonly TakenSheet[] {
  const now = taken;
  taken = [];
  return now;
}

/** What the engine answered about a sheet, by the addresses where it was asked. */
export interface Answered {
  readonly style: ReadonlyMap<string, number>;
  readonly formula: ReadonlyMap<string, string>;
}

/** Reads the engine's answers from a sheet's part, and leaves the part without rows. */
export function answersOf(document: Document): Answered {
  const style = new Map<string, number>();
  const formula = new Map<string, string>();
  const data = first(document, "sheetData")!;
  for (const cell of all(data, "c")) {
    const at = cell.getAttribute("r")!;
    style.set(at, Number(cell.getAttribute("s") ?? 0));
    const text = first(cell, "f")?.textContent;
    if (text != null) formula.set(at, text);
  }
  data.replaceChildren();
  return { style, formula };
}
