/** Follows one of the data sheets of the workbook: the one that was chosen, otherwise the one in front, otherwise the first. */
import { useCallback, useEffect, useRef, useState } from "react";
import type { WorkbookPort } from "../../workbook/port";
import { follow } from "./follow";

/** Milliseconds without a change of the workbook before it is read again. */
const PAUSE = 400;

/** The name of the sheet to read; undefined where there is none. */
export function chosenOf(
  found: readonly { readonly sheet: string; readonly isActive: boolean }[],
  wanted: string | undefined,
): string | undefined {
  const names = found.map(({ sheet }) => sheet);
  const active = found.find(({ isActive }) => isActive)?.sheet;
  return [wanted, active, ...names].find((name) => name !== undefined && names.includes(name));
}

interface Followed<T> {
  readonly port: WorkbookPort;
  /** What is shown before anything was read. */
  readonly start: T;
  /** Reads the workbook; the same function at every call. */
  readonly read: (port: WorkbookPort, wanted: string | undefined) => Promise<T>;
  /** The sheet that was read. */
  readonly sheetOf: (found: T) => string | undefined;
  /** Keeps the picture as it is, while the pane itself writes. */
  readonly still: boolean;
}

export function useChosenSheet<T extends { readonly error?: string }>({
  port,
  start,
  read,
  sheetOf,
  still,
}: Followed<T>): T & { readonly choose: (sheet: string) => void; readonly again: () => void } {
  // The first sheet that was found stays chosen, whichever sheet is shown later. It is no state: it asks for no other reading.
  const wanted = useRef<string>();
  const [asked, setAsked] = useState(0);
  const [found, setFound] = useState<T>(start);

  useEffect(() => {
    if (still) return;
    return follow(port, {
      to: ["values", "front", "sheets"],
      pause: PAUSE,
      read: () => read(port, wanted.current),
      found: (next) => {
        wanted.current ??= sheetOf(next);
        setFound(next);
      },
      failed: (error) => setFound((before) => ({ ...before, error })),
    });
  }, [port, asked, still, read, sheetOf]);

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
