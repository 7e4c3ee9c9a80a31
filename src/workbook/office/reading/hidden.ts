/** Finds rows and columns that are hidden, by hand or by a filter. */
import { slices } from "../grid";

/** About 25 bytes per row: an answer stays far below 5 MB. */
const ROWS_PER_ANSWER = 50_000;

/** The filled part of a sheet, loaded with the next request. */
export const usedOf = (sheet: Excel.Worksheet): Excel.Range =>
  sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount");

/** The hidden rows and columns of the filled part, which must be loaded. */
export async function hiddenIn(
  context: Excel.RequestContext,
  used: Excel.Range,
): Promise<{ rows: number[]; cols: number[] }> {
  if (used.isNullObject) return { rows: [], cols: [] };
  const cols = used.getColumnProperties({ columnHidden: true });
  const rows: number[] = [];
  for (const { row, rows: count } of slices({ row: 0, col: 0, rows: used.rowCount, cols: 1 }, ROWS_PER_ANSWER)) {
    const found = used
      .getRow(row)
      .getResizedRange(count - 1, 0)
      .getRowProperties({ rowHidden: true });
    await context.sync();
    rows.push(...found.value.flatMap(({ rowHidden }, i) => (rowHidden ? [used.rowIndex + row + i] : [])));
  }
  return { rows, cols: cols.value.flatMap(({ columnHidden }, i) => (columnHidden ? [used.columnIndex + i] : [])) };
}

export async function hiddenLines(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<{ rows: number[]; cols: number[] }> {
  const used = usedOf(sheet);
  await context.sync();
  return hiddenIn(context, used);
}
