import fc from "../../properties";
import { at, meetingPoint, straightLine } from "../../../src/reduction/numeric/straight-line";

const number = fc.integer({ min: -1000, max: 1000 }).map((part) => part / 100);
const points = fc.array(fc.tuple(number, number, fc.integer({ min: 1, max: 9 })), { minLength: 3, maxLength: 9 });

test("the residuals of the line are balanced: their weighted sum is zero, also times x, and their squares are rss", () => {
  fc.assert(
    fc.property(points, fc.boolean(), (rows, isWeighted) => {
      const [x, y, w] = [rows.map(([a]) => a), rows.map(([, b]) => b), rows.map(([, , c]) => (isWeighted ? c : 1))];
      fc.pre(new Set(x).size > 1);
      const line = straightLine(x, y, isWeighted ? w : undefined);
      const off = rows.map(([a, b], i) => ({ weight: w[i] ?? NaN, x: a, residual: b - at(line, a) }));
      const sum = (of: (one: (typeof off)[number]) => number) => off.reduce((total, one) => total + of(one), 0);
      expect(sum(({ weight, residual }) => weight * residual)).toBeCloseTo(0, 7);
      expect(sum((one) => one.weight * one.residual * one.x)).toBeCloseTo(0, 6);
      expect(line.rss).toBeCloseTo(
        sum(({ weight, residual }) => weight * residual ** 2),
        6,
      );
    }),
  );
});

test("a whole weight counts as so many points", () => {
  const weighted = straightLine([0, 1, 3], [1, 2, 8], [1, 2, 1]);
  const repeated = straightLine([0, 1, 1, 3], [1, 2, 2, 8]);
  expect(weighted.slope).toBeCloseTo(repeated.slope, 12);
  expect(weighted.intercept).toBeCloseTo(repeated.intercept, 12);
  expect(weighted.rss).toBeCloseTo(repeated.rss, 12);
});

test("points above one another have no line; two lines meet where their values agree", () => {
  expect(straightLine([2, 2], [1, 3]).slope).toBeNaN();
  const [a, b] = [
    { slope: 2, intercept: 1 },
    { slope: -1, intercept: 7 },
  ];
  expect(meetingPoint(a, b)).toBe(2);
  expect(at(a, 2)).toBe(at(b, 2));
});
