/** Places a table of the specification: headings, units, a start row if the table has one, and the rows. */
import type { CellPlan } from "../workbook/port";
import { firstOf } from "../reduction/numeric/lists";
import { cellAddress } from "../workbook/address";
import type { Column, Table } from "../specification/field";
import { PAST_EVERY_ROW } from "../specification/formulas";
import { loadSuffix } from "../specification/readings";
import { formatOf } from "../specification/measures";
import { alignOf, type Draft, formatFor, placeUnit, ruleEntries, startValue } from "./draft";

/** The rows above the rows of a table: two of headings, one of units. */
export const TABLE_HEAD = 3;

/** The column number of each column, counted from `first`. */
export const columnsFrom = (columns: readonly Column[], first: number): [string, number][] =>
  columns.map(({ name, at }, index) => [name, first + (at ?? index)]);

/** The rows of a table on the sheet, and the number of each of its columns. */
interface Place {
  /** The upper row of headings. */
  readonly top: number;
  /** The first row of the table itself. */
  readonly first: number;
  readonly at: (column: string) => number;
}

/**
 * Writes the formula of a column for a row: `[name]` is the cell of that column in the row, `[^name]` its value in the last
 * row above that is filled, and `#` the number of the row.
 */
function formulaWriter({ columns }: Table, { top, first, at }: Place): (formula: string, row: number) => string {
  const counted = at(firstOf(columns).name);
  // The range starts at the row of units, which contains no number, because the engine of the embedded sheet needs
  // more than one cell.
  const above = (row: number, col: number): string => {
    const column = (of: number) =>
      `${cellAddress(top + 2, of).replace(/(\D+)(\d+)/, "$$$1$$$2")}:${cellAddress(row - 1, of)}`;
    return `LOOKUP(${PAST_EVERY_ROW},${column(counted)},${column(col)})`;
  };
  return (formula, row) =>
    formula
      .replace(/\[(\^?)(\w+)\]/g, (_, up: string, name: string) =>
        up ? above(row, at(name)) : cellAddress(row, at(name)),
      )
      .replaceAll("#", loadSuffix(row - first + 1));
}

/** Whether a column of texts has a text of its own in each row. */
const isWords = ({ measure, byRow }: Column): boolean => measure === "text" && byRow !== undefined;

const alignOfCells = (column: Column): CellPlan["align"] =>
  column.measure === "pick"
    ? "right"
    : column.measure === "text" && column.width === undefined && !isWords(column)
      ? alignOf(column)
      : undefined;

function placeHeading(draft: Draft, column: Column, top: number, col: number): void {
  const align = isWords(column) ? undefined : alignOf(column);
  column.heading.forEach((value, line) => {
    const note = line === 0 ? column.note : undefined;
    draft.cells.push({ row: top + line, col, kind: "heading", value, align, note });
  });
  placeUnit(draft, top + 2, col, column.measure, "right");
}

/** Places what a column has above its first row: a value or a formula, or an input with a name of its own. */
function placeStart({ cells, names, system }: Draft, column: Column, row: number, col: number): void {
  const { kind, start, startInput, choices } = column;
  const format = formatFor(column, system);
  if (start !== undefined) {
    const fixed = start.startsWith("=") ? { formula: start } : { value: Number(start) };
    cells.push({ row, col, kind: kind === "label" ? "label" : "result", format, ...fixed });
  }
  if (startInput) {
    cells.push({ row, col, kind: "input", format, choices, align: alignOfCells(column), note: startInput.note });
    names[startInput.name] = { row, col, rows: 1, cols: 1 };
  }
}

/** Places the cells of a column, one in each row of the table. */
function placeCells(
  { cells, merges, system }: Draft,
  column: Column,
  { row: first, col, rows }: { readonly row: number; readonly col: number; readonly rows: number },
  written: (formula: string, row: number) => string,
): void {
  const { kind, formula, choices, byRow, span = 1 } = column;
  const format = formatFor(column, system);
  const align = alignOfCells(column);
  for (let index = 0; index < rows; index++) {
    const row = first + index;
    const own = byRow?.[index];
    const worked = own?.formula ?? formula;
    const content = worked
      ? { formula: written(worked, row) }
      : { value: own ? own.value : kind === "label" ? index + 1 : startValue(column, system) };
    if (span > 1) merges.push({ row, col, rows: 1, cols: span });
    const ownFormat = own?.measure ? formatOf(own.measure, system) : format;
    cells.push({ row, col, kind, format: ownFormat, choices, align, ...content });
  }
}

/** Continues the headings above the columns between them that have none, so that they stand in one band. */
function closeHeading({ cells }: Draft, { columns }: Table, { top, at }: Place): void {
  const headed = columns.flatMap(({ name, isWorking }) => (isWorking ? [] : [at(name)]));
  for (let col = Math.min(...headed); col < Math.max(...headed); col++)
    for (const line of headed.includes(col) ? [] : [0, 1]) cells.push({ row: top + line, col, kind: "heading" });
}

/** Places a table whose headings begin at the row `top`. Returns the row below the table. */
export function placeTable(draft: Draft, table: Table, top: number, columnAt: ReadonlyMap<string, number>): number {
  const hasStart = table.columns.some(({ start }) => start !== undefined);
  const first = top + TABLE_HEAD + (hasStart ? 1 : 0);
  const at = (name: string): number => {
    const col = columnAt.get(name);
    if (col === undefined) throw new Error(`the table has no column "${name}"`);
    return col;
  };
  const place = { top, first, at };
  const written = formulaWriter(table, place);
  for (const column of table.columns) {
    const box = { row: first, col: at(column.name), rows: table.rows, cols: 1 };
    if (column.width !== undefined) draft.widths[box.col] = column.width;
    placeHeading(draft, column, top, box.col);
    placeStart(draft, column, first - 1, box.col);
    placeCells(draft, column, box, written);
    draft.names[column.name] = box;
    ruleEntries(draft, column, box);
  }
  closeHeading(draft, table, place);
  return first + table.rows;
}
