/**
 * Prints, as JSON, what the page of `npm start` takes in Chromium for a workbook of 1, 10 and 40 data sheets, and for one
 * sheet of 48 loads of 2,000 readings: the memory of the page's process at its most and when the work is over, the memory
 * that its objects hold then, in MB, and the seconds of each step. On each workbook a person opens every tab, changes readings,
 * makes the summary and a report, saves the file and opens it again. Wants dist; prints {} where there is none, or no
 * Chromium. Linux only, which tells the memory of a process.
 */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { blankSheet, demoSheet } from "../../src/datasheet";
import { readingsName, timesName } from "../../src/specification/readings";
import type { NamedColumns, SheetPlan } from "../../src/workbook/port";
import { onPage } from "./page";

/** The object in the page: the access of the product to its workbook. */
declare const clayledger: {
  readonly port: import("../../src/workbook/port").WorkbookPort;
  readonly save: () => Promise<Uint8Array>;
  readonly open: (bytes: Uint8Array, name: string) => Promise<void>;
};

const LOADS = 48;
const ROWS = 2_000;
const QUIET = 2_000;

type Figures = Record<string, number>;

/** A record of a long test: each load is read every 40 s for about a day. */
function longTest(): { plan: SheetPlan; values: NamedColumns } {
  const values: Record<string, (number | string)[]> = {
    load_stress: Array.from({ length: LOADS }, (_, load) => 12.5 * 1.15 ** load),
  };
  const times = Array.from({ length: ROWS }, (_, row) => (row * 2) / 3);
  for (let load = 1; load <= LOADS; load++) {
    values[timesName(load)] = times;
    values[readingsName(load)] = times.map((time, row) =>
      Number((load + 0.7 * (1 - Math.exp(-time / 40)) + 0.02 * Math.log10(1 + time) + 1e-5 * (row % 7)).toFixed(5)),
    );
  }
  return { plan: blankSheet("SI", { loads: LOADS, readingRows: ROWS }), values };
}

/** Memory of the process of the page: now, and the most since the last call, in MB. */
async function processMemory(page: Page): Promise<{ now: number; most: number }> {
  const session = await page.context().browser()!.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  await session.detach();
  const ids = processInfo.filter(({ type }) => type === "renderer").map(({ id }) => id);
  const sizes = ids.map((id) => {
    const status = readFileSync(`/proc/${id}/status`, "utf8");
    const of = (what: string): number => Number(new RegExp(`${what}:\\s*(\\d+) kB`).exec(status)?.[1]) / 1024;
    return { now: of("VmRSS"), most: of("VmHWM") };
  });
  // A page beside ours is the empty one that Chromium keeps ready.
  return sizes.reduce((a, b) => (b.most > a.most ? b : a), { now: 0, most: 0 });
}

async function held(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send("HeapProfiler.collectGarbage");
  await session.send("Performance.enable");
  const { metrics } = await session.send("Performance.getMetrics");
  await session.detach();
  return (metrics.find(({ name }) => name === "JSHeapUsedSize")?.value ?? NaN) / 1024 / 1024;
}

async function work(page: Page, make: (page: Page) => Promise<void>): Promise<Figures> {
  const figures: Figures = {};
  const pane = page.frameLocator("#pane");
  const step = async (name: string, act: () => Promise<unknown>): Promise<void> => {
    const start = performance.now();
    await act();
    figures[`${name}, s`] = (performance.now() - start) / 1000;
    process.stderr.write(
      `${name}: ${figures[`${name}, s`]?.toFixed(1)} s, ${(await processMemory(page)).most.toFixed(0)} MB at most, ${(await held(page)).toFixed(0)} MB held\n`,
    );
  };
  figures["held at the start, MB"] = await held(page);
  await step("make the workbook", () => make(page));
  for (const tab of ["Results", "Plots", "Review", "Checks", "By hand", "Report", "Summary", "What next"])
    await step(`tab ${tab}`, async () => {
      await pane.getByRole("tab", { name: tab }).click();
      await page.waitForTimeout(QUIET);
    });
  await step("five changes", async () => {
    const sheet = await page.evaluate(() => clayledger.port.activeSheet());
    for (let run = 0; run < 5; run++) {
      await page.evaluate(([on, value]) => clayledger.port.fillNames(on, { readings_02: [value] }), [
        sheet,
        1000 + run,
      ] as const);
      await page.waitForTimeout(1000);
    }
  });
  await step("summary", async () => {
    await pane.getByRole("tab", { name: "Summary" }).click();
    await pane.getByRole("button", { name: "Insert a summary" }).click();
    await pane.getByRole("status").filter({ hasText: "Inserted:" }).waitFor();
  });
  await step("report", async () => {
    await pane.getByRole("tab", { name: "Report" }).click();
    await pane.getByRole("button", { name: /^Make the report/ }).click();
    await pane.getByRole("status").filter({ hasText: "is on the new sheet" }).first().waitFor();
  });
  await step("save and open", () => page.evaluate(async () => clayledger.open(await clayledger.save(), "again.xlsx")));
  await page.waitForTimeout(QUIET);
  figures["held at the end, MB"] = await held(page);
  const { now, most } = await processMemory(page);
  return { ...figures, "process at the end, MB": now, "process at most, MB": most };
}

const demonstrations =
  (count: number) =>
  async (page: Page): Promise<void> => {
    // The page has a demonstration from its start.
    const plan = demoSheet("SI");
    for (let made = 1; made < count; made++) await page.evaluate((one) => clayledger.port.insertSheet(one), plan);
  };

const WORKBOOKS: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  "1": demonstrations(1),
  "10": demonstrations(10),
  "40": demonstrations(40),
  long: async (page) => {
    const given = longTest();
    await page.evaluate(async ({ plan, values }) => {
      const sheet = await clayledger.port.insertSheet(plan);
      await clayledger.port.fillNames(sheet, values);
    }, given);
  },
};

async function main(): Promise<void> {
  const wanted = (process.argv[2] ?? Object.keys(WORKBOOKS).join()).split(",");
  const results: Record<string, Figures> = {};
  for (const name of wanted) {
    const make = WORKBOOKS[name];
    if (make)
      await onPage(async (page) => {
        results[name] = await work(page, make);
      });
  }
  console.log(JSON.stringify(results));
  process.exit(0);
}
void main();
