/**
 * Protection without a password in an .xlsx file: the mark of the sheet, and for each style whether its cells are open.
 */
import { helpers } from "@odoo/o-spreadsheet";
import type { Protection } from "../protection";
import type { Zone } from "../zones";
import type { Parts } from "./parts";
import { all, append, first } from "./xml";

/** Whether the cells of a style, by its number, are open. */
export type OpenStyles = ReadonlySet<number>;

export function openStyles(styles: Document | undefined): OpenStyles {
  if (styles === undefined) return new Set();
  const list = first(styles, "cellXfs");
  const numbers = list ? all(list, "xf").map((xf, index) => (isUnlocked(xf) ? index : -1)) : [];
  return new Set(numbers.filter((index) => index >= 0));
}

const isUnlocked = (xf: Element): boolean => /^(0|false)$/.test(first(xf, "protection")?.getAttribute("locked") ?? "1");

/** Neighbouring zones in a column, or whole rows, joined to one zone. */
function joined(zones: readonly Zone[]): Zone[] {
  const found: Zone[] = [];
  for (const zone of [...zones].sort((a, b) => a.left - b.left || a.right - b.right || a.top - b.top)) {
    const last = found.at(-1);
    if (last && last.left === zone.left && last.right === zone.right && last.bottom === zone.top - 1)
      found.splice(-1, 1, { ...last, bottom: zone.bottom });
    else found.push(zone);
  }
  return found;
}

const LAST_COLUMN = 16_383;

/** The protection of a sheet; open rows without cells are as wide as a sheet can be. */
export function readProtection(document: Document, open: OpenStyles): Protection {
  const mark = first(document, "sheetProtection");
  const isOpen = (element: Element): boolean => open.has(Number(element.getAttribute("s") ?? 0));
  const zones: Zone[] = [];
  for (const row of all(document, "row")) {
    const cells = all(row, "c");
    const top = Number(row.getAttribute("r")) - 1;
    if (cells.length === 0 && isOpen(row)) zones.push({ left: 0, right: LAST_COLUMN, top, bottom: top });
    for (const cell of cells) {
      if (!isOpen(cell)) continue;
      const { col } = helpers.toCartesian(cell.getAttribute("r")!);
      zones.push({ left: col, right: col, top, bottom: top });
    }
  }
  return { on: mark !== undefined && !/^(0|false)$/.test(mark.getAttribute("sheet") ?? "0"), open: joined(zones) };
}

/** Adds the protection of a sheet to the parts of the file. `sheet` counts from 0. */
export function addProtection(parts: Parts, sheet: number, { on, open }: Protection): void {
  const path = `xl/worksheets/sheet${sheet}.xml`;
  const document = parts.document(path);
  all(document, "sheetProtection").forEach((mark) => mark.remove());
  const data = first(document, "sheetData")!;
  if (on) {
    const mark = append(document.documentElement, "sheetProtection", { sheet: "1", ...ALLOWED });
    data.after(mark);
  }
  if (open.length > 0) openCells(parts, data, open);
}

/** In the file, 0 means that an action is allowed. */
const ALLOWED = { formatCells: "0", formatColumns: "0", formatRows: "0", insertRows: "0", deleteRows: "0" };

function openCells(parts: Parts, data: Element, open: readonly Zone[]): void {
  const styles = parts.document("xl/styles.xml");
  const list = first(styles, "cellXfs")!;
  const known = new Map<number, number>();
  /** The number of a style that is equal except that its cells are open. */
  const opened = (style: number): string => {
    let number = known.get(style);
    if (number === undefined) {
      const xfs = all(list, "xf");
      number = xfs.length;
      const xf = append(list, "xf", {});
      for (const { name, value } of [...xfs[style].attributes]) xf.setAttribute(name, value);
      for (const child of [...xfs[style].children]) xf.append(child.cloneNode(true));
      xf.setAttribute("applyProtection", "1");
      append(xf, "protection", { locked: "0" });
      list.setAttribute("count", String(number + 1));
      known.set(style, number);
    }
    return String(number);
  };
  const rows = new Map(all(data, "row").map((row) => [Number(row.getAttribute("r")) - 1, row]));
  for (const [top, row] of rows)
    for (const cell of all(row, "c")) {
      const { col } = helpers.toCartesian(cell.getAttribute("r")!);
      if (open.some((zone) => top >= zone.top && top <= zone.bottom && col >= zone.left && col <= zone.right))
        cell.setAttribute("s", opened(Number(cell.getAttribute("s") ?? 0)));
    }
  const last = Math.max(-1, ...rows.keys());
  // Blank rows are open as a whole; the engine does not write those below the last cell.
  for (const zone of open.filter(({ left, right }) => right - left >= WIDE))
    for (let top = zone.top; top <= zone.bottom; top++) {
      const present = rows.get(top);
      if (present && all(present, "c").length > 0) continue;
      const row = present ?? (top > last ? append(data, "row", { r: String(top + 1) }) : undefined);
      row?.setAttribute("s", opened(0));
      row?.setAttribute("customFormat", "1");
    }
}

/** Open zones of at least this width mean whole rows. */
const WIDE = 40;
