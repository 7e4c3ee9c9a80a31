/** Small sheets saved to a file and opened again keep what the engine alone would lose. */
import { english } from "../../../src/reduction/message";
import "./engine-in-node";
import ExcelJS from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx, type OpenWorkbook } from "../../../src/workbook/embedded";
import type { SheetPlan } from "../../../src/workbook/port";

const small = (sheet: Partial<SheetPlan>): SheetPlan => ({
  ...{ name: "Small", rows: 9, cols: 3, cells: [], names: {}, columnWidths: {}, merges: [], freezeRows: 0 },
  ...sheet,
});
/** Cells, kind, title and sentence of each rule on a sheet of the file. */
const rulesOf = (bytes: Uint8Array, sheet: number) =>
  [...strFromU8(unzipSync(bytes)[`xl/worksheets/sheet${sheet}.xml`]).matchAll(/<dataValidation [^>]*>/g)]
    .map(([tag]) =>
      ["sqref", "type", "errorTitle", "error"].map((key) => new RegExp(` ${key}="([^"]*)"`).exec(tag)?.[1]),
    )
    .sort();

test("the messages of its rules are kept, through a file and into another workbook", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const box = (row: number) => ({ row, col: 1, rows: 2, cols: 1 });
  await port.insertSheet(
    small({
      cells: [{ row: 0, col: 1, kind: "input", choices: ["SI", "US"] }],
      entries: [
        { box: box(2), kind: "number", least: 0, message: "The mass in grams." },
        { box: box(4), kind: "number", least: 0, message: "The height, not less than 0." },
        { box: box(6), kind: "date", least: 36526, message: "A day of this century." },
      ],
    }),
  );
  const saved = await saveXlsx(port.workbook);
  const rules = [
    ["B1", "list", "Not in the list", "Choose one of: SI, US."],
    ["B3:B4", "decimal", "Not a number that fits", "The mass in grams."],
    ["B5:B6", "decimal", "Not a number that fits", "The height, not less than 0."],
    ["B7:B8", "date", "Not a date", "A day of this century."],
  ];
  expect(rulesOf(saved, 1)).toEqual(rules);
  expect(rulesOf(await saveXlsx(openXlsx(saved).workbook), 1)).toEqual(rules);
  const other = new EmbeddedPort(newWorkbook());
  await other.insertFile(saved);
  expect(rulesOf(await saveXlsx(other.workbook), 2)).toEqual(rules);
});

test("the hint that a rule of another program shows before an entry is kept", async () => {
  const made = new ExcelJS.Workbook();
  made.addWorksheet("Firm").getCell("B2").dataValidation = {
    ...{ type: "decimal", operator: "between", formulae: [0, 10], showErrorMessage: true, showInputMessage: true },
    ...{ errorTitle: "No", error: "0 & 10 <at most>", promptTitle: "Mass", prompt: "In grams" },
  };
  const opened = openXlsx(new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer)).workbook;
  const again = new ExcelJS.Workbook();
  await again.xlsx.load((await saveXlsx(opened)).buffer as ArrayBuffer);
  expect(again.worksheets[0].getCell("B2").dataValidation).toMatchObject({
    ...{ errorTitle: "No", error: "0 & 10 <at most>", promptTitle: "Mass", prompt: "In grams" },
  });
});

test("line breaks that fit texts to their cells, and heights of rows, are kept", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const text = "A long remark that is to be broken into lines";
  const name = await port.insertSheet(
    small({ cells: [{ row: 1, col: 0, kind: "note", value: text, wrap: true }], rowHeights: { 1: 42 } }),
  );
  const check = ({ model: { getters } }: OpenWorkbook) => {
    const sheetId = getters.getSheetIdByName(name)!;
    expect(getters.getCellStyle({ sheetId, row: 1, col: 0 })).toMatchObject({
      wrapping: "wrap",
      verticalAlign: "top",
    });
    expect(getters.getRowSize(sheetId, 1)).toBe(56);
    expect(getters.getRowSize(sheetId, 2)).toBeLessThan(30);
  };
  check(port.workbook);
  const saved = await saveXlsx(port.workbook);
  const other = new ExcelJS.Workbook();
  await other.xlsx.load(saved.buffer as ArrayBuffer);
  expect(other.getWorksheet(name)!.getRow(2).height).toBeCloseTo(42, 1);
  expect(other.getWorksheet(name)!.getCell("A2").alignment).toMatchObject({ wrapText: true, vertical: "top" });
  check(openXlsx(saved).workbook);
});

test("an apostrophe in a sheet name becomes ’, in references and names too, and a remark says so", async () => {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("O'Brien & Co's");
  sheet.getCell("A1").value = 7;
  sheet.getCell("A2").value = { formula: "'O''Brien & Co''s'!A1*2", result: 14 };
  made.addWorksheet("Other").getCell("A1").value = {
    formula: `'O''Brien & Co''s'!A1&"O'Brien's"`,
    result: "7O'Brien's",
  };
  made.definedNames.add("'O''Brien & Co''s'!$A$1", "mass");
  const { workbook, remarks } = openXlsx(new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer));
  const port = new EmbeddedPort(workbook);
  expect(remarks.map(english)).toEqual([
    expect.stringMatching(/^The sheet "O'Brien & Co's" is called "O’Brien & Co’s" here/),
  ]);
  expect(await port.sheetNames()).toEqual(["O’Brien & Co’s", "Other"]);
  expect(await port.values("O’Brien & Co’s", "A1:A2")).toEqual([[7], [14]]);
  expect(await port.values("Other", "A1")).toEqual([["7O'Brien's"]]);
  expect(await port.readNames("O’Brien & Co’s", ["mass"])).toEqual({ mass: [[7]] });
  expect(await new EmbeddedPort(newWorkbook()).insertSheet(small({ name: "O'Brien" }))).toBe("O’Brien");
});

test("texts with characters that XML cannot hold are kept, and texts that look like the spelling of one", async () => {
  const texts = ["a bell\u0007", "_x0041_ is no escape", "_x00", "plain"];
  const port = new EmbeddedPort(newWorkbook());
  const name = await port.insertSheet(
    small({
      cells: [
        ...texts.map((value, row) => ({ row, col: 0, kind: "note" as const, value, note: value })),
        { row: 0, col: 1, kind: "result", formula: "=A1" },
      ],
    }),
  );
  const saved = await saveXlsx(port.workbook);
  const opened = new EmbeddedPort(openXlsx(saved).workbook);
  expect(await opened.values(name, `A1:A${texts.length}`)).toEqual(texts.map((text) => [text]));
  expect(await opened.values(name, "B1")).toEqual([[texts[0]]]);
  const other = new ExcelJS.Workbook();
  await other.xlsx.load(saved.buffer as ArrayBuffer);
  expect(texts.map((_, row) => other.getWorksheet(name)!.getCell(row + 1, 1).value)).toEqual(texts);
});

test("an error constant is an error in the file, and a text that looks like one is a text", async () => {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("Firm");
  sheet.getCell("A1").value = { error: "#N/A" };
  sheet.getCell("A2").value = "#N/A";
  const { workbook } = openXlsx(new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer));
  const again = new ExcelJS.Workbook();
  await again.xlsx.load((await saveXlsx(workbook)).buffer as ArrayBuffer);
  expect(["A1", "A2"].map((at) => again.worksheets[0].getCell(at).value)).toEqual([{ error: "#N/A" }, "#N/A"]);
});

test("the sheet in front is in front when another program opens the file", async () => {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(small({}));
  await port.insertSheet(small({ behind: true }));
  const other = new ExcelJS.Workbook();
  await other.xlsx.load((await saveXlsx(port.workbook)).buffer as ArrayBuffer);
  expect(other.views[0].activeTab).toBe(1);
});

test("hidden rows and columns, and frozen ones, are kept", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const name = await port.insertSheet(small({ cells: [{ row: 7, col: 2, kind: "note", value: 1 }], freezeRows: 2 }));
  const sheetId = port.workbook.model.getters.getSheetIdByName(name)!;
  const dispatch = (type: string, payload: object) =>
    (port.workbook.model as any).dispatch(type, { sheetId, ...payload });
  dispatch("HIDE_COLUMNS_ROWS", { dimension: "ROW", elements: [3, 4, 12] });
  dispatch("HIDE_COLUMNS_ROWS", { dimension: "COL", elements: [1] });
  dispatch("FREEZE_COLUMNS", { quantity: 1 });
  expect(await port.hidden(name)).toEqual({ rows: [3, 4, 12], cols: [1] });
  const saved = await saveXlsx(port.workbook);
  const again = new EmbeddedPort(openXlsx(saved).workbook);
  const inserted = new EmbeddedPort(newWorkbook());
  await inserted.insertFile(saved);
  for (const other of [again, inserted]) {
    const { getters } = other.workbook.model;
    expect(await other.hidden(name)).toEqual({ rows: [3, 4, 12], cols: [1] });
    expect(getters.getPaneDivisions(getters.getSheetIdByName(name)!)).toEqual({ xSplit: 1, ySplit: 2 });
  }
});

test("a remark names the rules that the engine does not know", async () => {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("Firm");
  sheet.getCell("B2").dataValidation = { type: "whole", operator: "between", formulae: [0, 10] };
  sheet.getCell("B3").dataValidation = { type: "decimal", operator: "between", formulae: [0, 10] };
  const { remarks } = openXlsx(new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer));
  expect(remarks.map(english)).toEqual([
    expect.stringMatching(/^Rules of "Firm" for whole numbers.*\(1\) were left out/),
  ]);
});

test("twelve narrow columns are printed in portrait, sixteen wider ones in landscape", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const widths = (count: number, characters: number) => Object.fromEntries(Array(count).fill(characters).entries());
  const page = (cols: number) => ({ cols, pages: [{ row: 0, col: 0, rows: 9, cols }] });
  await port.insertSheet(small({ name: "Narrow", ...page(12), columnWidths: widths(12, 8) }));
  await port.insertSheet(small({ name: "Wide", ...page(16), columnWidths: widths(16, 9) }));
  const other = new ExcelJS.Workbook();
  await other.xlsx.load((await saveXlsx(port.workbook)).buffer as ArrayBuffer);
  expect(["Narrow", "Wide"].map((name) => other.getWorksheet(name)!.pageSetup.orientation)).toEqual([
    "portrait",
    "landscape",
  ]);
});

test.each(["Test {mass}", '5" ring', "a!b", "BH-1 100%"])(
  "formulas on a sheet called %s, and from another one, are kept in files and in other workbooks",
  async (called) => {
    const port = new EmbeddedPort(newWorkbook());
    const name = await port.insertSheet(
      small({
        name: called,
        cells: [
          { row: 0, col: 0, kind: "input", value: 7 },
          { row: 1, col: 0, kind: "result", formula: "={mass}*2" },
        ],
        names: { mass: { row: 0, col: 0, rows: 1, cols: 1 } },
      }),
    );
    expect(name).toBe(called);
    const other = await port.insertSheet(
      small({ name: "Other", cells: [{ row: 0, col: 0, kind: "result", formula: `='${called}'!$A$1+1` }] }),
    );
    const saved = await saveXlsx(port.workbook);
    const opened = new EmbeddedPort(openXlsx(saved).workbook);
    for (const each of [port, opened]) {
      expect(await each.values(name, "A2")).toEqual([[14]]);
      expect(await each.values(other, "A1")).toEqual([[8]]);
    }
    const [, copy, otherCopy] = (await opened.insertFile(saved)).sheets;
    await opened.fillNames(copy, { mass: [9] });
    expect([await opened.values(copy, "A2"), await opened.values(otherCopy, "A1")]).toEqual([[[18]], [[10]]]);
    expect([await opened.values(name, "A2"), await opened.values(other, "A1")]).toEqual([[[14]], [[8]]]);
    expect(await opened.readContents(copy, ["mass"])).toEqual({ mass: [[9]] });
  },
);

test("a file is not inserted into a workbook that was opened while the file was read", async () => {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(small({ cells: [{ row: 0, col: 0, kind: "result", formula: "=1+1" }] }));
  const saved = await saveXlsx(port.workbook);
  const inserted = port.insertFile(saved);
  port.attach(newWorkbook());
  await expect(inserted).rejects.toThrow("Another workbook was opened while the file was read. Nothing was inserted");
  expect(await port.sheetNames()).toEqual(["Sheet1"]);
});
