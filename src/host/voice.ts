/** The page's messages and questions to the user. */
import { inWords } from "../pane/text/messages";
import type { Message } from "../reduction/message";
import type { Voice } from "../workbook/embedded";
import type { Refusals } from "./refusals";

/** A message, or a sentence that is already in the language of the page. */
export type Sentence = Message | string;

export interface HostVoice extends Voice {
  tell(sentence: Sentence): void;
  fail(sentence: Sentence): void;
  ask(question: Sentence, yes: () => void, no?: () => void): void;
  /**
   * Takes a refusal away once its cause has gone: something was changed, or the user is elsewhere. What was done stays for a while
   * longer; a failure stays, and so does a refused entry until its cell is changed.
   */
  moveOn(): void;
}

/** ms after a refusal in which the selection still moves because of the key that was refused. */
const SAME_KEY = 300;
/** ms for which a person can read what was done, before the next step takes its line away. */
const TO_READ = 20_000;

const inPlainWords = (sentence: Sentence): string => (typeof sentence === "string" ? sentence : inWords(sentence));

/** `answered` gives the focus, which the question had, to what takes the next key; `refusals` shows the entries that were refused. */
export function makeVoice(
  message: HTMLElement,
  question: HTMLDialogElement,
  answered: () => void,
  refusals: Refusals,
): HostVoice {
  /** From when on, on the clock of the page, the next step takes the sentence away; undefined for a failure. */
  let goesFrom: number | undefined;
  const say = (sentence: Sentence, failure: boolean) => {
    goesFrom = undefined;
    refusals.look();
    message.textContent = inPlainWords(sentence);
    message.title = message.textContent;
    message.classList.toggle("is-failure", failure);
  };
  return {
    tell(sentence) {
      say(sentence, false);
      goesFrom = performance.now() + TO_READ;
    },
    fail: (sentence) => say(sentence, true),
    refuse(sentence, entry) {
      if (entry) {
        refusals.add(sentence, entry);
        return;
      }
      say(sentence, false);
      goesFrom = performance.now() + SAME_KEY;
    },
    moveOn() {
      refusals.look();
      if (goesFrom !== undefined && performance.now() > goesFrom) say("", false);
    },
    ask(text, yes, no) {
      question.querySelector("p")!.textContent = inPlainWords(text);
      question.returnValue = "no";
      const close = (): void => {
        if (question.returnValue === "yes") yes();
        else no?.();
        answered();
      };
      question.addEventListener("close", close, { once: true });
      // A dialog returns the focus when it closes, which the sheet would take for the start of typing into a cell.
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      question.showModal();
    },
  };
}
