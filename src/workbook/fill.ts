/** Whether named cells may be written: what both adapters ask before they touch one. */
import { LONGEST_TEXT } from "./limits";
import { WorkbookError, type CellValue, type NamedColumns } from "./port";

/** What the first column of a name holds now, formulas as they are typed; undefined where the sheet has no such name. */
export type Contents = (name: string) => readonly CellValue[] | undefined;

const isFormula = (content: CellValue): boolean => typeof content === "string" && content.startsWith("=");

/** Refuses a name that is not there or too short, a formula in the way, and a name of `blank` that holds something. */
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
    const long = list.findIndex((value) => typeof value === "string" && value.length > LONGEST_TEXT);
    if (long >= 0)
      throw new WorkbookError(
        `Row ${long + 1} of "${name}" is to hold a text of more than ${LONGEST_TEXT} characters on the sheet "${sheet}", which no cell takes. Nothing was written: shorten it.`,
      );
    const row = list.findIndex((value, index) => value !== null && isFormula(present[index]));
    if (row >= 0)
      throw new WorkbookError(
        `Row ${row + 1} of "${name}" on the sheet "${sheet}" holds a formula. Nothing was written: put a value in its place first.`,
      );
  }
}
