/** The selection of the workbook as state, read again, a moment after the last change, whenever it moves or a cell changes. */
import { useCallback, useEffect, useState } from "react";
import type { Selection, WorkbookPort } from "../workbook/port";
import { sentenceOf } from "./sentence";

export interface Followed {
  readonly selection?: Selection;
  readonly error?: string;
}

const PAUSE = 150;

export function useSelection(port: WorkbookPort): Followed & { again: () => void } {
  const [followed, setFollowed] = useState<Followed>({});
  const [asked, setAsked] = useState(0);

  useEffect(() => {
    let gone = false;
    let latest = 0;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let unsubscribe: (() => void) | undefined;

    const read = async (): Promise<void> => {
      const mine = ++latest;
      const next: Followed = await port.selection().then(
        (selection) => ({ selection }),
        (error) => ({ error: sentenceOf(error) }),
      );
      if (!gone && mine === latest) setFollowed(next);
    };
    const changed = (): void => {
      clearTimeout(timer);
      timer = setTimeout(read, PAUSE);
    };

    void read();
    port.onChange(changed).then(
      (stop) => (gone ? stop() : (unsubscribe = stop)),
      (error) => gone || setFollowed({ error: sentenceOf(error) }),
    );
    return () => {
      gone = true;
      clearTimeout(timer);
      unsubscribe?.();
    };
  }, [port, asked]);

  return { ...followed, again: useCallback(() => setAsked((n) => n + 1), []) };
}
