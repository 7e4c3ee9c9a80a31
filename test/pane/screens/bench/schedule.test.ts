/** The schedule of readings compared with the clock. */
import fc from "../../../properties";
import {
  dueReadings,
  elapsed,
  isClockBehind,
  isOffSchedule,
  rowForNow,
} from "../../../../src/pane/screens/bench/schedule";
import type { StandingLoad } from "../../../../src/record/standing-load";

const START = 46_001.5;
const load = (readings: readonly (number | undefined)[], started: number | undefined = START): StandingLoad => ({
  number: 2,
  row: 2,
  started,
  rows: [0, 1, 4, 9, 60].map((time, index) => ({ row: index + 1, time, reading: readings[index] })),
  lastRead: readings.reduce<number>((last, reading, index) => (reading === undefined ? last : index), -1),
});
const at = (minutes: number): number => START + minutes / 1440;
const states = (one: StandingLoad, now: number): string[] => dueReadings(one, now).map(({ state }) => state);

test("the clock decides which readings are read, next, late and to come", () => {
  expect(states(load([100, 110]), at(2))).toEqual(["read", "read", "next", "to come", "to come"]);
  expect(states(load([100, 110]), at(6))).toEqual(["read", "read", "late", "next", "to come"]);
  expect(states(load([100, undefined, 120]), at(6))).toEqual(["read", "late", "read", "next", "to come"]);
  expect(states(load([100, 110, 120, 130, 140]), at(6000))).toEqual(["read", "read", "read", "read", "read"]);
});

test("a date without a time of day is no moment of loading, so nothing is late", () => {
  const day = load([100], 46_001);
  expect(elapsed(day, at(600))).toBeUndefined();
  expect(states(day, at(600))).toEqual(["read", "next", "to come", "to come", "to come"]);
  expect(dueReadings(day, at(600)).map((due) => due.at)).toEqual([...new Array<undefined>(5)]);
});

test("a reading goes into the row whose time is nearest to the clock, but never before a row that was read", () => {
  expect(rowForNow(load([100]), at(1.1))?.time).toBe(1);
  expect(rowForNow(load([100]), at(8))?.time).toBe(9);
  expect(rowForNow(load([100, undefined, undefined, 130]), at(1))?.time).toBe(60);
  expect(rowForNow(load([100, 110, 120, 130, 140]), at(6000))).toBeUndefined();
  expect(rowForNow(load([], 46_001), at(100))?.time).toBe(0);
});

test("at most one reading is next, for all readings and moments", () =>
  fc.assert(
    fc.property(
      fc.array(fc.option(fc.integer(), { nil: undefined }), { maxLength: 5 }),
      fc.double({ min: 0, max: 5000, noNaN: true }),
      (readings, minutes) => {
        const all = states(load(readings), at(minutes));
        expect(all.filter((state) => state === "next").length).toBeLessThanOrEqual(1);
        readings.forEach((reading, index) => expect(all[index] === "read").toBe(reading !== undefined));
      },
    ),
  ));

test("a clock before the last reading is reported", () => {
  expect(isClockBehind(load([100, 110, 120, 130]), at(5))).toBe(true);
  expect(isClockBehind(load([100, 110, 120, 130]), at(9))).toBe(false);
  expect(isClockBehind(load([]), at(-5))).toBe(false);
});

test("a deviation of a tenth of the time, or of 6 s, still counts as the scheduled time", () => {
  expect([isOffSchedule(60, 65), isOffSchedule(60, 67), isOffSchedule(0.1, 0.15), isOffSchedule(0.1, 0.25)]).toEqual([
    false,
    true,
    false,
    true,
  ]);
});
