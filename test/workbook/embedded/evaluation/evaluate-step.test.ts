/**
 * A step evaluates what it changed and what reads it: the values are those of the same workbook evaluated from the start, and
 * formulas that do not read what changed are not calculated again.
 */
import "../engine-in-node";
import fc from "../../../properties";
import { EmbeddedPort, newWorkbook, saveXlsx } from "../../../../src/workbook/embedded";
import { Model, plainData, runBatch, type Command } from "../../../../src/workbook/embedded/engine";
import { evaluationOf } from "../../../../src/workbook/embedded/evaluation/plugin";
import { counted, counter, sheetCommands, shown, zone } from "./sheets";

const CELLS = ["5", "", "=mass_1+mass_2", "=COUNTED(A1)", "=SUM(list_2)", "='Sheet 2'!B1", "=SEQUENCE(4)", "text"];

const action = fc.oneof(
  fc.record({ do: fc.constant("insert" as const), number: fc.constantFrom(1, 2, 3) }),
  fc.record({ do: fc.constant("delete" as const), number: fc.constantFrom(1, 2, 3) }),
  fc.record({ do: fc.constant("copy" as const), number: fc.constantFrom(1, 2, 3) }),
  fc.record({
    do: fc.constant("type" as const),
    sheet: fc.constantFrom("sheet1", "s1", "s2"),
    row: fc.nat(6),
    col: fc.nat(2),
    content: fc.constantFrom(...CELLS),
  }),
  fc.record({ do: fc.constant("clear" as const), sheet: fc.constantFrom("sheet1", "s1", "s2"), row: fc.nat(6) }),
  fc.record({ do: fc.constant("name" as const), row: fc.nat(3), name: fc.constantFrom("mass_1", "mass_2", "free") }),
  fc.record({ do: fc.constant("unname" as const), name: fc.constantFrom("mass_1", "mass_2", "free") }),
  fc.record({
    do: fc.constant("rename" as const),
    sheet: fc.constantFrom("sheet1", "s1", "s2"),
    name: fc.constantFrom("Sheet 1", "Sheet 2", "Lab", "Field"),
  }),
  fc.record({
    do: fc.constantFrom("add" as const, "remove" as const),
    sheet: fc.constantFrom("sheet1", "s1", "s2"),
    dimension: fc.constantFrom("ROW", "COL"),
    at: fc.nat(5),
  }),
  fc.record({ do: fc.constant("undo" as const) }),
  fc.record({ do: fc.constant("undo" as const) }),
  fc.record({ do: fc.constant("redo" as const) }),
);

test("after any steps, undone and done again, the values are those of a workbook that is evaluated from the start", () => {
  let copies = 0;
  const carryOut = (model: Model, one: typeof action extends fc.Arbitrary<infer T> ? T : never): void => {
    const dispatch = model.dispatch as unknown as (type: string, payload?: object) => unknown;
    const isThere = (id: string): boolean => model.getters.getSheetIds().includes(id);
    if (one.do === "insert" && !isThere(`s${one.number}`)) runBatch(model, sheetCommands(one.number));
    if (one.do === "delete" && isThere(`s${one.number}`))
      dispatch("DELETE_SHEET", { sheetId: `s${one.number}`, sheetName: model.getters.getSheetName(`s${one.number}`) });
    if (one.do === "copy" && isThere(`s${one.number}`))
      dispatch("DUPLICATE_SHEET", {
        sheetId: `s${one.number}`,
        sheetIdTo: `c${++copies}`,
        sheetNameTo: `Copy ${copies}`,
      });
    if (one.do === "type" && isThere(one.sheet))
      dispatch("UPDATE_CELL", { sheetId: one.sheet, row: one.row, col: one.col, content: one.content });
    if (one.do === "clear" && isThere(one.sheet))
      dispatch("DELETE_CONTENT", { sheetId: one.sheet, target: [zone(one.row, 0, 2)] });
    if (one.do === "name") {
      const ranges = [{ _sheetId: "sheet1", _zone: zone(one.row) }];
      const isNamed = model.getters.getNamedRange(one.name) !== undefined;
      if (isNamed) dispatch("UPDATE_NAMED_RANGE", { oldRangeName: one.name, newRangeName: one.name, ranges });
      else dispatch("CREATE_NAMED_RANGE", { name: one.name, ranges });
    }
    if (one.do === "unname") dispatch("DELETE_NAMED_RANGE", { name: one.name });
    if (one.do === "rename" && isThere(one.sheet))
      dispatch("RENAME_SHEET", {
        sheetId: one.sheet,
        oldName: model.getters.getSheetName(one.sheet),
        newName: one.name,
      });
    if ((one.do === "add" || one.do === "remove") && isThere(one.sheet)) {
      const { sheet: sheetId, dimension, at } = one;
      const about = { sheetId, sheetName: model.getters.getSheetName(sheetId), dimension };
      if (one.do === "add") dispatch("ADD_COLUMNS_ROWS", { ...about, base: at, position: "after", quantity: 1 });
      else dispatch("REMOVE_COLUMNS_ROWS", { ...about, elements: [at] });
    }
    if (one.do === "undo") dispatch("REQUEST_UNDO");
    if (one.do === "redo" && model.getters.canRedo()) dispatch("REQUEST_REDO");
  };
  fc.assert(
    fc.property(fc.array(action, { minLength: 3, maxLength: 14 }), (steps) => {
      const { model } = newWorkbook();
      for (const step of steps) {
        carryOut(model, step);
        const fresh = new Model(structuredClone(plainData(model)) as never);
        expect(shown(model)).toEqual(shown(fresh));
      }
    }),
    { numRuns: 60 },
  );
});

test("formulas that find a sheet by its name follow its renaming, and the undo of it", () => {
  const { model } = newWorkbook();
  runBatch(model, sheetCommands(1));
  const put = (row: number, content: string): Command => ({
    type: "UPDATE_CELL",
    sheetId: "sheet1",
    row,
    col: 0,
    content,
  });
  runBatch(model, [
    { type: "UPDATE_CELL", sheetId: "s1", row: 8, col: 3, content: "7" },
    ...[`=INDIRECT("'Sheet 1'!D9")`, `=INDIRECT("Lab!D9")`, `='Sheet 1'!D9*2`, `=Lab!D9*3`].map((one, row) =>
      put(row, one),
    ),
    put(4, `=FORMULATEXT(A3)`),
  ]);
  const values = (): unknown[] =>
    [0, 1, 2, 3, 4].map((row) => model.getters.getEvaluatedCell({ sheetId: "sheet1", row, col: 0 }).value);
  const before = values();
  expect(before).toEqual([7, "#REF", 14, "#REF", "='Sheet 1'!D9*2"]);
  const dispatch = model.dispatch as unknown as (type: string, payload?: object) => unknown;
  dispatch("RENAME_SHEET", { sheetId: "s1", oldName: "Sheet 1", newName: "Lab" });
  expect(values()).toEqual(["#REF", 7, 14, 21, "=Lab!D9*2"]);
  dispatch("REQUEST_UNDO");
  expect(values()).toEqual(before);
  dispatch("REQUEST_REDO");
  dispatch("UPDATE_CELL", { sheetId: "s1", row: 8, col: 3, content: "8" });
  expect(values()).toEqual(["#REF", 8, 16, 24, "=Lab!D9*2"]);
});

test("a formula that is written in the step that adds the sheet which it reads follows the cells of that sheet, and its removal", () => {
  const { model } = newWorkbook();
  const place = { sheetId: "sheet1", row: 0, col: 0 };
  const value = (): unknown => model.getters.getEvaluatedCell(place).value;
  runBatch(model, [...sheetCommands(1), { type: "UPDATE_CELL", ...place, content: "='Sheet 1'!D9" }]);
  expect(value()).toBe(0);
  runBatch(model, [{ type: "UPDATE_CELL", sheetId: "s1", row: 8, col: 3, content: "7" }]);
  expect(value()).toBe(7);
  model.dispatch("DELETE_SHEET", { sheetId: "s1", sheetName: "Sheet 1" });
  expect(value()).toBe("#REF");
});

describe("formulas that do not read what changed are not calculated again", () => {
  const bench = () => {
    const { model } = newWorkbook();
    runBatch(model, sheetCommands(1));
    return model;
  };

  test("when a sheet is inserted, and when it is undone and done again", () => {
    const model = bench();
    expect(counted(() => runBatch(model, sheetCommands(3)))).toBe(1);
    expect(counted(() => model.dispatch("REQUEST_UNDO"))).toBe(0);
    expect(counted(() => model.dispatch("REQUEST_REDO"))).toBe(1);
  });

  test("undo of an insertion does not look for what reads the cells of the sheet that goes", () => {
    const model = bench();
    runBatch(model, sheetCommands(3));
    const asked = jest.spyOn(evaluationOf(model).evaluator, "getCellsDependingOn");
    model.dispatch("REQUEST_UNDO");
    expect(asked.mock.calls.flatMap(([ranges]) => [...ranges].filter(({ sheetId }) => sheetId === "s3"))).toEqual([]);
    expect(asked).toHaveBeenCalled();
  });

  test("when another sheet is renamed or gets a row, and when that is undone", () => {
    const model = bench();
    runBatch(model, sheetCommands(3));
    const dispatch = model.dispatch as unknown as (type: string, payload?: object) => unknown;
    const about = { sheetId: "sheet1", sheetName: "Sheet1", dimension: "ROW", base: 2, position: "after", quantity: 1 };
    expect(counted(() => dispatch("RENAME_SHEET", { sheetId: "sheet1", oldName: "Sheet1", newName: "Lab" }))).toBe(0);
    expect(counted(() => dispatch("REQUEST_UNDO"))).toBe(0);
    expect(counted(() => dispatch("ADD_COLUMNS_ROWS", about))).toBe(0);
    expect(counted(() => dispatch("REQUEST_UNDO"))).toBe(0);
    expect(counted(() => dispatch("ADD_COLUMNS_ROWS", { ...about, sheetId: "s3", sheetName: "Sheet 3" }))).toBe(1);
  });

  test("when a cell that they do not read is typed, undone and typed again", () => {
    const model = bench();
    const type = () => model.dispatch("UPDATE_CELL", { sheetId: "s1", row: 9, col: 0, content: "7" });
    expect(counted(type)).toBe(0);
    expect(counted(() => model.dispatch("REQUEST_UNDO"))).toBe(0);
    expect(counted(() => model.dispatch("REQUEST_REDO"))).toBe(0);
  });

  test("when a file is inserted, its formulas are calculated once, in their new place", async () => {
    const sheet = { name: "Counted", rows: 5, cols: 5, names: {}, columnWidths: {}, merges: [], freezeRows: 0 };
    const port = new EmbeddedPort(newWorkbook());
    await port.insertSheet({ ...sheet, cells: [{ row: 0, col: 0, kind: "result", formula: "=COUNTED(7)" }] });
    const file = await saveXlsx(port.workbook);
    counter.calls = 0;
    const { sheets } = await port.insertFile(file);
    expect(counter.calls).toBe(1);
    expect(await port.values(sheets.at(-1)!, "A1")).toEqual([[7]]);
  });

  test("but they are when what they read is undone", () => {
    const model = bench();
    model.dispatch("UPDATE_CELL", { sheetId: "s1", row: 0, col: 0, content: "7" });
    expect(counted(() => model.dispatch("REQUEST_UNDO"))).toBe(1);
    expect(model.getters.getEvaluatedCell({ sheetId: "s1", row: 2, col: 0 }).value).toBe(11);
  });
});
