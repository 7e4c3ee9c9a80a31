/** Sheets whose names Excel would read as cells or numbers, in every formula that the page saves. */
import "../workbook/embedded/engine-in-node";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../src/workbook/embedded";
import type { OpenWorkbook } from "../../src/workbook/embedded/workbook";
import type { SheetPlan } from "../../src/workbook/port";
import { fileWithChart } from "../workbook/contract-files";
import { complaintsOf } from "./complaints";
import { elements, Package } from "./package";
import { textOf } from "./package-rules";

const READ_AS_CELLS = ["BH1", "xfd7", "R1", "c", "RC12Test", "R1C1", "2026", "TRUE"];
/** Names that Excel leaves without apostrophes. */
const PLAIN = ["Test", "XFE1", "X1b", "CV", "Rings"];

const sheet = (name: string, cells: SheetPlan["cells"]): SheetPlan => ({
  ...{ name, cells, rows: 20, cols: 4, names: {}, merges: [], columnWidths: {}, freezeRows: 0 },
});

const formulas = (names: readonly string[]): SheetPlan["cells"] =>
  names.map((name, row) => ({ row, col: 0, kind: "result", formula: `='${name}'!A1&" BH1!A1"&SUM('${name}'!A1:A2)` }));

async function withSheets(names: readonly string[]): Promise<OpenWorkbook> {
  const port = new EmbeddedPort(newWorkbook());
  for (const name of names) await port.insertSheet(sheet(name, [{ row: 0, col: 0, kind: "input", value: 7 }]));
  await port.insertSheet(sheet("Out", formulas(names)));
  return port.workbook;
}

const writtenIn = (file: Package, name: string): string[] =>
  file.paths
    .filter((path) => /(worksheet|drawingml\.chart)\+xml$/.test(file.typeOf(path) ?? ""))
    .flatMap((path) => elements(file.xml(path), name).map((one) => textOf(one)));

test("formulas of cells have them in apostrophes, give the same when the file is opened, and a text stays as it is", async () => {
  const names = [...READ_AS_CELLS, ...PLAIN];
  const bytes = await saveXlsx(await withSheets(names));
  expect(complaintsOf(bytes)).toEqual([]);
  const inFile = (name: string): string => (READ_AS_CELLS.includes(name) ? `'${name}'` : name);
  expect(writtenIn(new Package(bytes), "f")).toEqual(
    names.map((name) => `${inFile(name)}!A1&" BH1!A1"&SUM(${inFile(name)}!A1:A2)`),
  );
  const shown = await new EmbeddedPort(openXlsx(bytes).workbook).values("Out", `A1:A${names.length}`);
  expect(shown).toEqual(names.map(() => ["7 BH1!A17"]));
});

test("so have rules of entry and conditional formats", async () => {
  const workbook = await withSheets(["BH1"]);
  const { model } = workbook;
  const sheetId = model.getters.getSheetIds().at(-1)!;
  const ranges = [{ _zone: { left: 2, right: 2, top: 0, bottom: 4 }, _sheetId: sheetId }];
  const rule = { id: "r", criterion: { type: "isGreaterThan", values: ["=BH1!A1"] }, isBlocking: true };
  const looks = { type: "CellIsRule", operator: "isGreaterThan", values: ["=BH1!A1"], style: { bold: true } };
  expect(model.dispatch("ADD_DATA_VALIDATION_RULE", { sheetId, ranges, rule } as never).isSuccessful).toBe(true);
  const cf = { id: "looks", rule: looks };
  expect(model.dispatch("ADD_CONDITIONAL_FORMAT", { sheetId, ranges, cf } as never).isSuccessful).toBe(true);
  const bytes = await saveXlsx(workbook);
  expect(complaintsOf(bytes)).toEqual([]);
  const file = new Package(bytes);
  expect([writtenIn(file, "formula1"), writtenIn(file, "formula")]).toEqual([["'BH1'!A1"], ["'BH1'!A1"]]);
});

test("so have charts of others", async () => {
  const parts = unzipSync(await fileWithChart());
  for (const [path, bytes] of Object.entries(parts))
    if (path.endsWith(".xml"))
      parts[path] = strToU8(strFromU8(bytes).replaceAll("Curve!", "'BH1'!").replace('name="Curve"', 'name="BH1"'));
  const bytes = await saveXlsx(openXlsx(zipSync(parts)).workbook);
  expect(complaintsOf(bytes)).toEqual([]);
  const cells = writtenIn(new Package(bytes), "f");
  expect(cells.length).toBeGreaterThan(0);
  for (const formula of cells) expect(formula).toMatch(/^'BH1'!\$?[AB]\$?\d/);
});
