/** Formulas with functions that the embedded sheet does not have, and with those that it adds, go through a file unchanged. */
import "../engine-in-node";
import ExcelJS from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { openXlsx } from "../../../../src/workbook/embedded/xlsx/open";
import { saveXlsx } from "../../../../src/workbook/embedded/xlsx/saving/save";
import { registerRealFunctions } from "../real-functions";
import { lightElements, type LightElement } from "../../../../src/workbook/file/light-xml";

beforeAll(() => registerRealFunctions({ blankAs: null }));

const UNKNOWN = [
  "_xlfn.LET(_xlpm.x,2,_xlpm.x*B1)",
  "_xlfn.AGGREGATE(9,6,B1:B3)",
  "_xlfn.NORM.S.INV(0.975)",
  "_xlfn.VALUETOTEXT(B1)",
  "OWNMACRO(B1)",
];
const ADDED = [
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
  const { workbook } = openXlsx(new Uint8Array(await made.xlsx.writeBuffer()));
  const parts = unzipSync(await saveXlsx(workbook));
  const text = strFromU8(parts["xl/worksheets/sheet1.xml"] ?? parts["xl/worksheets/sheet0.xml"]!);
  const cells = [...lightElements(text)].flatMap((part) => within(part, "c"));
  const inColumnA = cells.filter((cell) => /^A\d/.test(cell.getAttribute("r") ?? ""));
  expect(inColumnA.map((cell) => within(cell, "f")[0]?.textContent)).toEqual(formulas);
  expect(inColumnA.slice(UNKNOWN.length).map((cell) => within(cell, "v")[0]?.textContent)).toEqual([
    "1",
    "11",
    "1.5",
    "3",
    "2",
  ]);
});
