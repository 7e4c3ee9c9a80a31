/** Whether the names of a sheet still lie where a piece of work has found them: both adapters ask this before they write by places. */
import { say, verbatim } from "../../reduction/message";
import { WorkbookError, type NamedAddress, type SheetName, type SheetPlan } from "../port";

const placesOf = (names: readonly SheetName[]): ReadonlyMap<string, string> =>
  new Map(names.map(({ name, scope, place }) => [`${scope} ${name.toLowerCase()}`, JSON.stringify(place)]));

/** True if one of the names leads elsewhere by now, or is gone. */
export function haveMoved(before: readonly SheetName[], now: readonly SheetName[]): boolean {
  const places = placesOf(now);
  return [...placesOf(before)].some(([name, place]) => places.get(name) !== place);
}

/** Throws a sentence if rows or columns were inserted or deleted, or names were moved, since the names were read. */
export function refuseMoved(sheet: string, before: readonly SheetName[], now: readonly SheetName[]): void {
  if (haveMoved(before, now))
    throw new WorkbookError(
      say`Rows or columns of the sheet "${verbatim(sheet)}" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again.`,
    );
}

/** Throws a sentence if the first or the last of the cells that get a name shows something else than when they were found. */
export function refuseOtherEnds(sheet: string, ends: NamedAddress["ends"], now: readonly unknown[]): void {
  if (ends?.some((shown, index) => shown !== now[index]))
    throw new WorkbookError(
      say`Somebody else changed cells of the sheet "${verbatim(sheet)}" in the meantime. ${say`Nothing was written: look at the cells, and try again.`}`,
    );
}

/** Throws a sentence if a plan would show other cells than those it was made for; `now` is undefined if the sheet is gone. */
export function refuseReadElsewhere({ reads }: SheetPlan, now: readonly SheetName[] | undefined): void {
  if (reads && (now === undefined || haveMoved(reads.names, now)))
    throw new WorkbookError(
      say`The new sheet would show other cells of the sheet "${verbatim(reads.sheet)}": in the meantime its rows or columns were inserted or deleted, its names were changed, or it was renamed or deleted. Nothing was inserted: try again.`,
    );
}
