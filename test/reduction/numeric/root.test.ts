import fc from "../../properties";
import { rootBetween } from "../../../src/reduction/numeric/root";

/** The root from both ends, and how often the function was evaluated. */
function found(f: (x: number) => number, low: number, high: number) {
  let asked = 0;
  const counted = (x: number) => {
    asked++;
    return f(x);
  };
  return { x: rootBetween(counted, { low, atLow: f(low), high, atHigh: f(high) }, 1e-12), asked: () => asked };
}

test("finds the root of a cubic from any ends", () => {
  // x^3 - 2x - 5 = 0 at 2.0945514815423265: Wallis (1685), to 16 digits in any book of numerical methods (from memory).
  fc.assert(
    fc.property(
      fc.double({ min: 1.5, max: 2.09, noNaN: true }),
      fc.double({ min: 2.1, max: 4, noNaN: true }),
      (a, b) => {
        const { x, asked } = found((v) => v ** 3 - 2 * v - 5, a, b);
        expect(Math.abs(x - 2.0945514815423265)).toBeLessThan(1e-11);
        expect(asked()).toBeLessThan(25);
      },
    ),
  );
});

test("a root at an end is that end", () => {
  expect(found((x) => x - 2, 1, 2).x).toBe(2);
});

test("a step from one sign to the other is found too", () => {
  const { x } = found((v) => (v < 0.3 ? -1 : 5), 0, 1);
  expect(Math.abs(x - 0.3)).toBeLessThan(1e-11);
});

test("the search ends at the zero itself, and where the ends of the bracket meet", () => {
  const line = found((x) => 2 * x - 3, 1, 4);
  expect([line.x, line.asked()]).toEqual([1.5, 1]);
  // A root at an end is not searched.
  expect(found((x) => x - 2, 1, 2).asked()).toBe(0);
  // Ends as near to each other as the tolerance are near enough.
  expect(found((x) => x - 0.5e-12, 0, 1e-12).asked()).toBe(0);
  expect(found((x) => x - 1e-12, 0, 2.1e-12).asked()).toBe(1);
});

test("a smooth function takes nine evaluations at most", () => {
  for (const [f, low, high] of [
    [(x: number) => Math.cos(x) - x, 0, 1],
    [(x: number) => Math.exp(x) - 3, 0, 2],
    [(x: number) => Math.log(x) - 0.3, 0.5, 4],
  ] as const)
    expect(found(f, low, high).asked()).toBeLessThanOrEqual(9);
});

test("a function that is level beside its step is given up after a hundred evaluations", () => {
  const flat = found((x) => (x < 0.5 ? -1 : 1e-300), 0, 1);
  expect(flat.asked()).toBe(100);
  expect(flat.x).toBeCloseTo(1, 12);
});

test("the signs count, however small the values are", () => {
  const tiny = found((x) => 1e-200 * (x ** 3 - 2 * x - 5), 1.5, 4);
  expect(Math.abs(tiny.x - 2.0945514815423265)).toBeLessThan(1e-11);
  expect(tiny.asked()).toBeLessThan(25);
});
