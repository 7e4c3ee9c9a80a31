/** The data sheets of the workbook and what the chosen one holds, followed as cells change. */
import { useCallback, useEffect, useRef, useState } from "react";
import { FILE_SHEET_PREFIX, LAYOUT_NAMES, layoutFrom } from "../datasheet/logger/file-sheet";
import { DATA_SHEET_NAME, TARGET_NAMES, targetOf, type Target } from "../datasheet/logger/target";
import type { SheetValues, WorkbookPort } from "../workbook/port";
import { follow } from "./follow";
import type { Remembered } from "./readings-columns";

export interface DataSheets {
  /** undefined until the workbook has answered. */
  readonly names?: readonly string[];
  readonly chosen?: string;
  readonly target?: Target;
  /** Layouts of files that were brought in before, one for each apparatus, the latest. */
  readonly remembered: readonly Remembered[];
  readonly error?: string;
}

const PAUSE = 400;

function rememberedIn(sheets: readonly SheetValues[]): Remembered[] {
  const found = new Map<string, Remembered>();
  for (const { sheet, values } of sheets) {
    if (!sheet.startsWith(FILE_SHEET_PREFIX)) continue;
    const [apparatus, kept] = LAYOUT_NAMES.map((name) => String(values[name]?.[0]?.[0] ?? "").trim());
    const layout = layoutFrom(kept);
    if (apparatus && layout) found.set(apparatus, { apparatus, layout });
  }
  return [...found.values()];
}

async function look(port: WorkbookPort, wanted: string | undefined): Promise<DataSheets> {
  const all = await port.readSheets([DATA_SHEET_NAME, ...LAYOUT_NAMES]);
  const found = all.filter(({ values }) => values[DATA_SHEET_NAME]);
  const names = found.map(({ sheet }) => sheet);
  const active = found.find(({ isActive }) => isActive)?.sheet;
  const chosen = [wanted, active, ...names].find((name) => name !== undefined && names.includes(name));
  const target = chosen === undefined ? undefined : targetOf(await port.readNames(chosen, TARGET_NAMES));
  return { names, chosen, target, remembered: rememberedIn(all) };
}

/** `still` keeps the picture as it is, while the pane itself writes. */
export function useDataSheets(
  port: WorkbookPort,
  still: boolean,
): DataSheets & { choose: (sheet: string) => void; again: () => void } {
  // The first sheet that was found stays chosen, whichever sheet is shown later. It is no state: it asks for no other reading.
  const wanted = useRef<string>();
  const [asked, setAsked] = useState(0);
  const [sheets, setSheets] = useState<DataSheets>({ remembered: [] });

  useEffect(() => {
    if (still) return;
    return follow(port, {
      pause: PAUSE,
      read: () => look(port, wanted.current),
      found: (next) => {
        wanted.current ??= next.chosen;
        setSheets(next);
      },
      failed: (error) => setSheets((before) => ({ ...before, error })),
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
  return { ...sheets, choose, again };
}
