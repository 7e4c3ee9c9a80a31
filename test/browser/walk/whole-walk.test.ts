/**
 * A whole walk: every tab, sheets inserted, a file imported, a report and a summary made, the workbook saved and opened
 * again, undone and redone. No exception, error in the console or rejected promise comes of it.
 */
import { readFileSync } from "node:fs";
import type { FrameLocator, Page } from "playwright-core";
import {
  clickCell,
  fileOf,
  paneFrame,
  settled,
  sheetNames,
  showSheet,
  takePicture,
  typeInCell,
  withBrowser,
  type HostPage,
} from "../page";

/** Two loads of an invented test, read every second and then every minute. */
const SECONDS = [...Array(60).keys(), ...Array.from({ length: 180 }, (_, minute) => 60 * (minute + 1))];
const ROWS = [25, 50].flatMap((stress, load) =>
  SECONDS.map((second) => `${load * 20_000 + second},${stress},${(1 + load + Math.log10(1 + second) / 5).toFixed(4)}`),
);
const TEXT = ["Invented frame", "Time,Stress,Displacement", "s,kPa,mm", ...ROWS].join("\n");
const LOGGER = { name: "walk.csv", mimeType: "text/csv", buffer: Buffer.from(TEXT) };

withBrowser("a whole walk", (openPage) => {
  let host: HostPage;
  let page: Page;
  let pane: FrameLocator;

  beforeAll(async () => {
    host = await openPage("", { reducedMotion: "no-preference" });
    page = host.page;
    pane = page.frameLocator("#pane");
  });
  afterAll(() => host.page.context().close());
  /** After each part, so that a complaint is found where it comes from. */
  afterEach(() => expect(host.complaints).toEqual([]));

  const tab = (name: string) => pane.getByRole("tab", { name, exact: true }).click();
  const press = (name: string | RegExp) => pane.getByRole("button", { name }).first().click();
  const told = (text: string | RegExp) =>
    pane.getByRole("status").or(pane.getByRole("alert")).filter({ hasText: text }).first().waitFor();

  /** Visits every tab, and waits until each has read what it shows. */
  async function everyTab(): Promise<void> {
    const tabs = await pane.getByRole("tab").all();
    for (const one of tabs) {
      await one.click();
      await settled(paneFrame(page));
    }
  }

  test("every tab beside the demonstration, beside a blank sheet and beside a sheet of another kind", async () => {
    await everyTab();
    await tab("Data sheet");
    await press("Insert blank sheet");
    await told("was made");
    await everyTab();
    await showSheet(page, "Sheet1");
    await everyTab();
  });

  test("the demonstration in US units, a check of the sheet, its protection lifted and put back", async () => {
    await tab("Data sheet");
    await pane.getByRole("radio", { name: /US/ }).check();
    await press("Insert worked demonstration");
    await told("“Demonstration 2”");
    await press("Check the sheet in front");
    await told("Every name is there exactly once");
    await press("Lift protection");
    await told("is not protected any more");
    await press("Protect all but inputs");
    await told("is protected, except for its inputs");
    await everyTab();
  });

  test("a file of a logger is imported", async () => {
    await showSheet(page, "Consolidation test");
    await tab("Readings");
    await pane.locator("input[type=file]").setInputFiles(LOGGER);
    await pane.getByRole("heading", { name: "Columns and units" }).waitFor();
    await press("Use these columns");
    await pane.getByRole("button", { name: /^Write 2 loads to/ }).waitFor();
    await press(/^Write 2 loads to/);
    await told("2 loads were written");
    await everyTab();
  });

  test("answers, limits, a calculation book, charts, a reading sheet, a report and a summary are made", async () => {
    await showSheet(page, "Demonstration");
    await tab("Checks");
    await press("Insert a sheet of limits");
    await told("lists every limit");
    await showSheet(page, "Demonstration");
    await tab("By hand");
    await press("Insert as a calculation book");
    await told("is on the sheet “Calculation book”");
    await showSheet(page, "Demonstration");
    await tab("Plots");
    await press("Insert chart");
    await told("was made");
    await showSheet(page, "Demonstration");
    await tab("Report");
    await press(/^Make/);
    await told("The report of “Demonstration”");
    await tab("Summary");
    await press("Insert a summary");
    await told("Inserted: “Summary”");
    await everyTab();
    expect((await sheetNames(page)).length).toBeGreaterThan(7);
  });

  test("saved, changed, opened again, and walked over again", async () => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    const file = readFileSync(await fileOf(download));
    const [copy] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save values only" }).click(),
    ]);
    expect(copy.suggestedFilename()).toBe("demonstration values.xlsx");
    await page.locator("#message", { hasText: "values in place of formulas" }).waitFor();
    await takePicture(page, "values-copy");
    const before = await sheetNames(page);
    await page.locator("#file").setInputFiles({ name: "again.xlsx", mimeType: "", buffer: file });
    await page.locator("#message", { hasText: "again.xlsx is open" }).waitFor();
    expect(await sheetNames(page)).toEqual(before);
    await everyTab();
  });

  test("changes are undone and redone, past an insertion", async () => {
    await showSheet(page, "Sheet1");
    await typeInCell(page, "B2", "12");
    await typeInCell(page, "B3", "=CLAY.WATER_CONTENT(152.4,121.9,31.2)");
    await tab("Data sheet");
    await press("Insert blank sheet");
    await told("was made");
    await clickCell(page, "A3");
    for (let step = 0; step < 6; step++) await page.keyboard.press("Control+z");
    await everyTab();
    await clickCell(page, "A3");
    for (let step = 0; step < 6; step++) await page.keyboard.press("Control+y");
    await everyTab();
  });

  test("every sheet but one is deleted", async () => {
    await page.evaluate(() => {
      const { model } = (globalThis as any).clayledger.port.workbook;
      for (const sheetId of model.getters.getSheetIds().slice(1))
        model.dispatch("DELETE_SHEET", { sheetId, sheetName: model.getters.getSheetName(sheetId) });
    });
    await everyTab();
    expect(await sheetNames(page)).toHaveLength(1);
  });
});
