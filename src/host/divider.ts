/** The divider between sheet and pane: it is dragged, or moved with the arrow keys. */
const NARROWEST = 300;
const WIDEST_SHARE = 0.7;
const STEP = 24;

export function makeDivider(divider: HTMLElement, desk: HTMLElement): void {
  const width = () => desk.getBoundingClientRect().right - divider.getBoundingClientRect().right;
  const setWidth = (wanted: number) => {
    const widest = Math.max(NARROWEST, desk.clientWidth * WIDEST_SHARE);
    const set = Math.round(Math.min(Math.max(wanted, NARROWEST), widest));
    desk.style.setProperty("--pane-width", `${set}px`);
    divider.setAttribute("aria-valuenow", String(set));
    // The engine measures its size again only when the window reports a resize.
    window.dispatchEvent(new Event("resize"));
  };

  divider.addEventListener("pointerdown", (event) => {
    divider.setPointerCapture(event.pointerId);
    desk.classList.add("is-dragging");
    event.preventDefault();
  });
  divider.addEventListener("pointermove", (event) => {
    if (divider.hasPointerCapture(event.pointerId)) setWidth(desk.getBoundingClientRect().right - event.clientX - 3);
  });
  const drop = () => desk.classList.remove("is-dragging");
  divider.addEventListener("pointerup", drop);
  divider.addEventListener("lostpointercapture", drop);
  divider.addEventListener("keydown", ({ key }) => {
    if (key === "ArrowLeft") setWidth(width() + STEP);
    if (key === "ArrowRight") setWidth(width() - STEP);
  });
}
