/** Formulas with functions that the embedded sheet does not have, and with those that it adds, go through a file unchanged. */
import "../engine-in-node";
import ExcelJS from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { english } from "../../../../src/reduction/message";
import { openXlsx } from "../../../../src/workbook/embedded/xlsx/open";
import { unknownIn } from "../../../../src/workbook/embedded/xlsx/opening/unknown-functions";
import { EmbeddedPort } from "../../../../src/workbook/embedded";
import { newWorkbook } from "../../../../src/workbook/embedded/workbook";
import { boxOf } from "../../../../src/workbook/address";
import { saveXlsx } from "../../../../src/workbook/embedded/xlsx/saving/save";
import { complaintsOf } from "../../../ooxml/complaints";
import { registerRealFunctions } from "../real-functions";
import { lightElements, type LightElement } from "../../../../src/workbook/file/light-xml";

beforeAll(() => registerRealFunctions({ blankAs: null }));

const UNKNOWN = [
  "_xlfn.LET(_xlpm.x,2,_xlpm.x*B1)",
  '_xlfn.WEBSERVICE("https://example.org")',
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

const KEPT =
  "The value of the file is saved with a formula that cannot be calculated here until a cell that it reads changes; then an error is saved.";

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
    'The sheet on this page does not have LET, OWNMACRO, VALUETOTEXT, WEBSERVICE: formulas of "S" with it show an error here (4), and so do the cells that read them. They are saved as they stand, and Excel calculates them.',
    KEPT,
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

interface Change {
  put(content: string, at: string): void;
  insertRow(): void;
  undo(): void;
}

/**
 * A file with formulas that the page cannot calculate, and with formulas that read these. Opens it, changes it, saves it, and gives each
 * formula with the kind and the value of its cell, and whether Excel is asked to calculate.
 */
async function savedAfter(change: (workbook: Change) => void, result: string | number = 7) {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("S");
  const put = (at: string, formula: string, value: string | number, more = {}): void =>
    void (sheet.getCell(at).value = { formula, result: value, ...more } as ExcelJS.CellValue);
  [1, 2, 4].forEach((value, i) => (sheet.getCell(i + 2, 2).value = value));
  put("A2", "OWNMACRO(B2)", result);
  put("A3", "IFERROR(A2,0)", result);
  put("A4", "COUNT(A3,A3)+B4", 6);
  put("A5", "SUM(B2:B4)", 7);
  put("A6", "SUM(B2:INDEX(B2:B4,3))", 7);
  put("A7", "OWNMACRO(TODAY())", 7);
  put("A8", "OWNMACRO(B8)", 7);
  put("B8", "TODAY()", 40000);
  put("D2", "OWNMACRO(B2:B4)", 1, { shareType: "array", ref: "D2:D4" });
  [2, 3].forEach((value, i) => (sheet.getCell(i + 3, 4).value = value));
  put("A9", "SUM(D3:D4)", 5);
  const { workbook, remarks } = openXlsx(new Uint8Array(await made.xlsx.writeBuffer()));
  const { model } = workbook;
  const sheetId = model.getters.getSheetIds()[0]!;
  change({
    put: (content, at) => model.dispatch("UPDATE_CELL", { sheetId, ...boxOf(at)!, content }),
    insertRow: () =>
      model.dispatch("ADD_COLUMNS_ROWS", {
        ...{ sheetId, sheetName: "S", dimension: "ROW", base: 0, quantity: 1, position: "before" },
      } as never),
    undo: () => model.dispatch("REQUEST_UNDO"),
  });
  const file = await saveXlsx(workbook);
  const parts = unzipSync(file);
  const text = strFromU8(parts["xl/worksheets/sheet1.xml"] ?? parts["xl/worksheets/sheet0.xml"]!);
  const cells = [...lightElements(text)].flatMap((part) => within(part, "c"));
  const at = (address: string) => {
    const cell = cells.find((one) => one.getAttribute("r") === address)!;
    const [formula] = within(cell, "f");
    return [formula?.textContent, formula?.getAttribute("ref"), cell.getAttribute("t"), within(cell, "v")[0]?.textContent]; // prettier-ignore
  };
  const isAsked = strFromU8(parts["xl/workbook.xml"]!).includes('<calcPr fullCalcOnLoad="1"');
  return { at, isAsked, remarks: remarks.map(english), file };
}

const nothing = (): void => undefined;

test("the value of the file is saved with the formula and with those that read it, and Excel is asked to calculate", async () => {
  const { at, isAsked, remarks } = await savedAfter(nothing);
  expect(["A2", "A3", "A4", "A5", "A6", "A9"].map(at)).toEqual([
    ["OWNMACRO(B2)", null, "n", "7"],
    ["IFERROR(A2,0)", "A3", "n", "7"],
    ["COUNT(A3,A3)+B4", "A4", "n", "6"],
    ["SUM(B2:B4)", "A5", "n", "7"],
    ["SUM(B2:INDEX(B2:B4,3))", null, "n", "7"],
    ["SUM(D3:D4)", "A9", "n", "5"],
  ]);
  expect(isAsked).toBe(true);
  expect(remarks).toEqual([
    expect.stringMatching(/^The sheet on this page does not have OWNMACRO:.*\(4\)/),
    expect.stringMatching(/^The sheet on this page cannot read formulas of "S": they show an error here \(1\)/),
    KEPT,
  ]);
  expect((await savedAfter(nothing, "seven")).at("A2").slice(2)).toEqual(["str", "seven"]);
});

test("an array of the file keeps its cells and their values", async () => {
  const { at, file } = await savedAfter(nothing);
  expect(complaintsOf(file)).toEqual([]);
  expect(["D2", "D3", "D4"].map(at)).toEqual([
    ["OWNMACRO(B2:B4)", "D2:D4", "n", "1"],
    [undefined, undefined, "n", "2"],
    [undefined, undefined, "n", "3"],
  ]);
});

const UNKNOWN_NOW = ["e", "#NAME?"];

test("a value of the file is not saved once a cell that its formula reads has changed, also through other formulas", async () => {
  const { at } = await savedAfter(({ put }) => put("5", "B2"));
  for (const one of ["A2", "A3", "A4", "A6", "D2", "A9"])
    expect([one, ...at(one).slice(2)]).toEqual([one, ...UNKNOWN_NOW]);
  expect(["D3", "D4"].map((one) => at(one).slice(2))).toEqual([UNKNOWN_NOW, UNKNOWN_NOW]);
  expect(at("A5").slice(2)).toEqual(["n", "11"]);
  const other = await savedAfter(({ put }) => put("5", "B4"));
  expect(["A2", "A3", "A4"].map((one) => other.at(one).slice(2))).toEqual([["n", "7"], ["n", "7"], UNKNOWN_NOW]);
});

test("the value is saved again when the change is taken back", async () => {
  const { at } = await savedAfter(({ put, undo }) => {
    put("5", "B2");
    undo();
  });
  expect(["A2", "A3", "A9"].map((one) => at(one).slice(2))).toEqual([["n", "7"], ["n", "7"], ["n", "5"]]); // prettier-ignore
});

test("a value that depends on the day is not saved: the file may be old", async () => {
  const { at } = await savedAfter(() => undefined);
  expect(["A7", "A8"].map((one) => at(one).slice(2))).toEqual([UNKNOWN_NOW, UNKNOWN_NOW]);
});

test("the references of a formula that cannot be read follow their cells", async () => {
  const { at } = await savedAfter(({ insertRow }) => insertRow());
  expect(["A3", "A7", "D3"].map((one) => at(one).slice(0, 2))).toEqual([
    ["OWNMACRO(B3)", null],
    ["SUM(B3:INDEX(B3:B5,3))", null],
    ["OWNMACRO(B3:B5)", "D3:D5"],
  ]);
  expect(["A3", "A4", "A10"].map((one) => at(one).slice(2))).toEqual([UNKNOWN_NOW, UNKNOWN_NOW, UNKNOWN_NOW]);
});

/** A file with a formula of a name that fills A1:A3, a formula like it of one cell, and a formula that reads the filled cells. */
async function fileWithArray(): Promise<Uint8Array<ArrayBuffer>> {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("S");
  made.definedNames.add("S!$B$1:$B$3", "given");
  [1, 2, 3].forEach((value, i) => (sheet.getCell(i + 1, 2).value = value));
  const filling = { formula: "OWNMACRO(given,B1:B3)", result: 1, shareType: "array", ref: "A1:A3" };
  sheet.getCell("A1").value = filling as unknown as ExcelJS.CellValue;
  sheet.getCell("C1").value = { formula: "SUM(A2:A3)", date1904: false, result: 5 };
  return new Uint8Array(await made.xlsx.writeBuffer());
}

const FILLED = [
  ["#NAME?", 1, "#NAME?"],
  ["#NAME?", 2, ""],
  ["#NAME?", 3, ""],
];

/** The references of the formulas of arrays in the sheets of a saved workbook. */
async function arraysIn(port: EmbeddedPort): Promise<(string | undefined)[]> {
  const parts = unzipSync(await saveXlsx(port.workbook));
  return Object.entries(parts)
    .filter(([name]) => name.startsWith("xl/worksheets/sheet"))
    .map(([, part]) => /ref="([A-Z0-9:]+)">OWNMACRO/.exec(strFromU8(part))?.[1]);
}

test("a copied sheet shows the error in the cells that its formula fills, also after undo and redo", async () => {
  const { workbook } = openXlsx(await fileWithArray());
  const port = new EmbeddedPort(workbook);
  const { model } = workbook;
  const dispatch = (type: string, payload = {}) => model.dispatch(type as never, payload as never);
  const [from] = model.getters.getSheetIds();
  dispatch("DUPLICATE_SHEET", { sheetId: from, sheetIdTo: "copy", sheetNameTo: "Copy" });
  expect(await port.values("Copy", "A1:C3")).toEqual(FILLED);
  dispatch("REQUEST_UNDO");
  dispatch("REQUEST_REDO");
  expect(await port.values("Copy", "A1:C3")).toEqual(FILLED);
  dispatch("DUPLICATE_SHEET", { sheetId: "copy", sheetIdTo: "second", sheetNameTo: "Second" });
  expect(await port.values("Second", "A1:C3")).toEqual(FILLED);
  expect(await arraysIn(port)).toEqual(["A1:A3", "A1:A3", "A1:A3"]);
});

test("a formula whose name is renamed fills its cells as before, also on a copied sheet, and is saved with the new name", async () => {
  const { workbook } = openXlsx(await fileWithArray());
  const port = new EmbeddedPort(workbook);
  const { model } = workbook;
  const [sheetId] = model.getters.getSheetIds();
  const ranges = [{ _sheetId: sheetId, _zone: { left: 1, right: 1, top: 0, bottom: 2 } }];
  model.dispatch("UPDATE_NAMED_RANGE", { oldRangeName: "given", newRangeName: "read", ranges } as never);
  model.dispatch("UPDATE_CELL", { sheetId: sheetId!, col: 1, row: 1, content: "5" });
  expect((await port.values("S", "A1:C3")).map(([filled]) => filled)).toEqual(["#NAME?", "#NAME?", "#NAME?"]);
  expect(await arraysIn(port)).toEqual(["A1:A3"]);
  model.dispatch("DUPLICATE_SHEET", { sheetId: sheetId!, sheetIdTo: "copy", sheetNameTo: "Copy" });
  expect((await port.values("Copy", "A1:A3")).flat()).toEqual(["#NAME?", "#NAME?", "#NAME?"]);
  const [, sheet] = Object.entries(unzipSync(await saveXlsx(workbook))).find(([path]) => path.includes("worksheets"))!;
  expect(strFromU8(sheet)).toContain(">OWNMACRO(read,B1:B3)<");
});

test("an inserted file shows it again after undo and redo, and a cell that was typed in between does not", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const { sheets } = await port.insertFile(await fileWithArray());
  const dispatch = (type: string, payload = {}) => port.workbook.model.dispatch(type as never, payload as never);
  dispatch("REQUEST_UNDO");
  dispatch("REQUEST_REDO");
  expect(await port.values(sheets[0]!, "A1:C3")).toEqual(FILLED);
  dispatch("REQUEST_UNDO");
  const [sheetId] = port.workbook.model.getters.getSheetIds();
  // The ids of the cells that were undone are given to these.
  for (let row = 0; row < 9; row++)
    dispatch("UPDATE_CELL", { sheetId, col: 0, row: 2 * row, content: "=OWNMACRO(B1)" });
  expect(await port.values("Sheet1", "A1:A6")).toEqual([["#NAME?"], [""], ["#NAME?"], [""], ["#NAME?"], [""]]);
});

test("a file that is inserted shows the error in the cells that the formula fills, and in those that read them", async () => {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("S");
  [1, 2, 3].forEach((value, i) => (sheet.getCell(i + 1, 2).value = value));
  const filling = { formula: "OWNMACRO(B1:B3)", result: 1, shareType: "array", ref: "A1:A3" };
  sheet.getCell("A1").value = filling as unknown as ExcelJS.CellValue;
  sheet.getCell("C1").value = { formula: "SUM(A2:A3)", date1904: false, result: 5 };
  const port = new EmbeddedPort(newWorkbook());
  const { remarks, sheets } = await port.insertFile(new Uint8Array(await made.xlsx.writeBuffer()));
  const values = await port.values(sheets[0]!, "A1:C3");
  expect(remarks.map(english)).toEqual([expect.stringMatching(/^The sheet on this page does not have OWNMACRO/)]);
  expect(values).toEqual([
    ["#NAME?", 1, "#NAME?"],
    ["#NAME?", 2, ""],
    ["#NAME?", 3, ""],
  ]);
});

test("another formula has no value of the file, and one that can be calculated has its own", async () => {
  expect((await savedAfter(({ put }) => put("=OWNMACRO(B3)", "A2"))).at("A2").slice(2)).toEqual(UNKNOWN_NOW);
  const { at } = await savedAfter(({ put }) => put("=SUM(B2:B4)", "A2"));
  expect(["A2", "A3", "A4"].map((one) => at(one).slice(2))).toEqual([["n", "7"], ["n", "7"], ["n", "6"]]); // prettier-ignore
});

test("without a formula that cannot be calculated Excel is not asked", async () => {
  const { isAsked } = await savedAfter(({ put }) => {
    for (const one of ["A2", "A6", "A7", "A8", "D2"]) put("1", one);
  });
  expect(isAsked).toBe(false);
});

test.each([
  ["SUM(A1:B2)+IF(A1,LOG10(2),CLAY.STRAIN(3))", []],
  ["\"NOSUCH(1)\"&'Sheet NOSUCH(2)'!A1", []],
  ["nosuch(1)+Sheet1!A1*(2+NO.SUCH(LET(x,1,x)))", ["NOSUCH", "NO.SUCH", "LET"]],
])("of %s the page does not have %j", (formula, names) => {
  expect(unknownIn(formula)).toEqual(names);
});
