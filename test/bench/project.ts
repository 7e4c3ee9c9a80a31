/**
 * Prints, as JSON, the milliseconds of processor time that the page of `npm start` spends on a workbook of 1, 10 and 40 data
 * sheets: for a changed reading, from the cell until the pane is quiet again, and for the summary of the project. Processor
 * time does not depend on what else the machine does. Wants dist; prints {} where there is none, or no Chromium.
 */
import type { Page } from "playwright-core";
import { demoSheet } from "../../src/datasheet";
import type { SheetPlan } from "../../src/workbook/port";
import { onPage, type OnPage } from "./page";
import { spentOn, type Spent } from "./tasks";

const COUNTS = (process.argv[2] ?? "1,10,40").split(",").map(Number);
const RUNS = 5;
/** The pane waits 0.4 s before it reads a changed sheet; after this time it is quiet. */
const QUIET = 2000;

/** The object in the page: the access of the product to its workbook. */
declare const clayledger: OnPage;

const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;

async function measured(page: Page): Promise<Record<string, Record<string, number>>> {
  const pane = page.frameLocator("#pane");
  const plan: SheetPlan = demoSheet("SI");
  const results: Record<string, Record<string, number>> = {};
  // The page has a demonstration from its start.
  let made = 1;
  for (const count of COUNTS) {
    for (; made < count; made++) await page.evaluate((one) => clayledger.port.insertSheet(one), plan);
    await pane.getByRole("tab", { name: "Results" }).click();
    await page.waitForTimeout(QUIET);
    const sheet = await page.evaluate(() => clayledger.port.activeSheet());
    const change = (value: number): Promise<unknown> =>
      page.evaluate(([on, reading]) => clayledger.port.fillNames(on, { readings_09: [reading] }), [
        sheet,
        value,
      ] as const);
    const changes: Spent[] = [];
    for (let run = 0; run < RUNS; run++) changes.push(await spentOn(page, () => change(1000 + run), QUIET));
    await pane.getByRole("tab", { name: "Summary" }).click();
    await page.waitForTimeout(QUIET);
    const summarised = (button: RegExp, words: string) =>
      spentOn(
        page,
        async () => {
          await pane.getByRole("button", { name: button }).click();
          await pane.getByRole("status").filter({ hasText: words }).waitFor();
        },
        QUIET,
      );
    const summary = await summarised(/^Insert a summary/, "Inserted:");
    const again = await summarised(/up to date/, "is up to date");
    results[count] = {
      "changed reading": middle(changes.map(({ spent }) => spent)),
      "changed reading: longest task": middle(changes.map(({ longest }) => longest)),
      ...{ summary: summary.spent, "summary: longest task": summary.longest },
      ...{ "summary brought up to date": again.spent },
    };
    process.stderr.write(`${count} sheets: ${JSON.stringify(results[count])}\n`);
    await page.evaluate((on) => clayledger.port.show(on, "A1"), sheet);
  }
  return results;
}

async function main(): Promise<void> {
  let results = {};
  await onPage(async (page) => {
    results = await measured(page);
  });
  console.log(JSON.stringify(results));
  process.exit(0);
}
void main();
