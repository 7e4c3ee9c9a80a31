/** Whether named cells may be written: both adapters ask this before they write. */
import { say, verbatim } from "../../reduction/message";
import { isFormula } from "../contents";
import { nth } from "../../reduction/numeric/lists";
import { lineFeedsOf, LONGEST_TEXT, MOST_LINE_FEEDS } from "../limits";
import { WorkbookError, type CellValue, type NamedColumns } from "../port";

/** The present content of the first column of a name, or its values; undefined if the sheet has no such name. */
export type Contents = (name: string) => readonly CellValue[] | undefined;

/** The conditions of a writing: names that must be blank, names of which only blank cells get a value, and what cells hold. */
export interface Conditions {
  readonly blank: readonly string[];
  readonly free: readonly string[];
  readonly held: NamedColumns;
}

/** Refuses to write if a cell does not show what it was seen to show. */
function checkHeld(sheet: string, held: NamedColumns, shown: Contents): void {
  for (const [name, list] of Object.entries(held)) {
    const present = shown(name) ?? [];
    const row = list.findIndex(
      (content, index) => content !== null && String(present[index] ?? "") !== String(content),
    );
    if (row >= 0)
      throw new WorkbookError(
        say`Row ${row + 1} of "${verbatim(name)}" on the sheet "${verbatim(sheet)}" was changed in the meantime, in another window perhaps. Nothing was written: look at the row, and try again.`,
      );
  }
}

/** Refuses a value for a cell of these names that holds something. */
function checkFree(sheet: string, values: NamedColumns, free: readonly string[], contents: Contents): void {
  for (const name of free) {
    const present = contents(name) ?? [];
    const isTaken = (value: CellValue | null, row: number): boolean =>
      value !== null && value !== "" && (present[row] ?? "") !== "";
    const row = (values[name] ?? []).findIndex(isTaken);
    if (row >= 0)
      throw new WorkbookError(
        say`Row ${row + 1} of "${verbatim(name)}" on the sheet "${verbatim(sheet)}" was filled in the meantime, in another window perhaps. Nothing was written: look at the row, and try again.`,
      );
  }
}

/**
 * Refuses a missing name, a name with too few cells, a formula in a cell to be written, content in a name of `blank`,
 * content in a cell of a name of `free` that is to get a value, and another value in a cell of `held` than the one that was
 * seen. `shown` gives the values of the cells.
 */
export function checkFill(
  sheet: string,
  values: NamedColumns,
  { blank, free, held }: Conditions,
  contents: Contents,
  shown: Contents,
): void {
  for (const name of blank) {
    const held = contents(name)?.filter((content) => content !== "").length ?? 0;
    if (held > 0)
      throw new WorkbookError(
        held === 1
          ? say`"${verbatim(name)}" of the sheet "${verbatim(sheet)}" holds 1 value already. Nothing was written: say that they may be replaced, or clear them.`
          : say`"${verbatim(name)}" of the sheet "${verbatim(sheet)}" holds ${held} values already. Nothing was written: say that they may be replaced, or clear them.`,
      );
  }
  for (const [name, list] of Object.entries(values)) {
    const present = contents(name);
    if (!present)
      throw new WorkbookError(
        say`The sheet "${verbatim(sheet)}" has no cells named "${verbatim(name)}": choose a data sheet. Nothing was written.`,
      );
    if (list.length > present.length)
      throw new WorkbookError(
        say`"${verbatim(name)}" of the sheet "${verbatim(sheet)}" has ${present.length} cells, and ${list.length} are needed. Nothing was written: choose fewer rows.`,
      );
    const endless = list.findIndex((value) => typeof value === "number" && !Number.isFinite(value));
    if (endless >= 0)
      throw new WorkbookError(
        say`Row ${endless + 1} of "${verbatim(name)}" is to hold a number that no cell of the sheet "${verbatim(sheet)}" takes: the largest is 1.8E+308. Nothing was written: mend the number in the file.`,
      );
    const long = list.findIndex((value) => typeof value === "string" && value.length > LONGEST_TEXT);
    if (long >= 0)
      throw new WorkbookError(
        say`Row ${long + 1} of "${verbatim(name)}" is to hold a text of more than ${LONGEST_TEXT} characters on the sheet "${verbatim(sheet)}", which no cell takes. Nothing was written: shorten it.`,
      );
    const parted = list.findIndex((value) => typeof value === "string" && lineFeedsOf(value) > MOST_LINE_FEEDS);
    if (parted >= 0)
      throw new WorkbookError(
        say`Row ${parted + 1} of "${verbatim(name)}" is to hold a text of more than ${MOST_LINE_FEEDS} line feeds on the sheet "${verbatim(sheet)}", which no cell takes. Nothing was written: shorten it.`,
      );
    const row = list.findIndex((value, index) => value !== null && isFormula(nth(present, index)));
    if (row >= 0)
      throw new WorkbookError(
        say`Row ${row + 1} of "${verbatim(name)}" on the sheet "${verbatim(sheet)}" holds a formula. Nothing was written: put a value in its place first.`,
      );
  }
  checkFree(sheet, values, free, contents);
  checkHeld(sheet, held, shown);
}
