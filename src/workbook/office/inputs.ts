/**
 * Inputs of a protected sheet that are locked although nobody locked them: programs that save a workbook leave out blank rows, and
 * with the rows that their cells are inputs.
 */
import type { NamedColumns } from "../port";
import { listsOf, partOf, type Column } from "./fill";
import { rangeOf } from "./reading/read";
import type { Step } from "./requests";
import { unprotected } from "./upkeep";

/** The first and the last of blank cells below one another that are locked, counted in their list. */
interface Run {
  readonly column: Column;
  readonly from: number;
  readonly to: number;
}

/** The cells that are to be written, blank and locked, in columns that begin with an input. */
async function lostIn(context: Excel.RequestContext, { columns, values }: Filling): Promise<Run[]> {
  const locks = listsOf(columns, values).map(({ column, list }) => ({
    ...{ column, list, cells: rangeOf(column.within, partOf(column, 0, list.length)) },
    first: rangeOf(column.within, partOf(column, 0, 1)).format.protection.load("locked"),
    all: rangeOf(column.within, partOf(column, 0, list.length)).format.protection.load("locked"),
  }));
  await context.sync();
  const asked = locks.flatMap(({ column, list, cells, first, all }) =>
    // Excel gives null if some of the cells are locked and others are not.
    first.locked === false && all.locked !== false
      ? [{ column, list, seen: cells.getCellProperties({ format: { protection: true } }) }]
      : [],
  );
  if (asked.length === 0) return [];
  await context.sync();
  return asked.flatMap(({ column, list, seen }) => {
    const runs: Run[] = [];
    const locked = seen.value.flat().map((cell) => cell.format?.protection?.locked !== false);
    list.forEach((value, row) => {
      if (value === null || !locked[row] || column.before[row] !== "") return;
      const last = runs.at(-1);
      if (last && last.to === row - 1) runs.splice(-1, 1, { ...last, to: row });
      else runs.push({ column, from: row, to: row });
    });
    return runs;
  });
}

interface Filling {
  readonly columns: ReadonlyMap<string, Column>;
  readonly values: NamedColumns;
}

/**
 * Writes to columns of a sheet; cells that are inputs, and are locked all the same, are unlocked first. The sheet stays protected.
 * `protection` is loaded.
 */
export async function withInputsOpen<T>(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  protection: Excel.WorksheetProtection,
  filling: Filling,
  write: (first: readonly Step[]) => Promise<T>,
): Promise<T> {
  const lost = protection.protected ? await lostIn(context, filling) : [];
  if (lost.length === 0) return write([]);
  const steps = lost.map(({ column, from, to }): Step => ({
    act: () => {
      rangeOf(column.within, partOf(column, from, to - from + 1)).format.protection.locked = false;
    },
  }));
  return unprotected(context, sheet, () => write(steps));
}
