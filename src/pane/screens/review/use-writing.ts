/** Writes the changes of the review screen into the table of picks of the sheet, and reports the result. */
import { useCallback, type Dispatch } from "react";
import { PICK_COLUMNS } from "../../../record/picks";
import type { NamedValues } from "../../../record/record";
import type { NamedColumns, WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import { sameRows, tableOf, type PicksTable } from "./picks/pick-changes";
import type { ReviewAct } from "./review-state";
import { writeAsSeen } from "../write-as-seen";

const words = text.review;

export interface Writing {
  readonly port: WorkbookPort;
  readonly sheet: string | undefined;
  /** The table as the screen showed it. */
  readonly table: PicksTable;
  readonly busy: boolean;
  readonly dispatch: Dispatch<ReviewAct>;
  /** Reads the sheet again. */
  readonly again: () => Promise<void>;
}

/**
 * Writes cells, one change at a time. After success the screen shows the sentence `done`, and the draft under `saves`
 * is dropped.
 */
export function useWriting({ port, sheet, table, busy, dispatch, again }: Writing) {
  return useCallback(
    async (cells: NamedColumns, done: string, saves?: string): Promise<void> => {
      if (busy || sheet === undefined) return;
      dispatch({ does: "write" });
      try {
        const isAsSeen = (values: NamedValues): boolean => sameRows(tableOf(values), table);
        const seen = { names: PICK_COLUMNS, isAsSeen, free: PICK_COLUMNS };
        const isWritten = (await writeAsSeen(port, sheet, cells, seen)) === "written";
        dispatch({
          does: "tell",
          telling: isWritten
            ? { intent: "success", sentence: done }
            : { intent: "warning", sentence: words.changedMeanwhile },
        });
        // The draft is kept until the sheet was read again, so that the screen does not show the old values for a
        // moment.
        await again();
        dispatch({ does: "read again", saved: isWritten ? saves : undefined });
      } catch (failure) {
        dispatch({ does: "fail", sentence: sentenceOf(failure) });
      }
    },
    [port, sheet, table, busy, dispatch, again],
  );
}
