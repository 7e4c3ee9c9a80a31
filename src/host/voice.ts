/** The page's messages and questions to the user. */
import type { Voice } from "../workbook/embedded";

export interface HostVoice extends Voice {
  fail(sentence: string): void;
  /** Takes a refusal away once its cause has gone: something was changed, or the user is elsewhere. */
  moveOn(): void;
}

/** ms after a refusal in which the selection still moves because of the key that was refused. */
const SAME_KEY = 300;

export function makeVoice(message: HTMLElement, question: HTMLDialogElement): HostVoice {
  let refusedAt: number | undefined;
  const say = (sentence: string, failure: boolean) => {
    refusedAt = undefined;
    message.textContent = sentence;
    message.title = sentence;
    message.classList.toggle("is-failure", failure);
  };
  return {
    tell: (sentence) => say(sentence, false),
    fail: (sentence) => say(sentence, true),
    refuse(sentence) {
      say(sentence, false);
      refusedAt = performance.now();
    },
    moveOn() {
      if (refusedAt !== undefined && performance.now() - refusedAt > SAME_KEY) say("", false);
    },
    ask(text, yes, no) {
      question.querySelector("p")!.textContent = text;
      question.returnValue = "no";
      question.addEventListener("close", () => (question.returnValue === "yes" ? yes() : no?.()), { once: true });
      // A dialog returns the focus when it closes, which the sheet would take for the start of typing into a cell.
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      question.showModal();
    },
  };
}
