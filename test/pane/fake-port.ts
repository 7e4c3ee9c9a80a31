/** A workbook of one selection, for tests of the pane: it records what is asked of it, and can be made to fail. */
import { checkFill } from "../../src/workbook/fill";
import type {
  CellValue,
  Inserted,
  NamedColumns,
  Selection,
  SheetName,
  SheetPlan,
  WorkbookPort,
} from "../../src/workbook/port";

export class FakePort implements WorkbookPort {
  readonly host = "embedded";
  readonly inserted: SheetPlan[] = [];
  readonly listeners = new Set<() => void>();
  private readonly ranges = new Map<string, Selection["values"]>();
  sheets = ["Sheet1"];
  failure: Error | undefined;
  selected: Selection = { sheet: "Sheet1", address: "A1", values: [[""]] };

  private async answer<T>(value: T): Promise<T> {
    if (this.failure) throw this.failure;
    return value;
  }

  sheetNames = () => this.answer(this.sheets);
  selection = () => this.answer(this.selected);
  /** Of ranges that were selected once. */
  values = (sheet: string, address: string) => this.answer(this.ranges.get(`${sheet}!${address}`) ?? []);
  /** Named columns by sheet. */
  readonly named = new Map<string, Record<string, CellValue[]>>();
  readNames = async (sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>> => {
    await this.answer(undefined);
    const columns = this.named.get(sheet) ?? {};
    return Object.fromEntries(
      names.filter((name) => columns[name]).map((name) => [name, columns[name].map((value) => [value])]),
    );
  };

  fillNames = async (sheet: string, values: NamedColumns, blank: readonly string[] = []): Promise<void> => {
    await this.answer(undefined);
    const columns = this.named.get(sheet) ?? {};
    checkFill(sheet, values, blank, (name) => columns[name]);
    for (const [name, list] of Object.entries(values))
      list.forEach((value, index) => {
        if (value !== null) columns[name][index] = value;
      });
  };

  insertSheet = async (plan: SheetPlan): Promise<string> => {
    await this.answer(undefined);
    this.inserted.push(plan);
    return `${plan.name} 2`;
  };

  /** What the pane asked of the sheet's upkeep, in words. */
  readonly asked: string[] = [];
  names: SheetName[] = [];
  unbound = { found: 0, left: 0 };
  protected = false;
  insertion: Inserted = { sheets: [], remarks: [] };

  listNames = () => this.answer(this.names);
  nameCells = async (sheet: string, name: string, address: string, replace = false): Promise<void> => {
    await this.answer(undefined);
    this.asked.push(`name ${name} ${sheet}!${address}${replace ? " in place of another" : ""}`);
  };
  reenterFormulas = (sheet: string) => {
    this.asked.push(`re-enter ${sheet}`);
    return this.answer(this.unbound);
  };
  insertFile = (file: Uint8Array) => {
    this.asked.push(`insert ${file.length} bytes`);
    return this.answer(this.insertion);
  };
  isProtected = () => this.answer(this.protected);
  protect = async (sheet: string, on: boolean): Promise<void> => {
    await this.answer(undefined);
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
