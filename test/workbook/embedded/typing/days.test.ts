/** Days written with points, as in German. */
import { dayWithPoints } from "../../../../src/workbook/embedded/typing/days";

test.each([
  ["31.12.2026", "2026-12-31"],
  [" 2.11.2026 ", "2026-11-02"],
  ["02. 11. 26", "2026-11-02"],
  ["1.3.99", "1999-03-01"],
  ["02.11.2026 9:15", "2026-11-02 9:15"],
  ["02.11.2026, 09:15:30", "2026-11-02 09:15:30"],
  ["29.02.2028", "2028-02-29"],
])("%s is %s", (typed, day) => expect(dayWithPoints(typed)).toBe(day));

test.each(["31.02.2026", "29.02.2027", "12.31.2026", "2.11.", "1.234,5", "1.234.567", "12.5", "11.2026", "x 1.1.2026"])(
  "%s is no day",
  (typed) => expect(dayWithPoints(typed)).toBeUndefined(),
);
