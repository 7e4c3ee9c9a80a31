/** The sheet check beside a real sheet: by keyboard, without violations, with a firm's file from the disk. */
import path from "node:path";
import type { FrameLocator, Page } from "playwright-core";
import { paneViolations, sheetNames, takePicture, withBrowser, type HostPage } from "../page";

const TEMPLATE = path.join(__dirname, "../../../templates/clayledger-us.xlsx");

withBrowser("the sheet check", (openPage) => {
  let host: HostPage;
  let page: Page;
  let pane: FrameLocator;

  const violations = (): Promise<string[]> => paneViolations(page);

  beforeAll(async () => {
    host = await openPage();
    page = host.page;
    pane = page.frameLocator("#pane");
  });

  test("is reached by keyboard, and finds nothing wrong with the demonstration", async () => {
    await pane.getByRole("tab", { name: "Data sheet" }).click();
    await pane.getByRole("button", { name: "Insert wetting series" }).focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await pane.getByRole("status").filter({ hasText: "Every name is there exactly once" }).waitFor();
    expect(await violations()).toEqual([]);
  });

  test("inserts a file from the disk as a new sheet, and checks it", async () => {
    const before = await sheetNames(page);
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      pane.getByRole("button", { name: "Insert sheets from a file…" }).click(),
    ]);
    await chooser.setFiles(TEMPLATE);
    await pane.getByRole("status").filter({ hasText: "Inserted: “Consolidation test”." }).waitFor();
    expect(await sheetNames(page)).toEqual([...before, "Consolidation test"]);
    await pane.getByRole("heading", { name: "The sheet “Consolidation test”" }).waitFor();
    await pane.getByRole("status").filter({ hasText: "Every name is there exactly once" }).waitFor();
    await takePicture(page, "pane-sheet-check");
    expect(await violations()).toEqual([]);
  });

  test("lifts the protection of the sheet in front and restores it", async () => {
    await pane.getByRole("button", { name: "Lift protection" }).click();
    await pane.getByRole("status").filter({ hasText: "is not protected any more" }).waitFor();
    await pane.getByRole("button", { name: "Protect all but inputs" }).click();
    await pane.getByRole("status").filter({ hasText: "is protected, except for its inputs" }).waitFor();
    expect(await violations()).toEqual([]);
  });

  test("the page reports no error and sends no request elsewhere", () => expect(host.complaints).toEqual([]));
});
