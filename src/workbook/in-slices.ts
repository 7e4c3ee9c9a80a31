/** Long work in slices, between which the page draws, hears keys and may call it off. */

/** A slice is so short that the page does not feel it, ms. */
const SLICE = 12;

/** The work was called off by the user. */
export class Stopped extends Error {
  override readonly name = "Stopped";
}

/** Lets the page do what waits. */
export const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Runs the steps to their end, telling the share that is done; throws Stopped once the signal says so. */
export async function inSlices<T>(
  steps: Generator<number, T>,
  tell: (share: number) => void,
  signal: AbortSignal,
): Promise<T> {
  for (;;) {
    const end = performance.now() + SLICE;
    let share = 0;
    do {
      if (signal.aborted) throw new Stopped();
      const { done, value } = steps.next();
      if (done) return value;
      share = value;
    } while (performance.now() < end);
    tell(share);
    await pause();
  }
}

/** Carries out work that comes in steps. */
export type Run = <T>(steps: Generator<number, T>) => Promise<T>;

/** Carries out work that comes in steps, without a pause. */
export function atOnce<T>(steps: Generator<number, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
