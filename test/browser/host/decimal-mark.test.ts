/** Numbers typed and pasted with a decimal point and with a decimal comma. */
import { strFromU8, unzipSync } from "fflate";
import type { Page } from "playwright-core";
import { selectRange, showSheet, takePicture, typeInCell, valuesOf, withBrowser } from "../page";

const value = async (page: Page, cell: string) => (await valuesOf(page, "Sheet1", cell))[0]![0];
const question = (page: Page) => page.locator("#question");
const refused = (page: Page) => page.locator("#refusals").textContent();
/** Answers the question; the sheet, which lost the focus to it, has it again. */
const answer = async (page: Page, word: "Yes" | "No" | "Nein"): Promise<string> => {
  await question(page).waitFor();
  const asked = await question(page).locator("p").textContent();
  await question(page).getByRole("button", { name: word }).click();
  await question(page).waitFor({ state: "hidden" });
  await page.locator(".o-grid:focus-within").waitFor();
  return asked!;
};
/** Waits until a cell holds something. */
const filled = async (page: Page, cell: string): Promise<void> => {
  while ((await value(page, cell)) === "") await page.waitForTimeout(100);
};
/** The text that a cell shows. */
const shown = (page: Page, col: number, row: number): Promise<string> =>
  page.evaluate(
    ([col, row]) => {
      const { getters } = (window as any).clayledger.port.workbook.model;
      const sheetId = getters.getSheetIdByName("Sheet1");
      return getters.getEvaluatedCell({ sheetId, col, row }).formattedValue;
    },
    [col, row],
  );
/** Pastes text from another program into the selection. */
const paste = async (page: Page, cell: string, text: string): Promise<void> => {
  await selectRange(page, cell);
  await page.locator(".o-grid").evaluate((grid, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", text);
    grid.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, text);
};

withBrowser("the decimal mark", (openPage) => {
  /** The page in English of the first two tests. */
  let page: Page;
  let complaints: string[];

  test("if the point is the decimal mark, the page asks about a typed or pasted comma and never guesses", async () => {
    ({ page, complaints } = await openPage());
    expect(await page.locator("#decimal-mark").inputValue()).toBe(".");
    await showSheet(page, "Sheet1");
    await typeInCell(page, "A1", "63,500");
    await takePicture(page, "decimal-question");
    expect(await answer(page, "No")).toMatch(/comma in “63,500” a decimal mark.*A1 holds 63\.5\?/);
    expect(await value(page, "A1")).toBe("");
    await typeInCell(page, "A1", "0,0150");
    await answer(page, "Yes");
    await filled(page, "A1");
    expect(await value(page, "A1")).toBe(0.015);

    await paste(page, "C1", "63,500\n61,2\n60");
    expect(await answer(page, "Yes")).toMatch(/2 of the numbers have a comma: C1 \(63,500\), C2 \(61,2\)/);
    await filled(page, "C1");
    expect(await valuesOf(page, "Sheet1", "C1:C3")).toEqual([[63.5], [61.2], [60]]);

    await paste(page, "E1", "63,500\n61.2");
    await page.waitForFunction(() => document.querySelector("#refusals")!.textContent!.startsWith("Not taken"));
    expect(await refused(page)).toMatch(/Not taken: E1 \(63,500\)\. Write each number with one decimal mark/);
    expect(await valuesOf(page, "Sheet1", "E1:E2")).toEqual([[""], [61.2]]);
    await takePicture(page, "decimal-refused");
    expect(complaints).toEqual([]);
  });

  test("is that of the language which the person chose, where the browser has another", async () => {
    await page.evaluate(() => localStorage.setItem("clayledger.language", "de"));
    await page.reload();
    await page.waitForFunction(() => "clayledger" in globalThis);
    expect(await page.locator("#decimal-mark").inputValue()).toBe(",");
    expect(complaints).toEqual([]);
  });

  test("in a German browser, numbers are typed, pasted and shown with a comma, and a file contains the point", async () => {
    const { page, complaints } = await openPage("", { locale: "de-DE" });
    expect(await page.locator("#decimal-mark").inputValue()).toBe(",");
    await showSheet(page, "Sheet1");
    await typeInCell(page, "A1", "63,500");
    await typeInCell(page, "A2", "0,0150");
    await typeInCell(page, "A3", "=SUM(A1;1,5)");
    expect(await valuesOf(page, "Sheet1", "A1:A3")).toEqual([[63.5], [0.015], [65]]);
    expect(await shown(page, 0, 0)).toBe("63,5");
    await paste(page, "C1", "1,5\t2,25");
    await filled(page, "C1");
    expect(await valuesOf(page, "Sheet1", "C1:D1")).toEqual([[1.5, 2.25]]);
    await typeInCell(page, "E1", "63.500");
    expect(await answer(page, "Nein")).toMatch(/Punkt in „63\.500“ ein Dezimalzeichen.*E1 den Wert 63,5 erhält\?/);
    expect(await value(page, "E1")).toBe("");
    await paste(page, "F1", "1,5\n2.5");
    await page.waitForFunction(() => document.querySelector("#refusals")!.textContent!.startsWith("Nicht übernommen"));
    expect(await refused(page)).toMatch(/Nicht übernommen: F2 \(2\.5\)/);
    await typeInCell(page, "G1", "2.11.2026");
    expect(await value(page, "G1")).toBe(46_328);
    await takePicture(page, "decimal-comma");

    const saved = await page.evaluate(async () => [...(await (window as any).clayledger.save())]);
    const parts = unzipSync(Uint8Array.from(saved));
    expect(strFromU8(parts["xl/worksheets/sheet0.xml"]!)).toMatch(/>SUM\(A1,1\.5\)<\/f><v>65<\/v>/);
    await page.locator("#decimal-mark").selectOption(".");
    await page.evaluate((bytes) => (window as any).clayledger.open(Uint8Array.from(bytes), "comma.xlsx"), saved);
    expect(await page.locator("#decimal-mark").inputValue()).toBe(",");
    expect(await shown(page, 0, 0)).toBe("63,5");
    expect(await valuesOf(page, "Sheet1", "A1:A3")).toEqual([[63.5], [0.015], [65]]);

    // On the protected data sheet the Tab key passes over the labels.
    await showSheet(page, "Demonstration");
    await typeInCell(page, "C7", "Labor", "Tab");
    await page.keyboard.type("BK 2");
    await page.keyboard.press("Tab");
    const [laboratory] = await valuesOf(page, "Demonstration", "C7:H7");
    expect([laboratory![0], laboratory![5]]).toEqual(["Labor", "BK 2"]);
    expect(complaints).toEqual([]);
  });
});
