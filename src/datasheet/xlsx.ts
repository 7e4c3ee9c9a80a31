/**
 * Writes a sheet plan as an .xlsx file. Formulas are stored in the form in which Excel stores formulas of an add-in, so
 * that they work wherever the add-in is installed. Names belong to the sheet. The same plan always gives the same
 * bytes.
 */
import { dateOfDay } from "../workbook/day-number";
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";
import { boundsOf, refusalOf, refusalOfChoice } from "../workbook/rules/bounds";
import { footerText } from "../workbook/look/footer";
import { fromLooks, type Look } from "../workbook/look/look";
import {
  breakAttributes,
  BREAKS,
  MARGINS,
  pointsAcross,
  printingOf,
  scaleOf,
  USUAL_WIDTH,
  type Printing,
} from "../workbook/look/pages";
import type { Box, CellPlan, CellValue, EntryRule, SheetPlan } from "../workbook/port";
import { boxAddress, cellAddress, quoted } from "../workbook/address";

/** A fixed date, so that the bytes of the file do not depend on the day on which it is made. */
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
/** The height in points; not every program adapts the height of a row to its text. */
const TITLE_HEIGHT = 20;
const ROW_HEIGHT = 12.75;
/** The width in characters. */
const COLUMN_WIDTH = 9;

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

/**
 * Converts "=CLAY.STRAIN({deformation})" to the form that Excel stores in a file: no "=", no braces around names, and a
 * prefix before the functions of the add-in.
 */
export const storedFormula = (formula: string): string =>
  formula
    .replace(/^=/, "")
    .replace(/\{(\w+)\}/g, "$1")
    .replace(/\bCLAY\.(\w+)/g, "_xldudf_CLAY_$1");

/**
 * The value that a formula cell shows when the file is opened, before Excel calculates: the repeated unit or heading,
 * otherwise blank.
 */
function shownAtFirst(plan: SheetPlan): (cell: CellPlan) => CellValue {
  const at = new Map(plan.cells.map((cell) => [cellAddress(cell.row, cell.col), cell]));
  return function shown({ value, formula }): CellValue {
    const [, name, address, tail] = /^=(?:\{(\w+)\}|([A-Z]+\d+))(?:&"(.*)")?$/.exec(formula ?? "") ?? [];
    const box = name ? plan.names[name] : undefined;
    if (name && !box) throw new Error(`the sheet has no name "${name}"`);
    const target = box ? cellAddress(box.row, box.col) : address;
    const source = target ? at.get(target) : undefined;
    if (!source) return formula ? "" : (value ?? "");
    return tail === undefined ? shown(source) : `${shown(source)}${tail}`;
  };
}

function writeCells(sheet: ExcelJS.Worksheet, plan: SheetPlan): void {
  const shown = shownAtFirst(plan);
  // Excel allows no array in merged cells; the formulas there return one value.
  const merged = new Set(plan.merges.map(({ row, col }) => cellAddress(row, col)));
  for (const plannedCell of plan.cells) {
    const { row, col, kind, value, formula, format, note, align, wrap } = plannedCell;
    const address = cellAddress(row, col);
    const cell = sheet.getCell(address);
    cell.style = {
      ...STYLES[kind],
      ...(format ? { numFmt: format } : {}),
      ...(align || wrap ? { alignment: { horizontal: align, ...(wrap && { wrapText: true, vertical: "top" }) } } : {}),
    };
    if (formula) {
      const stored = { formula: storedFormula(formula), result: shown(plannedCell) };
      // The type definitions include shared formulas, but not the array form, which exceljs writes from an object of
      // the same shape.
      cell.value = (
        isDynamic(formula) && !merged.has(address) ? { ...stored, shareType: "array", ref: address } : stored
      ) as ExcelJS.CellValue;
    } else if (value !== undefined && value !== "") cell.value = value;
    if (note) cell.note = note;
  }
  for (const { row, kind } of plan.cells) if (kind === "title") sheet.getRow(row + 1).height = TITLE_HEIGHT;
  for (const [row, points] of Object.entries(plan.rowHeights ?? {})) sheet.getRow(Number(row) + 1).height = points;
  for (const { row, col, rows, cols } of plan.merges) sheet.mergeCells(row + 1, col + 1, row + rows, col + cols);
}

/**
 * Formulas that may return an array. Without the mark of a dynamic array, Excel would reduce them to one value with
 * "@".
 */
const isDynamic = (formula: string): boolean => /CLAY\.|INDEX\(/.test(formula);

/** The numbers of the paper sizes in the file. */
const A4 = 9;
// The types of exceljs lack the number of Letter.
const LETTER = 1 as ExcelJS.PaperSize;

function validationOf(entry: EntryRule, words: SheetPlan["hostWords"]): object {
  const { title, message } = refusalOf(entry, words);
  const { operator, values } = boundsOf(entry);
  const isDate = entry.kind === "date";
  return {
    type: isDate ? "date" : "decimal",
    operator,
    formulae: isDate ? values.map(dateOfDay) : values,
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "stop",
    errorTitle: title,
    error: message,
  };
}

const choiceOf = (choices: readonly string[], words: SheetPlan["hostWords"]): object => {
  const { title, message } = refusalOfChoice(choices, words);
  return {
    type: "list",
    allowBlank: true,
    formulae: [`"${choices.join(",")}"`],
    showErrorMessage: true,
    errorTitle: title,
    error: message,
  };
};

/**
 * Finds runs of cells in a column that have the same choices. exceljs would join such cells itself, but it sorts C100
 * above C94 and therefore writes two rules for the same cells, which Excel repairs.
 */
function choiceRuns({ cells }: SheetPlan): { box: Box; choices: readonly string[] }[] {
  const runs: { box: Box; choices: readonly string[] }[] = [];
  for (const { row, col, choices } of [...cells].sort((a, b) => a.col - b.col || a.row - b.row)) {
    if (!choices) continue;
    const last = runs.at(-1);
    const isNext = last && last.box.col === col && last.box.row + last.box.rows === row;
    if (isNext && last.choices.join() === choices.join()) last.box = { ...last.box, rows: last.box.rows + 1 };
    else runs.push({ box: { row, col, rows: 1, cols: 1 }, choices });
  }
  return runs;
}

function limitEntries(sheet: ExcelJS.Worksheet, plan: SheetPlan): void {
  // The type definitions allow a validation for a single cell only.
  const { dataValidations } = sheet as unknown as { dataValidations: { add(address: string, rule: object): void } };
  const add = (box: Box, rule: object) => dataValidations.add(boxAddress(box).replaceAll("$", ""), rule);
  for (const { box, choices } of choiceRuns(plan)) add(box, choiceOf(choices, plan.hostWords));
  for (const entry of plan.entries ?? []) add(entry.box, validationOf(entry, plan.hostWords));
}

async function protect(sheet: ExcelJS.Worksheet, { open = [], isProtected }: SheetPlan): Promise<void> {
  // The first cell of each open box shows `openRows` the style of an unlocked cell.
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

/**
 * Unlocks the open boxes as whole rows instead of thousands of cells. Cells beside a box keep their own style. exceljs
 * does not write empty rows, so this function edits the XML.
 */
function openRows(parts: Record<string, Uint8Array>, { open = [] }: SheetPlan): void {
  for (const { row, col, rows } of open) {
    const before = textOf(parts, SHEET);
    const style = new RegExp(`<c r="${cellAddress(row, col)}" s="(\\d+)"/>`).exec(before)?.[1];
    if (style === undefined) throw new Error(`no open cell at ${cellAddress(row, col)}`);
    const written = new Map(
      [...before.matchAll(/<row r="(\d+)"([^>]*?)(\/>|>.*?<\/row>)/gs)].map(
        ([whole, number, attributes = "", rest = "/>"]) => [
          Number(number),
          { whole, attributes: attributes.replace(/ (s|customFormat)="[^"]*"/g, ""), rest },
        ],
      ),
    );
    for (let number = row + 1; number <= row + rows; number++) {
      const { attributes = "", rest = "/>" } = written.get(number) ?? {};
      const whole = `<row r="${number}"${attributes} s="${style}" customFormat="1"${rest}`;
      written.set(number, { whole, attributes, rest });
    }
    const sorted = [...written].sort(([a], [b]) => a - b).map(([, { whole }]) => whole);
    edit(parts, SHEET, /<sheetData>.*<\/sheetData>/s, `<sheetData>${sorted.join("")}</sheetData>`);
  }
}

const SHEET = "xl/worksheets/sheet1.xml";
const APP = "docProps/app.xml";

const pagesOfPlan = (plan: SheetPlan): readonly Box[] => plan.pages ?? [wholeOf(plan)];

function heightOfRow(plan: SheetPlan): (row: number) => number {
  const titles = new Set(plan.cells.filter(({ kind }) => kind === "title").map(({ row }) => row));
  return (row) => plan.rowHeights?.[row] ?? (titles.has(row) ? TITLE_HEIGHT : ROW_HEIGHT);
}

function scaleOfPlan(plan: SheetPlan): number {
  const heightOf = heightOfRow(plan);
  const sum = (from: number, count: number, of: (index: number) => number): number =>
    Array.from({ length: count }, (_, index) => of(from + index)).reduce((total, one) => total + one, 0);
  const widthOf = (col: number): number =>
    pointsAcross(col < plan.cols ? (plan.columnWidths[col] ?? COLUMN_WIDTH) : USUAL_WIDTH);
  const sizes = pagesOfPlan(plan).map(({ row, col, rows, cols }) => ({
    width: sum(col, cols, widthOf),
    height: sum(row, rows, heightOf),
  }));
  return scaleOf(sizes, plan.paper ?? "A4", true);
}

function printSetUp(sheet: ExcelJS.Worksheet, plan: SheetPlan): void {
  sheet.pageSetup = {
    paperSize: plan.paper === "Letter" ? LETTER : A4,
    orientation: "landscape",
    scale: scaleOfPlan(plan),
    margins: MARGINS,
  };
  sheet.headerFooter = { oddFooter: footerText(plan) };
  sheet.views = [{ state: "frozen", ySplit: plan.freezeRows, showGridLines: false }];
}

const PLAIN_FONT = '<font><sz val="10"/><name val="Arial"/><family val="2"/></font>';

const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

function textOf(parts: Readonly<Record<string, Uint8Array>>, path: string): string {
  const part = parts[path];
  if (!part) throw new Error(`the file has no part ${path}`);
  return strFromU8(part);
}

/** Edits one part of the package; throws if the pattern is not found. */
function edit(parts: Record<string, Uint8Array>, path: string, pattern: RegExp | string, by: string): void {
  const before = textOf(parts, path);
  const after = before.replace(pattern, by);
  if (after === before) throw new Error(`${path} does not hold ${pattern}`);
  parts[path] = strToU8(after);
}

const wholeOf = ({ rows, cols }: SheetPlan): Box => ({ row: 0, col: 0, rows, cols });

function breaksOf(printing: Printing): string {
  const written = (attributes: Record<string, string>) =>
    Object.entries(attributes)
      .map(([name, value]) => ` ${name}="${value}"`)
      .join("");
  return BREAKS.filter((kind) => printing[kind].length > 0)
    .map((kind) => {
      const count = String(printing[kind].length);
      const breaks = printing[kind].map((at) => `<brk${written(breakAttributes(kind, at))}/>`);
      return `<${kind}${written({ count, manualBreakCount: count })}>${breaks.join("")}</${kind}>`;
    })
    .join("");
}

/**
 * Adds what exceljs cannot write: names that belong to the sheet, several printed pages, and the mark of dynamic
 * arrays.
 */
function complete(parts: Record<string, Uint8Array>, plan: SheetPlan): void {
  const sheet = quoted(plan.name);
  const reference = (box: Box) => `${sheet}!${boxAddress(box)}`;
  const printing = printingOf(pagesOfPlan(plan));
  const printed: [string, string] = ["_xlnm.Print_Area", printing.areas.map(reference).join(",")];
  const local = Object.entries(plan.names).map(([name, box]): [string, string] => [name, reference(box)]);
  const names = [printed, ...local]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, target]) => `<definedName name="${name}" localSheetId="0">${target}</definedName>`);
  // The file holds no results yet: Excel is to calculate when it opens it. exceljs states that an older Excel has calculated.
  edit(parts, "xl/workbook.xml", /<calcPr [^>]*>/, '<calcPr fullCalcOnLoad="1"/>');
  // exceljs names Excel, in a version of its own choice, as the program that made the file.
  edit(parts, APP, /<Application>[^<]*</, "<Application>Clayledger<");
  edit(parts, APP, /<AppVersion>[^<]*<\/AppVersion>/, "");
  edit(parts, "xl/workbook.xml", "</sheets>", `</sheets><definedNames>${names.join("")}</definedNames>`);
  edit(parts, SHEET, "</headerFooter>", `</headerFooter>${breaksOf(printing)}`);
  edit(parts, SHEET, /(<c r="[A-Z]+\d+"[^>]*?)(><f t="array")/g, '$1 cm="1"$2');
  // Column widths are counted in digits of the workbook's font; exceljs writes a font that some machines do not
  // have.
  edit(parts, "xl/styles.xml", /<font>(?:(?!<\/font>).)*Calibri(?:(?!<\/font>).)*<\/font>/, PLAIN_FONT);
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

/** The bytes of the file. */
export async function toXlsx(plan: SheetPlan): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  workbook.creator = "Clayledger";
  workbook.created = FIXED_DATE;
  workbook.modified = FIXED_DATE;
  workbook.views = [{ x: 0, y: 0, width: 20_000, height: 15_000, firstSheet: 0, activeTab: 0, visibility: "visible" }];
  const sheet = workbook.addWorksheet(plan.name, { properties: { defaultRowHeight: ROW_HEIGHT } });
  for (let col = 0; col < plan.cols; col++) {
    const column = sheet.getColumn(col + 1);
    column.width = plan.columnWidths[col] ?? COLUMN_WIDTH;
    // In the type definitions, the font is partial in a style but complete in a column.
    column.font = STYLES.label.font as ExcelJS.Font;
  }
  writeCells(sheet, plan);
  limitEntries(sheet, plan);
  printSetUp(sheet, plan);
  await protect(sheet, plan);
  const parts = unzipSync(new Uint8Array(await workbook.xlsx.writeBuffer()));
  complete(parts, plan);
  openRows(parts, plan);
  // exceljs also packs the folders, which are not parts of the package.
  const ordered = Object.entries(parts)
    .filter(([path]) => !path.endsWith("/"))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const dated: Zippable = Object.fromEntries(
    ordered.map(([path, bytes]) => [path, [bytes, { mtime: new Date(2000, 0, 1) }]]),
  );
  return zipSync(dated, { level: 9 });
}
