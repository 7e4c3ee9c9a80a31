/** What Excel refuses, said so that the pane can show it. */
import { WorkbookError } from "../port";

export const PROTECTED =
  "The workbook's structure is protected, so no sheet can be added: unprotect it (Review, Protect Workbook) and try again.";

const CAUSES: Readonly<Record<string, string>> = {
  AccessDenied: "it is protected, or open for reading only: unprotect it or save a copy, and try again",
  InvalidOperationInCellEditMode: "a cell is being edited: press Enter or Esc in that cell, and try again",
  WriteNotSupportedWhenModalDialogOpen: "a dialog is open: close it, and try again",
  InvalidSelection: "a chart or picture is selected: select cells, and try again",
  ItemNotFound: "it is not there: it may have been renamed or deleted",
  InvalidArgument: "Excel does not accept a value or a name in it",
  InvalidReference: "Excel does not accept a cell reference in it",
  NotImplemented: "this Excel cannot do it: a newer one is needed",
  ApiNotFound: "this Excel cannot do it: a newer one is needed",
  UnsupportedFeature: "this Excel cannot do it: a newer one is needed",
  UnsupportedOperation: "this Excel cannot do it: a newer one is needed",
  RequestPayloadSizeLimitExceeded: "it is too large: choose fewer cells",
  ResponsePayloadSizeLimitExceeded: "it is too large: choose fewer cells",
  RangeExceedsLimit: "it is too large: choose fewer cells",
  ActivityLimitReached: "Excel is busy: wait a moment, and try again",
  RequestAborted: "Excel is busy: wait a moment, and try again",
  Timeout: "Excel is busy: wait a moment, and try again",
  ConnectionFailure: "the connection to Excel was lost: reload the workbook, and try again",
  InvalidOrTimedOutSession: "the connection to Excel was lost: reload the workbook, and try again",
  InactiveWorkbook: "the workbook is not the active one: click into it, and try again",
};

export const codeOf = (error: unknown): string => (error instanceof OfficeExtension.Error ? error.code : "");

export const isTaken = (error: unknown): boolean => codeOf(error) === "ItemAlreadyExists";

/**
 * Any failure as one sentence: what was being done ("read the selection"), why it failed and the remedy.
 * `after` says how the workbook stands now. A `WorkbookError` is already told.
 */
export function told(error: unknown, doing: string, after = ""): WorkbookError {
  if (error instanceof WorkbookError) return error;
  const cause = CAUSES[codeOf(error)] ?? (error instanceof Error ? error.message.replace(/\.$/, "") : String(error));
  return new WorkbookError(`Excel could not ${doing}: ${cause}.${after && ` ${after}`}`, { cause: error });
}
