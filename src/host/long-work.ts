/** Shows long work on the page: a progress bar with a text, and a button that stops the work. */
import { isFocusLost } from "./keys-to-sheet";
import { inSlices, pause } from "../workbook/in-slices";

export interface WorkParts {
  readonly box: HTMLElement;
  readonly words: HTMLElement;
  readonly share: HTMLProgressElement;
  readonly stop: HTMLButtonElement;
  /** The buttons that start long work; they are disabled during the work. */
  readonly beginners: readonly HTMLButtonElement[];
  /** Gives the focus to the sheet. */
  readonly toSheet: () => void;
}

export interface LongWork {
  /** Runs steps; each step yields the share that is done. Throws Stopped after a press of the button. */
  run<T>(what: string, steps: Generator<number, T>): Promise<T>;
  /** Like `run`, for work that has several parts with steps, and waits between them. */
  around<T>(what: string, work: (run: <S>(steps: Generator<number, S>) => Promise<S>) => Promise<T>): Promise<T>;
}

/** Waits until the page has drawn its changes. */
const drawn = async (): Promise<void> => {
  await new Promise((resolve) => requestAnimationFrame(resolve));
  await pause();
};

export function makeLongWork({ box, words, share, stop, beginners, toSheet }: WorkParts): LongWork {
  const around: LongWork["around"] = async (what, work) => {
    const controller = new AbortController();
    const call = (): void => controller.abort();
    const begunBy = beginners.find((button) => button === document.activeElement);
    words.textContent = what;
    share.value = 0;
    stop.addEventListener("click", call);
    box.hidden = false;
    for (const button of beginners) button.disabled = true;
    try {
      await drawn();
      return await work((steps) => inSlices(steps, (done) => (share.value = done), controller.signal));
    } finally {
      stop.removeEventListener("click", call);
      box.hidden = true;
      for (const button of beginners) button.disabled = false;
      // A hidden or disabled button loses the focus.
      if (document.activeElement === stop || isFocusLost()) (begunBy ? () => begunBy.focus() : toSheet)();
    }
  };
  return { around, run: (what, steps) => around(what, (run) => run(steps)) };
}
