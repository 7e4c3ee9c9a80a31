/**
 * The entries that the sheet did not take, at the head of the page: each stays until one of its cells holds something else, or until the
 * person dismisses it. A person who types on from cell to cell would otherwise see none of them.
 */
import { hostWords } from "../pane/text/host";
import { inWords } from "../pane/text/messages";
import type { Message } from "../reduction/message";
import type { RefusedEntry } from "../workbook/embedded";

/** At most so many are shown; the next one follows when one of them goes. */
const MOST_SHOWN = 3;

interface Refusal {
  readonly sentence: Message;
  readonly entry: RefusedEntry;
  readonly line: HTMLLIElement;
  readonly words: HTMLSpanElement;
  readonly dismiss: HTMLButtonElement;
}

export interface Refusals {
  /** Adds a refusal before the others. It takes the place of an older one of the same cells. */
  add(sentence: Message, entry: RefusedEntry): void;
  /** Lets go the refusals whose cells hold something else by now. */
  look(): void;
  /** Says them in the language that the page has now. */
  sayAgain(): void;
}

/** Shows refusals in `list`; `left` gives the focus, which the last dismissed one had, to what takes the next key. */
export function makeRefusals(list: HTMLElement, left: () => void): Refusals {
  let kept: readonly Refusal[] = [];
  const more = document.createElement("li");

  /** A line that stays is not touched: a screen reader would read it again. */
  const show = (): void => {
    const hidden = kept.length - MOST_SHOWN;
    more.textContent = hidden > 0 ? hostWords().moreRefused(hidden) : "";
    const lines: Element[] = [...kept.slice(0, MOST_SHOWN).map(({ line }) => line), ...(hidden > 0 ? [more] : [])];
    for (const line of [...list.children]) if (!lines.includes(line)) line.remove();
    lines.forEach((line, at) => {
      if (list.children[at] !== line) list.insertBefore(line, list.children[at] ?? null);
    });
  };

  const letGo = (isGone: (refusal: Refusal) => boolean): void => {
    const left = kept.filter((one) => !isGone(one));
    if (left.length === kept.length) return;
    kept = left;
    show();
  };

  const say = ({ sentence, words, dismiss }: Refusal): void => {
    words.textContent = inWords(sentence);
    dismiss.textContent = hostWords().dismiss;
    dismiss.setAttribute("aria-label", hostWords().dismissThis(words.textContent));
  };

  return {
    add(sentence, entry) {
      const line = document.createElement("li");
      const words = document.createElement("span");
      const dismiss = document.createElement("button");
      dismiss.type = "button";
      line.append(words, " ", dismiss);
      const refusal = { sentence, entry, line, words, dismiss };
      dismiss.addEventListener("click", () => {
        letGo((one) => one === refusal);
        const next = list.querySelector("button");
        if (next) next.focus();
        else left();
      });
      say(refusal);
      kept = [refusal, ...kept.filter((one) => one.entry.cells !== entry.cells)];
      show();
    },
    look: () => letGo(({ entry }) => !entry.isAsItWas()),
    sayAgain() {
      kept.forEach(say);
      show();
    },
  };
}
