/**
 * Prints, as JSON, what the page of `npm start` takes in Chromium for a workbook of 1, 10 and 40 data sheets, for one
 * sheet of 48 loads of 2,000 readings, and for a logger's file of a million lines: the memory of the page's process at its most, in each
 * step and at the end, the memory that its objects hold then, in MB, and the seconds of each step. On each workbook a person opens
 * every tab, changes readings, makes the summary, a report and one AGS4 file of all sheets, saves the file and opens it again, and then
 * makes a report of every sheet. Wants dist; prints {} where there is none, or no Chromium. Linux only, which tells the memory of a
 * process.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Page } from "playwright-core";
import { blankSheet, demoSheet } from "../../src/datasheet";
import { readingsName, timesName } from "../../src/specification/readings";
import type { NamedColumns, SheetPlan } from "../../src/workbook/port";
import { loggerLines } from "./made";
import { onPage, type OnPage } from "./page";

/** The object in the page: the access of the product to its workbook. */
declare const clayledger: OnPage;

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

/** The process of the page. Another page beside ours is the empty one that Chromium keeps ready. */
class PageProcess {
  #most = 0;

  private constructor(readonly id: number) {}

  static async of(page: Page): Promise<PageProcess> {
    const session = await page.context().browser()!.newBrowserCDPSession();
    const { processInfo } = await session.send("SystemInfo.getProcessInfo");
    await session.detach();
    const all = processInfo.filter(({ type }) => type === "renderer").map(({ id }) => new PageProcess(id));
    return all.reduce((a, b) => (b.#read("VmHWM") > a.#read("VmHWM") ? b : a));
  }

  #read(what: string): number {
    const status = readFileSync(`/proc/${this.id}/status`, "utf8");
    return Number(new RegExp(`${what}:\\s*(\\d+) kB`).exec(status)?.[1]) / 1024;
  }

  /** Memory now, in MB. */
  get now(): number {
    return this.#read("VmRSS");
  }

  /** The most memory since the last call, in MB. */
  mostSince(): number {
    const most = this.#read("VmHWM");
    this.#most = Math.max(this.#most, most);
    // Linux begins to measure the most anew.
    writeFileSync(`/proc/${this.id}/clear_refs`, "5");
    return most;
  }

  /** The most memory of all, in MB. */
  get most(): number {
    return Math.max(this.#most, this.#read("VmHWM"));
  }
}

async function held(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send("HeapProfiler.collectGarbage");
  await session.send("Performance.enable");
  const { metrics } = await session.send("Performance.getMetrics");
  await session.detach();
  return (metrics.find(({ name }) => name === "JSHeapUsedSize")?.value ?? NaN) / 1024 / 1024;
}

type Step = (name: string, act: () => Promise<unknown>) => Promise<void>;

/** Does the work step by step, and tells the figures of each. */
async function measured(page: Page, work: (step: Step) => Promise<void>): Promise<Figures> {
  const figures: Figures = {};
  const process_ = await PageProcess.of(page);
  figures["held at the start, MB"] = await held(page);
  process_.mostSince();
  await work(async (name, act) => {
    const start = performance.now();
    await act();
    const seconds = (performance.now() - start) / 1000;
    const most = process_.mostSince();
    figures[`${name}, s`] = seconds;
    figures[`${name}, MB at most`] = most;
    const holds = await held(page);
    figures["held at the end, MB"] = holds;
    process.stderr.write(
      `${name}: ${seconds.toFixed(1)} s, ${most.toFixed(0)} MB at most, ${holds.toFixed(0)} MB held\n`,
    );
  });
  return { ...figures, "process at the end, MB": process_.now, "process at most, MB": process_.most };
}

/** Makes something of all sheets, on the tab Summary. */
async function ofAll(
  page: Page,
  kind: string,
  button: RegExp,
  done: RegExp,
  fields: Readonly<Record<string, string>> = {},
): Promise<void> {
  const pane = page.frameLocator("#pane");
  await pane.getByRole("tab", { name: "Summary" }).click();
  await pane.getByRole("combobox", { name: "What to make" }).selectOption({ label: kind });
  for (const [name, value] of Object.entries(fields)) await pane.getByRole("textbox", { name }).fill(value);
  await pane.getByRole("button", { name: button }).click();
  await pane.getByText(done).first().waitFor();
}

const onWorkbook =
  (make: (page: Page) => Promise<void>) =>
  (page: Page): Promise<Figures> =>
    measured(page, async (step) => {
      const pane = page.frameLocator("#pane");
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
      await step("AGS4 of all sheets", () =>
        ofAll(page, "One AGS4 file", /^Make (?:one|the) AGS4 file of/, /was made, with|test can be written/, {
          ...{ Producer: "Laboratory", Recipient: "Engineer" },
        }),
      );
      await step("save and open", async () => {
        await page.evaluate(async () => clayledger.open(await clayledger.save(), "again.xlsx"));
        await page.waitForTimeout(QUIET);
      });
      await step("reports of all sheets", () =>
        ofAll(page, "Reports", /^Make \d+ reports?$/, /reports? (?:was|were) made|No report was made/),
      );
    });

/** A logger's file is chosen, and its loads are found. */
const withLogger =
  (lines: number) =>
  (page: Page): Promise<Figures> =>
    measured(page, async (step) => {
      const pane = page.frameLocator("#pane");
      const folder = mkdtempSync(path.join(tmpdir(), "clayledger-bench-"));
      const file = path.join(folder, "logger.csv");
      writeFileSync(file, loggerLines(lines));
      try {
        await pane.getByRole("tab", { name: "Readings" }).click();
        await step("choose the file", async () => {
          await pane.locator("input[type=file]").setInputFiles(file);
          await pane.getByRole("heading", { name: "Columns and units" }).waitFor();
        });
        await step("find the loads", async () => {
          await pane.getByRole("button", { name: "Use these columns" }).click();
          await pane.getByRole("heading", { name: "Loads found" }).waitFor();
        });
      } finally {
        rmSync(folder, { recursive: true });
      }
    });

const demonstrations =
  (count: number) =>
  async (page: Page): Promise<void> => {
    // The page has a demonstration from its start.
    for (let made = 1; made < count; made++)
      await page.evaluate((one) => clayledger.port.insertSheet(one), ofSpecimen(demoSheet("SI"), `S${made}`));
  };

/** The sheet of another specimen, with what an AGS4 file needs: such a file takes a specimen once. */
function ofSpecimen(plan: SheetPlan, specimen: string): SheetPlan {
  const given = new Map<string, string | number>();
  for (const [name, value] of Object.entries({ specimen, sample_type: "U", sample_top: 1 })) {
    const at = plan.names[name];
    if (at) given.set(`${at.row} ${at.col}`, value);
  }
  const cells = plan.cells.map((cell) => {
    const value = given.get(`${cell.row} ${cell.col}`);
    return value === undefined ? cell : { ...cell, value };
  });
  return { ...plan, cells };
}

const MEASURED: Readonly<Record<string, (page: Page) => Promise<Figures>>> = {
  "1": onWorkbook(demonstrations(1)),
  "10": onWorkbook(demonstrations(10)),
  "40": onWorkbook(demonstrations(40)),
  long: onWorkbook(async (page) => {
    const given = longTest();
    await page.evaluate(async ({ plan, values }) => {
      const sheet = await clayledger.port.insertSheet(plan);
      await clayledger.port.fillNames(sheet, values);
    }, given);
  }),
  logger: withLogger(1_000_000),
};

async function main(): Promise<void> {
  const wanted = (process.argv[2] ?? Object.keys(MEASURED).join()).split(",");
  const results: Record<string, Figures> = {};
  for (const name of wanted) {
    const measure = MEASURED[name];
    if (measure)
      await onPage(async (page) => {
        results[name] = await measure(page);
      });
  }
  console.log(JSON.stringify(results));
  process.exit(0);
}
void main();
