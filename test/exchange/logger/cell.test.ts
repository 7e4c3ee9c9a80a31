import { dayNumber, numberIn, timeIn } from "../../../src/exchange/logger/cell";
import type { DateOrder, DecimalMark, TimeForm } from "../../../src/exchange/logger/layout";

test.each<[string, DecimalMark, number | undefined]>([
  ["1.25", ".", 1.25],
  ["-.5", ".", -0.5],
  ["+3", ",", 3],
  ["\u22122,5", ",", -2.5],
  ["1e-3", ".", 0.001],
  ["9.9E37", ".", 9.9e37],
  ["1,234.5", ".", 1234.5],
  ["1.234.567", ",", 1234567],
  ["1 234,5", ",", 1234.5],
  // A single group of three digits may be decimals: it is not read.
  ["1,234", ".", undefined],
  ["1.234", ",", undefined],
  ["1,25", ".", undefined],
  ["", ".", undefined],
  ["NAN", ".", undefined],
  ["12 mm", ".", undefined],
  ["0x10", ".", undefined],
  ["Infinity", ".", undefined],
])("%p with decimal mark %p is read as %p", (cell, decimal, number) => expect(numberIn(cell, decimal)).toBe(number));

test.each<[string, TimeForm, number | undefined]>([
  ["90", "s", 1.5],
  ["1.5", "h", 90],
  ["0.5", "d", 720],
  ["25:00:06", "h:mm:ss", 1500.1],
  ["0:00:00.5", "h:mm:ss", 1 / 120],
  ["1:30", "h:mm:ss", undefined],
  ["1:30", "m:ss", 1.5],
  ["90:00.5", "m:ss", 90 + 1 / 120],
  ["1:75", "m:ss", undefined],
  ["1:30", "clock", 90],
  ["1:30 pm", "clock", 810],
  ["12:00:00 AM", "clock", 0],
  ["24:00:00", "clock", undefined],
  ["10:61:00", "clock", undefined],
])("%p as %p is %p minutes", (cell, form, minutes) => expect(timeIn(cell, form, ".", "ymd")?.minutes).toBe(minutes));

test.each<[string, DateOrder, string | undefined]>([
  ["2024-02-29", "ymd", "2024-02-29"],
  ["29.02.24", "dmy", "2024-02-29"],
  ["02/29/2024", "mdy", "2024-02-29"],
  ["29/02/2023", "dmy", undefined],
  ["13/13/2024", "dmy", undefined],
])("%p in order %p", (cell, order, date) => {
  const day = dayNumber(cell, order);
  expect(day === undefined ? undefined : new Date(day * 86_400_000).toISOString().slice(0, 10)).toBe(date);
});

test("the date may stand in the cell, or in another cell", () => {
  const within = timeIn("2024-04-03T10:00:05.250Z", "clock", ".", "ymd");
  const beside = timeIn("10:00:05.250", "clock", ".", "dmy", "03/04/2024");
  expect(within).toEqual({ minutes: Date.UTC(2024, 3, 3, 10, 0, 5, 250) / 60_000, dated: true });
  expect(beside).toEqual(within);
});
