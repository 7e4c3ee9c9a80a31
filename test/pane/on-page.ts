/** A place on the page for what a test shows of the pane: it is there while a test runs, and empty for the next one. */
import { act, type ReactElement } from "react";
import { createRoot, type Root } from "react-dom/client";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });

/** How the pane's answers are awaited: by a made clock, which only `settle` moves, or by the real one. */
export type Clock = "made" | "real";

const pass = (clock: Clock): Promise<unknown> =>
  clock === "made" ? jest.advanceTimersByTimeAsync(1000) : new Promise((resolve) => setTimeout(resolve, 0));

/** Call it at the head of a test file: its hooks must run before those that show something. */
export function onPage(clock: Clock) {
  const place = document.createElement("div");
  let root: Root;
  beforeEach(() => {
    if (clock === "made") jest.useFakeTimers();
    document.body.append(place);
    root = createRoot(place);
  });
  afterEach(async () => {
    await act(async () => root.unmount());
    place.remove();
    if (clock === "made") jest.useRealTimers();
  });
  /** Waits until the pane has heard of the last change and drawn what follows from it. */
  const settle = (): Promise<void> => act(async () => void (await pass(clock)));
  const render = (element: ReactElement): Promise<void> => act(async () => root.render(element));
  const show = async (element: ReactElement): Promise<void> => {
    await render(element);
    await settle();
  };
  /** Takes away what is shown, within a test. */
  const clear = async (): Promise<void> => {
    await act(async () => root.unmount());
    root = createRoot(place);
  };
  return { place, settle, render, show, clear };
}
