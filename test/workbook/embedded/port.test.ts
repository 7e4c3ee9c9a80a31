import "./engine-in-node";
import { runInNewContext } from "node:vm";
import { helpers } from "@odoo/o-spreadsheet";
import { noteGetters } from "../../../src/workbook/embedded/notes";
import { EmbeddedPort } from "../../../src/workbook/embedded/port";
import { newWorkbook } from "../../../src/workbook/embedded/workbook";
import type { CellPlan, SheetPlan } from "../../../src/workbook/port";

const cells: CellPlan[] = [
  { row: 0, col: 0, kind: "title", value: "Ring" },
  { row: 1, col: 0, kind: "label", value: "00123" },
  { row: 1, col: 1, kind: "input", value: 74.36, format: "0.00" },
  { row: 2, col: 1, kind: "input", value: 211.03, format: "0.00" },
  { row: 3, col: 1, kind: "result", formula: "={wet}-{ring}", format: "0.00E+00", note: "Wet soil" },
  { row: 4, col: 1, kind: "input", value: "kPa", choices: ["kPa", "psf"] },
  { row: 5, col: 1, kind: "label", value: "1/2" },
  { row: 6, col: 1, kind: "label", value: "=not a formula" },
  { row: 7, col: 1, kind: "result", formula: '="{ring}"' },
  { row: 8, col: 1, kind: "input" },
  { row: 9, col: 1, kind: "input" },
  { row: 10, col: 1, kind: "input" },
];
const box = (row: number, col: number, rows = 1, cols = 1) => ({ row, col, rows, cols });
const plan: SheetPlan = {
  name: "Ring",
  rows: 11,
  cols: 3,
  cells,
  names: { ring: box(1, 1), wet: box(2, 1), masses: box(1, 1, 2) },
  columnWidths: { 0: 20 },
  merges: [box(0, 0, 1, 3), box(8, 1, 1, 2), box(10, 1, 1, 2)],
  freezeRows: 1,
};

const open = () => new EmbeddedPort(newWorkbook());
const model = (port: EmbeddedPort) => port.workbook.model;
const cellOf = (port: EmbeddedPort, sheet: string, xc: string) =>
  model(port).getters.getEvaluatedCell({
    sheetId: model(port).getters.getSheetIdByName(sheet)!,
    ...helpers.toCartesian(xc),
  });

describe("filling named cells", () => {
  const column = (port: EmbeddedPort, name: string) =>
    port.readNames("Ring", [name]).then((found) => found[name].map(([value]) => value));

  test("constants go in from the top, as one step to undo; null leaves a cell, text stays text", async () => {
    const port = open();
    await port.insertSheet(plan);
    await port.fillNames("Ring", { masses: [null, 200], ring: ["1/2"] });
    expect(await column(port, "masses")).toEqual(["1/2", 200]);
    model(port).dispatch("REQUEST_UNDO");
    expect(await column(port, "masses")).toEqual([74.36, 211.03]);
    await port.fillNames("Ring", { masses: ["", 211.03] });
    expect(await column(port, "masses")).toEqual(["", 211.03]);
  });

  test("takes values made in another window", async () => {
    const port = open();
    await port.insertSheet(plan);
    await port.fillNames("Ring", runInNewContext("({ masses: [1, 2] })"));
    expect(await column(port, "masses")).toEqual([1, 2]);
  });

  test("refuses what is not blank, a name that is not there and too many values, and writes nothing", async () => {
    const port = open();
    await port.insertSheet(plan);
    const values = { ring: [1] };
    await expect(port.fillNames("Ring", values, ["wet"])).rejects.toThrow(/"wet".*holds 1 value already/);
    await expect(port.fillNames("Ring", { ...values, absent: [1] })).rejects.toThrow(/no cells named "absent"/);
    await expect(port.fillNames("Ring", { ...values, wet: [1, 2] })).rejects.toThrow(/has 1 cells, and 2/);
    expect(await column(port, "masses")).toEqual([74.36, 211.03]);
  });

  test("refuses a formula in the way", async () => {
    const port = open();
    await port.insertSheet({ ...plan, names: { ...plan.names, sum: box(3, 1) } });
    await expect(port.fillNames("Ring", { sum: [1] })).rejects.toThrow(/Row 1 of "sum".*formula/);
    await port.fillNames("Ring", { sum: [null] });
  });
});

describe("inserting a sheet", () => {
  test("makes the sheet of the plan, shows it, and touches no other", async () => {
    const port = open();
    expect(await port.insertSheet(plan)).toBe("Ring");
    expect(await port.sheetNames()).toEqual(["Sheet1", "Ring"]);
    expect((await port.selection()).sheet).toBe("Ring");
    expect(await port.values("Ring", "A1:B9")).toEqual([
      ["Ring", ""],
      ["00123", 74.36],
      ["", 211.03],
      ["", expect.closeTo(136.67, 10)],
      ["", "kPa"],
      ["", "1/2"],
      ["", "=not a formula"],
      ["", "{ring}"],
      ["", ""],
    ]);
    expect(await port.values("Sheet1", "A1:B2")).toEqual([
      ["", ""],
      ["", ""],
    ]);
    expect(cellOf(port, "Ring", "B4").formattedValue).toBe("1.37e+02");
  });

  test("a sheet that is to stay behind is not shown", async () => {
    const port = open();
    await port.insertSheet({ ...plan, behind: true });
    expect(await port.sheetNames()).toEqual(["Sheet1", "Ring"]);
    expect((await port.selection()).sheet).toBe("Sheet1");
  });

  test("keeps each cell's look to itself, merges, freezes, widens, and offers the choices", async () => {
    const port = open();
    await port.insertSheet(plan);
    const { getters } = model(port);
    const sheetId = getters.getSheetIdByName("Ring")!;
    const at = (xc: string) => ({ sheetId, ...helpers.toCartesian(xc) });
    expect(getters.getCellStyle(at("A1"))).toMatchObject({ bold: true, fontSize: 14 });
    expect(getters.getCellStyle(at("A2")).bold).toBeFalsy();
    expect(getters.getCellStyle(at("B2")).fillColor).toBe("#FFF8E1");
    expect(getters.getCellStyle(at("B4")).fillColor).toBeUndefined();
    expect(getters.getCellBorder(at("B9"))).toMatchObject({ top: { style: "thin" }, left: { style: "thin" } });
    expect(getters.getCellBorder(at("C10"))?.right).toBeUndefined();
    expect(getters.getMerges(sheetId)).toHaveLength(3);
    expect(getters.getPaneDivisions(sheetId)).toMatchObject({ ySplit: 1 });
    expect(getters.getColSize(sheetId, 0)).toBe(145);
    expect(getters.getValidationRuleForCell(at("B5"))?.criterion.values).toEqual(["kPa", "psf"]);
    expect(getters.getValidationRuleForCell(at("B4"))).toBeUndefined();
  });

  test("is one step to undo and to redo", async () => {
    const port = open();
    const before = JSON.stringify(model(port).exportData().sheets);
    await port.insertSheet(plan);
    const after = model(port).exportData();
    const sheetId = model(port).getters.getSheetIdByName("Ring")!;
    model(port).dispatch("REQUEST_UNDO");
    expect(JSON.stringify(model(port).exportData().sheets)).toBe(before);
    expect(model(port).getters.getNamedRanges()).toEqual([]);
    expect(noteGetters(model(port)).getNotes(sheetId)).toEqual([]);
    model(port).dispatch("REQUEST_REDO");
    expect(model(port).exportData().sheets).toEqual(after.sheets);
    expect((await port.readNames("Ring", ["ring"])).ring).toEqual([[74.36]]);
  });

  test("takes the next free sheet name and one suffix for all names", async () => {
    const port = open();
    await port.insertSheet(plan);
    const changed = cells.map((cell) => (cell.value === 74.36 ? { ...cell, value: 70 } : cell));
    expect(await port.insertSheet({ ...plan, name: "RING", cells: changed })).toBe("RING 2");
    expect(
      model(port)
        .getters.getNamedRanges()
        .map(({ name }) => name),
    ).toEqual(["ring", "wet", "masses", "ring_2", "wet_2", "masses_2"]);
    expect(cellOf(port, "Ring", "B4").value).toBeCloseTo(136.67, 10);
    expect(cellOf(port, "RING 2", "B4").value).toBeCloseTo(141.03, 10);
    expect(await port.readNames("RING 2", ["ring", "absent"])).toEqual({ ring: [[70]] });
    expect(await port.readNames("Ring", ["masses"])).toEqual({ masses: [[74.36], [211.03]] });
    expect(await port.readNames("Sheet1", ["ring"])).toEqual({});
  });

  test.each<[string, Partial<SheetPlan>]>([
    ["a formula with an unknown name", { cells: [{ row: 0, col: 0, kind: "result", formula: "={nowhere}" }] }],
    ["a name that the engine refuses", { names: { ...plan.names, A1: box(0, 0) } }],
    ["a value in a column that is not there", { cells: [...cells, { row: 1, col: 500, kind: "label", value: "far" }] }],
    ["two names that differ in letter case only", { names: { ring: box(1, 1), wet: box(2, 1), Ring: box(3, 1) } }],
  ])("leaves nothing behind after %s", async (_, wrong) => {
    const port = open();
    const before = JSON.stringify(model(port).exportData());
    await expect(port.insertSheet({ ...plan, ...wrong })).rejects.toThrow(/nothing was changed/);
    expect(JSON.stringify({ ...model(port).exportData(), revisionId: "START_REVISION" })).toBe(before);
    expect((await port.selection()).sheet).toBe("Sheet1");
  });

  test("takes a plan made in another frame", async () => {
    const port = open();
    expect(await port.insertSheet(runInNewContext(`(${JSON.stringify(plan)})`))).toBe("Ring");
  });
});

test("a note stays with its cell when rows move, is copied with the sheet, and goes with it", async () => {
  const port = open();
  await port.insertSheet(plan);
  const { getters } = model(port);
  const sheetId = getters.getSheetIdByName("Ring")!;
  const notes = (id = sheetId) => noteGetters(model(port)).getNotes(id);
  expect(notes()).toEqual([{ row: 3, col: 1, text: "Wet soil" }]);
  const dispatch = (type: string, payload: object) =>
    expect(model(port).dispatch(type as never, payload as never).isSuccessful).toBe(true);
  dispatch("ADD_COLUMNS_ROWS", {
    sheetId,
    sheetName: "Ring",
    dimension: "ROW",
    position: "before",
    base: 1,
    quantity: 2,
  });
  expect(notes()).toEqual([{ row: 5, col: 1, text: "Wet soil" }]);
  dispatch("DUPLICATE_SHEET", { sheetId, sheetIdTo: "copy", sheetNameTo: "Copy" });
  expect(notes("copy")).toEqual([{ row: 5, col: 1, text: "Wet soil" }]);
  dispatch("DELETE_SHEET", { sheetId, sheetName: "Ring" });
  expect(notes()).toEqual([]);
  expect(notes("copy")).toHaveLength(1);
});

describe("reading", () => {
  test("an error cell is its code, a blank one is empty", async () => {
    const port = open();
    model(port).dispatch("UPDATE_CELL", { sheetId: "sheet1", col: 0, row: 0, content: "=1/0" });
    expect(await port.values("Sheet1", "A1:B1")).toEqual([["#DIV/0!", ""]]);
  });

  test("the selection has its sheet, address and values", async () => {
    const port = open();
    model(port).dispatch("UPDATE_CELL", { sheetId: "sheet1", col: 1, row: 2, content: "5" });
    model(port).selection.selectZone({ cell: { col: 1, row: 1 }, zone: { left: 1, right: 2, top: 1, bottom: 2 } });
    expect(await port.selection()).toEqual({
      sheet: "Sheet1",
      address: "B2:C3",
      values: [
        ["", ""],
        [5, ""],
      ],
    });
  });

  test("a sheet that is not there is said so", async () => {
    await expect(open().values("Nowhere", "A1")).rejects.toThrow('There is no sheet named "Nowhere"');
  });
});

test("a copied sheet reckons with its own cells, under names of its own", async () => {
  const port = open();
  await port.insertSheet(plan);
  const sheetId = model(port).getters.getSheetIdByName("Ring")!;
  model(port).dispatch("DUPLICATE_SHEET", { sheetId, sheetIdTo: "copy", sheetNameTo: "Copy" });
  model(port).dispatch("UPDATE_CELL", { sheetId: "copy", col: 1, row: 1, content: "11.03" });
  expect(cellOf(port, "Copy", "B4").value).toBeCloseTo(200, 10);
  expect(cellOf(port, "Ring", "B4").value).toBeCloseTo(136.67, 10);
  expect(await port.readNames("Copy", ["ring"])).toEqual({ ring: [[11.03]] });
  expect(await port.readNames("Ring", ["ring"])).toEqual({ ring: [[74.36]] });
});

test("listeners hear of values and of the selection, until they leave, and in the next workbook too", async () => {
  const port = open();
  const heard = jest.fn();
  const leave = await port.onChange(heard);
  const change = () =>
    model(port).dispatch("UPDATE_CELL", { sheetId: "sheet1", col: 0, row: 0, content: String(Math.random()) });
  change();
  expect(heard).toHaveBeenCalled();
  heard.mockClear();
  model(port).selection.selectCell(3, 3);
  expect(heard).toHaveBeenCalled();
  const old = model(port);
  port.attach(newWorkbook());
  heard.mockClear();
  old.selection.selectCell(5, 5);
  expect(heard).not.toHaveBeenCalled();
  change();
  expect(heard).toHaveBeenCalled();
  leave();
  heard.mockClear();
  change();
  expect(heard).not.toHaveBeenCalled();
});
