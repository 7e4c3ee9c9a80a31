/** Writes named cells of a sheet unless what they are written beside has changed since the screen showed it. */
import type { NamedValues } from "../../record/record";
import { asColumn } from "../../workbook/lists";
import type { NamedColumns, WorkbookPort } from "../../workbook/port";

export interface AsSeen {
  /** The names that are read again before the writing. */
  readonly names: readonly string[];
  /** True if the values are those that the screen showed. */
  readonly isAsSeen: (values: NamedValues) => boolean;
  /** The names whose cells are written only if they are still blank, as for `fillNames`. */
  readonly free: readonly string[];
}

/** The cells of a name from the top, of the values of a sheet, as far as a list has them written. */
const heldIn = (values: NamedValues, cells: NamedColumns): NamedColumns =>
  Object.fromEntries(
    Object.entries(cells).map(([name, list]) => [
      name,
      list.map((value, row) => (value === null ? null : (asColumn(values[name] ?? [])[row]?.[0] ?? ""))),
    ]),
  );

/** Returns which of the two happened. An error of the workbook is thrown on. */
export async function writeAsSeen(
  port: WorkbookPort,
  sheet: string,
  cells: NamedColumns,
  { names, isAsSeen, free }: AsSeen,
): Promise<"written" | "changed meanwhile"> {
  const values = await port.readNames(sheet, [...new Set([...names, ...Object.keys(cells)])]);
  if (!isAsSeen(values)) return "changed meanwhile";
  await port.fillNames(sheet, cells, [], free, heldIn(values, cells));
  return "written";
}
