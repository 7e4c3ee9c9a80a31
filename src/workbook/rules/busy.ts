/** Cells without a result yet: the placeholder that they show is not a value, and is never stored as one. */
import { listed, say, verbatim } from "../../reduction/message";
import { WorkbookError, type CellValue, type Selection } from "../port";

/** The placeholder in Excel while a function of an add-in works, today and in earlier versions. */
const NOT_YET = /^#(BUSY!|GETTING_DATA)$/;

const isNotYet = (value: CellValue): boolean => typeof value === "string" && NOT_YET.test(value);

export const hasNotYet = (values: Selection["values"]): boolean => values.some((row) => row.some(isNotYet));

const MOST_NAMED = 3;

/** Refuses named cells that are still being calculated, before a report or a copy stores their values. */
export function refuseNotYet(values: Readonly<Record<string, Selection["values"]>>): void {
  const names = Object.entries(values).flatMap(([name, cells]) => (hasNotYet(cells) ? [name] : []));
  if (names.length === 0) return;
  const named = listed(names.slice(0, MOST_NAMED).map(verbatim));
  const more = names.length - MOST_NAMED;
  throw new WorkbookError(
    more > 0
      ? say`Excel is still calculating ${named} and ${more} more: wait until no cell shows #BUSY!, and try again. Nothing was made.`
      : say`Excel is still calculating ${named}: wait until no cell shows #BUSY!, and try again. Nothing was made.`,
  );
}
