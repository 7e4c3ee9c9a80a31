/**
 * Removes the cells of each sheet from the engine's export before the engine writes them: the engine builds and parses the
 * text of every cell several times. Only the engine knows the number of each style in the file and the
 * spelling of each formula for Excel. Therefore extra cells beside the sheet are exported, one for each style, and read back from
 * the file; `spelling.ts` asks for the formulas, and `rules.ts` for the rules of entry. `rows.ts` then writes the rows.
 */
import { helpers } from "@odoo/o-spreadsheet";
import { withHeldGroups } from "../../evaluation/tight-minus";
import type { Zone } from "../../zones";
import { LAST_COLUMN } from "../../../rules/names";
import { heldText } from "../../../file/escapes";
import { all, first } from "../../../file/xml";
import type { FileRule } from "./rules";

/** A cell's place as one number. */
export const placeOf = (row: number, col: number): number => row * LAST_COLUMN + col;
export const rowOf = (place: number): number => Math.floor(place / LAST_COLUMN);
export const colOf = (place: number): number => place % LAST_COLUMN;

/** The properties of a row in the engine's data. */
export interface RowLook {
  readonly size?: number;
  readonly isHidden?: boolean;
  readonly outlineLevel?: number;
  readonly collapsed?: boolean;
}

export interface TakenSheet {
  readonly rows: Readonly<Record<number, RowLook>>;
  /** For each place, the number of its look, which is an index of `styleAt`. */
  readonly looks: ReadonlyMap<number, number>;
  /** The address of the extra cell for each look. */
  readonly styleAt: readonly string[];
  /** The formula at a place, if Excel knows its functions. */
  readonly formulas: ReadonlyMap<number, string>;
  /** Zones whose cells are texts even if they look like numbers: headings and totals of tables. */
  readonly texts: readonly Zone[];
  readonly rules: readonly FileRule[];
}

/** The part of the engine's data that is changed here; the type of the engine is incomplete. */
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
  dataValidationRules: readonly FileRule[];
  readonly tables: readonly { readonly range: string; readonly config: { readonly totalRow: boolean } }[];
}

/** The number of extra cells in a row. */
const ACROSS = 100;

const LOOKS = ["styles", "formats", "borders"] as const;

/** The looks of all cells: the numbers of style, format and borders, and whether the text has several lines. */
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

/** The headings and totals of tables; the engine leaves out tables of one row. */
function textsOf(sheet: ExportedSheet): Zone[] {
  return sheet.tables.flatMap(({ range, config }) => {
    const zone = helpers.toZone(range);
    if (zone.top === zone.bottom) return [];
    const heading = { ...zone, bottom: zone.top };
    return config.totalRow ? [heading, { ...zone, top: zone.bottom }] : [heading];
  });
}

const isLink = (content: string): boolean => content.startsWith("[");

/** Removes a sheet's cells from the engine's data, and adds the extra cells. */
function take(sheet: ExportedSheet): Omit<TakenSheet, "rules"> {
  const { rows, rowNumber, colNumber, cells, cellValues } = sheet;
  const looks = looksOf(sheet);
  const texts = textsOf(sheet);
  const asked: ExportedSheet = Object.assign(sheet, {
    ...{ cells: {}, cellValues: {}, formulaSpillRanges: {}, styles: {}, formats: {}, borders: {} },
  });
  // Links and the headings of tables stay, because the engine makes other parts of the file from these cells.
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
  const formulas = new Map<number, string>();
  for (const [address, content] of Object.entries(cells)) {
    if (!content?.startsWith("=") || cellValues[address] === undefined) continue;
    const { row, col } = helpers.toCartesian(address);
    formulas.set(placeOf(row, col), content);
  }
  asked.rowNumber = Math.ceil(count / ACROSS);
  // To place a picture or a chart of its own, the engine needs the rows above it.
  if (sheet.images.length + sheet.charts.length > 0) asked.rowNumber = Math.max(asked.rowNumber, rowNumber);
  else asked.rows = {};
  asked.colNumber = colNumber + ACROSS;
  return { rows, looks: lookOf, styleAt, formulas, texts };
}

/**
 * Spells all texts of an object, in place, as a file requires, and formulas of rules with their groups held. The data addresses of
 * pictures do not need this.
 */
function holdTexts(within: any): void {
  for (const [key, value] of Object.entries<unknown>(within))
    if (typeof value === "string") {
      if (!value.startsWith("data:")) within[key] = heldText(value.startsWith("=") ? withHeldGroups(value) : value);
    } else if (value !== null && typeof value === "object") holdTexts(value);
}

/** What is taken out of the engine's data before it writes them. */
export const TAKING = {
  sheet: (sheet: ExportedSheet): TakenSheet => {
    const taken = take(sheet);
    holdTexts(sheet);
    const rules = sheet.dataValidationRules;
    sheet.dataValidationRules = [];
    return { ...taken, rules };
  },
  beside: holdTexts,
};

/** The engine's answers: the number of each style by the address of its extra cell, and the spelling of each formula. */
export interface Answered {
  readonly style: ReadonlyMap<string, number>;
  readonly formula: ReadonlyMap<string, string>;
}

/** Reads the numbers of the styles from the part of a sheet, and removes its rows. */
export function stylesOf(document: Document): Answered["style"] {
  const data = first(document, "sheetData")!;
  const style = all(data, "c").map((cell) => [cell.getAttribute("r")!, Number(cell.getAttribute("s") ?? 0)] as const);
  data.replaceChildren();
  return new Map(style);
}
