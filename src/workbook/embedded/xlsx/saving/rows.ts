/**
 * Writes the rows of a sheet as the text of its part (ISO/IEC 29500-1, 18.3.1.73): each cell with its style, its
 * formula and its value.
 */
import { DEFAULT_LOCALE, helpers, links } from "@odoo/o-spreadsheet";
import type { Model } from "../../engine";
import { formulaAt } from "../../typing/locale";
import type { Rename } from "../../names";
import { bareValue, TEXT_FORMAT } from "../../typing/text";
import { addressOf, type Zone } from "../../zones";
import { heldText } from "../../../file/escapes";
import { textInXml } from "../../../file/xml";
import { isUnknown } from "../../../cell-error";
import { toFileFormula } from "../formula";
import { MAIN } from "../namespaces";
import { evaluationOf } from "../../evaluation/plugin";
import type { FileValue } from "../values-of-file";
import { colOf, placeOf, rowOf, type Answered, type RowLook, type TakenSheet } from "./taken";

const ERRORS_IN_FILE: Readonly<Record<string, string>> = {
  "#REF": "#REF!",
  "#CYCLE": "#REF!",
  "#BAD_EXPR": "#VALUE!",
  "#ERROR": "#VALUE!",
  "#BUSY!": "#N/A",
  // Excel itself writes this one as #VALUE!, with a mark beside it (from memory): files have eight errors only.
  "#SPILL!": "#VALUE!",
  "#CALC!": "#VALUE!",
};

/** The height in pixels of a row for which the file gives none; then the points per pixel. */
const USUAL_HEIGHT = 23;
const POINTS = 0.75;

/** Rows are written at a time until they have so many cells; each row counts as one more. */
const AT_ONCE = 500;
/** Unlocked zones of at least this width, and those that reach the end of the sheet, are written as whole rows; others as cells. */
const WIDE = 40;
const isWide = ({ left, right }: Zone, { model, sheetId }: RowSource): boolean =>
  right - left >= WIDE || right >= model.getters.getNumberCols(sheetId) - 1;

/** The texts that cells share, in the order of their first use. */
export class SharedStrings {
  readonly #numbers = new Map<string, number>();

  numberOf(text: string): number {
    let number = this.#numbers.get(text);
    if (number === undefined) {
      number = this.#numbers.size;
      this.#numbers.set(text, number);
    }
    return number;
  }

  /** The text of the part of the file, in pieces. */
  *written(): Generator<string> {
    const count = this.#numbers.size;
    yield `<sst xmlns="${MAIN}" count="${count}" uniqueCount="${count}">`;
    let piece = "";
    for (const text of this.#numbers.keys()) {
      const space = text.trim() === text ? "" : ' xml:space="preserve"';
      piece += `<si><t${space}>${textInXml(heldText(text))}</t></si>`;
      if (piece.length < LONG) continue;
      yield piece;
      piece = "";
    }
    yield `${piece}</sst>`;
  }
}

/** The number of characters of a piece. */
const LONG = 100_000;

/** The data from which the rows of one sheet are written. */
export interface RowSource {
  readonly model: Model;
  readonly sheetId: string;
  readonly taken: TakenSheet;
  readonly answered: Answered;
  readonly rename: Rename;
  readonly strings: SharedStrings;
  /** Cells that stay unlocked under protection. */
  readonly open: readonly Zone[];
  /** Called for each formula with a function or a name that the engine does not know. */
  readonly onUnknown: () => void;
  /** The value of the file for a cell that the engine cannot calculate, as long as it holds. */
  readonly fileValue: (place: { sheetId: string; col: number; row: number }) => FileValue | undefined;
  /** True if each formula is written as the value that it shows. */
  readonly asValues: boolean;
  /** Returns the number of the same style unlocked. */
  readonly opened: (style: number) => number;
}

interface Constant {
  readonly isFormula: false;
  readonly content: string;
  readonly format?: string;
}

type Held = Constant | { readonly isFormula: true };

const isIn = ({ left, right, top, bottom }: Zone, row: number, col: number): boolean =>
  row >= top && row <= bottom && col >= left && col <= right;

/** The kind of cell and the content for a value that a cell shows. */
function shown(value: unknown): { kind: string; content: string } {
  const isError = typeof value === "string" && helpers.isEvaluationError(value);
  const kind = isError ? "e" : typeof value === "number" ? "n" : typeof value === "boolean" ? "b" : "str";
  const content = isError ? (ERRORS_IN_FILE[value] ?? value) : typeof value === "boolean" ? Number(value) : value;
  return { kind, content: `<v>${textInXml(heldText(String(content ?? "")))}</v>` };
}

/** The cells into which a formula spills. If the result begins with an error, the engine reports one cell only. */
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

/**
 * The cells of a sheet by place: cells with a content, cells with a style, open cells that no whole row makes open, and cells that another
 * formula spills into (true).
 */
function cellsOf(source: RowSource): Map<number, Held | true | undefined> {
  const { model, sheetId, taken, open } = source;
  const { getters } = model;
  const cells = new Map<number, Held | true | undefined>();
  for (const place of taken.looks.keys()) cells.set(place, undefined);
  for (const { left, right, top, bottom } of open.filter((zone) => !isWide(zone, source)))
    for (let row = top; row <= bottom; row++)
      for (let col = left; col <= right; col++) cells.set(placeOf(row, col), undefined);
  const held = getters.getCells(sheetId).filter((one) => one.isFormula || one.content !== "");
  for (const one of held) {
    const { row, col } = getters.getCellPosition(one.id);
    cells.set(placeOf(row, col), one);
  }
  for (const one of held) {
    if (!one.isFormula) continue;
    const position = getters.getCellPosition(one.id);
    const spill = getters.isInMerge(position) ? undefined : spillOf(model, position);
    if (!spill) continue;
    for (let row = spill.top; row <= spill.bottom; row++)
      for (let col = spill.left; col <= spill.right; col++) {
        const place = placeOf(row, col);
        const isValue = cells.has(place) || getters.getEvaluatedCell({ sheetId, row, col }).value != null;
        if (isValue && typeof cells.get(place) !== "object") cells.set(place, true);
      }
  }
  return cells;
}

/** The kind of cell and the content for a constant. */
function constant({ content, format }: Constant, place: number, { model, sheetId, taken, strings }: RowSource) {
  const position = { sheetId, row: rowOf(place), col: colOf(place) };
  const isText = format === TEXT_FORMAT || taken.texts.some((zone) => isIn(zone, position.row, position.col));
  const asText = (text: string) => ({ kind: "s", content: `<v>${strings.numberOf(text)}</v>` });
  if (isText) return asText(format === TEXT_FORMAT ? bareValue(content) : content.replace(/^'/, ""));
  if (helpers.isEvaluationError(content)) return shown(model.getters.getEvaluatedCell(position).value);
  const word = content.trim().toUpperCase();
  if (word === "TRUE" || word === "FALSE") return shown(word === "TRUE");
  if (helpers.isNumber(content, DEFAULT_LOCALE)) {
    const number = Number(content);
    return shown(Number.isFinite(number) ? number : model.getters.getEvaluatedCell(position).value);
  }
  if (content.startsWith("[") && links.isMarkdownLink(content)) return asText(links.parseMarkdownLink(content).label);
  return asText(content.replace(/^'/, ""));
}

/** The value of a cell with an answer: that of the file, as long as it holds, if the engine cannot calculate the answer. */
function valueOf(
  position: { sheetId: string; col: number; row: number },
  { model, onUnknown, fileValue }: RowSource,
): ReturnType<typeof shown> {
  const { value } = model.getters.getEvaluatedCell(position);
  if (!isUnknown(value)) return shown(value);
  onUnknown();
  const { kind, text } = fileValue(position) ?? { kind: "e", text: "#NAME?" };
  return { kind, content: `<v>${textInXml(heldText(text))}</v>` };
}

/**
 * Whether the engine exports the formula itself. Of a formula with a function that Excel does not have, it exports the value, and a
 * text such as "=1" would be taken for the formula.
 */
function isExportable({ getters }: Model, position: { sheetId: string; col: number; row: number }): boolean {
  const cell = getters.getCell(position);
  return !!cell?.isFormula && cell.compiledFormula.areAllFunctionsExportableToExcel();
}

/** A formula with its value. Excel allows no array in merged cells; formulas there return one value. */
function formula(place: number, source: RowSource) {
  const { model, sheetId, taken, answered, rename } = source;
  const { getters } = model;
  const position = { sheetId, row: rowOf(place), col: colOf(place) };
  const content = formulaAt(getters, position).slice(1);
  const formulaOfEngine = taken.formulas.get(place) ?? "";
  const isItself = formulaOfEngine === `=${content}` || isExportable(model, position);
  const exported = isItself ? answered.formula.get(formulaOfEngine) : undefined;
  const text = textInXml(heldText(toFileFormula(content, exported, rename)));
  const value = valueOf(position, source);
  const isArray = evaluationOf(model).isArrayFormula(position) ?? exported !== undefined;
  if (!isArray || getters.isInMerge(position))
    return { ...value, content: `<f>${text}</f>${value.content}`, isArray: false };
  const ref = addressOf(spillOf(model, position) ?? { left: position.col, right: position.col, top: position.row, bottom: position.row }); // prettier-ignore
  return { ...value, content: `<f t="array" ref="${ref}">${text}</f>${value.content}`, isArray: true };
}

function cellText(place: number, held: Held | true | undefined, source: RowSource): string {
  const { taken, answered, open, opened, model, sheetId } = source;
  const [row, col] = [rowOf(place), colOf(place)];
  const look = taken.looks.get(place);
  const style = look === undefined ? 0 : (answered.style.get(taken.styleAt[look]!) ?? 0);
  const isOpen = open.some((zone) => isIn(zone, row, col));
  const number = isOpen ? opened(style) : style;
  const start = `<c r="${helpers.toXC(col, row)}"${number > 0 ? ` s="${number}"` : ""}`;
  if (held === undefined) return `${start}/>`;
  if (held === true || (held.isFormula && source.asValues)) {
    const { value } = model.getters.getEvaluatedCell({ sheetId, row, col });
    if (source.asValues && (value === null || value === "")) return `${start}/>`;
    const { kind, content } = valueOf({ sheetId, row, col }, source);
    return `${start} t="${kind}">${content}</c>`;
  }
  if (!held.isFormula) {
    const { kind, content } = constant(held, place, source);
    return `${start} t="${kind}">${content}</c>`;
  }
  const { kind, content, isArray } = formula(place, source);
  return `${start}${isArray ? ' cm="1"' : ""} t="${kind}">${content}</c>`;
}

const points = (size: number): number => Math.round(POINTS * size * 100) / 100;

/** The highest row in points, and the most levels of groups (Microsoft, "Excel specifications and limits"; ISO/IEC 29500-1, 18.3.1.73). */
const HIGHEST = 409.5;
export const DEEPEST = 7;

const rowAttributes = ({ size, isHidden, outlineLevel, collapsed }: RowLook): string =>
  [
    size && size !== USUAL_HEIGHT ? ` ht="${Math.min(points(size), HIGHEST)}" customHeight="1"` : "",
    isHidden ? ' hidden="1"' : "",
    outlineLevel ? ` outlineLevel="${Math.min(outlineLevel, DEEPEST)}"` : "",
    collapsed ? ' collapsed="1"' : "",
  ].join("");

/** The heights in points of the rows for which the sheet gives one; 0 for a hidden row. */
export const heightsOf = ({ rows }: TakenSheet): Map<number, number> =>
  new Map(
    Object.entries(rows).flatMap(([row, { size, isHidden }]): [number, number][] =>
      isHidden ? [[Number(row), 0]] : size && size !== USUAL_HEIGHT ? [[Number(row), points(size)]] : [],
    ),
  );

/**
 * The locked cells without content and look of a row that the file makes open as a whole: they are written for their lock, up to the last
 * column that the sheet uses. Of a row with open cells only, those to the right of them are left out, which would be thousands on a data
 * sheet: they are open in the file.
 */
function lockedBeside(
  held: readonly [number, unknown][],
  row: number,
  width: number,
  { open }: RowSource,
): [number, undefined][] {
  const there = new Set(held.map(([place]) => colOf(place)));
  const zones = open.filter(({ top, bottom }) => row >= top && row <= bottom);
  const end = held.length > 0 ? width : zones.reduce((most, { right }) => Math.max(most, right + 1), 0);
  return Array.from({ length: end }, (_, col) => col)
    .filter((col) => !there.has(col) && !zones.some((zone) => isIn(zone, row, col)))
    .map((col) => [placeOf(row, col), undefined]);
}

/** The rows in pieces, each with the number of rows written so far, and the number of all rows. */
export function* writtenRows(source: RowSource): Generator<{ text: string; done: number; of: number }> {
  const { taken, open, opened } = source;
  const rows = new Map<number, [number, Held | true | undefined][]>();
  let width = 0;
  for (const [place, held] of cellsOf(source)) {
    width = Math.max(width, colOf(place) + 1);
    const row = rows.get(rowOf(place));
    if (row) row.push([place, held]);
    else rows.set(rowOf(place), [[place, held]]);
  }
  for (const [row, look] of Object.entries(taken.rows))
    if (rowAttributes(look) !== "" && !rows.has(Number(row))) rows.set(Number(row), []);
  const whole = open.filter((zone) => isWide(zone, source));
  const isWhole = (row: number): boolean => whole.some(({ top, bottom }) => row >= top && row <= bottom);
  for (const { top, bottom } of whole) for (let row = top; row <= bottom; row++) if (!rows.has(row)) rows.set(row, []);
  const order = [...rows.keys()].sort((a, b) => a - b);
  let text = "";
  let count = 0;
  yield { text, done: 0, of: Math.max(order.length, 1) };
  for (const [at, row] of order.entries()) {
    const isOpen = isWhole(row);
    const held = rows.get(row)!;
    const cells = (isOpen ? [...held, ...lockedBeside(held, row, width, source)] : held).sort(([a], [b]) => a - b);
    const look = rowAttributes(taken.rows[row] ?? {}) + (isOpen ? ` s="${opened(0)}" customFormat="1"` : "");
    text += `<row r="${row + 1}"${look}>${cells.map(([place, held]) => cellText(place, held, source)).join("")}</row>`;
    count += 1 + cells.length;
    if (count < AT_ONCE && at < order.length - 1) continue;
    yield { text, done: at + 1, of: order.length };
    [text, count] = ["", 0];
  }
}
