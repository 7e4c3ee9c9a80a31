/**
 * A long redo goes in slices: it gives what the engine's own redo gives; while it goes on nothing else changes the workbook; stopped, it
 * leaves the workbook as it was, and can be asked for again.
 */
import "../engine-in-node";
import { english } from "../../../../src/reduction/message";
import { EmbeddedPort, newWorkbook, onLongRedo, redoSlowly } from "../../../../src/workbook/embedded";
import { plainData } from "../../../../src/workbook/embedded/engine";
import { tellRefusals } from "../../../../src/workbook/embedded/protection";
import { inSlices, Stopped, type Run } from "../../../../src/workbook/in-slices";
import type { SheetPlan } from "../../../../src/workbook/port";

/** So many that the redo is a long one. */
const ROWS = 6_500;
const PLAN: SheetPlan = {
  ...{ name: "Lines", rows: ROWS, cols: 3, columnWidths: { 0: 20 }, merges: [], freezeRows: 1 },
  names: { lines: { row: 0, col: 0, rows: ROWS, cols: 1 }, total: { row: 0, col: 1, rows: 1, cols: 1 } },
  cells: [
    ...Array.from({ length: ROWS }, (_, row) => ({ row, col: 0, kind: "input" as const, value: 1 })),
    { row: 0, col: 1, kind: "result", formula: "=SUM({lines})" },
    { row: 1, col: 1, kind: "result", formula: "={total}*2" },
  ],
};
const SUMS = [[ROWS], [2 * ROWS]];

const begun = jest.fn();
beforeEach(() => {
  begun.mockClear();
  onLongRedo(begun);
});
afterEach(() => {
  onLongRedo(undefined);
  tellRefusals(() => undefined);
});

const state = ({ workbook: { model } }: EmbeddedPort): unknown => ({ ...plainData(model), revisionId: "" });
const dispatch = ({ workbook: { model } }: EmbeddedPort, type: string, payload = {}) =>
  // The engine's types list commands with their payloads.
  (model.dispatch as unknown as (type: string, payload: object) => { isSuccessful: boolean })(type, payload);

/** Runs the steps, and calls `at` with each share; `stop` ends the work. */
const watched =
  (at: (share: number, stop: () => void) => void): Run =>
  (steps) => {
    const controller = new AbortController();
    return inSlices(steps, (share) => at(share, () => controller.abort()), controller.signal);
  };
async function redo(port: EmbeddedPort, at: (share: number, stop: () => void) => void = () => undefined) {
  // The clock runs so fast that every slice is over after one piece.
  let now = 0;
  const clock = jest.spyOn(performance, "now").mockImplementation(() => (now += 1000));
  try {
    await redoSlowly(port.workbook.model, watched(at));
  } finally {
    clock.mockRestore();
  }
}

/** A workbook with the insertion of a large sheet undone, whose first sheet reads it. */
async function undone() {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(PLAN);
  await port.writeCells("Sheet1", [{ row: 0, col: 0, formula: "=Lines!B2" }]);
  dispatch(port, "REQUEST_UNDO");
  const after = state(port);
  dispatch(port, "REQUEST_UNDO");
  return { port, after, before: state(port) };
}

test("it begins nothing at once, and in slices gives the sheet with its values, which follow an entry; one undo takes it back", async () => {
  const { port, after, before } = await undone();
  expect(dispatch(port, "REQUEST_REDO").isSuccessful).toBe(true);
  expect(begun).toHaveBeenCalledTimes(1);
  expect(state(port)).toEqual(before);
  const shares: number[] = [];
  await redo(port, (share) => shares.push(share));
  expect(shares.length).toBeGreaterThan(ROWS / 250);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(state(port)).toEqual(after);
  expect(await port.values("Lines", "B1:B2")).toEqual(SUMS);
  dispatch(port, "REQUEST_UNDO");
  expect(state(port)).toEqual(before);
  await redo(port);
  await port.fillNames("Lines", { lines: [11] });
  expect(await port.values("Lines", "B1:B2")).toEqual([[ROWS + 10], [2 * ROWS + 20]]);
});

test("the steps after it are redone after it, and a formula of another sheet has its value again", async () => {
  const { port } = await undone();
  await redo(port);
  dispatch(port, "REQUEST_REDO");
  expect(begun).not.toHaveBeenCalled();
  expect(await port.values("Sheet1", "A1")).toEqual([[2 * ROWS]]);
  for (let step = 0; step < 2; step++) dispatch(port, "REQUEST_UNDO");
  await redo(port);
  dispatch(port, "REQUEST_REDO");
  await port.fillNames("Lines", { lines: [2] });
  expect(await port.values("Sheet1", "A1")).toEqual([[2 * ROWS + 2]]);
});

test.each([0.05, 0.3, 0.59, 0.7])(
  "stopped at the share %p, it leaves the workbook as it was, and can be asked for again",
  async (at) => {
    const { port, after, before } = await undone();
    await expect(redo(port, (share, stop) => share >= at && stop())).rejects.toBeInstanceOf(Stopped);
    expect(state(port)).toEqual(before);
    expect(await port.sheetNames()).toEqual(["Sheet1"]);
    await redo(port);
    expect(state(port)).toEqual(after);
    expect(await port.values("Lines", "B1:B2")).toEqual(SUMS);
  },
);

test("meanwhile an entry, an undo and a second redo are refused, the sentence says how to stop it, and no half sheet is told of", async () => {
  const { port } = await undone();
  const told = new Set<string>();
  tellRefusals((sentence) => told.add(english(sentence)));
  const seen = new Set<unknown>();
  await redo(port, () => {
    seen.add(dispatch(port, "UPDATE_CELL", { sheetId: "sheet1", row: 3, col: 3, content: "9" }).isSuccessful);
    for (const type of ["REQUEST_UNDO", "REQUEST_REDO"]) seen.add(dispatch(port, type).isSuccessful);
    void port.sheetNames().then((names) => seen.add(names.length));
  });
  expect(seen).toEqual(new Set([false, 1]));
  expect([...told]).toEqual([
    "Not done: a step is being done again. Wait until it is done, or stop it at the top of the page; then try again.",
  ]);
  expect(await port.sheetNames()).toEqual(["Sheet1", "Lines"]);
});

test("cells that were written in slices come again with one redo in slices", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const rows = 25_000;
  await port.insertSheet({ ...PLAN, rows, names: { lines: { row: 0, col: 0, rows, cols: 1 } }, cells: [] });
  const before = state(port);
  await port.fillNames("Lines", { lines: Array.from({ length: rows }, (_, row) => row) });
  const after = state(port);
  dispatch(port, "REQUEST_UNDO");
  expect(state(port)).toEqual(before);
  await redo(port);
  expect(state(port)).toEqual(after);
  dispatch(port, "REQUEST_UNDO");
  expect(state(port)).toEqual(before);
});

test("an entry before it begins leaves nothing to redo, and nothing is done", async () => {
  const { port } = await undone();
  dispatch(port, "UPDATE_CELL", { sheetId: "sheet1", row: 3, col: 3, content: "9" });
  const before = state(port);
  await redo(port);
  expect(state(port)).toEqual(before);
});

test("rows that were deleted, and deleted again in slices, are gone with their values", async () => {
  const port = new EmbeddedPort(newWorkbook());
  await port.writeCells("Sheet1", [
    { row: 0, col: 0, value: 1 },
    { row: 1, col: 0, value: 2 },
    { row: 5, col: 1, formula: "=SUM(A1:A4)" },
  ]);
  const sheetId = port.workbook.model.getters.getActiveSheetId();
  dispatch(port, "REMOVE_COLUMNS_ROWS", { sheetId, sheetName: "Sheet1", dimension: "ROW", elements: [0] });
  dispatch(port, "REQUEST_UNDO");
  expect(await port.values("Sheet1", "A1:B6")).toContainEqual(["", 3]);
  await redo(port);
  expect(await port.values("Sheet1", "A1:B5")).toEqual([
    [2, ""],
    ["", ""],
    ["", ""],
    ["", ""],
    ["", 2],
  ]);
});
