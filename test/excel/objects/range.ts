/** Ranges and blocks of ranges. */
import {
  addressOf,
  around,
  boxOf,
  cellsOf,
  COLS,
  intersection,
  onGrid,
  quoted,
  ROWS,
  unquoted,
  type Box,
} from "../book/address";
import { keyOf, sheetById, sheetByName, type Book, type Sheet } from "../book/book";
import {
  cellAt,
  clearContents,
  formulasOf,
  looksOf,
  mayChange,
  merge,
  shapeCheck,
  unmerge,
  usedBox,
  valuesOf,
  writeEntries,
} from "../book/cells";
import { checkedFormat } from "../book/entry";
import { deleteCells, insertCells, type Moved, type Way } from "../book/lines";
import { lookOf, setLook, sharedLook } from "../book/looks";
import { parts } from "../book/names";
import { clearRules } from "../book/rules";
import { invalidArgument, notFound, NotModelled, Refusal } from "../refusal";
import { Being, Collection, type Host } from "./being";
import { DataValidation } from "./data-validation";
import { RangeFormat } from "./range-format";
import { Worksheet } from "./worksheet";

/** The areas of an address on a sheet: "B4", "B4:C18", "Sheet2!A1", "A1,C1", or a name of the sheet or the workbook. */
export function areasOf(book: Book, sheet: Sheet, address: string): { sheet: Sheet; box: Box }[] {
  return parts(address).flatMap((part) => {
    const [, owner, local] = /^(?:(.*)!)?([^!]*)$/.exec(part.trim())!;
    const on = owner === undefined ? sheet : sheetByName(book, unquoted(owner));
    const box = on && boxOf(local);
    if (box) return [{ sheet: on, box }];
    const name =
      owner === undefined &&
      [...sheet.names, ...book.names].find((one) => one.name.toLowerCase() === local.toLowerCase());
    if (name && name.refers.kind === "cells")
      return name.refers.areas.flatMap((area) => {
        const found = sheetById(book, area.sheet);
        return found ? [{ sheet: found, box: area.box }] : [];
      });
    throw invalidArgument(`"${address}" is no address that Excel knows.`);
  });
}

export class Range extends Being {
  readonly className = "Range";
  constructor(
    host: Host,
    readonly sheet: Sheet,
    private place: Box | undefined,
  ) {
    super(host);
    onGrid(this.box);
  }

  get box(): Box {
    if (!this.place || !this.host.book.sheets.includes(this.sheet))
      throw new Refusal("InvalidReference", "The cells of the range were deleted.");
    return this.place;
  }

  /** Follows its cells (Microsoft, TrackedObjects: "automatic adjustment based on surrounding changes"). */
  follow(to: Moved): void {
    this.place = this.place && to(this.place);
  }

  private on(box: Box): Range {
    return new Range(this.host, this.sheet, box);
  }

  get worksheet(): Worksheet {
    return new Worksheet(this.host, this.sheet);
  }
  get format(): RangeFormat {
    return new RangeFormat(this.host, this.sheet, this.box);
  }
  get dataValidation(): DataValidation {
    return new DataValidation(this.host, this.sheet, this.box);
  }

  get address(): string {
    return `${quoted(this.sheet.name)}!${addressOf(this.box)}`;
  }
  get addressLocal(): string {
    return this.address;
  }
  get rowIndex(): number {
    return this.box.row;
  }
  get columnIndex(): number {
    return this.box.col;
  }
  get rowCount(): number {
    return this.box.rows;
  }
  get columnCount(): number {
    return this.box.cols;
  }
  get cellCount(): number {
    const count = this.box.rows * this.box.cols;
    return count > 2 ** 31 - 1 ? -1 : count;
  }
  get isEntireColumn(): boolean {
    return this.box.rows === ROWS;
  }
  get isEntireRow(): boolean {
    return this.box.cols === COLS;
  }

  /** Of whole rows and columns Excel returns null, and writes nothing (Microsoft, "Read or write to an unbounded range"). */
  private get isUnbounded(): boolean {
    return this.isEntireRow || this.isEntireColumn;
  }
  private bounded(what: string): void {
    if (this.isUnbounded) throw invalidArgument(`The ${what} of whole rows or columns cannot be set.`);
  }

  get values(): unknown {
    return this.isUnbounded ? null : valuesOf(this.sheet, this.box);
  }
  set values(array: unknown) {
    this.enter(array, "values");
  }
  get formulas(): unknown {
    return this.isUnbounded ? null : formulasOf(this.sheet, this.box);
  }
  set formulas(array: unknown) {
    this.enter(array, "formulas");
  }
  /** In the language of the user: some locales separate arguments by ";" and decimals by ",". */
  get formulasLocal(): unknown {
    if (this.isUnbounded) return null;
    const isEnglish = this.host.locale.startsWith("en");
    return formulasOf(this.sheet, this.box).map((row) =>
      row.map((one) =>
        typeof one === "string" && one.startsWith("=") && !isEnglish
          ? one.replaceAll(",", ";").replaceAll(".", ",")
          : one,
      ),
    );
  }
  get text(): unknown {
    return this.isUnbounded ? null : valuesOf(this.sheet, this.box).map((row) => row.map(String));
  }
  get valueTypes(): unknown {
    if (this.isUnbounded) return null;
    return valuesOf(this.sheet, this.box).map((row, r) =>
      row.map((value, c) => {
        const cell = cellAt(this.sheet, this.box.row + r, this.box.col + c);
        if (value === "" && !cell) return "Empty";
        if (cell?.isError || (typeof value === "string" && cell?.formula && value.startsWith("#"))) return "Error";
        return typeof value === "string" ? "String" : typeof value === "number" ? "Double" : "Boolean";
      }),
    );
  }
  get hasSpill(): boolean | null {
    const spilled = [...cellsOf(this.box)].map((at) => {
      const cell = cellAt(this.sheet, ...at);
      return Boolean(cell?.spill ?? cell?.filledFrom);
    });
    return spilled.every(Boolean) ? true : spilled.some(Boolean) ? null : false;
  }

  private enter(array: unknown, what: string): void {
    this.bounded(what);
    writeEntries(this.sheet, this.box, array, what);
    this.host.recalculate();
    this.host.raise("changed");
  }

  get numberFormat(): unknown {
    return this.isUnbounded ? null : looksOf(this.sheet, this.box, "numberFormat");
  }
  set numberFormat(array: unknown) {
    this.bounded("numberFormat");
    mayChange(this.sheet, "allowFormatCells");
    shapeCheck(array, this.box, "numberFormat");
    const formats = array.map((row) => row.map((format) => (format === null ? null : checkedFormat(format))));
    formats.forEach((row, r) =>
      row.forEach((format, c) => {
        if (format !== null)
          setLook(
            this.sheet,
            { row: this.box.row + r, col: this.box.col + c, rows: 1, cols: 1 },
            "numberFormat",
            format,
          );
      }),
    );
  }

  _ValidateArraySize(rows: number, cols: number): void {
    if (rows !== this.box.rows || cols !== this.box.cols)
      throw invalidArgument("The number of rows or columns in the input array doesn't match the size of the range.");
  }

  getCell(row: number, col: number): Range {
    return this.on({ row: this.box.row + row, col: this.box.col + col, rows: 1, cols: 1 });
  }
  getRow(row: number): Range {
    if (row >= this.box.rows) throw invalidArgument(`The range has no row ${row}.`);
    return this.on({ ...this.box, row: this.box.row + row, rows: 1 });
  }
  getColumn(col: number): Range {
    if (col >= this.box.cols) throw invalidArgument(`The range has no column ${col}.`);
    return this.on({ ...this.box, col: this.box.col + col, cols: 1 });
  }
  getLastRow(): Range {
    return this.getRow(this.box.rows - 1);
  }
  getLastColumn(): Range {
    return this.getColumn(this.box.cols - 1);
  }
  getLastCell(): Range {
    return this.getCell(this.box.rows - 1, this.box.cols - 1);
  }
  getResizedRange(rows: number, cols: number): Range {
    return this.on({ ...this.box, rows: this.box.rows + rows, cols: this.box.cols + cols });
  }
  getAbsoluteResizedRange(rows: number, cols: number): Range {
    return this.on({ ...this.box, rows, cols });
  }
  getOffsetRange(rows: number, cols: number): Range {
    return this.on({ ...this.box, row: this.box.row + rows, col: this.box.col + cols });
  }
  getEntireRow(): Range {
    return this.on({ ...this.box, col: 0, cols: COLS });
  }
  getEntireColumn(): Range {
    return this.on({ ...this.box, row: 0, rows: ROWS });
  }
  getBoundingRect(other: Range | string): Range {
    return this.on(around([this.box, this.boxFor(other)]));
  }
  getIntersection(other: Range | string): Range {
    const found = this.getIntersectionOrNullObject(other);
    if (!found) throw notFound("the intersection");
    return found;
  }
  getIntersectionOrNullObject(other: Range | string): Range | null {
    const box = intersection(this.box, this.boxFor(other));
    return box ? this.on(box) : null;
  }
  private boxFor(other: Range | string): Box {
    return other instanceof Range ? other.box : areasOf(this.host.book, this.sheet, other)[0].box;
  }
  getUsedRange(valuesOnly?: boolean): Range {
    return this.getUsedRangeOrNullObject(valuesOnly) ?? this.getCell(0, 0);
  }
  getUsedRangeOrNullObject(valuesOnly?: boolean): Range | null {
    const box = usedBox(this.sheet, this.box, valuesOnly === true);
    return box ? this.on(box) : null;
  }
  getSpillingToRangeOrNullObject(): Range | null {
    const spill = cellAt(this.sheet, this.box.row, this.box.col)?.spill;
    return spill ? this.on({ ...this.box, ...spill }) : null;
  }
  getSpillingToRange(): Range {
    const range = this.getSpillingToRangeOrNullObject();
    if (!range) throw notFound("the spill");
    return range;
  }
  getSpillParentOrNullObject(): Range | null {
    const from = cellAt(this.sheet, this.box.row, this.box.col)?.filledFrom;
    return from ? this.on({ row: from[0], col: from[1], rows: 1, cols: 1 }) : null;
  }

  get rowHidden(): boolean | null {
    return shared(this.box.row, this.box.rows, this.sheet.hiddenRows);
  }
  set rowHidden(hidden: boolean) {
    mayChange(this.sheet, "allowFormatRows");
    for (let row = this.box.row; row < this.box.row + this.box.rows; row++) put(this.sheet.hiddenRows, row, hidden);
  }
  get columnHidden(): boolean | null {
    return shared(this.box.col, this.box.cols, this.sheet.hiddenCols);
  }
  set columnHidden(hidden: boolean) {
    mayChange(this.sheet, "allowFormatColumns");
    for (let col = this.box.col; col < this.box.col + this.box.cols; col++) put(this.sheet.hiddenCols, col, hidden);
  }
  get hidden(): boolean | null {
    return this.rowHidden === true || this.columnHidden === true
      ? true
      : this.rowHidden === false && this.columnHidden === false
        ? false
        : null;
  }
  getRowProperties(asked: Record<string, unknown>): unknown {
    return Array.from({ length: this.box.rows }, (_, r) => this.lineOf(this.getRow(r), asked, "rowHidden", "rowIndex"));
  }
  getColumnProperties(asked: Record<string, unknown>): unknown {
    return Array.from({ length: this.box.cols }, (_, c) =>
      this.lineOf(this.getColumn(c), asked, "columnHidden", "columnIndex"),
    );
  }
  private lineOf(line: Range, asked: Record<string, unknown>, ...known: string[]): Record<string, unknown> {
    return Object.fromEntries(
      Object.entries(asked).flatMap(([key, wanted]) => {
        if (!wanted) return [];
        if (known.includes(key) || key === "address") return [[key, line.read(key)]];
        if (key === "format") return [[key, line.format.asked(wanted as Record<string, unknown>)]];
        throw new NotModelled(`getRowProperties({${key}})`);
      }),
    );
  }
  getCellProperties(asked: Record<string, unknown>): unknown {
    return Array.from({ length: this.box.rows }, (_, r) =>
      Array.from({ length: this.box.cols }, (__, c) => this.lineOf(this.getCell(r, c), asked)),
    );
  }
  setCellProperties(array: unknown): void {
    shapeCheck(array, this.box, "setCellProperties");
    // Office-js issue 593: null in place of the properties of a cell closed Excel.
    if (array.some((row) => row.includes(null)))
      throw invalidArgument("setCellProperties takes {} for a cell left alone.");
    // Office-js issue 2564: 80,000 cells were taken on the web, 90,000 were not.
    if (this.cellCount > 80_000) throw new Refusal("GeneralException", "An internal error has occurred.");
    // All changes are checked before the first is made.
    const changes = array.flatMap((row, r) =>
      row.flatMap((properties, c) => {
        const entries = Object.entries((properties ?? {}) as Record<string, unknown>);
        // Most cells are left alone.
        if (entries.length === 0) return [];
        const cell = this.getCell(r, c);
        return entries.flatMap(([key, wanted]) => {
          if (key === "format") return cell.format.changes(wanted as Record<string, unknown>);
          throw new NotModelled(`setCellProperties({${key}})`);
        });
      }),
    );
    for (const change of changes) change();
  }

  merge(across?: boolean): void {
    if (!across) merge(this.sheet, this.box);
    else for (let row = 0; row < this.box.rows; row++) merge(this.sheet, this.getRow(row).box);
    this.host.recalculate();
  }
  unmerge(): void {
    unmerge(this.sheet, this.box);
    this.host.recalculate();
  }
  clear(what: string = "All"): void {
    if (what === "All" || what === "Contents") clearContents(this.sheet, this.box);
    if (what === "All" || what === "Formats") {
      mayChange(this.sheet, "allowFormatCells");
      for (const [row, col] of cellsOf(this.box)) this.sheet.looks.delete(keyOf(row, col));
    }
    if (what === "All") clearRules(this.sheet, this.box);
    this.host.recalculate();
    this.host.raise("changed");
  }
  insert(way: Way): Range {
    const { box } = this;
    this.host.moved(this.sheet, insertCells(this.host.book, this.sheet, box, way));
    this.host.recalculate();
    this.host.raise("changed");
    return this.on(box);
  }
  delete(way: Way): void {
    this.host.moved(this.sheet, deleteCells(this.host.book, this.sheet, this.box, way));
    this.host.recalculate();
    this.host.raise("changed");
  }
  select(): void {
    if (this.sheet.visibility !== "Visible")
      throw new Refusal("InvalidOperation", "Cells of a hidden sheet cannot be selected.");
    if (this.host.book.active !== this.sheet.id) this.host.raise("activated");
    this.host.book.active = this.sheet.id;
    this.host.book.selection = { kind: "cells", sheet: this.sheet.id, boxes: [this.box] };
    this.host.raise("selection");
  }
  calculate(): void {
    this.host.recalculate();
    this.host.raise("calculated");
  }
  /** A look that all cells of the range share; null if they differ. */
  shared(path: string): unknown {
    return sharedLook(this.sheet, this.box, path);
  }
  lookAt(path: string): unknown {
    return lookOf(this.sheet, this.box.row, this.box.col, path);
  }
}

function shared(first: number, count: number, hidden: ReadonlySet<number>): boolean | null {
  const inside = [...hidden].filter((line) => line >= first && line < first + count).length;
  return inside === count ? true : inside === 0 ? false : null;
}

const put = (set: Set<number>, line: number, isIn: boolean): void => void (isIn ? set.add(line) : set.delete(line));

export class RangeCollection extends Collection<Range> {
  readonly className = "RangeCollection";
  constructor(
    host: Host,
    readonly items: Range[],
  ) {
    super(host);
  }
  getItemAt(index: number): Range {
    if (!this.items[index]) throw invalidArgument(`There is no area ${index}.`);
    return this.items[index];
  }
}

export class RangeAreas extends Being {
  readonly className = "RangeAreas";
  constructor(
    host: Host,
    readonly sheet: Sheet,
    readonly boxes: readonly Box[],
  ) {
    super(host);
  }
  get areas(): RangeCollection {
    return new RangeCollection(
      this.host,
      this.boxes.map((box) => new Range(this.host, this.sheet, box)),
    );
  }
  get areaCount(): number {
    return this.boxes.length;
  }
  get cellCount(): number {
    const count = this.boxes.reduce((sum, { rows, cols }) => sum + rows * cols, 0);
    return count > 2 ** 31 - 1 ? -1 : count;
  }
  get address(): string {
    return this.areas.items.map(({ address }) => address).join(",");
  }
  get isEntireColumn(): boolean {
    return this.boxes.every(({ rows }) => rows === ROWS);
  }
  get isEntireRow(): boolean {
    return this.boxes.every(({ cols }) => cols === COLS);
  }
  get worksheet(): Worksheet {
    return new Worksheet(this.host, this.sheet);
  }
  get format(): RangeFormat {
    return new RangeFormat(this.host, this.sheet, ...this.boxes);
  }
  getUsedRangeAreasOrNullObject(valuesOnly?: boolean): RangeAreas | null {
    const boxes = this.boxes.flatMap((box) => usedBox(this.sheet, box, valuesOnly === true) ?? []);
    return boxes.length > 0 ? new RangeAreas(this.host, this.sheet, boxes) : null;
  }
  getEntireRow(): RangeAreas {
    return new RangeAreas(
      this.host,
      this.sheet,
      this.boxes.map((box) => ({ ...box, col: 0, cols: COLS })),
    );
  }
  clear(what?: string): void {
    for (const range of this.areas.items) range.clear(what);
  }
}
