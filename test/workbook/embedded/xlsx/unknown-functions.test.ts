/** Formulas with functions that the embedded sheet does not have, and with those that it adds, go through a file unchanged. */
import "../engine-in-node";
import ExcelJS from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { english } from "../../../../src/reduction/message";
import { openXlsx } from "../../../../src/workbook/embedded/xlsx/open";
import { unknownIn } from "../../../../src/workbook/embedded/xlsx/opening/unknown-functions";
import { saveXlsx } from "../../../../src/workbook/embedded/xlsx/saving/save";
import { complaintsOf } from "../../../ooxml/complaints";
import { registerRealFunctions } from "../real-functions";
import { lightElements, type LightElement } from "../../../../src/workbook/file/light-xml";

beforeAll(() => registerRealFunctions({ blankAs: null }));

const UNKNOWN = [
  "_xlfn.LET(_xlpm.x,2,_xlpm.x*B1)",
  "_xlfn.AGGREGATE(9,6,B1:B3)",
  "_xlfn.VALUETOTEXT(B1)",
  "OWNMACRO(B1)",
];
const ADDED = [
  "_xlfn.NORM.S.INV(0.5)",
  "SIGN(B1)",
  "REPT(B1,2)",
  "_xlfn.FORECAST.LINEAR(3,B1:B3,C1:C3)",
  "_xlfn.RANK.AVG(B1,B1:B3)",
  "_xlfn.XMATCH(B2,B1:B3)",
];

const within = (element: LightElement, name: string): LightElement[] =>
  element.children.flatMap((child) => [...(child.localName === name ? [child] : []), ...within(child, name)]);

test("a file keeps them as Excel spells them, and shows the values of those that are added", async () => {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("S");
  const formulas = [...UNKNOWN, ...ADDED];
  formulas.forEach((formula, i) => (sheet.getCell(i + 1, 1).value = { formula, date1904: false, result: 7 }));
  [1, 2, 4].forEach((value, i) => (sheet.getRow(i + 1).values = [sheet.getCell(i + 1, 1).value, value, 2 * value]));
  const { workbook, remarks } = openXlsx(new Uint8Array(await made.xlsx.writeBuffer()));
  expect(remarks.map(english)).toEqual([
    'The sheet on this page does not have AGGREGATE, LET, OWNMACRO, VALUETOTEXT: formulas of "S" with it show an error here (4), and so do the cells that read them. They are saved as they stand, and Excel calculates them.',
  ]);
  const file = await saveXlsx(workbook);
  expect(complaintsOf(file)).toEqual([]);
  const parts = unzipSync(file);
  const text = strFromU8(parts["xl/worksheets/sheet1.xml"] ?? parts["xl/worksheets/sheet0.xml"]!);
  const cells = [...lightElements(text)].flatMap((part) => within(part, "c"));
  const inColumnA = cells.filter((cell) => /^A\d/.test(cell.getAttribute("r") ?? ""));
  expect(inColumnA.map((cell) => within(cell, "f")[0]?.textContent)).toEqual(formulas);
  expect(inColumnA.slice(UNKNOWN.length).map((cell) => within(cell, "v")[0]?.textContent)).toEqual([
    "0",
    "1",
    "11",
    "1.5",
    "3",
    "2",
  ]);
});

/** Opens a workbook with one formula that the page cannot calculate, and gives the cell and the workbook's part after `change` and saving. */
async function savedAfter(result: string | number, change: (model: any) => void) {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("S");
  sheet.getCell("A1").value = { formula: "_xlfn.AGGREGATE(9,6,B1:B3)", date1904: false, result };
  [1, 2, 4].forEach((value, i) => (sheet.getCell(i + 1, 2).value = value));
  const { workbook } = openXlsx(new Uint8Array(await made.xlsx.writeBuffer()));
  const { model } = workbook;
  change({
    put: (content: string, col = 0) =>
      model.dispatch("UPDATE_CELL", { sheetId: model.getters.getSheetIds()[0]!, col, row: 0, content }),
  });
  const parts = unzipSync(await saveXlsx(workbook));
  const text = strFromU8(parts["xl/worksheets/sheet1.xml"] ?? parts["xl/worksheets/sheet0.xml"]!);
  const cell = [...lightElements(text)]
    .flatMap((part) => within(part, "c"))
    .find((one) => one.getAttribute("r") === "A1")!;
  const asked = strFromU8(parts["xl/workbook.xml"]!).includes('<calcPr fullCalcOnLoad="1"');
  return [cell.getAttribute("t"), within(cell, "v")[0]?.textContent, asked];
}

test("the value of the file is saved with the formula, and Excel is asked to calculate", async () => {
  const nothing = (): void => undefined;
  expect(await savedAfter(7, nothing)).toEqual(["n", "7", true]);
  expect(await savedAfter("seven", nothing)).toEqual(["str", "seven", true]);
  expect(await savedAfter(7, ({ put }) => put("5", 1))).toEqual(["n", "7", true]);
});

test("another formula has no value, and without a formula that the page cannot calculate Excel is not asked", async () => {
  expect(await savedAfter(7, ({ put }) => put("=AGGREGATE(4,6,B1:B3)"))).toEqual(["e", "#NAME?", true]);
  expect(await savedAfter(7, ({ put }) => put("=SUM(B1:B3)"))).toEqual(["n", "7", false]);
});

test.each([
  ["SUM(A1:B2)+IF(A1,LOG10(2),CLAY.STRAIN(3))", []],
  ["\"NOSUCH(1)\"&'Sheet NOSUCH(2)'!A1", []],
  ["nosuch(1)+Sheet1!A1*(2+NO.SUCH(LET(x,1,x)))", ["NOSUCH", "NO.SUCH", "LET"]],
])("of %s the page does not have %j", (formula, names) => {
  expect(unknownIn(formula)).toEqual(names);
});
