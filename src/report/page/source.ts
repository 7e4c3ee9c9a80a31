/** The source of a report: the cells of a data sheet by their names, for its values and formulas. */
import { english, say, verbatim, type Message, type Value } from "../../reduction/message";
import { boxAddress, quoted } from "../../workbook/address";
import { addressInList, lengthOf, partOfList } from "../../workbook/lists";
import { textOf } from "../../record/cells";
import { cellNamed, type NamedValues, type TestRecord } from "../../record/record";
import type { Answered } from "../../checks";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../specification/text/language";
import type { Box, CellValue, SheetName } from "../../workbook/port";

export interface ReportSource {
  /** The name of the data sheet in the workbook. */
  readonly sheet: string;
  /** As `WorkbookPort.listNames` gives them. */
  readonly names: readonly SheetName[];
  /** As `WorkbookPort.readNames` gives them: in the units of the sheet. */
  readonly values: NamedValues;
  readonly record: TestRecord;
  readonly answered: readonly Answered[];
  /** A reviewer's answers to checks, by the id of the check. */
  readonly acknowledged?: Readonly<Record<string, Message>>;
  /** Findings on the cells, in sentences: overwritten formulas, hidden rows, numbers stored as text. */
  readonly cellFindings?: readonly Message[];
  /** Limits of checks that the firm has changed, each with who and why. */
  readonly changedLimits?: readonly Message[];
  /** Limits of error from an earlier report of this sheet, which this report keeps. */
  readonly limits?: Readonly<Record<string, KeptLimit>>;
  readonly paper: "A4" | "Letter";
  /** The ordinate of the compression curve on the first page: void ratio, or strain. */
  readonly curve?: "e" | "strain";
  /** The language of the report in its stored form; "en" if it is left out. */
  readonly language?: string;
  /** Puts a message into words of this language; English if it is left out. */
  readonly inWords?: (value: Value) => string;
  readonly preparedBy: string;
  /** If the report is locked as an issue: what the issue says of itself. */
  readonly issue?: IssueMark | undefined;
  /** Time of the report, local time. */
  readonly now: Date;
}

/** What a locked issue of a report says of itself. */
export interface IssueMark {
  readonly number: number;
  /** "2026-03-09 14:05", local time. */
  readonly day: string;
  readonly by: string;
  /** SHA-256 of the readings, in hexadecimal. */
  readonly hash: string;
  /** SHA-256 of the locked values and of what the issue says of itself; absent in issues of older versions. */
  readonly valuesHash?: string;
}

/** A limit of error that a person changed, with who and why. */
export interface KeptLimit {
  readonly value: number;
  readonly by?: string;
  readonly why?: string;
}

/** The cells of a data sheet, for the formulas of a report. */
export class DataCells {
  readonly #boxes = new Map<string, Box>();
  /** Puts a message into words of the report's language. */
  readonly words: (value: Value) => string;
  /** The report's language, for words of lists; English if a sheet has no such language. */
  readonly language: SheetLanguage;

  constructor(readonly source: ReportSource) {
    this.words = source.inWords ?? english;
    this.language = SHEET_LANGUAGES.find((one) => one === source.language) ?? "en";
    // The names of the sheet come first, and take precedence over names of the workbook.
    for (const { name, place } of source.names)
      if (place !== "lost" && !this.#boxes.has(name)) this.#boxes.set(name, place);
  }

  has(name: string): boolean {
    return this.#boxes.has(name);
  }

  #on(box: Box): string {
    return `${quoted(this.source.sheet)}!${boxAddress(box)}`;
  }

  rows(name: string): number {
    const box = this.#boxes.get(name);
    return box ? lengthOf(box) : 0;
  }

  /** "'Test 1'!$B$12", the cell in a row of a column, counted from 0; undefined if the sheet has no such cell. */
  at(name: string, row = 0): string | undefined {
    const box = this.#boxes.get(name);
    if (!box || row >= lengthOf(box)) return undefined;
    return this.#on(partOfList(box, row, 1));
  }

  /** All rows of the first column of a name. */
  column(name: string): string | undefined {
    const box = this.#boxes.get(name);
    return box && this.#on(partOfList(box, 0, lengthOf(box)));
  }

  /** A reference to rows of one column of a name's cells; all are counted from 0. */
  rowsOf(name: string, first: number, last: number, col: number): string | undefined {
    const box = this.#boxes.get(name);
    if (!box || last >= lengthOf(box) || (col > 0 && col >= box.cols)) return undefined;
    return this.#on(partOfList({ ...box, col: box.col + col }, first, last - first + 1));
  }

  /** All cells of a name. */
  block(name: string): string | undefined {
    const box = this.#boxes.get(name);
    return box && this.#on(box);
  }

  /** "B12", or "B12:B35", for a reader; undefined if the sheet has no such cell. */
  place(name: string, row?: number): string | undefined {
    const box = this.#boxes.get(name);
    if (!box) return undefined;
    return row === undefined && lengthOf(box) > 1
      ? `${addressInList(box, 0)}:${addressInList(box, lengthOf(box) - 1)}`
      : addressInList(box, row ?? 0);
  }

  /** The value of the cell, a word of a list in English; "" for a blank, a cell of spaces, or no cell. */
  value(name: string, row = 0): CellValue {
    const value = this.source.values[name]?.[row]?.[0] ?? "";
    return typeof value === "string" ? textOf(name, value.trim()) : value;
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

/** "Ring + dry soil (ring_and_dry), cell C21" or "cells C21:C40", or that the sheet has no such cell. */
export function called(cells: DataCells, name: string, row?: number): Message {
  const place = cells.place(name, row);
  if (place === undefined) return say`${cellNamed(name)}, no cell of this name on the sheet`;
  return place.includes(":")
    ? say`${cellNamed(name)}, cells ${verbatim(place)}`
    : say`${cellNamed(name)}, cell ${verbatim(place)}`;
}

/** A load of the test, with its row of the load table, from 0. */
export interface ReportedLoad {
  readonly number: number;
  readonly row: number;
  /** Number of rows with readings. */
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
