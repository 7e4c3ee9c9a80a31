/** Rows have the same heights after saving and opening: those set by hand, those of the data sheet, and those of wrapped texts. */
import type { Page } from "playwright-core";
import { showSheet, takePicture, typeInCell, withBrowser } from "../page";

const ROWS = 120;

/** The heights of the first rows of every sheet, in px. */
const heights = (page: Page): Promise<Record<string, number[]>> =>
  page.evaluate((rows) => {
    const { getters } = (window as any).clayledger.port.workbook.model;
    return Object.fromEntries(
      getters
        .getSheetIds()
        .map((id: string) => [
          getters.getSheetName(id),
          Array.from({ length: Math.min(rows, getters.getNumberRows(id)) }, (_, row) => getters.getRowSize(id, row)),
        ]),
    );
  }, ROWS);

/** Drags the lower edge of a row of the shown sheet, like a person, by this number of px. */
async function dragEdge(page: Page, row: number, by: number): Promise<void> {
  const bottom = await page.evaluate((row) => {
    const { y, height } = (window as any).clayledger.port.workbook.model.getters.getVisibleRect({
      ...{ left: 0, right: 0, top: row, bottom: row },
    });
    return y + height;
  }, row);
  const grid = (await page.locator(".o-grid").boundingBox())!;
  const [x, y] = [grid.x + 20, grid.y + bottom - 1];
  await page.mouse.move(x, y - 6);
  await page.mouse.move(x, y);
  // The sheet shows the handle of an edge once the pointer is there.
  await page.waitForFunction(([x, y]) => document.elementFromPoint(x!, y!)?.matches(".o-handle"), [x, y]);
  await page.mouse.down();
  await page.mouse.move(x, y + by / 2);
  await page.mouse.move(x, y + by);
  await page.mouse.up();
}

/** Saves the workbook and opens the saved file in its place. */
const savedAndOpened = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const { clayledger } = window as any;
    await clayledger.open(await clayledger.save(), "saved.xlsx");
  });

withBrowser("row heights", (openPage) => {
  test("stay as they are when the workbook is saved and opened, and saved and opened again", async () => {
    const { page, complaints } = await openPage();
    await showSheet(page, "Sheet1");
    await typeInCell(
      page,
      "A4",
      "Saw marks on the lower face, a shell of 6 mm near the edge, and a seam of silt at half height",
    );
    await page.evaluate(() => {
      const { model } = (window as any).clayledger.port.workbook;
      const [sheetId, zone] = [model.getters.getActiveSheetId(), { left: 0, right: 0, top: 3, bottom: 3 }];
      model.dispatch("SET_FORMATTING", { sheetId, target: [zone], style: { wrapping: "wrap" } });
    });
    const before = await heights(page);
    expect(before.Sheet1![3]).toBeGreaterThan(60);
    await dragEdge(page, 1, 30);
    await dragEdge(page, 6, 12);
    const byHand = (await heights(page)).Sheet1!;
    expect([byHand[1]! - before.Sheet1![1]!, byHand[6]! - before.Sheet1![6]!]).toEqual([30, 12]);
    await showSheet(page, "Demonstration");
    await dragEdge(page, 9, 20);
    const kept = await heights(page);
    expect(kept.Demonstration![9]).toBe(before.Demonstration![9]! + 20);
    for (let time = 0; time < 2; time++) {
      await savedAndOpened(page);
      expect(await heights(page)).toEqual(kept);
    }
    await takePicture(page, "row-heights");
    expect(complaints).toEqual([]);
  });
});
