/** Long work of the page: the bar says what is done and how far it is, and a button stops it. */
import { inSlices, pause } from "../workbook/in-slices";

export interface WorkParts {
  readonly box: HTMLElement;
  readonly words: HTMLElement;
  readonly share: HTMLProgressElement;
  readonly stop: HTMLButtonElement;
  /** Buttons that begin long work: one thing is done at a time. */
  readonly beginners: readonly HTMLButtonElement[];
}

export interface LongWork {
  /** Carries out steps that tell the share that is done. Throws Stopped after a press of the button. */
  run<T>(what: string, steps: Generator<number, T>): Promise<T>;
  /** The same around work that has steps within, and begins with something that cannot be cut into steps. */
  around<T>(what: string, work: (run: <S>(steps: Generator<number, S>) => Promise<S>) => Promise<T>): Promise<T>;
}

/** Lets the page show what has changed. */
const drawn = async (): Promise<void> => {
  await new Promise((resolve) => requestAnimationFrame(resolve));
  await pause();
};

export function makeLongWork({ box, words, share, stop, beginners }: WorkParts): LongWork {
  const around: LongWork["around"] = async (what, work) => {
    const controller = new AbortController();
    const call = (): void => controller.abort();
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
    }
  };
  return { around, run: (what, steps) => around(what, (run) => run(steps)) };
}
