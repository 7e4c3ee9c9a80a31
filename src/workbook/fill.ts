/** Whether named cells may be written: both adapters ask this before they write. */
import { isFormula } from "./contents";
import { nth } from "../reduction/numeric/lists";
import { LONGEST_TEXT } from "./limits";
import { WorkbookError, type CellValue, type NamedColumns } from "./port";

/** The present content of the first column of a name, formulas as typed; undefined if the sheet has no such name. */
export type Contents = (name: string) => readonly CellValue[] | undefined;

/**
 * Refuses a missing name, a name with too few cells, a formula in a cell to be written, and content in a name of
 * `blank`.
 */
export function checkFill(sheet: string, values: NamedColumns, blank: readonly string[], contents: Contents): void {
  for (const name of blank) {
    const held = contents(name)?.filter((content) => content !== "").length ?? 0;
    if (held > 0)
      throw new WorkbookError(
        `"${name}" of the sheet "${sheet}" holds ${held} ${held === 1 ? "value" : "values"} already. Nothing was written: say that they may be replaced, or clear them.`,
      );
  }
  for (const [name, list] of Object.entries(values)) {
    const present = contents(name);
    if (!present)
      throw new WorkbookError(
        `The sheet "${sheet}" has no cells named "${name}": choose a data sheet. Nothing was written.`,
      );
    if (list.length > present.length)
      throw new WorkbookError(
        `"${name}" of the sheet "${sheet}" has ${present.length} cells, and ${list.length} are needed. Nothing was written: choose fewer rows.`,
      );
    const endless = list.findIndex((value) => typeof value === "number" && !Number.isFinite(value));
    if (endless >= 0)
      throw new WorkbookError(
        `Row ${endless + 1} of "${name}" is to hold a number that no cell of the sheet "${sheet}" takes: the largest is 1.8E+308. Nothing was written: mend the number in the file.`,
      );
    const long = list.findIndex((value) => typeof value === "string" && value.length > LONGEST_TEXT);
    if (long >= 0)
      throw new WorkbookError(
        `Row ${long + 1} of "${name}" is to hold a text of more than ${LONGEST_TEXT} characters on the sheet "${sheet}", which no cell takes. Nothing was written: shorten it.`,
      );
    const row = list.findIndex((value, index) => value !== null && isFormula(nth(present, index)));
    if (row >= 0)
      throw new WorkbookError(
        `Row ${row + 1} of "${name}" on the sheet "${sheet}" holds a formula. Nothing was written: put a value in its place first.`,
      );
  }
}
