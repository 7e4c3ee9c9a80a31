/** Offers the copies of pages that were closed with changes that were not saved, one after the other. */
import type { KeptCopies, KeptCopy } from "./kept-copies";

export interface OfferParts {
  readonly box: HTMLElement;
  readonly words: HTMLElement;
  readonly open: HTMLButtonElement;
  readonly forget: HTMLButtonElement;
}

export interface Offering {
  /** The sentence of the offer. */
  readonly sentence: (copy: KeptCopy) => string;
  /** Opens a copy; gives false if it was not opened, and is still to be had. */
  readonly open: (copy: KeptCopy) => Promise<boolean>;
  readonly forgotten: (copy: KeptCopy) => void;
}

/** Gives a function that words the offer again, in another language. */
export function offerCopies(
  copies: readonly KeptCopy[],
  store: KeptCopies,
  { box, words, open, forget }: OfferParts,
  offering: Offering,
): () => void {
  const waiting = [...copies];
  const show = (): void => {
    const [copy] = waiting;
    box.hidden = !copy;
    words.textContent = copy ? offering.sentence(copy) : "";
  };
  const next = (): void => {
    waiting.shift();
    show();
  };
  open.addEventListener("click", () => {
    const [copy] = waiting;
    if (copy) void offering.open(copy).then((isOpen) => void (isOpen && next()));
  });
  forget.addEventListener("click", () => {
    const [copy] = waiting;
    if (!copy) return;
    void store.remove(copy.id).then(() => offering.forgotten(copy));
    next();
  });
  show();
  return show;
}
