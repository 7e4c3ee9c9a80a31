/** The names of sheets follow Excel's rules (Microsoft Support, "Rename a worksheet") on the page as well, and a saved file has them whole. */
import { strFromU8, unzipSync } from "fflate";
import "./engine-in-node";
import { newWorkbook, saveXlsx } from "../../../src/workbook/embedded";
import { runBatch } from "../../../src/workbook/embedded/engine";
import { addNames } from "../../../src/workbook/embedded/named-ranges";

const LONG = "Consolidation of BH-1 at 3.20 m";

const bench = () => {
  const workbook = newWorkbook();
  const { model } = workbook;
  const sheetId = model.getters.getActiveSheetId();
  const rename = (newName: string) =>
    model.dispatch("RENAME_SHEET", { sheetId, newName, oldName: model.getters.getSheetName(sheetId) });
  return { workbook, model, sheetId, rename };
};

test("a sheet takes a name of 31 characters", () => {
  const { model, sheetId, rename } = bench();
  expect(LONG).toHaveLength(31);
  expect(rename(LONG).isSuccessful).toBe(true);
  expect(model.getters.getSheetName(sheetId)).toBe(LONG);
});

test.each([`${LONG}m`, "BH-1: 3.2 m", "history", "BH\x07-1"])("a sheet called %j keeps its name", (name) => {
  const { model, sheetId, rename } = bench();
  expect(rename(name).reasons).toEqual(["ForbiddenCharactersInSheetName"]);
  expect(model.getters.getSheetName(sheetId)).toBe("Sheet1");
});

test("the copies of a sheet with a long name have names that Excel takes", () => {
  const { model, sheetId, rename } = bench();
  rename(LONG);
  const copies = ["one", "two"].map((sheetIdTo) => {
    const sheetNameTo = model.getters.getDuplicateSheetName(LONG);
    model.dispatch("DUPLICATE_SHEET", { sheetId, sheetIdTo, sheetNameTo });
    return model.getters.getSheetName(sheetIdTo);
  });
  expect(copies).toEqual(["Copy of Consolidation of BH-1 a", "Copy of Consolidation of BH-1 2"]);
});

test("the names of cells on a copy lead to its sheet in the saved file", async () => {
  const { workbook, model, sheetId, rename } = bench();
  rename(LONG);
  const sheetNameTo = model.getters.getDuplicateSheetName(LONG);
  model.dispatch("DUPLICATE_SHEET", { sheetId, sheetIdTo: "copy", sheetNameTo });
  runBatch(model, [addNames("copy", [{ name: "ring_mass", zone: { left: 0, right: 0, top: 0, bottom: 0 } }])]);
  const file = strFromU8(unzipSync(await saveXlsx(workbook))["xl/workbook.xml"]!);
  const sheets = [...file.matchAll(/<sheet [^>]*name="([^"]*)"/g)].map(([, name]) => name);
  expect(sheets).toContain(sheetNameTo);
  expect(file).toContain(`>'${sheetNameTo}'!$A$1</definedName>`);
});

test("a formula that names a sheet which is not there yet shows its cell when a sheet gets the name, and after undo its error again", () => {
  const { model, sheetId, rename } = bench();
  const place = { sheetId, col: 1, row: 0 };
  const value = () => model.getters.getEvaluatedCell(place).value;
  const put = (col: number, row: number, content: string) =>
    model.dispatch("UPDATE_CELL", { sheetId, col, row, content });
  put(0, 0, "4");
  put(1, 0, "='My sheet'!A1+Other!A1+1");
  const steps = [
    () => rename("my sheet"),
    () => model.dispatch("DUPLICATE_SHEET", { sheetId, sheetIdTo: "copy", sheetNameTo: "Other" }),
  ];
  expect(value()).toBe("#REF");
  for (const step of steps) step();
  expect(value()).toBe(9);
  expect(model.getters.getCellText(place, { showFormula: true })).toBe("='my sheet'!A1+Other!A1+1");
  model.dispatch("REQUEST_UNDO");
  expect(value()).toBe("#REF");
  model.dispatch("CREATE_SHEET", { sheetId: "new", name: "Other", position: 1 });
  expect(value()).toBe(5);
  model.dispatch("UPDATE_CELL", { sheetId: "new", col: 0, row: 0, content: "2" });
  expect(value()).toBe(7);
});
