/**
 * Saves a workbook as an .xlsx file: the engine's own export, with corrections where the export leaves something out or
 * is wrong.
 */
import { helpers } from "@odoo/o-spreadsheet";
import { strToU8, zipSync } from "fflate";
import { boxAddress, quoted } from "../../address";
import { localName } from "../../names";
import { printingOf } from "../../pages";
import { WorkbookError } from "../../port";
import { toExcelFormat } from "../formats";
import type { Model } from "../engine";
import { noteGetters } from "../notes";
import type { Rename } from "../names";
import { TEXT_FORMAT } from "../text";
import type { OpenWorkbook } from "../workbook";
import { addressOf, toBox, toZone, type Zone } from "../zones";
import { printOf } from "../print";
import { protectionOf } from "../protection";
import { addCharts } from "./charts";
import { addComments } from "./comments";
import { heldText } from "./escapes";
import { toFileFormula } from "./formula";
import { addPrint, PRINT_AREA } from "./print";
import { addProtection } from "./protection";
import { Parts } from "./parts";
import { addWords } from "./words";
import { all, append, first, parseXml } from "./xml";

/** A name as in the file, with the position of its sheet if it is local. */
interface FileName {
  readonly name: string;
  readonly sheetIndex?: number;
  readonly range: string;
}

const ERRORS_IN_FILE: Readonly<Record<string, string>> = {
  "#REF": "#REF!",
  "#CYCLE": "#REF!",
  "#BAD_EXPR": "#VALUE!",
  "#ERROR": "#VALUE!",
  "#BUSY!": "#N/A",
};

const fixed = (sheet: string, zone: Zone): string => `${quoted(sheet)}!${boxAddress(toBox(zone))}`;

/**
 * The names of the workbook, and a function that gives the name in the file for each engine name in the formulas of a
 * sheet.
 */
function fileNames({ model, localNames }: OpenWorkbook) {
  const { getters } = model;
  const sheetIds = getters.getSheetIds();
  const localOf = new Map<string, { sheetId: string; local: string }>();
  for (const [sheetId, names] of localNames)
    for (const [local, called] of names) localOf.set(called.toLowerCase(), { sheetId, local: localName(local) });

  const names: FileName[] = getters.getNamedRanges().map(({ name, range }) => {
    const local = localOf.get(name.toLowerCase());
    const isLocal = local?.sheetId === range.sheetId;
    return {
      name: isLocal ? local.local : name,
      sheetIndex: isLocal ? sheetIds.indexOf(range.sheetId) : undefined,
      range: fixed(getters.getSheetName(range.sheetId), range.zone),
    };
  });
  sheetIds.forEach((sheetId, sheetIndex) => {
    const { areas } = printingOf((printOf(model, sheetId)?.pages ?? []).map(toBox));
    const range = areas.map((area) => fixed(getters.getSheetName(sheetId), toZone(area))).join(",");
    if (range) names.push({ name: PRINT_AREA, sheetIndex, range });
  });
  const renameOn = (sheetId: string) => (name: string) => {
    const local = localOf.get(name.toLowerCase());
    if (!local || getters.getNamedRange(name)?.range.sheetId !== local.sheetId) return name;
    return local.sheetId === sheetId ? local.local : `${quoted(getters.getSheetName(local.sheetId))}!${local.local}`;
  };
  return { names, renameOn };
}

function addNames(document: Document, names: readonly FileName[]): void {
  if (names.length === 0) return;
  const list = append(document.documentElement, "definedNames");
  for (const { name, sheetIndex, range } of names)
    append(
      list,
      "definedName",
      sheetIndex === undefined ? { name } : { name, localSheetId: String(sheetIndex) },
      heldText(range),
    );
}

/** The engine writes colours without opacity, for which the schema requires two more digits. */
function patchColours(document: Document): void {
  for (const name of ["color", "fgColor", "bgColor", "tabColor"])
    for (const colour of all(document, name)) {
      const rgb = colour.getAttribute("rgb");
      if (rgb?.length === 6) colour.setAttribute("rgb", `FF${rgb}`);
    }
}

/** Adds the view that every sheet needs, with the sheet in front selected: the engine leaves views out. */
function addView(document: Document, activeTab: number): void {
  const views = append(document.documentElement, "bookViews");
  append(views, "workbookView", { activeTab: String(activeTab) });
  first(document, "sheets")!.before(views);
}

function patchStyles(document: Document): void {
  patchColours(document);
  for (const format of all(document, "numFmt"))
    format.setAttribute("formatCode", toExcelFormat(format.getAttribute("formatCode") ?? ""));
  const formats = first(document, "numFmts");
  if (formats && formats.children.length === 0) formats.remove();
}

/** In the engine an apostrophe in front marks a text; in the file the type of the cell does. */
function patchStrings(document: Document): void {
  for (const string of all(document, "t")) string.textContent = string.textContent.replace(/^'/, "");
}

/**
 * The cells that the answer of a formula covers: the engine itself reports one cell if the answer begins with an error.
 */
function spillOf({ getters }: Model, position: { sheetId: string; col: number; row: number }): Zone | undefined {
  const zone = getters.getSpreadZone(position);
  if (!zone || getters.getEvaluatedCell(position).type !== "error") return zone;
  const { sheetId, col, row } = position;
  const covers = (right: number, bottom: number): boolean => {
    const from = getters.getArrayFormulaSpreadingOn({ sheetId, col: right, row: bottom });
    return from?.col === col && from.row === row;
  };
  let [right, bottom] = [col, row];
  while (covers(right, bottom + 1)) bottom++;
  while (covers(right + 1, row)) right++;
  return { left: col, right, top: row, bottom };
}

/** Excel allows no array in merged cells: a formula there gives one value. */
function withoutArray(cell: Element, formula: Element): void {
  cell.removeAttribute("cm");
  for (const mark of ["t", "ref"]) formula.removeAttribute(mark);
}

function patchSheet(document: Document, sheetId: string, workbook: OpenWorkbook, rename: Rename): void {
  const { getters } = workbook.model;
  patchColours(document);
  const cells = new Map(all(document, "c").map((cell) => [cell.getAttribute("r")!, cell]));

  const setValue = (cell: Element, value: unknown) => {
    const isError = typeof value === "string" && helpers.isEvaluationError(value);
    const type = isError ? "e" : typeof value === "number" ? "n" : typeof value === "boolean" ? "b" : "str";
    cell.setAttribute("t", type);
    all(cell, "v").forEach((old) => old.remove());
    const shown = isError ? (ERRORS_IN_FILE[value] ?? value) : typeof value === "boolean" ? Number(value) : value;
    append(cell, "v", {}, heldText(String(shown ?? "")));
  };

  for (const held of Object.values(getters.getCells(sheetId))) {
    const position = getters.getCellPosition(held.id);
    const cell = cells.get(helpers.toXC(position.col, position.row));
    if (!cell) continue;
    const { value } = getters.getEvaluatedCell(position);
    // An error constant, which the engine would write as a text. With an apostrophe in front it is a text.
    if (!held.isFormula) {
      if (helpers.isEvaluationError(held.content) && held.format !== TEXT_FORMAT) setValue(cell, value);
      continue;
    }
    const content = getters.getCellText(position, { showFormula: true }).slice(1);
    const exported = first(cell, "f");
    const formula = exported ?? append(cell, "f");
    formula.textContent = heldText(toFileFormula(content, exported?.textContent, rename));
    setValue(cell, value);
    if (getters.isInMerge(position)) {
      withoutArray(cell, formula);
      continue;
    }

    // The engine writes no values for the cells that an answer spills into.
    const spill = spillOf(workbook.model, position);
    if (spill) exported?.setAttribute("ref", addressOf(spill));
    if (!spill || !exported) continue;
    for (let row = spill.top; row <= spill.bottom; row++)
      for (let col = spill.left; col <= spill.right; col++) {
        const filled = cells.get(helpers.toXC(col, row));
        if (filled && filled !== cell) setValue(filled, getters.getEvaluatedCell({ sheetId, col, row }).value);
      }
  }
  const rules = all(document, "dataValidation");
  for (const rule of rules) if (rule.getAttribute("errorStyle") === "") rule.removeAttribute("errorStyle");
  addWords(rules, workbook.model, sheetId);
}

/** Checks that the part can be opened again, before the file is offered. */
function checkAgain(path: string, text: string): void {
  try {
    parseXml(text);
  } catch {
    throw new WorkbookError(
      `The workbook was not saved: its part ${path} could not be read again, so the file could not be opened. The workbook is as it was. Please report this; a new workbook takes the sheets one by one meanwhile.`,
    );
  }
}

/** The bytes of the workbook as an .xlsx file. */
export async function saveXlsx(workbook: OpenWorkbook): Promise<Uint8Array<ArrayBuffer>> {
  const { model } = workbook;
  const { files } = await model.exportXLSX();
  const { names, renameOn } = fileNames(workbook);
  const texts: [string, string][] = [];
  const pictures: Record<string, Uint8Array> = {};
  for (const file of files)
    if ("imageSrc" in file) pictures[file.path] = await imageBytes(file.imageSrc);
    else texts.push([file.path, file.content]);

  const parts = new Parts(texts);
  const sheetIds = model.getters.getSheetIds();
  addView(parts.document("xl/workbook.xml"), sheetIds.indexOf(model.getters.getActiveSheetId()));
  addNames(parts.document("xl/workbook.xml"), names);
  patchStyles(parts.document("xl/styles.xml"));
  patchStrings(parts.document("xl/sharedStrings.xml"));
  sheetIds.forEach((sheetId, index) => {
    patchSheet(parts.document(`xl/worksheets/sheet${index}.xml`), sheetId, workbook, renameOn(sheetId));
    addComments(parts, index, noteGetters(model).getNotes(sheetId));
    addProtection(parts, index, protectionOf(model, sheetId));
    addPrint(parts, index, printOf(model, sheetId));
    addCharts(parts, index, model, sheetId);
  });
  const written = parts.entries();
  for (const [path, text] of written) checkAgain(path, text);
  const packed = Object.fromEntries(written.map(([path, text]) => [path, strToU8(text)]));
  return zipSync({ ...packed, ...pictures }) as Uint8Array<ArrayBuffer>;
}

/** The bytes of an image that the engine stores as a data address. */
async function imageBytes(source: string): Promise<Uint8Array> {
  if (!source.startsWith("data:"))
    throw new WorkbookError("A picture in the workbook is not held in it and cannot be saved: remove it.");
  return new Uint8Array(await (await fetch(source)).arrayBuffer());
}
