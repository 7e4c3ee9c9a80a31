/** The summary of a project beside a real sheet: rows that follow the data sheets, units, files, charts. */
import path from "node:path";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import ExcelJS from "exceljs";
import type { FrameLocator, Page } from "playwright-core";
import {
  paneFrame,
  paneViolations,
  paneWidths,
  readNames,
  setPaneWidth,
  settled,
  sheetNames,
  showSheet,
  takePicture,
  valuesOf,
  withBrowser,
  type HostPage,
} from "../page";

const fileWith = async (stress: number): Promise<Buffer> => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Test");
  const cells = {
    times_01: 0,
    boring: "BH-9",
    depth: 4,
    depth_unit: "m",
    stress_unit: "MPa",
    preconsolidation_stress: stress,
  };
  Object.entries(cells).forEach(([name, value], index) => {
    sheet.getCell(index + 1, 2).value = value;
    workbook.definedNames.add(`Test!$B$${index + 1}`, name);
  });
  return Buffer.from((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
};

withBrowser("the summary", (openPage) => {
  let host: HostPage;
  let page: Page;
  let pane: FrameLocator;

  const told = (words: string | RegExp) =>
    pane.getByRole("status").or(pane.getByRole("alert")).filter({ hasText: words }).first().waitFor();
  const column = async (name: string) => (await readNames(page, "Summary", [name]))[name]!.map(([value]) => value);

  beforeAll(async () => {
    host = await openPage();
    page = host.page;
    pane = page.frameLocator("#pane");
    await pane.getByRole("tab", { name: "Data sheet" }).click();
    await pane.getByRole("radio", { name: /US/ }).check();
    await pane.getByRole("button", { name: "Insert worked demonstration" }).click();
    await told("“Demonstration 2”");
    await pane.getByRole("tab", { name: "Summary" }).click();
  });

  test("has a row for each data sheet, converted to the units of its headings", async () => {
    await pane.getByRole("button", { name: "Insert a summary" }).click();
    await told("Inserted: “Summary”.");
    await told("Not read, because they have none of the data sheet's names: “Sheet1”.");
    const [sheets, stresses] = [await column("summary_sheet"), await column("summary_in_situ_stress")];
    const data = (await sheetNames(page)).filter((name) => name.startsWith("Demonstration"));
    expect(sheets.slice(0, 3)).toEqual([...data, ""]);
    expect(stresses.slice(0, 2).map((value) => Math.round(Number(value)))).toEqual([62, 62]);
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "pane-summary");
  });

  test("follows a data sheet, and keeps a text that a person typed", async () => {
    const [first] = await column("summary_sheet");
    await page.evaluate(
      async ([sheet]) => {
        const { port } = (globalThis as any).clayledger;
        await port.fillNames(sheet, { in_situ_stress: [80] });
        await port.writeCells("Summary", [{ row: 5, col: 5, value: "my own words" }], true);
      },
      [String(first)] as const,
    );
    await pane.getByRole("button", { name: "Bring “Summary” up to date" }).click();
    await told("Left as they are, because something else was typed there: F6.");
    expect((await column("summary_in_situ_stress"))[0]).toBe(80);
    expect((await column("summary_soil_description"))[0]).toBe("my own words");
  });

  test("takes specimens of files as constants, and lists a file that cannot be read", async () => {
    const folder = mkdtempSync(path.join(tmpdir(), "project-"));
    const [good, bad] = ["good.xlsx", "bad.xlsx"].map((name) => path.join(folder, name));
    writeFileSync(good!, await fileWith(0.15));
    writeFileSync(bad!, "no workbook");
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      pane.getByRole("button", { name: "Add specimens from files…" }).click(),
    ]);
    await chooser.setFiles([good!, bad!]);
    await told("“bad.xlsx” was skipped.");
    await told("Added: good.xlsx, Test.");
    expect((await column("summary_preconsolidation_stress"))[2]).toBeCloseTo(150, 9);
    // The buttons fade in again after the work.
    await settled(paneFrame(page));
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "pane-summary-files");
  });

  test("draws the project on a sheet of charts", async () => {
    await pane.getByRole("button", { name: "Insert charts" }).click();
    await told("The charts are on “Summary charts”.");
    const values = (await valuesOf(page, "Summary charts", "R3:AZ24")).flat();
    expect(values.filter((value) => typeof value === "string" && /^#(?!N\/A)/.test(value))).toEqual([]);
    await showSheet(page, "Summary charts");
    await page.locator(".o-figure svg").first().waitFor();
    await takePicture(page, "page-summary-charts");
  });

  test("makes reports, one AGS4 file and pictures of the chosen sheets, and lists what failed", async () => {
    const part = pane.getByRole("region", { name: "Many at once" });
    const [first, second] = (await sheetNames(page)).filter((name) => name.startsWith("Demonstration"));
    await part.getByRole("checkbox", { name: second!, exact: true }).uncheck();
    await part.getByRole("button", { name: "Make 1 report" }).click();
    await told(/1 report was made: “Report Demonstration/);
    expect((await sheetNames(page)).filter((name) => name.startsWith("Report"))).toHaveLength(1);

    await part.getByLabel("What to make").selectOption("pictures");
    const [zip] = await Promise.all([
      page.waitForEvent("download"),
      part.getByRole("button", { name: "Save the pictures of 1 sheet" }).click(),
    ]);
    expect(zip.suggestedFilename()).toMatch(/^Plots, \d{4}-\d\d-\d\d\.zip$/);
    await told(/with 2 pictures/);
    expect(await paneViolations(page)).toEqual([]);

    await part.getByLabel("What to make").selectOption("ags4");
    await part.getByRole("button", { name: "All" }).click();
    await part.getByLabel("Producer").fill("Lab");
    await part.getByLabel("Recipient").fill("Office");
    await page.evaluate(
      async (sheets) => {
        for (const one of sheets) await (globalThis as any).clayledger.port.fillNames(one, { sample_type: [""] });
      },
      [first, second],
    );
    await part.getByRole("button", { name: "Make one AGS4 file of 2 sheets" }).click();
    await told(/No test can be written: .*needs .*Type of sample/);
    await page.evaluate(
      async ([one, two]) => {
        const { port } = (globalThis as any).clayledger;
        for (const sheet of [one, two]) await port.fillNames(sheet, { sample_top: [7], sample_type: ["UT"] });
        await port.fillNames(two, { job_number: ["J-9"] });
      },
      [first, second] as const,
    );
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      part.getByRole("button", { name: "Make one AGS4 file of 2 sheets" }).click(),
    ]);
    expect(file.suggestedFilename()).toMatch(/consolidation\.ags$/);
    await part.getByText("1 thing failed").waitFor();
    await part.getByText(/an AGS4 file has one project/).waitFor();
    await settled(paneFrame(page));
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "pane-summary-many");
  });

  test("fits into a narrow pane", async () => {
    await setPaneWidth(page, 320);
    const { shown, content } = await paneWidths(page);
    expect(content).toBeLessThanOrEqual(shown);
    await takePicture(page, "pane-summary-320");
  });

  test("the page reported no error and sent no request to the network", () => expect(host.complaints).toEqual([]));
});
