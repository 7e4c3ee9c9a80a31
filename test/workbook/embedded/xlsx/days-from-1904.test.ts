/** A workbook that counts its days from 1904 shows the same days on the page, which counts from 1900. */
import "../engine-in-node";
import ExcelJS from "exceljs";
import { english } from "../../../../src/reduction/message";
import { UNIX_EPOCH } from "../../../../src/workbook/day-number";
import { openXlsx, saveXlsx } from "../../../../src/workbook/embedded";

/** 9 March 2026, in both counts: Excel's own DATE(2026,3,9) with and without "Use 1904 date system". */
const DAY = { from1900: 46_090, from1904: 44_628 };

async function fileWith(isFrom1904: boolean): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  workbook.properties.date1904 = isFrom1904;
  const sheet = workbook.addWorksheet("Days");
  const put = (at: string, value: ExcelJS.CellValue, numFmt?: string): void => {
    sheet.getCell(at).value = value;
    if (numFmt) sheet.getCell(at).numFmt = numFmt;
  };
  const day = isFrom1904 ? DAY.from1904 : DAY.from1900;
  put("A1", day, "yyyy-mm-dd");
  put("A2", day + 0.5, "m/d/yy h:mm");
  put("A3", day, "mmm-yy");
  put("A4", day, '"Tag" dd\\.mm\\.');
  put("A5", day, "[$-407]mmmm");
  put("B1", 0.25, "h:mm");
  put("B2", 1.5, "[h]:mm:ss");
  put("B3", day);
  put("B4", 2360, '0.0" days"');
  put("B5", 12, "[Red]0.00");
  put("C1", { formula: "A1+1" }, "yyyy-mm-dd");
  put("C2", { formula: "A1-DATE(2026,3,9)" });
  sheet.getCell("A1").dataValidation = {
    ...{ type: "date", operator: "between", allowBlank: true },
    // The library writes a date of a rule as its day in the count from 1900, which is here the number wanted in the file.
    formulae: [day - 10, day + 10].map((bound) => new Date((bound - UNIX_EPOCH) * 86_400_000)),
  };
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

function shown(bytes: Uint8Array): { values: unknown[][]; rules: readonly string[][]; remarks: string[] } {
  const { workbook, remarks } = openXlsx(bytes);
  const { getters } = workbook.model;
  const sheetId = getters.getActiveSheetId();
  const value = (row: number, col: number) => getters.getEvaluatedCell({ sheetId, row, col }).value;
  return {
    values: [0, 1, 2].map((col) => [0, 1, 2, 3, 4].map((row) => value(row, col))),
    rules: getters.getDataValidationRules(sheetId).map(({ criterion }) => criterion.values),
    remarks: remarks.map(english),
  };
}

test("dates in cells, in formulas of them and in rules are converted; times, numbers and other formats are not", async () => {
  const { values, rules, remarks } = shown(await fileWith(true));
  const { from1900, from1904 } = DAY;
  expect(values).toEqual([
    [from1900, from1900 + 0.5, from1900, from1900, from1900],
    [0.25, 1.5, from1904, 2360, 12],
    [from1900 + 1, 0, null, null, null],
  ]);
  expect(rules).toEqual([["2/27/2026", "3/19/2026"]]);
  expect(rules).toEqual(shown(await fileWith(false)).rules);
  expect(remarks).toEqual([
    expect.stringMatching(
      /^The file counts days from 1904 .* the dates in 5 cells were converted and show the same days/,
    ),
  ]);
});

test("a workbook that counts from 1900 is as it was, and so is a converted one that was saved here", async () => {
  const { values, remarks } = shown(await fileWith(false));
  expect(values[0]).toEqual([46_090, 46_090.5, 46_090, 46_090, 46_090]);
  expect(remarks).toEqual([]);
  const again = shown(await saveXlsx(openXlsx(await fileWith(true)).workbook));
  expect(again.values).toEqual(shown(await fileWith(true)).values);
  expect(again.remarks).toEqual([]);
});
