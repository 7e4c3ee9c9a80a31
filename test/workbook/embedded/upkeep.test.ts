/** A firm's own sheets in the embedded workbook: inserted from files, protected, named, with formulas entered again. */
import { english } from "../../../src/reduction/message";
import "./engine-in-node";
import ExcelJS from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { blankSheet, checkSheet, CHECKED_NAMES, demoSheet, fillSheet } from "../../../src/datasheet";
import { boxAddress, cellAddress } from "../../../src/workbook/address";
import { demoTest } from "../../../src/datasheet/demo-test";
import { toXlsx } from "../../../src/datasheet/xlsx";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../src/workbook/embedded";
import { noteGetters } from "../../../src/workbook/embedded/notes";
import { tellRefusals } from "../../../src/workbook/embedded/protection";
import { printingOf } from "../../../src/workbook/look/pages";
import { opened } from "./opened";
import { haveRealFunctions } from "./real-functions";

beforeAll(haveRealFunctions);

const plan = demoSheet("SI");
const loading = (bytes: Uint8Array): ArrayBuffer =>
  bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;

/**
 * The sheet of a firm: renamed, with a row added on top for a logo, a label translated, a cell recoloured, a field
 * removed.
 */
async function firmsFile(): Promise<Uint8Array> {
  const { port, sheet } = await opened(plan);
  await port.protect(sheet, false);
  const { row, col } = plan.names.diameter;
  dispatch(port, "UPDATE_CELL", { row, col: 0, content: "Durchmesser" });
  const zone = { left: col, right: col, top: row, bottom: row };
  dispatch(port, "SET_FORMATTING", { target: [zone], style: { fillColor: "#00AA00" } });
  dispatch(port, "ADD_COLUMNS_ROWS", { dimension: "ROW", base: 0, quantity: 2, position: "before", sheetName: sheet });
  dispatch(port, "DELETE_NAMED_RANGE", { name: "laboratory" });
  dispatch(port, "RENAME_SHEET", { oldName: sheet, newName: "Ödometer" });
  return saveXlsx(port.workbook);
}

const RESULTS = ["void_ratio_initial", "preconsolidation_stress", "compression_index", "final_height"];
const results = async (port: EmbeddedPort, sheet: string) => {
  const values = await port.readNames(sheet, RESULTS);
  return RESULTS.map((name) => values[name]?.[0]?.[0]);
};
const check = async (port: EmbeddedPort, sheet: string) =>
  checkSheet(await port.listNames(sheet), await port.readNames(sheet, CHECKED_NAMES)).findings;

const dispatch = (port: EmbeddedPort, type: string, payload: object) =>
  (port.workbook.model as any).dispatch(type, { sheetId: port.workbook.model.getters.getActiveSheetId(), ...payload });

describe("the sheets of a file", () => {
  let port: EmbeddedPort;
  let first: string;
  let copies: string[];
  beforeAll(async () => {
    port = new EmbeddedPort(newWorkbook());
    first = await port.insertSheet(plan);
    const file = await toXlsx(plan);
    copies = [...(await port.insertFile(file)).sheets, ...(await port.insertFile(file)).sheets];
  });

  test("are inserted as new sheets under free names, completely, and calculate their own results", async () => {
    expect(await port.sheetNames()).toEqual(["Sheet1", "Demonstration", "Demonstration 2", "Demonstration 3"]);
    const own = await results(port, first);
    for (const sheet of copies) {
      expect(await check(port, sheet)).toEqual([]);
      expect(await results(port, sheet)).toEqual(own);
    }
  });

  test("do not share a name: an entry on one changes no other", async () => {
    const before = await results(port, first);
    await port.fillNames(copies[0], { specific_gravity: [2.6] });
    expect(await results(port, first)).toEqual(before);
    expect(await results(port, copies[1])).toEqual(before);
    expect((await results(port, copies[0]))[0]).not.toBe(before[0]);
    await port.fillNames(copies[0], { specific_gravity: [2.72] });
    expect(await results(port, copies[0])).toEqual(before);
  });

  test("keep every note, choice, format and column width", () => {
    const { getters } = port.workbook.model;
    const id = (sheet: string) => getters.getSheetIdByName(sheet)!;
    const look = (sheet: string) =>
      plan.cells.map(({ row, col }) => {
        const position = { sheetId: id(sheet), row, col };
        const { format } = getters.getEvaluatedCell(position);
        const { bold, italic, fillColor, align } = getters.getCellStyle(position) as any;
        const choices = getters.getValidationRuleForCell(position)?.criterion;
        return [
          row,
          col,
          format ?? "",
          !!bold,
          !!italic,
          fillColor,
          align,
          choices?.type,
          choices?.type === "isValueInList" && choices?.values,
        ];
      });
    expect(look(copies[0])).toEqual(look(first));
    expect(noteGetters(port.workbook.model).getNotes(id(copies[0])).length).toBe(
      noteGetters(port.workbook.model).getNotes(id(first)).length,
    );
    for (let col = 0; col < 16; col++)
      expect(Math.abs(getters.getColSize(id(copies[0]), col) - getters.getColSize(id(first), col))).toBeLessThan(8);
  });

  test("are removed again by one step of undo", async () => {
    const other = new EmbeddedPort(newWorkbook());
    await other.insertFile(await toXlsx(blankSheet("US")));
    (other.workbook.model as any).dispatch("REQUEST_UNDO");
    expect(await other.sheetNames()).toEqual(["Sheet1"]);
    expect(other.workbook.model.getters.getNamedRanges()).toEqual([]);
  });

  test("a firm's restyled sheet works, and keeps its look", async () => {
    const other = new EmbeddedPort(newWorkbook());
    const { sheets } = await other.insertFile(await firmsFile());
    expect(sheets).toEqual(["Sheet1 2", "Ödometer"]);
    expect((await check(other, "Ödometer")).map(({ sentence }) => english(sentence))).toEqual([
      expect.stringMatching(/^Laboratory \(laboratory\) is missing/),
    ]);
    expect(await results(other, "Ödometer")).toEqual(await results(port, first));
    const sheetId = other.workbook.model.getters.getSheetIdByName("Ödometer")!;
    const { row, col } = plan.names.diameter;
    expect(other.workbook.model.getters.getCellStyle({ sheetId, row: row + 2, col }).fillColor).toBe("#00AA00");
  });

  test("a formula with a name that the sheet lacks never reads the cells of another test", async () => {
    const workbook = new ExcelJS.Workbook();
    const sheet = workbook.addWorksheet("Half");
    sheet.getCell("A1").value = { formula: "ring_mass+1", result: 0 };
    sheet.getCell("B1").value = 10;
    const { sheets } = await port.insertFile(new Uint8Array(await workbook.xlsx.writeBuffer()));
    const shown = async () => (await port.values(sheets[0], "A1"))[0][0];
    expect(String(await shown())).toMatch(/^#/);
    await port.nameAll(sheets[0], [{ name: "ring_mass", address: "B1" }]);
    await port.reenterFormulas(sheets[0]);
    expect(await shown()).toBe(11);
    expect((await port.readNames(first, ["ring_mass"])).ring_mass).toEqual([[74.36]]);
  });

  test("a file that is not a workbook is refused, and nothing is inserted", async () => {
    const before = await port.sheetNames();
    await expect(port.insertFile(new Uint8Array([1, 2, 3]))).rejects.toThrow(/not an \.xlsx workbook/);
    expect(await port.sheetNames()).toEqual(before);
  });
});

describe("protection", () => {
  test("keeps formulas and labels, accepts entries in every input, says why it refuses, and can be lifted and restored", async () => {
    const { port, sheet } = await opened(plan);
    const said: string[] = [];
    tellRefusals((sentence) => said.push(english(sentence)));
    const write = (name: string, row = 0) => {
      const box = plan.names[name];
      return dispatch(port, "UPDATE_CELL", { col: box.col, row: box.row + row, content: "7" }).isSuccessful;
    };
    expect(await port.isProtected(sheet)).toBe(true);
    expect(write("void_ratio_initial")).toBe(false);
    expect(write("load_number", 3)).toBe(false);
    expect(said[0]).toMatch(/is protected, as results and labels are.*Lift protection/);
    for (const [name, row] of [
      ["ring_mass", 0],
      ["load_stress", 23],
      ["readings_24", 0],
      ["readings_24", 1999],
    ] as const)
      expect([name, row, write(name, row)]).toEqual([name, row, true]);
    await port.protect(sheet, false);
    expect(write("load_number", 3)).toBe(true);
    await port.protect(sheet, true);
    expect(write("load_number", 4)).toBe(false);
  });

  test("lets a person clear open cells that stand side by side, and names the first closed cell of a selection", async () => {
    const { port, sheet } = await opened(plan);
    const said: string[] = [];
    tellRefusals((sentence) => said.push(english(sentence)));
    const { row, col } = plan.names.times_01;
    const clear = (right: number, top: number) =>
      dispatch(port, "DELETE_CONTENT", { target: [{ left: col, right, top, bottom: row + 2 }] }).isSuccessful;
    const readings = plan.names.readings_03.col;
    expect([clear(readings, row), said]).toEqual([true, []]);
    const held = await port.readNames(sheet, ["times_01", "readings_01", "times_03", "readings_03"]);
    expect(Object.values(held).map((column) => column.slice(0, 4).map(([value]) => value !== ""))).toEqual(
      Array(4).fill([false, false, false, true]),
    );
    // The row above the readings has their unit.
    expect([clear(readings, row - 1), said[0]]).toEqual([
      false,
      expect.stringContaining(`${cellAddress(row - 1, col)} is protected`),
    ]);
  });

  test("and open cells are kept in a file", async () => {
    const { port } = await opened(plan);
    const bytes = await saveXlsx(port.workbook);
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.load(loading(bytes));
    const sheet = workbook.getWorksheet("Demonstration")!;
    const locked = (name: string, row = 0) =>
      sheet.getCell(plan.names[name].row + row + 1, plan.names[name].col + 1).protection?.locked ?? true;
    expect((sheet as any).sheetProtection?.sheet).toBe(true);
    expect([locked("ring_mass"), locked("load_stress", 20), locked("void_ratio_initial")]).toEqual([
      false,
      false,
      true,
    ]);

    const again = new EmbeddedPort(openXlsx(bytes).workbook);
    expect(await again.isProtected("Demonstration")).toBe(true);
    const write = (name: string, row: number) =>
      dispatch(again, "UPDATE_CELL", {
        sheetId: again.workbook.model.getters.getSheetIdByName("Demonstration"),
        col: plan.names[name].col,
        row: plan.names[name].row + row,
        content: "7",
      }).isSuccessful;
    expect([write("ring_mass", 0), write("readings_24", 1999), write("void_ratio_initial", 0)]).toEqual([
      true,
      true,
      false,
    ]);
  });
});

test("pages, paper and footer are kept in a file, twice, and follow inserted rows", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const sheet = await port.insertSheet({ ...blankSheet("US"), name: "Form" });
  dispatch(port, "ADD_COLUMNS_ROWS", { dimension: "ROW", base: 4, quantity: 2, position: "before", sheetName: sheet });
  const again = await saveXlsx(openXlsx(await saveXlsx(port.workbook)).workbook);
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(loading(again));
  const { pageSetup, headerFooter } = workbook.getWorksheet("Form")!;
  expect(pageSetup).toMatchObject({
    paperSize: 1,
    orientation: "landscape",
    fitToPage: false,
  });
  // Excel ignores page breaks if a sheet is fitted to pages.
  expect(pageSetup.scale).toBeLessThan(100);
  expect(headerFooter.oddFooter).toContain("Page &P of &N");
  const text = strFromU8(unzipSync(again)["xl/workbook.xml"]);
  const [, area] = /name="_xlnm.Print_Area" localSheetId="1">([^<]+)</.exec(text)!;
  const [first, ...others] = blankSheet("US").pages!;
  const { areas } = printingOf([
    { ...first, rows: first.rows + 2 },
    ...others.map((page) => ({ ...page, row: page.row === 0 ? 0 : page.row + 2 })),
  ]);
  expect(area).toBe(areas.map((box) => `'Form'!${boxAddress(box)}`).join(","));
  expect(areas[0]).toMatchObject({ row: 0, col: 0 });
});

test("formulas that show #NAME? are entered again once the functions exist", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const sheet = await port.insertSheet(fillSheet(blankSheet("SI"), { diameter: 63.5 }));
  await port.protect(sheet, false);
  dispatch(port, "UPDATE_CELL", { col: 20, row: 3, content: "=_xldudf_CLAY_WATER_CONTENT(152.4,121.9,31.2)" });
  dispatch(port, "UPDATE_CELL", { col: 20, row: 4, content: "=no_such_name+1" });
  dispatch(port, "UPDATE_CELL", { col: 20, row: 5, content: "=CLAY.MV(100,200,0.9,0.85)" });
  await port.protect(sheet, true);
  expect(await port.reenterFormulas(sheet)).toEqual({ found: 3, left: 1 });
  expect((await port.values(sheet, "U4"))[0][0]).toBeCloseTo(0.336, 3);
  // By hand: 0.05 / 1.9 / 100 kPa, in m2/MN.
  expect((await port.values(sheet, "U6"))[0][0]).toBeCloseTo(0.26316, 5);
});

test("a changed unit changes labels and results; no typed number changes", async () => {
  const { port, sheet } = await opened(plan);
  const inputs = Object.keys(demoTest("SI").cells).filter((name) => !name.endsWith("_unit"));
  const typedBefore = await port.readNames(sheet, [...inputs, ...Object.keys(demoTest("SI").columns)]);
  const [[before]] = (await port.readNames(sheet, ["density_initial"])).density_initial as number[][];
  const beside = async (name: string) => {
    const { row, col } = plan.names[name];
    const { getters } = port.workbook.model;
    return getters.getEvaluatedCell({ sheetId: getters.getActiveSheetId(), row, col: col + 1 }).value;
  };
  expect([await beside("density_initial"), await beside("diameter"), await beside("depth")]).toEqual([
    "Mg/m3",
    "mm",
    "m",
  ]);
  await port.fillNames(sheet, { density_unit: ["pcf"], length_unit: ["in"], depth_unit: ["ft"], cv_unit: ["mm2/min"] });
  expect([await beside("density_initial"), await beside("diameter"), await beside("depth")]).toEqual([
    "pcf",
    "in",
    "ft",
  ]);
  await port.fillNames(sheet, { length_unit: ["mm"] });
  const [[after]] = (await port.readNames(sheet, ["density_initial"])).density_initial as number[][];
  expect(after / before).toBeCloseTo(62.428, 3);
  expect(await port.readNames(sheet, [...inputs, ...Object.keys(demoTest("SI").columns)])).toEqual(typedBefore);
});
