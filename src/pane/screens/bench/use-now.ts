/**
 * The clock of the computer. It advances once a second while the screen is shown, and at once when the pane becomes
 * visible again.
 */
import { useEffect, useState } from "react";
import { useIsShown } from "../../live/use-test";

const SECOND = 1000;

export function useNow(): Date {
  const isShown = useIsShown();
  const [now, setNow] = useState(() => new Date());
  useEffect(() => {
    if (!isShown) return;
    const tick = (): void => setNow(new Date());
    tick();
    const timer = setInterval(tick, SECOND);
    document.addEventListener("visibilitychange", tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", tick);
    };
  }, [isShown]);
  return now;
}
