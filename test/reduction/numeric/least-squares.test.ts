import { levenbergMarquardt } from "../../../src/reduction/numeric/least-squares";
import { solveQr } from "../../../src/reduction/numeric/qr";
import { straightLine } from "../../../src/reduction/numeric/straight-line";
import { studentsT95 } from "../../../src/reduction/numeric/students-t";

describe("solveQr", () => {
  test("solves a square system", () => {
    // 2x + y = 5, x - 3y = -8: x = 1, y = 3.
    const x = solveQr(Float64Array.of(2, 1, 1, -3), 2, 2, Float64Array.of(5, -8));
    expect(x[0]).toBeCloseTo(1, 12);
    expect(x[1]).toBeCloseTo(3, 12);
  });
  test("solves a least-squares line", () => {
    const x = solveQr(Float64Array.of(1, 1, 1, 1, 0, 1, 2, 3), 4, 2, Float64Array.of(1, 3, 5, 8));
    // By hand: slope 2.3, intercept 0.8.
    expect(x[0]).toBeCloseTo(0.8, 12);
    expect(x[1]).toBeCloseTo(2.3, 12);
  });
  test("gives 0 to a column of zeros", () => {
    const x = solveQr(Float64Array.of(1, 1, 0, 0), 2, 2, Float64Array.of(3, 3));
    expect(x[0]).toBeCloseTo(3, 12);
    expect(x[1]).toBe(0);
    expect([...solveQr(Float64Array.of(0, 0, 1, 1), 2, 2, Float64Array.of(3, 3))]).toEqual([0, expect.closeTo(3, 12)]);
  });
});

describe("levenbergMarquardt", () => {
  const x = [1, 2, 3, 4, 5, 6];
  const y = x.map((v) => 3 * Math.exp(-0.4 * v));
  const problem = {
    count: x.length,
    residuals: ([a, b]: Float64Array, into: Float64Array) => into.set(x.map((v, i) => a * Math.exp(-b * v) - y[i])),
    jacobian: ([a, b]: Float64Array, into: Float64Array) =>
      into.set([...x.map((v) => Math.exp(-b * v)), ...x.map((v) => -a * v * Math.exp(-b * v))]),
    start: [1, 0.1],
  };

  test("finds the parameters of exact data", () => {
    const { parameters, converged } = levenbergMarquardt(problem);
    expect(converged).toBe(true);
    expect(parameters[0]).toBeCloseTo(3, 9);
    expect(parameters[1]).toBeCloseTo(0.4, 9);
  });
  test("says so if the iterations run out, and gives what it has reached", () => {
    const rssOf = ([a, b]: readonly number[]) => x.reduce((sum, v, i) => sum + (a * Math.exp(-b * v) - y[i]) ** 2, 0);
    let before = rssOf(problem.start);
    for (const maxIterations of [1, 2]) {
      const { parameters, rss, converged, iterations } = levenbergMarquardt({ ...problem, maxIterations });
      expect([converged, iterations]).toEqual([false, maxIterations]);
      expect(rss).toBeLessThan(before);
      expect(rssOf(parameters)).toBeCloseTo(rss, 12);
      before = rss;
    }
  });
  test("ends earlier if it may leave a share of the sum of squares, and leaves no more than this share", () => {
    const scattered = y.map((value, i) => value + (i % 2 ? 0.05 : -0.05));
    const residuals = ([a, b]: Float64Array, into: Float64Array) =>
      into.set(x.map((v, i) => a * Math.exp(-b * v) - scattered[i]));
    const [exact, loose] = [1e-14, 1e-3].map((negligibleGain) =>
      levenbergMarquardt({ ...problem, residuals, negligibleGain }),
    );
    expect([exact.converged, loose.converged]).toEqual([true, true]);
    expect(loose.iterations).toBeLessThan(exact.iterations);
    expect(loose.rss / exact.rss - 1).toBeLessThan(1e-3);
    expect(exact.iterations).toBeLessThan(20);
  });
  test("steps back from an impossible trial", () => {
    const { parameters } = levenbergMarquardt({
      count: 1,
      residuals: ([a], into) => into.set([Math.sqrt(a) - 0.1]),
      jacobian: ([a], into) => into.set([0.5 / Math.sqrt(a)]),
      start: [9],
    });
    expect(parameters[0]).toBeCloseTo(0.01, 9);
  });
});

test("studentsT95 agrees with the table", () => {
  // Any statistical table: t at 97.5 %.
  for (const [freedom, t] of [
    [1, 12.706],
    [5, 2.571],
    [10, 2.228],
    [11, 2.201],
    [15, 2.131],
    [20, 2.086],
    [30, 2.042],
    [120, 1.98],
  ])
    expect(Math.abs(studentsT95(freedom) - t)).toBeLessThan(0.001);
});

test("straightLine uses its weights", () => {
  const line = straightLine([0, 1, 2, 9], [1, 3, 5, 100], [1, 1, 1, 0]);
  expect(line.slope).toBeCloseTo(2, 12);
  expect(line.intercept).toBeCloseTo(1, 12);
  expect(line.rss).toBeCloseTo(0, 12);
});
