/** Times and moments as the bench screen writes them. */
import {
  fieldMoment,
  fieldText,
  lastingText,
  momentText,
  timeText,
} from "../../../../src/pane/screens/bench/clock-words";

test("times of the schedule are in minutes, or in hours if they are whole hours", () => {
  // No mark of thousands: a reader would take 1,439 or 1.439 for a decimal.
  expect([0.25, 15, 90, 60, 1440, 1439].map(timeText)).toEqual([
    "0.25 min",
    "15 min",
    "90 min",
    "1 h",
    "24 h",
    "1439 min",
  ]);
});

test("a duration is given to the second", () => {
  expect([0, 0.5, 61.25, 1440 + 123].map(lastingText)).toEqual(["00:00:00", "00:00:30", "01:01:15", "1 d 02:03:00"]);
});

test("a moment of another day has its date", () => {
  const noon = 46_001.5;
  expect(momentText(noon + 0.25, noon)).toBe("18:00:00");
  expect(momentText(noon + 1, noon)).toBe("2025-12-11 12:00:00");
  expect(momentText(46_001.999_999_9, noon)).toBe("2025-12-11 00:00:00");
});

test("the field for a moment returns the moment to the second", () => {
  const moment = 46_001 + 50_730 / 86_400;
  expect(fieldText(moment)).toBe("2025-12-10T14:05:30");
  expect(fieldMoment("2025-12-10T14:05:30")! * 86_400).toBeCloseTo(moment * 86_400, 3);
  expect(fieldMoment("2025-12-10T14:05")! * 86_400).toBeCloseTo((46_001 + 50_700 / 86_400) * 86_400, 3);
  expect(fieldMoment("")).toBeUndefined();
});
