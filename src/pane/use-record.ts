/** The data sheets of the workbook and the record of the chosen one, read again a moment after the last change. */
import { useCallback, useEffect, useRef, useState } from "react";
import { readRecord, RECORD_NAMES, type NamedValues, type TestRecord } from "../datasheet/record";
import { DATA_SHEET_NAME } from "../datasheet/logger/target";
import type { WorkbookPort } from "../workbook/port";
import { follow } from "./follow";

export interface RecordOfSheet {
  /** Names of the data sheets; undefined until the workbook has answered, empty where there is none. */
  readonly sheets?: readonly string[];
  /** The sheet that is read: the one chosen, else the one in front, else the first. */
  readonly sheet?: string;
  readonly values?: NamedValues;
  readonly record?: TestRecord;
  readonly error?: string;
}

const PAUSE = 400;

async function read(port: WorkbookPort, wanted: string | undefined): Promise<RecordOfSheet> {
  const found = (await port.readSheets([DATA_SHEET_NAME])).filter(({ values }) => values[DATA_SHEET_NAME]);
  const sheets = found.map(({ sheet }) => sheet);
  const active = found.find(({ isActive }) => isActive)?.sheet;
  const sheet = [wanted, active, ...sheets].find((name) => name !== undefined && sheets.includes(name));
  if (sheet === undefined) return { sheets };
  const values = await port.readNames(sheet, RECORD_NAMES);
  return { sheets, sheet, values, record: readRecord(values) };
}

export interface FollowedRecord extends RecordOfSheet {
  readonly choose: (sheet: string) => void;
  readonly again: () => void;
}

/** `still` keeps the picture as it is, while the pane itself writes. */
export function useRecord(port: WorkbookPort, still = false): FollowedRecord {
  // The first sheet that was found stays chosen, whichever sheet is shown later. It is no state: it asks for no other reading.
  const wanted = useRef<string>();
  const [asked, setAsked] = useState(0);
  const [found, setFound] = useState<RecordOfSheet>({});

  useEffect(() => {
    if (still) return;
    return follow(port, {
      pause: PAUSE,
      read: () => read(port, wanted.current),
      found: (next) => {
        wanted.current ??= next.sheet;
        setFound(next);
      },
      failed: (error) => setFound((before) => ({ ...before, error })),
    });
  }, [port, asked, still]);

  const again = useCallback(() => setAsked((count) => count + 1), []);
  const choose = useCallback(
    (sheet: string) => {
      wanted.current = sheet;
      again();
    },
    [again],
  );
  return { ...found, choose, again };
}
