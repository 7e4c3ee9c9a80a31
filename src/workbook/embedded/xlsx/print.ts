/**
 * The print layout of a sheet in an .xlsx file: a name of the sheet for its pages; paper and footer in the part of the
 * sheet.
 */
import { helpers } from "@odoo/o-spreadsheet";
import {
  breakAttributes,
  BREAKS,
  MARGINS,
  pagesOf,
  pointsAcross,
  printingOf,
  scaleOf,
  USUAL_WIDTH,
  type Breaks,
  type Size,
} from "../../look/pages";
import type { Box } from "../../port";
import type { PrintLayout } from "../look/print";
import { toBox, toZone } from "../zones";
import { heldText, plainText } from "../../file/escapes";
import { all, append, first } from "../../file/xml";

export const PRINT_AREA = "_xlnm.Print_Area";

/** The numbers of the papers in the file. */
const PAPERS = { A4: "9", Letter: "1" } as const;

/** Elements of a sheet that must come after its page set-up. */
const BEHIND = ["drawing", "legacyDrawing", "tableParts"];

/**
 * Height in points of a printed row if the sheet gives none: the engine's own rows are higher, and pages would
 * overflow.
 */
const ROW_HEIGHT = 13.5;

/** The size of the printed pages, from the columns of the sheet and the heights of its rows in points. */
function sizesOf(document: Document, heights: ReadonlyMap<number, number>, pages: readonly Box[]): Size[] {
  const widths = new Map<number, number>();
  for (const column of all(document, "col"))
    for (let col = Number(column.getAttribute("min")); col <= Number(column.getAttribute("max")); col++)
      widths.set(col - 1, column.getAttribute("hidden") === "1" ? 0 : Number(column.getAttribute("width")));
  const sum = (from: number, count: number, of: (index: number) => number): number => {
    let total = 0;
    for (let index = from; index < from + count; index++) total += of(index);
    return total;
  };
  return pages.map(({ row, col, rows, cols }) => ({
    width: sum(col, cols, (index) => pointsAcross(widths.get(index) ?? USUAL_WIDTH)),
    height: sum(row, rows, (index) => heights.get(index) ?? ROW_HEIGHT),
  }));
}

/** Adds the print settings of a sheet to its part. The printed pages are stored with the names of the workbook. */
export function addPrint(
  document: Document,
  layout: PrintLayout | undefined,
  heights: ReadonlyMap<number, number>,
): void {
  if (!layout) return;
  const root = document.documentElement;
  for (const name of ["pageMargins", "pageSetup", "headerFooter"]) all(document, name).forEach((old) => old.remove());
  first(document, "sheetFormatPr")?.setAttribute("defaultRowHeight", String(ROW_HEIGHT));
  const pages = layout.pages.map(toBox);
  const printing = printingOf(pages);
  const margins = Object.entries(MARGINS).map(([side, inches]): [string, string] => [side, String(inches)]);
  const made = [
    append(root, "pageMargins", Object.fromEntries(margins)),
    append(root, "pageSetup", {
      paperSize: PAPERS[layout.paper],
      scale: String(scaleOf(sizesOf(document, heights, pages), layout.paper, layout.landscape)),
      orientation: layout.landscape ? "landscape" : "portrait",
    }),
  ];
  const foot = append(root, "headerFooter");
  append(foot, "oddFooter", {}, heldText(layout.footer));
  made.push(foot);
  for (const kind of BREAKS) {
    if (printing[kind].length === 0) continue;
    const count = String(printing[kind].length);
    const list = append(root, kind, { count, manualBreakCount: count });
    for (const at of printing[kind]) append(list, "brk", breakAttributes(kind, at));
    made.push(list);
  }
  const behind = [...root.children].find(({ localName }) => BEHIND.includes(localName));
  if (behind) for (const element of made) behind.before(element);
}

/**
 * Reads the print layout of a sheet from its part and the reference of its print areas
 * ("Sheet!$A$1:$P$72,Sheet!$Q$46:$AF$72").
 */
export function readPrint(document: Document, area: string | undefined): PrintLayout | undefined {
  if (area === undefined) return undefined;
  const setup = first(document, "pageSetup");
  const areas = [...area.matchAll(/!\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)/g)].map(([, left, top, right, bottom]) =>
    toBox(helpers.toZone(`${left}${top}:${right}${bottom}`)),
  );
  if (areas.length === 0) return undefined;
  const breaks = (kind: Breaks): number[] => {
    const list = first(document, kind);
    return list ? all(list, "brk").map((one) => Number(one.getAttribute("id"))) : [];
  };
  return {
    pages: pagesOf({ areas, rowBreaks: breaks("rowBreaks"), colBreaks: breaks("colBreaks") }).map(toZone),
    paper: setup?.getAttribute("paperSize") === PAPERS.Letter ? "Letter" : "A4",
    landscape: setup?.getAttribute("orientation") === "landscape",
    footer: plainText(first(document, "oddFooter")?.textContent ?? ""),
  };
}
