/**
 * A step evaluates what it changed and what reads it: the values are those of the same workbook evaluated from the start, and
 * formulas that do not read what changed are not calculated again.
 */
import "../engine-in-node";
import { addFunction } from "@odoo/o-spreadsheet";
import fc from "../../../properties";
import { EmbeddedPort, newWorkbook, saveXlsx } from "../../../../src/workbook/embedded";
import { Model, plainData, runBatch, type Command } from "../../../../src/workbook/embedded/engine";
import { addNames } from "../../../../src/workbook/embedded/named-ranges";

let calls = 0;
addFunction("COUNTED", {
  description: "Gives its argument, and counts its calls.",
  args: [{ name: "value", description: "", type: ["ANY"] }],
  compute: ((cell: { value: unknown }) => {
    calls++;
    return { value: cell.value };
  }) as never,
});

const zone = (row: number, col = 0, rows = 1) => ({ left: col, right: col, top: row, bottom: row + rows - 1 });

/** The commands that add a sheet with names of its own, numbered, and formulas that read them and other sheets. */
function sheetCommands(number: number): Command[] {
  const sheetId = `s${number}`;
  const put = (row: number, col: number, content: string): Command => ({
    type: "UPDATE_CELL",
    sheetId,
    row,
    col,
    content,
  });
  const other = number === 1 ? 2 : 1;
  return [
    { type: "CREATE_SHEET", sheetId, name: `Sheet ${number}`, position: 1, cols: 8, rows: 20 },
    addNames(sheetId, [
      { name: `mass_${number}`, zone: zone(0) },
      { name: `list_${number}`, zone: zone(0, 0, 3) },
    ]),
    put(0, 0, String(10 * number)),
    put(1, 0, "2"),
    put(2, 0, `=COUNTED(mass_${number})+1`),
    put(0, 1, `=SUM(list_${number})`),
    put(1, 1, `=IFERROR(mass_${other}*2,"none")`),
    put(2, 1, `=IFERROR(INDIRECT("'Sheet ${other}'!A1"),"gone")`),
    put(3, 1, `='Sheet ${number}'!A1+1`),
    put(5, 1, `=SEQUENCE(A2)`),
    put(6, 3, "=SUM(B6:B9)"),
  ];
}

/** Every value that the workbook shows, by sheet and cell. */
function shown(model: Model): Record<string, unknown> {
  const { getters } = model;
  return Object.fromEntries(
    getters.getSheetIds().flatMap((sheetId) =>
      Array.from({ length: 12 * 6 }, (_, i) => ({ sheetId, row: Math.floor(i / 6), col: i % 6 })).flatMap((place) => {
        const { value } = getters.getEvaluatedCell(place);
        return value === null || value === "" ? [] : [[`${sheetId} ${place.row} ${place.col}`, value]];
      }),
    ),
  );
}

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
      dispatch("DELETE_SHEET", { sheetId: `s${one.number}`, sheetName: `Sheet ${one.number}` });
    if (one.do === "copy" && isThere(`s${one.number}`))
      dispatch("DUPLICATE_SHEET", {
        sheetId: `s${one.number}`,
        sheetIdTo: `c${++copies}`,
        sheetNameTo: `Copy ${copies}`,
      });
    // The engine itself never finds a sheet that came after the formula that names it.
    if (one.do === "type" && isThere(one.sheet) && (isThere("s2") || !one.content.includes("Sheet 2")))
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

describe("formulas that do not read what changed are not calculated again", () => {
  const bench = () => {
    const { model } = newWorkbook();
    runBatch(model, sheetCommands(1));
    return model;
  };
  const counted = (work: () => unknown): number => {
    calls = 0;
    work();
    return calls;
  };

  test("when a sheet is inserted, and when it is undone and done again", () => {
    const model = bench();
    expect(counted(() => runBatch(model, sheetCommands(3)))).toBe(1);
    expect(counted(() => model.dispatch("REQUEST_UNDO"))).toBe(0);
    expect(counted(() => model.dispatch("REQUEST_REDO"))).toBe(1);
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
    calls = 0;
    const { sheets } = await port.insertFile(file);
    expect(calls).toBe(1);
    expect(await port.values(sheets.at(-1)!, "A1")).toEqual([[7]]);
  });

  test("but they are when what they read is undone", () => {
    const model = bench();
    model.dispatch("UPDATE_CELL", { sheetId: "s1", row: 0, col: 0, content: "7" });
    expect(counted(() => model.dispatch("REQUEST_UNDO"))).toBe(1);
    expect(model.getters.getEvaluatedCell({ sheetId: "s1", row: 2, col: 0 }).value).toBe(11);
  });
});
