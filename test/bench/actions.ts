/**
 * Prints, as JSON, what each action on a workbook of 40 data sheets costs the page of `npm start`: "longest" is the longest task in ms of
 * processor time, in which the page answers nothing, "spent" all tasks together. `tsx test/bench/actions.ts 10` measures with another
 * number of data sheets. Wants dist; prints {} where there is none, or no Chromium.
 */
import type { Page } from "playwright-core";
import { demoSheet } from "../../src/datasheet";
import { onPage, type OnPage } from "./page";
import { spentOn, type Spent } from "./tasks";

const COUNT = Number(process.argv[2] ?? "40");

/** The objects in the page: the access of the product to its workbook, and what the measurement keeps. */
declare const clayledger: OnPage;
declare const bench: { bytes: Uint8Array };

const results: Record<string, Spent> = {};

async function timed(page: Page, name: string, work: () => Promise<unknown>): Promise<void> {
  const cost = await spentOn(page, work);
  results[name] = cost;
  process.stderr.write(`${name}: ${JSON.stringify(cost)}\n`);
}

async function measured(page: Page): Promise<void> {
  await page.evaluate("globalThis.bench = {}");
  const pane = page.frameLocator("#pane");
  const dispatch = (command: string) => page.evaluate((type) => clayledger.port.workbook.model.dispatch(type), command);
  const plan = demoSheet("SI");
  // The page has a demonstration from its start.
  for (let made = 1; made < COUNT; made++)
    await page.evaluate(
      async ([one, number]) => {
        const sheet = await clayledger.port.insertSheet(one);
        // Each test is another one: no answer is remembered from an equal sheet, and AGS4 takes each specimen once.
        await clayledger.port.fillNames(sheet, { specimen: [String(number)], readings_09: [1000 + number] });
      },
      [plan, made] as const,
    );

  await pane.getByRole("tab", { name: "Summary" }).click();
  const summarised = (button: RegExp, told: string) => async () => {
    await pane.getByRole("button", { name: button }).click();
    await pane.getByRole("status").filter({ hasText: told }).waitFor();
  };
  await timed(page, "insert a summary", summarised(/^Insert a summary/, "Inserted:"));
  await timed(page, "bring the summary up to date", summarised(/up to date/, "is up to date"));
  const many = async (kind: string, button: RegExp, told: RegExp): Promise<void> => {
    await pane.getByLabel("What to make").selectOption({ label: kind });
    await timed(page, `many at once: ${kind}`, async () => {
      await pane.getByRole("button", { name: button }).click();
      await pane.getByText(told).first().waitFor();
    });
  };
  await many("One AGS4 file", /^Make one AGS4 file/, /was made, with|No test can be written/);
  await many("Pictures", /^Save the pictures/, /was made, with \d+ picture/);

  await timed(page, "save", () =>
    page.evaluate(async () => {
      bench.bytes = await clayledger.save();
    }),
  );
  await timed(page, "open", () => page.evaluate(() => clayledger.open(bench.bytes, "forty.xlsx")));
  await timed(page, "insert the file", () => page.evaluate(() => clayledger.port.insertFile(bench.bytes)));
  await timed(page, "undo the insertion", () => dispatch("REQUEST_UNDO"));
  await timed(page, "redo the insertion", () => dispatch("REQUEST_REDO"));
  await dispatch("REQUEST_UNDO");
  await pane.getByRole("tab", { name: "Summary" }).click();
  await many("Reports", /^Make \d+ reports/, /reports were made/);
}

async function main(): Promise<void> {
  await onPage(measured);
  console.log(JSON.stringify(results));
  process.exit(0);
}
void main();
