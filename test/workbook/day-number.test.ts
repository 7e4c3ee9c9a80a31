import fc from "../properties";
import { clockOf, dateOfDay, dayNumberOf, isoDay, isoMoment } from "../../src/workbook/day-number";

// "Excel specifications": the 1900 date system counts 2008-01-01 as 39448 (Microsoft, help page of DATEVALUE).
test.each([
  ["2008-01-01", 39_448],
  ["1970-01-01", 25_569],
  ["1990-01-01", 32_874],
])("%s is day %d", (iso, day) => {
  expect(dayNumberOf(new Date(iso))).toBe(day);
  expect(isoDay(day + 0.99)).toBe(iso);
});

test("a day with its time of day is exact to the minute", () =>
  expect(isoMoment(39_448.5 + 5 / 1440)).toBe("2008-01-01 12:05"));

test("a moment is read back to the minute", () =>
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 66_000_000 }), (minutes) => {
      const moment = new Date(minutes * 60_000);
      return dateOfDay(dayNumberOf(moment)).getTime() === moment.getTime();
    }),
  ));

test("a moment half a second before midnight belongs to the next day", () => {
  expect(clockOf(46_001.5)).toEqual({ day: 46_001, clock: "12:00:00" });
  expect(clockOf(46_001 + 86_399.6 / 86_400)).toEqual({ day: 46_002, clock: "00:00:00" });
});
