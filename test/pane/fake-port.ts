/**
 * The workbook of the pane's tests: small, in memory, and checked by the contract of the port like the adapters. It
 * does not calculate formulas: a test gives their values. It records requests, and can be made to fail.
 */
import { say, verbatim } from "../../src/reduction/message";
import { boxAddress, cellAddress, quoted } from "../../src/workbook/address";
import { addressInList, cellOfList, lengthOf } from "../../src/workbook/lists";
import { checkFill } from "../../src/workbook/rules/fill";
import { checkNaming } from "../../src/workbook/rules/naming";
import { blockAddresses, joined, sideBySide } from "../../src/workbook/picked";
import { checkPlan } from "../../src/workbook/rules/plan-check";
import {
  WorkbookError,
  type Asked,
  type Box,
  type CellContent,
  type CellValue,
  type Change,
  type FoundSheet,
  type Inserted,
  type KindOfWork,
  type Looked,
  type NamedAddress,
  type NamedColumns,
  type Selection,
  type SheetName,
  type SheetPlan,
  type SheetValues,
  type WorkbookPort,
  type WorkNote,
} from "../../src/workbook/port";
import { freeSheetName, hiddenSheet, noSheet, withoutApostrophes } from "../../src/workbook/rules/sheet-names";
import { withReferences } from "../../src/workbook/references";
import { refuseMoved, refuseOtherEnds, refuseReadElsewhere } from "../../src/workbook/rules/moved";
import { checkWrite } from "../../src/workbook/rules/write-check";
import { isXlsx } from "../../src/workbook/file/xlsx-file";
import { sheetsOfFile } from "./fake-file";
import {
  blankSheet,
  blockOf,
  contentsOf,
  cutToUsed,
  mayWrite,
  newWorkbook,
  sheetOf,
  valuesOf,
  writeCell,
  type Place,
  type Sheet,
} from "./fake-workbook";

/** Failures of a workbook, in the words of its adapters. */
export const FAILURES = {
  protected: (sheet: string) =>
    new WorkbookError(
      say`Excel could not ${say`write into the sheet "${verbatim(sheet)}"`}: ${say`it is protected, or open for reading only: unprotect it or save a copy, and try again`}. ${say`The cells are as they were.`}`,
    ),
  gone: (sheet: string) => new WorkbookError(noSheet(sheet)),
  hidden: (sheet: string) => new WorkbookError(hiddenSheet(sheet)),
  halfway: (sheet: string) =>
    new WorkbookError(
      say`Excel could not ${say`write into the sheet "${verbatim(sheet)}"`}: ${say`Excel is busy: wait a moment, and try again`}. ${say`The cells are as they were.`}`,
    ),
  chart: () =>
    new WorkbookError(
      say`Excel could not ${say`read the selection`}: ${say`a chart, a picture or a button is selected, or another workbook is in front: select cells of this workbook, and try again`}.`,
    ),
  structure: () =>
    new WorkbookError(
      say`The workbook's structure is protected, so no sheet can be added: unprotect it (Review, Protect Workbook) and try again.`,
    ),
  password: () =>
    new WorkbookError(
      say`The sheet is protected with a password: lift it in Excel (Review, Unprotect Sheet), and try again. Nothing was changed.`,
    ),
} as const;

const UNKNOWN = "#NAME?";

const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

const addressOf = (box: Box): string => boxAddress(box).replaceAll("$", "");

/** The methods of the port that return something. */
type Method = Exclude<keyof WorkbookPort, "host" | "savesFiles">;

export class FakePort implements WorkbookPort {
  readonly host = "embedded";
  savesFiles = true;
  /** The content of the workbook. */
  readonly workbook = newWorkbook();
  readonly listeners = new Set<(change: Change) => void>();
  readonly selecting = new Set<() => void>();
  private readonly ids = new Map<Sheet, string>();

  /** If set, every method fails with this error. */
  failure: Error | undefined;
  /** One method fails with an error: `port.failing.fillNames = FAILURES.protected("Sheet1")`. */
  readonly failing: Partial<Record<Method, Error>> = {};

  /** The plans of the inserted sheets, newest last. */
  readonly inserted: SheetPlan[] = [];
  /** What was written, newest last. */
  readonly filled: { readonly sheet: string; readonly values: NamedColumns }[] = [];
  /** The cells that were brought to the front, "Sheet1!B4", newest last. */
  readonly shown: string[] = [];
  /** Requests to maintain a sheet, in words, newest last. */
  readonly asked: string[] = [];
  /** Functions for which a formula shows #NAME? until it is entered again, with the value that it then shows. */
  readonly functions = new Map<string, CellValue>();

  /** Carries a method out, unless it is to fail. */
  private async answer<T>(method: Method, work: () => T | Promise<T>): Promise<T> {
    const failure = this.failure ?? this.failing[method];
    if (failure) throw failure;
    return work();
  }

  /** Reports changes to the listeners. */
  tell(...changes: readonly Change[]): void {
    for (const change of changes) this.listeners.forEach((listener) => listener(change));
  }

  /** Reports to the listeners that other cells are selected. */
  tellSelected(): void {
    this.selecting.forEach((listener) => listener());
  }

  sheet(name: string): Sheet {
    const found = this.workbook.sheets.find((sheet) => same(sheet.name, name));
    if (!found) throw FAILURES.gone(name);
    return found;
  }

  private blocksAt(address: string): Box[] {
    return sideBySide(
      blockAddresses(address).map((part) => {
        const box = blockOf(part);
        if (!box) throw new WorkbookError(say`"${verbatim(part)}" is no address of cells.`);
        return box;
      }),
    );
  }

  /** A name of the sheet first, then a name of the workbook that leads to the sheet. */
  private boxNamed(sheet: Sheet, name: string): Box | undefined {
    const isBox = (place: Place | undefined): place is Box => place !== undefined && place !== "lost" && "row" in place;
    const find = <T>(names: ReadonlyMap<string, T>): T | undefined =>
      names.get(name) ?? [...names].find(([called]) => same(called, name))?.[1];
    const own = find(sheet.names);
    if (isBox(own)) return own;
    const shared = find(this.workbook.names);
    return shared && same(shared.sheet, sheet.name) && isBox(shared.place) ? shared.place : undefined;
  }

  private async readNamed(
    method: "readNames" | "readContents",
    sheet: string,
    names: readonly string[],
    read: typeof valuesOf,
  ): Promise<Record<string, Selection["values"]>> {
    return this.answer(method, () => {
      const of = this.sheet(sheet);
      return Object.fromEntries(
        names.flatMap((name) => {
          const box = this.boxNamed(of, name);
          return box ? [[name, read(of, box)]] : [];
        }),
      );
    });
  }

  activeSheet = () => this.answer("activeSheet", () => this.workbook.front);

  readSheets = (names: readonly string[]): Promise<SheetValues[]> =>
    this.answer("readSheets", () =>
      this.workbook.sheets.map((sheet) => ({
        sheet: sheet.name,
        isActive: same(sheet.name, this.workbook.front),
        values: Object.fromEntries(
          names.flatMap((name) => {
            const box = this.boxNamed(sheet, name);
            return box ? [[name, valuesOf(sheet, box)]] : [];
          }),
        ),
      })),
    );

  findSheets = (names: readonly string[]): Promise<FoundSheet[]> =>
    this.answer("findSheets", () =>
      this.workbook.sheets.map((sheet) => ({
        id: this.idOf(sheet),
        sheet: sheet.name,
        isActive: same(sheet.name, this.workbook.front),
        has: names.filter((name) => this.boxNamed(sheet, name)),
        ...(sheet.isVeryHidden && { isVeryHidden: true }),
      })),
    );

  private idOf(sheet: Sheet): string {
    const id = this.ids.get(sheet) ?? `sheet ${this.ids.size + 1}`;
    this.ids.set(sheet, id);
    return id;
  }

  lookAt = (asked: readonly Asked[]): Promise<Looked[]> =>
    this.answer("lookAt", () =>
      Promise.all(
        asked.map(async ({ sheet, values, contents = [], names, hidden }) => ({
          sheet: this.sheet(sheet).name,
          values: await this.readNames(sheet, values),
          contents: await this.readContents(sheet, contents),
          ...(names && { names: await this.listNames(sheet) }),
          ...(hidden && { hidden: await this.hidden(sheet) }),
          ...(this.isOnRequest && { isOnRequest: true }),
        })),
      ),
    );

  /** Set by a test of a host that calculates only when it is asked. */
  isOnRequest = false;

  /** Set by a test of a workbook that counts its days from 1904. */
  isFrom1904 = false;

  countsFrom1904 = () => Promise.resolve(this.isFrom1904);

  calculate = () => this.answer("calculate", () => undefined);

  sheetNames = () => this.answer("sheetNames", () => this.workbook.sheets.map(({ name }) => name));

  /** Makes every sheet completely: there is nothing to report. */
  insertSheet = (plan: SheetPlan): Promise<string> =>
    this.answer("insertSheet", async () => {
      checkPlan(plan);
      refuseReadElsewhere(plan, await this.namesRead(plan));
      if (this.workbook.isStructureProtected) throw FAILURES.structure();
      for (const { series } of plan.charts ?? [])
        for (const { sheet } of series.flatMap(({ x, y }) => [x, y])) if (sheet !== undefined) this.sheet(sheet);
      const name = this.freeName(plan.name);
      this.workbook.sheets.push(sheetOf(plan, name));
      this.inserted.push(plan);
      this.tell("sheets", "values");
      if (!plan.behind) this.bringForward(name, [{ row: 0, col: 0, rows: 1, cols: 1 }]);
      return name;
    });

  private async namesRead({ reads }: SheetPlan): Promise<readonly SheetName[] | undefined> {
    const isThere = this.workbook.sheets.some(({ name }) => reads && same(name, reads.sheet));
    return reads && isThere ? this.listNames(reads.sheet) : undefined;
  }

  private freeName(wanted: string, more: readonly string[] = []): string {
    return freeSheetName(withoutApostrophes(wanted), [...this.workbook.sheets.map(({ name }) => name), ...more]);
  }

  /** Selects cells of a sheet, which comes to the front. Listeners are told. */
  bringForward(sheet: string, boxes: readonly Box[] | "a chart" = [{ row: 0, col: 0, rows: 1, cols: 1 }]): void {
    const isOther = this.workbook.front !== sheet;
    this.workbook.front = sheet;
    this.workbook.selected = boxes;
    if (isOther) this.tell("front");
    this.tellSelected();
  }

  selection = (): Promise<Selection> =>
    this.answer("selection", () => {
      const { front, selected } = this.workbook;
      if (selected === "a chart") throw FAILURES.chart();
      const sheet = this.sheet(front);
      const boxes = sideBySide(cutToUsed(sheet, selected));
      return {
        sheet: sheet.name,
        address: boxes.map(addressOf).join(","),
        values: joined(boxes.map((box) => valuesOf(sheet, box))),
      };
    });

  values = (sheet: string, address: string): Promise<Selection["values"]> =>
    this.answer("values", () => {
      const of = this.sheet(sheet);
      return joined(this.blocksAt(address).map((box) => valuesOf(of, box)));
    });

  show = (sheet: string, address: string): Promise<void> =>
    this.answer("show", () => {
      const { name, isHidden } = this.sheet(sheet);
      const [box] = this.blocksAt(address);
      if (isHidden) throw FAILURES.hidden(sheet);
      this.bringForward(name, [box]);
      this.shown.push(`${sheet}!${address}`);
    });

  hidden = (sheet: string) =>
    this.answer("hidden", () => {
      const { hiddenRows, hiddenCols } = this.sheet(sheet);
      return { rows: [...hiddenRows], cols: [...hiddenCols] };
    });

  readNames = (sheet: string, names: readonly string[]) => this.readNamed("readNames", sheet, names, valuesOf);
  readContents = (sheet: string, names: readonly string[]) => this.readNamed("readContents", sheet, names, contentsOf);

  fillNames = (
    sheet: string,
    values: NamedColumns,
    blank: readonly string[] = [],
    free: readonly string[] = [],
    held: NamedColumns = {},
  ): Promise<void> =>
    this.answer("fillNames", () => {
      const of = this.sheet(sheet);
      const contents = (name: string) => {
        const box = this.boxNamed(of, name);
        // A text that begins like a formula is not one.
        return (
          box &&
          Array.from({ length: lengthOf(box) }, (_, index) => {
            const cell = of.cells.get(addressInList(box, index));
            return (
              cell?.formula ?? (typeof cell?.value === "string" ? cell.value.replace(/^=/, "'=") : cell?.value) ?? ""
            );
          })
        );
      };
      const shown = (name: string) => {
        const box = this.boxNamed(of, name);
        return (
          box &&
          Array.from({ length: lengthOf(box) }, (_, index) => of.cells.get(addressInList(box, index))?.value ?? "")
        );
      };
      checkFill(sheet, values, { blank, free, held }, contents, shown);
      const writes = Object.entries(values).flatMap(([name, list]) => {
        const box = this.boxNamed(of, name)!;
        const isInput = mayWrite(of, box.row, box.col);
        return list.flatMap((value, index) => {
          const cell = { ...cellOfList(box, index), value };
          return value === null ? [] : [{ ...cell, value, isInput }];
        });
      });
      const locked = writes.filter(({ row, col }) => !mayWrite(of, row, col));
      if (locked.some((cell) => !cell.isInput || (of.cells.get(cellAddress(cell.row, cell.col))?.value ?? "") !== ""))
        throw FAILURES.protected(sheet);
      of.open = [...of.open, ...locked.map(({ row, col }) => ({ row, col, rows: 1, cols: 1 }))];
      for (const { row, col, value } of writes) writeCell(of, row, col, value);
      this.filled.push({ sheet, values });
      this.tell("values");
    });

  writeCells = (
    sheet: string,
    cells: readonly CellContent[],
    replace = false,
    names?: readonly SheetName[],
  ): Promise<void> =>
    this.answer("writeCells", async () => {
      if (names) refuseMoved(sheet, names, await this.listNames(sheet));
      const of = this.sheet(sheet);
      const at = ({ row, col }: CellContent) => of.cells.get(cellAddress(row, col));
      checkWrite({
        ...{ sheet, cells, replace },
        standing: (cell) => ({
          content: at(cell)?.formula ?? at(cell)?.value ?? "",
          shown: at(cell)?.value ?? "",
          isText: at(cell)?.format === "@",
        }),
        hasName: ({ name, sheet: other }) =>
          this.workbook.sheets.some((one) => same(one.name, other ?? sheet) && this.boxNamed(one, name) !== undefined),
      });
      if (of.protection === "with password") throw FAILURES.password();
      for (const cell of cells)
        if ("formula" in cell) {
          const formula = withReferences(cell.formula, ({ name, sheet: other }) =>
            other === undefined ? name : `${quoted(other)}!${name}`,
          );
          writeCell(of, cell.row, cell.col, this.functions.get(formula) ?? "", formula);
        } else writeCell(of, cell.row, cell.col, cell.value);
      for (const { row, col, format } of cells)
        if (format !== undefined) {
          const address = cellAddress(row, col);
          of.cells.set(address, { value: "", ...of.cells.get(address), format });
        }
      this.asked.push(`write ${cells.length} cells of ${sheet}`);
      this.tell("values");
    });

  listNames = (sheet: string): Promise<SheetName[]> =>
    this.answer("listNames", () => {
      const of = this.sheet(sheet);
      const told = (place: Place): SheetName["place"] => (place !== "lost" && "row" in place ? place : "lost");
      const own = [...of.names].map(([name, place]): SheetName => ({ name, scope: "sheet", place: told(place) }));
      const shared = [...this.workbook.names]
        .filter(([, { sheet: owner, place }]) => place === "lost" || same(owner, of.name))
        .map(([name, { place }]): SheetName => ({ name, scope: "workbook", place: told(place) }));
      return [...own, ...shared];
    });

  nameAll = (sheet: string, names: readonly NamedAddress[], found?: readonly SheetName[]): Promise<void> =>
    this.answer("nameAll", async () => {
      if (found) refuseMoved(sheet, found, await this.listNames(sheet));
      const of = this.sheet(sheet);
      const given = names.map(({ name, address, ends, replace }) => {
        checkNaming(name, address);
        const box = this.blocksAt(address)[0]!;
        const { row, col, rows, cols } = box;
        const corners = [cellAddress(row, col), cellAddress(row + rows - 1, col + cols - 1)];
        refuseOtherEnds(sheet, ends, corners.map((cell) => of.cells.get(cell)?.value ?? "")); // prettier-ignore
        const called = [...of.names.keys()].find((one) => same(one, name)) ?? name;
        const present = of.names.get(called);
        if (present && present !== "lost" && !replace) {
          const at = "row" in present ? addressOf(present) : present.map(addressOf).join(",");
          throw new WorkbookError(
            say`The name "${verbatim(name)}" is already at ${verbatim(at)} and was left there: say that it may be moved.`,
          );
        }
        return { called, box };
      });
      for (const { called, box } of given) of.names.set(called, box);
      for (const { name, address, replace } of names)
        this.asked.push(`name ${name} ${sheet}!${address}${replace ? " in place of another" : ""}`);
      this.tell("sheets");
    });

  reenterFormulas = (sheet: string) => {
    this.asked.push(`re-enter ${sheet}`);
    return this.answer("reenterFormulas", () => {
      const of = this.sheet(sheet);
      const unbound = [...of.cells].filter(([, { value, formula }]) => formula !== undefined && value === UNKNOWN);
      if (unbound.length > 0 && of.protection === "with password") throw FAILURES.password();
      for (const [address, cell] of unbound)
        of.cells.set(address, { ...cell, value: this.functions.get(cell.formula!) ?? UNKNOWN });
      const left = unbound.filter(([, { formula }]) => !this.functions.has(formula!)).length;
      if (unbound.length > 0) this.tell("values");
      return { found: unbound.length, left };
    });
  };

  insertFile = (file: Uint8Array): Promise<Inserted> => {
    this.asked.push(`insert ${file.length} bytes`);
    return this.answer("insertFile", async () => {
      const taken: string[] = [];
      const nameFor = (wanted: string): string => {
        taken.push(this.freeName(wanted, taken));
        return taken[taken.length - 1];
      };
      const refuse = (): never => {
        throw new WorkbookError(say`This is no .xlsx workbook: choose another file. Nothing was inserted.`);
      };
      if (!isXlsx(file)) refuse();
      if (this.workbook.isStructureProtected) throw FAILURES.structure();
      const { sheets, remarks } = await sheetsOfFile(file, nameFor).catch(refuse);
      this.workbook.sheets.push(...sheets);
      this.tell("sheets", "values");
      this.bringForward(sheets[0].name);
      return { sheets: sheets.map(({ name }) => name), remarks };
    });
  };

  isProtected = (sheet: string) => this.answer("isProtected", () => this.sheet(sheet).protection !== "none");

  protect = (sheet: string, on: boolean): Promise<void> =>
    this.answer("protect", () => {
      const of = this.sheet(sheet);
      if (on === (of.protection !== "none")) return;
      if (of.protection === "with password") throw FAILURES.password();
      of.protection = on ? "without password" : "none";
      this.asked.push(`${on ? "protect" : "open"} ${sheet}`);
    });

  onChange = async (listener: (change: Change) => void): Promise<() => void> => {
    this.listeners.add(listener);
    return () => void this.listeners.delete(listener);
  };

  onSelect = async (listener: () => void): Promise<() => void> => {
    this.selecting.add(listener);
    return () => void this.selecting.delete(listener);
  };

  // --- Changes that a test makes to the workbook; listeners are told only where a comment says so.

  /** The notes on work that has not ended. */
  readonly notes: WorkNote[] = [];
  /** What was noted so far, "summary of Summary", newest last. */
  readonly noted: string[] = [];
  noteWork = (kind: KindOfWork, sheet: string): Promise<string> =>
    this.answer("noteWork", () => {
      this.noted.push(`${kind} of ${sheet}`);
      const id = `note ${this.notes.length + 1}`;
      this.notes.push({ id, kind, sheet, since: "2026-03-09 14:05" });
      return id;
    });
  strikeWork = (id: string): Promise<void> =>
    this.answer("strikeWork", () => {
      const at = this.notes.findIndex((one) => one.id === id);
      if (at >= 0) this.notes.splice(at, 1);
    });
  unfinishedWork = (): Promise<WorkNote[]> => this.answer("unfinishedWork", () => [...this.notes]);

  /** Adds blank sheets; with `only` the others are removed, and the first new one is in front. */
  addSheets(...names: readonly string[]): void {
    this.workbook.sheets.push(...names.map(blankSheet));
  }
  onlySheets(...names: readonly string[]): void {
    this.workbook.sheets.splice(0, Infinity, ...names.map(blankSheet));
    this.tell("sheets");
    this.bringForward(names[0]);
  }

  /** Renames or deletes a sheet, as a person does. Listeners are told. */
  renameSheet(sheet: string, name: string): void {
    const of = this.sheet(sheet);
    if (same(this.workbook.front, sheet)) this.workbook.front = name;
    of.name = name;
    this.tell("sheets");
  }
  deleteSheet(sheet: string): void {
    this.workbook.sheets.splice(this.workbook.sheets.indexOf(this.sheet(sheet)), 1);
    this.tell("sheets");
    if (same(this.workbook.front, sheet)) this.bringForward(this.workbook.sheets[0].name);
  }

  /** Puts named columns of values side by side from row 11 on a sheet, which is added if it does not exist. */
  lay(sheet: string, columns: Readonly<Record<string, readonly CellValue[]>>): void {
    if (!this.workbook.sheets.some(({ name }) => same(name, sheet))) this.addSheets(sheet);
    const of = this.sheet(sheet);
    of.cells.clear();
    of.names.clear();
    Object.entries(columns).forEach(([name, list], col) => {
      of.names.set(name, { row: 10, col, rows: Math.max(list.length, 1), cols: 1 });
      // A cell that is not there is blank: a data sheet has 48,000 blank ones.
      for (const [index, value] of list.entries()) if (value !== "") writeCell(of, 10 + index, col, value);
    });
  }

  /** Puts a value into a named cell, or a formula with its value. */
  put(sheet: string, name: string, index: number, value: CellValue, formula?: string): void {
    const of = this.sheet(sheet);
    const box = this.boxNamed(of, name);
    if (!box) throw new Error(`the sheet "${sheet}" has no name "${name}"`);
    writeCell(of, box.row + index, box.col, value, formula);
  }

  /** The first column of each name of a sheet. */
  columns(sheet: string): Record<string, CellValue[]> {
    const of = this.sheet(sheet);
    return Object.fromEntries(
      [...of.names.keys()].flatMap((name) => {
        const box = this.boxNamed(of, name);
        return box ? [[name, valuesOf(of, box).map(([first]) => first)]] : [];
      }),
    );
  }

  /** Gives a sheet these names and no others. */
  nameSheet(sheet: string, names: readonly SheetName[]): void {
    this.sheet(sheet).names = new Map(names.map(({ name, place }) => [name, place]));
  }

  /**
   * Types values into cells of the front sheet, from the first of an address on, and selects them. Listeners are told.
   */
  select(values: Selection["values"], address = addressOfValues(values)): void {
    this.workbook.selected = blockAddresses(address).map((part) => blockOf(part)!);
    this.change(values, address);
    this.tellSelected();
  }

  /** Changes cells of the front sheet while the selection stays. Listeners are told. */
  change(values: Selection["values"], address = addressOfValues(values)): void {
    const sheet = this.sheet(this.workbook.front);
    const { row, col } = blockOf(blockAddresses(address)[0])!;
    values.forEach((line, down) => line.forEach((value, right) => writeCell(sheet, row + down, col + right, value)));
    this.tell("values");
  }
}

const addressOfValues = (values: Selection["values"]): string =>
  addressOf({ row: 0, col: 0, rows: values.length, cols: values[0].length });
