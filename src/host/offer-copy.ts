/** Offers the copies of pages that were closed with changes that were not saved, one after the other. */
import type { KeptCopy } from "./kept-copies";

export interface OfferParts {
  readonly box: HTMLElement;
  readonly words: HTMLElement;
  readonly open: HTMLButtonElement;
  readonly forget: HTMLButtonElement;
}

export interface Offering {
  /** The sentence of the offer. */
  readonly sentence: (copy: KeptCopy) => string;
  /** Opens a copy; gives false if it is still to be had. */
  readonly open: (copy: KeptCopy) => Promise<boolean>;
  /** Lets a copy be forgotten; gives false if it is still to be had. */
  readonly forget: (copy: KeptCopy) => Promise<boolean>;
}

export interface Offer {
  readonly offer: (copies: readonly KeptCopy[]) => void;
  /** Words the offer again, in another language. */
  readonly wordAgain: () => void;
}

export function makeOffer({ box, words, open, forget }: OfferParts, offering: Offering): Offer {
  let waiting: readonly KeptCopy[] = [];
  const show = (): void => {
    const [copy] = waiting;
    box.hidden = !copy;
    words.textContent = copy ? offering.sentence(copy) : "";
  };
  let isAtWork = false;
  const answer = async (act: (copy: KeptCopy) => Promise<boolean>): Promise<void> => {
    const [copy, ...others] = waiting;
    if (!copy || isAtWork) return;
    isAtWork = true;
    if (await act(copy)) waiting = others;
    isAtWork = false;
    show();
  };
  open.addEventListener("click", () => void answer(offering.open));
  forget.addEventListener("click", () => void answer(offering.forget));
  return {
    offer: (copies) => {
      waiting = copies;
      show();
    },
    wordAgain: show,
  };
}
