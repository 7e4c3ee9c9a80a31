/** Long work of a screen: the share that is done, and its stop. */
import { useMemo, useRef, useState } from "react";
import type { Course } from "../../workbook/in-slices";

export interface LongWork {
  /** The share of the work that is done; undefined if no work goes on, or if the work has not reported a share yet. */
  readonly share: number | undefined;
  readonly stop: () => void;
  /** Begins a work. Returns the course, by which the work reports its share and learns that it shall stop. */
  readonly begin: () => Course;
  readonly end: () => void;
}

export function useCourse(): LongWork {
  const [share, setShare] = useState<number>();
  const controller = useRef<AbortController>();
  const acts = useMemo(
    () => ({
      stop: () => controller.current?.abort(),
      begin: () => {
        controller.current = new AbortController();
        return { tell: setShare, signal: controller.current.signal };
      },
      end: () => setShare(undefined),
    }),
    [],
  );
  return { share, ...acts };
}
