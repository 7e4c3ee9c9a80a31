/** Many cells written at once: all of them or none, as one step of undo, while the page stays responsive. */
import "../engine-in-node";
import { EmbeddedPort, newWorkbook } from "../../../../src/workbook/embedded";
import { carryOut, carryOutInBatches, lastStep } from "../../../../src/workbook/embedded/steps/history";
import type { SheetPlan } from "../../../../src/workbook/port";

const sheet = (rows: number): SheetPlan => ({
  ...{ name: "Readings", rows, cols: 2, cells: [], columnWidths: {}, merges: [], freezeRows: 0 },
  names: { times: { row: 0, col: 0, rows, cols: 1 }, readings: { row: 0, col: 1, rows, cols: 1 } },
});

async function workbook(rows: number) {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(sheet(rows));
  // The engine types list its own commands only; this type allows any command.
  const dispatch = (type: string, payload?: object) =>
    (port.workbook.model.dispatch as unknown as (type: string, payload?: object) => unknown)(type, payload);
  return { port, dispatch, model: port.workbook.model };
}

/** Values without a pattern, because the engine packs values with a pattern. */
const irregular = (count: number): number[] => Array.from({ length: count }, (_, i) => (i * i * 7919) % 104_729);

const ends = async (port: EmbeddedPort, rows: number) => [
  (await port.values("Readings", "A1:B1"))[0],
  (await port.values("Readings", `A${rows}:B${rows}`))[0],
];

test("130,000 commands in one step do not overflow the engine's stack, and one undo reverts them", async () => {
  const rows = 130_000;
  const { port, dispatch, model } = await workbook(rows);
  const sheetId = model.getters.getSheetIdByName("Readings");
  const values = irregular(rows);
  const commands = values.map((value, row) => ({ type: "UPDATE_CELL", sheetId, row, col: 0, content: String(value) }));
  expect(carryOut(model, commands)).toEqual([]);
  expect(await port.values("Readings", `A${rows}`)).toEqual([[values[rows - 1]]]);
  dispatch("REQUEST_UNDO");
  expect(await port.values("Readings", `A${rows}`)).toEqual([[""]]);
  await port.fillNames("Readings", { times: [5] });
  expect(await port.values("Readings", "A1")).toEqual([[5]]);
});

describe("cells that are written in several batches", () => {
  /** Three batches of 20,000 cells, the last a short one. */
  const ROWS = 20_010;
  const values = irregular(ROWS);
  const blank = [
    ["", ""],
    ["", ""],
  ];
  const written = [
    [values[0], values[0]],
    [values[ROWS - 1], values[ROWS - 1]],
  ];

  test("are one step of undo and of redo, besides other steps", async () => {
    const { port, dispatch, model } = await workbook(ROWS);
    await port.fillNames("Readings", { times: [1], readings: [2] });
    const before = lastStep(model);
    await port.fillNames("Readings", { times: values, readings: values });
    expect(await ends(port, ROWS)).toEqual(written);
    dispatch("REQUEST_UNDO");
    expect(lastStep(model)).toBe(before);
    expect(await ends(port, ROWS)).toEqual([
      [1, 2],
      ["", ""],
    ]);
    dispatch("REQUEST_REDO");
    expect(await ends(port, ROWS)).toEqual(written);
    dispatch("REQUEST_UNDO");
    dispatch("REQUEST_UNDO");
    expect(await ends(port, ROWS)).toEqual(blank);
    dispatch("REQUEST_REDO");
    dispatch("REQUEST_REDO");
    expect(await ends(port, ROWS)).toEqual(written);
  });

  type Bench = Awaited<ReturnType<typeof workbook>>;

  test.each<[string, (bench: Bench) => unknown, RegExp]>([
    [
      "the sheet is deleted",
      ({ dispatch, model }) =>
        dispatch("DELETE_SHEET", { sheetId: model.getters.getSheetIdByName("Readings"), sheetName: "Readings" }),
      /deleted, or another workbook was opened.* 20000 of 40020 cells were written/,
    ],
    ["undo is pressed", ({ dispatch }) => dispatch("REQUEST_UNDO"), /an undo.* 20000 of 40020 cells were written/],
    [
      "another workbook is opened",
      ({ port }) => port.attach(newWorkbook()),
      /another workbook was opened.* 20000 of 40020 cells were written/,
    ],
  ])("when %s between two of them, a sentence says how many are written", async (_, change, sentence) => {
    const bench = await workbook(ROWS);
    const filling = bench.port.fillNames("Readings", { times: values, readings: values });
    change(bench);
    await expect(filling).rejects.toThrow(sentence);
  });

  test("continue when another cell is typed between two batches", async () => {
    const { port, dispatch, model } = await workbook(ROWS);
    const filling = port.fillNames("Readings", { times: values, readings: values });
    dispatch("UPDATE_CELL", { sheetId: model.getters.getSheetIdByName("Sheet1"), row: 0, col: 0, content: "7" });
    await filling;
    expect(await ends(port, ROWS)).toEqual(written);
    expect(await port.values("Sheet1", "A1")).toEqual([[7]]);
  });
});

describe("cells that are refused in the middle", () => {
  const ROWS = 20_010;
  const typed = (sheetId: string, row: number, content: string) => ({
    type: "UPDATE_CELL",
    sheetId,
    row,
    col: 0,
    content,
  });

  /** A workbook in which a person typed 1, 2 and 3, and took 2 and 3 back. */
  async function afterUndo() {
    const bench = await workbook(ROWS);
    const sheetId = bench.model.getters.getSheetIdByName("Readings")!;
    for (const content of ["1", "2", "3"]) carryOut(bench.model, [typed(sheetId, 0, content)]);
    bench.dispatch("REQUEST_UNDO");
    bench.dispatch("REQUEST_UNDO");
    const first = async () => (await bench.port.values("Readings", "A1"))[0]![0];
    return { ...bench, sheetId, first };
  }

  const wrong = typed("no sheet", 0, "9");

  test("leave every step of undo and of redo as it was", async () => {
    const { model, dispatch, sheetId, first } = await afterUndo();
    const before = lastStep(model);
    expect(carryOut(model, [typed(sheetId, 0, "8"), wrong])).toEqual(["UPDATE_CELL (InvalidSheetId)"]);
    expect([await first(), lastStep(model)]).toEqual([1, before]);
    const seen: unknown[] = [];
    for (const way of ["REDO", "REDO", "REDO", "UNDO", "UNDO", "UNDO"]) {
      dispatch(`REQUEST_${way}`);
      seen.push(await first());
    }
    expect(seen).toEqual([2, 3, 3, 2, 1, ""]);
  });

  test.each([
    ["the first of the last batch", []],
    ["behind others of the last batch", ["8"]],
  ])("leave nothing of several batches if the refused cell is %s", async (_, others) => {
    const { port, model, dispatch, sheetId, first } = await afterUndo();
    const before = lastStep(model);
    const cells = irregular(20_000).map((value, row) => typed(sheetId, row, String(value)));
    const last = others.map((content) => typed(sheetId, 1, content));
    const refused = await carryOutInBatches(model, [...cells, ...last, wrong], () => true);
    expect(refused).toEqual(["UPDATE_CELL (InvalidSheetId)"]);
    expect([await first(), lastStep(model)]).toEqual([1, before]);
    dispatch("REQUEST_REDO");
    expect(await first()).toBe(2);
    dispatch("REQUEST_REDO");
    dispatch("REQUEST_REDO");
    expect([await first(), (await port.values("Readings", "A2"))[0]]).toEqual([3, [""]]);
  });
});

test.each([Infinity, -Infinity, NaN])("%p is refused with its row, and nothing is written", async (value) => {
  const { port } = await workbook(3);
  await expect(port.fillNames("Readings", { times: [1, value] })).rejects.toThrow(/Row 2 of "times".*1\.8E\+308/);
  expect(await port.values("Readings", "A1:A2")).toEqual([[""], [""]]);
});
