/** A stage of wetting is marked on the sheet, drawn, and the sheet of a series is inserted, in a narrow pane. */
import type { FrameLocator, Page } from "playwright-core";
import {
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

withBrowser("the stage of wetting", (openPage) => {
  let page: Page;
  let pane: FrameLocator;

  beforeAll(async () => {
    ({ page } = await openPage());
    await setPaneWidth(page, 320);
    pane = page.frameLocator("#pane");
    const readings = [...(await readNames(page, SHEET, ["readings_01"])).readings_01!].map(([cell]) => cell!);
    // The first load becomes a wetting under the seating stress, in which the specimen swells.
    const swollen = readings.map((reading) => (typeof reading === "number" ? 800 - reading : null));
    await fillNames(page, SHEET, { load_stress: [5], load_mark: ["wetting"], readings_01: swollen });
  });

  test("the sheet gives the swell of the stage", async () => {
    const values = await readNames(page, SHEET, ["wetting_load", "wetting_swell", "load_branch", "wetting_strain"]);
    expect([values.wetting_load![0]![0], values.load_branch![0]![0]]).toEqual([1, "wetting"]);
    expect(Number(values.wetting_swell![0]![0])).toBeGreaterThan(0);
    expect(values.wetting_strain![0]![0]).toBe(-Number(values.wetting_swell![0]![0]));
  });

  test("the plot of the stage is reached by keyboard, fits 320 px, and axe finds no fault", async () => {
    await pane.getByRole("tab", { name: "Plots" }).click();
    await pane.getByRole("radio", { name: "C alpha against stress", exact: true }).focus();
    await page.keyboard.press("ArrowDown");
    await pane
      .getByRole("img", { name: /Drawn:/ })
      .filter({ hasText: "Strain on wetting" })
      .waitFor();
    expect(await paneViolations(page)).toEqual([]);
    const { shown, content } = await paneWidths(page);
    expect(content).toBeLessThanOrEqual(shown);
    await takePicture(page, "wetting-swell");
  });

  test("the sheet of a series is inserted", async () => {
    await pane.getByRole("tab", { name: "Data sheet" }).click();
    await pane.getByRole("button", { name: "Insert wetting series" }).click();
    await pane.getByText("The sheet “Wetting series” was made.").waitFor();
    expect(await sheetNames(page)).toContain("Wetting series");
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "wetting-series");
  });
});
