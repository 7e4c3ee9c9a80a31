/**
 * The port: all that the data sheet, the pane and the plots may ask of a workbook. Two adapters answer it,
 * office/ (Excel) and embedded/ (the open-source sheet of `npm start`).
 *
 * Rows and columns are counted from 0. A formula is written in en-US form, with `{name}` where it refers to a name of its
 * own sheet: the adapter puts in what that name is called in its host (names are local to a sheet, so that several tests in
 * one workbook do not collide; a host without local names gives them a suffix).
 */

export type CellValue = number | string | boolean;

/** How a cell looks, in words that both hosts understand. Kind drives fill and border; never colour alone. */
export type CellKind = "title" | "heading" | "label" | "unit" | "input" | "result" | "remark" | "note";

export interface CellPlan {
  readonly row: number;
  readonly col: number;
  readonly kind: CellKind;
  /** A constant, shown as it is. */
  readonly value?: CellValue;
  /** "=CLAY.VOID_RATIO({initial_height},{solids_height})" */
  readonly formula?: string;
  /** Number format in Excel's spelling: "0.000", "0.0%", "0.00E+00", "yyyy-mm-dd"; "@" is text. */
  readonly format?: string;
  /** What the cell means, with formula and source; shown as a note or comment where the host has them. */
  readonly note?: string;
  /** The allowed words of an input cell. */
  readonly choices?: readonly string[];
  /** Where the content stands; absent, numbers stand right and texts left. */
  readonly align?: "left" | "center" | "right";
  /** The text is broken into lines that fit its cell or merged cells; it stands at the top. */
  readonly wrap?: boolean;
}

/** What may be typed into the cells of a box; blank always may. Dates are day numbers. */
export interface EntryRule {
  readonly box: Box;
  readonly kind: "number" | "date";
  readonly least?: number;
  /** The least itself is refused. */
  readonly above?: boolean;
  readonly most?: number;
  /** What is wanted, as the host says it when something else is typed; at most 225 characters. */
  readonly message: string;
}

export interface Box {
  readonly row: number;
  readonly col: number;
  readonly rows: number;
  readonly cols: number;
}

/** One axis of a chart. A log axis runs over whole decades; that of root time is linear in the root of minutes. */
export interface ChartAxis {
  readonly label: string;
  readonly scale: "log" | "linear";
  readonly domain: readonly [low: number, high: number];
  /** Values increase downward (y) or to the left (x). */
  readonly reversed: boolean;
}

/** Cells of one column, of the chart's own sheet unless another is named. */
export interface ChartCells {
  readonly sheet?: string;
  readonly box: Box;
}

/** One series of a scatter chart. A cell of text, #N/A or nothing is a gap. */
export interface ChartSeries {
  readonly name: string;
  readonly x: ChartCells;
  readonly y: ChartCells;
  /** Symbols only, a full line, a thin full line, or a thin dashed one. Never told apart by colour alone. */
  readonly style: "points" | "line" | "thin" | "dashed";
  /** Of points. */
  readonly symbol?: "filled" | "open" | "cross";
  /** Of filled and open symbols; circles unless said. */
  readonly shape?: "circle" | "triangle";
  /** The name stands beside the end of the line. */
  readonly lettered?: boolean;
}

/** A scatter chart over cells of a sheet: it follows them as they change. */
export interface ChartPlan {
  readonly title: string;
  /** The cells that it covers. */
  readonly box: Box;
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly series: readonly ChartSeries[];
}

/** A whole sheet to be made, as data. */
export interface SheetPlan {
  /** The sheet's name if it is free; otherwise " 2", " 3", ... is added. */
  readonly name: string;
  readonly rows: number;
  readonly cols: number;
  readonly cells: readonly CellPlan[];
  /** Local names: what a formula's `{name}` and a reader by name resolve to. */
  readonly names: Readonly<Record<string, Box>>;
  /** Column widths in characters of the default font, by column; absent columns keep the default. */
  readonly columnWidths: Readonly<Record<number, number>>;
  /** Row heights in points, by row; absent rows keep the default. */
  readonly rowHeights?: Readonly<Record<number, number>>;
  readonly merges: readonly Box[];
  readonly freezeRows: number;
  /** What stands on each printed page; absent, the whole sheet is printed. */
  readonly pages?: readonly Box[];
  readonly paper?: "A4" | "Letter";
  /** Stands in the footer of each page, beside the file's name and the page number. */
  readonly footer?: string;
  readonly entries?: readonly EntryRule[];
  /** Protects everything but the inputs and `open`, without a password, where the host can. */
  readonly isProtected?: boolean;
  /** Blank cells that stay open beside the inputs. */
  readonly open?: readonly Box[];
  /** The sheet is made without being shown: the one in front stays there. */
  readonly behind?: boolean;
  readonly charts?: readonly ChartPlan[];
}

/**
 * What the cells of a name are to hold, from the top of its first column. null leaves a cell as it is, and so are cells beyond
 * the list left; "" clears one.
 */
export type NamedColumns = Readonly<Record<string, readonly (CellValue | null)[]>>;

export interface Selection {
  readonly sheet: string;
  /** "B4:C18"; blocks picked together that stand in the same rows are joined side by side, "B4:B18,D4:D18". */
  readonly address: string;
  /** Row by row; a blank cell is "". An error cell is its code as text. */
  readonly values: readonly (readonly CellValue[])[];
}

/** A sheet of the workbook, with the values behind some of its local names; a name that is not there is absent. */
export interface SheetValues {
  readonly sheet: string;
  /** The sheet in front. None is where a chart sheet is in front. */
  readonly isActive: boolean;
  readonly values: Readonly<Record<string, Selection["values"]>>;
}

/** A sheet of the workbook, found by its names. */
export interface FoundSheet {
  /** Stays the same when the sheet is renamed or moved. */
  readonly id: string;
  readonly sheet: string;
  readonly isActive: boolean;
  /** Those of the names asked for that lead to cells of the sheet. */
  readonly has: readonly string[];
}

/** What is asked of one sheet. */
export interface Asked {
  readonly sheet: string;
  /** Names whose values are asked for. */
  readonly values: readonly string[];
  /** Names whose contents are asked for: a formula as its en-US text ("=..."), a constant as it is. */
  readonly contents?: readonly string[];
  /** Asks where the names of the sheet stand. */
  readonly names?: boolean;
  /** Asks for hidden rows and columns. */
  readonly hidden?: boolean;
}

/** What was found of one sheet; a name that is not there is absent. */
export interface Looked {
  readonly sheet: string;
  readonly values: Readonly<Record<string, Selection["values"]>>;
  readonly contents: Readonly<Record<string, Selection["values"]>>;
  /** As `listNames` gives them. */
  readonly names?: readonly SheetName[];
  readonly hidden?: HiddenLines;
}

/** Rows and columns that are hidden, counted from 0. */
export interface HiddenLines {
  readonly rows: readonly number[];
  readonly cols: readonly number[];
}

/** A name that a sheet has, or a name of the workbook that leads to its cells or to none at all. */
export interface SheetName {
  readonly name: string;
  readonly scope: "sheet" | "workbook";
  /** "lost" where the name shows #REF!, or stands for something that is no range of cells. */
  readonly place: Box | "lost";
}

/** What came of inserting the sheets of a file. */
export interface Inserted {
  /** The new sheets' names. */
  readonly sheets: readonly string[];
  /** What of the file could not be kept, in sentences. */
  readonly remarks: readonly string[];
}

/**
 * What changed in a workbook. "values": cells hold or show something else, or rows were hidden. "front": another sheet came to
 * the front. "sheets": a sheet was added, deleted, moved or renamed, or cells of one were given a name.
 */
export type Change = "values" | "front" | "sheets";

export type Unsubscribe = () => void;

/** A failure told in a sentence that the pane can show as it is. */
export class WorkbookError extends Error {
  override readonly name = "WorkbookError";
}

export interface WorkbookPort {
  readonly host: "excel" | "embedded";
  /** Whether the host saves a file that a pane hands over. Excel on the Mac does nothing, without a word. */
  readonly savesFiles: boolean;
  sheetNames(): Promise<string[]>;
  /** The name of the sheet in front, whatever is selected on it. */
  activeSheet(): Promise<string>;
  /** Every sheet, in the order of the tabs, with the values behind a few local names, read at once. */
  readSheets(names: readonly string[]): Promise<readonly SheetValues[]>;
  /** Every sheet, in the order of the tabs, with those of a few local names that it has. No cell is read. */
  findSheets(names: readonly string[]): Promise<readonly FoundSheet[]>;
  /** What is asked of several sheets, read together: all of the same moment, as far as the host can. */
  lookAt(asked: readonly Asked[]): Promise<readonly Looked[]>;
  /**
   * Makes a new sheet from the plan and shows it, unless the plan says otherwise; never touches an existing one; leaves nothing
   * behind if it fails. Gives its name. `tell` hears, in a sentence each, of what the sheet can do without and the host did not take.
   */
  insertSheet(plan: SheetPlan, tell?: (sentence: string) => void): Promise<string>;
  /** The cells that are selected; a sentence says what to select where a chart is selected, or blocks that do not fit together. */
  selection(): Promise<Selection>;
  /** The values of a range of a sheet, as `selection` gives them. */
  values(sheet: string, address: string): Promise<Selection["values"]>;
  /** Brings a sheet to the front and selects cells of it ("B4", "B4:C18"). */
  show(sheet: string, address: string): Promise<void>;
  /** What was typed into the cells behind a sheet's local names: a formula as its en-US text ("=..."), a constant as it is. */
  readContents(sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>>;
  /** Rows and columns of a sheet that are hidden (by hand or by a filter), counted from 0. */
  hidden(sheet: string): Promise<HiddenLines>;
  /** The values behind a sheet's local names; a name that is not there is absent from the answer. */
  readNames(sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>>;
  /**
   * Writes constants into named cells of a sheet, in one step of undo where the host has such steps. Writes nothing, and says
   * why, where a name is not there or has too few cells, where a cell to be written holds a formula, and where a name of
   * `blank` holds anything at all.
   */
  fillNames(sheet: string, values: NamedColumns, blank?: readonly string[]): Promise<void>;
  /** The sheet's own names, then the workbook's that lead to it or nowhere. */
  listNames(sheet: string): Promise<SheetName[]>;
  /**
   * Gives the cells of an address ("B4:B20") of a sheet a name of that sheet. A name that the sheet has already, and that leads to
   * cells, is moved only if `replace` says so: otherwise it is refused with a sentence.
   */
  nameCells(sheet: string, name: string, address: string, replace?: boolean): Promise<void>;
  /** Types every formula of the sheet that shows #NAME? once more. Gives how many there were, and how many show it still. */
  reenterFormulas(sheet: string): Promise<{ found: number; left: number }>;
  /** Inserts the sheets of an .xlsx file as new sheets under free names; touches no other sheet. */
  insertFile(file: Uint8Array): Promise<Inserted>;
  isProtected(sheet: string): Promise<boolean>;
  /** Protects everything but the inputs, or lifts the protection; one with a password is refused with a sentence. */
  protect(sheet: string, on: boolean): Promise<void>;
  /** The listener hears of each kind of change soon after it; of several changes of one kind together, once. */
  onChange(listener: (change: Change) => void): Promise<Unsubscribe>;
  /** The listener hears that other cells are selected, on the same sheet or on another. */
  onSelect(listener: () => void): Promise<Unsubscribe>;
}
