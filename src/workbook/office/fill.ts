/**
 * Writes constants into named cells in Excel. Excel cannot take back a whole step, so this module restores the cells
 * after a failure.
 */
import { say, type Message } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import type { Box, CellValue, NamedColumns } from "../port";
import { constant } from "./grid";
import { sendNoted } from "./journal";
import { MAY_BE_WRITTEN, refuseChanged, take, type Taken } from "./meantime";
import { rangeOf, readBoxes, type Wanted } from "./reading/read";
import { bytesOf, runsOf, send, BYTES_PER_REQUEST, type Step } from "./requests";
import { told } from "./sentence";

/** Cells of one column, or of one row, with their previous content. */
export interface Column {
  /** Begins with the first of the cells, and follows them when rows are inserted. */
  readonly within: Excel.Range;
  readonly before: readonly CellValue[];
  /** Whether the cells stand side by side in one row. */
  readonly isAcross?: boolean;
}

/** Cells of a list, counted from its first cell. */
export const partOf = ({ isAcross = false }: Column, from: number, length: number): Box =>
  isAcross ? { row: 0, col: from, rows: 1, cols: length } : { row: from, col: 0, rows: length, cols: 1 };

/** The lists that have something to write, each with its cells. */
export const listsOf = (columns: ReadonlyMap<string, Column>, values: NamedColumns) =>
  Object.entries(values).flatMap(([name, list]) => {
    const column = columns.get(name);
    return column && list.length > 0 ? [{ column, list }] : [];
  });

/** New content of a cell; null leaves the cell unchanged. */
type Content = CellValue | null;

/**
 * Writes a list from the top of a column, in pieces that each fit into one request. `keep` gets the cells of each piece,
 * to be compared with their previous content.
 */
function stepsOf(column: Column, list: readonly Content[], keep?: (taken: Taken) => void): Step[] {
  const { within, before, isAcross = false } = column;
  let from = 0;
  return runsOf(
    list.map((content) => (content === null ? null : constant(content))),
    bytesOf,
    BYTES_PER_REQUEST / 2,
  ).map((piece) => {
    const first = from;
    const place = partOf(column, first, piece.length);
    const checked = piece.map((content, index) => (content === null ? null : (before[first + index] ?? "")));
    from += piece.length;
    return {
      bytes: bytesOf(piece),
      act: () => {
        keep?.(take(rangeOf(within, place), checked));
        rangeOf(within, place).values = isAcross ? [[...piece]] : piece.map((content) => [content]);
      },
    };
  });
}

/** The cells of columns, to be read. */
export const wantedOf = (columns: readonly Column[]): Wanted[] =>
  columns.map((column) => ({ within: column.within, box: partOf(column, 0, column.before.length) }));

async function isAsBefore(context: Excel.RequestContext, columns: readonly Column[]): Promise<boolean> {
  const now = await readBoxes(context, wantedOf(columns), "formulas");
  return columns.every(({ before }, i) =>
    nth(now, i)
      .flat()
      .every((content, index) => content === before[index]),
  );
}

/** The sentence on what the cells hold after a failure: whether it is their previous content, as far as Excel can tell. */
export const afterFailure = async (context: Excel.RequestContext, columns: readonly Column[]): Promise<Message> =>
  (await isAsBefore(context, columns).catch(() => false)) ? say`The cells are as they were.` : MAY_BE_WRITTEN;

/**
 * Writes the values. If Excel refuses in the middle, each column is restored separately, so that one failure does not
 * stop the others; the sentence says what the cells hold then. `before` are steps that come first.
 */
export async function writeColumns(
  context: Excel.RequestContext,
  columns: ReadonlyMap<string, Column>,
  { sheet, values, doing }: { readonly sheet: string; readonly values: NamedColumns; readonly doing: Message },
  before: readonly Step[],
): Promise<void> {
  const taken: Taken[] = [];
  const lists = listsOf(columns, values);
  try {
    const writing = lists.flatMap(({ column, list }) => stepsOf(column, list, (cells) => void taken.push(cells)));
    await sendNoted(context, sheet, [...before, ...writing]);
  } catch (error) {
    for (const { column, list } of lists) {
      // Only cells that were written are restored: they held constants. Into another cell an answer may spill.
      const before = list.map((value, i) => (value === null ? null : (column.before[i] ?? null)));
      await send(context, stepsOf(column, before)).catch(() => undefined);
    }
    throw told(error, doing, await afterFailure(context, [...columns.values()]));
  }
  await refuseChanged(context, sheet, taken);
}
