/** What a report is made from, and where its formulas find it: the cells of a data sheet, by their names. */
import { type Message } from "../../reduction/message";
import { columnLetters, quoted } from "../../workbook/address";
import { cellCalled, type NamedValues, type TestRecord } from "../../record/record";
import type { Answered } from "../../checks";
import type { Box, CellValue, SheetName } from "../../workbook/port";

export interface ReportSource {
  /** The data sheet's name, as the workbook has it. */
  readonly sheet: string;
  /** As `WorkbookPort.listNames` gives them. */
  readonly names: readonly SheetName[];
  /** As `WorkbookPort.readNames` gives them: in the units of the sheet. */
  readonly values: NamedValues;
  readonly record: TestRecord;
  readonly answered: readonly Answered[];
  /** What a reviewer has said of a check, by its id. */
  readonly acknowledged?: Readonly<Record<string, string>>;
  /** What befell the cells, in sentences: formulas typed over, hidden rows, numbers stored as text. */
  readonly cellFindings?: readonly Message[];
  /** Limits of checks that the firm has changed, each with who and why. */
  readonly changedLimits?: readonly string[];
  /** Limits of an earlier report of this sheet, which this one takes over. */
  readonly limits?: Readonly<Record<string, KeptLimit>>;
  readonly paper: "A4" | "Letter";
  readonly preparedBy: string;
  /** When the report is made, local time. */
  readonly now: Date;
}

/** A limit of error changed by a person, with who and why. */
export interface KeptLimit {
  readonly value: number;
  readonly by?: string;
  readonly why?: string;
}

/** The cells of a data sheet as a report's formulas refer to them. */
export class DataCells {
  readonly #boxes = new Map<string, Box>();

  constructor(readonly source: ReportSource) {
    // The sheet's own names come first, and rule over names of the workbook.
    for (const { name, place } of source.names)
      if (place !== "lost" && !this.#boxes.has(name)) this.#boxes.set(name, place);
  }

  has(name: string): boolean {
    return this.#boxes.has(name);
  }

  rows(name: string): number {
    return this.#boxes.get(name)?.rows ?? 0;
  }

  /** "'Test 1'!$B$12", a row of a column counted from 0; undefined where the sheet has no such cell. */
  at(name: string, row = 0): string | undefined {
    const box = this.#boxes.get(name);
    if (!box || row >= box.rows) return undefined;
    return `${quoted(this.source.sheet)}!$${columnLetters(box.col)}$${box.row + row + 1}`;
  }

  /** The first column of a name's cells, all rows. */
  column(name: string): string | undefined {
    const box = this.#boxes.get(name);
    const first = this.at(name);
    return box && (box.rows === 1 ? first : `${first}:$${columnLetters(box.col)}$${box.row + box.rows}`);
  }

  /** All cells of a name. */
  block(name: string): string | undefined {
    const box = this.#boxes.get(name);
    return box && `${this.at(name)}:$${columnLetters(box.col + box.cols - 1)}$${box.row + box.rows}`;
  }

  /** "B12", or "B12:B35": where a person finds it; undefined where the sheet has no such cell. */
  place(name: string, row?: number): string | undefined {
    const box = this.#boxes.get(name);
    if (!box) return undefined;
    const cell = (at: number) => `${columnLetters(box.col)}${at + 1}`;
    return row === undefined && box.rows > 1
      ? `${cell(box.row)}:${cell(box.row + box.rows - 1)}`
      : cell(box.row + (row ?? 0));
  }

  /** What the cell shows; "" for a blank, a cell of spaces, or none. */
  value(name: string, row = 0): CellValue {
    const value = this.source.values[name]?.[row]?.[0] ?? "";
    return typeof value === "string" ? value.trim() : value;
  }

  text(name: string, row = 0): string {
    return String(this.value(name, row));
  }

  number(name: string, row = 0): number | undefined {
    const value = this.value(name, row);
    return typeof value === "number" ? value : undefined;
  }

  isBlank(name: string, row = 0): boolean {
    return this.value(name, row) === "";
  }
}

/** "Ring + dry soil (ring_and_dry), cell C21", or that there is no such cell. */
export const called = (cells: DataCells, name: string, row?: number): string =>
  `${cellCalled(name)}, ${cells.has(name) ? `cell ${cells.place(name, row)}` : "no cell of this name on the sheet"}`;

/** A load of the test with the row of the load table, from 0, that it stands in. */
export interface ReportedLoad {
  readonly number: number;
  readonly row: number;
  /** Rows of the readings that hold something. */
  readonly readings: number;
}

/** The loads that have a stress or readings, in the order of the load table. */
export function reportedLoads(cells: DataCells): ReportedLoad[] {
  const { record, values } = cells.source;
  return record.loads.map(({ number, readings }) => {
    const found = values.load_number?.findIndex(([value]) => value === number) ?? -1;
    return { number, row: found >= 0 ? found : number - 1, readings: readings.length };
  });
}
