/**
 * A page as on a slow machine: `CLAYLEDGER_SLOW=6` gives it a sixth of the processor, and lets frames, timers and messages come late while
 * keys and clicks come at once. So a test that presses the next key before the page has done what the last one asked for fails
 * here, and not on the machine of somebody else. `CLAYLEDGER_SLOW=1` keeps the whole processor; `CLAYLEDGER_SLOW_SEED=2` holds up other moments.
 */
import type { BrowserContext, Page } from "playwright-core";

/** Holds up the frames, timers and messages of a document: in every fifth of a second for a part that the seed chooses. */
function holdUp(seed: number): void {
  const page = globalThis as any;
  const PERIOD = 200;
  const { setTimeout, requestAnimationFrame, cancelAnimationFrame, performance } = page;
  /** The end of the standstill in which a time lies, or the time itself if the page moves. One thing never overtakes another. */
  const released = (time: number): number => {
    const period = Math.floor(time / PERIOD);
    const share = Math.abs(Math.sin((period + 1) * 12.9898 + seed * 78.233) * 43758.5453) % 1;
    return Math.max(time, PERIOD * (period + 0.25 + 0.7 * share));
  };
  page.setTimeout = (done: unknown, delay = 0, ...rest: unknown[]) => {
    const now = performance.now();
    return setTimeout(done, released(now + Math.max(0, Number(delay))) - now, ...rest);
  };

  const frames = new Map<number, number>();
  let last = 0;
  page.requestAnimationFrame = (draw: (time: number) => void) => {
    const id = ++last;
    const frame = (time: number): void => {
      const now = performance.now();
      if (released(now) > now) return void frames.set(id, requestAnimationFrame(frame));
      frames.delete(id);
      draw(time);
    };
    frames.set(id, requestAnimationFrame(frame));
    return id;
  };
  page.cancelAnimationFrame = (id: number) => {
    cancelAnimationFrame(frames.get(id));
    frames.delete(id);
  };

  // A question that was answered says that it is closed in the next frame.
  page.addEventListener(
    "close",
    (event: any) => {
      const now = performance.now();
      if (!event.isTrusted || released(now) === now) return;
      event.stopImmediatePropagation();
      setTimeout(() => event.target.dispatchEvent(new page.Event("close")), released(now) - now);
    },
    true,
  );

  const { set } = Object.getOwnPropertyDescriptor(page.MessagePort.prototype, "onmessage")!;
  Object.defineProperty(page.MessagePort.prototype, "onmessage", {
    set(hear: (event: unknown) => void) {
      const waiting: unknown[] = [];
      const hearAll = () => waiting.splice(0).forEach((event) => hear.call(this, event));
      set!.call(this, (event: unknown) => {
        const now = performance.now();
        waiting.push(event);
        if (released(now) === now) hearAll();
        else if (waiting.length === 1) setTimeout(hearAll, released(now) - now);
      });
    },
  });
}

/** Slows down the pages of a context, if that was asked for. */
export async function slowDown(context: BrowserContext, page: Page): Promise<void> {
  const { CLAYLEDGER_SLOW: rate, CLAYLEDGER_SLOW_SEED: seed = "1" } = process.env;
  if (!rate) return;
  await context.addInitScript(holdUp, Number(seed));
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: Number(rate) });
}
