/** Many cells written at once: all of them or none, as one step of undo, while the page stays responsive. */
import "../engine-in-node";
import { english } from "../../../../src/reduction/message";
import { EmbeddedPort, newWorkbook } from "../../../../src/workbook/embedded";
import { carryOut, carryOutAny, lastStep } from "../../../../src/workbook/embedded/steps/history";
import { tellRefusals } from "../../../../src/workbook/embedded/protection";
import { Model, plainData } from "../../../../src/workbook/embedded/engine";
import type { SheetRange } from "../../../../src/workbook/embedded/evaluation/engine-parts";
import { evaluationOf } from "../../../../src/workbook/embedded/evaluation/plugin";
import type { CellContent, SheetPlan } from "../../../../src/workbook/port";
import { shown } from "../evaluation/sheets";

const sheet = (rows: number): SheetPlan => ({
  ...{ name: "Readings", rows, cols: 6, cells: [], columnWidths: {}, merges: [], freezeRows: 0 },
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

const sizeOf = (ranges: readonly SheetRange[]): number =>
  ranges.reduce((sum, { zone: { left, right, top, bottom } }) => sum + (right - left + 1) * (bottom - top + 1), 0);

/** So many cells in one column that they are written in slices. */
const ROWS = 3_000;

/** Runs a clock by which a slice holds some hundred cells, however fast the machine is. */
async function inManySlices<T>(work: () => Promise<T>): Promise<T> {
  let now = 0;
  const clock = jest.spyOn(performance, "now").mockImplementation(() => (now += 0.1));
  try {
    return await work();
  } finally {
    clock.mockRestore();
  }
}

describe("cells that are written in slices", () => {
  const values = irregular(ROWS);
  const blank = [
    ["", ""],
    ["", ""],
  ];
  const written = [
    [values[0], values[0]],
    [values[ROWS - 1], values[ROWS - 1]],
  ];
  const fill = (port: EmbeddedPort): Promise<void> => port.fillNames("Readings", { times: values, readings: values });
  afterEach(() => tellRefusals(() => undefined));

  test("are one step of undo and of redo, besides other steps", async () => {
    const { port, dispatch, model } = await workbook(ROWS);
    await port.fillNames("Readings", { times: [1], readings: [2] });
    const before = lastStep(model);
    await inManySlices(() => fill(port));
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

  test("formulas that read them, and formulas that are written so themselves, have the values of all cells, and again after undo and redo", async () => {
    const { port, dispatch } = await workbook(ROWS);
    await port.writeCells("Sheet1", [{ row: 0, col: 0, formula: `=SUM(Readings!A1:A${ROWS})` }]);
    await inManySlices(() => fill(port));
    const total = values.reduce((sum, value) => sum + value, 0);
    expect(await port.values("Sheet1", "A1")).toEqual([[total]]);
    const cells = Array.from({ length: 300 }, (_, row) => ({
      ...{ row, col: 1 },
      formula: row === 299 ? "=A1" : `=B${row + 2}+1`,
    }));
    await inManySlices(() => port.writeCells("Sheet1", cells));
    expect(await port.values("Sheet1", "B1")).toEqual([[total + 299]]);
    dispatch("REQUEST_UNDO");
    expect(await port.values("Sheet1", "B1")).toEqual([[""]]);
    dispatch("REQUEST_UNDO");
    expect(await port.values("Sheet1", "A1")).toEqual([[0]]);
    dispatch("REQUEST_REDO");
    dispatch("REQUEST_REDO");
    expect(await port.values("Sheet1", "B1")).toEqual([[total + 299]]);
  });

  test("what is read in between is read when all cells are there, and so is a formula that reads them", async () => {
    const { port, model } = await workbook(ROWS);
    await port.writeCells("Sheet1", [{ row: 0, col: 0, formula: `=SUM(Readings!A1:A${ROWS})` }]);
    await port.show("Sheet1", "A1");
    const sheetId = model.getters.getSheetIdByName("Readings");
    const readings = () => [
      port.values("Readings", `A${ROWS}:B${ROWS}`),
      port.readNames("Readings", ["times"]),
      port.readContents("Readings", ["readings"]),
      port.readSheets(["readings"]),
      port.lookAt([{ sheet: "Readings", values: ["times"], contents: ["readings"] }]),
      port.selection(),
    ];
    await inManySlices(async () => {
      const filling = fill(port);
      expect(model.getters.getCell({ sheetId: sheetId!, row: ROWS - 1, col: 1 })).toBeUndefined();
      const between = await Promise.all(readings());
      await filling;
      expect(between).toEqual(await Promise.all(readings()));
    });
    expect(await ends(port, ROWS)).toEqual(written);
  });

  test("are evaluated in slices, and then the formulas that read them", async () => {
    const { port, model } = await workbook(ROWS);
    await port.writeCells("Sheet1", [{ row: 0, col: 0, formula: `=SUM(Readings!A1:B${ROWS})` }]);
    const evaluated = jest.spyOn(evaluationOf(model).evaluator, "evaluate");
    await inManySlices(() => fill(port));
    const sizes = evaluated.mock.calls.map(([ranges]) => sizeOf([...ranges]));
    evaluated.mockRestore();
    expect(sizes.at(-1)).toBe(1);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(2 * ROWS + 1);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(500);
  });

  test.each<readonly [string, readonly CellContent[]]>([
    ["formulas that they replace", [{ row: 7, col: 1, formula: "=A1+1" }, { row: 8, col: 1, formula: "=B8*2" }]], // prettier-ignore
    ["what a formula fills around it", [{ row: 1, col: 0, formula: "=SEQUENCE(9,3)" }]],
    ["what a formula beside them fills", [{ row: 1, col: 2, formula: "=SEQUENCE(9,3)" }]],
    ["a formula above that then has no room", [{ row: 0, col: 0, formula: "=SEQUENCE(9)" }]],
    ["values", [{ row: 4, col: 0, value: 12 }, { row: 5, col: 1, value: "text" }]], // prettier-ignore
  ])("give the values of a workbook that is evaluated from the start, in place of %s", async (_, before) => {
    const { port, dispatch, model } = await workbook(ROWS);
    const reads = ["=SUM(Readings!A1:B20)", "=COUNT(Readings!A:A)", "=A1+Readings!B9", "=Readings!C3", "=LEN(Readings!B6)"]; // prettier-ignore
    await port.writeCells("Sheet1", reads.map((formula, row) => ({ row, col: 0, formula }))); // prettier-ignore
    await port.writeCells("Readings", before);
    const atStart = shown(model);
    const cells = values
      .slice(0, 1_300)
      .flatMap((value, row) => [
        ...(row === 0 ? [] : [{ row, col: 0, value: row === 4 ? "" : value }]),
        { row, col: 1, value: row === 5 ? "" : row === 9 ? "gone" : value },
      ]);
    await inManySlices(() => port.writeCells("Readings", cells, true));
    // The engine takes only objects of its own realm.
    const afresh = () => shown(new Model(JSON.parse(JSON.stringify(plainData(model)))));
    const atEnd = shown(model);
    expect(atEnd).toEqual(afresh());
    dispatch("REQUEST_UNDO");
    expect(shown(model)).toEqual(atStart);
    dispatch("REQUEST_REDO");
    expect(shown(model)).toEqual(atEnd);
  });

  test("another workbook that is opened while they are evaluated gets nothing, and formulas of the one before keep their values", async () => {
    const { port, model, dispatch } = await workbook(ROWS);
    await port.fillNames("Readings", { times: [5] });
    await port.writeCells("Sheet1", [{ row: 0, col: 0, formula: `=SUM(Readings!A1:B${ROWS})` }]);
    const first = port.workbook;
    const { evaluator } = evaluationOf(model);
    const evaluate = evaluator.evaluate.bind(evaluator);
    const evaluated = jest.spyOn(evaluator, "evaluate").mockImplementation((ranges) => {
      evaluate(ranges);
      if (port.workbook.model === model) port.attach(newWorkbook());
    });
    await expect(inManySlices(() => fill(port))).rejects.toThrow(
      "Another workbook was opened while cells were written",
    );
    evaluated.mockRestore();
    port.attach(first);
    expect(await ends(port, ROWS)).toEqual([
      [5, ""],
      ["", ""],
    ]);
    expect(await port.values("Sheet1", "A1")).toEqual([[5]]);
    dispatch("UPDATE_CELL", { sheetId: model.getters.getSheetIdByName("Readings"), row: 1, col: 1, content: "7" });
    expect(await port.values("Sheet1", "A1")).toEqual([[12]]);
  });

  test("nobody changes the workbook in between: an entry, an undo and a deletion are refused with a sentence", async () => {
    const { port, dispatch, model } = await workbook(ROWS);
    const told: string[] = [];
    tellRefusals((sentence) => told.push(english(sentence)));
    const [sheetId, other] = ["Readings", "Sheet1"].map((name) => model.getters.getSheetIdByName(name));
    await inManySlices(async () => {
      const filling = fill(port);
      expect(model.getters.getCell({ sheetId: sheetId!, row: ROWS - 1, col: 1 })).toBeUndefined();
      dispatch("UPDATE_CELL", { sheetId: other, row: 0, col: 0, content: "7" });
      dispatch("REQUEST_UNDO");
      dispatch("DELETE_SHEET", { sheetId, sheetName: "Readings" });
      await filling;
    });
    const sentence = "Not done: cells are being written. Wait until they are there, then try again.";
    expect(told).toEqual([sentence, sentence, sentence]);
    expect(await ends(port, ROWS)).toEqual(written);
    expect(await port.values("Sheet1", "A1")).toEqual([[""]]);
    dispatch("UPDATE_CELL", { sheetId: other, row: 0, col: 0, content: "7" });
    expect(await port.values("Sheet1", "A1")).toEqual([[7]]);
  });

  test("another workbook that is opened in between gets nothing, and the one before keeps nothing of them", async () => {
    const { port, model } = await workbook(ROWS);
    const before = lastStep(model);
    const first = port.workbook;
    await inManySlices(async () => {
      const filling = fill(port);
      port.attach(newWorkbook());
      await expect(filling).rejects.toThrow(
        "Another workbook was opened while cells were written. Nothing was written: write them again.",
      );
    });
    expect(await port.sheetNames()).toEqual(["Sheet1"]);
    port.attach(first);
    expect(await ends(port, ROWS)).toEqual(blank);
    expect(lastStep(model)).toBe(before);
  });
});

describe("cells that are refused in the middle", () => {
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
    ["the first of many", []],
    ["behind many others", irregular(ROWS)],
  ])("leave nothing of what is written in slices if the refused cell is %s", async (_, others) => {
    const { port, model, dispatch, sheetId, first } = await afterUndo();
    const before = lastStep(model);
    const cells = (values: readonly number[]) => values.map((value, row) => typed(sheetId, row, String(value)));
    const commands = [...cells(others), wrong, ...cells(irregular(ROWS))];
    const refused = await inManySlices(() => carryOutAny(model, commands, () => true));
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
