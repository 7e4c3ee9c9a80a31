/** The page's messages and questions to the user. */
import type { Voice } from "../workbook/embedded";

export interface HostVoice extends Voice {
  fail(sentence: string): void;
}

export function makeVoice(message: HTMLElement, question: HTMLDialogElement): HostVoice {
  const say = (sentence: string, failure: boolean) => {
    message.textContent = sentence;
    message.title = sentence;
    message.classList.toggle("is-failure", failure);
  };
  return {
    tell: (sentence) => say(sentence, false),
    fail: (sentence) => say(sentence, true),
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
