/** The review of the compression curve with the keys alone: reach a handle, move it, hear its value, save, take back. */
import type { Page } from "playwright-core";
import { keyboard } from "../keys-of-a-person";
import { readNames, withBrowser } from "../page";

const SHEET = "Demonstration";

withBrowser("the review of the compression curve, by the keys alone", (openPage) => {
  let page: Page;
  let keys: ReturnType<typeof keyboard>;

  const onSheet = async (name: string, row = 0) => (await readNames(page, SHEET, [name]))[name]?.[row]?.[0];
  const handle = () =>
    page
      .frameLocator("#pane")
      .locator(":focus")
      .evaluate((one) => ({
        role: one.getAttribute("role"),
        name: one.getAttribute("aria-label"),
        value: Number(one.getAttribute("aria-valuenow")),
        said: one.getAttribute("aria-valuetext"),
      }));

  beforeAll(async () => {
    ({ page } = await openPage());
    keys = keyboard(page);
    await keys.screen("Review");
    await keys.tabTo("Load");
    // The compression curve stands first or last in the list of loads: its letters choose it.
    await page.keyboard.type("Compression");
    await page.frameLocator("#pane").getByRole("slider", { name: "Greatest curvature", exact: true }).waitFor();
  });

  test("the handles are reached one after another, each a slider with its name and its value with the unit", async () => {
    const met = [];
    for (const name of ["Greatest curvature", "Virgin line from", "Virgin line to"]) {
      await keys.tabTo(name);
      met.push(await handle());
    }
    for (const one of met) {
      expect(one.role).toBe("slider");
      expect(one.value).toBeGreaterThan(0);
      expect(one.said).toMatch(/\d.*kPa/);
    }
  });

  test("arrow keys move the handle, and Escape takes it back; nothing is written", async () => {
    await keys.tabTo("Greatest curvature", "Shift+Tab");
    const before = await handle();
    await keys.press("ArrowRight");
    const moved = await handle();
    expect(moved.value).toBeGreaterThan(before.value);
    expect(moved.said).not.toBe(before.said);
    await keys.press("Escape");
    expect((await handle()).value).toBe(before.value);
    expect(await onSheet("pick_load")).toBe("");
  });

  test("a moved handle is saved with reason and initials, and what was saved is taken back", async () => {
    const stress = Number(await onSheet("preconsolidation_stress"));
    await keys.tabTo("Greatest curvature");
    for (let count = 0; count < 5; count++) await keys.press("ArrowRight");
    const { value } = await handle();
    await keys.fill("Reason", "the knee is sharper");
    await keys.fill("Initials", "AB");
    await keys.push("Save in");
    await keys.told(/in the table of picks/);
    expect([await onSheet("pick_load"), await onSheet("pick_after"), await onSheet("pick_reason")]).toEqual([
      "curve",
      value,
      "the knee is sharper",
    ]);
    expect(Number(await onSheet("preconsolidation_stress"))).toBeGreaterThan(stress);
    await keys.push("Undo the last change");
    await keys.push("Take it back");
    await keys.told(/Cleared in the table of picks/);
    expect(Number(await onSheet("preconsolidation_stress"))).toBeCloseTo(stress, 9);
  });
});
