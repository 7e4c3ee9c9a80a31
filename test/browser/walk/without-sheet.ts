/** Every screen of a workbook without a data sheet. */
import {
  chooseLanguage,
  paneFrame,
  paneViolations,
  paneWidths,
  setPaneWidth,
  settled,
  takePicture,
  type HostPage,
} from "../page";

/** A test on a page with the demonstration, which it deletes. */
export const withoutSheet = (host: () => HostPage): void =>
  test("without a data sheet every screen that needs one says so, and what to do", async () => {
    const { page, complaints } = host();
    await chooseLanguage(page, "en");
    await page.evaluate(() => {
      const { model } = (globalThis as any).clayledger.port.workbook;
      const sheet = model.getters
        .getSheetIds()
        .find((id: string) => model.getters.getSheetName(id) === "Demonstration");
      model.dispatch("DELETE_SHEET", { sheetId: sheet, sheetName: "Demonstration" });
    });
    await setPaneWidth(page, 320);
    const frame = paneFrame(page);
    const wrong: string[] = [];
    for (const tab of ["What next", "Plots", "Review", "Results", "Checks", "By hand", "Report", "Summary"]) {
      await frame.getByRole("tab", { name: tab }).click();
      await settled(frame);
      await takePicture(page, `walk-empty-${tab}`.replaceAll(" ", "-"));
      const said = await frame.getByRole("tabpanel").innerText();
      if (!/insert|select|put one in/i.test(said)) wrong.push(`${tab}: ${said}`);
      wrong.push(...(await paneViolations(page)).map((violation) => `${tab}: ${violation}`));
      const { shown, content } = await paneWidths(page);
      if (content > shown) wrong.push(`${tab}: ${content} px wide`);
    }
    expect(wrong).toEqual([]);
    expect(complaints).toEqual([]);
  });
