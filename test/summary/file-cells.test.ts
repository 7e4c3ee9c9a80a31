/** Reads named cells of .xlsx files without inserting the files. */
import "../workbook/embedded/engine-in-node";
import { readFileSync } from "node:fs";
import path from "node:path";
import ExcelJS from "exceljs";
import { strToU8, zipSync } from "fflate";
import { namedCellsOf } from "../../src/summary/file-cells";
import { readRecord, RECORD_NAMES } from "../../src/record/record";

const bytesOf = async (workbook: ExcelJS.Workbook): Promise<Uint8Array> =>
  new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);

test("returns the values that a sheet shows: numbers, texts, logical values, errors, results of formulas, and blanks as empty texts", async () => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("It's a form");
  sheet.getCell("B2").value = 74.36;
  sheet.getCell("B3").value = 'Clay & "silt" <1>';
  sheet.getCell("B4").value = { formula: "B2*2", result: 148.72 };
  sheet.getCell("B5").value = true;
  sheet.getCell("B6").value = { error: "#N/A" };
  sheet.getCell("B8").value = { richText: [{ text: "rich " }, { text: "text" }] };
  sheet.getCell("B9").value = { formula: 'B3&"x"', result: "joined" };
  for (const [name, at] of [
    ["ring_mass", "$B$2"],
    ["all", "$B$2:$B$9"],
    ["t50_", "$B$4"],
  ])
    workbook.definedNames.add(`'It''s a form'!${at}`, name!);
  workbook.addWorksheet("Other").getCell("A1").value = 1;
  expect(namedCellsOf(await bytesOf(workbook), ["ring_mass", "all", "t50", "absent"])).toEqual([
    {
      sheet: "It's a form",
      values: {
        ring_mass: [[74.36]],
        t50: [[148.72]],
        all: [[74.36], ['Clay & "silt" <1>'], [148.72], [true], ["#N/A"], [""], ["rich text"], ["joined"]],
      },
    },
  ]);
});

test("reads the data sheet of a template by its names", () => {
  const file = new Uint8Array(readFileSync(path.join(__dirname, "../../templates/clayledger-us.xlsx")));
  const [found, ...others] = namedCellsOf(file, RECORD_NAMES);
  expect(others).toEqual([]);
  const record = readRecord(found!.values);
  expect(record.words).toMatchObject({ stress_unit: "tsf", depth_unit: "ft", drainage: "double" });
  expect(record.missing).toEqual([]);
});

test.each<[string, Uint8Array, RegExp]>([
  ["rubbish", new Uint8Array([1, 2, 3]), /no \.xlsx workbook/],
  ["nothing", new Uint8Array(), /no \.xlsx workbook/],
  ["the beginning of a package", new Uint8Array([0x50, 0x4b, 3, 4, 0, 0]), /damaged|\.xlsx/],
  [
    "a workbook that is not XML",
    zipSync({ "xl/workbook.xml": strToU8("<workbook>") }),
    /its part xl\/workbook\.xml is/,
  ],
  ["another package", zipSync({ "word/document.xml": strToU8("<w/>") }), /no \.xlsx workbook/],
])("%s is refused in a sentence", (_, file, says) => {
  expect(() => namedCellsOf(file, ["ring_mass"])).toThrow(says);
});

test("a workbook without the names has no data sheet", async () => {
  const workbook = new ExcelJS.Workbook();
  workbook.addWorksheet("Budget").getCell("A1").value = 3;
  expect(namedCellsOf(await bytesOf(workbook), ["ring_mass"])).toEqual([]);
});
