/** A load is read at the frame in a narrow pane beside a real sheet, with one hand on the number pad. */
import type { FrameLocator, Page } from "playwright-core";
import type { CellValue } from "../../../src/workbook/port";
import {
  eventually,
  fillNames,
  paneViolations,
  paneWidths,
  readNames,
  setPaneWidth,
  sheetNames,
  takePicture,
  withBrowser,
} from "../page";

const SHEET = "Demonstration";

withBrowser("the bench", (openPage) => {
  let page: Page;
  let pane: FrameLocator;
  /** The reading of load 5 of the demonstration at 60 min. */
  let atOneHour: number;

  const reading = async (row: number): Promise<CellValue> =>
    (await readNames(page, SHEET, ["readings_05"])).readings_05![row]![0]!;
  const field = () => pane.getByRole("textbox", { name: /^Reading at/ });

  beforeAll(async () => {
    ({ page } = await openPage());
    await setPaneWidth(page, 320);
    pane = page.frameLocator("#pane");
    // Load 5 was applied half an hour ago; its later readings are not taken yet.
    atOneHour = Number(await reading(10));
    const readings: (CellValue | null)[] = [...new Array<null>(10).fill(null), "", "", "", "", ""];
    const now = Date.now() / 86_400_000 - new Date().getTimezoneOffset() / 1440 + 25_569;
    const started = [null, null, null, null, now - 60.4 / 1440];
    await fillNames(page, SHEET, { readings_05: readings, load_started: started });
    await pane.getByRole("tab", { name: "Bench" }).click();
    await pane.getByRole("combobox", { name: "Load", exact: true }).selectOption("5");
    await field().waitFor();
  });

  test("number keys and Enter write a reading beside the time that the clock has reached", async () => {
    await field().click();
    await page.keyboard.type(String(atOneHour));
    await page.keyboard.press("Enter");
    await pane.getByRole("status").filter({ hasText: "Written to “Demonstration”: load 5, 1 h" }).waitFor();
    expect(await reading(10)).toBe(atOneHour);
    await eventually(async () => (await field().inputValue()) === "");
    await takePicture(page, "bench-320");
  });

  test("a mistyped reading is questioned if it is far off, and can be undone", async () => {
    await pane.getByRole("button", { name: /^Undo the reading/ }).click();
    await pane.getByRole("status").filter({ hasText: "is cleared" }).waitFor();
    expect(await reading(10)).toBe("");
    await field().fill("99999");
    await page.keyboard.press("Enter");
    await pane.getByText("Look at the dial again").waitFor();
    expect(await reading(10)).toBe("");
  });

  test("the sheet to fill in by hand is inserted", async () => {
    await pane.getByRole("button", { name: "Insert it for load 5" }).click();
    await pane.getByRole("status").filter({ hasText: "is inserted" }).waitFor();
    expect(await sheetNames(page)).toContain(`Readings ${SHEET}`);
    await takePicture(page, "bench-reading-sheet");
  });

  test("the masses of the frame and the load cell give their stress", async () => {
    await fillNames(page, SHEET, { lever_ratio: [10] });
    await pane.getByRole("textbox", { name: "Masses of the frame, kg" }).fill("10 5 2x2 1 0.5");
    await pane.getByText(/^Load 6, nearest: /).waitFor();
    await pane.getByRole("textbox", { name: "Calibration factor, N per unit" }).fill("0.5");
    await pane.getByRole("textbox", { name: "Output now" }).fill("1250");
    await pane.getByText(/^The cell gives 197\.4 kPa/).waitFor();
    await takePicture(page, "bench-masses");
  });

  test("nothing is cut off at 320 px, and axe finds no fault", async () => {
    const { shown, content } = await paneWidths(page);
    expect(content).toBeLessThanOrEqual(shown);
    expect(await paneViolations(page)).toEqual([]);
  });
});
