/** The width of a drawing in px. */
import { useEffect, useRef, useState } from "react";

/** The greatest width of a drawing. */
const WIDEST = 680;

/**
 * Follows the width and keeps it between the narrowest and WIDEST. Until it is known, it is the width of a narrow pane.
 */
export function useWidth(narrowest: number): [React.RefObject<HTMLDivElement>, number] {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(320);
  useEffect(() => {
    const element = ref.current;
    if (!element || typeof ResizeObserver === "undefined") return;
    const observer = new ResizeObserver(() => element.clientWidth > 0 && setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, Math.min(WIDEST, Math.max(narrowest, width))];
}
