/** The reviewer's checks and the comparison by hand beside a real sheet. */
import { CHECKS } from "../../../src/checks";
import { readFileSync } from "node:fs";
import type { Download, FrameLocator, Page } from "playwright-core";
import {
  eventually,
  fileOf,
  paneFrame,
  paneViolations,
  paneWidths,
  readNames,
  setPaneWidth,
  settled,
  sheetNames,
  showSheet,
  takePicture,
  withBrowser,
  type HostPage,
} from "../page";

const SHEET = "Demonstration";

declare const window: { clayledger: { port: any } };

withBrowser("the reviewer", (openPage) => {
  let host: HostPage;
  let page: Page;
  let pane: FrameLocator;

  const told = (sentence: string | RegExp) =>
    pane.locator("[role=status], [role=alert]").filter({ hasText: sentence }).first().waitFor();
  /** Types over the cell of a name, with the protection lifted, as a person in a hurry does. */
  const typeOver = (name: string, content: string): Promise<string> =>
    page.evaluate(
      async ([sheet, cell, typed]) => {
        const { port } = window.clayledger;
        await port.protect(sheet, false);
        const place = (await port.listNames(sheet)).find((one: any) => one.name === cell).place;
        const { model } = port.workbook;
        const sheetId = model.getters.getActiveSheetId();
        model.dispatch("UPDATE_CELL", { sheetId, col: place.col, row: place.row, content: typed });
        return `${String.fromCharCode(65 + place.col)}${place.row + 1}`;
      },
      [SHEET, name, content],
    );

  beforeAll(async () => {
    host = await openPage();
    page = host.page;
    pane = page.frameLocator("#pane");
  });

  test("finds the cells of the demonstration sound, and shows its questions with both numbers", async () => {
    await pane.getByRole("tab", { name: "Checks" }).click();
    await told("No formula was overwritten or lost");
    await pane.getByText(new RegExp(`questions pass; \\d+ of ${CHECKS.length} cannot be asked`)).waitFor();
    await pane.getByLabel("Show questions").selectOption("all");
    await pane.getByText("Q01 ").waitFor();
    expect(await paneViolations(page)).toEqual([]);
    for (const width of [320, 480]) {
      await setPaneWidth(page, width);
      const { shown, content } = await paneWidths(page);
      expect(content).toBe(shown);
      await takePicture(page, `pane-checks-${width}`);
    }
  });

  test("names a cell whose formula was overwritten, and goes to it", async () => {
    await showSheet(page, SHEET);
    const cell = await typeOver("void_ratio_initial", "1.234");
    await told("to mend");
    await pane.getByText(new RegExp(`^${cell}, Void ratio, initial e0, holds 1.234 where a formula belongs`)).waitFor();
    await pane.getByRole("button", { name: `Show ${cell}`, exact: true }).click();
    await eventually(async () => (await page.evaluate(() => window.clayledger.port.selection())).address === cell);
    await takePicture(page, "pane-checks-overwritten");
    await page.evaluate(() => window.clayledger.port.workbook.model.dispatch("REQUEST_UNDO"));
    await told("No formula was overwritten or lost");
  });

  test("keeps an answer with initials on a sheet of its own", async () => {
    await pane.getByLabel("Show questions").selectOption("open");
    const answer = pane.getByLabel(/^Answer \(Q\d+\)/).first();
    const id = /Q\d+/.exec((await answer.getAttribute("aria-label"))!)![0];
    await answer.fill("Looked at the readings: it is the soil.");
    await pane.getByLabel(`Initials (${id})`).fill("RV");
    await pane.getByRole("button", { name: `Keep the answer (${id})` }).click();
    await told(`The answer to ${id} for “Demonstration” is on the sheet “Answers to checks”.`);
    await pane.getByText(/Answered by RV, .*it is the soil/).waitFor();
    const kept = await readNames(page, "Answers to checks", ["answer_sheet", "answer_check", "answer_by"]);
    expect([kept.answer_sheet[0][0], kept.answer_check[0][0], kept.answer_by[0][0]]).toEqual([SHEET, id, "RV"]);
    expect(kept.answer_check[1][0]).toBe("");
  });

  test("uses a limit of the firm from its cell, and asks who changed it", async () => {
    await pane.getByRole("button", { name: "Insert a sheet of limits" }).click();
    await told("lists every limit");
    const names = await readNames(page, "Limits", ["limit_name"]);
    const row = names.limit_name.findIndex(([name]) => name === "Q01, note above");
    expect(row).toBeGreaterThanOrEqual(0);
    await page.evaluate(
      ([at]) =>
        window.clayledger.port.fillNames("Limits", { limit_value: [...new Array(at as number).fill(null), 90] }),
      [row],
    );
    await told(/changes “Q01, note above” from 1.02 to 90/);
    expect(await paneViolations(page)).toEqual([]);
  });

  test("downloads a strict AGS4 file once its cells are filled, and names the cells that are not", async () => {
    await pane.getByLabel("Recipient").fill("Example office (invented)");
    await pane.getByLabel("Producer").fill("Example laboratory (invented)");
    await pane.getByLabel("Kind of sample").selectOption("UT");
    await page.evaluate((sheet) => window.clayledger.port.fillNames(sheet, { sample_top: [""] }), SHEET);
    // The pane reads the cleared cell a moment later, and makes the file until then.
    const refusal = pane
      .locator("[role=status], [role=alert]")
      .filter({ hasText: /needs Top of the sample/ })
      .first();
    await eventually(async () => {
      await pane.getByRole("button", { name: "Download the file" }).click();
      await settled(paneFrame(page));
      return refusal.isVisible();
    });
    await page.evaluate((sheet) => window.clayledger.port.fillNames(sheet, { sample_top: [7] }), SHEET);
    let download: Download | undefined;
    page.once("download", (file) => (download = file));
    // The pane reads the filled cell a moment later, and refuses the file until then.
    await eventually(async () => {
      if (!download) await pane.getByRole("button", { name: "Download the file" }).click();
      await settled(paneFrame(page));
      return download !== undefined;
    });
    const file = download!;
    expect(file.suggestedFilename()).toMatch(/\.ags$/);
    const written = readFileSync(await fileOf(file), "latin1");
    expect(written).toMatch(/^"GROUP","PROJ"\r\n/);
    expect(written).toContain('"GROUP","CONS"');
    await pane.getByText("the 240 readings of deformation against time").waitFor();
    expect(await paneViolations(page)).toEqual([]);
  });

  test("compares by hand, and signs on a sheet of its own", async () => {
    await setPaneWidth(page, 480);
    await pane.getByRole("tab", { name: "By hand" }).click();
    const quantity = pane.getByLabel("Quantity");
    await quantity.selectOption("compression_index");
    await pane.getByRole("button", { name: "Add", exact: true }).click();
    await quantity.selectOption("void_ratio_initial");
    await pane.getByRole("button", { name: "Add", exact: true }).click();
    const values = await readNames(page, SHEET, ["compression_index", "void_ratio_initial"]);
    const [Cc, e0] = [values.compression_index[0][0] as number, values.void_ratio_initial[0][0] as number];
    await pane.getByLabel("Compression index Cc, by hand").fill((Cc * 1.03).toFixed(3));
    await pane.getByLabel("Void ratio, initial e0, by hand").fill((e0 * 1.02).toFixed(3));
    await pane.getByText(/^agrees: difference/).waitFor();
    await pane.getByText(/^differs: difference/).waitFor();
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "pane-by-hand-480");
    await pane.getByRole("textbox", { name: "Initials", exact: true }).fill("RV");
    await pane.getByRole("button", { name: "Sign and write down" }).click();
    await told("2 rows of “Demonstration” are on the sheet “Comparison by hand”.");
    const signed = await readNames(page, "Comparison by hand", ["compare_quantity", "compare_result", "compare_by"]);
    expect(signed.compare_result.slice(0, 3).flat()).toEqual(["agrees", "differs", ""]);
    expect(signed.compare_by[1][0]).toBe("RV");
  });

  test("shows the working, and inserts it as a calculation book that follows the sheet", async () => {
    await pane.getByText("Evaluated twice, with units: agrees.").first().waitFor();
    expect(await pane.getByText("Do not use this number").count()).toBe(0);
    await pane
      .getByText(/^e = \(H - H_s\) \/ H_s = \(25\.400? mm - /)
      .first()
      .waitFor();
    await pane.getByRole("button", { name: "Insert as a calculation book" }).click();
    await told("is on the sheet “Calculation book”");
    expect(await sheetNames(page)).toContain("Calculation book");
    const book = await readNames(page, "Calculation book", ["book_quantity", "book_then", "book_now"]);
    expect(book.book_quantity.length).toBeGreaterThan(300);
    book.book_then.forEach(([then], row) => expect(book.book_now[row][0]).toBeCloseTo(then as number, 10));
    await setPaneWidth(page, 320);
    const { shown, content } = await paneWidths(page);
    expect(content).toBe(shown);
    await takePicture(page, "pane-by-hand-320");
    await showSheet(page, "Calculation book");
    await takePicture(page, "sheet-calculation-book");
  });

  test("the page reports no error and sends no request elsewhere", () => expect(host.complaints).toEqual([]));
});
