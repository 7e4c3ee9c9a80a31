/** Reads from the workbook at once, and again a short time after each change or each move of the selection. */
import type { Change, Unsubscribe, WorkbookPort } from "../../workbook/port";
import { sentenceOf } from "../text/sentence";

/** A change of the workbook, or a move of the selection. */
export type Heard = Change | "selection";

export interface Following<T> {
  readonly to: readonly Heard[];
  /** The time in milliseconds without a further change before the next read. */
  readonly pause: number;
  /** Reads the workbook. `heard` has every kind of event since the last answer; in the first call, all kinds of `to`. */
  readonly read: (heard: ReadonlySet<Heard>) => Promise<T>;
  /** Called with the latest answer only. */
  readonly found: (value: T) => void;
  readonly failed: (sentence: string) => void;
}

/** Starts to follow. Returns the function that ends it; afterwards neither `found` nor `failed` is called. */
export function follow<T>(port: WorkbookPort, { to, pause, read, found, failed }: Following<T>): () => void {
  let gone = false;
  let latest = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let heard = new Set<Heard>(to);
  /** What the reads without an answer were asked for. */
  let asked = new Set<Heard>();
  const leave: Unsubscribe[] = [];

  const look = async (): Promise<void> => {
    const mine = ++latest;
    const current = () => !gone && mine === latest;
    asked = new Set([...asked, ...heard]);
    // What is heard during the read is for the next one.
    heard = new Set();
    try {
      const value = await read(asked);
      if (!current()) return;
      asked = new Set();
      found(value);
    } catch (error) {
      if (current()) failed(sentenceOf(error));
    }
  };
  const hear = (what: Heard): void => {
    if (!to.includes(what)) return;
    heard.add(what);
    clearTimeout(timer);
    timer = setTimeout(() => void look(), pause);
  };
  const subscribed = (subscription: Promise<Unsubscribe>): void =>
    void subscription.then(
      (stop) => (gone ? stop() : leave.push(stop)),
      (error) => gone || failed(sentenceOf(error)),
    );

  void look();
  if (to.some((what) => what !== "selection")) subscribed(port.onChange(hear));
  if (to.includes("selection")) subscribed(port.onSelect(() => hear("selection")));
  return () => {
    gone = true;
    clearTimeout(timer);
    leave.forEach((stop) => stop());
  };
}
