/** Saves and opens a file in steps while the page stays responsive. */
import "../engine-in-node";
import { isDeepStrictEqual } from "node:util";
import { strFromU8, unzipSync } from "fflate";
import {
  EmbeddedPort,
  newWorkbook,
  opening,
  openXlsx,
  saveUnlessChanged,
  saveXlsx,
} from "../../../../src/workbook/embedded";
import { Model, runBatch, type Command } from "../../../../src/workbook/embedded/engine";
import { inSlices, Stopped, type Run } from "../../../../src/workbook/in-slices";
import type { SheetPlan } from "../../../../src/workbook/port";

const ROWS = 1200;
const LINES: SheetPlan = {
  ...{ name: "Lines", rows: ROWS, cols: 3, columnWidths: {}, merges: [], freezeRows: 0 },
  names: { lines: { row: 0, col: 0, rows: ROWS, cols: 1 } },
  cells: [{ row: 0, col: 1, kind: "result", formula: "=2*3" }],
};

async function workbook() {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(LINES);
  await port.fillNames("Lines", { lines: Array.from({ length: ROWS }, (_, i) => `${i};0.5;<${i}>`) });
  return port;
}

const deleteSheet = ({ workbook: { model } }: EmbeddedPort, sheetName: string): unknown =>
  model.dispatch("DELETE_SHEET", { sheetId: model.getters.getSheetIdByName(sheetName)!, sheetName });

const partsIn = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));

/** Runs steps with a pause after each; `between` is called in the pauses. */
const withPauses =
  (between: (share: number) => void): Run =>
  async (steps) => {
    for (;;) {
      const { done, value } = steps.next();
      if (done) return value;
      between(value);
      await Promise.resolve();
    }
  };

test("a file saved with pauses equals the file saved at once", async () => {
  const { workbook: open } = await workbook();
  const shares: number[] = [];
  const paused = partsIn(
    await saveXlsx(
      open,
      withPauses((share) => shares.push(share)),
    ),
  );
  expect(paused).toEqual(partsIn(await saveXlsx(open)));
  expect(shares.every(Number.isFinite)).toBe(true);
  expect(shares.length).toBeGreaterThan(4);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});

test.each([1, 10])("a file contains what a person typed while it was saved: %i times", async (times) => {
  const port = await workbook();
  let typed = 0;
  const run = withPauses((share) => {
    if (share > 0.5 && share < 0.95 && typed < times) void port.fillNames("Lines", { lines: [`typed ${++typed}`] });
  });
  const saved = openXlsx(await saveXlsx(port.workbook, run)).workbook;
  expect(typed).toBeGreaterThan(0);
  expect(await new EmbeddedPort(saved).values("Lines", "A1:B2")).toEqual([
    [`typed ${typed}`, 6],
    ["1;0.5;<1>", ""],
  ]);
});

const CHANGES: readonly [string, (port: EmbeddedPort) => unknown, string[]][] = [
  ["a cell is typed", (port) => port.fillNames("Lines", { lines: ["typed"] }), ["Sheet1", "Lines", "Lines 2"]],
  ["a sheet is deleted", (port) => deleteSheet(port, "Lines 2"), ["Sheet1", "Lines"]],
];

// The sheets are completed by the engine, taken from its data, and written.
test.each([0, 0.1, 0.37, 0.41, 0.8].flatMap((share) => CHANGES.map((change) => [share, ...change] as const)))(
  "a file is of one moment: when %d of it is made, %s",
  async (share, _, change, names) => {
    const port = await workbook();
    await port.insertSheet(LINES);
    let isChanged = false;
    const run = withPauses((done) => {
      if (!isChanged && done >= share) void change(port);
      isChanged ||= done >= share;
    });
    const saved = new EmbeddedPort(openXlsx(await saveXlsx(port.workbook, run)).workbook);
    expect(isChanged).toBe(true);
    expect(await saved.sheetNames()).toEqual(names);
    expect(await saved.values("Lines", "A1:B2")).toEqual(await port.values("Lines", "A1:B2"));
  },
);

/** A workbook with a table, and a sum of the rows that its filter shows. */
function withFilter() {
  const workbook = newWorkbook();
  const { model } = workbook;
  const sheetId = model.getters.getActiveSheetId();
  const ranges = [{ _sheetId: sheetId, _zone: { left: 0, right: 0, top: 0, bottom: 3 } }];
  const config = { hasFilters: true, totalRow: false, firstColumn: false, lastColumn: false, numberOfHeaders: 1 };
  const look = { bandedRows: true, bandedColumns: false, automaticAutofill: false, styleId: "TableStyleLight9" };
  const cells = ["Load", "1", "2", "4"].map((content, row) => ({ type: "UPDATE_CELL", sheetId, col: 0, row, content }));
  const commands: Command[] = [
    ...cells,
    { type: "UPDATE_CELL", sheetId, col: 2, row: 0, content: "=SUBTOTAL(109,A2:A4)" },
    { type: "CREATE_TABLE", sheetId, ranges, config: { ...config, ...look }, tableType: "static" },
  ];
  expect(runBatch(model, commands)).toEqual([]);
  const hide = (hiddenValues: string[]) =>
    model.dispatch("UPDATE_FILTER", { sheetId, col: 0, row: 0, value: { filterType: "values", hiddenValues } });
  return { workbook, hide };
}

test("a file is of one moment if a person sets a filter while it is made, in every fifth pause", async () => {
  const { workbook, hide } = withFilter();
  hide(["2"]);
  const wanted = partsIn(await saveXlsx(workbook));
  expect(wanted["xl/worksheets/sheet0.xml"]).toMatch(/<v>5<\/v>.*<row r="3" hidden="1">/s);
  const others: number[] = [];
  let count = 0;
  for (let isSet = true; isSet; count += 5) {
    hide([]);
    let pauses = 0;
    const run = withPauses(() => void (pauses++ === count && hide(["2"])));
    const saved = partsIn(await saveXlsx(workbook, run));
    isSet = pauses > count;
    if (isSet && !isDeepStrictEqual(saved, wanted)) others.push(count);
  }
  expect(count).toBeGreaterThan(20);
  expect(others).toEqual([]);
});

describe("a file of a workbook that is not changed meanwhile", () => {
  test("is the same as a saved one, also if both are made at once", async () => {
    const port = await workbook();
    const [copy, saved] = await Promise.all([saveUnlessChanged(port.workbook), saveXlsx(port.workbook)]);
    expect(unzipSync(copy!)).toEqual(unzipSync(saved));
  });

  test.each([0, 5])("is not made if somebody types after %i turns: it is begun once, and given up", async (turns) => {
    const port = await workbook();
    // Each slice is over at once.
    let clock = 0;
    const slow = jest.spyOn(performance, "now").mockImplementation(() => (clock += 1000));
    // This plugin of the engine makes the sheets of a file.
    const { handlers } = port.workbook.model as unknown as {
      readonly handlers: { exportSheets?(data: object): void }[];
    };
    const begun = jest.spyOn(
      handlers.find((one) => one.exportSheets) as { exportSheets(data: object): void },
      "exportSheets",
    );
    const making = saveUnlessChanged(port.workbook);
    for (let turn = 0; turn <= turns; turn++) await new Promise((next) => setTimeout(next, 0));
    await port.fillNames("Lines", { lines: ["typed"] });
    expect(await making).toBeUndefined();
    expect(begun).toHaveBeenCalledTimes(1);
    slow.mockRestore();
  });
});

test("saving that was stopped leaves the workbook unchanged, and it can be saved again", async () => {
  const port = await workbook();
  const stop = withPauses((share) => {
    if (share > 0.5) throw new Error("stopped");
  });
  await expect(saveXlsx(port.workbook, stop)).rejects.toThrow("stopped");
  expect(await port.sheetNames()).toEqual(["Sheet1", "Lines"]);
  expect((await saveXlsx(port.workbook)).length).toBeGreaterThan(1000);
});

test("a stop is heeded while the formulas are spelled", async () => {
  const port = await workbook();
  // Numbers are a part of the form, so the engine is asked for each of these, in more than one part.
  const cells = Array.from({ length: 700 }, (_, row) => ({ row, col: 2, formula: `=A1*${row + 2}` }));
  await port.writeCells("Lines", cells);
  const controller = new AbortController();
  const exported = jest.spyOn(Model.prototype, "exportXLSX");
  const run: Run = (steps) => {
    // The first call is for the workbook, the second for the first part of the formulas.
    if (exported.mock.calls.length === 2) controller.abort();
    return inSlices(steps, () => undefined, controller.signal);
  };
  await expect(saveXlsx(port.workbook, run)).rejects.toBeInstanceOf(Stopped);
  expect(exported).toHaveBeenCalledTimes(2);
  exported.mockRestore();
});

test("a file is opened in steps that report their share", async () => {
  const bytes = await saveXlsx((await workbook()).workbook);
  const shares: number[] = [];
  const { workbook: opened } = await withPauses((share) => shares.push(share))(opening(bytes));
  expect(shares.length).toBeGreaterThan(4);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(await new EmbeddedPort(opened).values("Lines", `A${ROWS}`)).toEqual([[`${ROWS - 1};0.5;<${ROWS - 1}>`]]);
});

test("the sheets of a file that is stopped while it is read are not inserted, and there is no step to undo", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const bytes = await saveXlsx((await workbook()).workbook);
  const controller = new AbortController();
  const shares: number[] = [];
  const tell = (share: number): void => {
    shares.push(share);
    controller.abort();
  };
  // Each slice is over at once.
  let clock = 0;
  const slow = jest.spyOn(performance, "now").mockImplementation(() => (clock += 1000));
  const going = { tell, signal: controller.signal };
  await expect(port.insertFile(bytes, going)).rejects.toBeInstanceOf(Stopped);
  slow.mockRestore();
  expect(shares).toHaveLength(1);
  expect(await port.sheetNames()).toEqual(["Sheet1"]);
  expect(port.workbook.model.getters.canUndo()).toBe(false);
});
