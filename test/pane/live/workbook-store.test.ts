import { say } from "../../../src/reduction/message";
import { RECORD, type Want } from "../../../src/pane/live/want";
import { readTest, WorkbookStore } from "../../../src/pane/live/workbook-store";
import { WorkbookError, type CellValue } from "../../../src/workbook/port";
import { FAILURES, FakePort } from "../fake-port";

const CELLS: Record<string, CellValue[]> = { times_01: [0, 1], readings_01: [100, 110], project: ["A"] };
const WHOLE: Want = { contents: ["dry_mass"], hidden: true, beside: [{ mark: "limit_name", names: ["limit_name"] }] };

let port: FakePort;
let store: WorkbookStore;
let leave: (() => void)[];

beforeEach(() => {
  jest.useFakeTimers();
  port = new FakePort();
  port.onlySheets("Test 1", "Notes", "Test 2");
  port.lay("Test 1", CELLS);
  port.lay("Test 2", { ...CELLS, project: ["B"] });
  store = new WorkbookStore(port);
  leave = [];
});
afterEach(async () => {
  leave.forEach((one) => one());
  await settle();
  expect(port.listeners.size).toBe(0);
  jest.useRealTimers();
});

const settle = (): Promise<void> => jest.advanceTimersByTimeAsync(1000);
const follow = async (want?: Want): Promise<jest.Mock> => {
  const heard = jest.fn();
  leave.push(store.follow(heard, want));
  await settle();
  return heard;
};
const project = (): unknown => store.snapshot().reading?.record.words.project;
/** Counts the requests to the workbook, by method. */
function counting() {
  const asked = (["findSheets", "lookAt", "activeSheet", "readSheets", "readNames", "selection"] as const).map(
    (method) => [method, jest.spyOn(port, method)] as const,
  );
  return (): Record<string, number> =>
    Object.fromEntries(
      asked.flatMap(([method, spy]) => {
        const calls = spy.mock.calls.length;
        spy.mockClear();
        // The fake's own `lookAt` calls readNames.
        return calls > 0 && method !== "readNames" ? [[method, calls]] : [];
      }),
    );
}

test("several followers share one reading: the sheets once, the current test once", async () => {
  const asked = counting();
  leave.push(store.follow(jest.fn()), store.follow(jest.fn(), RECORD));
  await follow(RECORD);
  expect(asked()).toEqual({ findSheets: 1, lookAt: 1 });
  expect(store.snapshot().current).toMatchObject({ sheet: "Test 1", tests: ["Test 1", "Test 2"] });
  expect(project()).toBe("A");
  await follow(RECORD);
  expect(asked()).toEqual({});
});

test("if only the name of the test is followed, no cell is read", async () => {
  const asked = counting();
  await follow();
  port.tell("values");
  await settle();
  expect(asked()).toEqual({ findSheets: 1 });
  expect(store.snapshot()).toEqual({ current: expect.objectContaining({ sheet: "Test 1" }) });
});

test("a move of the selection reads nothing", async () => {
  await follow(WHOLE);
  const asked = counting();
  port.tellSelected();
  await settle();
  expect(asked()).toEqual({});
});

test("many changes of values cause one reading of the current test, and of no other sheet", async () => {
  await follow(RECORD);
  const asked = counting();
  for (let change = 0; change < 20; change++) port.tell("values");
  await settle();
  expect(asked()).toEqual({ lookAt: 1 });
});

test("an equal reading is the same object, and no follower is told; a different one keeps its equal parts", async () => {
  const heard = await follow(RECORD);
  const { reading } = store.snapshot();
  heard.mockClear();
  port.tell("values", "front", "sheets");
  await settle();
  expect(heard).not.toHaveBeenCalled();
  expect(store.snapshot().reading).toBe(reading);
  port.put("Test 1", "readings_01", 1, 111);
  port.tell("values");
  await settle();
  expect(heard).toHaveBeenCalledTimes(1);
  const next = store.snapshot().reading!;
  expect(next).not.toBe(reading);
  expect(next.values.times_01).toBe(reading!.values.times_01);
  expect(next.names).toBe(reading!.names);
});

test("a new sheet in front is followed without reading the others; a sheet that is not a data sheet keeps the last test", async () => {
  await follow(RECORD);
  const asked = counting();
  port.bringForward("Test 2");
  await settle();
  expect(asked()).toEqual({ activeSheet: 1, lookAt: 1 });
  expect(project()).toBe("B");
  port.bringForward("Notes");
  await settle();
  expect(store.snapshot().current).toMatchObject({ sheet: "Test 2", other: { sheet: "Notes", isTest: false } });
  expect(project()).toBe("B");
});

test("back at an earlier test, an equal reading is the same object; until it is read nothing is shown of it", async () => {
  await follow(RECORD);
  const { reading } = store.snapshot();
  port.bringForward("Test 2");
  await settle();
  const shown: unknown[] = [];
  leave.push(store.follow(() => void shown.push([store.snapshot().current.sheet, store.snapshot().reading?.sheet])));
  port.bringForward("Test 1");
  await settle();
  expect(store.snapshot().reading).toBe(reading);
  expect(shown).toEqual([
    ["Test 1", undefined],
    ["Test 1", "Test 1"],
  ]);
});

test("a pin holds the test, also when the sheet is renamed; without the pin the sheet in front is followed again", async () => {
  await follow(RECORD);
  store.pin(true);
  port.bringForward("Test 2");
  await settle();
  expect(store.snapshot().current).toMatchObject({
    sheet: "Test 1",
    isPinned: true,
    other: { sheet: "Test 2", isTest: true },
  });
  port.renameSheet("Test 1", "Boring 3");
  await settle();
  expect(store.snapshot().current).toMatchObject({ sheet: "Boring 3", isPinned: true });
  expect(store.snapshot().reading?.sheet).toBe("Boring 3");
  store.pin(false);
  await settle();
  expect(store.snapshot().current).toMatchObject({ sheet: "Test 2", isPinned: false });
  expect(project()).toBe("B");
});

test("a test that a person chooses is pinned and read", async () => {
  await follow(RECORD);
  store.choose("Test 2");
  await settle();
  expect(store.snapshot().current).toMatchObject({ sheet: "Test 2", isPinned: true });
  expect(project()).toBe("B");
});

test("if a pinned sheet is deleted, the sheet in front is followed", async () => {
  await follow(RECORD);
  store.pin(true);
  port.bringForward("Test 2");
  port.deleteSheet("Test 1");
  await settle();
  expect(store.snapshot().current).toMatchObject({ sheet: "Test 2", isPinned: false, tests: ["Test 2"] });
  expect(project()).toBe("B");
});

test("a renamed sheet is found again if the host does not report the new name", async () => {
  await follow(RECORD);
  const { tell } = port;
  port.tell = () => undefined;
  port.renameSheet("Test 1", "Boring 3");
  port.tell = tell;
  port.tell("values");
  await settle();
  expect(store.snapshot()).toMatchObject({ current: { sheet: "Boring 3" }, reading: { sheet: "Boring 3" } });
  expect(store.snapshot().error).toBeUndefined();
});

test("a sheet that lost its names is no data sheet any more; without one, names are looked for when something is typed", async () => {
  port.onlySheets("Test 1");
  port.lay("Test 1", CELLS);
  await follow(RECORD);
  port.lay("Test 1", {});
  port.tell("values");
  await settle();
  expect(store.snapshot()).toEqual({ current: { isPinned: false, tests: [] } });
  port.lay("Test 1", CELLS);
  port.tell("values");
  await settle();
  expect(project()).toBe("A");
});

test("a follower that wants more is read for; one that wants less continues with it", async () => {
  port.lay("Limits", { limit_name: ["Q01.note_below"] });
  await follow(RECORD);
  expect(store.snapshot().reading?.beside).toEqual([]);
  const asked = counting();
  await follow(WHOLE);
  expect(asked()).toEqual({ findSheets: 1, lookAt: 1 });
  const { reading } = store.snapshot();
  expect(reading?.beside.map(({ sheet, values }) => [sheet, values])).toEqual([
    ["Limits", { limit_name: [["Q01.note_below"]] }],
  ]);
  await follow(RECORD);
  expect(asked()).toEqual({});
  expect(store.snapshot().reading).toBe(reading);
});

test("while the pane writes nothing is read; afterwards once", async () => {
  await follow(RECORD);
  const asked = counting();
  const release = store.hold();
  port.put("Test 1", "project", 0, "C");
  port.tell("values");
  await settle();
  expect(asked()).toEqual({});
  release();
  release();
  await settle();
  expect(asked()).toEqual({ lookAt: 1 });
  expect(project()).toBe("C");
});

test("a change that comes during a reading is read too", async () => {
  await follow(RECORD);
  const { lookAt } = port;
  port.lookAt = async (asked) => {
    const found = await lookAt(asked);
    await new Promise((resolve) => setTimeout(resolve, 2000));
    return found;
  };
  port.tell("values");
  await jest.advanceTimersByTimeAsync(1000);
  port.put("Test 1", "project", 0, "D");
  port.tell("values");
  await jest.advanceTimersByTimeAsync(10_000);
  expect(project()).toBe("D");
});

test("a failure is reported, the last reading stays, and the next successful reading clears the failure", async () => {
  await follow(RECORD);
  port.failure = new WorkbookError(say`Excel is busy: wait a moment.`);
  port.tell("values");
  await settle();
  expect(store.snapshot()).toMatchObject({ error: "Excel is busy: wait a moment.", reading: { sheet: "Test 1" } });
  port.failure = undefined;
  await store.again();
  expect(store.snapshot().error).toBeUndefined();
  expect(project()).toBe("A");
});

test("a sheet that nobody follows is not read; it is read when a follower comes", async () => {
  const asked = counting();
  port.tell("values");
  await settle();
  expect(asked()).toEqual({});
  await follow(RECORD);
  leave.pop()!();
  asked();
  port.put("Test 1", "project", 0, "E");
  port.tell("values");
  await settle();
  expect(asked()).toEqual({});
  await follow(RECORD);
  expect(project()).toBe("E");
});

test("a sheet can be read at once, whichever test is current", async () => {
  port.lay("Limits", { limit_name: ["x"] });
  const reading = await readTest(port, "Test 2", WHOLE);
  expect(reading).toMatchObject({
    sheet: "Test 2",
    record: { words: { project: "B" } },
    beside: [{ sheet: "Limits" }],
  });
  await expect(readTest(port, "Nowhere", WHOLE)).rejects.toThrow(FAILURES.gone("Nowhere").message);
});
