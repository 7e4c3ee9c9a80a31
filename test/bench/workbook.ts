/**
 * Prints, as JSON, the milliseconds of processor time that the page of `npm start` spends, in Chromium: to insert the demonstration by the
 * pane's button, to undo and redo that, to make its report, to save, to open and to insert the file of both, and the same with 50,000 lines
 * of a logger's file kept. For each, "longest" is the longest task, in which the page answers nothing. Wants dist; prints {} where there is
 * none, or no Chromium.
 */
import type { Page } from "playwright-core";
import { fileSheet, linesName, LINES_AT_ONCE, type FileRecord } from "../../src/exchange/logger/file-sheet";
import type { SheetPlan } from "../../src/workbook/port";
import { onPage, type OnPage } from "./page";
import { spentOn, type Spent } from "./tasks";

const LINES = 50_000;

/** The objects in the page: the access of the product to its workbook, and the measurement. */
declare const clayledger: OnPage;
declare const bench: { bytes: Uint8Array };

const results: Record<string, Spent> = {};

async function timed(page: Page, name: string, work: () => Promise<unknown>): Promise<void> {
  results[name] = await spentOn(page, work);
}

/** Saves by the button, as a person does before another file is opened: the page then makes no copy of unsaved changes meanwhile. */
async function withNothingUnsaved(page: Page): Promise<void> {
  const download = page.waitForEvent("download");
  await page.locator("#save").click();
  await download;
}

const saveAndOpen = async (page: Page, what: string): Promise<void> => {
  await withNothingUnsaved(page);
  await timed(page, `save ${what}`, () =>
    page.evaluate(async () => {
      bench.bytes = await clayledger.save();
    }),
  );
  await timed(page, `open ${what}`, () => page.evaluate(() => clayledger.open(bench.bytes, "demonstration.xlsx")));
};

/** Keeps the lines as the pane does: it inserts the sheet, writes the lines in pieces, and reads all of them again. */
async function keep(page: Page): Promise<void> {
  const lines = Array.from({ length: LINES }, (_, i) => `${(i / 2).toFixed(1)};${(3.2 + i * 1e-5).toFixed(5)};100.0`);
  const record: FileRecord = {
    ...{ dataSheet: "Demonstration", file: "logger.csv", sha256: "", hashOf: "", encoding: "UTF-8", apparatus: "" },
    ...{ layoutWords: [], loads: [], remarks: [], lines: LINES },
    // Only the text of the layout is kept.
    layout: {} as FileRecord["layout"],
  };
  const pieces = Array.from({ length: Math.ceil(LINES / LINES_AT_ONCE) }, (_, i) => ({
    name: linesName(i),
    lines: lines.slice(i * LINES_AT_ONCE, (i + 1) * LINES_AT_ONCE),
  }));
  const given: { plan: SheetPlan; pieces: typeof pieces } = { plan: fileSheet(record), pieces };
  await timed(page, "keep 50,000 lines", () =>
    page.evaluate(async ({ plan, pieces }) => {
      const { port } = clayledger;
      const sheet = await port.insertSheet(plan);
      for (const { name, lines } of pieces) {
        await new Promise((next) => setTimeout(next, 0));
        await port.fillNames(sheet, { [name]: lines });
      }
      for (const { name } of pieces) await port.readNames(sheet, [name]);
    }, given),
  );
}

async function measured(page: Page): Promise<void> {
  await page.evaluate("globalThis.bench = {}");
  const pane = page.frameLocator("#pane");
  const sheets = (count: number) =>
    page.evaluate(async (n) => {
      while ((await clayledger.port.sheetNames()).length !== n) await new Promise((next) => setTimeout(next, 20));
    }, count);
  await pane.getByRole("tab", { name: "Data sheet" }).click();
  await timed(page, "insert the demonstration", async () => {
    await pane.getByRole("button", { name: "Insert worked demonstration" }).click();
    await sheets(3);
  });
  const dispatch = (command: string) => page.evaluate((type) => clayledger.port.workbook.model.dispatch(type), command);
  await timed(page, "undo the insertion", () => dispatch("REQUEST_UNDO"));
  await timed(page, "redo the insertion", () => dispatch("REQUEST_REDO"));
  await pane.getByRole("tab", { name: "Report" }).click();
  await timed(page, "report", async () => {
    await pane.getByRole("button", { name: /^Make the report/ }).click();
    await sheets(4);
  });
  await saveAndOpen(page, "two demonstrations with a report");
  await timed(page, "insert the file of two demonstrations with a report", () =>
    page.evaluate(() => clayledger.port.insertFile(bench.bytes)),
  );
  await dispatch("REQUEST_UNDO");
  await keep(page);
  await saveAndOpen(page, "the same with 50,000 kept lines");
}

async function main(): Promise<void> {
  await onPage(measured);
  console.log(JSON.stringify(results));
  process.exit(0);
}
void main();
