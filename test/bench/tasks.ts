/**
 * What a piece of work costs the page of `npm start`: the processor time of its main thread, and its longest task, during which the
 * page answers nothing. Chromium's own trace tells both in time of the processor, which hardly depends on what else the machine does.
 */
import type { Page } from "playwright-core";

export interface Spent {
  /** All tasks together, in ms of processor time. */
  readonly spent: number;
  /** The longest task, in ms of processor time. */
  readonly longest: number;
  /** The tasks above 50 ms, which a person may feel, the longest first. */
  readonly long: readonly number[];
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time in microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

const FELT = 50;

/** Does the work, waits until the page is quiet, and tells what the work has cost. */
export async function spentOn(page: Page, work: () => Promise<unknown>, quiet = 1500): Promise<Spent> {
  const browser = page.context().browser();
  if (!browser) throw new Error("the page has no browser");
  await browser.startTracing(page, { categories: ["toplevel", "disabled-by-default-devtools.timeline"] });
  let trace: Buffer;
  try {
    await work();
    await page.waitForTimeout(quiet);
  } finally {
    trace = await browser.stopTracing();
  }
  // The file is Chromium's own; the fields that are read are those of its trace format.
  const { traceEvents } = JSON.parse(trace.toString()) as { readonly traceEvents: readonly TraceEvent[] };
  const main = new Set(
    traceEvents
      .filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain")
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = traceEvents
    .filter(({ name, ph, pid, tid }) => name === "RunTask" && ph === "X" && main.has(`${pid} ${tid}`))
    .map(({ tdur = 0 }) => tdur / 1000)
    .sort((a, b) => b - a);
  return {
    spent: tasks.reduce((sum, one) => sum + one, 0),
    longest: tasks[0] ?? 0,
    long: tasks.filter((one) => one > FELT).map(Math.round),
  };
}
