/**
 * Keeps the keyboard focus near its place when the control that has it is taken off the page, as the button that has done its work is.
 * The browser gives the focus to the whole page, and the next Tab begins at its top.
 */

/** Follows the focus in a document; returns a function that ends it. */
export function keepFocus(document: Document): () => void {
  /** The control that has the focus, and the elements around it, from the inside. */
  let around: Element[] = [];

  const onFocus = ({ target }: Event): void => {
    around = [];
    // Cast: in a document only elements take the focus.
    for (let at = target as Element | null; at && at !== document.body; at = at.parentElement) around.push(at);
  };

  const giveBack = (): void => {
    const [control] = around;
    const isLost = control !== undefined && !control.isConnected && document.activeElement === document.body;
    const place = isLost ? around.find((one): one is HTMLElement => one.isConnected) : undefined;
    if (!place) return;
    // Such a place takes the focus once and is no stop of the Tab key.
    if (!place.hasAttribute("tabindex")) {
      place.tabIndex = -1;
      place.addEventListener("blur", () => place.removeAttribute("tabindex"), { once: true });
    }
    place.focus({ preventScroll: true });
  };

  // The screen itself may move the focus first.
  const observer = new MutationObserver(() => void setTimeout(giveBack));
  observer.observe(document.body, { childList: true, subtree: true });
  document.addEventListener("focusin", onFocus);
  return () => {
    observer.disconnect();
    document.removeEventListener("focusin", onFocus);
  };
}
