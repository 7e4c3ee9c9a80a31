/**
 * The port: everything that the data sheet, the pane and the plots may do with a workbook. Two adapters implement it,
 * office/ (Excel) and embedded/ (the open-source sheet of `npm start`).
 *
 * Rows and columns are counted from 0. A formula is written in en-US form, with `{name}` for a name of its own sheet:
 * the adapter replaces it by the name in its host. (Names are local to a sheet, so that several tests in one workbook
 * do not collide; a host without local names gives them a suffix.)
 */

export type CellValue = number | string | boolean;

/**
 * The look of a cell, in words that both hosts understand. The kind decides fill and border; kinds never differ by
 * colour alone.
 */
export type CellKind = "title" | "heading" | "label" | "unit" | "input" | "result" | "remark" | "note";

export interface CellPlan {
  readonly row: number;
  readonly col: number;
  readonly kind: CellKind;
  /** A constant, shown unchanged. */
  readonly value?: CellValue;
  /** "=CLAY.VOID_RATIO({initial_height},{solids_height})" */
  readonly formula?: string;
  /** Number format in Excel's spelling: "0.000", "0.0%", "0.00E+00", "yyyy-mm-dd"; "@" is text. */
  readonly format?: string;
  /** The meaning of the cell, with formula and source; shown as a note or comment if the host has them. */
  readonly note?: string;
  /** The allowed words of an input cell. */
  readonly choices?: readonly string[];
  /** Alignment of the content; if absent, numbers are at the right and texts at the left. */
  readonly align?: "left" | "center" | "right";
  /** The text is broken into lines that fit its cell or merged cells, from the top. */
  readonly wrap?: boolean;
}

/** What a host shows of a sheet: in the footer of a printed page, and above the message about an entry that it refuses. */
export interface HostWords {
  /** With Excel's codes for the page and the number of pages: "Page &P of &N" */
  readonly page: string;
  readonly printed: string;
  /** Titles of messages, at most 32 characters. */
  readonly notNumber: string;
  readonly notDate: string;
  readonly notListed: string;
  /** Stands before the words of a list: "Choose one of:" */
  readonly chooseOne: string;
}

/** The entries that the cells of a box accept; a blank is always accepted. Dates are day numbers. */
export interface EntryRule {
  readonly box: Box;
  readonly kind: "number" | "date";
  readonly least?: number;
  /** True if the least value itself is refused. */
  readonly above?: boolean;
  readonly most?: number;
  /** What the cell accepts; the host shows it when something else is typed. At most 225 characters. */
  readonly message: string;
}

export interface Box {
  readonly row: number;
  readonly col: number;
  readonly rows: number;
  readonly cols: number;
}

/** One axis of a chart. A log axis has whole decades; an axis of root time is linear in the root of minutes. */
export interface ChartAxis {
  readonly label: string;
  readonly scale: "log" | "linear";
  readonly domain: readonly [low: number, high: number];
  /** True if values increase downward (y) or to the left (x). */
  readonly reversed: boolean;
}

/** Cells of one column, on the sheet of the chart unless another sheet is named. */
export interface ChartCells {
  readonly sheet?: string;
  readonly box: Box;
}

/** One series of a scatter chart. A cell with text, #N/A or nothing is a gap. */
export interface ChartSeries {
  readonly name: string;
  readonly x: ChartCells;
  readonly y: ChartCells;
  /** Symbols only, a full line, a thin full line, or a thin dashed line. Series never differ by colour alone. */
  readonly style: "points" | "line" | "thin" | "dashed";
  /** The symbol of a series of points. */
  readonly symbol?: "filled" | "open" | "cross";
  /** The shape of filled and open symbols; circles if omitted. */
  readonly shape?: "circle" | "triangle";
  /** Whether the name stands beside the end of the line. */
  readonly lettered?: boolean;
  /** Where it stands; above the end of a heavy or dashed line and below others if omitted. */
  readonly nameAt?: NamePlace;
  /** An upright line, on which its own name stands: the name has a ground of paper, so that the line does not cross its letters. */
  readonly isUpright?: boolean;
}

/** Where the name of a line stands beside its end. */
export const NAME_PLACES = ["above", "below", "left", "right"] as const;
export type NamePlace = (typeof NAME_PLACES)[number];

/** A scatter chart of cells of a sheet: it changes with the cells. */
export interface ChartPlan {
  readonly title: string;
  /** The cells that the chart covers. */
  readonly box: Box;
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly series: readonly ChartSeries[];
  /** Whether the chart is small: its texts are then smaller. */
  readonly isSmall?: boolean;
}

/** A whole sheet to be made, as data. */
export interface SheetPlan {
  /** The sheet's name if it is free; otherwise " 2", " 3", ... is added. */
  readonly name: string;
  readonly rows: number;
  readonly cols: number;
  readonly cells: readonly CellPlan[];
  /** Local names: `{name}` in a formula, and readers by name, refer to these. */
  readonly names: Readonly<Record<string, Box>>;
  /** Column widths in characters of the default font, by column; absent columns keep the default. */
  readonly columnWidths: Readonly<Record<number, number>>;
  /** Row heights in points, by row; absent rows keep the default. */
  readonly rowHeights?: Readonly<Record<number, number>>;
  readonly merges: readonly Box[];
  readonly freezeRows: number;
  /** The cells on each printed page; if absent, the whole sheet is printed. */
  readonly pages?: readonly Box[];
  readonly paper?: "A4" | "Letter";
  /** Text in the footer of each page, beside the file name and the page number. */
  readonly footer?: string;
  /** The words that the host shows of the sheet; English if they are left out. */
  readonly hostWords?: HostWords;
  readonly entries?: readonly EntryRule[];
  /** Protects everything except the inputs and `open`, without a password, if the host can. */
  readonly isProtected?: boolean;
  /** Blank cells that stay open, as the inputs do. */
  readonly open?: readonly Box[];
  /** The sheet is made without being shown: the sheet in front stays there. */
  readonly behind?: boolean;
  readonly charts?: readonly ChartPlan[];
  /**
   * A sheet to whose cells formulas and charts refer by their places, with its names as they were when the places were found. If one
   * of them lies elsewhere by now, the new sheet would show other cells: it is not made.
   */
  readonly reads?: { readonly sheet: string; readonly names: readonly SheetName[] };
}

/**
 * New content for the cells of a name, from the top of its first column. null leaves a cell unchanged, and so are cells
 * beyond the list; "" clears a cell.
 */
export type NamedColumns = Readonly<Record<string, readonly (CellValue | null)[]>>;

/**
 * The new content of a cell at a place of the sheet: a formula, or a constant that is shown as it is ("" clears the
 * cell).
 */
export type CellContent = {
  readonly row: number;
  readonly col: number;
  /** The number format for the cell in Excel's spelling; if it is left out, the cell keeps its format. */
  readonly format?: string;
  /** True if this cell may be overwritten. */
  readonly replaces?: boolean;
  /** What the cell was seen to show: if it shows something else by now, nothing is written. */
  readonly shown?: CellValue;
} & (
  | {
      /** The formula in the form of a plan; `{'Other sheet'!name}` is a name of another sheet. */
      readonly formula: string;
    }
  | { readonly value: CellValue }
);

export interface Selection {
  readonly sheet: string;
  /** "B4:C18"; blocks selected together in the same rows are joined side by side, "B4:B18,D4:D18". */
  readonly address: string;
  /** Row by row; a blank cell is "", an error cell its code as text. */
  readonly values: readonly (readonly CellValue[])[];
}

/** A sheet of the workbook, with the values behind some of its local names; a name that does not exist is absent. */
export interface SheetValues {
  readonly sheet: string;
  /** Whether the sheet is in front. No sheet is if a chart sheet is in front. */
  readonly isActive: boolean;
  readonly values: Readonly<Record<string, Selection["values"]>>;
}

/** A sheet of the workbook, found by its names. */
export interface FoundSheet {
  /** Stays the same when the sheet is renamed or moved. */
  readonly id: string;
  readonly sheet: string;
  readonly isActive: boolean;
  /** The names asked for that lead to cells of the sheet. */
  readonly has: readonly string[];
  /** True if a person cannot bring the sheet into sight, but only a program. */
  readonly isVeryHidden?: boolean;
}

/** What to read from one sheet. */
export interface Asked {
  readonly sheet: string;
  /** Names whose values are read. */
  readonly values: readonly string[];
  /** Names whose contents are read: a formula as its en-US text ("=..."), a constant unchanged. */
  readonly contents?: readonly string[];
  /** Whether the positions of the sheet's names are read. */
  readonly names?: boolean;
  /** Whether hidden rows and columns are read. */
  readonly hidden?: boolean;
}

/** What was read from one sheet; a name that does not exist is absent. */
export interface Looked {
  readonly sheet: string;
  readonly values: Readonly<Record<string, Selection["values"]>>;
  readonly contents: Readonly<Record<string, Selection["values"]>>;
  /** As `listNames` gives them. */
  readonly names?: readonly SheetName[];
  readonly hidden?: HiddenLines;
  /** True if the host calculates the workbook only when it is asked: the values may be old. */
  readonly isOnRequest?: boolean;
}

/** Rows and columns that are hidden, counted from 0. */
export interface HiddenLines {
  readonly rows: readonly number[];
  readonly cols: readonly number[];
}

/** A name of a sheet, or a name of the workbook that leads to cells of the sheet or to none. */
export interface SheetName {
  readonly name: string;
  readonly scope: "sheet" | "workbook";
  /** "lost" if the name shows #REF!, or is not a range of cells. */
  readonly place: Box | "lost";
}

/** Cells of a sheet ("B4:B20") and the name for them. */
export interface NamedAddress {
  readonly name: string;
  readonly address: string;
  /** What the first and the last cell showed when the address was found: if they show something else by now, no name is given. */
  readonly ends?: readonly [CellValue, CellValue];
  /** True if the name may be moved where it already leads to cells of the sheet. */
  readonly replace?: boolean;
}

/** The result of inserting the sheets of a file. */
export interface Inserted {
  /** The names of the new sheets. */
  readonly sheets: readonly string[];
  /** Parts of the file that could not be kept, in sentences. */
  readonly remarks: readonly Message[];
}

/**
 * What changed in a workbook. "values": cells hold or show something else, or rows were hidden. "front": another sheet
 * came to the front. "sheets": a sheet was added, deleted, moved or renamed, or cells got a name.
 */
export type Change = "values" | "front" | "sheets";

export type Unsubscribe = () => void;

/**
 * Work that takes several steps, so that a pane that is closed in between leaves it half done. "sheet": the sheet is
 * being made. "cells": cells of the sheet are being written. "protection": the protection of the sheet is lifted for a
 * writing. "readings", "readings again": a file is being written to the data sheet, and kept. "summary": rows of the
 * sheet are being written. "layout": cells of the sheet get labels, names and formulas.
 */
export const KINDS_OF_WORK = [
  "sheet",
  "cells",
  "protection",
  "readings",
  "readings again",
  "summary",
  "layout",
] as const;
export type KindOfWork = (typeof KINDS_OF_WORK)[number];

/** A note in the workbook on work that has begun; it is taken out when the work ends. */
export interface WorkNote {
  readonly id: string;
  readonly kind: KindOfWork;
  readonly sheet: string;
  /** The time at which the work began: "2026-03-09 14:05". */
  readonly since: string;
}

/** A failure as a sentence that the pane can show; `message` is the sentence in English. */
export class WorkbookError extends Error {
  override readonly name = "WorkbookError";

  constructor(
    readonly said: Message,
    options?: ErrorOptions,
  ) {
    super(english(said), options);
  }
}

export interface WorkbookPort {
  readonly host: "excel" | "embedded";
  /** Whether the host saves a file that a pane offers. Excel on the Mac does nothing, and says nothing. */
  readonly savesFiles: boolean;
  sheetNames(): Promise<string[]>;
  /** The name of the sheet in front, whatever is selected on it. */
  activeSheet(): Promise<string>;
  /** Every sheet, in the order of the tabs, with the values behind a few local names, all read at once. */
  readSheets(names: readonly string[]): Promise<readonly SheetValues[]>;
  /** Every sheet, in the order of the tabs, with the names of a few local names that it has. No cell is read. */
  findSheets(names: readonly string[]): Promise<readonly FoundSheet[]>;
  /** Reads several sheets together: all at the same moment, as far as the host can. */
  lookAt(asked: readonly Asked[]): Promise<readonly Looked[]>;
  /**
   * Whether the workbook counts its days from 1904, so that a day that the pane reads or writes is another day on the sheet: the pane counts
   * from 1900.
   */
  countsFrom1904(): Promise<boolean>;
  /** Asks a host that calculates only when it is asked to calculate what has changed. */
  calculate(): Promise<void>;
  /**
   * Makes a new sheet from the plan and shows it, unless the plan says otherwise; never changes an existing sheet;
   * leaves nothing if it fails. Returns its name. `tell` gets a sentence for each part that the host refused and the
   * sheet can do without. A host that makes the sheet in several steps follows `course`: stopped, it leaves nothing.
   */
  insertSheet(plan: SheetPlan, tell?: (sentence: Message) => void, course?: Course): Promise<string>;
  /**
   * The selected cells; if a chart is selected, or blocks that do not fit together, the sentence says what to select.
   */
  selection(): Promise<Selection>;
  /** The values of a range of a sheet, as `selection` gives them. */
  values(sheet: string, address: string): Promise<Selection["values"]>;
  /**
   * Brings a sheet to the front and selects cells on it ("B4", "B4:C18"). Cells that were out of sight come into sight
   * with the headings above them, if the host lets that be chosen.
   */
  show(sheet: string, address: string): Promise<void>;
  /**
   * The contents of the cells behind a sheet's local names: a formula as its en-US text ("=..."), a constant unchanged.
   */
  readContents(sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>>;
  /** Hidden rows and columns of a sheet (by hand or by a filter), counted from 0. */
  hidden(sheet: string): Promise<HiddenLines>;
  /** The values behind a sheet's local names; a name that does not exist is absent. */
  readNames(sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>>;
  /**
   * Writes constants into named cells of a sheet, in one step of undo if the host has such steps. A list goes down the
   * first column of a name, or across a name of one row (`lists.ts`). Writes nothing, and
   * says why, if a name does not exist or has too few cells, if a cell to be written holds a formula, or if a name of
   * `blank` holds anything. A value for a name of `free` goes only into a blank cell: somebody else may have taken the
   * row in the meantime. `held` has what cells must still hold, null for any content: somebody else may have typed there.
   */
  fillNames(
    sheet: string,
    values: NamedColumns,
    blank?: readonly string[],
    free?: readonly string[],
    held?: NamedColumns,
  ): Promise<void>;
  /**
   * Writes formulas and constants into cells of a sheet. It is one step of undo if the host has such steps. Formats
   * stay unless a cell brings its own; notes and rules stay; a protected sheet accepts the contents and stays
   * protected. Writes nothing and throws in three cases: a formula refers to a name without cells; a cell for a formula
   * has the format of text; a cell is not blank and `replace` is false. `names` are the names of the sheet by which the
   * places of the cells were found: if one of them lies elsewhere by now, nothing is written either.
   */
  writeCells(
    sheet: string,
    cells: readonly CellContent[],
    replace?: boolean,
    names?: readonly SheetName[],
  ): Promise<void>;
  /** The names of the sheet, then the names of the workbook that lead to it or nowhere. */
  listNames(sheet: string): Promise<SheetName[]>;
  /**
   * Gives cells of a sheet their names, which belong to that sheet, in one step of undo if the host has such steps. Gives none of them, and
   * says why, if one of the names already leads to cells of the sheet and has no `replace`, or cannot be given. `found` are the names of the sheet by
   * which the places were found: if one of them lies elsewhere by now, no name is given either; nor if the `ends` of an address show
   * something else.
   */
  nameAll(sheet: string, names: readonly NamedAddress[], found?: readonly SheetName[]): Promise<void>;
  /**
   * Types every formula of the sheet that shows #NAME? again. Returns how many there were, and how many still show it.
   * Stopped by `course`, it leaves the formulas that it has typed.
   */
  reenterFormulas(sheet: string, course?: Course): Promise<{ found: number; left: number }>;
  /** Inserts the sheets of an .xlsx file as new sheets under free names; changes no other sheet. Stopped, it leaves nothing. */
  insertFile(file: Uint8Array, course?: Course): Promise<Inserted>;
  isProtected(sheet: string): Promise<boolean>;
  /**
   * Protects everything except the inputs, or lifts the protection; a protection with a password is refused with a
   * sentence.
   */
  protect(sheet: string, on: boolean): Promise<void>;
  /** Calls the listener soon after each kind of change; once for several changes of one kind together. */
  onChange(listener: (change: Change) => void): Promise<Unsubscribe>;
  /** Calls the listener when other cells are selected, on the same sheet or on another. */
  onSelect(listener: () => void): Promise<Unsubscribe>;
  /** Notes in the workbook that work on a sheet begins. Returns the id of the note. */
  noteWork(kind: KindOfWork, sheet: string): Promise<string>;
  /** Takes the note out again; does nothing if it is not there. */
  strikeWork(id: string): Promise<void>;
  /** The notes on work that has not ended: a pane was closed in the middle of it, or another one is still at it. */
  unfinishedWork(): Promise<readonly WorkNote[]>;
}
import { english, type Message } from "../reduction/message";
import type { Course } from "./in-slices";
