/** An .xlsx file as a workbook: what the engine's own reader would drop or misread is put right before and after it. */
import { helpers, load } from "@odoo/o-spreadsheet";
import { strFromU8, unzipSync } from "fflate";
import { WorkbookError } from "../../port";
import { Model } from "../engine";
import { toEngineFormat } from "../formats";
import { freeNames, type LocalNames } from "../names";
import type { Note } from "../notes";
import { typedText } from "../text";
import type { Protection } from "../protection";
import type { OpenWorkbook } from "../workbook";
import type { Zone } from "../zones";
import { readComments } from "./comments";
import { PRINT_AREA, readPrint } from "./print";
import { openStyles, readProtection } from "./protection";
import { fromFileFormula } from "./formula";
import { all, append, first, parseXml, writeXml } from "./xml";

export interface Opened {
  readonly workbook: OpenWorkbook;
  /** What of the file could not be kept, in sentences. */
  readonly remarks: readonly string[];
}

/** Files that unpack to more than this are not opened. */
const LARGEST = 300e6;

/** Built-in number formats that the engine's reader leaves out, in its spelling. */
const BUILT_IN_FORMATS: Readonly<Record<number, string>> = {
  11: "0.00e",
  37: "#,##0;(#,##0)",
  38: "#,##0;(#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;(#,##0.00)",
  48: "##0.0e",
};

type Parts = Record<string, any>;

function unpack(bytes: Uint8Array): Parts {
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf)
    throw new WorkbookError(
      "This is a workbook of the old .xls kind, or one locked with a password: save it from Excel as .xlsx without a password.",
    );
  let unpacked = 0;
  const files = unzipSync(bytes, {
    filter: ({ originalSize }) => {
      unpacked += originalSize;
      if (unpacked > LARGEST)
        throw new WorkbookError("The file unpacks to more than 300 MB: it is too large to open here.");
      return true;
    },
  });
  return Object.fromEntries(
    Object.entries(files).map(([path, content]) => [
      path,
      /\.(xml|rels|vml)$/.test(path) ? strFromU8(content) : { imageSrc: dataAddress(path, content) },
    ]),
  );
}

function dataAddress(path: string, content: Uint8Array): string {
  const kind = path.split(".").pop() === "png" ? "png" : "jpeg";
  let binary = "";
  for (let i = 0; i < content.length; i += 8192) binary += String.fromCharCode(...content.subarray(i, i + 8192));
  return `data:image/${kind};base64,${btoa(binary)}`;
}

interface Names {
  /** "'Sheet 1'!A1:B2" by the engine's name. */
  readonly ranges: Record<string, string>;
  /** By sheet name: local name to engine's name. */
  readonly local: Map<string, LocalNames>;
  readonly dropped: readonly string[];
  /** By sheet name: its names that led to no cells. */
  readonly lost: Map<string, string[]>;
}

const RANGE = /^(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/;
const POSSIBLE_NAME = /^[\p{L}_][\p{L}\p{N}_.]*$/u;

/** The file's names: those of the workbook keep theirs, those of a sheet get a free one. */
function readNames(workbook: Document, sheetNames: readonly string[]): Names {
  const dropped: string[] = [];
  const lost = new Map<string, string[]>();
  const global: [string, string][] = [];
  const ofSheet = new Map<string, [string, string][]>();
  for (const element of all(workbook, "definedName")) {
    const name = element.getAttribute("name") ?? "";
    if (name.startsWith("_xlnm.") || element.getAttribute("hidden") === "1") continue;
    const range = RANGE.exec(element.textContent.trim());
    const sheet = range && (range[1]?.replaceAll("''", "'") ?? range[2]);
    if (!range || !sheetNames.includes(sheet!) || !POSSIBLE_NAME.test(name)) {
      const owner = sheetNames[Number(element.getAttribute("localSheetId") ?? 0)];
      lost.set(owner, [...(lost.get(owner) ?? []), name]);
      dropped.push(name);
      continue;
    }
    const entry: [string, string] = [name, `'${sheet!.replaceAll("'", "''")}'!${range[3].replaceAll("$", "")}`];
    const localTo = element.getAttribute("localSheetId");
    if (localTo === null) global.push(entry);
    else {
      const owner = sheetNames[Number(localTo)];
      ofSheet.set(owner, [...(ofSheet.get(owner) ?? []), entry]);
    }
  }
  const ranges = Object.fromEntries(global);
  const local = new Map<string, LocalNames>();
  for (const [sheet, entries] of ofSheet) {
    const called = freeNames(
      entries.map(([name]) => name),
      Object.keys(ranges),
    );
    for (const [name, range] of entries) ranges[called.get(name)!] = range;
    local.set(sheet, called);
  }
  return { ranges, local, dropped, lost };
}

/** A local name is written in any letter case; another sheet's is written "'Sheet 2'!name". */
function renamer(names: Names, sheet: string) {
  const find = (of: string, name: string) =>
    [...(names.local.get(of) ?? [])].find(([local]) => local.toLowerCase() === name.toLowerCase())?.[1];
  return {
    rename: (name: string) => find(sheet, name) ?? name,
    qualified: (formula: string) =>
      formula.replace(
        /(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!([\p{L}_][\p{L}\p{N}_.]*)(?![(:!$])/gu,
        (whole, quoted, bare, name) => find(quoted?.replaceAll("''", "'") ?? bare, name) ?? whole,
      ),
  };
}

function patchSheet(text: string, names: Names, sheet: string): string {
  const document = parseXml(text);
  const { rename, qualified } = renamer(names, sheet);
  for (const formula of all(document, "f"))
    if (formula.textContent.trim() !== "")
      formula.textContent = fromFileFormula(qualified(formula.textContent), rename);
  // The look of rows without cells, such as those for readings: the engine would keep it for every cell of them.
  for (const row of all(document, "row"))
    if (!row.firstElementChild) ["s", "customFormat"].forEach((name) => row.removeAttribute(name));
  for (const cell of all(document, "c")) {
    const type = cell.getAttribute("t");
    if (first(cell, "f")) continue;
    if (type === "inlineStr") {
      const content = all(cell, "t")
        .map((run) => run.textContent)
        .join("");
      cell.replaceChildren();
      cell.setAttribute("t", "str");
      append(cell, "v", {}, typedText(content));
    } else if (type === "str") {
      const value = first(cell, "v");
      if (value) value.textContent = typedText(value.textContent);
    }
  }
  return writeXml(document);
}

function patchStrings(text: string): string {
  const document = parseXml(text);
  for (const string of all(document, "si")) {
    const runs = all(string, "t").filter((run) => run.parentElement?.localName !== "rPh");
    const whole = runs.map((run) => run.textContent).join("");
    if (runs.length > 0 && typedText(whole) !== whole) runs[0].textContent = `'${runs[0].textContent}`;
  }
  return writeXml(document);
}

function patchStyles(text: string): string {
  const document = parseXml(text);
  for (const format of all(document, "numFmt")) {
    const known = toEngineFormat(format.getAttribute("formatCode") ?? "");
    if (known) format.setAttribute("formatCode", known);
  }
  const root = document.documentElement;
  const formats =
    first(document, "numFmts") ?? (root.insertBefore(append(root, "numFmts"), root.firstChild) as Element);
  for (const [id, formatCode] of Object.entries(BUILT_IN_FORMATS))
    append(formats, "numFmt", { numFmtId: id, formatCode });
  return writeXml(document);
}

/** The path that a relationship of the part `from` leads to. */
function pathOf(target: string, from: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps = from.split("/").slice(0, -1);
  for (const step of target.split("/"))
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  return steps.join("/");
}

const relationsOf = (path: string): string => path.replace(/([^/]+)$/, "_rels/$1.rels");

/** The workbook's part and each sheet's, by the file's own relationships. */
function findSheets(parts: Parts) {
  const types = parseXml(parts["[Content_Types].xml"]);
  const main = all(types, "Override").find((part) => /sheet\.main\+xml$/.test(part.getAttribute("ContentType") ?? ""));
  const path = main?.getAttribute("PartName")?.slice(1) ?? "xl/workbook.xml";
  const workbook = parseXml(parts[path]);
  const relations = parseXml(parts[relationsOf(path)]);
  const targets = new Map(
    all(relations, "Relationship").map((one) => [
      one.getAttribute("Id"),
      pathOf(one.getAttribute("Target") ?? "", path),
    ]),
  );
  const sheets = all(workbook, "sheet").map((sheet) => ({
    name: sheet.getAttribute("name") ?? "",
    path:
      targets.get(
        sheet.getAttributeNS("http://schemas.openxmlformats.org/officeDocument/2006/relationships", "id") ??
          sheet.getAttribute("r:id"),
      ) ?? "",
  }));
  return { workbook, sheets };
}

/** The notes of a sheet, by its part's own relationships. */
function notesOf(parts: Parts, sheetPath: string): Note[] {
  const relations = parts[relationsOf(sheetPath)];
  if (!relations) return [];
  const comments = all(parseXml(relations), "Relationship").find((one) =>
    one.getAttribute("Type")?.endsWith("/comments"),
  );
  const part = comments && parts[pathOf(comments.getAttribute("Target") ?? "", sheetPath)];
  return part ? readComments(part) : [];
}

/** A sheet is read as large as its filled cells; a name may cover blank ones beyond them. */
function makeRoom(sheets: { name: string; rowNumber: number; colNumber: number }[], names: Names): void {
  for (const range of Object.values(names.ranges)) {
    const { sheetName, xc } = helpers.splitReference(range);
    const sheet = sheets.find(({ name }) => name === sheetName);
    const { right, bottom } = helpers.toZone(xc);
    if (!sheet) continue;
    sheet.rowNumber = Math.max(sheet.rowNumber, bottom + 1);
    sheet.colNumber = Math.max(sheet.colNumber, right + 1);
  }
}

/** The engine takes a negative limit of a file for a formula. */
const plainNumber = (limit: string): string => limit.replace(/^=(?=-[\d.]+(?:e[+-]?\d+)?$)/i, "");

/** Open rows end where the sheet does. */
const within = ({ protection, colNumber, rowNumber }: any): Protection | undefined =>
  protection && {
    ...protection,
    open: protection.open
      .map((zone: Zone) => ({
        ...zone,
        right: Math.min(zone.right, colNumber - 1),
        bottom: Math.min(zone.bottom, rowNumber - 1),
      }))
      .filter(({ left, right, top, bottom }: Zone) => left <= right && top <= bottom),
  };

function read(bytes: Uint8Array): Opened {
  const parts = unpack(bytes);
  const { workbook, sheets } = findSheets(parts);
  const names = readNames(
    workbook,
    sheets.map(({ name }) => name),
  );
  const stylesPath = Object.keys(parts).find((path) => /(^|\/)styles\.xml$/.test(path));
  const isOpen = openStyles(stylesPath === undefined ? undefined : parts[stylesPath]);
  const protection = new Map(
    sheets.map(({ name, path }) => [name, parts[path] ? readProtection(parts[path], isOpen) : undefined]),
  );
  for (const { name, path } of sheets) if (parts[path]) parts[path] = patchSheet(parts[path], names, name);
  for (const path of Object.keys(parts)) {
    if (/(^|\/)sharedStrings\.xml$/.test(path)) parts[path] = patchStrings(parts[path]);
    if (/(^|\/)styles\.xml$/.test(path)) parts[path] = patchStyles(parts[path]);
  }
  const areas = new Map(
    all(workbook, "definedName")
      .filter((name) => name.getAttribute("name") === PRINT_AREA)
      .map((name) => [sheets[Number(name.getAttribute("localSheetId") ?? 0)]?.name, name.textContent]),
  );
  const prints = new Map(
    sheets.map(({ name, path }) => [name, parts[path] ? readPrint(parts[path], areas.get(name)) : undefined]),
  );
  const notes = new Map(sheets.map(({ name, path }) => [name, notesOf(parts, path)]));
  const data = load(parts) as any;
  data.namedRanges = names.ranges;
  for (const sheet of data.sheets) {
    sheet.notes = notes.get(sheet.name);
    for (const { criterion } of sheet.dataValidationRules) criterion.values = criterion.values.map(plainNumber);
    // The engine's own lock would keep inputs too.
    sheet.isLocked = false;
    sheet.protection = protection.get(sheet.name);
    sheet.printLayout = prints.get(sheet.name);
  }
  makeRoom(data.sheets, names);
  for (const sheet of data.sheets) sheet.protection = within(sheet);
  const model = new Model(data);
  const { getters } = model;
  const localNames = new Map(
    [...names.local].map(([sheet, local]) => [getters.getSheetIdByName(sheet)!, local] as const),
  );
  const lost = new Map([...names.lost].map(([sheet, list]) => [getters.getSheetIdByName(sheet)!, list] as const));
  const remarks =
    names.dropped.length > 0
      ? [`Names that are not one range of cells were left out: ${names.dropped.join(", ")}.`]
      : [];
  return { workbook: { model, localNames, lost }, remarks };
}

/** Opens the bytes of an .xlsx file; what cannot be read is refused with a sentence. */
export function openXlsx(bytes: Uint8Array): Opened {
  try {
    return read(bytes);
  } catch (error) {
    if (error instanceof WorkbookError) throw error;
    throw new WorkbookError(
      "The file could not be opened: it is damaged, or not an .xlsx workbook. The workbook on the page is as it was.",
    );
  }
}
