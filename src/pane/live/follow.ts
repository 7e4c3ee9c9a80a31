/** Reads from the workbook at once, and again a moment after each change in it. */
import type { WorkbookPort } from "../../workbook/port";
import { sentenceOf } from "../text/sentence";

export interface Following<T> {
  /** Milliseconds without a change before it is read again. */
  readonly pause: number;
  readonly read: () => Promise<T>;
  /** Hears of the latest answer only. */
  readonly found: (value: T) => void;
  readonly failed: (sentence: string) => void;
}

/** Gives what ends it; nothing is heard of afterwards. */
export function follow<T>(port: WorkbookPort, { pause, read, found, failed }: Following<T>): () => void {
  let gone = false;
  let latest = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let unsubscribe: (() => void) | undefined;

  const look = async (): Promise<void> => {
    const mine = ++latest;
    const current = () => !gone && mine === latest;
    try {
      const value = await read();
      if (current()) found(value);
    } catch (error) {
      if (current()) failed(sentenceOf(error));
    }
  };
  const changed = (): void => {
    clearTimeout(timer);
    timer = setTimeout(look, pause);
  };

  void look();
  port.onChange(changed).then(
    (stop) => (gone ? stop() : (unsubscribe = stop)),
    (error) => gone || failed(sentenceOf(error)),
  );
  return () => {
    gone = true;
    clearTimeout(timer);
    unsubscribe?.();
  };
}
