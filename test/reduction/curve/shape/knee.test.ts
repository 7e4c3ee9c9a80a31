import { meetingPoint } from "../../../../src/reduction/numeric/straight-line";
import { greatestCurvature } from "../../../../src/reduction/curve/methods/casagrande";
import { bendingAt, kneeAt, slopeAt, type Knee } from "../../../../src/reduction/curve/shape/knee";
import {
  bentLaw,
  emptyKnee,
  heldLaw,
  steepeningLaw,
  straightLaw,
} from "../../../../src/reduction/curve/shape/knee-laws";
import { bestKnee } from "../../../../src/reduction/curve/shape/knee-search";

const law: Knee = { corner: 2, width: 0.1, start: 0, before: 0.1, rise: 0.9, excess: 0, misfit: 0 };
const x = [1, 1.3, 1.6, 1.9, 2.2, 2.5, 2.8, 3.1, 3.4];

test("slope and bending are the derivatives of the curve", () => {
  for (const knee of [law, { ...law, excess: 1.2 }])
    for (const at of [1.7, 1.95, 2.05, 2.4]) {
      const h = 1e-4;
      expect(slopeAt(knee, at)).toBeCloseTo((kneeAt(knee, at + h) - kneeAt(knee, at - h)) / (2 * h), 6);
      expect(bendingAt(knee, at)).toBeCloseTo((slopeAt(knee, at + h) - slopeAt(knee, at - h)) / (2 * h), 5);
    }
});

test("a law fitted to its own points gives itself back: straight, sharp and bent", () => {
  for (const truth of [law, { ...law, width: 0 }, { ...law, width: 0.05, excess: 1.1 }]) {
    const u = x.map((v) => kneeAt(truth, v));
    const fitted = truth.excess ? bentLaw(x, u) : straightLaw(x, u);
    const found = bestKnee(fitted, x[0], x[x.length - 1]);
    expect(found.corner).toBeCloseTo(truth.corner, 2);
    expect(found.before).toBeCloseTo(truth.before, 3);
    expect(found.rise).toBeCloseTo(truth.rise, 1);
    expect(found.misfit).toBeLessThan(1e-6);
  }
});

test("the point of greatest curvature is where a search on the drawn curve finds it", () => {
  for (const drawingSlope of [0.5, 1, 2, 4]) {
    const found = greatestCurvature(law, 1, drawingSlope);
    const curvature = (at: number) =>
      (bendingAt(law, at) * drawingSlope) / (1 + (drawingSlope * slopeAt(law, at)) ** 2) ** 1.5;
    for (let at = 1.2; at < 2.6; at += 0.01) expect(curvature(found)).toBeGreaterThanOrEqual(curvature(at) - 1e-9);
  }
});

// How high the construction reads on a rounded knee (width 0.1 log cycle, Cr/Cc 0.1), by the slope at which the virgin
// line is
// drawn: figures of a numerical study made independently of this program.
test.each([
  [1, 1.15],
  [2, 1.09],
  [4, 1.04],
])("drawn at slope %d the construction reads %d of the corner", (drawingSlope, ratio) => {
  const at = greatestCurvature(law, 1, drawingSlope);
  const u = kneeAt(law, at);
  const slope = Math.tan(Math.atan(drawingSlope * slopeAt(law, at)) / 2) / drawingSlope;
  const virgin = { slope: 1, intercept: -law.rise * law.corner };
  const meets = meetingPoint({ slope, intercept: u - slope * at }, virgin);
  expect(10 ** (meets - law.corner)).toBeCloseTo(ratio, 2);
});

test("a part before yield that steepens: the law finds the corner of an exact curve, for every exponent", () => {
  for (const exponent of [0.5, 1])
    for (const width of [0, 0.06]) {
      const corner = 2.1;
      const x = Array.from({ length: 10 }, (_, i) => 1 + 0.25 * i);
      const ramp = (d: number) => (width === 0 ? Math.max(d, 0) : width * Math.log1p(Math.exp(d / width)));
      // Linear in stress to the power of the exponent up to the corner, then linear in log of stress.
      const u = x.map((value) => {
        const past = ramp(value - corner);
        return 0.02 + 0.1 * 10 ** (exponent * (value - corner - past)) + 0.6 * past;
      });
      const best = bestKnee(steepeningLaw(x, u, exponent), x[0], x[x.length - 1]);
      expect(best.corner).toBeCloseTo(corner, 2);
      expect(Math.sqrt(best.misfit / x.length)).toBeLessThan(1e-3);
    }
});

test("the misfit of an exact curve is that of its rounded values: it is summed from the residuals", () => {
  const [corner, width] = [2.1, 0.06];
  const x = Array.from({ length: 10 }, (_, i) => 1 + 0.25 * i);
  const u = x.map((value) => {
    const past = width * Math.log1p(Math.exp((value - corner) / width));
    return 0.02 + 0.1 * 10 ** (value - corner - past) + 0.6 * past;
  });
  // Values near 1 are rounded by 1e-16; a difference of two sums of squares would be rounded by 1e-16 itself.
  const { misfit } = steepeningLaw(x, u, 1)(corner, width);
  expect(misfit).toBeGreaterThanOrEqual(0);
  expect(misfit).toBeLessThan(x.length * 1e-31);
});

test("a law that steepens does not fit a curve without a knee", () => {
  const x = [1, 1.3, 1.6, 1.9, 2.2, 2.5];
  const falling = x.map((value) => 1 - 0.1 * value);
  expect(steepeningLaw(x, falling, 1)(1.8, 0.05).misfit).toBe(Infinity);
});

test("a law written into an object gives the same as without the object, whatever the object held", () => {
  const u = x.map((v) => kneeAt({ ...law, excess: 0.4 }, v));
  const virgin = { slope: 1, intercept: -law.rise * law.corner };
  for (const fitted of [straightLaw(x, u), bentLaw(x, u), heldLaw(x, u, virgin), steepeningLaw(x, u, 0.5)]) {
    const used = emptyKnee();
    for (const [corner, width] of [
      [1.7, 0],
      [2.1, 0.1],
      [2.6, 0.05],
    ] as const) {
      fitted(corner, width, used);
      expect(used).toEqual(fitted(corner, width));
    }
  }
});
