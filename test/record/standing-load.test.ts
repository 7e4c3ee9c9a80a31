/** The load that is on the specimen, from the values of a sheet by name. */
import { readRecord, type NamedValues } from "../../src/record/record";
import { loadInFrame, loadsToRead, standingLoad } from "../../src/record/standing-load";
import type { CellValue } from "../../src/workbook/port";

const column = (...cells: CellValue[]): CellValue[][] => cells.map((cell) => [cell]);

const values: NamedValues = {
  stress_unit: column("kPa"),
  load_stress: column(25, 50, 100, ""),
  load_started: column(46_000, 46_001.5, "", ""),
  times_01: column(0, 1, 4, ""),
  readings_01: column(100, 110, 120, ""),
  times_02: column(0, 1, 4, 9, 0, ""),
  readings_02: column(120, 130, "", "", "", ""),
  times_03: column(0, 1, 4),
  readings_03: column("", "", ""),
};
const record = readRecord(values);

test("the last load with readings is on the specimen; if there are no readings, it is the first load", () => {
  expect(loadInFrame(record)).toBe(2);
  expect(loadInFrame(readRecord({ ...values, readings_01: [], readings_02: [] }))).toBe(1);
  expect(loadsToRead(record).map(({ number }) => number)).toEqual([1, 2, 3]);
});

test("the schedule of a load has its times in order, with the readings; a later time of 0 is a blank", () => {
  expect(standingLoad(record, values, 2)).toEqual({
    number: 2,
    row: 2,
    stress: 50,
    started: 46_001.5,
    rows: [
      { row: 1, time: 0, reading: 120 },
      { row: 2, time: 1, reading: 130 },
      { row: 3, time: 4, reading: undefined },
      { row: 4, time: 9, reading: undefined },
    ],
    lastRead: 1,
    freeRow: 6,
  });
});

test("full columns have no free row; a load without a moment has no start; a load number that does not exist gives undefined", () => {
  expect(standingLoad(record, values, 3)).toMatchObject({ freeRow: undefined, started: undefined, lastRead: -1 });
  expect(standingLoad(record, values, 90)).toBeUndefined();
});
