/** The data sheets of the workbook and the record of the chosen one, read again a moment after the last change. */
import { readRecord, RECORD_NAMES, type NamedValues, type TestRecord } from "../../record/record";
import { DATA_SHEET_NAME } from "../../specification/load-table";
import type { WorkbookPort } from "../../workbook/port";
import { chosenOf, useChosenSheet } from "./use-chosen-sheet";

export interface RecordOfSheet {
  /** Names of the data sheets; undefined until the workbook has answered, empty where there is none. */
  readonly sheets?: readonly string[];
  /** The sheet that is read: the one chosen, else the one in front, else the first. */
  readonly sheet?: string;
  readonly values?: NamedValues;
  readonly record?: TestRecord;
  readonly error?: string;
}

async function read(port: WorkbookPort, wanted: string | undefined): Promise<RecordOfSheet> {
  const found = (await port.readSheets([DATA_SHEET_NAME])).filter(({ values }) => values[DATA_SHEET_NAME]);
  const sheets = found.map(({ sheet }) => sheet);
  const sheet = chosenOf(found, wanted);
  if (sheet === undefined) return { sheets };
  const values = await port.readNames(sheet, RECORD_NAMES);
  return { sheets, sheet, values, record: readRecord(values) };
}

export interface FollowedRecord extends RecordOfSheet {
  readonly choose: (sheet: string) => void;
  readonly again: () => void;
}

const NOTHING_READ: RecordOfSheet = {};
const sheetOf = ({ sheet }: RecordOfSheet): string | undefined => sheet;

/** `still` keeps the picture as it is, while the pane itself writes. */
export const useRecord = (port: WorkbookPort, still = false): FollowedRecord =>
  useChosenSheet({ port, start: NOTHING_READ, read, sheetOf, still });
