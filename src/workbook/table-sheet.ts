/** A sheet that is one table with named columns: limits, answers, comparisons, the calculation book. */
import { isFormula } from "./contents";
import type { Box, CellKind, CellPlan, CellValue, SheetPlan } from "./port";

/** The format of a column whose rows each have their own format. */
export const OWN = "own";

const LINE_POINTS = 15;

export interface TableColumn {
  /** Local name of its cells. */
  readonly name: string;
  readonly heading: string;
  /** Width in characters. */
  readonly width: number;
  readonly kind: CellKind;
  readonly format?: string;
  /** The formula of a row, counted from 0 on the sheet, for rows in which the plan gives no content. */
  readonly formula?: (row: number) => string;
  readonly choices?: readonly string[];
  /** Long texts continue in further lines. */
  readonly wrap?: boolean;
}

/** The first content of a cell; a formula begins with "=". */
export type Content = CellValue | undefined;

export interface TableSheet {
  readonly name: string;
  readonly title: string;
  readonly notes: readonly string[];
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly Content[])[];
  /** Number format of each row, for columns whose format is `OWN`. */
  readonly formats?: readonly (string | undefined)[];
  /** Lines of text of each row, if there may be more than one. */
  readonly lines?: readonly number[];
  /** Rows with a frame, including blank rows below the last filled one. */
  readonly length?: number;
  /** A name for the whole table, from the first column to the last. */
  readonly whole?: string;
  readonly isProtected?: boolean;
  readonly paper?: "A4" | "Letter";
}

const contentOf = (content: Content): Pick<CellPlan, "formula" | "value"> =>
  isFormula(content) ? { formula: content } : { value: content };

/** The first row of the table, below title, notes and headings. */
export const firstRow = ({ notes }: Pick<TableSheet, "notes">): number => notes.length + 2;

export function tableSheet(table: TableSheet): SheetPlan {
  const { name, title, notes, columns, rows, whole } = table;
  const top = firstRow(table);
  const length = Math.max(rows.length, table.length ?? 0, 1);
  const cells: CellPlan[] = [
    { row: 0, col: 0, kind: "title", value: title },
    ...notes.map((value, index): CellPlan => ({ row: 1 + index, col: 0, kind: "note", value })),
    ...columns.map(({ heading }, col): CellPlan => ({ row: top - 1, col, kind: "heading", value: heading })),
  ];
  for (let index = 0; index < length; index++)
    columns.forEach(({ kind, format, formula, choices, wrap }, col) => {
      const content = rows[index]?.[col] ?? formula?.(top + index);
      if (content === undefined && kind !== "input") return;
      const shown = format === OWN ? table.formats?.[index] : format;
      cells.push({ row: top + index, col, kind, format: shown, choices, wrap, ...contentOf(content) });
    });
  const column = (col: number): Box => ({ row: top, col, rows: length, cols: 1 });
  const names: Record<string, Box> = Object.fromEntries(columns.map((one, col) => [one.name, column(col)]));
  if (whole) names[whole] = { ...column(0), cols: columns.length };
  return {
    name,
    rows: top + length,
    cols: columns.length,
    cells,
    names,
    merges: [],
    rowHeights: Object.fromEntries(
      (table.lines ?? []).flatMap((lines, index) => (lines > 1 ? [[top + index, lines * LINE_POINTS]] : [])),
    ),
    columnWidths: Object.fromEntries(columns.map(({ width }, col) => [col, width])),
    freezeRows: top,
    isProtected: table.isProtected,
    paper: table.paper,
    behind: true,
  };
}

/** The plan of a table with contents in its first rows; `names` are its columns. They are written with the sheet, in one step. */
export function withRows(
  plan: SheetPlan,
  names: readonly string[],
  rows: readonly (readonly CellValue[])[],
): SheetPlan {
  const contents = new Map<string, CellValue>();
  const place = (row: number, col: number): string => `${row} ${col}`;
  for (const [index, name] of names.entries()) {
    const box = plan.names[name];
    if (!box || box.rows < rows.length) throw new Error(`the table has no room for ${rows.length} rows of ${name}`);
    for (const [row, values] of rows.entries()) contents.set(place(box.row + row, box.col), values[index] ?? "");
  }
  const cells = plan.cells.map((cell): CellPlan => {
    const value = contents.get(place(cell.row, cell.col));
    return value === undefined ? cell : { ...cell, value };
  });
  return { ...plan, cells };
}
