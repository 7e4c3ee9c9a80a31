/** A workbook of one selection, for tests of the pane: it records what is asked of it, and can be made to fail. */
import { checkFill } from "../../src/workbook/fill";
import {
  WorkbookError,
  type CellValue,
  type Inserted,
  type NamedColumns,
  type Selection,
  type SheetName,
  type SheetPlan,
  type WorkbookPort,
} from "../../src/workbook/port";
import { hiddenSheet } from "../../src/workbook/sheet-names";

/** What can go wrong in a workbook, as its adapters say it. */
export const FAILURES = {
  protected: (sheet: string) =>
    new WorkbookError(
      `Excel could not write into the sheet "${sheet}": it is protected, or open for reading only: unprotect it or save a copy, and try again. The cells are as they were.`,
    ),
  gone: (sheet: string) => new WorkbookError(`There is no sheet called "${sheet}" in this workbook.`),
  hidden: (sheet: string) => new WorkbookError(hiddenSheet(sheet)),
  halfway: (sheet: string) =>
    new WorkbookError(
      `Excel could not write into the sheet "${sheet}": Excel is busy: wait a moment, and try again. The cells are as they were.`,
    ),
} as const;

/** The methods of the port that answer with something. */
type Method = Exclude<keyof WorkbookPort, "host">;

export class FakePort implements WorkbookPort {
  readonly host = "embedded";
  readonly inserted: SheetPlan[] = [];
  readonly listeners = new Set<() => void>();
  private readonly ranges = new Map<string, Selection["values"]>();
  sheets = ["Sheet1"];
  /** Every method fails with this. */
  failure: Error | undefined;
  /** One method fails with this: `port.failing.fillNames = FAILURES.protected("Sheet1")`. */
  readonly failing: Partial<Record<Method, Error>> = {};
  selected: Selection = { sheet: "Sheet1", address: "A1", values: [[""]] };

  private async answer<T>(value: T, method?: Method): Promise<T> {
    const failure = this.failure ?? (method && this.failing[method]);
    if (failure) throw failure;
    return value;
  }

  sheetNames = () => this.answer(this.sheets, "sheetNames");
  selection = () => this.answer(this.selected, "selection");
  /** Of ranges that were selected once. */
  values = (sheet: string, address: string) => this.answer(this.ranges.get(`${sheet}!${address}`) ?? [], "values");
  /** Named columns by sheet; a name that is not there is missing from the sheet. */
  readonly named = new Map<string, Record<string, CellValue[]>>();
  /** What was typed into named columns, where it differs from their values: formulas. */
  readonly contents = new Map<string, Record<string, CellValue[]>>();
  hiddenRows: number[] = [];
  hiddenCols: number[] = [];
  /** The cells that were brought to the front, "Sheet1!B4", newest last. */
  readonly shown: string[] = [];
  /** What was written, newest last. */
  readonly filled: { readonly sheet: string; readonly values: NamedColumns }[] = [];

  show = async (sheet: string, address: string): Promise<void> => {
    await this.answer(undefined, "show");
    this.shown.push(`${sheet}!${address}`);
  };

  hidden = () => this.answer({ rows: this.hiddenRows, cols: this.hiddenCols }, "hidden");

  private columns(names: readonly string[], of: Record<string, CellValue[]>) {
    return Object.fromEntries(
      names.filter((name) => of[name]).map((name) => [name, of[name].map((value): CellValue[] => [value])]),
    );
  }

  readNames = async (sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>> => {
    await this.answer(undefined, "readNames");
    return this.columns(names, this.named.get(sheet) ?? {});
  };

  readContents = async (sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>> => {
    await this.answer(undefined, "readContents");
    return this.columns(names, { ...this.named.get(sheet), ...this.contents.get(sheet) });
  };

  /** Written whole or not at all. A listener hears of it, as of a cell typed by hand. */
  fillNames = async (sheet: string, values: NamedColumns, blank: readonly string[] = []): Promise<void> => {
    await this.answer(undefined, "fillNames");
    const columns = this.named.get(sheet) ?? {};
    checkFill(sheet, values, blank, (name) => this.contents.get(sheet)?.[name] ?? columns[name]);
    this.filled.push({ sheet, values });
    for (const [name, list] of Object.entries(values))
      list.forEach((value, index) => {
        if (value !== null) columns[name][index] = value;
      });
    this.listeners.forEach((listener) => listener());
  };

  insertSheet = async (plan: SheetPlan): Promise<string> => {
    await this.answer(undefined, "insertSheet");
    this.inserted.push(plan);
    return `${plan.name} 2`;
  };

  /** What the pane asked of the sheet's upkeep, in words. */
  readonly asked: string[] = [];
  names: SheetName[] = [];
  unbound = { found: 0, left: 0 };
  protected = false;
  insertion: Inserted = { sheets: [], remarks: [] };

  listNames = () => this.answer(this.names, "listNames");
  nameCells = async (sheet: string, name: string, address: string, replace = false): Promise<void> => {
    await this.answer(undefined, "nameCells");
    this.asked.push(`name ${name} ${sheet}!${address}${replace ? " in place of another" : ""}`);
  };
  reenterFormulas = (sheet: string) => {
    this.asked.push(`re-enter ${sheet}`);
    return this.answer(this.unbound, "reenterFormulas");
  };
  insertFile = (file: Uint8Array) => {
    this.asked.push(`insert ${file.length} bytes`);
    return this.answer(this.insertion, "insertFile");
  };
  isProtected = () => this.answer(this.protected, "isProtected");
  protect = async (sheet: string, on: boolean): Promise<void> => {
    await this.answer(undefined, "protect");
    this.asked.push(`${on ? "protect" : "open"} ${sheet}`);
    this.protected = on;
  };

  onChange = async (listener: () => void): Promise<() => void> => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** As a user selects a range, or types in one. */
  select(values: Selection["values"], address = "A1:B99"): void {
    this.selected = { sheet: "Sheet1", address, values };
    this.change(values, address);
  }

  /** As cells change while the selection stays where it is. */
  change(values: Selection["values"], address: string): void {
    this.ranges.set(`Sheet1!${address}`, values);
    this.listeners.forEach((listener) => listener());
  }
}
