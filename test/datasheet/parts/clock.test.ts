/** Remarks of the load table on the clock: each names its row, says what to do, and is that of the record. */
import { blankSheet, fillSheet } from "../../../src/datasheet";
import { readRecord } from "../../../src/record/record";
import { messageOf, remarkOfLoad } from "../../../src/record/sheet-remarks";
import { english } from "../../../src/reduction/message";
import type { CellValue } from "../../../src/workbook/port";
import { calculate } from "../sheet-in-engine";
import { namedValues } from "../read-sheet";

const DAY = 46_000.4;
const TIMES = [0, 0.25, 1, 4, 15, 60, 240, 1440];
const READINGS = [100, 105, 110, 120, 135, 150, 158, 162];

/** The remarks of both loads on the sheet, and of its record. */
async function remarks(changes: Record<string, CellValue[]>): Promise<{ sheet: CellValue[]; record: string[] }> {
  const plan = fillSheet(blankSheet("SI", { loads: 10, readingRows: 30 }), {
    load_stress: [50, 100],
    load_started: [DAY, DAY + 1],
    times_01: TIMES,
    readings_01: READINGS,
    times_02: TIMES,
    readings_02: READINGS.map((reading) => reading + 62),
    ...changes,
  });
  const calculated = await calculate(plan);
  const record = readRecord(await namedValues(plan));
  return {
    sheet: [0, 1].map((row) => calculated.value("load_remark", row)),
    record: [1, 2].map((load) => english(messageOf(remarkOfLoad(record, load)!))),
  };
}

test("with a clock that runs, no remark speaks of it", async () => {
  const { sheet } = await remarks({});
  expect(sheet.join()).not.toMatch(/before|moment/);
});

test("a time before the load is told with its row", async () => {
  const { sheet } = await remarks({ times_02: [0, 0.25, -1, 4, 15, 60, 240, 1440] });
  expect(sheet[1]).toMatch(/^the time in row 3 \(-\d[\d.]* min\) is before the load: correct or clear it; /);
});

test("a clock that goes back within a load is told with its row, and every reading is used", async () => {
  const { sheet } = await remarks({ times_02: [0, 0.25, 1, 4, 2, 60, 240, 1440] });
  expect(sheet[1]).toContain(
    "the time in row 5 (2 min) is before a time above it: the times are not in order and were sorted",
  );
});

test("a reading that stands twice is told with its rows", async () => {
  const { sheet } = await remarks({ times_02: [0, 0.25, 1, 4, 4, 60, 240, 1440] });
  expect(sheet[1]).toContain("rows 4 (4 min) and 5 (4 min) repeat a time: readings at the same time were averaged");
});

test("a load applied before the load above it is told; so is a load without a moment among others", async () => {
  expect((await remarks({ load_started: [DAY, DAY - 0.1] })).sheet[1]).toMatch(
    /^check whether a moment of loading is half a day off, as 1:30 for 13:30, or lacks its time: applied before the load above it; /,
  );
  const same = /^check whether the moment of loading was mistyped: it is that of the load above; /;
  const equal = await remarks({ load_started: [DAY, DAY] });
  expect(equal.sheet[1]).toMatch(same);
  expect(equal.record[1]).toMatch(same);
  expect((await remarks({ load_started: [46_000, 46_000] })).sheet[1]).not.toMatch(same);
  const blank = await remarks({ load_started: [DAY] });
  expect(blank.sheet[1]).toMatch(/^the moment of loading is blank, and other loads have one: enter it; /);
  expect(blank.sheet[0]).not.toContain("moment");
  expect((await remarks({ load_started: [] })).sheet.join()).not.toContain("moment");
});

test("a date without its time is asked about, where the load was read until after the next one", async () => {
  const { sheet, record } = await remarks({ load_started: [DAY + 0.5, Math.floor(DAY) + 1] });
  expect(sheet[0]).toMatch(
    /^check whether a moment of loading is half a day off, as 1:30 for 13:30, or lacks its time: the last time is 1440 min, and the next load was applied 144 min after this one; /,
  );
  expect(record).toEqual(sheet);
});

test("the record gives the remarks of the sheet, so that a report says them in its language", async () => {
  const { sheet, record } = await remarks({
    load_started: [DAY, DAY - 1],
    times_02: [0, 0.25, -1, 4, 15, 60, 240, 1440],
  });
  expect(record).toEqual(sheet);
});
