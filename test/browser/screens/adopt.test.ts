/** Adopts a value in the pane beside a real sheet, by keys alone, and takes it back. */
import type { FrameLocator, Page } from "playwright-core";
import { paneViolations, paneWidths, readNames, setPaneWidth, settled, takePicture, withBrowser } from "../page";

const SHEET = "Demonstration";

withBrowser("adopted values", (openPage) => {
  let page: Page;
  let pane: FrameLocator;

  const onSheet = async (name: string, row = 0) => (await readNames(page, SHEET, [name]))[name][row][0];
  const told = (sentence: string | RegExp) => pane.getByRole("status").filter({ hasText: sentence }).waitFor();
  const button = (name: string) => pane.getByRole("button", { name, exact: true });

  beforeAll(async () => {
    ({ page } = await openPage());
    pane = page.frameLocator("#pane");
    await pane.getByRole("tab", { name: "Results" }).click();
    await pane.getByRole("heading", { name: "Adopt a value" }).waitFor();
  });

  test.each([320, 480])("the form fits a pane of %d px, without violations", async (width) => {
    await setPaneWidth(page, width);
    await settled(page.frames().find((frame) => frame.url().includes("pane.html"))!);
    await pane.getByRole("combobox", { name: "What is adopted" }).selectOption("cv_virgin");
    await button("Adopt in “Demonstration”").click();
    await pane.getByText("Adopted value: type a number above 0.").waitFor();
    await button("Adopt in “Demonstration”").scrollIntoViewIfNeeded();
    await takePicture(page, `adopt-${width}`);
    const { shown, content } = await paneWidths(page);
    expect(content).toBeLessThanOrEqual(shown);
    expect(await paneViolations(page)).toEqual([]);
  });

  test("a value is adopted by keys, the sheet goes on with it, and it is taken back", async () => {
    const constructed = await onSheet("preconsolidation_stress");
    await pane.getByRole("combobox", { name: "What is adopted" }).selectOption("preconsolidation_stress");
    await pane.getByRole("textbox", { name: "Adopted value (kPa)" }).focus();
    await page.keyboard.type("900");
    await page.keyboard.press("Tab");
    await page.keyboard.type("aged clay");
    await page.keyboard.press("Tab");
    await page.keyboard.type("AB");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await told("Preconsolidation stress σ′p is adopted on “Demonstration”.");
    expect(await onSheet("preconsolidation_stress")).toBe(900);
    expect([await onSheet("adopted_by"), await onSheet("adopted_reason")]).toEqual(["AB", "aged clay"]);
    await pane.getByText("adopted by AB: aged clay").waitFor();
    await button("Take back…").click();
    await told(/900 kPa; AB; \d{4}-\d\d-\d\d; aged clay/);
    await takePicture(page, "adopt-taken-back");
    expect(await paneViolations(page)).toEqual([]);
    await button("Take it back").click();
    await told("the adopted value is taken back");
    expect([await onSheet("preconsolidation_stress"), await onSheet("adopted_by")]).toEqual([constructed, ""]);
  });
});
