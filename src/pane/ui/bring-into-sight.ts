/** Scrolls the pane so that an element stands at its top. A document that is not laid out does not scroll, and stays as it is. */
export function bringIntoSight(element: HTMLElement | null): void {
  if (element && "scrollIntoView" in element) element.scrollIntoView({ block: "start" });
}
