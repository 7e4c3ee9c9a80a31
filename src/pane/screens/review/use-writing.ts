/** Writes what is saved on the review screen into the sheet's table of picks, and says how it went. */
import { useCallback, type Dispatch } from "react";
import { PICK_COLUMNS } from "../../../specification/pick-table";
import type { NamedColumns, WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import { sameRows, tableOf, type PicksTable } from "./pick-changes";
import type { ReviewAct } from "./review-state";

const words = text.review;

/**
 * Writes cells of the table of picks, unless it holds by now something else than what was shown. Gives whether it wrote; a
 * failure of the workbook is thrown as it is.
 */
async function writeTable(
  port: WorkbookPort,
  sheet: string,
  seen: PicksTable,
  cells: NamedColumns,
): Promise<"written" | "changed meanwhile"> {
  if (!sameRows(tableOf(await port.readNames(sheet, PICK_COLUMNS)), seen)) return "changed meanwhile";
  await port.fillNames(sheet, cells);
  return "written";
}

export interface Writing {
  readonly port: WorkbookPort;
  readonly sheet: string | undefined;
  /** The table as it was shown. */
  readonly table: PicksTable;
  readonly busy: boolean;
  readonly dispatch: Dispatch<ReviewAct>;
  /** Reads the sheet again. */
  readonly again: () => Promise<void>;
}

/** Writes cells, one change at a time; `done` is told when it has, and the draft under `saves` is dropped. */
export function useWriting({ port, sheet, table, busy, dispatch, again }: Writing) {
  return useCallback(
    async (cells: NamedColumns, done: string, saves?: string): Promise<void> => {
      if (busy || sheet === undefined) return;
      dispatch({ does: "write" });
      try {
        const isWritten = (await writeTable(port, sheet, table, cells)) === "written";
        dispatch({
          does: "tell",
          telling: isWritten
            ? { intent: "success", sentence: done }
            : { intent: "warning", sentence: words.changedMeanwhile },
        });
        // The draft is kept until the sheet is read again, so that nothing jumps back for a moment.
        await again();
        dispatch({ does: "read again", saved: isWritten ? saves : undefined });
      } catch (failure) {
        dispatch({ does: "fail", sentence: sentenceOf(failure) });
      }
    },
    [port, sheet, table, busy, dispatch, again],
  );
}
