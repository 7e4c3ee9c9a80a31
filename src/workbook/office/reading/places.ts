/** The cells that the names of a workbook lead to, and addresses as boxes of cells. */
import { boxOf, columnNumber, unquoted } from "../../address";
import type { Box } from "../../port";
import { LAST_COLUMN, LAST_ROW, localName } from "../names";

/** A box of cells on a sheet. */
export interface Place {
  readonly sheet: string;
  readonly box: Box;
}

/**
 * The loaded properties of each name. The value of a name of cells is their address (@types/office-js,
 * NamedItem.value).
 */
export const NAME_PROPERTIES = "items/name,items/type,items/value";

const ADDRESS = /^=?(?:'((?:[^']|'')+)'|([^'!,]+))!([^!,]+)$/;

/** Reads "A:C" and "4:8", which mean whole columns and rows. */
function wholeLines(address: string): Box | undefined {
  const [, left, right] = /^\$?([A-Z]+):\$?([A-Z]+)$/i.exec(address) ?? [];
  if (left !== undefined && right !== undefined)
    return { row: 0, col: columnNumber(left), rows: LAST_ROW, cols: columnNumber(right) - columnNumber(left) + 1 };
  const [, top, bottom] = /^\$?(\d+):\$?(\d+)$/.exec(address) ?? [];
  return top !== undefined && bottom !== undefined
    ? { row: Number(top) - 1, col: 0, rows: Number(bottom) - Number(top) + 1, cols: LAST_COLUMN }
    : undefined;
}

/**
 * Reads "R4C2:R9C2". Excel on Windows gives the address of a name so if its option "R1C1 reference style" is on (office-js issue 1831); Excel
 * also takes this option from the workbook that it opens first. R and C are other letters in other languages, such as Z and S in German;
 * the row comes first in all.
 */
function numbered(address: string): Box | undefined {
  const [, top, left, bottom = top, right = left] =
    /^\p{L}(\d+)\p{L}(\d+)(?::\p{L}(\d+)\p{L}(\d+))?$/u.exec(address) ?? [];
  if (top === undefined || left === undefined) return undefined;
  const [row, col] = [Number(top) - 1, Number(left) - 1];
  return { row, col, rows: Number(bottom) - row, cols: Number(right) - col };
}

/**
 * "'Data sheet'!$B$4:$B$9" as a place; undefined for several areas, for #REF! and for everything else that is not one
 * block of cells.
 */
function placeOf(address: unknown): Place | undefined {
  const [, quoted, plain, cells] = (typeof address === "string" && ADDRESS.exec(address)) || [];
  const box = cells && (boxOf(cells) ?? wholeLines(cells) ?? numbered(cells));
  const sheet = unquoted(quoted, plain);
  return box && sheet !== undefined ? { sheet, box } : undefined;
}

type Item = Pick<Excel.NamedItem, "name" | "type" | "value">;

/** A name that leads to cells of a sheet. */
export interface Named<T> {
  readonly item: T;
  readonly box: Box;
}

export const isWhole = ({ rows, cols }: Box): boolean => rows === LAST_ROW || cols === LAST_COLUMN;

/** About as many cells as a column of a whole sheet has: more are not read at once. */
export const MOST_CELLS = 1_000_000;

/**
 * Of whole rows and columns Excel returns no cells (Microsoft, "Read or write to an unbounded range"): such a name, and
 * one of too many cells, would end the reading of the others.
 */
const canBeRead = (box: Box): boolean => !isWhole(box) && box.rows * box.cols <= MOST_CELLS;

/** Kinds of names that lead to no cells, though the value of a text may look like an address. */
const NO_CELLS: ReadonlySet<unknown> = new Set<Excel.NamedItem["type"]>([
  "String",
  "Integer",
  "Double",
  "Boolean",
  "Array",
  "Error",
]);

/**
 * The place of a loaded name; undefined if it leads to no cells. While another window of Excel is in front, desktop
 * Excel gives no type (office-js issue 5504): the value then says whether these are cells.
 */
export const placeOfName = ({ type, value }: Pick<Excel.NamedItem, "type" | "value">): Place | undefined =>
  NO_CELLS.has(type) ? undefined : placeOf(value);

function placeOfItem(item: Item): Place | undefined {
  const place = placeOfName(item);
  return place && canBeRead(place.box) ? place : undefined;
}

/** The names of a sheet and of the workbook, loaded. */
export interface Names<T extends Item = Item> {
  readonly own: readonly T[];
  readonly shared: readonly T[];
}

const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/**
 * The names of a plan on a sheet: names of the sheet, then names of the workbook that lead to this sheet. Names that do
 * not exist, have lost their cells, or lead to whole rows or columns are left out.
 */
export function itemsOf<T extends Item>(
  sheet: string,
  { own, shared }: Names<T>,
  wanted: readonly string[],
): Map<string, Named<T>> {
  const byName = (items: readonly T[]): Map<string, Named<T>> =>
    new Map(
      items.flatMap((item) => {
        const place = placeOfItem(item);
        return place && same(place.sheet, sheet) ? [[item.name.toLowerCase(), { item, box: place.box }]] : [];
      }),
    );
  const [first, second] = [byName(own), byName(shared)];
  return new Map(
    wanted.flatMap((name) => {
      const called = localName(name).toLowerCase();
      const found = first.get(called) ?? second.get(called);
      return found ? [[name, found]] : [];
    }),
  );
}
