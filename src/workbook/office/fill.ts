/**
 * Writes constants into named cells in Excel. Excel cannot take back a whole step, so this module restores the cells
 * after a failure.
 */
import { nth } from "../../reduction/numeric/lists";
import type { Box, CellValue, NamedColumns } from "../port";
import { constant } from "./grid";
import { rangeOf, readBoxes } from "./read";
import { bytesOf, runsOf, send, BYTES_PER_REQUEST, type Step } from "./requests";
import { told } from "./sentence";

/** The first column of a name, with the previous content of its cells. */
export interface Column {
  readonly box: Box;
  readonly before: readonly CellValue[];
}

/** New content of a cell; null leaves the cell unchanged. */
type Content = CellValue | null;

/** Writes a list from the top of a column, in pieces that each fit into one request. */
function stepsOf(sheet: Excel.Worksheet, { box }: Column, list: readonly Content[]): Step[] {
  let row = box.row;
  return runsOf(
    list.map((content) => (content === null ? null : constant(content))),
    bytesOf,
    BYTES_PER_REQUEST / 2,
  ).map((piece) => {
    const place = { row, col: box.col, rows: piece.length, cols: 1 };
    row += piece.length;
    return {
      bytes: bytesOf(piece),
      act: () => {
        rangeOf(sheet, place).values = piece.map((content) => [content]);
      },
    };
  });
}

async function isAsBefore(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  columns: readonly Column[],
): Promise<boolean> {
  const now = await readBoxes(
    context,
    columns.map(({ box }) => ({ sheet, box })),
    "formulas",
  );
  return columns.every(({ before }, i) => nth(now, i).every(([content], row) => content === before[row]));
}

/** The sentence on what the cells hold after a failure: whether it is their previous content, as far as Excel can tell. */
export const afterFailure = async (
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  columns: readonly Column[],
): Promise<string> =>
  (await isAsBefore(context, sheet, columns).catch(() => false))
    ? "The cells are as they were."
    : "Some cells may have been written: compare them with what you entered.";

/**
 * Writes the values. If Excel refuses in the middle, each column is restored separately, so that one failure does not
 * stop the others; the sentence says what the cells hold then.
 */
export async function writeColumns(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  columns: ReadonlyMap<string, Column>,
  values: NamedColumns,
  doing: string,
): Promise<void> {
  const lists = Object.entries(values).flatMap(([name, list]) => {
    const column = columns.get(name);
    return column && list.length > 0 ? [{ column, list }] : [];
  });
  try {
    await send(
      context,
      lists.flatMap(({ column, list }) => stepsOf(sheet, column, list)),
    );
  } catch (error) {
    for (const { column, list } of lists) {
      // No formula was overwritten, and a cell that was left alone may be one that an answer spills into.
      const before = list.map((value, i) => (value === null ? null : (column.before[i] ?? null)));
      await send(context, stepsOf(sheet, column, before)).catch(() => undefined);
    }
    throw told(error, doing, await afterFailure(context, sheet, [...columns.values()]));
  }
}
