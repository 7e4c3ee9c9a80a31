/** A workbook that counts its days from 1904 shows the same days on the page, which counts from 1900. */
import "../engine-in-node";
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
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

/** Formats as Excel writes them for Japanese, Chinese, Korean and Thai; the last shows a number, the one before a time. */
const EAST_ASIAN = [
  'yyyy"年"m"月"d"日"',
  "[$-411]ge.m.d",
  '[$-411]ggge"年"',
  "[$-804]aaaa",
  '[$-804]yyyy"年"m"月"',
  "[$-412]m\\/d",
  "[$-D07041E]bbbb",
  '上午/下午h"时"mm"分"',
  '0.0_m"年"',
];

test("dates in East Asian formats are converted, of the file's own and built-in, and times are not", async () => {
  const workbook = new ExcelJS.Workbook();
  workbook.properties.date1904 = true;
  const sheet = workbook.addWorksheet("Days");
  EAST_ASIAN.forEach((numFmt, row) => {
    sheet.getCell(row + 1, 1).value = row === 7 ? 0.25 : DAY.from1904;
    sheet.getCell(row + 1, 1).numFmt = numFmt;
  });
  // Built-in formats: 27 and 57 show days everywhere, 55 days or times, 32 times.
  const builtIn = ["27", "57", "55", "55", "32"];
  [DAY.from1904, DAY.from1904, DAY.from1904, 0.25, 0.25].forEach((value, row) => {
    sheet.getCell(row + 1, 2).value = value;
    sheet.getCell(row + 1, 2).numFmt = `"format ${builtIn[row]}"0`;
  });
  const { bytes } = { bytes: new Uint8Array(await workbook.xlsx.writeBuffer()) };
  const parts = unzipSync(bytes);
  let styles = strFromU8(parts["xl/styles.xml"]!);
  for (const number of new Set(builtIn)) {
    const [, id] = new RegExp(`numFmtId="(\\d+)" formatCode="&quot;format ${number}&quot;0"`).exec(styles)!;
    styles = styles.replaceAll(`numFmtId="${id}"`, `numFmtId="${number}"`);
  }
  styles = styles.replace(/<numFmt numFmtId="\d\d" [^>]*\/>/g, "").replace(/<numFmts count="\d+"/, "<numFmts");
  const { model } = openXlsx(zipSync({ ...parts, "xl/styles.xml": strToU8(styles) })).workbook;
  const sheetId = model.getters.getActiveSheetId();
  const values = (col: number, rows: number) =>
    Array.from({ length: rows }, (_, row) => model.getters.getEvaluatedCell({ sheetId, row, col }).value);
  const { from1900, from1904 } = DAY;
  expect(values(0, 9)).toEqual([...Array<number>(7).fill(from1900), 0.25, from1904]);
  expect(values(1, 5)).toEqual([from1900, from1900, from1900, 0.25, 0.25]);
});

test("days that bound conditional formats of cells with days are converted, other numbers are not", async () => {
  const workbook = new ExcelJS.Workbook();
  workbook.properties.date1904 = true;
  const sheet = workbook.addWorksheet("Days");
  sheet.getCell("A1").value = DAY.from1904;
  sheet.getCell("A1").numFmt = "yyyy-mm-dd";
  sheet.getCell("B1").value = DAY.from1904;
  for (const ref of ["A1:A9", "B1:B9"])
    sheet.addConditionalFormatting({
      ref,
      rules: [
        {
          ...{ type: "cellIs", operator: "between", priority: 1 },
          formulae: [DAY.from1904 - 1, DAY.from1904 + 1],
          style: { font: { bold: true } },
        },
      ],
    });
  const { model } = openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer())).workbook;
  const formats = model.getters.getConditionalFormats(model.getters.getActiveSheetId());
  const limits = formats.map(({ rule }) => "values" in rule && rule.values.map(Number));
  const around = (day: number) => [day - 1, day + 1];
  expect(limits).toEqual([around(DAY.from1900), around(DAY.from1904)]);
});
