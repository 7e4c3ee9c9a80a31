/** Writes named cells of a sheet unless what they are written beside has changed since the screen showed it. */
import type { NamedValues } from "../../record/record";
import type { NamedColumns, WorkbookPort } from "../../workbook/port";

export interface AsSeen {
  /** The names that are read again before the writing. */
  readonly names: readonly string[];
  /** True if the values are those that the screen showed. */
  readonly isAsSeen: (values: NamedValues) => boolean;
  /** The names whose cells are written only if they are still blank, as for `fillNames`. */
  readonly free: readonly string[];
}

/** Returns which of the two happened. An error of the workbook is thrown on. */
export async function writeAsSeen(
  port: WorkbookPort,
  sheet: string,
  cells: NamedColumns,
  { names, isAsSeen, free }: AsSeen,
): Promise<"written" | "changed meanwhile"> {
  if (!isAsSeen(await port.readNames(sheet, names))) return "changed meanwhile";
  await port.fillNames(sheet, cells, [], free);
  return "written";
}
