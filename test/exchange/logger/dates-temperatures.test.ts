/** The dates and temperatures of a logger's file are written only into blank cells of the sheet. */
import { blankCells, conditionsOf } from "../../../src/exchange/logger/dates-temperatures";
import { linesOf } from "../../../src/exchange/logger/decode";
import { offerLayout } from "../../../src/exchange/logger/offer";
import { readRows, type LoggerRows } from "../../../src/exchange/logger/rows";
import type { Layout } from "../../../src/exchange/logger/layout";
import type { Target, TargetLoad } from "../../../src/exchange/logger/target";
import { finish } from "./generated-file";

const FILE = [
  "Date,Time,Displacement (mm),Stress (kPa),Temp (degC)",
  "2026-03-09,09:00:00,1.000,25,20.0",
  "2026-03-09,09:01:00,1.100,25,21.0",
  "2026-03-10,09:00:00,1.200,25,-9999",
  "2026-03-10,09:00:06,1.210,50,19.0",
  "2026-03-11,08:00:00,1.400,50,19.0",
].join("\n");

const lines = FILE.split("\n");
const { draft } = offerLayout(lines);
const rows = finish(readRows(linesOf(`${FILE}\n`), draft as Layout)).value;

test("a column of temperatures is offered, but not one in degrees Fahrenheit", () => {
  expect(draft.temperature).toBe(4);
  const fahrenheit = lines.map((line) => line.replace("degC", "degF"));
  expect(offerLayout(fahrenheit).draft.temperature).toBeNull();
});

test("a stretch has the days of its first and last row, and its mean temperature without the code for a missing reading", () => {
  // 2026-03-09 is day 46090, counted from 1899-12-30.
  expect(conditionsOf(rows, { from: 0, to: 3, load: 1 })).toEqual({
    firstDay: 46090,
    lastDay: 46091,
    firstMoment: 46090.375,
    temperature: 20.5,
  });
  expect(conditionsOf(rows, { from: 3, to: 5, load: 2 })).toEqual({
    firstDay: 46091,
    lastDay: 46092,
    // 9:00:06, the six seconds as a part of the day.
    firstMoment: expect.closeTo(46091.375 + 6 / 86_400, 9),
    temperature: 19,
  });
});

test("the mean temperature is weighted by time: many rows in the first minute do not outweigh a day", () => {
  const quick = [0, 0.1, 0.2, 0.3, 1440];
  const made = { times: quick, temperatures: [30, 30, 30, 20, 20] } as unknown as LoggerRows;
  expect(conditionsOf(made, { from: 0, to: 5, load: 1 })).toEqual({ temperature: 20 });
});

test("times without dates give no days", () => {
  const undated = finish(
    readRows(linesOf("t,d\n0,1\n1,2\n"), {
      ...(draft as Layout),
      time: 0,
      timeForm: "min",
      date: null,
      reading: 1,
      load: null,
      temperature: null,
    }),
  ).value;
  expect(undated.dated).toBe(false);
  expect(conditionsOf(undated, { from: 0, to: undated.times.length, load: 1 })).toEqual({});
});

const load = (more: Partial<TargetLoad>): TargetLoad => ({ held: 0, used: 0, started: "", temperature: "", ...more });
const target = (loads: readonly TargetLoad[], more: Partial<Target> = {}): Target =>
  ({ loads, testStarted: "", testEnded: "", ...more }) as Target;
const found = [
  { load: 1, firstDay: 46090, lastDay: 46091, firstMoment: 46090.375, temperature: 20.5 },
  { load: 2, firstDay: 46091, lastDay: 46092, firstMoment: 46091.5, temperature: 19 },
];

test("blank cells get the date with its time and the temperature of each load, and the dates of the test", () => {
  expect(blankCells(target([load({ stress: 25 }), load({ stress: 50 })]), found)).toEqual({
    columns: {
      load_started: [46090.375, 46091.5],
      load_temperature: [20.5, 19],
      date_started: [46090],
      date_ended: [46092],
    },
    dates: 4,
    temperatures: 2,
  });
});

test("a filled cell stays, and a cell that the sheet does not have is left out", () => {
  const first = load({ stress: 25, started: 46089, temperature: undefined });
  const { columns, dates } = blankCells(target([first, load({ stress: 50 })], { testStarted: 46089 }), found);
  expect(columns).toEqual({ load_started: [null, 46091.5], load_temperature: [null, 19], date_ended: [46092] });
  expect(dates).toBe(2);
});

test("a test has not ended if its later loads are not in the file", () => {
  const { columns } = blankCells(target([load({ stress: 25 }), load({ stress: 50 }), load({ stress: 100 })]), found);
  expect(columns).not.toHaveProperty("date_ended");
});

test("a row that a person inserted into the load table moves the cells below it", () => {
  const { columns } = blankCells(target([load({ stress: 25, row: 0 }), load({ stress: 50, row: 2 })]), found);
  expect(columns.load_started).toEqual([46090.375, null, 46091.5]);
});
