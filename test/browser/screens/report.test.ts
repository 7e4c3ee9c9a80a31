/** The report beside a real sheet: made by keyboard, without violations, live. */
import type { FrameLocator, Page } from "playwright-core";
import {
  paneFrame,
  paneViolations,
  paneWidths,
  readNames,
  setPaneWidth,
  settled,
  sheetNames,
  takePicture,
  withBrowser,
  type HostPage,
} from "../page";

withBrowser("the report", (openPage) => {
  let host: HostPage;
  let page: Page;
  let pane: FrameLocator;

  beforeAll(async () => {
    host = await openPage();
    page = host.page;
    pane = page.frameLocator("#pane");
  });

  test("says what would be missing, before the report is made", async () => {
    await pane.getByRole("tab", { name: "Report" }).click();
    await pane.getByRole("heading", { name: "Report", exact: true }).waitFor();
    await pane.getByText("Checked by, cell").waitFor();
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "pane-report");
  });

  test("is made by keyboard as one new sheet, which is in front and agrees with the data sheet", async () => {
    const before = await sheetNames(page);
    await pane.getByRole("textbox", { name: "Prepared by" }).focus();
    await page.keyboard.type("AB", { delay: 15 });
    // Over paper, language and curve to the button.
    for (let field = 0; field < 4; field++) await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await pane
      .getByRole("status")
      .filter({ hasText: "The report of “Demonstration” is on the new sheet “Report Demonstration”" })
      .waitFor();
    expect(await sheetNames(page)).toEqual([...before, "Report Demonstration"]);
    const { report_state, report_prepared_by } = await readNames(page, "Report Demonstration", [
      "report_state",
      "report_prepared_by",
    ]);
    expect(report_state[0][0]).toBe("The data sheet still says what it said when this report was made.");
    expect(report_prepared_by[0][0]).toBe("AB");
    await pane.getByRole("button", { name: "Show “Report Demonstration”" }).waitFor();
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "report");
  });

  test("locks an issue; a changed reading is told on Report and in Checks, and compared with its cell", async () => {
    await pane.getByRole("button", { name: "Make and lock issue 1 of “Demonstration”" }).click();
    await pane.getByText("Enter your initials: an issue says who locked it.").waitFor();
    await pane.getByRole("textbox", { name: "Locked by" }).fill("EF");
    await pane.getByRole("button", { name: "Make and lock issue 1 of “Demonstration”" }).click();
    const compare = pane.getByRole("button", { name: /^Compare with issue 1/ });
    await compare.waitFor();
    await compare.click();
    await pane.getByText("Every value is as in issue 1.").waitFor();
    expect(await pane.getByText("Readings changed after a report was locked.").count()).toBe(0);

    await page.evaluate(async () => {
      const { port } = (globalThis as any).clayledger;
      const { readings_03 } = await port.readNames("Demonstration", ["readings_03"]);
      await port.fillNames("Demonstration", { readings_03: [readings_03[0][0] + 1] });
    });
    await pane.getByText("Readings changed after a report was locked.").waitFor();
    await compare.click();
    await pane.getByText(/not as in issue 1/).waitFor();
    await pane
      .getByText(/row 1, .*: from .* to /)
      .first()
      .waitFor();
    await settled(paneFrame(page));
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "pane-report-issue");
    await setPaneWidth(page, 320);
    const { shown, content } = await paneWidths(page);
    expect(content).toBeLessThanOrEqual(shown);
    await pane.getByRole("tab", { name: "Checks" }).click();
    await pane.getByText("Readings changed after a report was locked.").filter({ visible: true }).waitFor();
  });

  test("the page reports no error and sends no request elsewhere", () => expect(host.complaints).toEqual([]));
});
