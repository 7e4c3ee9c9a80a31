/**
 * Protection without a password in an .xlsx file: the mark of the sheet, and for each style whether its cells are open.
 */
import { helpers } from "@odoo/o-spreadsheet";
import { neighbours, nth } from "../../../reduction/numeric/lists";
import type { Protection } from "../protection";
import { joinedZones, type Zone } from "../zones";
import { LAST_COLUMN, LAST_ROW } from "../../rules/names";
import type { LightElement } from "../../file/light-xml";
import { all, append, first } from "../../file/xml";

/** Whether the cells of a style, by its number, are open. */
export type OpenStyles = ReadonlySet<number>;

export function openStyles(styles: Document | undefined): OpenStyles {
  if (styles === undefined) return new Set();
  const list = first(styles, "cellXfs");
  const numbers = list ? all(list, "xf").map((xf, index) => (isUnlocked(xf) ? index : -1)) : [];
  return new Set(numbers.filter((index) => index >= 0));
}

const isUnlocked = (xf: Element): boolean => /^(0|false)$/.test(first(xf, "protection")?.getAttribute("locked") ?? "1");

/** The columns of a row that have no cell in the file, from one cell to the next; the last are as wide as a sheet can be. */
function gapsBetween(taken: readonly number[]): { left: number; right: number }[] {
  const ends = [-1, ...[...taken].sort((a, b) => a - b), LAST_COLUMN];
  return neighbours(ends)
    .map(([before, next]) => ({ left: before + 1, right: next - 1 }))
    .filter(({ left, right }) => left <= right);
}

/** Neighbouring columns. */
type Columns = Pick<Zone, "left" | "right">;
const ALL_COLUMNS: Columns = { left: 0, right: LAST_COLUMN - 1 };

/** The columns that are open as a whole: a cell of them is open unless it, or its row, has a style of its own. */
function openColumns(document: Document, isOpen: (style: string | null) => boolean): Columns[] {
  const found: Columns[] = [];
  const add = (left: number, right: number, style: string | null): void => {
    if (left > right || !isOpen(style)) return;
    const last = found.at(-1);
    if (last?.right === left - 1) found.splice(-1, 1, { ...last, right });
    else found.push({ left, right });
  };
  const given = all(document, "col")
    .map(
      (one) =>
        [Number(one.getAttribute("min")) - 1, Number(one.getAttribute("max")) - 1, one.getAttribute("style")] as const,
    )
    .sort(([a], [b]) => a - b);
  let next = 0;
  for (const [left, right, style] of given) {
    add(next, left - 1, null);
    add(left, right, style);
    next = right + 1;
  }
  add(next, ALL_COLUMNS.right, null);
  return found;
}

/** The protection of a sheet; cells that are not in the file are open where their row is or, if it has no style, their column. */
export function readProtection(document: Document, rows: readonly LightElement[], open: OpenStyles): Protection {
  const mark = first(document, "sheetProtection");
  const isOpen = (style: string | null): boolean => open.has(Number(style ?? 0));
  const columns = openColumns(document, isOpen);
  const zones: Zone[] = [];
  const add = (gap: Columns, within: readonly Columns[], top: number, bottom: number): void => {
    for (const one of within) {
      const [left, right] = [Math.max(gap.left, one.left), Math.min(gap.right, one.right)];
      if (left <= right) zones.push({ left, right, top, bottom });
    }
  };
  for (const row of rows) {
    const cells = row.children.filter(({ localName }) => localName === "c");
    const top = Number(row.getAttribute("r")) - 1;
    const places = cells.map((cell) => helpers.toCartesian(cell.getAttribute("r")!).col);
    const style = row.getAttribute("s");
    const within = style === null ? columns : isOpen(style) ? [ALL_COLUMNS] : [];
    if (within.length > 0) for (const gap of gapsBetween(places)) add(gap, within, top, top);
    places.forEach((col, index) => {
      if (isOpen(nth(cells, index).getAttribute("s"))) zones.push({ left: col, right: col, top, bottom: top });
    });
  }
  const given = rows.map((row) => Number(row.getAttribute("r")) - 1).sort((a, b) => a - b);
  for (const [before, next] of columns.length > 0 ? neighbours([-1, ...given, LAST_ROW]) : [])
    if (before + 1 < next) add(ALL_COLUMNS, columns, before + 1, next - 1);
  return { on: mark !== undefined && !/^(0|false)$/.test(mark.getAttribute("sheet") ?? "0"), open: joinedZones(zones) };
}

/** Adds the protection of a sheet to its part. */
export function addProtection(document: Document, { on }: Protection): void {
  all(document, "sheetProtection").forEach((mark) => mark.remove());
  if (on) first(document, "sheetData")!.after(append(document.documentElement, "sheetProtection", { sheet: "1", ...ALLOWED })); // prettier-ignore
}

/** In the file, 0 means that an action is allowed. */
const ALLOWED = { formatCells: "0", formatColumns: "0", formatRows: "0", insertRows: "0", deleteRows: "0" };

/**
 * Returns a function that finds, for a style of the file, the number of the same style unlocked. The first call for a
 * style adds the unlocked style to the file.
 */
export function openedStyles(styles: Document): (style: number) => number {
  const list = first(styles, "cellXfs")!;
  const known = new Map<number, number>();
  const xfs = [...list.children];
  return (style) => {
    let number = known.get(style);
    if (number === undefined) {
      number = list.children.length;
      const xf = append(list, "xf", {});
      for (const { name, value } of xfs[style]?.attributes ?? []) xf.setAttribute(name, value);
      for (const child of xfs[style]?.children ?? []) xf.append(child.cloneNode(true));
      xf.setAttribute("applyProtection", "1");
      append(xf, "protection", { locked: "0" });
      list.setAttribute("count", String(number + 1));
      known.set(style, number);
    }
    return number;
  };
}
