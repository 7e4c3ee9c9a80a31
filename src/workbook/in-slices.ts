/** Does long work in slices. Between the slices the page can draw, react to keys and stop the work. */

/** The length of a slice in ms, so short that the page stays responsive. */
const SLICE = 12;

/** Thrown when the user stopped the work. */
export class Stopped extends Error {
  override readonly name = "Stopped";
}

/** Whether the user stopped the work; the error may come from the code of another window, so its name counts. */
export const isStopped = (error: unknown): boolean =>
  typeof error === "object" && error !== null && "name" in error && error.name === "Stopped";

/** How long work goes on: `tell` gets the share that is done, and the work ends with Stopped once the signal is aborted. */
export interface Course {
  readonly tell: (share: number) => void;
  readonly signal: AbortSignal;
}

/** A course that nobody watches or stops. */
export const unwatched = (): Course => ({ tell: () => undefined, signal: new AbortController().signal });

/** The course of a part of the work, from one share of the whole to another. */
export const partOf = ({ tell, signal }: Course, from: number, to: number): Course => ({
  tell: (share) => tell(from + (to - from) * share),
  signal,
});

/** Lets the page handle waiting events. */
export const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/**
 * Runs all steps and reports the share that is done; throws Stopped once the signal is aborted. Steps that are not run to their end are
 * ended there, so that their `finally` is done.
 */
export async function inSlices<T>(
  steps: Generator<number, T>,
  tell: (share: number) => void,
  signal: AbortSignal,
): Promise<T> {
  try {
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
  } finally {
    // Nobody takes what the steps would then give.
    steps.return(undefined as never);
  }
}

/** For work that is not given as steps: a function that lets the page react if the work since its last pause has taken a slice. */
export function restful(): () => Promise<void> {
  let end = performance.now() + SLICE;
  return async () => {
    if (performance.now() < end) return;
    await pause();
    end = performance.now() + SLICE;
  };
}

/** A function that runs work given as steps. */
export type Run = <T>(steps: Generator<number, T>) => Promise<T>;

/** Runs work given as steps, without a pause. */
export function atOnce<T>(steps: Generator<number, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The steps of a part of the work; `shareOf` turns the share of the part that is done into that of the whole. */
export function* asShares<T>(steps: Generator<number, T>, shareOf: (share: number) => number): Generator<number, T> {
  try {
    for (;;) {
      const { done, value } = steps.next();
      if (done) return value;
      yield shareOf(value);
    }
  } finally {
    // Steps that are not run to their end are ended here.
    steps.return(undefined as never);
  }
}
