/** The curve between the readings: theory with the readings' departure from it, or a curve through the readings. */
import { curveThroughReadings, smoothCurve } from "../../../../src/reduction/increment/constructions/smooth-curve";
import { curveAt, curveSlope } from "../../../../src/reduction/increment/fit/model";
import { BY_HAND } from "../../../generators/time-curves";
import { exact, FIT, seriesOf } from "./exact-load";

const OFF = (t: number) => 7 - 3 * Math.log10(t);

test("readings that follow theory give theory, between the readings too", () => {
  const curve = smoothCurve(exact(), FIT);
  for (const t of [0.1, 0.17, 3, 44, 700, 1440]) expect(curve.at(t)).toBeCloseTo(curveAt(FIT, t), 9);
  // The slope is that over 0.12 of a log cycle to either side: on the tail that of the tail.
  expect(curve.slope(700)).toBeCloseTo(20, 1);
  expect(curve.slope(3) / curveSlope(FIT, 3)).toBeCloseTo(1, 1);
});

test("a departure that is straight on log time is followed exactly, whatever the weights", () => {
  const series = seriesOf(BY_HAND, (t) => curveAt(FIT, t) + OFF(t));
  const weighted = { ...series, weights: BY_HAND.map((_, i) => 1 + (i % 3)) };
  for (const curve of [smoothCurve(series, FIT), smoothCurve(weighted, FIT)])
    for (const t of [0.1, 0.17, 3, 44, 700, 1440]) expect(curve.at(t)).toBeCloseTo(curveAt(FIT, t) + OFF(t), 9);
});

test("a single departure weighs less the further off it is, and nothing four reaches off", () => {
  const at = (off: number) => {
    const dense = Array.from({ length: 81 }, (_, i) => 10 ** (0.05 * i));
    const series = seriesOf(dense, (t, i) => curveAt(FIT, t) + (i === 40 ? 10 : 0));
    return smoothCurve(series, FIT).at(100 * 10 ** off) - curveAt(FIT, 100 * 10 ** off);
  };
  // In the middle of even readings the local line is their mean by Gaussian weights: 0.05 / (0.2 sqrt(2 pi)) of 10.
  expect(at(0)).toBeCloseTo((10 * 0.05) / (0.2 * Math.sqrt(2 * Math.PI)), 3);
  expect(at(0.2) / at(0)).toBeCloseTo(Math.exp(-0.5), 3);
  expect(at(-0.4) / at(0)).toBeCloseTo(Math.exp(-2), 3);
  expect([at(0.81), at(-0.81)]).toEqual([0, 0].map((none) => expect.closeTo(none, 9)));
});

test("where one reading lies within reach, its departure is taken; where none lies, none", () => {
  const series = seriesOf([1, 1000], (t) => curveAt(FIT, t) + (t === 1 ? 5 : 9));
  const off = (t: number) => smoothCurve(series, FIT).at(t) - curveAt(FIT, t);
  expect([off(1.3), off(800), off(31)]).toEqual([5, 9, 0].map((value) => expect.closeTo(value, 9)));
});

test("a reading without weight does not count", () => {
  const series = exact();
  const wrong = {
    ...series,
    readings: series.readings.map((d, i) => (i === 5 ? d + 100 : d)),
    weights: series.weights.map((_, i) => (i === 5 ? 0 : 1)),
  };
  expect(smoothCurve(wrong, FIT).at(4)).toBeCloseTo(curveAt(FIT, 4), 9);
});

describe("a crossing", () => {
  const curve = smoothCurve(exact(), FIT);

  test("is where the curve meets the value, at any place between the ends", () => {
    for (const t of [0.11, 1, 43.21, 1430]) {
      const level = curveAt(FIT, t);
      expect(curve.crossing((_, d) => d - level, 0.1, 1440)! / t).toBeCloseTo(1, 9);
      expect(curve.crossing((_, d) => level - d, 0.1, 1440)! / t).toBeCloseTo(1, 9);
    }
  });

  test("at an end is that end, and beyond it is none", () => {
    const first = curve.at(0.1);
    const last = curve.at(1440);
    expect(curve.crossing((_, d) => d - first, 0.1, 1440)).toBe(0.1);
    expect(curve.crossing((_, d) => d - last, 0.1, 1440)! / 1440).toBeCloseTo(1, 9);
    expect(curve.crossing((_, d) => d - last - 1, 0.1, 1440)).toBeUndefined();
    expect(curve.crossing((_, d) => d - first + 1, 0.1, 1440)).toBeUndefined();
  });

  test("is the first of several", () => {
    const wave = (t: number) => Math.sin(2 * Math.PI * Math.log10(t) + 0.5);
    // sin is zero at log10 t = (pi - 0.5) / (2 pi), and then at every half.
    const first = 10 ** ((Math.PI - 0.5) / (2 * Math.PI));
    expect(curve.crossing((t) => wave(t), 1, 1000)! / first).toBeCloseTo(1, 9);
    expect(curve.crossing((t) => wave(t), 3, 1000)! / first).toBeCloseTo(10 ** 0.5, 8);
  });

  test("two crossings a tenth of a log cycle apart are both seen", () => {
    const [a, b] = [100, 100 * 10 ** 0.1];
    const between = (t: number) => (t - a) * (t - b);
    expect(curve.crossing(between, 1, 1440)! / a).toBeCloseTo(1, 9);
    expect(curve.crossing(between, 110, 120)).toBeUndefined();
  });
});

test("the drawn curve goes through every reading, without a wave between two equal ones", () => {
  const series = seriesOf([1, 2, 4, 8, 16, 32], (_, i) => [0, 1, 5, 5, 5, 9][i]);
  const curve = curveThroughReadings(series);
  series.times.forEach((t, i) => expect(curve.at(t)).toBeCloseTo(series.readings[i], 12));
  for (const t of [4.5, 6, 8, 12]) expect(curve.at(t)).toBeCloseTo(5, 12);
  expect(curve.crossing((_, d) => d - 1, 1, 32)! / 2).toBeCloseTo(1, 9);
});
