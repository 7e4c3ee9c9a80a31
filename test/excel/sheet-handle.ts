/** A sheet of the stand-in, for the observations and actions of a test. */
import { addressOf, boxOf, COLS, type Box } from "./book/address";
import { keyOf, sheetById, type Book, type Chart, type NameOf, type Rule, type Sheet, type Value } from "./book/book";
import { valuesOf, writeEntries } from "./book/cells";
import { deleteCells, insertCells, type Moved } from "./book/lines";
import { lookOf, setLook } from "./book/looks";
import { checkName, formulaOf, refersTo } from "./book/names";
import { allOptions } from "./book/protection";
import { ruleAt } from "./book/rules";
import { checkSheetName, removeSheet } from "./book/sheets";

export interface SeenCell {
  readonly value: Value;
  readonly formula: string | undefined;
  readonly format: unknown;
  readonly locked: boolean;
  readonly note: string | undefined;
  readonly rule: Rule | undefined;
  readonly merged: string | undefined;
  /** "format.font.bold" */
  look(path: string): unknown;
}

interface Excel {
  readonly book: Book;
  moved(sheet: Sheet, to: Moved): void;
  recalculate(): void;
  settle(): void;
}

const box = (address: string): Box => {
  const found = boxOf(address);
  if (!found) throw new Error(`${address} is no address of one block`);
  return found;
};

export class SheetHandle {
  constructor(
    private readonly excel: Excel,
    /** The sheet as data. */
    readonly sheet: Sheet,
  ) {}

  cell(address: string): SeenCell {
    const { row, col } = box(address);
    return this.at(row, col);
  }

  /** A cell by its row and column, counted from 0. */
  at(row: number, col: number): SeenCell {
    const { sheet } = this;
    this.excel.settle();
    const cell = sheet.cells.get(keyOf(row, col));
    const merged = sheet.merges.find(
      (one) => row >= one.row && row < one.row + one.rows && col >= one.col && col < one.col + one.cols,
    );
    return {
      value: cell?.value ?? "",
      formula: cell?.formula,
      format: lookOf(sheet, row, col, "numberFormat"),
      locked: lookOf(sheet, row, col, "format.protection.locked") !== false,
      note: sheet.notes.get(keyOf(row, col))?.content,
      rule: ruleAt(sheet, row, col),
      merged: merged && addressOf(merged),
      look: (path) => lookOf(sheet, row, col, path),
    };
  }

  values(address: string): Value[][] {
    this.excel.settle();
    return valuesOf(this.sheet, box(address));
  }

  /** Types entries into cells, from the first cell of the address on; null leaves a cell unchanged. */
  put(address: string, entries: readonly (readonly (Value | null)[])[]): this {
    const { row, col } = box(address);
    writeEntries(this.sheet, { row, col, rows: entries.length, cols: entries[0].length }, entries, "put");
    this.excel.recalculate();
    return this;
  }

  /** Enters an array formula of the old kind over a block (Ctrl, Shift, Enter). */
  putArray(address: string, formula: string): this {
    const block = box(address);
    this.put(address, [[formula]]);
    this.sheet.arrays.push(block);
    return this;
  }

  /**
   * Names cells of this sheet: "A1:A9", "A1,C1", or any formula ("=5", "=#REF!"). `scope` says whether the sheet or the
   * workbook has the name.
   */
  name(name: string, refers: string, scope: "sheet" | "workbook" = "sheet"): this {
    checkName(name);
    const formula = refers.startsWith("=") ? refers : `=${refers}`;
    const made: NameOf = {
      name,
      refers: refersTo(this.excel.book, formula, this.sheet.id),
      comment: "",
      visible: true,
    };
    (scope === "sheet" ? this.sheet.names : this.excel.book.names).push(made);
    this.excel.recalculate();
    return this;
  }

  /** The names of the sheet with their formulas: "=Test!$A$1". */
  get names(): Record<string, string> {
    return Object.fromEntries(this.sheet.names.map((name) => [name.name, formulaOf(this.excel.book, name)]));
  }

  unlock(address: string): this {
    setLook(this.sheet, box(address), "format.protection.locked", false);
    return this;
  }

  format(address: string, numberFormat: string): this {
    setLook(this.sheet, box(address), "numberFormat", numberFormat);
    return this;
  }

  merge(address: string): this {
    this.sheet.merges.push(box(address));
    return this;
  }

  protect(options: Readonly<Record<string, unknown>> = {}, password?: string): this {
    this.sheet.protection = { on: true, options: allOptions(options), ...(password !== undefined && { password }) };
    return this;
  }

  unprotect(): this {
    this.sheet.protection = { on: false, options: {} };
    return this;
  }

  hide(visibility: "Hidden" | "VeryHidden" = "Hidden"): this {
    this.sheet.visibility = visibility;
    return this;
  }

  rename(name: string): this {
    checkSheetName(this.excel.book, name, this.sheet);
    this.sheet.name = name;
    return this;
  }

  /** Deletes the sheet, as a person does. */
  remove(): void {
    removeSheet(this.excel.book, this.sheet);
    this.excel.recalculate();
  }

  moveTo(position: number): this {
    const { sheets } = this.excel.book;
    sheets.splice(position, 0, ...sheets.splice(sheets.indexOf(this.sheet), 1));
    return this;
  }

  /** Inserts rows before a row, counted from 0. */
  insertRows(row: number, rows = 1): this {
    const box = { row, col: 0, rows, cols: COLS };
    this.excel.moved(this.sheet, insertCells(this.excel.book, this.sheet, box, "Down"));
    this.excel.recalculate();
    return this;
  }

  deleteRow(row: number): this {
    const box = { row, col: 0, rows: 1, cols: COLS };
    this.excel.moved(this.sheet, deleteCells(this.excel.book, this.sheet, box, "Up"));
    this.excel.recalculate();
    return this;
  }

  hideRows(...rows: number[]): this {
    for (const row of rows) this.sheet.hiddenRows.add(row);
    return this;
  }

  /** Adds a chart with one series, as a person does. */
  chart(title = "Chart"): this {
    const id = `{own-${this.sheet.charts.length + 1}}`;
    const made: Chart = {
      id,
      name: title,
      type: "XYScatter",
      properties: { "title.text": title },
      series: [{ name: "Series1", properties: {}, points: {} }],
    };
    this.sheet.charts.push(made);
    return this;
  }

  get isActive(): boolean {
    return sheetById(this.excel.book, this.excel.book.active) === this.sheet;
  }
}
