import "./engine-in-node";
import { runInNewContext } from "node:vm";
import { CorePlugin, helpers, registries } from "@odoo/o-spreadsheet";
import { noteGetters } from "../../../src/workbook/embedded/notes";
import { EmbeddedPort } from "../../../src/workbook/embedded/port";
import { newWorkbook } from "../../../src/workbook/embedded/workbook";
import { saveXlsx } from "../../../src/workbook/embedded/xlsx/saving/save";
import type { CellPlan, SheetPlan } from "../../../src/workbook/port";

/** Makes the engine refuse commands that a test chooses. */
let refuse: (command: { type: string }) => boolean = () => false;
registries.corePluginRegistry.add(
  "refusing",
  class extends CorePlugin {
    override allowDispatch(command: any): any {
      return refuse(command) ? "Refused" : "Success";
    }
  } as never,
);

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

  test("constants are written from the top, as one step of undo; null leaves a cell unchanged, text stays text", async () => {
    const port = open();
    await port.insertSheet(plan);
    await port.fillNames("Ring", { masses: [null, 200], ring: ["1/2"] });
    expect(await column(port, "masses")).toEqual(["1/2", 200]);
    model(port).dispatch("REQUEST_UNDO");
    expect(await column(port, "masses")).toEqual([74.36, 211.03]);
    await port.fillNames("Ring", { masses: ["", 211.03] });
    expect(await column(port, "masses")).toEqual(["", 211.03]);
  });

  test("accepts values made in another window", async () => {
    const port = open();
    await port.insertSheet(plan);
    await port.fillNames("Ring", runInNewContext("({ masses: [1, 2] })"));
    expect(await column(port, "masses")).toEqual([1, 2]);
  });

  test("refuses a name that is not blank, one that does not exist, and too many values, and writes nothing", async () => {
    const port = open();
    await port.insertSheet(plan);
    const values = { ring: [1] };
    await expect(port.fillNames("Ring", values, ["wet"])).rejects.toThrow(/"wet".*holds 1 value already/);
    await expect(port.fillNames("Ring", { ...values, absent: [1] })).rejects.toThrow(/no cells named "absent"/);
    await expect(port.fillNames("Ring", { ...values, wet: [1, 2] })).rejects.toThrow(/has 1 cells, and 2/);
    expect(await column(port, "masses")).toEqual([74.36, 211.03]);
  });

  test("refuses a formula in a cell to be written", async () => {
    const port = open();
    await port.insertSheet({ ...plan, names: { ...plan.names, sum: box(3, 1) } });
    await expect(port.fillNames("Ring", { sum: [1] })).rejects.toThrow(/Row 1 of "sum".*formula/);
    await port.fillNames("Ring", { sum: [null] });
  });
});

describe("failures half-way", () => {
  const state = (port: EmbeddedPort) => {
    return JSON.stringify({ ...model(port).exportData(), revisionId: "" });
  };
  const filled = async () => {
    const port = open();
    await port.insertSheet(plan);
    await port.fillNames("Ring", { ring: [70] });
    return port;
  };
  /** Makes the engine refuse a command of the kind once, the `after`-th one. */
  function refusing<T>(kind: string, after: number, work: () => Promise<T>): Promise<T> {
    let count = 0;
    refuse = (command) => command.type === kind && count++ === after;
    return work().finally(() => (refuse = () => false));
  }

  test.each<[string, string, number, (port: EmbeddedPort) => Promise<unknown>]>([
    ["cells of several names", "UPDATE_CELL", 2, (port) => port.fillNames("Ring", { masses: [1, 2], ring: [3] })],
    ["the first of several cells", "UPDATE_CELL", 0, (port) => port.fillNames("Ring", { masses: [1, 2] })],
    ["the only cell", "UPDATE_CELL", 0, (port) => port.fillNames("Ring", { wet: [1] })],
    ["a sheet's last cells", "UPDATE_CELL", 4, (port) => port.insertSheet(plan)],
    ["a sheet's look", "SET_FORMATTING", 1, (port) => port.insertSheet(plan)],
    ["a sheet itself", "CREATE_SHEET", 0, (port) => port.insertSheet(plan)],
    ["a name", "CREATE_NAMED_RANGE", 0, (port) => port.nameAll("Ring", [{ name: "tin", address: "A2" }])],
    ["the protection", "CLAYLEDGER_PROTECT", 0, (port) => port.protect("Ring", true)],
    [
      "a file's names",
      "CLAYLEDGER_ADD_NAMES",
      0,
      async (port) => port.insertFile(await saveXlsx((await filled()).workbook)),
    ],
  ])(
    "%s refused: a sentence is given, the workbook is unchanged, and the last step of undo is the same",
    async (_, kind, after, work) => {
      const port = await filled();
      const before = state(port);
      await expect(refusing(kind, after, () => work(port))).rejects.toThrow(/nothing was changed/);
      expect(state(port)).toBe(before);
      model(port).dispatch("REQUEST_UNDO");
      expect((await port.readNames("Ring", ["ring"])).ring).toEqual([[74.36]]);
      model(port).dispatch("REQUEST_REDO");
      expect(state(port)).toBe(before);
      await work(port);
      expect(state(port)).not.toBe(before);
    },
  );

  test("a sheet that a person locked gives a sentence with the remedy, and the workbook is unchanged", async () => {
    const port = await filled();
    const sheetId = model(port).getters.getSheetIdByName("Ring")!;
    model(port).dispatch("LOCK_SHEET" as never, { sheetId } as never);
    const before = state(port);
    for (const work of [
      () => port.fillNames("Ring", { ring: [1] }),
      () => port.nameAll("Ring", [{ name: "tin", address: "A2" }]),
      () => port.protect("Ring", true),
      () => port.reenterFormulas("Ring"),
    ])
      await expect(work()).rejects.toThrow('The sheet "Ring" is locked: unlock it');
    expect(state(port)).toBe(before);
    expect((await port.readNames("Ring", ["ring"])).ring).toEqual([[70]]);
  });

  test("a deleted sheet, and a name whose cells were deleted, are refused", async () => {
    const port = await filled();
    const sheetId = model(port).getters.getSheetIdByName("Ring")!;
    const dispatch = (type: string, payload: object) => (model(port) as any).dispatch(type, { sheetId, ...payload });
    dispatch("REMOVE_COLUMNS_ROWS", { dimension: "ROW", elements: [1], sheetName: "Ring" });
    await expect(port.fillNames("Ring", { wet: [5], ring: [1] })).rejects.toThrow(/no cells named "ring"/);
    expect(await port.readNames("Ring", ["ring", "wet"])).toEqual({ wet: [[211.03]] });
    dispatch("DELETE_SHEET", { sheetName: "Ring" });
    const gone = 'There is no sheet called "Ring" in this workbook.';
    for (const work of [
      () => port.fillNames("Ring", { ring: [1] }),
      () => port.readNames("Ring", ["ring"]),
      () => port.readContents("Ring", ["ring"]),
      () => port.show("Ring", "A1"),
      () => port.hidden("Ring"),
      () => port.listNames("Ring"),
      () => port.isProtected("Ring"),
    ])
      await expect(work()).rejects.toThrow(gone);
  });

  test("the add-in loaded again on the same workbook finds the sheets as they were", async () => {
    const port = await filled();
    await port.insertSheet(plan);
    const again = new EmbeddedPort(port.workbook);
    expect(await again.readNames("Ring 2", ["ring", "masses"])).toEqual(
      await port.readNames("Ring 2", ["ring", "masses"]),
    );
    await again.fillNames("Ring 2", { ring: [5] });
    expect((await again.readNames("Ring", ["ring"])).ring).toEqual([[70]]);
  });
});

describe("showing cells, their contents, and blocks selected together", () => {
  const select = (port: EmbeddedPort, ...addresses: string[]) => {
    addresses.forEach((xc, i) => {
      const zone = helpers.toZone(xc);
      const { selection } = model(port);
      if (i === 0) selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone });
      else {
        selection.addCellToSelection(zone.left, zone.top);
        selection.setAnchorCorner(zone.right, zone.bottom);
        selection.commitSelection();
      }
    });
  };

  test("show brings the sheet to the front, and says why if it cannot", async () => {
    const port = open();
    await port.insertSheet({ ...plan, behind: true });
    await port.show("Ring", "B2:B3");
    expect(await port.selection()).toEqual({ sheet: "Ring", address: "B2:B3", values: [[74.36], [211.03]] });
    await port.show("Sheet1", "C4");
    expect(await port.selection()).toMatchObject({ sheet: "Sheet1", address: "C4" });
    await expect(port.show("Ring", "rubbish")).rejects.toThrow('"rubbish" is no address of cells');
    model(port).dispatch("HIDE_SHEET", { sheetId: model(port).getters.getSheetIdByName("Ring")! });
    await expect(port.show("Ring", "B2")).rejects.toThrow(/"Ring" is hidden: show it/);
    expect((await port.selection()).sheet).toBe("Sheet1");
    expect(await port.readNames("Ring", ["ring"])).toEqual({ ring: [[74.36]] });
    await port.fillNames("Ring", { ring: [70] });
  });

  test("contents are formulas with names of the plan on every sheet, constants unchanged, spilled cells blank", async () => {
    const port = open();
    const more = { ...plan, names: { ...plan.names, sum: box(3, 1), text: box(6, 1), spilled: box(0, 2, 3) } };
    for (const sheet of [await port.insertSheet(more), await port.insertSheet(more)]) {
      const sheetId = model(port).getters.getSheetIdByName(sheet)!;
      model(port).dispatch("UPDATE_CELL", { sheetId, col: 3, row: 0, content: "=TRANSPOSE(A2:B2)" });
      expect(await port.readContents(sheet, ["sum", "masses", "text", "absent"])).toEqual({
        sum: [["=wet-ring"]],
        masses: [[74.36], [211.03]],
        text: [["=not a formula"]],
      });
      await port.nameAll(sheet, [{ name: "spill", address: "D1:D2" }]);
      expect(await port.readContents(sheet, ["spill"])).toEqual({ spill: [["=TRANSPOSE(A2:B2)"], [""]] });
    }
  });

  test("blocks selected with Ctrl are joined in order of their columns; others are refused", async () => {
    const port = open();
    await port.insertSheet(plan);
    select(port, "B2:B3", "A2:A3");
    const joined = [
      ["00123", 74.36],
      ["", 211.03],
    ];
    expect(await port.selection()).toEqual({ sheet: "Ring", address: "A2:A3,B2:B3", values: joined });
    expect(await port.values("Ring", "B2:B3, A2:A3")).toEqual(joined);
    select(port, "B2:B3", "A2:A4");
    await expect(port.selection()).rejects.toThrow("different rows (2 to 4, 2 to 3): pick blocks that begin and end");
    await expect(port.values("Ring", "A2:B3,B2:C3")).rejects.toThrow("picked twice");
  });
});

describe("inserting a sheet", () => {
  test("makes the sheet of the plan, shows it, and changes no other sheet", async () => {
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

  test("a sheet that the plan keeps behind is not shown", async () => {
    const port = open();
    await port.insertSheet({ ...plan, behind: true });
    expect(await port.sheetNames()).toEqual(["Sheet1", "Ring"]);
    expect((await port.selection()).sheet).toBe("Sheet1");
  });

  test("gives each cell its own look, merges, freezes, widens, and offers the choices", async () => {
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

  test("is one step of undo and of redo", async () => {
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

  test("takes the next free sheet name, and one suffix for all names", async () => {
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
    ["a name that the engine refuses", { names: { ...plan.names, "wet mass": box(0, 0) } }],
    ["a value in a column that is not there", { cells: [...cells, { row: 1, col: 500, kind: "label", value: "far" }] }],
    ["two names that differ in letter case only", { names: { ring: box(1, 1), wet: box(2, 1), Ring: box(3, 1) } }],
  ])("leaves nothing behind after %s", async (_, wrong) => {
    const port = open();
    const before = JSON.stringify(model(port).exportData());
    await expect(port.insertSheet({ ...plan, ...wrong })).rejects.toThrow(/nothing was changed/);
    expect(JSON.stringify({ ...model(port).exportData(), revisionId: "START_REVISION" })).toBe(before);
    expect((await port.selection()).sheet).toBe("Sheet1");
    expect([model(port).getters.canUndo(), model(port).getters.canRedo()]).toEqual([false, false]);
  });

  test("accepts a plan made in another frame", async () => {
    const port = open();
    expect(await port.insertSheet(runInNewContext(`(${JSON.stringify(plan)})`))).toBe("Ring");
  });
});

test("a note follows its cell when rows move, is copied with the sheet, and is deleted with it", async () => {
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

  test("a sheet that does not exist is refused with a sentence", async () => {
    await expect(open().values("Nowhere", "A1")).rejects.toThrow('There is no sheet called "Nowhere"');
  });
});

test("a copied sheet calculates with its own cells, under its own names", async () => {
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

test("a sheet is copied together with its names in one step", async () => {
  const port = open();
  await port.insertSheet({ ...plan, isProtected: true });
  const sheetId = model(port).getters.getSheetIdByName("Ring")!;
  const names = () =>
    model(port)
      .getters.getNamedRanges()
      .map(({ name }) => name);
  model(port).dispatch("DUPLICATE_SHEET", { sheetId, sheetIdTo: "copy", sheetNameTo: "Copy" });
  const whole = ["ring", "wet", "masses", "ring_2", "wet_2", "masses_2"];
  expect(names()).toEqual(whole);
  model(port).dispatch("REQUEST_UNDO");
  expect(await port.sheetNames()).toEqual(["Sheet1", "Ring"]);
  expect(names()).toEqual(["ring", "wet", "masses"]);
  model(port).dispatch("REQUEST_REDO");
  expect(names()).toEqual(whole);
  await port.fillNames("Copy", { ring: [11.03] });
  expect(cellOf(port, "Copy", "B4").value).toBeCloseTo(200, 10);
  expect(cellOf(port, "Ring", "B4").value).toBeCloseTo(136.67, 10);
});

test("listeners hear of values and of the selection until they unsubscribe, and in the next workbook too", async () => {
  const port = open();
  const heard: string[] = [];
  const leave = [
    await port.onChange((change) => void heard.push(change)),
    await port.onSelect(() => void heard.push("selection")),
  ];
  const told = (): string[] => heard.splice(0);
  const change = () =>
    model(port).dispatch("UPDATE_CELL", { sheetId: "sheet1", col: 0, row: 0, content: String(Math.random()) });
  change();
  expect(told()).toEqual(["values"]);
  model(port).selection.selectCell(3, 3);
  expect(told()).toEqual(["selection"]);
  model(port).dispatch("SET_VIEWPORT_OFFSET", { offsetX: 0, offsetY: 40 });
  expect(told()).toEqual([]);
  const old = model(port);
  port.attach(newWorkbook());
  expect(told().sort()).toEqual(["front", "selection", "sheets", "values"]);
  old.selection.selectCell(5, 5);
  expect(told()).toEqual([]);
  change();
  expect(told()).toEqual(["values"]);
  leave.forEach((stop) => stop());
  change();
  expect(told()).toEqual([]);
});

test("a sheet of the next workbook has another id than those of the workbook before", async () => {
  const port = open();
  const [before] = await port.findSheets([]);
  port.attach(newWorkbook());
  const [after] = await port.findSheets([]);
  expect(after.sheet).toBe(before.sheet);
  expect(after.id).not.toBe(before.id);
});

test("a step that is undone is reported as the changes that it may have made", async () => {
  const port = open();
  const heard = new Set<string>();
  await port.insertSheet(plan);
  await port.onChange((change) => void heard.add(change));
  model(port).dispatch("REQUEST_UNDO");
  expect([...heard].sort()).toEqual(["front", "sheets", "values"]);
});
