/** Every remark on readings that names a row of them names its time too. */
import { constructionRemarks, reduceIncrement } from "../../../src/reduction/increment/reduce";
import { english } from "../../../src/reduction/message";
import { BY_HAND, degree, SCENARIOS } from "../../generators/time-curves";

const curve = BY_HAND.map((t) => Math.round(1000 + 400 * degree(t / 60) + 5 * Math.log10(1 + t)));
const blankAt = (...rows: number[]) => curve.map((reading, i) => (rows.includes(i + 1) ? 0 : reading));
const timesWith = (row: number, time: number) => BY_HAND.map((own, i) => (i + 1 === row ? time : own));

const CASES: readonly (readonly [times: readonly number[], readings: readonly number[]])[] = [
  [BY_HAND, blankAt(3)],
  [BY_HAND, blankAt(3, 5, 7)],
  [BY_HAND, blankAt(3, 5, 7, 9, 10)],
  [timesWith(6, BY_HAND[3]!), curve],
  [timesWith(6, BY_HAND[4]!), curve],
  [BY_HAND, curve.map((reading, i) => reading + (i === 8 ? 150 : 0))],
  [BY_HAND, curve.map((reading, i) => reading + (i > 8 ? 300 : 0))],
  [BY_HAND, curve.map((reading, i) => reading - (i === 12 ? 40 : 0))],
  [BY_HAND, curve.map((reading, i) => reading - (i < 2 ? 30 : 0))],
  ...SCENARIOS.flatMap(({ make }) =>
    [1, 2, 3].map((seed) => {
      const { times, readings } = make(seed);
      return [times, readings] as const;
    }),
  ),
];

test("a row is followed by its time", () => {
  const said = CASES.flatMap(([times, readings]) => constructionRemarks(reduceIncrement(times, readings)).map(english));
  const naming = said.filter((text) => /\brows? \d/.test(text));
  expect(new Set(naming.map((text) => text.replace(/[\d.]+/g, "#"))).size).toBeGreaterThan(6);
  // "row 3 (0.5 min)", "rows 3 (0.5 min), 5 (2 min) and 2 more", "rows 4 and 6 (1 min)", "rows 120 to 136 (14 min)", or a time before the row.
  const bare = naming.filter((text) => /\brows? \d+(?! \([\d.e-]+ min\)| (?:to|and) \d+ \(|\d)(?!\))/.test(text));
  expect(bare).toEqual([]);
});
