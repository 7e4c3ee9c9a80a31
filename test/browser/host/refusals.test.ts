/** What the page says when the sheet takes no entry, and when the sentence goes. */
import type { Page } from "playwright-core";
import { clickCell, selectRange, showSheet, takePicture, typeInCell, withBrowser } from "../page";

const message = (page: Page) => page.locator("#message").textContent();
const said = (page: Page, start: string) =>
  page.waitForFunction((start) => document.querySelector("#message")!.textContent!.startsWith(start), start);
const saysNothing = (page: Page) => page.waitForFunction(() => document.querySelector("#message")!.textContent === "");

/** The first cell of a name of the demonstration, as "C15". */
const cellOf = (page: Page, name: string): Promise<string> =>
  page.evaluate(async (wanted) => {
    const names = await (window as any).clayledger.port.listNames("Demonstration");
    const { row, col } = names.find((one: any) => one.name === wanted).place;
    return `${String.fromCharCode(65 + col)}${row + 1}`;
  }, name);

withBrowser("an entry that the sheet does not take", (openPage) => {
  test("is refused in the pane's words, whole, and the sentence goes when something else is done", async () => {
    const { page, complaints } = await openPage();
    await showSheet(page, "Demonstration");
    const result = await cellOf(page, "void_ratio_initial");
    await page.evaluate(([sheet, cell]) => (window as any).clayledger.port.show(sheet, cell), [
      "Demonstration",
      result,
    ] as const);
    await page.keyboard.type("1", { delay: 30 });
    await page.keyboard.press("Enter");
    await said(page, `${result} is protected`);
    expect(await message(page)).toBe(
      `${result} is protected, as results and labels are: fill in the framed cells. To change it, lift the protection in the pane: Data sheet, “Lift protection”.`,
    );
    await takePicture(page, "refused-protected");
    // For 0.3 s after a refusal the page takes a move of the selection for the work of the refused key.
    await page.waitForTimeout(400);
    await selectRange(page, "A1");
    await saysNothing(page);

    const input = await cellOf(page, "ring_mass");
    await page.evaluate(([sheet, cell]) => (window as any).clayledger.port.show(sheet, cell), [
      "Demonstration",
      input,
    ] as const);
    await page.keyboard.type("heavy", { delay: 30 });
    await page.keyboard.press("Enter");
    const refused = page.locator("#refusals li");
    await refused.filter({ hasText: `${input} was not changed.` }).waitFor();
    expect(await refused.innerText()).not.toMatch(/violates|1000000000000/);
    await takePicture(page, "refused-rule");
    const below = input.replace(/\d+/, (row) => String(Number(row) + 1));
    await page.waitForTimeout(400);
    await typeInCell(page, below, "light");
    await refused.nth(1).waitFor();
    await typeInCell(page, below, "150");
    expect(await refused.allInnerTexts()).toEqual([expect.stringMatching(`^${input} was not changed.*Dismiss$`)]);
    await takePicture(page, "refused-kept");
    await page.getByRole("button", { name: `Dismiss: ${input} was not changed` }).click();
    await refused.waitFor({ state: "detached" });
    await page.locator(".o-grid:focus-within").waitFor();

    await page.locator(".o-sheet", { hasText: /^\s*Demonstration\s*$/ }).click({ button: "right" });
    await page.getByText("Lock the whole sheet, inputs too").waitFor();
    await page.keyboard.press("Escape");
    await showSheet(page, "Sheet1");
    await clickCell(page, "B2");
    await page.waitForTimeout(400);
    await typeInCell(page, "B3", "5");
    await saysNothing(page);
    expect(await refused.count()).toBe(0);

    const tab = page.locator(".o-sheet").last();
    // The field of the name has the focus once the page has drawn it.
    const field = tab.locator(".o-sheet-name:focus");
    await tab.dblclick();
    await field.waitFor();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("BH-1: a name of more than 31 characters");
    await page.keyboard.press("Enter");
    await said(page, "The sheet keeps its name: in Excel the name of a sheet has 31 characters at most, none of : ' *");
    await field.waitFor();
    await page.keyboard.press("Escape");
    await tab.getByText("Demonstration", { exact: true }).waitFor();
    expect(complaints).toEqual([]);
  });

  test("is refused in the pane's words in German too, and the sentence stays", async () => {
    const { page, complaints } = await openPage("", { locale: "de-DE" });
    await showSheet(page, "Demonstration");
    const input = await cellOf(page, "ring_mass");
    await typeInCell(page, input, "63.5");
    await page.locator("#message, #refusals li").filter({ hasText: input }).waitFor();
    expect(await message(page)).toBe("");
    const refused = await page.locator("#refusals li").innerText();
    expect(refused.startsWith(`${input} wurde nicht geändert. `)).toBe(true);
    expect(refused).not.toMatch(/1e-9/);
    expect(complaints).toEqual([]);
  });
});
