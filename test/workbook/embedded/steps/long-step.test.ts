/**
 * Sheets that are inserted in slices: the step is that of an insertion at once; while it is made nothing else changes the workbook;
 * stopped, it leaves the workbook as it was.
 */
import "../engine-in-node";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../../src/workbook/embedded";
import { plainData } from "../../../../src/workbook/embedded/engine";
import { Stopped, type Course } from "../../../../src/workbook/in-slices";
import type { SheetPlan } from "../../../../src/workbook/port";

const ROWS = 40;
const PLAN: SheetPlan = {
  ...{ name: "Lines", rows: ROWS, cols: 3, columnWidths: { 0: 20 }, merges: [], freezeRows: 1 },
  names: { lines: { row: 0, col: 0, rows: ROWS, cols: 1 }, total: { row: 0, col: 1, rows: 1, cols: 1 } },
  cells: [
    ...Array.from({ length: ROWS }, (_, row) => ({ row, col: 0, kind: "input" as const, value: row })),
    { row: 0, col: 1, kind: "result", formula: "=SUM({lines})" },
    { row: 1, col: 1, kind: "result", formula: "={total}*2" },
  ],
};

/** The clock runs so fast that every slice is over after one step. */
let quick: jest.SpyInstance;
beforeEach(() => {
  let clock = 0;
  quick = jest.spyOn(performance, "now").mockImplementation(() => (clock += 1000));
});
afterEach(() => quick.mockRestore());

async function bench() {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(PLAN);
  return port;
}

/** A course that calls `at` with each share; `stop` ends it. */
function course(at: (share: number, stop: () => void) => void): Course {
  const controller = new AbortController();
  return { tell: (share) => at(share, () => controller.abort()), signal: controller.signal };
}

const asIs = ({ workbook: { model } }: EmbeddedPort): object => plainData(model);
const dispatch = ({ workbook: { model } }: EmbeddedPort, type: string, payload = {}) =>
  (model.dispatch as unknown as (type: string, payload: object) => { isSuccessful: boolean })(type, payload);

test("the shares rise, and the sheet is whole: one undo takes it away, one redo brings it again", async () => {
  const port = await bench();
  const shares: number[] = [];
  const before = asIs(port);
  const sheet = await port.insertSheet(
    PLAN,
    undefined,
    course((share) => shares.push(share)),
  );
  expect(shares.length).toBeGreaterThan(ROWS);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(await port.values(sheet, "B1:B2")).toEqual([[780], [1560]]);
  dispatch(port, "REQUEST_UNDO");
  expect({ ...asIs(port), revisionId: "" }).toEqual({ ...before, revisionId: "" });
  dispatch(port, "REQUEST_REDO");
  expect(await port.values(sheet, "B1:B2")).toEqual([[780], [1560]]);
  await port.fillNames(sheet, { lines: [1000] });
  expect(await port.values(sheet, "B1:B2")).toEqual([[1780], [3560]]);
});

test.each([0.05, 0.3, 0.59, 0.65, 0.95])("stopped at the share %p, it leaves the workbook as it was", async (at) => {
  const port = await bench();
  await port.fillNames("Lines", { lines: [5] });
  dispatch(port, "REQUEST_UNDO");
  const before = asIs(port);
  const stopping = course((share, stop) => share >= at && stop());
  await expect(port.insertSheet(PLAN, undefined, stopping)).rejects.toBeInstanceOf(Stopped);
  expect(asIs(port)).toEqual(before);
  expect(await port.sheetNames()).toEqual(["Sheet1", "Lines"]);
  dispatch(port, "REQUEST_REDO");
  expect(await port.values("Lines", "B1")).toEqual([[785]]);
  expect(await port.insertSheet(PLAN)).toBe("Lines 2");
  expect(await port.values("Lines 2", "B1:B2")).toEqual([[780], [1560]]);
});

test("after an insertion that was stopped while its cells were evaluated, formulas follow the cells that the new sheet read", async () => {
  const port = await bench();
  await port.writeCells("Sheet1", [
    { row: 0, col: 0, value: 1 },
    { row: 0, col: 1, formula: "=SUM(A1:A9)" },
  ]);
  const reading: SheetPlan = {
    ...PLAN,
    cells: [...PLAN.cells, { row: 0, col: 2, kind: "result", formula: "=SUM(Sheet1!A1:A9)" }],
  };
  const stopping = course((share, stop) => share >= 0.99 && stop());
  await expect(port.insertSheet(reading, undefined, stopping)).rejects.toBeInstanceOf(Stopped);
  const sheetId = port.workbook.model.getters.getSheetIdByName("Sheet1");
  dispatch(port, "UPDATE_CELL", { sheetId, row: 0, col: 0, content: "20" });
  expect(await port.values("Sheet1", "A1:B1")).toEqual([[20, 20]]);
});

test.each([0.2, 0.45, 0.7, 0.98])(
  "a file's sheets, stopped at the share %p, leave the workbook as it was",
  async (at) => {
    const file = await saveXlsx((await bench()).workbook);
    const port = await bench();
    const before = asIs(port);
    await expect(
      port.insertFile(
        file,
        course((share, stop) => share >= at && stop()),
      ),
    ).rejects.toBeInstanceOf(Stopped);
    expect(asIs(port)).toEqual(before);
    expect(port.workbook.model.getters.getSheetIds()).toHaveLength(2);
  },
);

test("meanwhile an entry, an undo and the view of the unfinished sheet are refused; other sheets are shown, and no half sheet", async () => {
  const port = await bench();
  const { model } = port.workbook;
  const sheetId = model.getters.getSheetIdByName("Lines")!;
  const seen = new Set<string>();
  const changes: string[] = [];
  await port.onChange((change) => changes.push(change));
  await port.insertSheet(
    PLAN,
    undefined,
    course((share) => {
      const id = model.getters.getSheetIdByName("Lines 2");
      if (id === undefined || share > 0.9) return;
      // The sheet in front may be drawn.
      expect(model.getters.getColRowOffset("COL", 0, 1, sheetId)).toBeGreaterThan(0);
      seen.add(`entry ${dispatch(port, "UPDATE_CELL", { sheetId, row: 0, col: 0, content: "9" }).isSuccessful}`);
      seen.add(`undo ${dispatch(port, "REQUEST_UNDO").isSuccessful}`);
      const [sheetIdFrom, sheetIdTo] = [model.getters.getActiveSheetId(), id];
      seen.add(`half sheet ${dispatch(port, "ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo }).isSuccessful}`);
      const first = model.getters.getSheetIds()[0]!;
      seen.add(`first sheet ${dispatch(port, "ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo: first }).isSuccessful}`);
      void port.sheetNames().then((names) => seen.add(`sheets ${names.length}`));
      expect(changes).toEqual([]);
    }),
  );
  const expected = ["entry false", "first sheet true", "half sheet false", "sheets 2", "undo false"];
  expect([...seen].sort()).toEqual(expected);
  expect(await port.values("Lines", "A1")).toEqual([[0]]);
  expect(changes).toContain("sheets");
});

test("what the pane writes meanwhile is written when the sheet is there, and a second sheet gets a free name", async () => {
  const port = await bench();
  let written: Promise<void> | undefined;
  let other: Promise<string> | undefined;
  const sheet = await port.insertSheet(
    PLAN,
    undefined,
    course((share) => {
      if (share < 0.3) return;
      written ??= port.fillNames("Lines", { lines: [100] });
      other ??= port.insertSheet(PLAN);
    }),
  );
  await written;
  expect([sheet, await other]).toEqual(["Lines 2", "Lines 3"]);
  for (const [name, total] of [
    ["Lines", 880],
    ["Lines 2", 780],
    ["Lines 3", 780],
  ] as const)
    // prettier-ignore
    expect(await port.values(name, "B1")).toEqual([[total]]);
});

test("a file that is saved meanwhile has no half sheet", async () => {
  const port = await bench();
  let saving: Promise<Uint8Array> | undefined;
  await port.insertSheet(
    PLAN,
    undefined,
    course((share) => {
      if (share > 0.3) saving ??= saveXlsx(port.workbook);
    }),
  );
  const saved = new EmbeddedPort(openXlsx((await saving)!).workbook);
  expect(await saved.sheetNames()).toEqual(["Sheet1", "Lines", "Lines 2"]);
  expect(await saved.values("Lines 2", "B1:B2")).toEqual([[780], [1560]]);
});

test("another workbook that is opened meanwhile gets nothing, and the sentence says so", async () => {
  const port = await bench();
  const other = newWorkbook();
  const inserting = port.insertSheet(
    PLAN,
    undefined,
    course((share) => share > 0.3 && port.workbook.model !== other.model && port.attach(other)),
  );
  await expect(inserting).rejects.toThrow(
    "Another workbook was opened while sheets were inserted. Nothing was inserted",
  );
  expect(await port.sheetNames()).toEqual(["Sheet1"]);
});
