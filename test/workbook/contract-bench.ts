/** What the contract of `WorkbookPort` needs from a host: a workbook, and a person who works in it. */
import type { CellValue, SheetPlan, WorkbookPort } from "../../src/workbook/port";

type Await<T = void> = T | Promise<T>;

/** One cell as a person sees it. */
export interface CellLook {
  readonly value: CellValue;
  /** In the spelling of Excel; "" is General. */
  readonly format: string;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly fill?: string;
  readonly align?: string;
  readonly wrap: boolean;
  readonly note?: string;
  readonly choices?: readonly string[];
}

/** One sheet as a person sees it. */
export interface SheetLook {
  /** "A1:C1" */
  readonly merges: readonly string[];
  /** In characters, by column; the widths that a plan asked for. */
  readonly widths: Readonly<Record<number, number>>;
  /** In points, by row; the heights that a plan asked for. */
  readonly heights: Readonly<Record<number, number>>;
  readonly frozenRows: number;
  readonly charts: readonly {
    readonly title: string;
    /** Cells in the form "Ring!A1:A3". */
    readonly series: readonly { readonly name: string; readonly x: string; readonly y: string }[];
  }[];
  readonly paper?: "A4" | "Letter";
  readonly footer?: string;
}

/** A workbook with one blank sheet "Sheet1", its port, and the actions and observations of a person. */
export interface Bench {
  readonly port: WorkbookPort;
  addSheet(name: string): Await;
  renameSheet(sheet: string, name: string): Await;
  /** Moves a sheet before all others. */
  moveToFront(sheet: string): Await;
  deleteSheet(sheet: string): Await;
  /** Types a constant, or a formula ("=..."); `shown` is the value of a formula that the host does not calculate. */
  type(sheet: string, cell: string, content: CellValue, shown?: CellValue): Await;
  /** Selects blocks one after the other, holding Ctrl from the second on. */
  select(sheet: string, ...addresses: string[]): Await;
  /** Selects the first chart of a sheet, which comes to the front. */
  selectChart(sheet: string): Await;
  hide(sheet: string, lines: { readonly rows?: readonly number[]; readonly cols?: readonly number[] }): Await;
  hideSheet(sheet: string): Await;
  /** Gives cells a name of the workbook. */
  nameForAll(name: string, sheet: string, address: string): Await;
  deleteRow(sheet: string, row: number): Await;
  /**
   * Enters a formula that shows #NAME?, and that shows 7 when it is entered again, if its function is `known` by then.
   */
  typeUnbound(sheet: string, cell: string, known: boolean): Await;
  /**
   * Whether the host lets a person type a constant into a cell: by the rule of the cell and by the protection of the
   * sheet.
   */
  mayType(sheet: string, cell: string, value: CellValue): Await<boolean>;
  cell(sheet: string, cell: string): Await<CellLook>;
  sheet(sheet: string): Await<SheetLook>;
  /** The content of the workbook with the sheet in front and the selection, for a comparison with another time. */
  state(): Await<unknown>;
  /** Makes the host report changes that it has not reported yet. */
  settle(): Await;
  /** Undoes the last step. */
  undo?(): Await;
  /** Forbids adding sheets. */
  lockStructure?(): Await;
  /** Protects a sheet with a password. */
  protectWithPassword?(sheet: string): Await;
  /** Locks a whole sheet, inputs too. */
  lockSheet?(sheet: string): Await;
  /** Gives several blocks of a sheet one name. */
  nameBlocks?(sheet: string, name: string, addresses: readonly string[]): Await;
}

/** The differences between hosts, and their reasons. Both sides of each are tested. */
export const DIFFERENCES = {
  calculates: "The embedded sheet works out formulas. The others hold cells: a test says what a formula shows.",
  undoes:
    "The embedded sheet takes back what the port did in one step. Excel has a list of its own, which no test reaches.",
  locksStructure: "Excel can protect the structure of a workbook. The embedded sheet has no such protection.",
  locksSheets:
    "A person can lock a sheet of the embedded sheet whole, inputs too. Excel's protection leaves inputs open.",
  hasPasswords: "Excel protects a sheet with a password if a person wants. The embedded sheet has no passwords.",
  keepsApostrophes: "The embedded sheet refuses an apostrophe in a sheet's name, so that ’ takes its place.",
  losesNames:
    "In Excel a name whose cells were deleted stays, and shows #REF!. The embedded sheet deletes it with the cells.",
  takesCharts: "The embedded sheet and Excel on the desktop take a file with charts in. Excel on the web refuses it.",
  losesCells:
    "In Excel a chart that is selected takes the place of the selected cells. In the embedded sheet both are selected.",
  namesBlocks: "A name of Excel may stand for several blocks. A name of the embedded sheet is one block.",
} as const;

export type Difference = keyof typeof DIFFERENCES;

export interface Host {
  readonly called: string;
  readonly is: Readonly<Record<Difference, boolean>>;
  open(): Await<Bench>;
}

export const box = (row: number, col: number, rows = 1, cols = 1) => ({ row, col, rows, cols });

/** A small sheet: a ring is weighed with and without soil. */
export const RING: SheetPlan = {
  name: "Ring",
  rows: 12,
  cols: 4,
  cells: [
    { row: 0, col: 0, kind: "title", value: "Ring" },
    { row: 1, col: 0, kind: "label", value: "Mass of the ring" },
    { row: 1, col: 1, kind: "input", value: 74.36, format: "0.00" },
    { row: 1, col: 2, kind: "unit", value: "g" },
    { row: 2, col: 0, kind: "label", value: "Mass of ring and soil" },
    { row: 2, col: 1, kind: "input", value: 211.03, format: "0.00" },
    { row: 3, col: 1, kind: "result", formula: "={wet}-{ring}", format: "0.000", note: "Mass of the wet soil" },
    { row: 4, col: 1, kind: "input", value: "kPa", choices: ["kPa", "psf"] },
    { row: 5, col: 1, kind: "input", format: "yyyy-mm-dd" },
    { row: 6, col: 1, kind: "input", value: true },
    { row: 7, col: 1, kind: "input" },
    { row: 8, col: 1, kind: "input" },
    { row: 9, col: 0, kind: "note", value: "A remark that is broken into lines", wrap: true, align: "center" },
  ],
  names: {
    ring: box(1, 1),
    wet: box(2, 1),
    soil: box(3, 1),
    stress_unit: box(4, 1),
    readings: box(7, 1, 2),
    masses: box(1, 1, 2),
    table: box(1, 0, 2, 3),
  },
  columnWidths: { 0: 20, 1: 12 },
  rowHeights: { 9: 42 },
  merges: [box(0, 0, 1, 3), box(9, 0, 1, 3)],
  freezeRows: 1,
};
