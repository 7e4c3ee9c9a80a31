import { paneFrame, paneViolations, paneWidths, setPaneWidth, settled, takePicture, withBrowser } from "../page";

withBrowser("a walk over every screen, without a data sheet", (openPage) => {
  test("without a data sheet every screen that needs one says so, and what to do", async () => {
    const { page, complaints } = await openPage("", { locale: "en-GB", reducedMotion: "reduce" });
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
});
