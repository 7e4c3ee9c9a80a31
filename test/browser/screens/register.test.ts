/** The register in a narrow pane: a row is filled on its sheet, the data sheet takes its values; a firm's file is read. */
import ExcelJS from "exceljs";
import type { FrameLocator, Page } from "playwright-core";
import { boxAddress } from "../../../src/workbook/address";
import type { CellValue, NamedColumns } from "../../../src/workbook/port";
import {
  chooseLanguage,
  fillNames,
  paneViolations,
  paneWidths,
  readNames,
  setPaneWidth,
  sheetNames,
  takePicture,
  withBrowser,
} from "../page";

const SHEET = "Demonstration";

/** A file with columns that have the names of a register. */
async function registerFile(diameter: number): Promise<Buffer> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Equipment");
  const columns: Record<string, CellValue[]> = {
    register_length_unit: ["mm"],
    register_kind: ["ring"],
    register_number: ["R-9"],
    register_diameter: [diameter],
  };
  Object.entries(columns).forEach(([name, cells], col) => {
    cells.forEach((value, row) => (sheet.getCell(row + 1, col + 1).value = value));
    workbook.definedNames.add(`Equipment!${boxAddress({ row: 0, col, rows: cells.length, cols: 1 })}`, name);
  });
  return Buffer.from((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
}

withBrowser("the register", (openPage) => {
  let page: Page;
  let pane: FrameLocator;

  const fill = (sheet: string, values: NamedColumns): Promise<void> => fillNames(page, sheet, values);
  const cell = async (name: string, row = 0): Promise<CellValue> =>
    (await readNames(page, SHEET, [name]))[name]![row]![0]!;
  const take = async (): Promise<void> => {
    await pane.getByRole("button", { name: "Take the chosen values" }).focus();
    await page.keyboard.press("Enter");
  };
  const whole = async (): Promise<void> => {
    expect(await paneViolations(page)).toEqual([]);
    const { shown, content } = await paneWidths(page);
    expect(content).toBeLessThanOrEqual(shown);
  };

  beforeAll(async () => {
    ({ page } = await openPage());
    await setPaneWidth(page, 320);
    pane = page.frameLocator("#pane");
    await pane.getByRole("tab", { name: "Data sheet" }).click();
    await pane.getByRole("button", { name: "Look at the register" }).focus();
    await page.keyboard.press("Enter");
    await pane.getByText("This workbook has no register yet.").waitFor();
  });

  test("it is inserted by keyboard, and a ring, a frame and a deflection set are entered on its sheet", async () => {
    await pane.getByRole("button", { name: "Insert a register" }).focus();
    await page.keyboard.press("Enter");
    await pane.getByText("“Register” is inserted").waitFor();
    expect(await sheetNames(page)).toContain("Register");
    await fill("Register", {
      register_kind: ["ring", "deflection set"],
      register_number: ["R-7", "D-1"],
      register_diameter: [63.5],
      register_frame: [null, "F-1"],
      register_set: ["D-1", "D-1"],
      register_set_stress: [12.5, 3200],
      register_set_loading: [0.001, 0.06],
    });
    await takePicture(page, "register-sheet");
  });

  test("a set made from the loads of the sheet is offered, and written below the others", async () => {
    await fill(SHEET, { ring_number: ["R-7"], deflection_set: ["D-2"] });
    await pane.getByText("The register has no deflection set “D-2” (cell").waitFor();
    await pane.getByRole("textbox", { name: "Number of the set" }).fill("D-2");
    await pane.getByRole("button", { name: "Write the set to “Register”" }).focus();
    await page.keyboard.press("Enter");
    await pane.getByText("Deflection set “D-2” is written to “Register”").waitFor();
    const sets = (await readNames(page, "Register", ["register_set"])).register_set!.map(([number]) => number);
    expect(sets.slice(0, 3)).toEqual(["D-1", "D-1", "D-2"]);
    await whole();
    await takePicture(page, "register-set-320");
  });

  test("a lookup is taken live into the data sheet, and follows the register", async () => {
    await fill(SHEET, { deflection_set: ["D-1"] });
    const table = pane.getByRole("checkbox", { name: /^Deflection set, table: 2 rows/ });
    await table.waitFor();
    await pane.getByRole("radio", { name: "as live formulas" }).focus();
    await page.keyboard.press("Space");
    await table.focus();
    await page.keyboard.press("Space");
    await take();
    await pane.getByText(/formulas are written to “Demonstration”/).waitFor();
    expect([
      await cell("deflection_set_frame"),
      await cell("apparatus_stress", 1),
      await cell("apparatus_stress", 2),
    ]).toEqual(["F-1", 3200, ""]);
    expect(await cell("registered_diameter")).not.toBe("");
    await fill("Register", { register_set_loading: [0.002] });
    expect(await cell("apparatus_loading")).toBe(0.002);
    await whole();
    await takePicture(page, "register-320");
  });

  test("a file of the firm is read; its values come in frozen, and a changed file is told of", async () => {
    await fill(SHEET, { ring_number: ["R-9"] });
    const choose = async (diameter: number): Promise<void> =>
      pane
        .locator("input[type=file][accept='.xlsx']")
        .last()
        .setInputFiles({
          name: "equipment.xlsx",
          mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
          buffer: await registerFile(diameter),
        });
    await choose(61.5);
    await pane.getByText("Read: equipment.xlsx, Equipment.").waitFor();
    const diameter = pane.getByRole("checkbox", { name: /^Ring, diameter: 61.5/ });
    if (!(await diameter.isChecked())) await diameter.click();
    await take();
    await pane.getByText(/written to “Demonstration”, with the day/).waitFor();
    expect(await cell("registered_diameter")).toBe(61.5);
    expect(String(await cell("register_source"))).toMatch(
      /^equipment\.xlsx, Equipment, \d{4}-\d\d-\d\d, SHA-256 [0-9a-f]{12}$/,
    );
    await choose(61.4);
    await pane.getByText(/equipment\.xlsx, Equipment has changed since its values were taken on/).waitFor();
    expect(await cell("registered_diameter")).toBe(61.5);
    await whole();
    await takePicture(page, "register-file-320");
  });

  test("in German it has no English left in its parts, and axe finds no fault", async () => {
    await chooseLanguage(page, "de");
    await pane.getByRole("tab", { name: "Datenblatt" }).click();
    await pane.getByRole("button", { name: "Ins Verzeichnis sehen" }).click();
    await pane.getByRole("button", { name: "Verzeichnis aus Datei lesen" }).waitFor();
    await pane.getByText("Verformungssatz aus einem Lauf mit Metallscheibe").waitFor();
    await whole();
    await takePicture(page, "register-german");
  });
});
