/**
 * A layout as an .xlsx file. Formulas are in the form in which Excel stores those of an add-in, so that they bind where the
 * add-in is; names belong to the sheet; the same layout always gives the same bytes.
 */
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";
import type { Box, CellKind, CellPlan, CellValue, SheetPlan } from "../workbook/port";
import { boxAddress, cellAddress } from "./address";
import type { Layout } from "./sheet";

/** Nothing in the file tells when it was made. */
const FIXED_DATE = new Date(Date.UTC(2000, 0, 1));

const INK = { argb: "FF1F2328" };
const PALE_INK = { argb: "FF4A4F55" };
const font = (more: Partial<ExcelJS.Font> = {}): Partial<ExcelJS.Font> => ({
  name: "Arial",
  size: 9,
  color: INK,
  ...more,
});
const fill = (argb: string): ExcelJS.Fill => ({ type: "pattern", pattern: "solid", fgColor: { argb } });
const thin = { style: "thin", color: PALE_INK } as const;

/** Each kind is told apart by weight, slant and rule, so that black and white suffices. */
const STYLES: Readonly<Record<CellKind, Partial<ExcelJS.Style>>> = {
  title: { font: font({ bold: true, size: 14 }) },
  heading: { font: font({ bold: true }), fill: fill("FFE9E6DF"), border: { bottom: { style: "thin", color: INK } } },
  label: { font: font() },
  unit: { font: font({ italic: true, color: PALE_INK }) },
  input: {
    font: font(),
    fill: fill("FFFFF8E1"),
    border: { top: thin, left: thin, bottom: thin, right: thin },
    protection: { locked: false },
  },
  result: { font: font({ bold: true }) },
  remark: { font: font({ italic: true }) },
  note: { font: font({ italic: true, size: 8, color: PALE_INK }) },
};

/** "=CLAY.STRAIN({deformation})" as Excel keeps it in a file: no "=", bare names, the add-in's functions with their prefix. */
export const storedFormula = (formula: string): string =>
  formula
    .replace(/^=/, "")
    .replace(/\{(\w+)\}/g, "$1")
    .replace(/\bCLAY\.(\w+)/g, "_xldudf_CLAY_$1");

/** What a formula shows on opening, before anything is calculated: units and headings that repeat another cell, else blank. */
function shownAtFirst(plan: SheetPlan): (cell: CellPlan) => CellValue {
  const at = new Map(plan.cells.map((cell) => [cellAddress(cell.row, cell.col), cell]));
  return function shown({ value, formula }): CellValue {
    const [, name, address, tail] = /^=(?:\{(\w+)\}|([A-Z]+\d+))(?:&"(.*)")?$/.exec(formula ?? "") ?? [];
    const target = name ? cellAddress(plan.names[name].row, plan.names[name].col) : address;
    const source = target ? at.get(target) : undefined;
    if (!source) return formula ? "" : (value ?? "");
    return tail === undefined ? shown(source) : `${shown(source)}${tail}`;
  };
}

function writeCells(sheet: ExcelJS.Worksheet, plan: SheetPlan): void {
  const shown = shownAtFirst(plan);
  for (const plannedCell of plan.cells) {
    const { row, col, kind, value, formula, format, note, choices } = plannedCell;
    const address = cellAddress(row, col);
    const cell = sheet.getCell(address);
    cell.style = { ...STYLES[kind], ...(format ? { numFmt: format } : {}) };
    if (formula) {
      const stored = { formula: storedFormula(formula), result: shown(plannedCell) };
      // The typings know formulas that are shared, but not the array form that exceljs writes from the same shape.
      cell.value = (isDynamic(formula) ? { ...stored, shareType: "array", ref: address } : stored) as ExcelJS.CellValue;
    } else if (value !== undefined) cell.value = value;
    if (note) cell.note = note;
    if (choices)
      cell.dataValidation = {
        type: "list",
        allowBlank: true,
        formulae: [`"${choices.join(",")}"`],
        showErrorMessage: true,
        errorTitle: "Not in the list",
        error: `Choose one of: ${choices.join(", ")}.`.slice(0, 225),
      };
  }
  for (const { row, col, rows, cols } of plan.merges) sheet.mergeCells(row + 1, col + 1, row + rows, col + cols);
}

/** Formulas that may give an array: without the mark, Excel would cut them down to one value with "@". */
const isDynamic = (formula: string): boolean => /CLAY\.|INDEX\(/.test(formula);

function printSetUp(sheet: ExcelJS.Worksheet, plan: SheetPlan): void {
  sheet.pageSetup = {
    paperSize: 9,
    orientation: "landscape",
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 0,
    margins: { left: 0.4, right: 0.4, top: 0.5, bottom: 0.6, header: 0.2, footer: 0.3 },
  };
  sheet.headerFooter = { oddFooter: "&L&8&F  |  &A&C&8Page &P of &N&R&8Printed &D &T" };
  sheet.views = [{ state: "frozen", ySplit: plan.freezeRows, showGridLines: false }];
}

const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

/** Edits one part of the package; a change that finds nothing to change is a fault. */
function edit(parts: Record<string, Uint8Array>, path: string, pattern: RegExp | string, by: string): void {
  const before = strFromU8(parts[path]);
  const after = before.replace(pattern, by);
  if (after === before) throw new Error(`${path} does not hold ${pattern}`);
  parts[path] = strToU8(after);
}

/** What exceljs cannot write: names that belong to the sheet, several printed pages, and the mark of dynamic arrays. */
function complete(parts: Record<string, Uint8Array>, { plan, pages }: Layout): void {
  const sheet = `'${plan.name.replaceAll("'", "''")}'`;
  const reference = (box: Box) => `${sheet}!${boxAddress(box)}`;
  const printed: [string, string] = ["_xlnm.Print_Area", pages.map(reference).join(",")];
  const local = Object.entries(plan.names).map(([name, box]): [string, string] => [name, reference(box)]);
  const names = [printed, ...local]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, target]) => `<definedName name="${name}" localSheetId="0">${target}</definedName>`);
  edit(parts, "xl/workbook.xml", "</sheets>", `</sheets><definedNames>${names.join("")}</definedNames>`);
  edit(parts, "xl/worksheets/sheet1.xml", /(<c r="[A-Z]+\d+"[^>]*?)(><f t="array")/g, '$1 cm="1"$2');
  parts["xl/metadata.xml"] = strToU8(METADATA);
  edit(
    parts,
    "xl/_rels/workbook.xml.rels",
    "</Relationships>",
    '<Relationship Id="rIdMetadata" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/></Relationships>',
  );
  edit(
    parts,
    "[Content_Types].xml",
    "</Types>",
    '<Override PartName="/xl/metadata.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"/></Types>',
  );
}

/** The file's bytes. */
export async function toXlsx(layout: Layout): Promise<Uint8Array> {
  const { plan } = layout;
  const workbook = new ExcelJS.Workbook();
  workbook.creator = "Clayledger";
  workbook.created = FIXED_DATE;
  workbook.modified = FIXED_DATE;
  const sheet = workbook.addWorksheet(plan.name);
  for (let col = 0; col < plan.cols; col++) {
    const column = sheet.getColumn(col + 1);
    column.width = plan.columnWidths[col] ?? 9;
    column.font = font() as ExcelJS.Font;
  }
  writeCells(sheet, plan);
  printSetUp(sheet, plan);
  const parts = unzipSync(new Uint8Array(await workbook.xlsx.writeBuffer()));
  complete(parts, layout);
  const ordered = Object.entries(parts).sort(([a], [b]) => (a < b ? -1 : 1));
  const dated: Zippable = Object.fromEntries(
    ordered.map(([path, bytes]) => [path, [bytes, { mtime: new Date(2000, 0, 1) }]]),
  );
  return zipSync(dated, { level: 9 });
}
