import fc from "../../properties";
import { runsOf } from "../../../src/reduction/numeric/runs";

test("4, 5, 6, 9 gives 4 to 6 and 9; an empty list gives none", () => {
  expect(runsOf([4, 5, 6, 9])).toEqual([
    [4, 6],
    [9, 9],
  ]);
  expect(runsOf([])).toEqual([]);
});

test("the runs hold the same numbers, and no run touches the next", () =>
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 60 })), (some) => {
      const numbers = [...some].sort((a, b) => a - b);
      const runs = runsOf(numbers);
      expect(runs.flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => from + i))).toEqual(numbers);
      runs.slice(1).forEach(([from], i) => expect(from).toBeGreaterThan(runs[i][1] + 1));
    }),
  ));
