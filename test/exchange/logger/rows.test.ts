/** Lines that cannot be used are listed with their number, and nothing is corrected. */
import { linesOf } from "../../../src/exchange/logger/decode";
import type { Layout } from "../../../src/exchange/logger/layout";
import { readRows, type FaultKind } from "../../../src/exchange/logger/rows";
import { finish } from "./generated-file";

const LAYOUT: Layout = {
  delimiter: ",",
  decimal: ".",
  firstLine: 3,
  time: 0,
  timeForm: "min",
  date: null,
  dateOrder: "ymd",
  timesRun: "test",
  reading: 1,
  readingUnit: "mm",
  sense: "rise",
  load: 2,
  loadKind: "stress",
  loadUnit: "kPa",
  lever: 1,
  noReading: [-9999],
};
const HEAD = "Time,Displacement,Stress\nmin,mm,kPa\n";

const read = (body: string, layout: Partial<Layout> = {}) =>
  finish(readRows(linesOf(HEAD + body), { ...LAYOUT, ...layout })).value;

/** The body's lines are counted from 3. */
const FAULTY: readonly [string, string, FaultKind, number][] = [
  ["a reading that is no number", "0,1,50\n1,NAN,50\n2,1.2,50\n", "text", 4],
  ["a code for no reading", "0,1,50\n1,-9999,50\n2,1.2,50\n", "code", 4],
  ["a blank reading", "0,1,50\n1,,50\n2,1.2,50\n", "blank", 4],
  ["a blank time", "0,1,50\n ,1.1,50\n2,1.2,50\n", "blank", 4],
  ["a figure with the other decimal mark", '0,1,50\n1,"1,1",50\n2,1.2,50\n', "text", 4],
  ["words between the rows", "0,1,50\nLoad 2 applied by hand\n2,1.2,50\n", "words", 4],
  ["a heading that comes again", "0,1,50\nTime,Displacement,Stress\n2,1.2,50\n", "heading", 4],
  ["units that come again", "0,1,50\nmin,mm,kPa\n2,1.2,50\n", "heading", 4],
  ["a row that lacks a cell", "0,1,50\n1,1.1\n2,1.2,50\n", "short", 4],
  ["a last line cut off", "0,1,50\n2,1.2,50\n3,1.", "cut", 5],
  ["time that runs back", "0,1,50\n2,1.2,50\n1.5,1.1,50\n3,1.3,50\n", "back", 5],
  ["a row that comes twice", "0,1,50\n2,1.2,50\n2,1.2,50\n3,1.3,50\n", "repeat", 5],
  ["another reading at the same time", "0,1,50\n2,1.2,50\n2,1.3,50\n3,1.3,50\n", "same-time", 5],
];

test.each(FAULTY)("%s is left out and listed", (_, body, kind, line) => {
  const rows = read(body);
  expect(rows.faults).toEqual([{ line, kind, cell: expect.any(String) }]);
  expect(rows.lines).not.toContain(line);
  expect(rows.lines).toHaveLength(linesOf(body).lines.length - 1);
});

test("blank lines are skipped, and lines keep their numbers", () => {
  const rows = read("0,1,50\n\n,,\n1,1.1,50\n");
  expect(rows).toMatchObject({ lines: [3, 6], faults: [] });
});

test("a last line without a line break that may be cut short is listed, and used", () => {
  const rows = read("0,1.000,50.0\n1,1.100,50.0\n2,1.200,5");
  expect(rows.faults).toEqual([{ line: 5, kind: "maybe-cut", cell: "2,1.200,5" }]);
  expect(rows.lines).toEqual([3, 4, 5]);
  expect(read("0,1.000,50.0\n1,1.100,50.0\n2,1.200,50.0").faults).toEqual([]);
});

test("a missing load is listed; the reading counts", () => {
  const rows = read("0,1,50\n1,1.1,OVER\n2,1.2,50\n");
  expect(rows.faults).toEqual([{ line: 4, kind: "no-load", cell: "OVER" }]);
  expect(rows.loads).toEqual([50, NaN, 50]);
});

test("a quotation mark that is never closed spoils only its own line", () => {
  const rows = read('0,1,50\n"1,1.1,50\n\n2,1.2,50\n3,1.3,50\n');
  expect(rows.lines).toEqual([3, 6, 7]);
  expect(rows.faults.map(({ line }) => line)).toEqual([4]);
});

test("a reading far from all others is listed, and used", () => {
  const body = Array.from({ length: 40 }, (_, i) => `${i},${i === 20 ? 7999 : 1 + i / 100},50`).join("\n");
  const rows = read(`${body}\n`);
  expect(rows.faults).toEqual([{ line: 23, kind: "far", cell: "7999" }]);
  expect(rows.lines).toHaveLength(40);
});

test("times that begin again begin a load only if the layout says so", () => {
  const body = "0,1,50\n5,1.1,50\n1440,1.2,50\n0,1.2,100\n5,1.3,100\n1440,1.4,100\n";
  expect(read(body, { timesRun: "load" })).toMatchObject({ restarts: [3], faults: [] });
  expect(read(body).faults.map(({ kind }) => kind)).toEqual(["back", "back", "same-time"]);
  // A clock that was set back by an hour begins no load.
  const setBack = "0,1,50\n5,1.1,50\n1440,1.2,50\n1380,1.2,50\n1450,1.3,50\n";
  expect(read(setBack, { timesRun: "load" })).toMatchObject({ restarts: [], faults: [{ line: 6, kind: "back" }] });
});

test("a clock without dates passes midnight", () => {
  const rows = read("23:59:30,1,50\n00:00:30,1.1,50\n00:10:00,1.2,50\n", { timeForm: "clock" });
  expect(rows.times.map((time) => time - rows.times[0])).toEqual([0, 1, 10.5]);
  expect(rows.faults.map(({ kind, line }) => [kind, line])).toEqual([["midnight", 4]]);
});

test("dates in a column of their own, and times with am and pm, are read", () => {
  const rows = finish(
    readRows(linesOf("2024-02-28;11:59:00 pm;1,0;50\n2024-02-29;12:01:00 am;1,1;50\n"), {
      ...LAYOUT,
      delimiter: ";",
      decimal: ",",
      firstLine: 1,
      date: 0,
      time: 1,
      timeForm: "clock",
      reading: 2,
      load: 3,
    }),
  ).value;
  expect(rows.times[1] - rows.times[0]).toBe(2);
  expect(rows.readings).toEqual([1, 1.1]);
});

test("a long file is read in steps that report the share done", () => {
  const body = Array.from({ length: 5500 }, (_, i) => `${i},${i / 1000},50`).join("\n");
  const { value, shares } = finish(readRows(linesOf(HEAD + body), LAYOUT));
  expect(value.lines).toHaveLength(5500);
  expect(shares).toHaveLength(6);
  expect(shares[5]).toBe(1);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});
