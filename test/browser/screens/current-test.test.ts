/**
 * One current test for the whole pane, in the browser: it follows the sheet, is pinned by mouse and keyboard, in every
 * look and width.
 */
import type { Frame, FrameLocator, Page } from "playwright-core";
import {
  chooseLanguage,
  clickCell,
  eventually,
  LOOKS,
  paneFrame,
  paneViolations,
  paneWidths,
  setLook,
  setPaneWidth,
  settled,
  showSheet,
  takePicture,
  withBrowser,
  type HostPage,
} from "../page";

const DEMO = "Demonstration";
const BLANK = "Consolidation test";
const WIDTHS = [320, 480, 1440];
/** The language of the pane in each look. */
const LANGUAGES = { light: "en", "high contrast": "en", dark: "de" } as const;
const SCREENS_OF_A_TEST = ["Plots", "Review", "Results", "Checks", "By hand", "Report"];

/** The demonstration, a blank data sheet, and a sheet of notes. */
async function threeSheets(page: Page, frame: Frame): Promise<void> {
  await frame.locator("#tab-sheet").click();
  await frame.locator("[role=tabpanel] button").first().click();
  await frame.locator("[role=status]").first().waitFor();
  await page.evaluate(() => {
    const { model } = (globalThis as any).clayledger.port.workbook;
    model.dispatch("CREATE_SHEET", { sheetId: "notes", name: "Notes", position: 2, cols: 26, rows: 100 });
  });
}

withBrowser("the current test", (openPage) => {
  let host: HostPage;
  let page: Page;
  let frame: Frame;
  beforeAll(async () => {
    host = await openPage("", { locale: "en-GB" });
    page = host.page;
    frame = paneFrame(page);
    await threeSheets(page, frame);
  });

  describe("beside the sheet", () => {
    let pane: FrameLocator;
    beforeAll(() => (pane = page.frameLocator("#pane")));

    const bar = () => pane.getByRole("group", { name: "Current test" });
    const chosen = () => bar().getByRole("combobox", { name: "Test" });
    const pin = () => bar().getByRole("button", { name: "Pin this test" });
    const shows = (sheet: string): Promise<unknown> =>
      frame.waitForFunction((name) => {
        const { document } = globalThis as any;
        return document.querySelector("header select")?.selectedOptions[0]?.textContent === name;
      }, sheet);

    test("every screen follows the sheet in front", async () => {
      for (const screen of SCREENS_OF_A_TEST) {
        await pane.getByRole("tab", { name: screen }).click();
        await showSheet(page, BLANK);
        await shows(BLANK);
        await showSheet(page, DEMO);
        await shows(DEMO);
      }
      await pane.getByRole("tab", { name: "Results" }).click();
      await pane.getByRole("button", { name: /Compression index Cc: .* go to the cell/ }).waitFor();
      await showSheet(page, BLANK);
      await pane
        .getByRole("button", { name: /Compression index Cc: .* go to the cell/ })
        .waitFor({ state: "detached" });
    });

    test("if a sheet that is not a data sheet comes to the front, the last test stays, and the pane says so", async () => {
      await showSheet(page, DEMO);
      await shows(DEMO);
      await showSheet(page, "Notes");
      await bar().getByText("“Notes” is in front but is not a data sheet: the pane stays with this test.").waitFor();
      expect(await chosen().inputValue()).toBe(DEMO);
      await takePicture(page, "current-test-notes-in-front");
    });

    test("the pin is pressed by keyboard, holds the test, and releases it", async () => {
      await showSheet(page, DEMO);
      await shows(DEMO);
      await pane.getByRole("tab", { name: "Results" }).focus();
      await page.keyboard.press("Tab");
      expect(await frame.evaluate(() => (globalThis as any).document.activeElement.tagName)).toBe("SELECT");
      await page.keyboard.press("Tab");
      await page.keyboard.press("Space");
      expect(await pin().getAttribute("aria-pressed")).toBe("true");
      await showSheet(page, BLANK);
      await bar().getByText(`Pinned, while “${BLANK}” is in front.`).waitFor();
      expect(await chosen().inputValue()).toBe(DEMO);
      await takePicture(page, "current-test-pinned");
      await pin().press("Enter");
      await shows(BLANK);
    });

    test("a test chosen in the pane is pinned", async () => {
      await showSheet(page, BLANK);
      await shows(BLANK);
      await chosen().selectOption(DEMO);
      await bar().getByText(`Pinned, while “${BLANK}” is in front.`).waitFor();
      expect(await pin().getAttribute("aria-pressed")).toBe("true");
      await pin().click();
      await shows(BLANK);
    });

    test("a move of the cursor asks the workbook for nothing; a typed value asks only for the current test", async () => {
      await showSheet(page, DEMO);
      await shows(DEMO);
      await pane.getByRole("tab", { name: "Results" }).click();
      await settled(frame);
      await page.evaluate(() => {
        const { port } = (globalThis as any).clayledger;
        const asked: string[] = ((globalThis as any).asked = []);
        for (const name of [
          "selection",
          "findSheets",
          "lookAt",
          "readNames",
          "readSheets",
          "activeSheet",
          "listNames",
        ]) {
          const method = port[name];
          port[name] = function (...args: unknown[]) {
            asked.push(name);
            return method.apply(this, args);
          };
        }
      });
      const asked = (): Promise<string[]> => page.evaluate(() => (globalThis as any).asked);
      await clickCell(page, "A3");
      for (let move = 0; move < 10; move++) await page.keyboard.press("ArrowDown");
      await page.waitForTimeout(1000);
      expect(await asked()).toEqual([]);
      await page.evaluate((sheet) => (globalThis as any).clayledger.port.fillNames(sheet, { depth: [5.5] }), DEMO);
      await eventually(async () => (await asked()).includes("lookAt"));
      await settled(frame);
      expect((await asked()).filter((name) => name !== "readNames" && name !== "listNames")).toEqual(["lookAt"]);
    });
  });

  test.each(["light", "high contrast", "dark"] as const)(
    "in %s axe finds nothing wrong and nothing is cut off",
    async (look) => {
      await chooseLanguage(page, LANGUAGES[look]);
      await setLook(page, LOOKS[look]);
      const wrong: string[] = [];
      const check = async (what: string): Promise<void> => {
        await settled(frame);
        for (const width of WIDTHS) {
          await setPaneWidth(page, Math.min(width, 900));
          await takePicture(page, `current-test ${look} ${width} ${what}`.replaceAll(" ", "-"));
          wrong.push(...(await paneViolations(page, LOOKS[look])).map((one) => `${what} ${width}: ${one}`));
          const { shown, content } = await paneWidths(page);
          if (content > shown) wrong.push(`${what} ${width}: ${content} px wide`);
        }
      };
      const pin = frame.locator("header button[aria-pressed]");
      await frame.locator("[role=tab]").nth(4).click();
      await showSheet(page, DEMO);
      await check("followed");
      await pin.click();
      await showSheet(page, BLANK);
      await check("pinned");
      await pin.click();
      await showSheet(page, "Notes");
      await check("notes in front");
      expect(wrong).toEqual([]);
    },
  );

  test("the page reports no error and sends no request elsewhere", () => expect(host.complaints).toEqual([]));
});
