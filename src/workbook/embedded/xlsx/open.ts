/**
 * Opens an .xlsx file as a workbook. Parts that the engine's own reader would drop or misread are corrected before and
 * after it reads.
 * Casts: the engine's reader accepts and returns data without types.
 */
import { say, verbatim, listed, type Message } from "../../../reduction/message";
import { nth } from "../../../reduction/numeric/lists";
import { helpers, load } from "@odoo/o-spreadsheet";
import { cellAddress, quoted, unquoted } from "../../address";
import { planName } from "../../rules/names";
import { atOnce } from "../../in-slices";
import { WorkbookError } from "../../port";
import { openArchive, type Archive } from "../../file/zip";
import { Model } from "../engine";
import { settingsFor, type DecimalMark } from "../typing/locale";
import { calledIn, freeNames, type LocalNames } from "../names";
import type { Note } from "../notes";
import { bareText, inZonesOf, TEXT_FORMAT } from "../typing/text";
import type { Protection } from "../protection";
import type { OpenWorkbook } from "../workbook";
import { renameApostrophes } from "./apostrophes";
import { numberCells, readCells, workLimit, type Cells } from "./cells";
import { putCharts, takeCharts, type FileChart } from "./charts";
import { readComments } from "./comments";
import { heldText, plainText, runsText } from "../../file/escapes";
import { fromFileFormula } from "./formula";
import { noArchive, noWorkbook } from "./kinds";
import { patchColours, patchStyles } from "./looks";
import { DECIMAL_MARK, readPackage, STRINGS, STYLES, WORKBOOK, workbookPath } from "./package";
import { Parts, pathOf, relationsOf } from "./parts";
import { PRINT_AREA, readPrint } from "./print";
import { openStyles, readProtection } from "./protection";
import { makeRoom, mergesWithin, rangesWithin, within, type Sized } from "./room";
import { readWords, type Words } from "./words";
import { all, append, childrenOf, first } from "../../file/xml";

export interface Opened {
  readonly workbook: OpenWorkbook;
  /** Parts of the file that could not be kept, in sentences. */
  readonly remarks: readonly Message[];
}

interface Names {
  /** Ranges ("'Sheet 1'!A1:B2") by engine name. */
  readonly ranges: Record<string, string>;
  /** By sheet name: local name to engine name. */
  readonly local: Map<string, LocalNames>;
  readonly dropped: readonly string[];
  /** By sheet name: the names of the sheet that led to no cells. */
  readonly lost: Map<string, string[]>;
}

const RANGE = /^(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/;
const POSSIBLE_NAME = /^[\p{L}_][\p{L}\p{N}_.]*$/u;

/** The names of the file: names of the workbook stay, names of a sheet get a free engine name. */
function readNames(workbook: Document, sheetNames: readonly string[]): Names {
  const dropped: string[] = [];
  const lost = new Map<string, string[]>();
  const global: [string, string][] = [];
  const ofSheet = new Map<string, [string, string][]>();
  for (const element of all(workbook, "definedName")) {
    const name = element.getAttribute("name") ?? "";
    if (name.startsWith("_xlnm.") || element.getAttribute("hidden") === "1") continue;
    const range = RANGE.exec(plainText(element.textContent).trim());
    const [, inQuotes, bare, cells] = range ?? [];
    const sheet = unquoted(inQuotes, bare);
    const localTo = element.getAttribute("localSheetId");
    const owner = sheetNames[Number(localTo ?? 0)];
    if (!sheet || !cells || !owner || !sheetNames.includes(sheet) || !POSSIBLE_NAME.test(name)) {
      if (owner) lost.set(owner, [...(lost.get(owner) ?? []), name]);
      dropped.push(name);
      continue;
    }
    const entry: [string, string] = [name, `${quoted(sheet)}!${cells.replaceAll("$", "")}`];
    if (localTo === null) global.push(entry);
    else ofSheet.set(owner, [...(ofSheet.get(owner) ?? []), [planName(name), entry[1]]]);
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

/** A local name may be in any letter case; a name of another sheet is written "'Sheet 2'!name". */
function renamer(names: Names, sheet: string) {
  const find = (of: string, name: string) => calledIn(names.local.get(of), planName(name));
  return {
    rename: (name: string) => find(sheet, name) ?? name,
    qualified: (formula: string) =>
      formula.replace(
        /(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!([\p{L}_][\p{L}\p{N}_.]*)(?![(:!$])/gu,
        (whole, quoted, bare, name) => find(unquoted(quoted, bare), name) ?? whole,
      ),
  };
}

/**
 * Corrects the rules for the engine's reader: a second bound is kept only where a rule has two; other programs write
 * one everywhere.
 */
function patchRules(document: Document): void {
  for (const rule of all(document, "dataValidation")) {
    const isOpen = !/^(?:between|notBetween)$/.test(rule.getAttribute("operator") ?? "between");
    if (isOpen || /^(?:list|custom)$/.test(rule.getAttribute("type") ?? ""))
      all(rule, "formula2").forEach((bound) => bound.remove());
    if (!all(rule, "formula1").some((bound) => bound.textContent.trim() !== "")) rule.remove();
  }
}

/**
 * Leaves in the rows only the parts that the engine's reader still reads: groups of rows, and formulas of tables and of
 * other files.
 */
function emptySheet(document: Document, { cells, left, colNumber }: Cells): void {
  let groups = 0;
  const data = first(document, "sheetData") ?? append(document.documentElement, "sheetData");
  const rows: Element[] = [];
  for (const row of childrenOf(data)) {
    const isGrouped = row.hasAttribute("outlineLevel") || row.hasAttribute("collapsed");
    const wanted = left.size === 0 ? [] : [...row.children].filter((cell) => left.has(cell.getAttribute("r") ?? ""));
    if (wanted.length === 0 && !(isGrouped && groups++ < MOST_GROUPED)) continue;
    row.removeAttribute("s");
    row.replaceChildren(...wanted);
    for (const cell of wanted) {
      ["s", "t"].forEach((name) => cell.removeAttribute(name));
      cell.replaceChildren();
      append(cell, "f", {}, heldText((cells[cell.getAttribute("r") ?? ""] ?? "").slice(1)));
    }
    rows.push(row);
  }
  // Replaces all rows at once: the time to remove a single row grows with the number of rows left.
  const rest = document.createElementNS(data.namespaceURI, "sheetData");
  data.replaceWith(rest);
  rest.append(...rows);
  // The described columns reach as far as the last cell.
  append(append(rest, "row", { r: "1" }), "c", { r: cellAddress(0, colNumber - 1) });
  for (const column of all(document, "col")) column.removeAttribute("style");
  for (const link of all(document, "hyperlink")) link.remove();
}

/**
 * More grouped rows than this are not read: the engine's reader takes a time that grows with the square of their
 * number.
 */
const MOST_GROUPED = 5000;

/**
 * Removes apostrophes in cells of text format, where the engine would show them: the format alone keeps a text from
 * being read as a number or a date.
 */
function bareTexts(sheet: any, formats: Readonly<Record<string, string>>): void {
  const isText = inZonesOf(sheet.formats, (id) => formats[id] === TEXT_FORMAT);
  for (const [address, content] of Object.entries<string>(sheet.cells))
    if (content?.startsWith?.("'") && isText(address)) sheet.cells[address] = bareText(content);
}

/** Targets of the links of a sheet out of the file, by relationship. */
function linksOf(parts: Parts, sheetPath: string): Map<string, string> {
  const relations = relationsOf(sheetPath);
  if (!parts.has(relations)) return new Map();
  return new Map(
    all(parts.document(relations), "Relationship")
      .filter((one) => one.getAttribute("Type")?.endsWith("/hyperlink"))
      .map((one) => [one.getAttribute("Id") ?? "", one.getAttribute("Target") ?? ""]),
  );
}

/** The notes of a sheet, found by the relationships of its part. */
function notesOf(parts: Parts, sheetPath: string): Note[] {
  const relations = relationsOf(sheetPath);
  if (!parts.has(relations)) return [];
  const comments = all(parts.document(relations), "Relationship").find((one) =>
    one.getAttribute("Type")?.endsWith("/comments"),
  );
  const part = comments && pathOf(comments.getAttribute("Target") ?? "", sheetPath);
  return part && parts.has(part) ? readComments(parts.document(part)) : [];
}

/** The engine reads a negative limit in a file as a formula. */
const plainNumber = (limit: string): string => limit.replace(/^=(?=-[\d.]+(?:e[+-]?\d+)?$)/i, "");

/** Cuts open rows to the size of the sheet. */
const protectionWithin = (sheet: Sized, protection: Protection | undefined): Protection | undefined =>
  protection && { ...protection, open: protection.open.flatMap((zone) => within(zone, sheet) ?? []) };

/** Kinds of rules that the engine drops. */
const UNKNOWN_RULES = new Set(["whole", "time", "textLength"]);

/** Contents that the engine or its reader may fail on, and that a workbook can do without. */
const DISPENSABLE: readonly {
  readonly called: Message;
  readonly elements: readonly string[];
  readonly parts?: RegExp;
}[] = [
  { called: say`conditional formats`, elements: ["conditionalFormatting", "extLst"] },
  { called: say`rules of entry`, elements: ["dataValidations"] },
  { called: say`pictures and charts`, elements: ["drawing"] },
  { called: say`tables`, elements: ["tableParts"], parts: /^xl\/(?:tables|pivotTables)\// },
  { called: say`links to other files`, elements: [], parts: /^xl\/externalLinks\// },
];

type Dispensable = (typeof DISPENSABLE)[number];

/** The parts without some kinds of contents on their sheets. */
function without(texts: readonly (readonly [string, string])[], kinds: readonly Dispensable[]): Parts {
  const isLeft = (path: string): boolean => !kinds.some((kind) => kind.parts?.test(path));
  const parts = new Parts(texts.filter(([path]) => isLeft(path)));
  const gone = new Set(kinds.flatMap(({ elements }) => elements));
  const sheets = parts.paths().filter((path) => kinds.length > 0 && /^xl\/worksheets\/[^/]+\.xml$/.test(path));
  for (const path of sheets)
    for (const child of [...parts.document(path).documentElement.children])
      if (gone.has(child.localName)) child.remove();
  if (kinds.some((kind) => kind.parts)) {
    const types = parts.document("[Content_Types].xml");
    for (const type of all(types, "Override"))
      if (!isLeft(type.getAttribute("PartName")?.slice(1) ?? "")) type.remove();
  }
  return parts;
}

/**
 * The model that `make` makes of the parts: from all of them if possible, otherwise without the contents that the
 * engine fails on, one kind after the other and at last all kinds. Says what was left out.
 */
function withWhatGoes(
  texts: readonly (readonly [string, string])[],
  make: (parts: Parts) => Model,
): { model: Model; left: Message[] } {
  const attempts = [[], ...DISPENSABLE.map((kind) => [kind]), DISPENSABLE];
  let failure: unknown;
  for (const kinds of attempts)
    try {
      return { model: make(without(texts, kinds)), left: kinds.map(({ called }) => called) };
    } catch (error) {
      if (error instanceof WorkbookError) throw error;
      failure ??= error;
    }
  throw failure;
}

function archiveOf(bytes: Uint8Array): { archive: Archive; main: string } {
  const other = noArchive(bytes);
  if (other !== undefined) throw new WorkbookError(other);
  const archive = openArchive(bytes);
  const main = workbookPath(archive);
  if (main === undefined) throw new WorkbookError(noWorkbook(archive));
  return { archive, main };
}

/** The shared texts of the cells. */
function stringsOf(parts: Parts): string[] {
  if (!parts.has(STRINGS)) return [];
  const strings = [...childrenOf(parts.document(STRINGS).documentElement)];
  return strings.filter(({ localName }) => localName === "si").map(runsText);
}

/** Content of each sheet that the engine would not read, or would read differently. */
interface Kept {
  readonly read: Cells;
  readonly own: Record<string, unknown>;
  readonly protection: Protection;
  readonly words: ReadonlyMap<string, Words>;
  readonly charts: readonly FileChart[];
}

/** The shares of the work that are done after the parts are read, and after the cells are read. */
const PARTS_SHARE = 0.4;
const CELLS_SHARE = 0.6;

/** Runs the steps of a part of the work; `share` turns each into a share of the whole. */
function* asShares<T>(steps: Generator<number, T>, share: (step: number) => number): Generator<number, T> {
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
    yield share(next.value);
  }
}

/** The decimal mark with which a workbook was saved. */
function markOf(workbook: Document): DecimalMark | undefined {
  const kept = all(workbook, "definedName").find((name) => name.getAttribute("name") === DECIMAL_MARK)?.textContent;
  return kept === '","' ? "," : kept === '"."' ? "." : undefined;
}

/** Shows the sheet that was active when the file was saved. */
function bringForward({ getters, dispatch }: Model, front: number | undefined): void {
  const sheetIdFrom = getters.getActiveSheetId();
  const sheetIdTo = front === undefined ? undefined : getters.getSheetIds()[front];
  if (sheetIdTo !== undefined && sheetIdTo !== sheetIdFrom && getters.isSheetVisible(sheetIdTo))
    dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo });
}

function* read(bytes: Uint8Array, usual: DecimalMark | undefined, settings: object): Generator<number, Opened> {
  const { archive, main } = archiveOf(bytes);
  const whole = yield* asShares(readPackage(archive, main), (share) => PARTS_SHARE * share);
  const { parts, pictures, sheets, front, remarks: told } = whole;
  const remarks = [...told];
  remarks.push(...renameApostrophes(parts, parts.document(WORKBOOK)));
  const workbook = parts.document(WORKBOOK);
  const sheetNames = all(workbook, "sheet").map((sheet) => sheet.getAttribute("name")!);
  const names = readNames(workbook, sheetNames);
  const areas = new Map(
    all(workbook, "definedName")
      .filter((name) => name.getAttribute("name") === PRINT_AREA)
      .map((name) => [sheetNames[Number(name.getAttribute("localSheetId") ?? 0)], plainText(name.textContent)]),
  );
  const styles = parts.document(STYLES);
  const isOpen = openStyles(styles);
  const fileStyles = patchStyles(styles);
  const strings = stringsOf(parts);
  const isLight = workLimit();
  parts.delete(STRINGS);
  const kept = new Map<string, Kept>();
  for (const [at, { path }] of sheets.entries()) {
    const name = nth(sheetNames, at);
    const document = parts.document(path);
    numberCells(document, name);
    const dropped = all(document, "dataValidation").filter((rule) =>
      UNKNOWN_RULES.has(rule.getAttribute("type") ?? ""),
    ).length;
    if (dropped > 0)
      remarks.push(
        say`Rules of "${verbatim(name)}" for whole numbers, times or lengths of text (${dropped}) were left out: the sheet on this page has none such.`,
      );
    const { rename, qualified } = renamer(names, name);
    const steps = readCells(document, {
      ...{ sheet: name, strings, sheetNames, styles: fileStyles, isLight },
      formula: (text) => fromFileFormula(qualified(text), rename),
      links: linksOf(parts, path),
    });
    const cells = yield* asShares(steps, () => PARTS_SHARE + ((CELLS_SHARE - PARTS_SHARE) * at) / sheets.length);
    remarks.push(...cells.remarks);
    patchRules(document);
    kept.set(name, {
      read: cells,
      own: { printLayout: readPrint(document, areas.get(name)), notes: notesOf(parts, path) },
      protection: readProtection(document, isOpen),
      words: readWords(all(document, "dataValidation")),
      charts: takeCharts(parts, path),
    });
    emptySheet(document, cells);
    patchColours(document);
    yield PARTS_SHARE + ((CELLS_SHARE - PARTS_SHARE) * (at + 1)) / sheets.length;
  }

  const mark = markOf(workbook) ?? usual;
  const make = (rest: Parts): Model => {
    const data = load({ ...Object.fromEntries(rest.entries()), ...pictures } as never) as any;
    const cut: Message[] = [];
    data.namedRanges = names.ranges;
    for (const sheet of data.sheets) {
      const { read: cells, own } = kept.get(sheet.name)!;
      const { left: converted } = cells;
      const formulas = Object.fromEntries([...converted].map((at) => [at, sheet.cells[at] ?? cells.cells[at]]));
      const { styles: looks, formats, borders, rowNumber, colNumber } = cells;
      Object.assign(sheet, own, { styles: looks, formats, borders, rowNumber, colNumber });
      sheet.cells = { ...cells.cells, ...formulas };
      sheet.rows = inGroups(cells.rows, sheet.headerGroups?.ROW ?? []);
      // The engine's own lock would lock inputs too.
      sheet.isLocked = false;
      bareTexts(sheet, data.formats);
    }
    const sized = new Map<string, Sized>(data.sheets.map((sheet: Sized) => [sheet.name, sheet]));
    for (const range of Object.values(names.ranges)) {
      const { sheetName, xc } = helpers.splitReference(range);
      const { right, bottom } = helpers.toZone(xc);
      const sheet = sized.get(sheetName!);
      if (sheet) makeRoom(sheet, { col: right, row: bottom });
    }
    for (const sheet of data.sheets) {
      const { merges, remarks: said } = mergesWithin(sheet.merges, sheet);
      sheet.merges = merges;
      cut.push(...said);
      for (const figure of sheet.figures) {
        makeRoom(sheet, { col: figure.col ?? 0, row: figure.row ?? 0 });
        figure.col = Math.min(figure.col ?? 0, sheet.colNumber - 1);
        figure.row = Math.min(figure.row ?? 0, sheet.rowNumber - 1);
      }
    }
    for (const sheet of data.sheets) putCharts(sheet, kept.get(sheet.name)!.charts, data.sheets);
    data.namedRanges = Object.fromEntries(
      Object.entries(names.ranges).flatMap(([name, range]) => {
        const { sheetName, xc } = helpers.splitReference(range);
        const [present] = rangesWithin([xc], sized.get(sheetName!)!);
        if (present !== xc)
          cut.push(
            say`The name ${verbatim(name)} leads to ${verbatim(xc)}, far beyond the cells of its sheet: it was cut there.`,
          );
        return present === undefined ? [] : [[name, range.slice(0, range.length - xc.length) + present]];
      }),
    );
    for (const sheet of data.sheets) {
      const { words, protection } = kept.get(sheet.name)!;
      for (const rule of sheet.dataValidationRules) {
        rule.words = words.get(rule.ranges.join(" "));
        rule.criterion.values = rule.criterion.values.map(plainNumber);
      }
      for (const list of ["dataValidationRules", "conditionalFormats"])
        sheet[list] = sheet[list].flatMap((one: { ranges: string[] }) => {
          const ranges = rangesWithin(one.ranges, sheet);
          return ranges.length > 0 ? [{ ...one, ranges }] : [];
        });
      sheet.protection = protectionWithin(sheet, protection);
      const { xSplit = 0, ySplit = 0 } = sheet.panes ?? {};
      sheet.panes = { xSplit: xSplit < sheet.colNumber ? xSplit : 0, ySplit: ySplit < sheet.rowNumber ? ySplit : 0 };
    }
    if (mark) data.settings = settingsFor(mark);
    const model = new Model(data, settings);
    remarks.push(...cut);
    return model;
  };
  const { model, left } = withWhatGoes(parts.entries(), make);
  if (left.length > 0) remarks.push(say`The file's ${listed(left)} were left out: they could not be read.`);
  const { getters } = model;
  bringForward(model, front);
  const localNames = new Map(
    [...names.local].map(([sheet, local]) => [getters.getSheetIdByName(sheet)!, local] as const),
  );
  const lost = new Map([...names.lost].map(([sheet, list]) => [getters.getSheetIdByName(sheet)!, list] as const));
  if (names.dropped.length > 0)
    remarks.push(say`Names that are not one range of cells were left out: ${listed(names.dropped.map(verbatim))}.`);
  return { workbook: { model, localNames, lost }, remarks };
}

/** Rows in a closed group lose their own hidden mark: the group hides them, and opening the group shows them. */
const inGroups = (
  rows: Cells["rows"],
  groups: readonly { readonly isFolded: boolean; readonly start: number; readonly end: number }[],
): Cells["rows"] => {
  const closed = groups.filter(({ isFolded }) => isFolded);
  if (closed.length === 0) return rows;
  return Object.fromEntries(
    Object.entries(rows).map(([row, own]) => {
      const isIn = closed.some(({ start, end }) => start <= Number(row) && Number(row) <= end);
      return [row, isIn ? { ...own, isHidden: false } : own];
    }),
  );
};

/**
 * Opens the bytes of an .xlsx file in steps; each step gives the share of the work that is done. Refuses a file that cannot be read with a
 * sentence. `settings` are those of the engine.
 */
export function* opening(bytes: Uint8Array, usual?: DecimalMark, settings: object = {}): Generator<number, Opened> {
  try {
    return yield* read(bytes, usual, settings);
  } catch (error) {
    if (error instanceof WorkbookError)
      throw new WorkbookError(say`${error.said} The workbook on the page is as it was.`);
    throw new WorkbookError(
      say`The file could not be opened: something in it cannot be read. Open it in Excel or LibreOffice, save it anew as .xlsx, and try that. The workbook on the page is as it was.`,
    );
  }
}

/** Opens the bytes of an .xlsx file without a pause. */
export const openXlsx = (bytes: Uint8Array): Opened => atOnce(opening(bytes));
