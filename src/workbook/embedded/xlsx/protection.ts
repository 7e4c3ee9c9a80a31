/**
 * Protection without a password in an .xlsx file: the mark of the sheet, and for each style whether its cells are open.
 */
import { helpers } from "@odoo/o-spreadsheet";
import { neighbours, nth } from "../../../reduction/numeric/lists";
import type { Protection } from "../protection";
import { joinedZones, type Zone } from "../zones";
import { LAST_COLUMN } from "../../rules/names";
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

/** The protection of a sheet; cells that are not in the file are open where their row is. */
export function readProtection(document: Document, rows: readonly LightElement[], open: OpenStyles): Protection {
  const mark = first(document, "sheetProtection");
  const isOpen = (element: LightElement): boolean => open.has(Number(element.getAttribute("s") ?? 0));
  const zones: Zone[] = [];
  for (const row of rows) {
    const cells = row.children.filter(({ localName }) => localName === "c");
    const top = Number(row.getAttribute("r")) - 1;
    const columns = cells.map((cell) => helpers.toCartesian(cell.getAttribute("r")!).col);
    if (isOpen(row)) for (const gap of gapsBetween(columns)) zones.push({ ...gap, top, bottom: top });
    columns.forEach((col, index) => {
      if (isOpen(nth(cells, index))) zones.push({ left: col, right: col, top, bottom: top });
    });
  }
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
