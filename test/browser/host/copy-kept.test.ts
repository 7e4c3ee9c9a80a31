/** A page is closed or reloaded with changes that are in no file: the browser keeps a copy, which the next page offers. */
import type { Page } from "playwright-core";
import { chooseLanguage, eventually, fileOf, showSheet, takePicture, typeInCell, valuesOf, withBrowser } from "../page";

declare const window: any;
declare const indexedDB: any;

/** How many copies the storage of the browser holds. */
const copiesIn = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const opening = indexedDB.open("clayledger", 1);
        // No copy was ever kept.
        opening.onupgradeneeded = () => opening.transaction.abort();
        opening.onerror = () => resolve(0);
        opening.onsuccess = () => {
          const database = opening.result;
          const counting = database.transaction(["bytes of copies"]).objectStore("bytes of copies").count();
          counting.onsuccess = () => {
            database.close();
            resolve(counting.result);
          };
        };
      }),
  );

const started = async (page: Page): Promise<void> => {
  await page.waitForFunction(() => "clayledger" in window);
  await page.frameLocator("#pane").locator("#pane *").first().waitFor();
};
const reload = async (page: Page): Promise<void> => {
  await page.reload();
  await started(page);
};
/** Opens the page in another window of the same browser. */
const nextWindow = async (page: Page): Promise<Page> => {
  const other = await page.context().newPage();
  await other.goto(page.url());
  await started(other);
  return other;
};
const typeOn = async (page: Page, text: string): Promise<void> => {
  await showSheet(page, "Sheet1");
  await typeInCell(page, "B2", text);
};
const valueOn = async (page: Page): Promise<unknown> => (await valuesOf(page, "Sheet1", "B2"))[0]?.[0];
const asksBeforeLeaving = (page: Page): Promise<boolean> =>
  page.evaluate(() => !window.dispatchEvent(new window.Event("beforeunload", { cancelable: true })));

withBrowser("a page that is left with unsaved changes", (openPage) => {
  let page: Page;
  let complaints: string[];
  const offer = () => page.locator("#kept");

  beforeAll(async () => {
    ({ page, complaints } = await openPage());
    // The browser asks whether to leave the page: this person does.
    page.on("dialog", (dialog) => void dialog.accept());
  });

  test("the next page offers a copy with its time, and opens it as work that is in no file", async () => {
    expect(await offer().isVisible()).toBe(false);
    // While the pane has work of several steps in hand, no copy is made of a part of it.
    const note: string = await page.evaluate(() => window.clayledger.port.noteWork("readings", "Sheet1"));
    await typeOn(page, "17.25");
    await page.waitForTimeout(8_000);
    expect(await copiesIn(page)).toBe(0);
    await page.evaluate((id) => window.clayledger.port.strikeWork(id), note);
    await eventually(async () => (await copiesIn(page)) === 1);
    await reload(page);
    expect(await valueOn(page)).not.toBe(17.25);
    await offer().waitFor();
    expect(await offer().textContent()).toMatch(
      /demonstration\.xlsx was closed with changes that were not saved\. This browser kept a copy of \d{4}-\d\d-\d\d \d\d:\d\d\./,
    );
    await takePicture(page, "copy-kept");
    await page.getByRole("button", { name: "Open the copy" }).click();
    await page
      .locator("#message", { hasText: "The copy of demonstration.xlsx is open. It is in no file yet" })
      .waitFor();
    expect(await valueOn(page)).toBe(17.25);
    expect([await offer().isVisible(), await asksBeforeLeaving(page), await copiesIn(page)]).toEqual([false, true, 1]);
  });

  test("an opened copy that is not saved is offered again after another reload, in the language of the page", async () => {
    await reload(page);
    await offer().waitFor();
    await chooseLanguage(page, "de");
    await offer().filter({ hasText: "nicht gespeichert" }).waitFor();
    await chooseLanguage(page, "en");
    await page.getByRole("button", { name: "Open the copy" }).click();
    await page.locator("#message", { hasText: "is open" }).waitFor();
    expect(await valueOn(page)).toBe(17.25);
  });

  test("a saved workbook leaves no copy", async () => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    await fileOf(download);
    await eventually(async () => (await copiesIn(page)) === 0);
    expect(await asksBeforeLeaving(page)).toBe(false);
  });

  test("a second window is not offered the work of the first while that is open; a copy is forgotten when asked", async () => {
    const first = await nextWindow(page);
    // The workbook was saved: the next window is offered nothing.
    expect(await first.locator("#kept").isVisible()).toBe(false);
    await typeOn(first, "3.5");
    await eventually(async () => (await copiesIn(page)) === 1);
    await reload(page);
    expect(await offer().isVisible()).toBe(false);
    await first.close();
    await reload(page);
    await offer().waitFor();
    await page.getByRole("button", { name: "Forget it" }).click();
    await page.locator("#message", { hasText: "was forgotten" }).waitFor();
    expect([await offer().isVisible(), await copiesIn(page)]).toEqual([false, 0]);
    expect(complaints).toEqual([]);
  });

  test("two windows that offer the same copy do not both open it, and neither forgets the work of the other", async () => {
    const first = await nextWindow(page);
    // The copy was forgotten: the next window is offered nothing.
    expect([await first.locator("#kept").isVisible(), await copiesIn(page)]).toEqual([false, 0]);
    await typeOn(first, "5.5");
    await eventually(async () => (await copiesIn(page)) === 1);
    await first.close();
    await reload(page);
    const second = await nextWindow(page);
    await second.locator("#kept").waitFor();
    await page.getByRole("button", { name: "Open the copy" }).click();
    await page.locator("#message", { hasText: "is open" }).waitFor();
    await second.getByRole("button", { name: "Forget it" }).click();
    await second.locator("#message", { hasText: "was opened or forgotten in another window" }).waitFor();
    expect([await second.locator("#kept").isVisible(), await copiesIn(page)]).toEqual([false, 1]);
    await second.close();
    await reload(page);
    await page.getByRole("button", { name: "Forget it" }).click();
    await page.locator("#message", { hasText: "was forgotten" }).waitFor();
    expect(complaints).toEqual([]);
  });

  test("where the browser forbids the storage, the page works, and says that it keeps no copy", async () => {
    const other = await page.context().newPage();
    await other.addInitScript(() => {
      Object.defineProperty(window, "indexedDB", {
        get: () => {
          throw new Error("storage is off");
        },
      });
    });
    await other.goto(page.url());
    await started(other);
    await typeOn(other, "4.5");
    await other.locator("#message", { hasText: /keeps no copy .*storage is off.*save often/ }).waitFor();
    expect(await valueOn(other)).toBe(4.5);
    await other.close();
  });
});
