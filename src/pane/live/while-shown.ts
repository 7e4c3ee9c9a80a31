/** A workbook that tells a screen of changes only while that screen is shown, and of one missed as soon as it is again. */
import type { WorkbookPort } from "../../workbook/port";

export interface WhileShown {
  readonly port: WorkbookPort;
  readonly setShown: (isShown: boolean) => void;
}

export function whileShown(port: WorkbookPort): WhileShown {
  const listeners = new Set<() => void>();
  let shown = false;
  let missed = false;
  const onChange: WorkbookPort["onChange"] = async (listener) => {
    const mine = (): void => {
      if (shown) listener();
      else missed = true;
    };
    const stop = await port.onChange(mine);
    listeners.add(listener);
    return () => {
      listeners.delete(listener);
      stop();
    };
  };
  const own = { onChange } as const;
  return {
    // A port keeps what is its own to itself: its methods are called on it, not on a copy.
    port: new Proxy(port, {
      get: (target, key) => {
        if (key === "onChange") return own.onChange;
        const value: unknown = Reflect.get(target, key, target);
        return typeof value === "function" ? value.bind(target) : value;
      },
    }),
    setShown: (isShown) => {
      shown = isShown;
      if (!shown || !missed) return;
      missed = false;
      listeners.forEach((listener) => listener());
    },
  };
}
