/** Cells that have no result yet: what they show is no value, and is never kept as one. */
import { WorkbookError, type CellValue, type Selection } from "./port";

/** What Excel shows while a function of an add-in works, today and in earlier versions. */
const NOT_YET = /^#(BUSY!|GETTING_DATA)$/;

export const isNotYet = (value: CellValue): boolean => typeof value === "string" && NOT_YET.test(value);

export const hasNotYet = (values: Selection["values"]): boolean => values.some((row) => row.some(isNotYet));

const MOST_NAMED = 3;

/** Refuses named cells that are still being calculated, for a report or a copy that keeps what it reads. */
export function refuseNotYet(values: Readonly<Record<string, Selection["values"]>>): void {
  const names = Object.keys(values).filter((name) => hasNotYet(values[name]));
  if (names.length === 0) return;
  const listed = names.slice(0, MOST_NAMED).join(", ");
  const more = names.length > MOST_NAMED ? ` and ${names.length - MOST_NAMED} more` : "";
  throw new WorkbookError(
    `Excel is still calculating ${listed}${more}: wait until no cell shows #BUSY!, and try again. Nothing was made.`,
  );
}
