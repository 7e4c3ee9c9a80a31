import fc from "../../properties";
import { monotoneCubic } from "../../../src/reduction/numeric/monotone-cubic";

const series = fc.array(fc.tuple(fc.double({ min: 0.01, max: 3, noNaN: true }), fc.integer({ min: -50, max: 50 })), {
  minLength: 2,
  maxLength: 20,
});
const build = (rows: readonly (readonly [number, number])[]) => {
  let sum = 0;
  return { x: rows.map(([dx]) => (sum += dx)), y: rows.map(([, y]) => y) };
};

test("it passes through every point", () => {
  fc.assert(
    fc.property(series, (rows) => {
      const { x, y } = build(rows);
      const curve = monotoneCubic(x, y);
      x.forEach((at, i) => expect(curve(at)).toBeCloseTo(y[i], 9));
    }),
  );
});

test("between two points it stays between their values, and beyond the ends it is level", () => {
  fc.assert(
    fc.property(series, fc.double({ min: 0, max: 1, noNaN: true }), (rows, share) => {
      const { x, y } = build(rows);
      const curve = monotoneCubic(x, y);
      for (let i = 0; i + 1 < x.length; i++) {
        const between = curve(x[i] + share * (x[i + 1] - x[i]));
        expect(between).toBeGreaterThanOrEqual(Math.min(y[i], y[i + 1]) - 1e-9);
        expect(between).toBeLessThanOrEqual(Math.max(y[i], y[i + 1]) + 1e-9);
      }
      expect(curve(x[0] - 1)).toBeCloseTo(y[0], 9);
      expect(curve(x[x.length - 1] + 1)).toBeCloseTo(y[y.length - 1], 9);
    }),
  );
});

test("a straight line stays straight, and a parabola is met within a thousandth of its rise", () => {
  const x = [0, 1, 2.5, 3, 5];
  const line = monotoneCubic(x, x.map((at) => 2 + 3 * at)); // prettier-ignore
  for (const at of [0.3, 1.7, 2.9, 4.4]) expect(line(at)).toBeCloseTo(2 + 3 * at, 9);
  const dense = Array.from({ length: 21 }, (_, i) => 1 + i / 10);
  const square = monotoneCubic(dense, dense.map((at) => at * at)); // prettier-ignore
  for (const at of [1.25, 1.97, 2.66]) expect(Math.abs(square(at) - at * at)).toBeLessThan(0.001);
});

describe("slopes by hand (Fritsch and Butland): half-way between two points the curve lies off their mean by an eighth of the step times the difference of the slopes", () => {
  const halfWay = (x: readonly number[], y: readonly number[], from: number) =>
    monotoneCubic(x, y)((x[from] + x[from + 1]) / 2);

  test.each([
    // The parabola through the three points has slope 2.5 at the first; the peak has slope 0.
    ["the parabola through three points", [0, 1, -1], 0.5 + 2.5 / 8],
    ["at most three times the first chord of 1", [0, 1, -4], 0.5 + 3 / 8],
    ["5.5, below three times the first chord of 2", [0, 2, -3], 1 + 5.5 / 8],
    ["8, limited to three times the first chord of 2", [0, 2, -8], 1 + 6 / 8],
    // The parabola has slope -0.5 at the first point, which would undershoot; at the second 6 / (3 + 3 / 4) = 1.6.
    ["level where the parabola would turn back", [0, 1, 5], 0.5 + (0 - 1.6) / 8],
  ])("at an end: %s", (_, y, expected) => {
    expect(halfWay([0, 1, 2], y, 0)).toBeCloseTo(expected, 12);
    expect(halfWay([-2, -1, 0], [...y].reverse(), 1)).toBeCloseTo(expected, 12);
  });

  test("between chords of 2 over 0.5 and 1 over 1.5: the harmonic mean with weights 3.5 and 2.5", () => {
    const inner = 6 / (3.5 / 2 + 2.5 / 1);
    const last = (3.5 * 1 - 1.5 * 2) / 2;
    expect(halfWay([0, 0.5, 2], [0, 1, 2.5], 1)).toBeCloseTo(1.75 + (1.5 * (inner - last)) / 8, 12);
  });
});
