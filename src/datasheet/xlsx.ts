/**
 * A sheet plan as an .xlsx file. Formulas are in the form in which Excel stores those of an add-in, so that they bind where the
 * add-in is; names belong to the sheet; the same plan always gives the same bytes.
 */
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";
import { boundsOf, CHOICE_TITLE, choiceMessage, titleOf } from "../workbook/bounds";
import { fromLooks, type Look } from "../workbook/look";
import type { Box, CellPlan, CellValue, EntryRule, SheetPlan } from "../workbook/port";
import { boxAddress, cellAddress } from "./address";

/** Nothing in the file tells when it was made. */
const FIXED_DATE = new Date(Date.UTC(2000, 0, 1));

const color = (hex: string) => ({ argb: `FF${hex.slice(1)}` });
const font = ({ bold, italic, size = SIZE, ink }: Look): Partial<ExcelJS.Font> => ({
  name: "Arial",
  size,
  color: color(ink),
  ...(bold && { bold }),
  ...(italic && { italic }),
});
const SIZE = 9;
/** Points; not every reader makes a row as high as its text. */
const TITLE_HEIGHT = 20;

function border({ rule }: Look): Partial<ExcelJS.Borders> | undefined {
  if (!rule) return undefined;
  const line = { style: "thin", color: color(rule.ink) } as const;
  return rule.at === "below" ? { bottom: line } : { top: line, left: line, bottom: line, right: line };
}

const STYLES = fromLooks((look, kind): Partial<ExcelJS.Style> => ({
  font: font(look),
  ...(look.fill && { fill: { type: "pattern", pattern: "solid", fgColor: color(look.fill) } }),
  ...(look.rule && { border: border(look) }),
  ...(kind === "input" && { protection: { locked: false } }),
}));

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
  // Excel lets no array stand in merged cells: what stands there gives one value.
  const merged = new Set(plan.merges.map(({ row, col }) => cellAddress(row, col)));
  for (const plannedCell of plan.cells) {
    const { row, col, kind, value, formula, format, note, choices, align, wrap } = plannedCell;
    const address = cellAddress(row, col);
    const cell = sheet.getCell(address);
    cell.style = {
      ...STYLES[kind],
      ...(format ? { numFmt: format } : {}),
      ...(align || wrap ? { alignment: { horizontal: align, ...(wrap && { wrapText: true, vertical: "top" }) } } : {}),
    };
    if (formula) {
      const stored = { formula: storedFormula(formula), result: shown(plannedCell) };
      // The typings know formulas that are shared, but not the array form that exceljs writes from the same shape.
      cell.value = (
        isDynamic(formula) && !merged.has(address) ? { ...stored, shareType: "array", ref: address } : stored
      ) as ExcelJS.CellValue;
    } else if (value !== undefined) cell.value = value;
    if (note) cell.note = note;
    if (choices)
      cell.dataValidation = {
        type: "list",
        allowBlank: true,
        formulae: [`"${choices.join(",")}"`],
        showErrorMessage: true,
        errorTitle: CHOICE_TITLE,
        error: choiceMessage(choices),
      };
  }
  for (const { row, kind } of plan.cells) if (kind === "title") sheet.getRow(row + 1).height = TITLE_HEIGHT;
  for (const [row, points] of Object.entries(plan.rowHeights ?? {})) sheet.getRow(Number(row) + 1).height = points;
  for (const { row, col, rows, cols } of plan.merges) sheet.mergeCells(row + 1, col + 1, row + rows, col + cols);
}

/** Formulas that may give an array: without the mark, Excel would cut them down to one value with "@". */
const isDynamic = (formula: string): boolean => /CLAY\.|INDEX\(/.test(formula);

/** The numbers by which the file knows papers. */
const A4 = 9;
const LETTER = 1 as ExcelJS.PaperSize;

function validationOf(entry: EntryRule): object {
  const { operator, values } = boundsOf(entry);
  return {
    type: entry.kind === "date" ? "date" : "decimal",
    operator,
    formulae: values,
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "stop",
    errorTitle: titleOf(entry),
    error: entry.message,
  };
}

function limitEntries(sheet: ExcelJS.Worksheet, { entries = [] }: SheetPlan): void {
  // The typings know validation by cell only.
  const { dataValidations } = sheet as unknown as { dataValidations: { add(address: string, rule: object): void } };
  for (const entry of entries) dataValidations.add(boxAddress(entry.box).replaceAll("$", ""), validationOf(entry));
}

async function protect(sheet: ExcelJS.Worksheet, { open = [], isProtected }: SheetPlan): Promise<void> {
  // The first cell of each open box tells `openRows` which style an open cell has.
  for (const { row, col } of open)
    sheet.getCell(cellAddress(row, col)).style = { font: STYLES.label.font, protection: { locked: false } };
  if (isProtected)
    await sheet.protect("", {
      selectLockedCells: true,
      selectUnlockedCells: true,
      formatCells: true,
      formatColumns: true,
      formatRows: true,
      insertRows: true,
      deleteRows: true,
      objects: true,
      scenarios: true,
    });
}

/** Open boxes are whole rows below everything else: the rows are unlocked, not thousands of cells. exceljs writes no empty row. */
function openRows(parts: Record<string, Uint8Array>, { open = [] }: SheetPlan): void {
  for (const { row, col, rows } of open) {
    const pattern = new RegExp(`<row r="${row + 1}"[^>]*>(<c r="${cellAddress(row, col)}" s="(\\d+)"/>)</row>`);
    const found = pattern.exec(strFromU8(parts[SHEET]));
    if (!found) throw new Error(`no open cell at ${cellAddress(row, col)}`);
    const empty = (index: number) => `<row r="${index + 1}" s="${found[2]}" customFormat="1"/>`;
    edit(parts, SHEET, found[0], Array.from({ length: rows }, (_, index) => empty(row + index)).join(""));
  }
}

const SHEET = "xl/worksheets/sheet1.xml";

function printSetUp(sheet: ExcelJS.Worksheet, plan: SheetPlan): void {
  sheet.pageSetup = {
    paperSize: plan.paper === "Letter" ? LETTER : A4,
    orientation: "landscape",
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 0,
    margins: { left: 0.4, right: 0.4, top: 0.5, bottom: 0.6, header: 0.2, footer: 0.3 },
  };
  const made = plan.footer === undefined ? "" : `${plan.footer}  |  `;
  sheet.headerFooter = { oddFooter: `&L&8&F  |  &A&C&8Page &P of &N&R&8${made}Printed &D &T` };
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

const wholeOf = ({ rows, cols }: SheetPlan): Box => ({ row: 0, col: 0, rows, cols });

/** What exceljs cannot write: names that belong to the sheet, several printed pages, and the mark of dynamic arrays. */
function complete(parts: Record<string, Uint8Array>, plan: SheetPlan): void {
  const sheet = `'${plan.name.replaceAll("'", "''")}'`;
  const reference = (box: Box) => `${sheet}!${boxAddress(box)}`;
  const printed: [string, string] = ["_xlnm.Print_Area", (plan.pages ?? [wholeOf(plan)]).map(reference).join(",")];
  const local = Object.entries(plan.names).map(([name, box]): [string, string] => [name, reference(box)]);
  const names = [printed, ...local]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, target]) => `<definedName name="${name}" localSheetId="0">${target}</definedName>`);
  edit(parts, "xl/workbook.xml", "</sheets>", `</sheets><definedNames>${names.join("")}</definedNames>`);
  edit(parts, SHEET, /(<c r="[A-Z]+\d+"[^>]*?)(><f t="array")/g, '$1 cm="1"$2');
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
export async function toXlsx(plan: SheetPlan): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  workbook.creator = "Clayledger";
  workbook.created = FIXED_DATE;
  workbook.modified = FIXED_DATE;
  const sheet = workbook.addWorksheet(plan.name);
  for (let col = 0; col < plan.cols; col++) {
    const column = sheet.getColumn(col + 1);
    column.width = plan.columnWidths[col] ?? 9;
    column.font = STYLES.label.font as ExcelJS.Font;
  }
  writeCells(sheet, plan);
  limitEntries(sheet, plan);
  printSetUp(sheet, plan);
  await protect(sheet, plan);
  const parts = unzipSync(new Uint8Array(await workbook.xlsx.writeBuffer()));
  complete(parts, plan);
  openRows(parts, plan);
  const ordered = Object.entries(parts).sort(([a], [b]) => (a < b ? -1 : 1));
  const dated: Zippable = Object.fromEntries(
    ordered.map(([path, bytes]) => [path, [bytes, { mtime: new Date(2000, 0, 1) }]]),
  );
  return zipSync(dated, { level: 9 });
}
