/** The pane beside the embedded sheet, as a person uses it. */
import type { Frame, FrameLocator, Page } from "playwright-core";
import {
  eventually,
  paneFrame,
  paneViolations,
  selectRange,
  sheetNames,
  showSheet,
  tabIntoScreen,
  takePicture,
  typeInCell,
  valuesOf,
  withBrowser,
} from "../page";

const SHEET = "Demonstration";
/**
 * The position of the demonstration's readings of a load: the row of "Time" in its first columns, two rows above the
 * first reading.
 */
async function readingsOf(page: Page, timeColumn: string, readingColumn: string) {
  const column = await valuesOf(page, SHEET, `${timeColumn}1:${timeColumn}200`);
  const heading = column.findIndex(([cell]) => cell === "Time") + 1;
  if (heading === 0) throw new Error(`no column of times in ${timeColumn}`);
  const first = heading + 2;
  return { range: `${timeColumn}${heading}:${readingColumn}${first + 14}`, cell: `${readingColumn}${first + 13}` };
}

withBrowser("the pane", (openPage) => {
  let page: Page;
  let pane: FrameLocator;
  let frame: Frame;
  let complaints: string[];

  beforeAll(async () => {
    ({ page, complaints } = await openPage());
    pane = page.frameLocator("#pane");
    frame = paneFrame(page);
  });

  const number = async (name: string): Promise<number> =>
    Number(
      await pane
        .getByRole("row", { name: new RegExp(`^${name} `) })
        .getByRole("cell")
        .first()
        .textContent(),
    );
  const plot = () => pane.getByRole("img", { name: /Drawn:/ });
  const violations = (): Promise<string[]> => paneViolations(page);

  test("says what to select, then plots the selected columns with the construction", async () => {
    await pane.getByRole("tab", { name: "Plot" }).click();
    await pane.getByRole("radio", { name: "Selected range" }).click();
    await pane.getByText("Select what to plot").waitFor();
    const { range } = await readingsOf(page, "I", "J");
    await selectRange(page, range);
    await plot().waitFor();
    expect(await plot().textContent()).toContain("d100");
    expect(await plot().textContent()).toContain("Reading (div)");
    expect(await number("t50")).toBeGreaterThan(0);
    await takePicture(page, "pane-log-of-time");
  });

  test("a changed reading on the sheet changes the plot; undone, the plot is as before", async () => {
    const { cell } = await readingsOf(page, "I", "J");
    const [before, drawn] = [await number("d100"), await plot().innerHTML()];
    const [[reading]] = await valuesOf(page, SHEET, cell);
    await typeInCell(page, cell, String(Number(reading) + 40));
    await eventually(async () => (await plot().innerHTML()) !== drawn);
    await page.keyboard.press("Control+Z");
    await eventually(async () => (await number("d100")) === before);
    expect(await valuesOf(page, SHEET, cell)).toEqual([[reading]]);
  });

  test("root of time is chosen by keyboard: Tab to the choice, an arrow to the next", async () => {
    await pane.getByRole("tab", { name: "Plot" }).focus();
    await tabIntoScreen(page);
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowRight");
    await plot().filter({ hasText: "1.15 line" }).waitFor();
    expect(await pane.getByRole("radio", { name: "Root of time" }).isChecked()).toBe(true);
    expect(await number("t90")).toBeGreaterThan(0);
    await takePicture(page, "pane-root-of-time");
  });

  test("cv follows the height and its unit", async () => {
    await pane.getByRole("textbox", { name: "Height at mid-increment" }).fill("24,5");
    const cv = await number("cv");
    expect(cv).toBeGreaterThan(0);
    await pane.getByRole("combobox", { name: "Unit of cv" }).selectOption("mm2/min");
    expect(await number("cv")).toBeCloseTo(cv / 0.52596, 1);
    await pane.getByRole("textbox", { name: "Height at mid-increment" }).fill("-3");
    await pane.getByText("greater than zero").waitFor();
    await pane.getByRole("textbox", { name: "Height at mid-increment" }).fill("");
  });

  test("the whole load table is plotted as a compression curve, with columns chosen by their headings", async () => {
    const column = await valuesOf(page, SHEET, "B1:B120");
    const heading = column.findIndex(([cell]) => cell === "Stress") + 1;
    await selectRange(page, `B${heading}:P${heading + 26}`);
    await plot().filter({ hasText: "virgin line" }).waitFor();
    for (const label of ["bisector", "tangent", "horizontal", "σ′p"])
      expect(await plot().textContent()).toContain(label);
    expect(await number("σ′p")).toBeGreaterThan(0);
    expect(await number("Cc")).toBeGreaterThan(0);
    await takePicture(page, "pane-compression-curve");
    expect(await violations()).toEqual([]);
  });

  test("another construction is drawn in its own plane, and gives its own stress", async () => {
    const byCasagrande = await number("σ′p");
    await pane.getByLabel("Construction").selectOption("work");
    await plot().filter({ hasText: "line after yield" }).waitFor();
    expect(await plot().textContent()).toContain("Work per unit volume (kPa)");
    const byWork = await number("σ′p");
    expect(byWork).not.toBe(byCasagrande);
    expect(Math.abs(Math.log(byWork / byCasagrande))).toBeLessThan(0.15);
    await takePicture(page, "pane-work");
    await pane.getByLabel("Construction").selectOption("casagrande");
  });

  test("text among the readings is named by its cell", async () => {
    await showSheet(page, "Sheet1");
    const rows = [
      ["1", "410"],
      ["2", "5oo"],
      ["4", "540"],
    ];
    for (const [index, [time, reading]] of rows.entries()) {
      await typeInCell(page, `A${index + 1}`, time);
      await typeInCell(page, `B${index + 1}`, reading);
    }
    await selectRange(page, "A1:B3");
    await pane.getByRole("alert").filter({ hasText: 'B2 holds the text "5oo"' }).waitFor();
    expect(await violations()).toEqual([]);
    await showSheet(page, SHEET);
  });

  test("a blank sheet is inserted by keyboard alone: a new sheet, and no other changes", async () => {
    const names = await sheetNames(page);
    const before = await valuesOf(page, SHEET, "A1:P200");
    await pane.getByRole("tab", { name: "Plot" }).focus();
    await page.keyboard.press("Home");
    await page.keyboard.press("ArrowRight");
    await pane.getByRole("heading", { name: "Data sheet for one test" }).waitFor();
    await tabIntoScreen(page);
    for (let stop = 0; stop < 3; stop++) await page.keyboard.press("Tab");
    expect(await frame.evaluate(() => (globalThis as any).document.activeElement.textContent)).toBe(
      "Insert blank sheet",
    );
    await page.keyboard.press("Enter");
    await pane.getByRole("status").filter({ hasText: "was made" }).waitFor();
    const after = await sheetNames(page);
    expect(after).toHaveLength(names.length + 1);
    expect(after).toEqual(expect.arrayContaining(names));
    expect(await valuesOf(page, SHEET, "A1:P200")).toEqual(before);
    expect(await violations()).toEqual([]);
  });

  test("a second sheet takes a free name", async () => {
    const names = await sheetNames(page);
    await pane.getByRole("button", { name: "Insert blank sheet" }).click();
    await eventually(async () => (await sheetNames(page)).length === names.length + 1);
    expect(new Set(await sheetNames(page)).size).toBe(names.length + 1);
  });

  test("a number of the results leads to its cell", async () => {
    await pane.getByRole("tab", { name: "Results" }).click();
    await pane.getByRole("combobox", { name: "Test", exact: true }).selectOption(SHEET);
    await pane.getByRole("button", { name: /Compression index Cc: .* go to the cell/ }).click();
    await eventually(async () => {
      const { sheet, values } = await page.evaluate(() => (globalThis as any).clayledger.port.selection());
      return sheet === SHEET && typeof values[0][0] === "number" && values[0][0] > 0.1 && values[0][0] < 2;
    });
  });

  test("another language is chosen, kept, and cancelled", async () => {
    const lang = () => frame.evaluate(() => (globalThis as any).document.documentElement.lang);
    await pane.getByRole("tab", { name: "About" }).click();
    await pane.getByRole("combobox", { name: "Language of this pane" }).selectOption("Deutsch");
    await pane.getByRole("button", { name: "Change language and reload" }).click();
    await pane.getByRole("tab", { name: "Ergebnisse" }).waitFor();
    expect(await lang()).toBe("de");
    await pane.getByRole("tab", { name: "Info" }).click();
    await pane.getByRole("combobox", { name: "Sprache dieses Bereichs" }).selectOption({ index: 0 });
    await pane.getByRole("button", { name: "Sprache wechseln und neu laden" }).click();
    await pane.getByRole("tab", { name: "Results" }).waitFor();
    expect(await lang()).toBe("en");
  });

  test("the page reports no error and sends no request elsewhere", () => expect(complaints).toEqual([]));
});
