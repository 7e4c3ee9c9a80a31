/** A workbook with a summary, saved as .xlsx: its data sheet is read by its names, and the summary's formulas name the sheet. */
import "../workbook/embedded/engine-in-node";
import ExcelJS from "exceljs";
import { demoSheet } from "../../src/datasheet";
import { readRecord, RECORD_NAMES } from "../../src/record/record";
import { namedCellsOf } from "../../src/summary/file-cells";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../src/workbook/embedded";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

beforeAll(() => registerRealFunctions({ blankAs: null }));

test("what the file shows is what the sheet showed, and a reference to another sheet's name leads there again", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const sheet = await port.insertSheet(demoSheet("SI"));
  await port.writeCells("Sheet1", [{ row: 0, col: 0, formula: `={'${sheet}'!preconsolidation_stress}` }]);
  const [shown] = await port.lookAt([{ sheet, values: RECORD_NAMES }]);
  const file = await saveXlsx(port.workbook);

  const [read, ...others] = namedCellsOf(file, RECORD_NAMES);
  expect([read?.sheet, others]).toEqual([sheet, []]);
  expect(readRecord(read!.values).results).toEqual(readRecord(shown!.values).results);

  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(file.buffer as ArrayBuffer);
  expect(workbook.getWorksheet("Sheet1")!.getCell("A1").formula).toMatch(/^'?Demonstration'?!preconsolidation_stress$/);

  const again = new EmbeddedPort(openXlsx(file).workbook);
  await again.nameAll("Sheet1", [{ name: "linked", address: "A1" }]);
  expect((await again.readContents("Sheet1", ["linked"])).linked).toEqual([[`='${sheet}'!preconsolidation_stress`]]);
  expect(await again.values("Sheet1", "A1")).toEqual(await port.values("Sheet1", "A1"));
});
