/** Turns what Excel refuses into a sentence for the pane. */
import { say, asTyped, type Message } from "../../reduction/message";
import { WorkbookError } from "../port";

export const PROTECTED = say`The workbook's structure is protected, so no sheet can be added: unprotect it (Review, Protect Workbook) and try again.`;

const NEWER = say`this Excel cannot do it: a newer one is needed`;
const BUSY = say`Excel is busy: wait a moment, and try again`;
const LARGE = say`it is too large for Excel to take at once: choose fewer cells`;
const LOST = say`the connection to Excel was lost: reload the workbook, and try again`;
const CELLS = say`it does not fit among the cells that are there: clear the filter, or look for tables and merged cells, and try again`;

/**
 * Codes that the requests of this add-in can cause: those of `Excel.ErrorCodes` and `OfficeExtension.ErrorCodes`
 * (@types/office-js 1.0.612), and those of Microsoft's page "Error handling with the application-specific JavaScript
 * APIs".
 */
const CAUSES: Readonly<Record<string, Message>> = {
  AccessDenied: say`it is protected, or open for reading only: unprotect it or save a copy, and try again`,
  ActivityLimitReached: BUSY,
  ApiNotAvailable: NEWER,
  ApiNotFound: NEWER,
  BadPassword: say`it is protected with a password: lift the protection in Excel, and try again`,
  CannotRegisterEvent: say`it does not tell of changes now: close the pane and open it again`,
  Conflict: say`someone else is changing the workbook: wait a moment, and try again`,
  ConnectionFailure: LOST,
  EmptyChartSeries: say`a chart has no readings to show: enter readings, and try again`,
  FilteredRangeConflict: CELLS,
  FormulaLengthExceedsLimit: say`a formula is too long for it: choose fewer loads`,
  GeneralException: say`it gives no reason: save the workbook, open it again, and try again`,
  HostRestartNeeded: say`the add-in was renewed: close Excel, open it again, and try again`,
  InactiveWorkbook: say`the workbook is not the active one: click into it, and try again`,
  InsertDeleteConflict: CELLS,
  InvalidArgument: say`Excel does not accept a value or a name in it: look whether a name or a cell was changed by hand, and try again`,
  InvalidBinding: say`the cells have changed in the meantime: try again`,
  InvalidObjectPath: say`the cells have changed in the meantime: try again`,
  InvalidOperation: say`it is not possible where the workbook stands now: click into a cell of a sheet, and try again`,
  InvalidOperationInCellEditMode: say`a cell is being edited: press Enter or Esc in that cell, and try again`,
  InvalidOrTimedOutSession: LOST,
  InvalidReference: say`Excel does not accept a cell reference in it: look whether cells were deleted, and try again`,
  InvalidRequest: say`Excel did not understand it: a newer Excel may be needed`,
  InvalidSelection: say`a chart, a picture or a button is selected, or another workbook is in front: select cells of this workbook, and try again`,
  ItemAlreadyExists: say`something of that name is there already: rename it, and try again`,
  ItemNotFound: say`it is not there: it may have been renamed or deleted`,
  MemoryLimitReached: say`Excel has too little memory: close other workbooks, and try again`,
  MergedRangeConflict: CELLS,
  NonBlankCellOffSheet: say`it would push cells off the sheet: delete blank rows and columns at its end, and try again`,
  NotImplemented: NEWER,
  OperationCellsExceedLimit: LARGE,
  PivotTableRangeConflict: CELLS,
  RangeExceedsLimit: LARGE,
  RequestAborted: BUSY,
  RequestPayloadSizeLimitExceeded: LARGE,
  ResponsePayloadSizeLimitExceeded: LARGE,
  ServiceNotAvailable: BUSY,
  Timeout: BUSY,
  Unauthenticated: say`Excel wants you to sign in again: do so, and try again`,
  UnsupportedFeature: NEWER,
  UnsupportedOperation: NEWER,
  UnsupportedSheet: say`a chart sheet or a macro sheet is in front: click on the tab of a sheet with cells, and try again`,
  WriteNotSupportedWhenModalDialogOpen: say`a dialog is open: close it, and try again`,
};

export const codeOf = (error: unknown): string => (error instanceof OfficeExtension.Error ? error.code : "");

export const isTaken = (error: unknown): boolean => codeOf(error) === "ItemAlreadyExists";

/**
 * Any failure as one sentence: the action ("read the selection"), the cause and the remedy. `after` says what the
 * workbook holds now. A `WorkbookError` already is a sentence.
 */
export function told(error: unknown, doing: Message, after?: Message): WorkbookError {
  if (error instanceof WorkbookError) return error;
  const cause =
    CAUSES[codeOf(error)] ?? asTyped(error instanceof Error ? error.message.replace(/\.$/, "") : String(error));
  return new WorkbookError(
    after ? say`Excel could not ${doing}: ${cause}. ${after}` : say`Excel could not ${doing}: ${cause}.`,
    { cause: error },
  );
}
