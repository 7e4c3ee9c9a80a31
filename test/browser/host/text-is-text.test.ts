/** Texts that look like markup, formulas or another direction of writing, typed into a test: shown, saved and printed as texts. */
import { readFileSync } from "node:fs";
import type { FrameLocator, Page } from "playwright-core";
import { fileOf, paneFrame, readNames, settled, sheetNames, withBrowser } from "../page";

const SHEET = "Demonstration";
const RENAMED = "<b>BH 1 & “Ring”!";

/** Each would set `ran` if it were read as markup, or change if it were read as a formula. */
const TEXTS: Readonly<Record<string, string>> = {
  project: `<img src=x onerror="ran=1">`,
  laboratory: `"><script>ran=2</script>`,
  boring: `=HYPERLINK("http://b.example","x")`,
  sample: `</text></svg><svg onload="ran=3">`,
  specimen: "@SUM(1)",
  soil_description: "+1 שלום عينة 😀 \u202etxet",
  preparation: "x".repeat(32_767),
  tested_by: `{{ran=4}} \${ran=5}`,
  test_remarks: "-1\ta <style>*{display:none}</style>",
};

declare const window: { readonly clayledger: any };
declare const DOMParser: any;
declare const XMLSerializer: any;

withBrowser("texts that look like something else", (openPage) => {
  let page: Page;
  let pane: FrameLocator;
  let complaints: string[];
  const dialogs: string[] = [];

  beforeAll(async () => {
    ({ page, complaints } = await openPage());
    pane = page.frameLocator("#pane");
    page.on("dialog", (dialog) => {
      dialogs.push(dialog.message());
      void dialog.dismiss();
    });
    await page.evaluate(
      async ([sheet, texts, name]) => {
        const { port } = window.clayledger;
        await port.protect(sheet, false);
        await port.fillNames(sheet, Object.fromEntries(Object.entries(texts).map(([cell, text]) => [cell, [text]])));
        const { model } = port.workbook;
        const sheetId = model.getters.getSheetIdByName(sheet);
        model.dispatch("RENAME_SHEET", { sheetId, oldName: sheet, newName: name });
      },
      [SHEET, TEXTS, RENAMED] as const,
    );
  });

  const sheet = async (): Promise<string> => (await sheetNames(page)).find((name) => name.includes("BH 1"))!;

  /** Nothing has run, in the page and in the pane. */
  const isQuiet = async (): Promise<void> => {
    for (const frame of page.frames()) expect(await frame.evaluate(() => (globalThis as any).ran)).toBeUndefined();
    expect(dialogs).toEqual([]);
    expect(complaints).toEqual([]);
  };

  test("the cells hold them letter for letter", async () => {
    const held = await readNames(page, await sheet(), Object.keys(TEXTS));
    for (const [name, text] of Object.entries(TEXTS)) expect([name, held[name]?.[0]?.[0]]).toEqual([name, text]);
    await isQuiet();
  });

  test("every screen shows them as texts, and nothing of them runs", async () => {
    const tabs = pane.getByRole("tab");
    for (let tab = 0; tab < (await tabs.count()); tab++) {
      await tabs.nth(tab).click();
      await settled(paneFrame(page));
      expect(await pane.locator("#screen img[src='x'], #screen script, #screen style").count()).toBe(0);
    }
    await pane.getByText("BH 1").first().waitFor();
    await isQuiet();
  });

  test("a plot is saved as a drawing without code", async () => {
    await pane.getByRole("tab", { name: "Plots" }).click();
    await pane.getByRole("img", { name: /Drawn:/ }).waitFor();
    const coming = page.waitForEvent("download");
    await pane.getByRole("button", { name: "Save SVG" }).click();
    const svg = readFileSync(await fileOf(await coming), "utf8");
    const found = await page.evaluate((text) => {
      const drawing = new DOMParser().parseFromString(text, "image/svg+xml");
      const all = [...drawing.querySelectorAll("*")];
      const odd = all.filter(
        (one: any) =>
          ["script", "foreignObject", "img", "parsererror"].includes(one.localName) ||
          [...one.attributes].some(({ name, value }: any) => /^on/i.test(name) || /javascript:/i.test(value)),
      );
      return odd.map((one: any) => new XMLSerializer().serializeToString(one));
    }, svg);
    expect(found).toEqual([]);
    await isQuiet();
  });

  test("the report shows them, and the saved file gives them back", async () => {
    await pane.getByRole("tab", { name: "Report" }).click();
    await pane.getByRole("button", { name: /^Make the report/ }).click();
    await pane.getByRole("status").filter({ hasText: "is on the new sheet" }).waitFor();
    const again = await page.evaluate(
      async ([name, names]) => {
        const { port, save, open } = window.clayledger;
        await open(await save(), "again.xlsx");
        const found = (await port.sheetNames()).find((one: string) => one.includes(name));
        return port.readNames(found, names);
      },
      ["BH 1", Object.keys(TEXTS)] as const,
    );
    for (const [name, text] of Object.entries(TEXTS)) expect([name, again[name]?.[0]?.[0]]).toEqual([name, text]);
    await isQuiet();
  });
});
