/**
 * Prints, as JSON, what each action on a workbook of 40 data sheets costs the page of `npm start`: "longest" is the longest task in ms of
 * processor time, in which the page answers nothing, "spent" all tasks together. `tsx test/bench/actions.ts 10` measures with another
 * number of data sheets. Wants dist; prints {} where there is none, or no Chromium.
 */
import type { Page } from "playwright-core";
import { demoSheet } from "../../src/datasheet";
import { NAMES_WITH_FORMULAS } from "../../src/specification/placed-formulas";
import { DATA_SHEET_NAME } from "../../src/specification/readings";
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
  await many("One AGS4 file", /^Make (?:one|the) AGS4 file/, /was made, with|test can be written/);
  await many("Pictures", /^Save the pictures?/, /was made, with \d+ picture/);

  await timed(page, "save", () =>
    page.evaluate(async () => {
      bench.bytes = await clayledger.save();
    }),
  );
  await timed(page, "open", () => page.evaluate(() => clayledger.open(bench.bytes, "forty.xlsx")));
  await timed(page, "insert the file", () => page.evaluate(() => clayledger.port.insertFile(bench.bytes)));
  await timed(page, "undo the insertion", () => dispatch("REQUEST_UNDO"));
  await timed(page, "redo the insertion", async () => {
    const before = await page.evaluate(() => clayledger.port.sheetNames());
    await dispatch("REQUEST_REDO");
    await page.evaluate(async (count) => {
      while ((await clayledger.port.sheetNames()).length <= count) await new Promise((next) => setTimeout(next, 50));
    }, before.length);
  });
  await dispatch("REQUEST_UNDO");
  await pane.getByRole("tab", { name: "Summary" }).click();
  await many("Reports", /^Make \d+ reports?$/, /reports? (?:was|were) made/);
  await ofOneSheet(page);
}

/** Blanks or overwrites every cell of these names on a sheet. */
const overwrite = (page: Page, sheet: string, names: readonly string[], value: string | number): Promise<void> =>
  page.evaluate(
    async ([on, wanted, content]) => {
      const { port } = clayledger;
      const places = (await port.listNames(on)).flatMap(({ name, place }) =>
        wanted.includes(name) && place !== "lost" ? [place] : [],
      );
      const cells = places.flatMap(({ row, col, rows, cols }) =>
        Array.from({ length: rows * cols }, (_, at) => ({ row: row + Math.floor(at / cols), col: col + (at % cols) })),
      );
      await port.writeCells(
        on,
        cells.map((cell) => ({ ...cell, value: content })),
        true,
      );
    },
    [sheet, names, value] as const,
  );

/** What is done to one data sheet of the workbook: an issue of its report, the comparison with it, and the work of the sheet check. */
async function ofOneSheet(page: Page): Promise<void> {
  const pane = page.frameLocator("#pane");
  const button = (name: RegExp | string) => pane.getByRole("button", { name }).first();
  const sheet = await page.evaluate(async (mark) => {
    const { port } = clayledger;
    const first = (await port.findSheets([mark])).find(({ has }) => has.length > 0);
    if (!first) throw new Error("the workbook has no data sheet");
    await port.show(first.sheet, "A1");
    return first.sheet;
  }, DATA_SHEET_NAME);
  await pane.getByRole("tab", { name: "Report" }).click();
  await pane.getByRole("textbox", { name: "Locked by" }).fill("HK");
  await timed(page, "lock an issue", async () => {
    await button(/^Make and lock issue 1/).click();
    await button(/^Compare with issue 1/).waitFor();
  });
  await timed(page, "compare with the issue", async () => {
    await button(/^Compare with issue 1/).click();
    await pane
      .getByText(/(?:is|are not|is not) as in issue 1/)
      .first()
      .waitFor();
  });
  await page.evaluate((one) => clayledger.port.show(one, "A1"), sheet);
  await pane.getByRole("tab", { name: "Data sheet" }).click();
  const check = async (): Promise<void> => {
    await button("Check the sheet in front").click();
    await button("Enter formulas again").waitFor();
  };
  await timed(page, "check the sheet", check);
  await timed(page, "enter the formulas again", async () => {
    await button("Enter formulas again").click();
    await pane
      .getByText(/bound to the add-in|entered again/)
      .first()
      .waitFor();
  });
  await overwrite(page, sheet, NAMES_WITH_FORMULAS, "");
  await check();
  await timed(page, "write all missing formulas", async () => {
    await button(/^Write all \d+ missing/).click();
    await pane
      .getByText(/formulas are written on/)
      .first()
      .waitFor();
  });
  await overwrite(page, sheet, NAMES_WITH_FORMULAS.slice(0, 1), 1);
  await check();
  await timed(page, "mend a formula", async () => {
    await button(/^Write (?:its formula|the formula of)/).click();
    await pane
      .getByText(/The formula is written into/)
      .first()
      .waitFor();
  });
}

async function main(): Promise<void> {
  await onPage(measured);
  console.log(JSON.stringify(results));
  process.exit(0);
}
void main();
