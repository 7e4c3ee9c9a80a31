import {
  againAnswered,
  againFound,
  keptFor,
  readable,
  type KeptFile,
} from "../../../../src/pane/screens/readings/again-state";
import { keptLinesOf, writeAgain, type AgainJob } from "../../../../src/pane/screens/readings/write-again";
import type { ReadBefore } from "../../../../src/exchange/logger/again";
import {
  AGAIN_NAMES,
  fileSheet,
  keptAll,
  LINES_AT_ONCE,
  linesKept,
  linesName,
  type FileRecord,
} from "../../../../src/exchange/logger/file-sheet";
import type { Layout } from "../../../../src/exchange/logger/layout";
import { readRows } from "../../../../src/exchange/logger/rows";
import { targetOf } from "../../../../src/exchange/logger/target";
import { text } from "../../../../src/pane/text";
import { atOnce } from "../../../../src/workbook/in-slices";
import type { CellValue } from "../../../../src/workbook/port";
import type { Course } from "../../../../src/workbook/in-slices";
import { FakePort } from "../../fake-port";

const LAYOUT: Layout = {
  ...{ delimiter: ",", decimal: ".", firstLine: 1, time: 0, timeForm: "min", timesRun: "test", date: null },
  ...{ dateOrder: "ymd", reading: 1, readingUnit: "div", sense: "rise", load: 2, loadKind: "stress", loadUnit: "kPa" },
  ...{ lever: 1, noReading: [] },
};
const lineOf = (t: number): string => `${t},${10 + t},25`;
const LINES = Array.from({ length: LINES_AT_ONCE + 40 }, (_, t) => lineOf(t));
const STANDING = LINES_AT_ONCE - 10;
const READ: ReadBefore = {
  choices: { way: "load", rule: "first", thinning: "all" },
  loads: [{ load: 1, fromLine: 1, toLine: STANDING }],
  starts: [1],
  to: STANDING,
};
const RECORD: FileRecord = {
  ...{ dataSheet: "Test 7", file: "a.csv", sha256: "ab", hashOf: "bytes", encoding: "UTF-8", apparatus: "F" },
  ...{ layout: LAYOUT, layoutWords: [], loads: [], remarks: [], lines: STANDING, read: READ },
};

async function workbook(): Promise<FakePort> {
  const port = new FakePort();
  port.onlySheets("Test 7");
  port.lay("Test 7", { times_01: [0, 1, "", "", ""], readings_01: [10, 11, "", "", ""] });
  await port.insertSheet(fileSheet(RECORD));
  await port.fillNames("Readings Test 7", {
    [linesName(0)]: LINES.slice(0, STANDING),
    logger_kept: [keptAll(STANDING)],
  });
  return port;
}
const JOB: AgainJob = {
  ...{ dataSheet: "Test 7", fileSheet: "Readings Test 7", day: "2031-03-03 08:00", sha256: "cd", said: "load 1" },
  columns: { times_01: [null, null, 2], readings_01: [null, null, 12] },
  read: { ...READ, to: LINES.length },
  lines: LINES,
  standing: STANDING,
};
const course = (): Course => ({ tell: () => undefined, signal: new AbortController().signal });
const filled = (cells: readonly CellValue[] = []): CellValue[] => cells.filter((cell) => cell !== "");

test("the kept lines grow past their piece, and the list says day, lines, hash and what came in", async () => {
  const port = await workbook();
  await writeAgain(port, JOB, new Set(), course());
  expect([port.noted, port.notes]).toEqual([[`readings again of ${JOB.dataSheet}`], []]);
  const columns = port.columns("Readings Test 7");
  expect([...filled(columns[linesName(0)]), ...filled(columns[linesName(1)])]).toEqual(LINES);
  expect(await keptLinesOf(port, "Readings Test 7", LINES.length)).toEqual(LINES);
  expect(AGAIN_NAMES.map((name) => filled(columns[name])[0])).toEqual([
    "2031-03-03 08:00",
    LINES.length,
    "cd",
    "load 1",
  ]);
  expect(linesKept(String(columns.logger_kept![0]))).toBe(LINES.length);
  expect(JSON.parse(String(columns.logger_read![0]))).toEqual(JOB.read);
  expect(port.columns("Test 7").readings_01).toEqual([10, 11, 12, "", ""]);
  // The hash of the first reading stays.
  expect(columns.logger_sha256).toEqual(["ab"]);
});

test("a cell of the data sheet that was filled in the meantime is not written over, and nothing is recorded", async () => {
  const port = await workbook();
  port.put("Test 7", "readings_01", 2, 99);
  await expect(writeAgain(port, JOB, new Set(), course())).rejects.toThrow(text.readAgain.filled(1, "Test 7"));
  expect(port.columns("Test 7").readings_01).toEqual([10, 11, 99, "", ""]);
  expect(JSON.parse(String(port.columns("Readings Test 7").logger_read![0]))).toEqual(READ);
});

test("a full list of readings is told before anything is written", async () => {
  const port = await workbook();
  const rows = port.columns("Readings Test 7").logger_again_day!.length;
  await port.fillNames("Readings Test 7", { logger_again_day: Array<string>(rows).fill("x") });
  await expect(writeAgain(port, JOB, new Set(), course())).rejects.toThrow(text.readAgain.full("Readings Test 7"));
  expect(port.columns("Test 7").readings_01).toEqual([10, 11, "", "", ""]);
});

describe("what a file has to add", () => {
  const values = {
    stress_unit: [["kPa"]],
    load_stress: [[25]],
    times_01: [[0], [1], [2], [3], ...Array<CellValue[]>(20).fill([""])],
    readings_01: [[10], [11], [12], [13], ...Array<CellValue[]>(20).fill([""])],
  };
  const kept: KeptFile = {
    ...{ sheet: "Readings Test 7", file: "a.csv", dataSheet: "Test 7", lines: 4, layout: LAYOUT },
    read: { ...READ, loads: [{ load: 1, fromLine: 1, toLine: 4 }], to: 4 },
  };
  const look = (
    lines: readonly string[],
    endsWhole: boolean,
    isFinished: boolean,
    keptLines = LINES.slice(0, 4),
    factor: CellValue = "",
    readingUnit = "div",
  ) => {
    const layout = { ...LAYOUT, readingUnit };
    const file = readable({ lines, encoding: "UTF-8", endsWhole }, isFinished, keptLines);
    const rows = atOnce(readRows(file, layout));
    return againFound(
      {
        keptLines,
        file,
        rows,
        kept: { ...kept, layout },
        target: targetOf({ ...values, dial_factor: [[factor]] }),
        values,
      },
      { isFinished, recut: "leave" },
    );
  };

  test("a last line without an end waits, and so do three rows, until the file is finished", () => {
    const [running, finished] = [look(LINES.slice(0, 10), false, false), look(LINES.slice(0, 10), false, true)];
    if (running.is !== "grown" || finished.is !== "grown") throw new Error("not grown");
    expect(running.value.additions[0]!.times).toEqual([4, 5]);
    expect(running.keep).toHaveLength(6);
    expect(finished.value.additions[0]!.times).toEqual([4, 5, 6, 7, 8, 9]);
    expect(finished.keep).toHaveLength(10);
  });

  test("a file whose last line has no end is the same if that line was kept, also while the line grows; it is shorter if a line is gone", () => {
    expect(look(LINES.slice(0, 4), false, false).is).toBe("same");
    expect(look(LINES.slice(0, 4), false, false, [...LINES.slice(0, 3), "3,1"]).is).toBe("same");
    expect(look([...LINES.slice(0, 3), "9,13,25"], false, false)).toMatchObject({ is: "changed", missing: 1 });
    expect(look(LINES.slice(0, 3), false, false)).toMatchObject({ is: "changed", missing: 1 });
    const grown = look(LINES.slice(0, 9), false, false);
    expect(grown.is === "grown" && grown.value.additions[0]!.times).toEqual([4]);
  });

  test("the same file is told to be the same, a changed line by its number", () => {
    expect(look(LINES.slice(0, 4), true, true).is).toBe("same");
    expect(look(["0,10,25", "1,99,25", ...LINES.slice(2, 9)], true, true)).toEqual({
      is: "changed",
      lines: [2],
      missing: 0,
    });
  });

  test("a line that had been cut is asked about, and stays as it is until the person says otherwise", () => {
    const found = look(LINES.slice(0, 9), true, true, [...LINES.slice(0, 3), "3,1"]);
    if (found.is !== "grown") throw new Error("not grown");
    expect(found.recut).toBe(4);
    expect(found.value.additions[0]).toMatchObject({ at: 4, times: [4, 5, 6, 7, 8] });
  });

  test("a dial factor of the sheet that is not that of the file is told, and the answer is kept; a blank one is not asked about", () => {
    const under = (factor: CellValue, unit: string) => {
      const found = look(LINES.slice(0, 9), true, true, undefined, factor, unit);
      return found.is === "grown" ? found.factor : found.is;
    };
    expect(under(0.002, "mm")).toEqual({ name: "dial_factor", now: 0.002, wanted: 1 });
    expect(under(1, "div")).toEqual({ name: "dial_factor", now: 1, wanted: "" });
    expect([under(1, "mm"), under("", "mm"), under(0.002, "div")]).toEqual([undefined, undefined, undefined]);
    expect(againAnswered({ isFinished: true }, { do: "factor", takes: true })).toEqual({
      isFinished: true,
      takesFactor: true,
    });
  });

  test("the file is recognised by its name and its data sheet", () => {
    expect(keptFor([kept], "a.csv", "Test 7")).toBe(kept);
    expect(keptFor([kept], "b.csv", "Test 7")).toBeUndefined();
    expect(keptFor([kept], "a.csv", "Test 8")).toBeUndefined();
    expect(keptFor([{ ...kept, file: "" }], "", "Test 7")).toBeUndefined();
  });
});
