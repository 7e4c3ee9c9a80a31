import { recompressionIndex, swellingIndex, type Between } from "../../../src/reduction/curve/indices";
import { testCurve } from "../../../src/reduction/curve/shape/points";
import { then } from "../../../src/reduction/outcome";
import { english } from "../../../src/reduction/message";

/** Loading to 400, a loop down to 50 whose reload yields again on the way back to 400, loading to 1600. */
const LOOP = {
  stresses: [25, 50, 100, 200, 400, 200, 100, 50, 100, 200, 400, 800, 1600],
  voids: [1.0, 0.99, 0.97, 0.9, 0.8, 0.81, 0.82, 0.83, 0.826, 0.818, 0.79, 0.69, 0.59],
};
const UNLOADING = { stresses: [400, 100], voids: [0.62, 0.66] };

const read = (index: typeof recompressionIndex, stresses: number[], voids: number[], between?: Between) => {
  const outcome = then(testCurve(stresses, voids, "e"), (test) => index(test, between));
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return { ...outcome.value, basis: english(outcome.value.basis), remarks: outcome.remarks.map(english) };
};

test("Cr of a loop is the slope between its ends: readings on the reload that yield again do not steepen it", () => {
  const { value, basis } = read(recompressionIndex, LOOP.stresses, LOOP.voids);
  // From 400 kPa, e 0.80, to 50 kPa, e 0.83. A least-squares line through the reload would give 0.043.
  expect(value).toBeCloseTo((0.83 - 0.8) / Math.log10(400 / 50), 12);
  expect(basis).toBe("reload loop 50 to 400");
});

test("a loop whose reload passes its upper end between two readings has the same ends", () => {
  const without = (cells: number[]) => cells.filter((_, i) => i !== 10);
  const { value } = read(recompressionIndex, without(LOOP.stresses), without(LOOP.voids));
  expect(value).toBeCloseTo((0.83 - 0.8) / Math.log10(400 / 50), 12);
});

test("for several loops Cr is the mean of their slopes", () => {
  const stresses = [...LOOP.stresses, 200, 1600, 3200];
  const voids = [...LOOP.voids, 0.63, 0.585, 0.49];
  const first = 0.03 / Math.log10(8);
  const { value, basis } = read(recompressionIndex, stresses, voids);
  expect(value).toBeCloseTo((first + 0.04 / Math.log10(8)) / 2, 12);
  expect(basis).toBe("reload loop 50 to 400 and 200 to 1600");
});

test("between two stresses Cr is taken on the reload or, if no reload reaches them, on first loading, and the basis says which", () => {
  const reload = read(recompressionIndex, LOOP.stresses, LOOP.voids, { from: 100, to: 200 });
  expect(reload.value).toBeCloseTo(0.008 / Math.log10(2), 12);
  expect(reload.basis).toBe("reload from 100 to 200");
  const first = read(recompressionIndex, LOOP.stresses, LOOP.voids, { from: 25, to: 50 });
  expect(first.value).toBeCloseTo(0.01 / Math.log10(2), 12);
  expect(first.basis).toBe("first loading from 25 to 50");
});

test("Cr prefers the loop to the final unloading, and the final unloading to initial loading", () => {
  const loopAndRebound = read(
    recompressionIndex,
    [...LOOP.stresses, ...UNLOADING.stresses],
    [...LOOP.voids, ...UNLOADING.voids],
  );
  expect(loopAndRebound.basis).toBe("reload loop 50 to 400");
  const stresses = [25, 50, 100, 200, 400, 800, 1600];
  const voids = [1.0, 0.99, 0.97, 0.9, 0.8, 0.69, 0.59];
  const rebound = read(recompressionIndex, [...stresses, ...UNLOADING.stresses], [...voids, ...UNLOADING.voids]);
  expect(rebound.basis).toBe("final unloading 100 to 1600");
  expect(rebound.remarks).toEqual(["Cr from the final unloading: the test has no reload loop"]);
  expect(rebound.value).toBe(
    read(swellingIndex, [...stresses, ...UNLOADING.stresses], [...voids, ...UNLOADING.voids]).value,
  );
  expect(read(recompressionIndex, stresses, voids).basis).toBe("initial loading 25 to 100");
});

test("between two stresses that no branch reaches there is no index, and the refusal names them", () => {
  const found = then(testCurve(LOOP.stresses, LOOP.voids, "e"), (test) =>
    recompressionIndex(test, { from: 1, to: 5000 }),
  );
  expect(found.ok ? found.value : english(found.reason)).toMatch(
    /branch reaches both 1 and 5000: choose stresses within/,
  );
});
