/** One piece of work in Excel, which waits while a cell is being edited and tells its failure in a sentence. */
import { WorkbookError } from "../port";
import { noSheet } from "../sheet-names";
import { codeOf, told } from "./sentence";

export async function run<T>(doing: string, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, batch);
  } catch (error) {
    throw told(error, doing);
  }
}

/** Work on a sheet of that name. The first request finds out whether the sheet is there: none is spent on the question alone. */
export const runOn = <T>(
  sheet: string,
  doing: string,
  batch: (context: Excel.RequestContext, sheet: Excel.Worksheet) => Promise<T>,
): Promise<T> =>
  run(doing, async (context) => {
    try {
      return await batch(context, context.workbook.worksheets.getItem(sheet));
    } catch (error) {
      throw codeOf(error) === "ItemNotFound" ? new WorkbookError(noSheet(sheet)) : error;
    }
  });
