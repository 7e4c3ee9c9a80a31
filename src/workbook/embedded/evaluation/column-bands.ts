/**
 * The data of a sheet in bands of columns, which the engine reads one after another: it compiles each formula that it reads, and the
 * thousand formulas of a data sheet would hold the page for 0.2 s.
 */
import { helpers } from "@odoo/o-spreadsheet";
import { nth } from "../../../reduction/numeric/lists";
import { addressOf } from "../zones";

/** What the engine's data says of the cells of a sheet: contents by address, numbers of styles and of formats by zone. */
export interface CellData {
  readonly cells: Readonly<Record<string, unknown>>;
  readonly styles: Readonly<Record<string, unknown>>;
  readonly formats: Readonly<Record<string, unknown>>;
}

/** The size of a band in values. */
const AT_ONCE = 1_000;

/** How long the engine takes for the content of a cell, in values: a formula takes as long as ten. */
export const sizeOf = (content: unknown): number => (String(content).startsWith("=") ? 10 : 1);

/** A cell by itself, and not one that the engine has packed with its like: these refer to the one before. */
const isAlone = ([address, content]: readonly [string, unknown]): boolean =>
  typeof content === "string" && !address.includes(":");

/** The last columns of bands of at most this size, where a column has no more. */
function lastColumns(sizes: ReadonlyMap<number, number>, most: number): number[] {
  const last: number[] = [];
  let sum = 0;
  let before = -1;
  for (const [col, size] of [...sizes].sort(([a], [b]) => a - b)) {
    if (sum > 0 && sum + size > most) {
      last.push(before);
      sum = 0;
    }
    sum += size;
    before = col;
  }
  return [...last, Infinity];
}

/** The entries of zones by bands, which end at `last`; a zone that reaches into several bands is cut at their edges. */
function parted(zones: CellData["styles"], last: readonly number[]): Record<string, unknown>[] {
  const bands = last.map((): Record<string, unknown> => ({}));
  for (const [address, of] of Object.entries(zones)) {
    const zone = helpers.toZone(address);
    let { left } = zone;
    for (let at = last.findIndex((to) => left <= to); left <= zone.right; at++) {
      const right = Math.min(zone.right, nth(last, at));
      const isWhole = left === zone.left && right === zone.right;
      nth(bands, at)[isWhole ? address : addressOf({ ...zone, left, right })] = of;
      left = right + 1;
    }
  }
  return bands;
}

/** The data of a sheet in bands of columns, from left to right; the whole where its cells are packed. */
export function columnBands<T extends CellData>(sheet: T, most = AT_ONCE): T[] {
  const contents = Object.entries(sheet.cells);
  if (!contents.every(isAlone)) return [sheet];
  const sizes = new Map<number, number>();
  for (const [address, content] of contents) {
    const { col } = helpers.toCartesian(address);
    sizes.set(col, (sizes.get(col) ?? 0) + sizeOf(content));
  }
  const last = lastColumns(sizes, most);
  if (last.length === 1) return [sheet];
  const cells = parted(sheet.cells, last);
  const styles = parted(sheet.styles, last);
  const formats = parted(sheet.formats, last);
  return last.map((_, at) => ({ ...sheet, cells: nth(cells, at), styles: nth(styles, at), formats: nth(formats, at) }));
}
