/** Sheets, and the objects of a sheet. */
import { boxOf, COLS, onGrid, ROWS } from "../book/address";
import { same, sheetById, type Sheet, type Visibility } from "../book/book";
import { usedBox } from "../book/cells";
import { addSheet, checkSheetName, removeSheet, structureMustBeOpen } from "../book/sheets";
import { allOptions } from "../book/protection";
import { accessDenied, invalidArgument, notFound, Refusal } from "../refusal";
import { Being, checkColor, Collection, type Host } from "./being";
import { ChartCollection } from "./charts";
import { NamedItemCollection } from "./names";
import { NoteCollection } from "./notes";
import { pageLayoutOf } from "./page-layout";
import type { Bag } from "./being";
import { areasOf, Range, RangeAreas } from "./range";

const WHOLE = { row: 0, col: 0, rows: ROWS, cols: COLS };

export class WorksheetCollection extends Collection<Worksheet> {
  readonly className = "WorksheetCollection";
  get items(): Worksheet[] {
    return this.host.book.sheets.map((sheet) => new Worksheet(this.host, sheet));
  }
  getItemOrNullObject(key: string): Worksheet | null {
    const found = this.host.book.sheets.find(({ id, name }) => id === key || same(name, key));
    return found ? new Worksheet(this.host, found) : null;
  }
  getItem(key: string): Worksheet {
    const found = this.getItemOrNullObject(key);
    if (!found) throw notFound(`the sheet "${key}"`);
    return found;
  }
  add(name: string | null): Worksheet {
    this.host.raise("added");
    return new Worksheet(this.host, addSheet(this.host.book, this.host.newId("sheet"), name ?? undefined));
  }
  getActiveWorksheet(): Worksheet {
    return new Worksheet(this.host, sheetById(this.host.book, this.host.book.active)!);
  }
  getFirst(visibleOnly?: boolean): Worksheet {
    return this.items.find(({ visibility }) => !visibleOnly || visibility === "Visible")!;
  }
  getLast(visibleOnly?: boolean): Worksheet {
    return [...this.items].reverse().find(({ visibility }) => !visibleOnly || visibility === "Visible")!;
  }
}

export class Worksheet extends Being {
  readonly className = "Worksheet";
  constructor(
    host: Host,
    readonly sheet: Sheet,
  ) {
    super(host);
  }
  get id(): string {
    return this.sheet.id;
  }
  get name(): string {
    return this.sheet.name;
  }
  set name(name: string) {
    structureMustBeOpen(this.host.book);
    checkSheetName(this.host.book, name, this.sheet);
    this.sheet.name = name;
    this.host.raise("renamed");
  }
  get position(): number {
    return this.host.book.sheets.indexOf(this.sheet);
  }
  set position(to: number) {
    structureMustBeOpen(this.host.book);
    const { sheets } = this.host.book;
    if (!(to >= 0 && to < sheets.length))
      throw invalidArgument(`There is no place ${to} among ${sheets.length} sheets.`);
    sheets.splice(to, 0, ...sheets.splice(this.position, 1));
    this.host.raise("moved");
  }
  get visibility(): Visibility {
    return this.sheet.visibility;
  }
  set visibility(visibility: Visibility) {
    structureMustBeOpen(this.host.book);
    const visible = this.host.book.sheets.filter((one) => one.visibility === "Visible");
    if (visibility !== "Visible" && visible.length === 1 && visible[0] === this.sheet)
      throw new Refusal("InvalidOperation", "A workbook must contain at least one visible worksheet.");
    this.sheet.visibility = visibility;
    if (this.host.book.active === this.sheet.id && visibility !== "Visible")
      this.host.book.active = this.host.book.sheets.find((one) => one.visibility === "Visible")!.id;
  }
  get showGridlines(): boolean {
    return (this.sheet.settings.showGridlines as boolean | undefined) ?? true;
  }
  set showGridlines(shown: boolean) {
    this.sheet.settings.showGridlines = shown;
  }
  get tabColor(): string {
    return (this.sheet.settings.tabColor as string | undefined) ?? "";
  }
  set tabColor(color: string) {
    checkColor(color);
    this.sheet.settings.tabColor = color;
  }
  get standardWidth(): number {
    return (this.sheet.settings.standardWidth as number | undefined) ?? 8.43;
  }
  set standardWidth(characters: number) {
    this.sheet.settings.standardWidth = characters;
  }
  get standardHeight(): number {
    return 15;
  }

  get names(): NamedItemCollection {
    if (this.host.switches.isInBackground && this.host.platform === "mac")
      throw new Refusal("InvalidSelection", "The current selection is invalid for this operation.");
    return new NamedItemCollection(this.host, this.sheet);
  }
  get charts(): ChartCollection {
    return new ChartCollection(this.host, this.sheet);
  }
  get notes(): NoteCollection {
    return new NoteCollection(this.host, this.sheet);
  }
  get protection(): WorksheetProtection {
    return new WorksheetProtection(this.host, this.sheet);
  }
  get freezePanes(): FreezePanes {
    return new FreezePanes(this.host, this.sheet);
  }
  get pageLayout(): Bag {
    return pageLayoutOf(this.host, this.sheet);
  }
  get horizontalPageBreaks(): PageBreaks {
    return new PageBreaks(this.host, this.sheet, "rowBreaks");
  }
  get verticalPageBreaks(): PageBreaks {
    return new PageBreaks(this.host, this.sheet, "colBreaks");
  }

  getRange(address: string | null): Range {
    if (address === null || address === undefined || address === "") return new Range(this.host, this.sheet, WHOLE);
    const areas = areasOf(this.host.book, this.sheet, address);
    if (areas.length !== 1) throw invalidArgument(`"${address}" is more than one range: getRanges takes it.`);
    return new Range(this.host, areas[0].sheet, areas[0].box);
  }
  getRanges(address: string | null): RangeAreas {
    if (address === null || address === undefined) return new RangeAreas(this.host, this.sheet, [WHOLE]);
    if (address.length > 8192) throw invalidArgument("An address takes at most 8192 characters.");
    return new RangeAreas(
      this.host,
      this.sheet,
      areasOf(this.host.book, this.sheet, address).map(({ box }) => box),
    );
  }
  getRangeByIndexes(row: number, col: number, rows: number, cols: number): Range {
    return new Range(this.host, this.sheet, onGrid({ row, col, rows, cols }));
  }
  getCell(row: number, col: number): Range {
    return this.getRangeByIndexes(row, col, 1, 1);
  }
  getUsedRange(valuesOnly?: boolean): Range {
    return this.getUsedRangeOrNullObject(valuesOnly) ?? this.getCell(0, 0);
  }
  getUsedRangeOrNullObject(valuesOnly?: boolean): Range | null {
    const box = usedBox(this.sheet, WHOLE, valuesOnly === true);
    return box ? new Range(this.host, this.sheet, box) : null;
  }
  activate(): void {
    if (this.sheet.visibility !== "Visible")
      throw new Refusal("InvalidOperation", "A hidden sheet cannot be activated.");
    const { book } = this.host;
    if (book.active === this.sheet.id) return;
    book.active = this.sheet.id;
    book.selection = { kind: "cells", sheet: this.sheet.id, boxes: [{ row: 0, col: 0, rows: 1, cols: 1 }] };
    this.host.raise("activated");
    this.host.raise("selection");
  }
  calculate(): void {
    this.host.recalculate();
    this.host.raise("calculated");
  }
  delete(): void {
    const wasActive = this.host.book.active === this.sheet.id;
    removeSheet(this.host.book, this.sheet);
    this.host.recalculate();
    this.host.raise("deleted");
    if (wasActive) this.host.raise("activated");
  }
}

function checkCount(count: number | null): void {
  if (count !== null && !(Number.isInteger(count) && count >= 1))
    throw invalidArgument(`${count} lines cannot be frozen.`);
}

class FreezePanes extends Being {
  readonly className = "WorksheetFreezePanes";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
  ) {
    super(host);
  }
  freezeRows(count: number | null): void {
    checkCount(count);
    this.sheet.frozen = { rows: count ?? 1, cols: 0 };
  }
  freezeColumns(count: number | null): void {
    checkCount(count);
    this.sheet.frozen = { rows: 0, cols: count ?? 1 };
  }
  freezeAt(range: Range | string): void {
    const { row, col, rows, cols } = typeof range === "string" ? boxOf(range)! : range.box;
    this.sheet.frozen = {
      rows: cols === COLS || rows < ROWS ? row + rows : 0,
      cols: rows === ROWS || cols < COLS ? col + cols : 0,
    };
  }
  unfreeze(): void {
    this.sheet.frozen = { rows: 0, cols: 0 };
  }
  getLocationOrNullObject(): Range | null {
    const { rows, cols } = this.sheet.frozen;
    if (rows + cols === 0) return null;
    return new Range(this.host, this.sheet, { row: 0, col: 0, rows: rows || ROWS, cols: cols || COLS });
  }
}

/** Page breaks before rows or columns, inserted by hand. */
class PageBreaks extends Collection<PageBreak> {
  get className(): string {
    return "PageBreakCollection";
  }
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly key: "rowBreaks" | "colBreaks",
  ) {
    super(host);
  }
  private get breaks(): number[] {
    return (this.sheet.settings[this.key] ??= []) as number[];
  }
  get items(): PageBreak[] {
    return this.breaks.map((line) => new PageBreak(this.host, this.sheet, this.key, line));
  }
  add(range: Range | string): PageBreak {
    const box = range instanceof Range ? range.box : areasOf(this.host.book, this.sheet, range)[0].box;
    const line = this.key === "rowBreaks" ? box.row : box.col;
    if (line === 0) throw invalidArgument("No page break stands before the first row or column.");
    if (this.breaks.length >= 1026) throw invalidArgument("A sheet takes at most 1026 page breaks each way.");
    if (!this.breaks.includes(line)) this.breaks.push(line);
    return new PageBreak(this.host, this.sheet, this.key, line);
  }
  getItem(index: number): PageBreak {
    if (!this.items[index]) throw invalidArgument(`There is no page break ${index}.`);
    return this.items[index];
  }
  removePageBreaks(): void {
    this.sheet.settings[this.key] = [];
  }
}

class PageBreak extends Being {
  readonly className = "PageBreak";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly key: string,
    private readonly line: number,
  ) {
    super(host);
  }
  get value(): number {
    return this.line;
  }
  get columnIndex(): number {
    return this.line;
  }
  delete(): void {
    this.sheet.settings[this.key] = (this.sheet.settings[this.key] as number[]).filter((line) => line !== this.line);
  }
}

class WorksheetProtection extends Being {
  readonly className = "WorksheetProtection";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
  ) {
    super(host);
  }
  get protected(): boolean {
    return this.sheet.protection.on;
  }
  get isPasswordProtected(): boolean {
    return this.sheet.protection.password !== undefined;
  }
  get options(): Readonly<Record<string, unknown>> {
    return allOptions(this.sheet.protection.options);
  }
  get savedOptions(): Readonly<Record<string, unknown>> {
    return this.options;
  }
  protect(options: Record<string, unknown> | null, password: string | null): void {
    if (this.sheet.protection.on) throw accessDenied(`The sheet "${this.sheet.name}" is protected already.`);
    this.sheet.protection = { on: true, options: allOptions(options ?? {}), ...(password && { password }) };
  }
  unprotect(password: string | null): void {
    const { on, password: wanted } = this.sheet.protection;
    // Since June 2026 a sheet that is not protected refuses it too (office-js issue 6784).
    if (!on) throw accessDenied(`The sheet "${this.sheet.name}" is not protected.`);
    if (wanted !== undefined && wanted !== password) throw accessDenied("The password is not correct.");
    this.sheet.protection = { on: false, options: this.sheet.protection.options };
  }
}
