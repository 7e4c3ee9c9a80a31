/** A workbook that tells a screen of changes only while that screen is shown, and of one missed as soon as it is again. */
import type { Change, WorkbookPort } from "../../workbook/port";

export interface WhileShown {
  readonly port: WorkbookPort;
  readonly setShown: (isShown: boolean) => void;
}

/** What a listener hears of, with what it missed. */
function hushable<T>(isShown: () => boolean) {
  const missed = new Map<(what: T) => void, Set<T>>();
  return {
    follow: async (on: (listener: (what: T) => void) => Promise<() => void>, listener: (what: T) => void) => {
      missed.set(listener, new Set());
      const stop = await on((what) => (isShown() ? listener(what) : missed.get(listener)?.add(what)));
      return () => {
        missed.delete(listener);
        stop();
      };
    },
    tellMissed: () =>
      missed.forEach((all, listener) => {
        const now = [...all];
        all.clear();
        now.forEach((what) => listener(what));
      }),
  };
}

export function whileShown(port: WorkbookPort): WhileShown {
  let shown = false;
  const changes = hushable<Change>(() => shown);
  const moves = hushable<void>(() => shown);
  const own: Pick<WorkbookPort, "onChange" | "onSelect"> = {
    onChange: (listener) => changes.follow((heard) => port.onChange(heard), listener),
    onSelect: (listener) => moves.follow((heard) => port.onSelect(heard), listener),
  };
  return {
    // A port keeps what is its own to itself: its methods are called on it, not on a copy.
    port: new Proxy(port, {
      get: (target, key) => {
        if (key === "onChange" || key === "onSelect") return own[key];
        const value: unknown = Reflect.get(target, key, target);
        return typeof value === "function" ? value.bind(target) : value;
      },
    }),
    setShown: (isShown) => {
      shown = isShown;
      if (!shown) return;
      changes.tellMissed();
      moves.tellMissed();
    },
  };
}
