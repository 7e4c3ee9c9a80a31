import { LINES_AT_ONCE, NOT_FINISHED } from "../../../../src/exchange/logger/file-sheet";
import { Stopped } from "../../../../src/workbook/in-slices";
import {
  NotKept,
  SheetChanged,
  writeReadings,
  type Job,
  type Kept,
} from "../../../../src/pane/screens/readings/into-workbook";
import type { CellValue } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";

const lines = Array.from({ length: 2 * LINES_AT_ONCE + 3 }, (_, index) => `${index};1,5`);
const job: Job = {
  dataSheet: "Test 7",
  columns: { times_01: [0], readings_01: [1.5] },
  blank: ["readings_01"],
  record: { dataSheet: "Test 7", file: "a.csv", remarks: [], loads: [], layoutWords: [], lines: lines.length } as never,
  lines,
  keptAll: "all of them",
};

function workbook(): FakePort {
  const port = new FakePort();
  port.onlySheets("Test 7");
  port.lay("Test 7", { times_01: ["", ""], readings_01: ["", ""] });
  return port;
}
const keptLines = (port: FakePort): CellValue[] =>
  Object.entries(port.columns("Readings Test 7"))
    .filter(([name]) => name.startsWith("logger_lines"))
    .flatMap(([, cells]) => cells.filter((cell) => cell !== ""));

test("all lines are written in pieces, in order, and the data sheet last, in one call", async () => {
  const port = workbook();
  const fill = jest.spyOn(port, "fillNames");
  const told: number[] = [];
  await writeReadings(port, job, undefined, ({ lines: kept }) => told.push(kept), new AbortController().signal);
  expect(told).toEqual([0, LINES_AT_ONCE, 2 * LINES_AT_ONCE, lines.length]);
  expect(keptLines(port)).toEqual(lines);
  expect(fill.mock.calls[fill.mock.calls.length - 1]).toEqual(["Test 7", job.columns, job.blank]);
  expect(port.columns("Test 7")).toEqual({ times_01: [0, ""], readings_01: [1.5, ""] });
  expect(port.columns("Readings Test 7").logger_kept).toEqual(["all of them"]);
});

test("stopped half-way, the data sheet is unchanged, and the next time continues from there", async () => {
  const port = workbook();
  const controller = new AbortController();
  let kept: Kept | undefined;
  const tell = (now: Kept): void => {
    kept = now;
    if (now.lines > 0) controller.abort();
  };
  await expect(writeReadings(port, job, undefined, tell, controller.signal)).rejects.toBeInstanceOf(Stopped);
  expect(kept!.lines).toBe(LINES_AT_ONCE);
  expect(port.columns("Test 7")).toEqual({ times_01: ["", ""], readings_01: ["", ""] });
  expect(port.inserted[0].cells.some(({ value }) => value === NOT_FINISHED)).toBe(true);

  await writeReadings(port, job, kept, () => undefined, new AbortController().signal);
  expect(port.inserted).toHaveLength(1);
  expect(keptLines(port)).toEqual(lines);
  expect(port.columns("Test 7").readings_01[0]).toBe(1.5);
});

test("a file sheet made for other choices, or deleted since, is not continued", async () => {
  const port = workbook();
  const before: Kept = { record: "other", sheet: "Readings Test 7", lines: LINES_AT_ONCE };
  await writeReadings(port, job, before, () => undefined, new AbortController().signal);
  expect(keptLines(port)).toEqual(lines);
});

/**
 * A workbook in which a person undoes, or types, right after a piece of lines is written; `piece` counts pieces from 1.
 */
function disturbed(disturb: (port: FakePort, sheet: string, piece: number) => void): FakePort {
  const port = workbook();
  const fill = port.fillNames;
  let piece = 0;
  port.fillNames = async (sheet, values, blank) => {
    await fill(sheet, values, blank);
    if (Object.keys(values).some((name) => name.startsWith("logger_lines"))) disturb(port, sheet, ++piece);
  };
  return port;
}

test("a piece that an undo removes in between is written again before the sheet says that all lines are there", async () => {
  const port = disturbed((port, sheet, piece) => {
    if (piece === 1) for (let row = 0; row < LINES_AT_ONCE; row++) port.put(sheet, "logger_lines_001", row, "");
  });
  await writeReadings(port, job, undefined, () => undefined, new AbortController().signal);
  expect(keptLines(port)).toEqual(lines);
  expect(port.columns("Readings Test 7").logger_kept).toEqual(["all of them"]);
});

test("lines that do not stay are reported, the sheet does not say that they are there, and nothing else is written", async () => {
  const port = disturbed((port, sheet, piece) => {
    if (piece > 1) port.put(sheet, "logger_lines_002", 7, "another");
  });
  const told: Kept[] = [];
  const writing = writeReadings(port, job, undefined, (kept) => told.push(kept), new AbortController().signal);
  await expect(writing).rejects.toEqual(new NotKept("Readings Test 7", LINES_AT_ONCE + 8));
  expect(port.columns("Readings Test 7").logger_kept).toEqual([NOT_FINISHED]);
  expect(port.columns("Test 7")).toEqual({ times_01: ["", ""], readings_01: ["", ""] });
  // The next time continues from the piece that was not kept.
  expect(told[told.length - 1].lines).toBe(LINES_AT_ONCE);
});

test.each<[string, (port: FakePort) => void, string | undefined]>([
  ["renamed", (port) => port.renameSheet("Test 7", "Test 8"), "Test 8"],
  ["deleted", (port) => port.onlySheets("Readings Test 7"), undefined],
  ["replaced by another of its name", (port) => port.onlySheets("Readings Test 7", "Test 7"), undefined],
])("a data sheet that is %s in the middle is told of, and is not written", async (_, change, now) => {
  const port = workbook();
  let kept = 0;
  const tell = ({ lines: count }: Kept): void => {
    kept = count;
    if (count === LINES_AT_ONCE) change(port);
  };
  const writing = writeReadings(port, job, undefined, tell, new AbortController().signal);
  await expect(writing).rejects.toBeInstanceOf(SheetChanged);
  await expect(writing).rejects.toMatchObject({ sheet: "Test 7", now });
  expect(kept).toBe(LINES_AT_ONCE);
  for (const sheet of await port.sheetNames()) expect(port.columns(sheet).readings_01 ?? ["", ""]).toEqual(["", ""]);
});
