/**
 * With the keys alone, after a sheet has gone: by undo of its insertion, or deleted by its menu. Every next key does what it says: it
 * redoes, moves the cursor, types, or goes to the pane.
 */
import { keyboard } from "../keys-of-a-person";
import { clickCell, sheetMade, sheetNames, typeInCell, valuesOf, withBrowser, type HostPage } from "../page";

withBrowser("the keys after a sheet has gone", (openPage) => {
  let host: HostPage;
  let sheet: string;
  let first: string[];
  beforeAll(async () => {
    // While a value fades in, the sheet is drawn again and again.
    host = await openPage("", { reducedMotion: "no-preference" });
    const { page } = host;
    first = await sheetNames(page);
    await page.frameLocator("#pane").getByRole("tab", { name: "Data sheet" }).click();
    await page.frameLocator("#pane").getByRole("button", { name: "Insert blank sheet" }).click();
    sheet = await sheetMade(page, first, "was made");
  });
  afterEach(() => expect(host.complaints).toEqual([]));

  const untilSheets = (names: readonly string[]) =>
    host.page.evaluate(async (wanted) => {
      const { port } = (globalThis as any).clayledger;
      while ((await port.sheetNames()).join() !== wanted) await new Promise((next) => setTimeout(next, 50));
    }, names.join());
  const hold = async (key: string, count: number): Promise<void> => {
    for (let time = 0; time < count; time++) await host.page.keyboard.press(key);
  };
  const row = async (): Promise<number> => (await keyboard(host.page).at()).row;
  /** The cursor, the pane and the sheet take their keys. */
  async function expectKeysTaken(): Promise<void> {
    const keys = keyboard(host.page);
    const before = await row();
    await keys.press("ArrowDown");
    expect(await row()).toBe(before + 1);
    const isInPane = () => host.page.evaluate(() => (globalThis as any).document.activeElement.id === "pane");
    await keys.press("F6");
    expect(await isInPane()).toBe(true);
    await keys.press("F6");
    await keys.press("ArrowUp");
    expect(await row()).toBe(before);
  }

  test("undo goes back past entries and the insertion, and redo brings all of it again", async () => {
    const { page } = host;
    await typeInCell(page, "D19", "63.5");
    await typeInCell(page, "I19", "20");
    const title = await valuesOf(page, sheet, "A1");
    await hold("Control+z", 25);
    await untilSheets(first);
    await expectKeysTaken();
    await hold("Control+y", 3);
    await untilSheets([...first, sheet]);
    expect([await valuesOf(page, sheet, "D19"), await valuesOf(page, sheet, "I19")]).toEqual([[[63.5]], [[20]]]);
    await expectKeysTaken();
    // One more does the last entry again where the cursor is, as in Excel: not where the cells are protected.
    await page.keyboard.press("Control+Home");
    await hold("Control+y", 2);
    await page.locator("#message", { hasText: "A1 is protected" }).waitFor();
    expect(await valuesOf(page, sheet, "A1")).toEqual(title);
  });

  test.each(["No", "Yes"])("after the answer %s to whether a sheet is deleted", async (answer) => {
    const { page } = host;
    await page.locator(".o-sheet", { hasText: sheet }).click({ button: "right" });
    await page.locator(".o-menu-item", { hasText: /^\s*Delete/ }).click();
    await page.getByRole("button", { name: answer, exact: true }).focus();
    const before = await row();
    // The arrow key follows before the page is drawn without its question.
    await Promise.all([page.keyboard.press("Enter"), page.keyboard.press("ArrowDown")]);
    const isGone = answer === "Yes";
    await untilSheets(isGone ? first : [...first, sheet]);
    if (!isGone) expect(await row()).toBe(before + 1);
    await expectKeysTaken();
    if (!isGone) return;
    await hold("Control+z", 1);
    await untilSheets([...first, sheet]);
    await expectKeysTaken();
    await hold("Control+y", 1);
    await untilSheets(first);
    await expectKeysTaken();
    await page.locator(".o-sheet", { hasText: /^\s*Sheet1\s*$/ }).click();
    await clickCell(page, "B2");
  });

  test("after a click on the header, where nothing takes a key, what is typed goes into the cell", async () => {
    const { page } = host;
    await page.evaluate(() => (globalThis as any).document.activeElement.blur());
    await page.keyboard.type("42");
    await page.keyboard.press("Enter");
    expect(await valuesOf(page, "Sheet1", "B2")).toEqual([[42]]);
    await page.evaluate(() => (globalThis as any).document.activeElement.blur());
    await hold("Control+z", 1);
    expect(await valuesOf(page, "Sheet1", "B2")).toEqual([[""]]);
    await expectKeysTaken();
  });
});
