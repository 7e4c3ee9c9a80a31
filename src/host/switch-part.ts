/**
 * F6 goes from the sheet to the pane and back, and Shift+F6 to the header of the page, like the parts of a window in
 * Excel: the Tab key stays within the sheet, so that without a mouse there is no other way.
 */

/** `toSheet` gives the focus back to the sheet, `toHeader` to the first control of the header. */
export function switchByKey(frame: HTMLIFrameElement, toSheet: () => void, toHeader: () => void): void {
  const listen = (document: Document, go: () => void): void =>
    document.addEventListener(
      "keydown",
      (event) => {
        if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
        event.preventDefault();
        event.stopPropagation();
        if (event.shiftKey) toHeader();
        else go();
      },
      { capture: true },
    );
  let last: HTMLElement | undefined;
  /** Back to where the focus was in the pane; at first to the tab of the screen that is shown. */
  const toPane = (): void => {
    const inside = frame.contentDocument;
    if (!inside) return;
    frame.contentWindow?.focus();
    const start = inside.querySelector<HTMLElement>('[role="tab"][aria-selected="true"]');
    (last?.isConnected ? last : start)?.focus();
  };
  listen(document, toPane);
  frame.addEventListener("load", () => {
    const inside = frame.contentDocument;
    if (!inside) return;
    last = undefined;
    // An element of the frame is of another window, so that it is no instance of this window's HTMLElement.
    inside.addEventListener("focusin", ({ target }) => (last = target as HTMLElement));
    listen(inside, toSheet);
  });
}
