/** An .xlsx file as a workbook: what the engine's own reader would drop or misread is put right before and after it. */
import { quoted } from "../../address";
import { helpers, load } from "@odoo/o-spreadsheet";
import { strFromU8, unzipSync } from "fflate";
import { planName } from "../../names";
import { WorkbookError } from "../../port";
import { Model } from "../engine";
import { toEngineFormat } from "../formats";
import { calledIn, freeNames, type LocalNames } from "../names";
import type { Note } from "../notes";
import { bareText, TEXT_FORMAT, typedText } from "../text";
import type { Protection } from "../protection";
import type { OpenWorkbook } from "../workbook";
import type { Zone } from "../zones";
import { renameApostrophes } from "./apostrophes";
import { putCharts, takeCharts } from "./charts";
import { readComments } from "./comments";
import { PRINT_AREA, readPrint } from "./print";
import { openStyles, readProtection } from "./protection";
import { plainText } from "./escapes";
import { fromFileFormula } from "./formula";
import { Parts, pathOf, relationsOf } from "./parts";
import { readWords } from "./words";
import { all, append, first } from "./xml";

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

interface Unpacked {
  readonly parts: Parts;
  /** By path, as the engine takes them. */
  readonly pictures: Readonly<Record<string, { readonly imageSrc: string }>>;
}

function unpack(bytes: Uint8Array): Unpacked {
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
  const isText = (path: string): boolean => /\.(xml|rels|vml)$/.test(path);
  const entries = Object.entries(files);
  return {
    parts: new Parts(entries.filter(([path]) => isText(path)).map(([path, content]) => [path, strFromU8(content)])),
    pictures: Object.fromEntries(
      entries
        .filter(([path]) => !isText(path))
        .map(([path, content]) => [path, { imageSrc: dataAddress(path, content) }]),
    ),
  };
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
    const range = RANGE.exec(plainText(element.textContent.trim()));
    const sheet = range && (range[1]?.replaceAll("''", "'") ?? range[2]);
    if (!range || !sheetNames.includes(sheet!) || !POSSIBLE_NAME.test(name)) {
      const owner = sheetNames[Number(element.getAttribute("localSheetId") ?? 0)];
      lost.set(owner, [...(lost.get(owner) ?? []), name]);
      dropped.push(name);
      continue;
    }
    const entry: [string, string] = [name, `${quoted(sheet!)}!${range[3].replaceAll("$", "")}`];
    const localTo = element.getAttribute("localSheetId");
    if (localTo === null) global.push(entry);
    else {
      const owner = sheetNames[Number(localTo)];
      ofSheet.set(owner, [...(ofSheet.get(owner) ?? []), [planName(name), entry[1]]]);
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
  const find = (of: string, name: string) => calledIn(names.local.get(of), planName(name));
  return {
    rename: (name: string) => find(sheet, name) ?? name,
    qualified: (formula: string) =>
      formula.replace(
        /(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!([\p{L}_][\p{L}\p{N}_.]*)(?![(:!$])/gu,
        (whole, quoted, bare, name) => find(quoted?.replaceAll("''", "'") ?? bare, name) ?? whole,
      ),
  };
}

function patchSheet(document: Document, names: Names, sheet: string): void {
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
}

function patchStrings(document: Document): void {
  for (const string of all(document, "si")) {
    const runs = all(string, "t").filter((run) => run.parentElement?.localName !== "rPh");
    const whole = runs.map((run) => run.textContent).join("");
    if (runs.length > 0 && typedText(whole) !== whole) runs[0].textContent = `'${runs[0].textContent}`;
  }
}

function patchStyles(document: Document): void {
  for (const format of all(document, "numFmt")) {
    const known = toEngineFormat(format.getAttribute("formatCode") ?? "");
    if (known) format.setAttribute("formatCode", known);
  }
  const root = document.documentElement;
  const formats =
    first(document, "numFmts") ?? (root.insertBefore(append(root, "numFmts"), root.firstChild) as Element);
  for (const [id, formatCode] of Object.entries(BUILT_IN_FORMATS))
    append(formats, "numFmt", { numFmtId: id, formatCode });
}

/** In cells of text the engine shows the apostrophe that keeps a text from being read as a number or a date: it is not needed there. */
function bareTexts(sheet: any, formats: Readonly<Record<string, string>>): void {
  const zones = Object.entries<number>(sheet.formats ?? {})
    .filter(([, id]) => formats[id] === TEXT_FORMAT)
    .map(([address]) => helpers.toZone(address));
  if (zones.length === 0) return;
  for (const [address, content] of Object.entries<string>(sheet.cells)) {
    if (!content?.startsWith?.("'")) continue;
    const { left: col, top: row } = helpers.toZone(address);
    const isText = zones.some(
      ({ left, right, top, bottom }) => col >= left && col <= right && row >= top && row <= bottom,
    );
    if (isText) sheet.cells[address] = bareText(content);
  }
}

/** The workbook's part and each sheet's, by the file's own relationships. */
function findSheets(parts: Parts) {
  const types = parts.document("[Content_Types].xml");
  const main = all(types, "Override").find((part) => /sheet\.main\+xml$/.test(part.getAttribute("ContentType") ?? ""));
  const path = main?.getAttribute("PartName")?.slice(1) ?? "xl/workbook.xml";
  for (const sheet of all(parts.document(path), "sheet"))
    sheet.setAttribute("name", plainText(sheet.getAttribute("name") ?? ""));
  const remarks = renameApostrophes(parts, parts.document(path));
  const workbook = parts.document(path);
  const relations = parts.document(relationsOf(path));
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
  return { workbook, sheets, remarks };
}

/** The notes of a sheet, by its part's own relationships. */
function notesOf(parts: Parts, sheetPath: string): Note[] {
  const relations = relationsOf(sheetPath);
  if (!parts.has(relations)) return [];
  const comments = all(parts.document(relations), "Relationship").find((one) =>
    one.getAttribute("Type")?.endsWith("/comments"),
  );
  const part = comments && pathOf(comments.getAttribute("Target") ?? "", sheetPath);
  return part && parts.has(part) ? readComments(parts.document(part)) : [];
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

/** Kinds of rules that the engine drops. */
const UNKNOWN_RULES = new Set(["whole", "time", "textLength"]);

function read(bytes: Uint8Array): Opened {
  const { parts, pictures } = unpack(bytes);
  const { workbook, sheets, remarks } = findSheets(parts);
  const names = readNames(
    workbook,
    sheets.map(({ name }) => name),
  );
  const partsCalled = (file: RegExp): Document[] =>
    parts
      .paths()
      .filter((path) => file.test(path))
      .map((path) => parts.document(path));
  const styles = partsCalled(/(^|\/)styles\.xml$/);
  const areas = new Map(
    all(workbook, "definedName")
      .filter((name) => name.getAttribute("name") === PRINT_AREA)
      .map((name) => [sheets[Number(name.getAttribute("localSheetId") ?? 0)]?.name, plainText(name.textContent)]),
  );
  const isOpen = openStyles(styles[0]);
  /** What the engine would not read of each sheet, by its name. */
  const kept = new Map(
    sheets
      .filter(({ path }) => parts.has(path))
      .map(({ name, path }) => {
        const document = parts.document(path);
        const dropped = all(document, "dataValidation").filter((rule) =>
          UNKNOWN_RULES.has(rule.getAttribute("type") ?? ""),
        ).length;
        if (dropped > 0)
          remarks.push(
            `Rules of "${name}" for whole numbers, times or lengths of text (${dropped}) were left out: the sheet on this page has none such.`,
          );
        const own = {
          protection: readProtection(document, isOpen),
          printLayout: readPrint(document, areas.get(name)),
          words: readWords(all(document, "dataValidation")),
          notes: notesOf(parts, path),
          charts: takeCharts(parts, path),
        };
        patchSheet(document, names, name);
        return [name, own];
      }),
  );
  partsCalled(/(^|\/)sharedStrings\.xml$/).forEach(patchStrings);
  styles.forEach(patchStyles);
  const data = load({ ...Object.fromEntries(parts.entries()), ...pictures } as never) as any;
  data.namedRanges = names.ranges;
  for (const sheet of data.sheets) bareTexts(sheet, data.formats);
  for (const sheet of data.sheets) {
    const { words, charts, ...rest } = kept.get(sheet.name) ?? {};
    for (const rule of sheet.dataValidationRules) {
      rule.words = words?.get(rule.ranges.join(" "));
      rule.criterion.values = rule.criterion.values.map(plainNumber);
    }
    // The engine's own lock would keep inputs too.
    Object.assign(sheet, rest, { isLocked: false });
    putCharts(sheet, charts ?? [], data.sheets);
  }
  makeRoom(data.sheets, names);
  for (const sheet of data.sheets) sheet.protection = within(sheet);
  const model = new Model(data);
  const { getters } = model;
  const localNames = new Map(
    [...names.local].map(([sheet, local]) => [getters.getSheetIdByName(sheet)!, local] as const),
  );
  const lost = new Map([...names.lost].map(([sheet, list]) => [getters.getSheetIdByName(sheet)!, list] as const));
  if (names.dropped.length > 0)
    remarks.push(`Names that are not one range of cells were left out: ${names.dropped.join(", ")}.`);
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
