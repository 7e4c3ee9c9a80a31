/** The width that a drawing has, px. */
import { useEffect, useRef, useState } from "react";

/** Followed, and kept between the narrowest and the widest; before it is known, that of a narrow pane. */
export function useWidth(narrowest: number, widest: number): [React.RefObject<HTMLDivElement>, number] {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(320);
  useEffect(() => {
    const element = ref.current;
    if (!element || typeof ResizeObserver === "undefined") return;
    const observer = new ResizeObserver(() => element.clientWidth > 0 && setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, Math.min(widest, Math.max(narrowest, width))];
}
