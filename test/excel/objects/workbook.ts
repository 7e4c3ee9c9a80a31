/** The workbook itself, its selection and its protection. */
import { sheetById, type Sheet } from "../book/book";
import { accessDenied, notFound, Refusal } from "../refusal";
import { Being } from "./being";
import { Chart } from "./charts";
import { insertFile } from "./insertion";
import { NamedItemCollection } from "./names";
import { Range, RangeAreas } from "./range";
import { SettingCollection } from "./settings";
import { WorksheetCollection } from "./worksheet";

const invalidSelection = (): Refusal =>
  new Refusal("InvalidSelection", "The current selection is invalid for this operation.");

export class Workbook extends Being {
  readonly className = "Workbook";

  get name(): string {
    return "Book1.xlsx";
  }
  get worksheets(): WorksheetCollection {
    return new WorksheetCollection(this.host);
  }
  get names(): NamedItemCollection {
    return new NamedItemCollection(this.host, undefined);
  }
  get settings(): SettingCollection {
    return new SettingCollection(this.host);
  }
  get protection(): WorkbookProtection {
    return new WorkbookProtection(this.host);
  }
  get application(): Application {
    return new Application(this.host);
  }

  get functions(): Functions {
    return new Functions(this.host);
  }

  /** The selected areas; refuses if a chart or nothing is selected, or another window is in front. */
  private selected(): { sheet: Sheet; boxes: RangeAreas["boxes"] } {
    const { selection } = this.host.book;
    if (selection.kind !== "cells" || this.host.switches.isInBackground) throw invalidSelection();
    return { sheet: sheetById(this.host.book, selection.sheet)!, boxes: selection.boxes };
  }
  getSelectedRange(): Range {
    const { sheet, boxes } = this.selected();
    if (boxes.length > 1) throw invalidSelection();
    return new Range(this.host, sheet, boxes[0]);
  }
  getSelectedRanges(): RangeAreas {
    const { sheet, boxes } = this.selected();
    return new RangeAreas(this.host, sheet, boxes);
  }
  getActiveCell(): Range {
    const { sheet, boxes } = this.selected();
    return new Range(this.host, sheet, { ...boxes[0], rows: 1, cols: 1 });
  }
  getActiveChartOrNullObject(): Chart | null {
    const { selection } = this.host.book;
    if (selection.kind !== "chart") return null;
    const sheet = sheetById(this.host.book, selection.sheet)!;
    const chart = sheet.charts.find(({ id }) => id === selection.chart);
    return chart ? new Chart(this.host, sheet, chart) : null;
  }
  getActiveChart(): Chart {
    const chart = this.getActiveChartOrNullObject();
    if (!chart) throw notFound("the active chart");
    return chart;
  }
  insertWorksheetsFromBase64(base64: string, options: Record<string, unknown> | null): Promise<string[]> {
    return insertFile(this.host, base64, options ?? {});
  }
}

/** The day number of 1 January 1970 in a workbook that counts from 1900, and of 1 January 1904 (ISO/IEC 29500-1, 18.17.4.1). */
const UNIX_EPOCH = 25_569;
const DAYS_TO_1904 = 1462;

class Functions extends Being {
  readonly className = "Functions";
  date(year: number, month: number, day: number): FunctionResult {
    const days = Date.UTC(year, month - 1, day) / 86_400_000 + UNIX_EPOCH;
    return new FunctionResult(this.host, this.host.switches.countsFrom1904 ? days - DAYS_TO_1904 : days);
  }
}

class FunctionResult extends Being {
  readonly className = "FunctionResult";
  constructor(
    host: Being["host"],
    readonly value: number,
  ) {
    super(host);
  }
  get error(): string {
    return "";
  }
}

class Application extends Being {
  readonly className = "Application";
  get calculationMode(): string {
    return this.host.evaluation.isManual ? "Manual" : "Automatic";
  }
  get calculationState(): string {
    return this.host.evaluation.busyFor > 0 ? "Calculating" : "Done";
  }
  calculate(): void {
    this.host.calculate();
    this.host.raise("calculated");
  }
  suspendScreenUpdatingUntilNextSync(): void {}
  suspendApiCalculationUntilNextSync(): void {}
}

class WorkbookProtection extends Being {
  readonly className = "WorkbookProtection";
  get protected(): boolean {
    return this.host.book.structure.on;
  }
  protect(password: string | null): void {
    if (this.protected) throw new Refusal("InvalidOperation", "The workbook is protected already.");
    this.host.book.structure = { on: true, ...(password && { password }) };
  }
  unprotect(password: string | null): void {
    const { on, password: wanted } = this.host.book.structure;
    if (on && wanted !== undefined && wanted !== password) throw accessDenied("The password is not correct.");
    this.host.book.structure = { on: false };
  }
}
