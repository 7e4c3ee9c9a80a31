/** Runs one piece of work in Excel: it waits while a cell is being edited, and throws a failure as a sentence. */
import { type Message } from "../../reduction/message";
import { Stopped } from "../in-slices";
import { WorkbookError } from "../port";
import { noSheet } from "../rules/sheet-names";
import { codeOf, told } from "./sentence";

export async function run<T>(doing: Message, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, batch);
  } catch (error) {
    if (error instanceof Stopped) throw error;
    throw told(error, doing);
  }
}

/**
 * Runs work on a sheet with that name. The first request of the work finds out whether the sheet exists, so that no
 * request is spent on the question. It also loads the id of the sheet, by which the library names the sheet from then
 * on: the work goes on if somebody renames the sheet.
 */
export const runOn = <T>(
  sheet: string,
  doing: Message,
  batch: (context: Excel.RequestContext, sheet: Excel.Worksheet) => Promise<T>,
): Promise<T> =>
  run(doing, async (context) => {
    try {
      return await batch(context, context.workbook.worksheets.getItem(sheet).load("id"));
    } catch (error) {
      throw codeOf(error) === "ItemNotFound" ? new WorkbookError(noSheet(sheet)) : error;
    }
  });
