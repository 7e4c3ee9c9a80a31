/** How a sheet is printed, in an .xlsx file: a name of the sheet for its pages, paper and footer in the sheet's own part. */
import { helpers } from "@odoo/o-spreadsheet";
import type { PrintLayout } from "../print";
import type { Parts } from "./parts";
import { all, append, first } from "./xml";

export const PRINT_AREA = "_xlnm.Print_Area";

/** The numbers by which the file knows papers. */
const PAPERS = { A4: "9", Letter: "1" } as const;

/** Parts of a sheet that stand behind its page set-up. */
const BEHIND = ["drawing", "legacyDrawing", "tableParts"];

/** Puts a sheet's printing into the file's parts; `sheet` counts from 0. Its pages are named with the workbook's names. */
export function addPrint(parts: Parts, sheet: number, layout: PrintLayout | undefined): void {
  if (!layout) return;
  const path = `xl/worksheets/sheet${sheet}.xml`;
  const document = parts.document(path);
  const root = document.documentElement;
  for (const name of ["pageMargins", "pageSetup", "headerFooter", "sheetPr"])
    all(document, name).forEach((old) => old.remove());
  // Rows on paper are as high as Excel's own, or pages would run over; the engine's are higher.
  first(document, "sheetFormatPr")?.setAttribute("defaultRowHeight", "13.5");
  const properties = append(root, "sheetPr", {});
  append(properties, "pageSetUpPr", { fitToPage: "1" });
  root.prepend(properties);
  const made = [
    append(root, "pageMargins", { left: "0.4", right: "0.4", top: "0.5", bottom: "0.6", header: "0.2", footer: "0.3" }),
    append(root, "pageSetup", {
      paperSize: PAPERS[layout.paper],
      orientation: layout.landscape ? "landscape" : "portrait",
      fitToWidth: "1",
      fitToHeight: "0",
    }),
    append(root, "headerFooter", {}),
  ];
  append(made[2], "oddFooter", {}, layout.footer);
  const behind = [...root.children].find(({ localName }) => BEHIND.includes(localName));
  if (behind) for (const element of made) behind.before(element);
}

/** A sheet's printing, from its own part and the reference of its pages ("Sheet!$A$1:$P$45,Sheet!$A$46:$P$72"). */
export function readPrint(document: Document, area: string | undefined): PrintLayout | undefined {
  if (area === undefined) return undefined;
  const setup = first(document, "pageSetup");
  const pages = [...area.matchAll(/!\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)/g)].map(([, left, top, right, bottom]) =>
    helpers.toZone(`${left}${top}:${right}${bottom}`),
  );
  if (pages.length === 0) return undefined;
  return {
    pages,
    paper: setup?.getAttribute("paperSize") === PAPERS.Letter ? "Letter" : "A4",
    landscape: setup?.getAttribute("orientation") === "landscape",
    footer: first(document, "oddFooter")?.textContent ?? "",
  };
}
