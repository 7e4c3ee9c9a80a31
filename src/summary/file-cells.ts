/**
 * Reads the named cells of an .xlsx file from its parts, without inserting the file. Formulas are not calculated: each
 * cell has the value that it showed when the file was saved.
 */
import { strFromU8 } from "fflate";
import type { NamedValues } from "../record/record";
import { boxOf, cellAddress } from "../workbook/address";
import { planName } from "../workbook/names";
import { WorkbookError, type Box, type CellValue } from "../workbook/port";
import { isXlsx } from "../workbook/xlsx-file";
import { openArchive, type Archive } from "../workbook/zip";

export interface FileSheet {
  readonly sheet: string;
  readonly values: NamedValues;
}

const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Decodes a text of XML, and the characters that a file writes as _xHHHH_. */
const plain = (text: string): string =>
  text
    .replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, decimal?: string, name?: string) =>
      name !== undefined
        ? (ENTITIES[name] ?? whole)
        : String.fromCodePoint(hex !== undefined ? parseInt(hex, 16) : Number(decimal)),
    )
    .replace(/_x([0-9A-F]{4})_/gi, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)));

/** The elements with a name, each with its attributes as text and its content; a namespace prefix is ignored. */
function* elements(xml: string, name: string): Generator<{ attributes: string; content: string }> {
  const pattern = new RegExp(`<(?:\\w+:)?${name}\\b([^>]*?)(?:/>|>(.*?)</(?:\\w+:)?${name}>)`, "gs");
  for (const [, attributes = "", content = ""] of xml.matchAll(pattern)) yield { attributes, content };
}

const attribute = (attributes: string, name: string): string | undefined => {
  const [, value] = new RegExp(`(?:^|\\s)(?:\\w+:)?${name}="([^"]*)"`).exec(attributes) ?? [];
  return value === undefined ? undefined : plain(value);
};

const part = (archive: Archive, path: string): string => strFromU8(archive.read(path));

interface Sheet {
  readonly name: string;
  readonly path: string;
}

function sheetsOf(archive: Archive, workbook: string): Sheet[] {
  const relations = archive.has("xl/_rels/workbook.xml.rels") ? part(archive, "xl/_rels/workbook.xml.rels") : "";
  const targets = new Map(
    [...elements(relations, "Relationship")].map(({ attributes }) => [
      attribute(attributes, "Id"),
      attribute(attributes, "Target") ?? "",
    ]),
  );
  return [...elements(workbook, "sheet")].flatMap(({ attributes }) => {
    const name = attribute(attributes, "name");
    const target = targets.get(/(?:^|\s)\w+:id="([^"]*)"/.exec(attributes)?.[1]);
    if (name === undefined || !target) return [];
    return [{ name, path: target.startsWith("/") ? target.slice(1) : `xl/${target}` }];
  });
}

const REFERENCE = /^(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/;

/**
 * The positions of the wanted names on each sheet; a name that belongs to the sheet replaces a name of the workbook.
 */
function placesOf(
  workbook: string,
  sheets: readonly Sheet[],
  wanted: ReadonlySet<string>,
): Map<string, Map<string, Box>> {
  const places = new Map(sheets.map(({ name }) => [name, new Map<string, Box>()]));
  const found = [...elements(workbook, "definedName")].map(({ attributes, content }) => ({
    name: planName(attribute(attributes, "name") ?? "").toLowerCase(),
    isLocal: attribute(attributes, "localSheetId") !== undefined,
    content: plain(content).trim(),
  }));
  for (const isLocal of [false, true])
    for (const one of found) {
      const [, inQuotes, bare, address] = REFERENCE.exec(one.content) ?? [];
      const box = address === undefined ? undefined : boxOf(address);
      const sheet = inQuotes?.replaceAll("''", "'") ?? bare;
      if (one.isLocal === isLocal && box && sheet !== undefined && wanted.has(one.name))
        places.get(sheet)?.set(one.name, box);
    }
  return places;
}

const textsIn = (xml: string): string => [...elements(xml, "t")].map(({ content }) => plain(content)).join("");

/** The shared texts, without the phonetic text of Japanese. */
const sharedTexts = (archive: Archive): string[] =>
  archive.has("xl/sharedStrings.xml")
    ? [...elements(part(archive, "xl/sharedStrings.xml"), "si")].map(({ content }) =>
        textsIn(content.replace(/<(?:\w+:)?rPh\b.*?<\/(?:\w+:)?rPh>/gs, "")),
      )
    : [];

function valueOf(attributes: string, content: string, shared: readonly string[]): CellValue {
  const type = attribute(attributes, "t");
  if (type === "inlineStr") return textsIn(content);
  const [value] = elements(content, "v");
  if (!value) return "";
  const text = plain(value.content);
  if (type === "s") return shared[Number(text)] ?? "";
  if (type === "b") return text === "1";
  return type === "str" || type === "e" ? text : Number(text);
}

/** The values of the cells of a sheet, by address. */
const cellsOf = (xml: string, shared: readonly string[]): Map<string, CellValue> =>
  new Map(
    [...elements(xml, "c")].map(({ attributes, content }) => [
      attribute(attributes, "r") ?? "",
      valueOf(attributes, content, shared),
    ]),
  );

/**
 * The sheets of a file that have at least one of the names. Refuses a file that is not an .xlsx workbook or is damaged.
 */
export function namedCellsOf(file: Uint8Array, names: readonly string[]): FileSheet[] {
  if (!isXlsx(file)) throw new WorkbookError("It is no .xlsx workbook: save it as .xlsx, and choose it again.");
  const archive = openArchive(file);
  if (!archive.has("xl/workbook.xml")) throw new WorkbookError("It is no .xlsx workbook: choose another file.");
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
        Array.from({ length: cols }, (__, right) => cells.get(`${cellAddress(row + down, col + right)}`) ?? ""),
      );
    return [{ sheet: name, values: Object.fromEntries([...boxes].map(([called, box]) => [called, rowsOf(box)])) }];
  });
}
