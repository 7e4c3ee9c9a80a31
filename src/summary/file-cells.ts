/**
 * Reads the named cells of an .xlsx file from its parts, without inserting the file. Formulas are not calculated: each
 * cell has the value that it showed when the file was saved.
 */
import { say } from "../reduction/message";
import type { NamedValues } from "../record/record";
import { boxOf, cellAddress, unquoted } from "../workbook/address";
import { plainText, runsText } from "../workbook/file/escapes";
import { planName } from "../workbook/rules/names";
import { WorkbookError, type Box, type CellValue } from "../workbook/port";
import { isXlsx } from "../workbook/file/xlsx-file";
import { all, child } from "../workbook/file/xml";
import { parsePart, safeText } from "../workbook/file/xml-part";
import { openArchive, type Archive } from "../workbook/file/zip";

export interface FileSheet {
  readonly sheet: string;
  readonly values: NamedValues;
}

const part = (archive: Archive, path: string): Document => parsePart(safeText(archive.read(path), path), path);

interface Sheet {
  readonly name: string;
  readonly path: string;
}

/** The id of the relationship that an element names. "Strict Open XML" has another namespace for it. */
const relationOf = (element: Element): string | undefined =>
  [...element.attributes].find(({ localName, namespaceURI }) => localName === "id" && namespaceURI !== null)?.value;

function sheetsOf(archive: Archive, workbook: Document): Sheet[] {
  const relations = archive.has("xl/_rels/workbook.xml.rels")
    ? all(part(archive, "xl/_rels/workbook.xml.rels"), "Relationship")
    : [];
  const targets = new Map(relations.map((one) => [one.getAttribute("Id") ?? "", one.getAttribute("Target") ?? ""]));
  return all(workbook, "sheet").flatMap((element) => {
    const name = element.getAttribute("name");
    const target = targets.get(relationOf(element) ?? "");
    if (name === null || !target) return [];
    return [{ name: plainText(name), path: target.startsWith("/") ? target.slice(1) : `xl/${target}` }];
  });
}

const REFERENCE = /^(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/;

/**
 * The positions of the wanted names on each sheet; a name that belongs to the sheet replaces a name of the workbook.
 */
function placesOf(
  workbook: Document,
  sheets: readonly Sheet[],
  wanted: ReadonlySet<string>,
): Map<string, Map<string, Box>> {
  const places = new Map(sheets.map(({ name }) => [name, new Map<string, Box>()]));
  const found = all(workbook, "definedName").map((element) => ({
    name: planName(plainText(element.getAttribute("name") ?? "")).toLowerCase(),
    isLocal: element.hasAttribute("localSheetId"),
    content: plainText(element.textContent).trim(),
  }));
  for (const isLocal of [false, true])
    for (const one of found) {
      const [, inQuotes, bare, address] = REFERENCE.exec(one.content) ?? [];
      const box = address === undefined ? undefined : boxOf(address);
      const sheet = unquoted(inQuotes, bare);
      if (one.isLocal === isLocal && box && sheet !== undefined && wanted.has(one.name))
        places.get(sheet)?.set(one.name, box);
    }
  return places;
}

const sharedTexts = (archive: Archive): string[] =>
  archive.has("xl/sharedStrings.xml") ? all(part(archive, "xl/sharedStrings.xml"), "si").map(runsText) : [];

function valueOf(cell: Element, shared: readonly string[]): CellValue {
  const type = cell.getAttribute("t");
  if (type === "inlineStr") return runsText(child(cell, "is") ?? cell);
  const value = child(cell, "v");
  if (!value) return "";
  const text = plainText(value.textContent);
  if (type === "s") return shared[Number(text)] ?? "";
  if (type === "b") return text === "1";
  return type === "str" || type === "e" ? text : Number(text);
}

/** The values of the cells of a sheet, by address. */
const cellsOf = (sheet: Document, shared: readonly string[]): Map<string, CellValue> =>
  new Map(all(sheet, "c").map((cell) => [cell.getAttribute("r") ?? "", valueOf(cell, shared)]));

/**
 * The sheets of a file that have at least one of the names. Refuses a file that is not an .xlsx workbook or is damaged.
 */
export function namedCellsOf(file: Uint8Array, names: readonly string[]): FileSheet[] {
  if (!isXlsx(file)) throw new WorkbookError(say`It is no .xlsx workbook: save it as .xlsx, and choose it again.`);
  const archive = openArchive(file);
  if (!archive.has("xl/workbook.xml")) throw new WorkbookError(say`It is no .xlsx workbook: choose another file.`);
  const workbook = part(archive, "xl/workbook.xml");
  const sheets = sheetsOf(archive, workbook);
  const places = placesOf(workbook, sheets, new Set(names));
  const shared = sharedTexts(archive);
  return sheets.flatMap(({ name, path }) => {
    const boxes = places.get(name);
    if (!boxes || boxes.size === 0 || !archive.has(path)) return [];
    const cells = cellsOf(part(archive, path), shared);
    const rowsOf = ({ row, col, rows, cols }: Box): CellValue[][] =>
      Array.from({ length: rows }, (_, down) =>
        Array.from({ length: cols }, (__, right) => cells.get(cellAddress(row + down, col + right)) ?? ""),
      );
    return [{ sheet: name, values: Object.fromEntries([...boxes].map(([called, box]) => [called, rowsOf(box)])) }];
  });
}
