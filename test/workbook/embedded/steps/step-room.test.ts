/** Steps of undo are let go when they take too much room: the newest can be undone, and the page says that the others cannot. */
import "../engine-in-node";
import { english, type Message } from "../../../../src/reduction/message";
import { EmbeddedPort, newWorkbook } from "../../../../src/workbook/embedded";
import { carryOut, lastStep } from "../../../../src/workbook/embedded/steps/history";
import { tellRefusals, whileLifted } from "../../../../src/workbook/embedded/protection";
import { MOST_BYTES, StepRoom } from "../../../../src/workbook/embedded/steps/step-room";
import type { SheetPlan } from "../../../../src/workbook/port";

/** A text of this length has room for 15 others in the history. A person could not type it: no cell of Excel takes it. */
const LONG = 1e6;

const told: string[] = [];
beforeAll(() => tellRefusals((sentence: Message) => told.push(english(sentence))));
afterAll(() => tellRefusals(() => undefined));
beforeEach(() => void told.splice(0));

const dispatch = (port: EmbeddedPort, type: string, payload: object = {}): unknown =>
  // The engine types list commands with their payloads; here they are plain texts and objects.
  (port.workbook.model.dispatch as unknown as (type: string, payload: object) => unknown)(type, payload);

const ROWS = 30_000;
const COLUMN: SheetPlan = {
  ...{ name: "Column", rows: ROWS, cols: 1, cells: [], columnWidths: {}, merges: [], freezeRows: 0 },
  names: { column: { row: 0, col: 0, rows: ROWS, cols: 1 } },
};

/** Writes a long text into the first row of a column. */
const write = (port: EmbeddedPort, col: number): unknown =>
  whileLifted(() =>
    dispatch(port, "UPDATE_CELL", { sheetId: "sheet1", col, row: 0, content: String(col).padEnd(LONG, "x") }),
  );

/** The columns of the first row that have a text. */
const filled = ({ workbook: { model } }: EmbeddedPort): number[] =>
  Array.from({ length: 26 }, (_, col) => col).filter(
    (col) => model.getters.getCell({ sheetId: "sheet1", col, row: 0 }) !== undefined,
  );

test("the newest steps can be undone and redone; then a sentence says that those before were let go", () => {
  const port = new EmbeddedPort(newWorkbook());
  for (let col = 0; col < 20; col++) write(port, col);
  for (let step = 0; step < 20; step++) dispatch(port, "REQUEST_UNDO");
  const left = filled(port);
  expect(left).toEqual(Array.from({ length: 20 - Math.floor(MOST_BYTES / LONG) + 1 }, (_, col) => col));
  expect(told[0]).toMatch(/^Not undone: the steps before this one were let go/);
  // The workbook is not as it was when it was opened, so the page still asks before it opens another.
  expect(lastStep(port.workbook.model)).toBeDefined();
  for (let step = 0; step < 20; step++) dispatch(port, "REQUEST_REDO");
  expect(filled(port)).toHaveLength(20);
});

test("nothing is said where every step can be undone", () => {
  const port = new EmbeddedPort(newWorkbook());
  write(port, 0);
  for (let step = 0; step < 3; step++) dispatch(port, "REQUEST_UNDO");
  expect([filled(port), told, lastStep(port.workbook.model)]).toEqual([[], [], undefined]);
});

test("the last step and the one before are kept whatever they take, one of them written in slices", async () => {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(COLUMN);
  write(port, 0);
  // They have no room beside the steps before.
  const texts = Array.from({ length: ROWS }, (_, row) => `${row}`.padEnd(600, "y"));
  await port.fillNames("Column", { column: texts });
  write(port, 1);
  dispatch(port, "REQUEST_UNDO");
  dispatch(port, "REQUEST_UNDO");
  expect((await port.readNames("Column", ["column"])).column?.filter(([text]) => text !== "")).toEqual([]);
  expect(filled(port)).toEqual([0]);
  dispatch(port, "REQUEST_UNDO");
  expect(told).toHaveLength(1);
  dispatch(port, "REQUEST_REDO");
  expect((await port.readNames("Column", ["column"])).column?.at(-1)).toEqual([texts.at(-1)]);
});

test("where a refused step took the place of an undone one, what was undone after that is not redone without it", () => {
  const port = new EmbeddedPort(newWorkbook());
  for (let col = 0; col < 10; col++) write(port, col);
  for (let step = 0; step < 3; step++) dispatch(port, "REQUEST_UNDO");
  // Twelve and a half long texts, and a cell of a sheet that is not there.
  const texts = Array.from({ length: 13 }, (_, row) => "y".repeat(row === 0 ? LONG / 2 : LONG));
  const refused = whileLifted(() =>
    carryOut(port.workbook.model, [
      ...texts.map((content, row) => ({ type: "UPDATE_CELL", sheetId: "sheet1", col: 20, row, content })),
      { type: "UPDATE_CELL", sheetId: "gone", col: 0, row: 0, content: "1" },
    ]),
  );
  expect(refused).toHaveLength(1);
  expect(filled(port)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  for (let step = 0; step < 3; step++) dispatch(port, "REQUEST_REDO");
  expect(filled(port)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  dispatch(port, "REQUEST_UNDO");
  expect(filled(port)).toEqual([0, 1, 2, 3, 4, 5]);
});

test("what the engine keeps of a step is let go with it, and never that of a wanted one", () => {
  const room = new StepRoom();
  const step = () => ({ _commands: [{ content: "z".repeat(MOST_BYTES / 2) }], _changes: [1, 2] });
  const steps = { a: step(), b: step(), c: step() };
  for (const [id, one] of Object.entries(steps)) room.add(id, one);
  expect(room.excess(new Set(["a", "c"]))).toEqual(["b"]);
  room.letGo("b");
  expect(steps.b).toEqual({ _commands: [], _changes: [] });
  expect([room.has("a"), room.has("b")]).toEqual([true, false]);
  expect(room.excess(new Set(["a", "c"]))).toEqual([]);
});
