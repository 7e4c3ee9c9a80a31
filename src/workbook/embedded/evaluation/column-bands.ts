/**
 * The data of a sheet in bands of columns, which the engine reads one after another: it compiles each formula that it reads, and the
 * thousand formulas of a data sheet would hold the page for 0.2 s.
 */
import { helpers } from "@odoo/o-spreadsheet";
import { addressOf, type Zone } from "../zones";

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

/** The entries of the part of each zone that lies within these columns. */
const within = (zones: readonly (readonly [Zone, unknown])[], from: number, to: number): Record<string, unknown> =>
  Object.fromEntries(
    zones.flatMap(([zone, of]) => {
      const [left, right] = [Math.max(zone.left, from), Math.min(zone.right, to)];
      return left <= right ? [[addressOf({ ...zone, left, right }), of]] : [];
    }),
  );

/** The data of a sheet in bands of columns, from left to right; the whole where its cells are packed. */
export function columnBands<T extends CellData>(sheet: T, most = AT_ONCE): T[] {
  const contents = Object.entries(sheet.cells);
  if (!contents.every(isAlone)) return [sheet];
  const sizes = new Map<number, number>();
  const placed = contents.map(([address, content]) => {
    const { col } = helpers.toCartesian(address);
    sizes.set(col, (sizes.get(col) ?? 0) + sizeOf(content));
    return { col, entry: [address, content] as const };
  });
  const last = lastColumns(sizes, most);
  if (last.length === 1) return [sheet];
  const zonesOf = (by: CellData["styles"]) =>
    Object.entries(by).map(([address, of]) => [helpers.toZone(address), of] as const);
  const [styles, formats] = [zonesOf(sheet.styles), zonesOf(sheet.formats)];
  return last.map((to, at) => {
    const from = (last[at - 1] ?? -1) + 1;
    const cells = placed.flatMap(({ col, entry }) => (col >= from && col <= to ? [entry] : []));
    return {
      ...sheet,
      cells: Object.fromEntries(cells),
      styles: within(styles, from, to),
      formats: within(formats, from, to),
    };
  });
}
