/**
 * Follows the range to plot: the selected range, read again a short time after the last change. While a single cell is
 * selected, for example to correct a reading, the earlier range stays, and its cells are followed.
 */
import { useCallback, useEffect, useState } from "react";
import type { WorkbookPort } from "../../../workbook/port";
import { follow, type Heard } from "../../live/follow";
import { useIsShown } from "../../live/use-test";
import { rangeOf, type Range } from "./selected-range";

export interface Followed {
  /** null if nothing that can be plotted is selected; undefined until the workbook has answered. */
  readonly range?: Range | null;
  readonly error?: string;
}

const PAUSE = 150;

/**
 * Reads the selected range, or the earlier one if nothing that can be plotted is selected. Returns null if the earlier
 * range has disappeared with its sheet. If only the selection moved, only the selection is read.
 */
async function readRange(port: WorkbookPort, before: Range | null, heard: ReadonlySet<Heard>): Promise<Range | null> {
  if (!before || heard.has("selection")) {
    const selected = rangeOf(await port.selection());
    if (selected || !before) return selected;
  }
  if (heard.has("sheets") && !(await port.sheetNames()).includes(before.sheet)) return null;
  if (!heard.has("values")) return before;
  const { sheet, address } = before;
  return rangeOf({ sheet, address, values: await port.values(sheet, address) });
}

export function useRange(port: WorkbookPort): Followed & { readonly again: () => void } {
  const [followed, setFollowed] = useState<Followed>({});
  const [asked, setAsked] = useState(0);

  const isShown = useIsShown();
  useEffect(() => {
    if (!isShown) return;
    let range: Range | null = null;
    return follow(port, {
      to: ["values", "sheets", "selection"],
      pause: PAUSE,
      read: (heard) => readRange(port, range, heard),
      found: (next) => {
        range = next;
        setFollowed({ range });
      },
      failed: (error) => setFollowed({ error }),
    });
  }, [port, asked, isShown]);

  return { ...followed, again: useCallback(() => setAsked((count) => count + 1), []) };
}
