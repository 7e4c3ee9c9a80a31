/**
 * Cells are checked in one request and written in a later one. What somebody else wrote into them in between is read in
 * the request that writes, just before, and is put back.
 */
import { say, verbatim } from "../../reduction/message";
import { isFormula } from "../contents";
import { asColumn } from "../lists";
import { WorkbookError, type CellValue } from "../port";
import { constant } from "./grid";
import { bytesOf, send } from "./requests";

/** What is said if Excel does not tell what the cells hold. */
export const MAY_BE_WRITTEN = say`Some cells may have been written: compare them with what you entered.`;

/** Cells of one column that are about to be written. */
export interface Taken {
  /** Loaded just before the cells are written. */
  readonly cells: Excel.Range;
  /** What the cells held when they were checked; null for a cell that is left alone. */
  readonly checked: readonly (CellValue | null)[];
  /** The formats of the cells before, if formats are written too. */
  readonly formats?: readonly string[];
}

/** Loads cells in the request that writes them; the write comes behind this call. */
export const take = (
  cells: Excel.Range,
  checked: readonly (CellValue | null)[],
  formats?: readonly string[],
): Taken => ({ cells: cells.load("formulas,values"), checked, formats });

/**
 * The content of a cell in the form in which it is written back. For a text with an apostrophe before "=", Excel returns
 * the same string as for a formula, but its value is equal to its content.
 */
export const asWritten = (content: CellValue, value: CellValue | undefined): CellValue =>
  isFormula(content) && value !== content ? content : constant(content);

const isChanged = ({ cells, checked }: Taken): boolean =>
  checked.some((content, index) => content !== null && asColumn(cells.formulas)[index]?.[0] !== content);

/** Puts the contents back and throws if somebody else changed one of the cells since they were checked. */
export async function refuseChanged(
  context: Excel.RequestContext,
  sheet: string,
  taken: readonly Taken[],
): Promise<void> {
  if (!taken.some(isChanged)) return;
  const steps = taken.map(({ cells, checked, formats }) => {
    const back = checked.map((content, row) =>
      content === null ? null : asWritten(asColumn(cells.formulas)[row]?.[0] ?? "", asColumn(cells.values)[row]?.[0]),
    );
    return {
      bytes: bytesOf([back, formats]),
      act: () => {
        cells.formulas = cells.formulas.length === 1 ? [back] : back.map((content) => [content]);
        if (formats) cells.numberFormat = formats.map((format) => [format]);
      },
    };
  });
  const after = await send(context, steps).then(
    () => say`Nothing was written: look at the cells, and try again.`,
    () => MAY_BE_WRITTEN,
  );
  throw new WorkbookError(say`Somebody else changed cells of the sheet "${verbatim(sheet)}" in the meantime. ${after}`);
}
