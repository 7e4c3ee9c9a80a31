/**
 * Converts the cells of a sheet's part (ISO/IEC 29500-1, 18.3.1.4 and 18.3.1.73) to the data of the engine. The
 * engine's own reader takes a time that grows with the square of the rows, shifts text that looks like a reference
 * inside texts of shared formulas, and leaves out cells without an address.
 */
import { say, verbatim, type Message } from "../../../reduction/message";
import { helpers, links, tokenize } from "@odoo/o-spreadsheet";
import { boxOf, cellAddress } from "../../address";
import { UNIX_EPOCH } from "../../day-number";
import { LAST_COLUMN, LAST_ROW } from "../../rules/names";
import { WorkbookError } from "../../port";
import { damaged } from "../../file/zip";
import { typedText } from "../typing/text";
import { toZone, type Zone } from "../zones";
import { plainText, runsText } from "../../file/escapes";
import type { LightElement } from "../../file/light-xml";
import { all, child, childrenOf } from "../../file/xml";
import { RELATIONS } from "./namespaces";
import type { FileFormula, FileValue, FileValues } from "./values-of-file";

/**
 * The most blank cells that are made because their whole row or column has a look, or because a formula's answer covers
 * them.
 */
const MOST_COVERED = 1_000_000;

/** A style of the file: its positions in the lists of number formats and of borders, and from which number on it shows days, if it does. */
export interface FileStyle {
  /** True if it looks as the first style, which a cell without a style has: it may differ from it in its lock. */
  readonly isPlain: boolean;
  readonly format: number;
  readonly border: number;
  readonly dayFrom?: number;
}

export interface Surroundings {
  readonly sheet: string;
  readonly strings: readonly string[];
  readonly styles: readonly FileStyle[];
  /** What is added to a number that is shown as a day: 1462 if the file counts days from 1904, else 0. */
  readonly addedDays: number;
  /** Whether the engine takes one more formula without too much work, after the formulas that it has taken before. */
  readonly isLight: (text: string) => boolean;
  /** Converts the text of a formula in the file to the text that the engine has after "=". */
  readonly formula: (text: string) => string;
  readonly sheetNames: readonly string[];
  /** Targets of links out of the file, by their relationship. */
  readonly links: ReadonlyMap<string, string>;
}

/** The cells of a sheet in the form of the engine's data: by address, rows by number. */
export interface Cells {
  readonly cells: Record<string, string>;
  readonly styles: Record<string, number>;
  readonly formats: Record<string, number>;
  readonly borders: Record<string, number>;
  readonly rows: Record<number, { size?: number; isHidden?: boolean }>;
  readonly rowNumber: number;
  readonly colNumber: number;
  /**
   * Addresses of cells whose formulas only the engine's own reader understands: formulas of tables and of other files.
   */
  readonly left: ReadonlySet<string>;
  /** The number of cells whose day was counted from 1904 in the file. */
  readonly moved: number;
  readonly fileValues: FileValues;
  readonly remarks: readonly Message[];
}

/**
 * Gives each row and cell without an address the address that follows from its neighbours; refuses addresses that no
 * sheet has.
 */
export function numberCells(rows: readonly LightElement[], sheet: string): void {
  let row = 0;
  for (const line of rows) {
    const given = line.getAttribute("r");
    row = given === null ? row + 1 : Number(given);
    if (!Number.isInteger(row) || row < 1 || row > LAST_ROW)
      throw damaged(say`the sheet "${verbatim(sheet)}" has a row ${verbatim(String(given ?? row))}, and no sheet has`);
    if (given === null) line.setAttribute("r", String(row));
    let col = -1;
    for (const cell of childrenOf(line)) {
      if (cell.localName !== "c") continue;
      const address = cell.getAttribute("r");
      if (address === null) {
        cell.setAttribute("r", cellAddress(row - 1, ++col));
        continue;
      }
      const box = boxOf(address);
      if (!box || box.rows * box.cols !== 1 || box.row < 0 || box.row >= LAST_ROW || box.col >= LAST_COLUMN)
        throw damaged(say`the sheet "${verbatim(sheet)}" has a cell ${verbatim(address)}, and no sheet has`);
      col = box.col;
      if (!/^[A-Z]+\d+$/.test(address)) cell.setAttribute("r", cellAddress(box.row, box.col));
    }
  }
}

const SHIFTED = /^((?:.*!)?)(\$?)([A-Za-z]{1,3})?(\$?)(\d+)?$/s;

/** A reference in a shared formula, as it is in a cell `rows` lower and `cols` to the right. */
function shiftedReference(reference: string, rows: number, cols: number): string {
  const found = SHIFTED.exec(reference);
  if (!found) return reference;
  const [, sheet = "", fixedCol = "", letters, fixedRow = "", digits] = found;
  // In a whole column or row: the "$" of a row without column is matched as the one of the column.
  const isRowFixed = letters === undefined ? fixedCol : fixedRow;
  const col = letters === undefined ? undefined : helpers.lettersToNumber(letters.toUpperCase());
  const movedCol = col === undefined || fixedCol ? col : (col + cols + LAST_COLUMN) % LAST_COLUMN;
  const row = digits === undefined ? undefined : Number(digits) - 1;
  const movedRow = row === undefined || isRowFixed ? row : (row + rows + LAST_ROW) % LAST_ROW;
  return [
    sheet,
    letters === undefined ? "" : fixedCol + helpers.numberToLetters(movedCol!),
    digits === undefined ? "" : isRowFixed + (movedRow! + 1),
  ].join("");
}

const COLUMN_OR_ROW = /^\$?(?:[A-Za-z]{1,3}|\d{1,7})$/;

/** A formula (without "="), as it is in a cell `rows` lower and `cols` to the right. */
export function shifted(formula: string, rows: number, cols: number): string {
  const tokens = tokenize(`=${formula}`).slice(1);
  const isColon = (at: number): boolean => tokens[at]?.value === ":";
  return tokens
    .map(({ type, value }, i) => {
      // LOG10( looks like a cell, and A:B like two names.
      const isCell = type === "REFERENCE" && tokens[i + 1]?.type !== "LEFT_PAREN";
      const isLine = COLUMN_OR_ROW.test(value) && (isColon(i - 1) || isColon(i + 1));
      return isCell || isLine ? shiftedReference(value, rows, cols) : value;
    })
    .join("");
}

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const DAY = 86_400_000;

/** The day number of a date in the form of Strict Open XML: "2024-01-31T12:00:00". */
function dayNumber(text: string): number {
  const isTimeOnly = /^\d\d:/.test(text);
  const time = Date.parse(
    `${isTimeOnly ? `1970-01-01T${text}` : text}${/Z$|^[^T]*$/.test(text) && !isTimeOnly ? "" : "Z"}`,
  );
  return isTimeOnly ? time / DAY : time / DAY + UNIX_EPOCH;
}

/** The typed content of a cell without a formula. */
function constant(cell: LightElement, { sheet, strings }: Surroundings): string {
  const at = cell.getAttribute("r")!;
  const type = cell.getAttribute("t") ?? "n";
  if (type === "inlineStr") return typedText(runsText(child(cell, "is") ?? cell));
  const value = child(cell, "v")?.textContent;
  if (value == null) return "";
  const refused = (what: Message): WorkbookError =>
    damaged(say`the cell ${verbatim(at)} of the sheet "${verbatim(sheet)}" ${what}`);
  switch (type) {
    case "s": {
      const text = strings[Number(value)];
      if (text === undefined)
        throw refused(
          say`shows text ${verbatim(value.trim())} of the file, which has ${strings.length} texts counted from 0`,
        );
      return typedText(text);
    }
    case "str":
      return typedText(plainText(value));
    case "b":
      return /^\s*(?:1|true)\s*$/i.test(value) ? "TRUE" : "FALSE";
    case "e":
      return plainText(value).trim();
    case "d": {
      const day = dayNumber(value.trim());
      if (Number.isNaN(day)) throw refused(say`holds "${verbatim(value)}" as a date`);
      return String(day);
    }
    case "n": {
      const text = value.trim();
      if (text === "") return "";
      if (!NUMBER.test(text)) throw refused(say`holds "${verbatim(text)}" as a number`);
      if (!Number.isFinite(Number(text)))
        throw refused(say`holds ${verbatim(text)}, and no number is larger than 1.8E+308`);
      return String(Number(text));
    }
    default:
      throw refused(say`is of an unknown kind "${verbatim(type)}"`);
  }
}

/** Targets outside the file to which a link is kept: a page, or a mail address. */
const SAFE = /^(?:https?:\/\/|mailto:)/i;

/** The target of a cell's link in the form of the engine; undefined if the link is not kept. */
function linkTarget(link: Element, { links: targets, sheetNames }: Surroundings): string | undefined {
  const target = targets.get(link.getAttributeNS(RELATIONS, "id") ?? "");
  if (target !== undefined) return SAFE.test(target) ? target : undefined;
  const { sheetName } = helpers.splitReference(link.getAttribute("location") ?? "");
  return sheetName !== undefined && sheetNames.includes(sheetName) ? `o-spreadsheet://${sheetName}` : undefined;
}

/** A point is four thirds of a pixel. */
const toPixels = (points: number): number => Math.round((points / 0.75) * 100) / 100;
/**
 * Row heights that our files, or the export of the engine, write for rows of the usual height: these rows get the
 * engine's usual height.
 */
const OWN_HEIGHTS = [13.5, 17.25];
/** Height of a row in points if the file gives none. */
const USUAL_HEIGHT = 12.75;

const CONSTANT = /^(?:TRUE\(\)|FALSE\(\)|#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!))$/i;

/** The engine's time for new formulas grows with the square of their operators: about 7 s for this many. */
const MOST_WORK = 2e7;
/** A formula of at most this many characters is not examined. */
const SHORT = 1000;

/**
 * Tells whether the engine may take one more formula; a formula that differs from an earlier one only in its cells and texts
 * costs nothing more.
 */
export function workLimit(): (formula: string) => boolean {
  const known = new Set<string>();
  let work = 0;
  return (formula) => {
    if (formula.length <= SHORT) return true;
    const code = formula.replace(/"[^"]*"/g, '""');
    const form = code.replace(/\$?[A-Z]{1,3}\$?\d+/gi, "#");
    if (known.has(form)) return true;
    const operators = code.replace(/[^-+*/^&=<>,;(%]/g, "").length;
    if (work + operators ** 2 > MOST_WORK) return false;
    work += operators ** 2;
    known.add(form);
    return true;
  };
}

/** A sheet with at least this many rows gets no blank columns beside its own. */
const TALL = 20_000;

interface Shared {
  readonly row: number;
  readonly col: number;
  readonly formula: string;
}

type Looks = Pick<Cells, "styles" | "formats" | "borders">;

/** What was read of a sheet so far. */
class Sheet {
  readonly cells: Record<string, string> = {};
  readonly looks: Looks = { styles: {}, formats: {}, borders: {} };
  /** The cells of the file, which have their own look, and those to which their row or column has given one. */
  readonly looked = new Set<string>();
  readonly rows: Cells["rows"] = {};
  readonly left = new Set<string>();
  /** The first formula of each shared one. */
  readonly shared = new Map<string, Shared>();
  /** Zones covered by the array of their first cell: their content is its answer. */
  readonly answers: Zone[] = [];
  /** Those of them that are of several cells. */
  readonly fills: Zone[] = [];
  /** How many rows and columns have cells. */
  lastRow = 0;
  lastCol = 0;
  /** How many days of the file were moved to the count from 1900. */
  moved = 0;
  /** How many things of each kind were not read. */
  readonly lost = { looks: 0, formulas: 0, heavy: 0, links: 0 };
  /** The values of formulas, and of the cells that these fill, by address. */
  readonly fileValues = { formulas: new Map<string, FileFormula>(), filled: new Map<string, FileValue>() };

  constructor(readonly about: Surroundings) {}

  /** Gives a cell the look with a number in the file, unless it has one. A cell of a plain look has none here, so that it is not stored. */
  look(at: string, index: number): void {
    if (this.looked.has(at)) return;
    this.looked.add(at);
    if (index === 0) return;
    const style = this.about.styles[index];
    if (style === undefined) this.lost.looks++;
    if (style === undefined || style.isPlain) return;
    this.looks.styles[at] = index + 1;
    this.looks.formats[at] = style.format + 1;
    this.looks.borders[at] = style.border + 1;
  }

  /** The number of rows and columns that the engine gets. It visits every position: a tall sheet is not made wider than it is. */
  get size(): Pick<Cells, "rowNumber" | "colNumber"> {
    const { lastRow, lastCol } = this;
    return {
      colNumber: Math.min(LAST_COLUMN, lastRow > TALL ? Math.max(lastCol + 1, 8) : Math.max(lastCol + 5, 30)),
      rowNumber: Math.min(LAST_ROW, Math.max(lastRow + 5, 100)),
    };
  }
}

/** The formula of a cell, without "="; undefined if the cell keeps its value. */
function formulaOf(sheet: Sheet, cell: LightElement, row: number, col: number): string | undefined {
  const element = child(cell, "f");
  if (!element) return undefined;
  const { about, shared, answers, lost } = sheet;
  const text = plainText(element.textContent).trim();
  const index = element.getAttribute("t") === "shared" ? element.getAttribute("si") : null;
  const ref = element.getAttribute("ref");
  // LibreOffice writes a constant that is TRUE, FALSE or an error as a formula.
  if (CONSTANT.test(text) && ref === null) return undefined;
  if (text !== "") {
    if (!about.isLight(text)) {
      lost.heavy++;
      return undefined;
    }
    const formula = about.formula(text);
    if (index !== null) shared.set(index, { row, col, formula });
    else if (ref !== null && boxOf(ref)) answers.push(toZone(boxOf(ref)!));
    return formula;
  }
  if (index === null) return undefined;
  const first = shared.get(index);
  if (first) return shifted(first.formula, row - first.row, col - first.col);
  lost.formulas++;
  return undefined;
}

/** The number of a day in the count from 1900; other contents are as they were. */
function inDaysFrom1900(sheet: Sheet, cell: LightElement, content: string): string {
  const { addedDays, styles } = sheet.about;
  const isNumber = (cell.getAttribute("t") ?? "n") === "n";
  const { dayFrom = Infinity } = styles[Number(cell.getAttribute("s") ?? 0)] ?? {};
  if (addedDays === 0 || !isNumber || !(Number(content) >= dayFrom)) return content;
  sheet.moved++;
  return String(Number(content) + addedDays);
}

/** The value of a cell as the file holds it; undefined if it holds none. */
function fileValue({ about }: Sheet, cell: LightElement): FileValue | undefined {
  const kind = cell.getAttribute("t") ?? "n";
  const text = child(cell, "v")?.textContent;
  if (text == null) return kind === "str" ? { kind, text: "" } : undefined;
  return kind === "s"
    ? { kind: "str", text: about.strings[Number(text)] ?? "" }
    : { kind, text: plainText(kind === "str" ? text : text.trim()) };
}

/** The cells that the answer of a cell's formula fills, if it is a formula of arrays. */
function filledBy(cell: LightElement): Zone | undefined {
  const element = child(cell, "f");
  const box = element?.getAttribute("t") === "array" ? boxOf(element.getAttribute("ref") ?? "") : undefined;
  return box && toZone(box);
}

const isWithin = ({ left, right, top, bottom }: Zone, row: number, col: number): boolean =>
  row >= top && row <= bottom && col >= left && col <= right;

/** Reads the content of a cell; `link` is the element of its hyperlink. */
function readContent(sheet: Sheet, cell: LightElement, row: number, col: number, link: Element | undefined): void {
  const at = cell.getAttribute("r")!;
  const formula = formulaOf(sheet, cell, row, col);
  if (formula !== undefined) {
    if (formula.includes("[")) sheet.left.add(at);
    const fills = filledBy(cell);
    if (fills && (fills.right > fills.left || fills.bottom > fills.top)) sheet.fills.push(fills);
    sheet.fileValues.formulas.set(at, { ...fileValue(sheet, cell), fills });
    sheet.cells[at] = `=${formula}`;
    return;
  }
  if (sheet.fills.some((zone) => isWithin(zone, row, col))) {
    const value = fileValue(sheet, cell);
    if (value) sheet.fileValues.filled.set(at, value);
  }
  const content = constant(cell, sheet.about);
  if (content === "") return;
  const target = link && linkTarget(link, sheet.about);
  const isWords = /^(?:s|str|inlineStr)$/.test(cell.getAttribute("t") ?? "");
  if (link && (target === undefined || !isWords)) sheet.lost.links++;
  sheet.cells[at] =
    target !== undefined && isWords
      ? links.markdownLink(content.replace(/^'/, ""), target)
      : inDaysFrom1900(sheet, cell, content);
}

/** The number of rows read in a step. */
const IN_A_STEP = 500;

/** Reads the rows with their cells in steps; each gives the number of rows read. */
function* readRows(document: Document, lines: readonly LightElement[], sheet: Sheet): Generator<number, void> {
  const hyperlinks = new Map(all(document, "hyperlink").map((link) => [link.getAttribute("ref") ?? "", link]));
  let count = 0;
  for (const line of lines) {
    const row = Number(line.getAttribute("r")) - 1;
    const height = line.getAttribute("ht");
    const isHidden = /^(?:1|true)$/.test(line.getAttribute("hidden") ?? "");
    if (height !== null || isHidden)
      sheet.rows[row] = { ...(height !== null && { size: toPixels(Number(height)) }), ...(isHidden && { isHidden }) };
    for (const cell of childrenOf(line)) {
      if (cell.localName !== "c") continue;
      const at = cell.getAttribute("r")!;
      if (sheet.looked.has(at))
        throw damaged(say`the sheet "${verbatim(sheet.about.sheet)}" has two cells ${verbatim(at)}`);
      const col = helpers.lettersToNumber(at.replace(/\d+$/, ""));
      sheet.look(at, Number(cell.getAttribute("s") ?? 0));
      sheet.lastRow = Math.max(sheet.lastRow, row + 1);
      sheet.lastCol = Math.max(sheet.lastCol, col + 1);
      readContent(sheet, cell, row, col, hyperlinks.get(at));
    }
    if (++count % IN_A_STEP === 0) yield count;
  }
}

type Cover = (zone: Zone, each: (at: string) => void) => boolean;

/** Visits the cells of zones within the size; false once they are more than MOST_COVERED in all. */
function coverWithin({ rowNumber, colNumber }: Sheet["size"]): Cover {
  let covered = 0;
  return ({ left, right, top, bottom }, each) => {
    const zone = { left, top, right: Math.min(right, colNumber - 1), bottom: Math.min(bottom, rowNumber - 1) };
    covered += Math.max(0, zone.right - zone.left + 1) * Math.max(0, zone.bottom - zone.top + 1);
    if (covered > MOST_COVERED) return false;
    for (let row = zone.top; row <= zone.bottom; row++)
      for (let col = zone.left; col <= zone.right; col++) each(cellAddress(row, col));
    return true;
  };
}

/** Empties the cells that the answer of a formula covers. */
function emptyAnswers({ about, cells, answers }: Sheet, cover: Cover): void {
  for (const zone of answers) {
    const first = cellAddress(zone.top, zone.left);
    const isDone = cover(zone, (at) => {
      if (at !== first) delete cells[at];
    });
    if (!isDone)
      throw new WorkbookError(
        say`The formulas of the sheet "${verbatim(about.sheet)}" are said to fill more than ${MOST_COVERED} cells, which is too many to open here: choose smaller ranges for them in Excel.`,
      );
  }
}

/** Gives the looks of whole rows and columns to their cells; false if they are too many, so that the others were left out. */
function spreadLooks(document: Document, lines: readonly LightElement[], sheet: Sheet, cover: Cover): boolean {
  const { rowNumber, colNumber } = sheet.size;
  let isKept = true;
  const spread = (element: Pick<Element, "getAttribute">, name: string, zone: Zone): void => {
    const style = Number(element.getAttribute(name) ?? 0);
    if (style > 0 && isKept) isKept = cover(zone, (at) => sheet.look(at, style));
  };
  for (const line of lines) {
    // The look of a row without cells, such as a row for readings, is not stored for each of its cells.
    if (!line.firstElementChild) continue;
    const row = Number(line.getAttribute("r")) - 1;
    spread(line, "s", { top: row, bottom: row, left: 0, right: colNumber - 1 });
  }
  for (const column of all(document, "col"))
    spread(column, "style", {
      ...{ left: Number(column.getAttribute("min")) - 1, right: Number(column.getAttribute("max")) - 1 },
      ...{ top: 0, bottom: rowNumber - 1 },
    });
  return isKept;
}

/** Gives the rows without a height the usual one of the sheet, unless it is that of our own files. */
function giveHeights(document: Document, { rows, lastRow }: Sheet): void {
  const given = child(document.documentElement, "sheetFormatPr")?.getAttribute("defaultRowHeight");
  const usual = given == null ? USUAL_HEIGHT : Number(given);
  if (!OWN_HEIGHTS.includes(usual) && usual > 0)
    for (let row = 0; row < Math.max(100, lastRow); row++) rows[row] = { size: toPixels(usual), ...rows[row] };
}

/** What is said of the things that were not read. */
function remarksOn({ about, lost }: Sheet, areLooksKept: boolean): Message[] {
  const sheet = verbatim(about.sheet);
  return [
    ...(lost.looks > 0
      ? [say`The look of ${lost.looks} cells of "${sheet}" is not in the file: they look plain here.`]
      : []),
    ...(areLooksKept
      ? []
      : [say`The look of blank cells in whole rows and columns of "${sheet}" was left out: they are too many.`]),
    ...(lost.formulas > 0
      ? [
          say`${lost.formulas} formulas of "${sheet}" are not in the file, only their values: the cells hold these as constants.`,
        ]
      : []),
    ...(lost.heavy > 0
      ? [
          say`${lost.heavy} formulas of "${sheet}" have too many operators for the sheet on this page: their cells hold the values as constants. Split them in Excel.`,
        ]
      : []),
    ...(lost.links > 0
      ? [
          say`${lost.links} links of "${sheet}" were left out: only texts can have one here, to a web page, a mail address or a sheet.`,
        ]
      : []),
  ];
}

/** Reads the cells of a sheet in steps; each step gives the number of rows read. All rows and cells have addresses by now. */
export function* readCells(
  document: Document,
  lines: readonly LightElement[],
  about: Surroundings,
): Generator<number, Cells> {
  const sheet = new Sheet(about);
  yield* readRows(document, lines, sheet);
  const { size } = sheet;
  const cover = coverWithin(size);
  emptyAnswers(sheet, cover);
  const areLooksKept = spreadLooks(document, lines, sheet, cover);
  giveHeights(document, sheet);
  const { cells, looks, rows, left, moved, fileValues } = sheet;
  return {
    cells,
    ...looks,
    rows,
    ...size,
    left,
    moved,
    fileValues,
    remarks: remarksOn(sheet, areLooksKept),
  };
}
