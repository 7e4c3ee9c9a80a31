/** Constants into named cells in Excel, which has no step that is taken back whole: what was there is put back here. */
import type { CellValue, NamedColumns } from "../port";
import { constant } from "./grid";
import { told } from "./sentence";

/** The first column of each name, with what its cells held before. */
export interface Column {
  readonly range: Excel.Range;
  readonly before: readonly CellValue[];
}

const contentsOf = (range: Excel.Range): CellValue[] => range.formulas.map(([first]) => first as CellValue);

/** Whether the cells hold what they held, as far as Excel can still say. */
async function isAsBefore(context: Excel.RequestContext, columns: Iterable<Column>): Promise<boolean> {
  const list = [...columns];
  for (const { range } of list) range.load("formulas");
  await context.sync();
  return list.every(({ range, before }) => contentsOf(range).every((content, i) => content === before[i]));
}

/**
 * Writes the values, null leaving a cell as it is. Where Excel refuses in the middle, each column is put back for itself, so
 * that one out of reach does not keep the others; the sentence says how the cells stand then.
 */
export async function writeColumns(
  context: Excel.RequestContext,
  columns: ReadonlyMap<string, Column>,
  values: NamedColumns,
  doing: string,
): Promise<void> {
  const lists = Object.entries(values).filter(([, list]) => list.length > 0);
  const cells = (name: string, count: number): Excel.Range =>
    columns
      .get(name)!
      .range.getCell(0, 0)
      .getResizedRange(count - 1, 0);
  try {
    for (const [name, list] of lists)
      cells(name, list.length).values = list.map((value) => [value === null ? null : constant(value)]);
    await context.sync();
  } catch (error) {
    for (const [name, list] of lists) {
      const { before } = columns.get(name)!;
      // No formula was written over, and a cell that was left alone may be one that an answer spills into.
      cells(name, list.length).values = list.map((value, i) => [value === null ? null : constant(before[i])]);
      await context.sync().catch(() => undefined);
    }
    const isWhole = await isAsBefore(context, columns.values()).catch(() => false);
    throw told(
      error,
      doing,
      isWhole ? "The cells are as they were." : "Some cells may have been written: compare them with what you entered.",
    );
  }
}
