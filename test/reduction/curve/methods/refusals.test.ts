/** Where a method reads no yield, each on a curve that gives the refusal; strains as the lines of the method draw them. */
import { preconsolidation, preconsolidationSpread } from "../../../../src/reduction/curve/preconsolidation";
import type { CurvePicks } from "../../../../src/reduction/curve/picks";
import type { MethodName } from "../../../../src/reduction/curve/method-words";
import { testCurve } from "../../../../src/reduction/curve/shape/points";
import { then } from "../../../../src/reduction/outcome";
import { english } from "../../../../src/reduction/message";

const doubled = (count: number): number[] => Array.from({ length: count }, (_, i) => 10 * 2 ** i);
const curve = (strains: readonly number[]) => testCurve(doubled(strains.length), [...strains], "strain");
const stressOf = (strains: readonly number[], method: MethodName, picks: CurvePicks = {}) => {
  const found = then(curve(strains), (test) => preconsolidation(test, { method, picks }));
  return found.ok ? found.value.stress : english(found.reason);
};

// The stretch from 40 to 160, drawn back, meets the first step just below its end: yield lies within the first step.
const IN_FIRST_STEP = [0, 0.031, 0.207, 0.379, 0.527];
// The same with three equal steps after the first: the lines meet at the second load itself.
const AT_SECOND_LOAD = [0, 0.03, 0.2, 0.37, 0.54];

test("a yield within the first load step is not read, and one at the second load is", () => {
  // From 20 to 80 two equal steps of 0.174 on the mean, drawn through their mean: they meet 0.031 a step at 19.94.
  expect(stressOf(IN_FIRST_STEP, "intersection")).toBe(
    "the curve bends at about 19.94, before the second load (20): yield cannot be read",
  );
  expect(stressOf(AT_SECOND_LOAD, "intersection")).toBeCloseTo(20, 9);
});

test("the methods are not compared where fewer than two of them read a yield: the first refusal says why", () => {
  const spread = (strains: readonly number[]) => then(curve(strains), (test) => preconsolidationSpread(test));
  const refused = spread(IN_FIRST_STEP);
  expect(refused).toMatchObject({ ok: false, fault: "method" });
  expect(!refused.ok && english(refused.reason)).toMatch(
    /^Casagrande: the curve bends at about 17\.\d+, before the second load \(20\): yield cannot be read$/,
  );
  // Of the other curve three methods read a yield.
  const compared = spread(AT_SECOND_LOAD);
  expect(compared.ok && compared.value.methods.filter(({ result }) => result.ok)).toHaveLength(3);
});

test("two lines of work that meet before the first load give no yield: hand arithmetic", () => {
  const strains = [0, 0.039, 0.088, 0.137, 0.189, 0.237, 0.588, 0.733];
  // Work of the steps: mean stress times strain. The step to 640 is steep, the last one flatter, so that the line of the
  // last step, drawn back, lies above the line before yield at every load.
  const work = [0];
  strains.forEach((strain, i) => {
    if (i > 0) work.push(work[i - 1] + 7.5 * 2 ** i * (strain - strains[i - 1]));
  });
  const back = (stress: number) => work[7] - ((work[7] - work[6]) / 640) * (1280 - stress);
  expect(back(10)).toBeGreaterThan(work[0]);
  expect(stressOf(strains, "work", { virgin_from: 640, virgin_to: 1280 })).toBe(
    "the two lines of work meet outside the loads",
  );
  // The steep step by itself meets the line before yield within the loads.
  expect(stressOf(strains, "work", { virgin_from: 320, virgin_to: 640 })).toBeCloseTo(320, -1);
});

test("a greatest curvature picked at the end of the curve gives a bisector that misses the virgin line", () => {
  const strains = [0, 0.049, 0.089, 0.259, 0.453, 0.644, 0.82];
  expect(stressOf(strains, "casagrande", { greatest_curvature: 640 })).toBe(
    "the bisector meets the virgin line outside the loads: there is no yield to read",
  );
  const byMachine = stressOf(strains, "casagrande");
  expect(byMachine).toBeGreaterThan(20);
  expect(byMachine).toBeLessThan(80);
});
