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
}

export interface Box {
  readonly row: number;
  readonly col: number;
  readonly rows: number;
  readonly cols: number;
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
  readonly merges: readonly Box[];
  readonly freezeRows: number;
  /** What stands on each printed page; absent, the whole sheet is printed. */
  readonly pages?: readonly Box[];
  /** The sheet is made without being shown: the one in front stays there. */
  readonly behind?: boolean;
}

/**
 * What the cells of a name are to hold, from the top of its first column. null leaves a cell as it is, and so are cells beyond
 * the list left; "" clears one.
 */
export type NamedColumns = Readonly<Record<string, readonly (CellValue | null)[]>>;

export interface Selection {
  readonly sheet: string;
  /** "B4:C18" */
  readonly address: string;
  /** Row by row; a blank cell is "". An error cell is its code as text. */
  readonly values: readonly (readonly CellValue[])[];
}

export type Unsubscribe = () => void;

/** A failure told in a sentence that the pane can show as it is. */
export class WorkbookError extends Error {
  override readonly name = "WorkbookError";
}

export interface WorkbookPort {
  readonly host: "excel" | "embedded";
  sheetNames(): Promise<string[]>;
  /** Makes a new sheet from the plan and shows it, unless the plan says otherwise; never touches an existing one; leaves nothing behind if it fails. Gives its name. */
  insertSheet(plan: SheetPlan): Promise<string>;
  selection(): Promise<Selection>;
  /** The values of a range of a sheet, as `selection` gives them. */
  values(sheet: string, address: string): Promise<Selection["values"]>;
  /** The values behind a sheet's local names; a name that is not there is absent from the answer. */
  readNames(sheet: string, names: readonly string[]): Promise<Record<string, Selection["values"]>>;
  /**
   * Writes constants into named cells of a sheet, in one step of undo where the host has such steps. Writes nothing, and says
   * why, where a name is not there or has too few cells, where a cell to be written holds a formula, and where a name of
   * `blank` holds anything at all.
   */
  fillNames(sheet: string, values: NamedColumns, blank?: readonly string[]): Promise<void>;
  /** Called when the selection moves or a value changes, so that a plot can follow its cells. */
  onChange(listener: () => void): Promise<Unsubscribe>;
}
