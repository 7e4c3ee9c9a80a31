/**
 * A key that nothing on the page would take goes to the sheet. What had the focus may go: a question that was answered, the button that
 * stopped some work, a field of a sheet that was deleted. Then the browser gives every key to the page itself, where it does nothing.
 */

/** Whether nothing on the page has the focus. A button of a question that was answered keeps it until the page is drawn again. */
export function isFocusLost(): boolean {
  const { activeElement } = document;
  return !activeElement || activeElement === document.body || activeElement.closest("dialog:not([open])") !== null;
}

/** Keys with which a person goes through the parts of the page; the browser knows where the focus was last. */
const BETWEEN_PARTS = new Set(["Tab", "F6"]);

/** `toSheet` gives the focus to the sheet. */
export function keysToSheet(toSheet: () => void): void {
  document.addEventListener(
    "keydown",
    (event) => {
      if (!event.isTrusted || !isFocusLost() || BETWEEN_PARTS.has(event.key)) return;
      if (document.querySelector("dialog[open]")) return;
      toSheet();
      if (isFocusLost()) return;
      // The browser has already decided that this event goes to the page; a character that it types goes to the new focus.
      event.stopPropagation();
      if (!document.activeElement?.dispatchEvent(new KeyboardEvent(event.type, event))) event.preventDefault();
    },
    { capture: true },
  );
}
