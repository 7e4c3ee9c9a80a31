/**
 * A small workbook in memory, as data: the contents of its cells, and the names, hidden rows and protection of its
 * sheets.
 */
import { boxOf, cellAddress, columnLetters, columnNumber } from "../../src/workbook/address";
import { LAST_COLUMN, LAST_ROW } from "../../src/workbook/rules/names";
import type { Box, CellPlan, CellValue, ChartPlan, EntryRule, SheetPlan } from "../../src/workbook/port";

/** A cell with content or a look. A formula has the value that a test gives it. */
export interface Cell extends Partial<Omit<CellPlan, "row" | "col">> {
  readonly value: CellValue;
  /** "=wet-ring": with names as in the plan. */
  readonly formula?: string;
  readonly isInput?: boolean;
}

/** The target of a name: a box, several boxes, or none. */
export type Place = Box | readonly Box[] | "lost";

export interface Sheet {
  name: string;
  /** Cells by address, "B4". */
  cells: Map<string, Cell>;
  names: Map<string, Place>;
  open: readonly Box[];
  hiddenRows: number[];
  hiddenCols: number[];
  isHidden: boolean;
  /** True if only a program can bring the sheet into sight. */
  isVeryHidden?: boolean;
  protection: "none" | "without password" | "with password";
  merges: readonly Box[];
  entries: readonly EntryRule[];
  columnWidths: Readonly<Record<number, number>>;
  rowHeights: Readonly<Record<number, number>>;
  freezeRows: number;
  charts: readonly ChartPlan[];
  paper?: "A4" | "Letter";
  footer?: string;
}

export interface Workbook {
  sheets: Sheet[];
  /** Names of the workbook. */
  names: Map<string, { readonly sheet: string; readonly place: Place }>;
  front: string;
  /** Selected blocks of the sheet in front, or a chart on it. */
  selected: readonly Box[] | "a chart";
  isStructureProtected: boolean;
}

export const blankSheet = (name: string): Sheet => ({
  name,
  cells: new Map(),
  names: new Map(),
  open: [],
  hiddenRows: [],
  hiddenCols: [],
  isHidden: false,
  protection: "none",
  merges: [],
  entries: [],
  columnWidths: {},
  rowHeights: {},
  freezeRows: 0,
  charts: [],
});

export const newWorkbook = (): Workbook => ({
  sheets: [blankSheet("Sheet1")],
  names: new Map(),
  front: "Sheet1",
  selected: [{ row: 0, col: 0, rows: 1, cols: 1 }],
  isStructureProtected: false,
});

const TEXT_OR_NAME = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_][\w.]*)\}/g;
const withNames = (formula: string): string => formula.replace(TEXT_OR_NAME, (whole, name?: string) => name ?? whole);

export function sheetOf(plan: SheetPlan, name: string): Sheet {
  const { merges, entries = [], columnWidths, rowHeights = {}, freezeRows, charts = [], open = [] } = plan;
  const cells = plan.cells.map(({ row, col, value = "", formula, ...look }): [string, Cell] => [
    cellAddress(row, col),
    { ...look, value, ...(formula !== undefined && { formula: withNames(formula) }), isInput: look.kind === "input" },
  ]);
  return {
    ...blankSheet(name),
    ...{ merges, entries, columnWidths, rowHeights, freezeRows, charts, open },
    ...{ cells: new Map(cells), names: new Map(Object.entries(plan.names)) },
    protection: plan.isProtected ? "without password" : "none",
    ...(plan.paper && { paper: plan.paper }),
    ...(plan.footer && { footer: plan.footer }),
  };
}

const isIn = ({ row, col, rows, cols }: Box, ofRow: number, ofCol: number): boolean =>
  ofRow >= row && ofRow < row + rows && ofCol >= col && ofCol < col + cols;

export const rulesAt = ({ entries }: Sheet, row: number, col: number): EntryRule[] =>
  entries.filter(({ box }) => isIn(box, row, col));

export const mayWrite = ({ protection, open, cells }: Sheet, row: number, col: number): boolean =>
  protection === "none" ||
  Boolean(cells.get(cellAddress(row, col))?.isInput) ||
  open.some((box) => isIn(box, row, col));

/** A value for each cell of a box, by its address, row by row. */
function mapBox<T>({ row, col, rows, cols }: Box, of: (address: string) => T): T[][] {
  // Loops, because the tests of the pane read millions of cells: test/pane/screens/readings takes 10 s and not 13 s.
  const letters = Array.from({ length: cols }, (_, right) => columnLetters(col + right));
  const lines: T[][] = [];
  for (let down = 1; down <= rows; down++) {
    const line: T[] = [];
    for (const column of letters) line.push(of(`${column}${row + down}`));
    lines.push(line);
  }
  return lines;
}

export const valuesOf = ({ cells }: Sheet, box: Box): CellValue[][] =>
  mapBox(box, (address) => cells.get(address)?.value ?? "");

export const contentsOf = ({ cells }: Sheet, box: Box): CellValue[][] =>
  mapBox(box, (address) => {
    const cell = cells.get(address);
    return cell?.formula ?? cell?.value ?? "";
  });

export function writeCell({ cells }: Sheet, row: number, col: number, value: CellValue, formula?: string): void {
  const address = cellAddress(row, col);
  cells.set(address, { ...cells.get(address), value, formula });
}

/** "B4", "B4:C18", "B:C" or "4:18". */
export function blockOf(address: string): Box | undefined {
  const [, left, right] = /^\$?([A-Z]{1,3}):\$?([A-Z]{1,3})$/i.exec(address) ?? [];
  if (left) {
    const col = columnNumber(left);
    return { row: 0, col, rows: LAST_ROW, cols: columnNumber(right) - col + 1 };
  }
  const [, top, bottom] = /^(\d+):(\d+)$/.exec(address) ?? [];
  if (top) return { row: Number(top) - 1, col: 0, rows: Number(bottom) - Number(top) + 1, cols: LAST_COLUMN };
  return boxOf(address);
}

/** Cuts whole columns and rows to the filled rows and columns of the boxes. */
export function cutToUsed({ cells }: Sheet, boxes: readonly Box[]): Box[] {
  const filled = [...cells]
    .filter(([, { value, formula }]) => value !== "" || formula !== undefined)
    .map(([address]) => boxOf(address)!)
    .filter(({ row, col }) => boxes.some((box) => isIn(box, row, col)));
  if (filled.length === 0) return [...boxes];
  const rows = filled.map(({ row }) => row);
  const cols = filled.map(({ col }) => col);
  const [top, bottom, left, right] = [Math.min(...rows), Math.max(...rows), Math.min(...cols), Math.max(...cols)];
  return boxes.map((box) => ({
    ...box,
    ...(box.rows === LAST_ROW && { row: top, rows: bottom - top + 1 }),
    ...(box.cols === LAST_COLUMN && { col: left, cols: right - left + 1 }),
  }));
}

/** A box after a row was deleted. */
function withoutRow(box: Box, row: number): Box | "lost" {
  if (row < box.row) return { ...box, row: box.row - 1 };
  if (row >= box.row + box.rows) return box;
  return box.rows === 1 ? "lost" : { ...box, rows: box.rows - 1 };
}

const placeWithoutRow = (place: Place, row: number): Place => {
  if (place === "lost") return "lost";
  if ("row" in place) return withoutRow(place, row);
  const left = place.map((box) => withoutRow(box, row)).filter((box) => box !== "lost");
  return left.length > 0 ? left : "lost";
};

/** Deletes a row: everything below it moves up, with its names. */
export function deleteRow(sheet: Sheet, row: number): void {
  const moved = [...sheet.cells].flatMap(([address, cell]): [string, Cell][] => {
    const box = withoutRow(boxOf(address)!, row);
    return box === "lost" ? [] : [[cellAddress(box.row, box.col), cell]];
  });
  sheet.cells = new Map(moved);
  sheet.names = new Map([...sheet.names].map(([name, place]) => [name, placeWithoutRow(place, row)]));
}
