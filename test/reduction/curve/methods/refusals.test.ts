/** Where a method reads no yield, each on a curve that gives the refusal; strains as the lines of the method draw them. */
import { preconsolidation, preconsolidationSpread } from "../../../../src/reduction/curve/preconsolidation";
import type { CurvePicks } from "../../../../src/reduction/curve/picks";
import { METHOD_NAMES, type MethodName } from "../../../../src/reduction/curve/method-words";
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

test("a greatest stress below four times the result is remarked, with the ratio", () => {
  const remarks = (stresses: readonly number[], strains: readonly number[]) => {
    const found = then(testCurve([...stresses], [...strains], "strain"), (test) =>
      preconsolidation(test, { method: "intersection" }),
    );
    return found.ok && found.remarks.map(english);
  };
  // Yield at 160, the greatest stress 640; then yield at 160, and 620.
  const strains = [0, 0.01, 0.02, 0.03, 0.04, 0.09, 0.14];
  expect(remarks(doubled(7), strains)).toEqual([]);
  const end = 0.09 + 0.05 * Math.log2(620 / 320);
  expect(remarks([...doubled(6), 620], [...strains.slice(0, 6), end])).toEqual([
    "the greatest stress is only 3.9 times the result: load to 4 times or more",
  ]);
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
  expect(stressOf(strains, "work", { virgin_from: 640, virgin_to: 1280 })).toBe("the two lines meet outside the loads");
  // The steep step by itself meets the line before yield within the loads.
  expect(stressOf(strains, "work", { virgin_from: 320, virgin_to: 640 })).toBeCloseTo(320, -1);
});

describe("two lines that meet outside the loads give no yield", () => {
  const refusals = (stresses: readonly number[], strains: readonly number[], picks: CurvePicks) =>
    METHOD_NAMES.map((method) => {
      const found = then(testCurve([...stresses], [...strains], "strain"), (test) =>
        preconsolidation(test, { method, picks }),
      );
      return `${method}: ${found.ok ? "reads" : english(found.reason)}`;
    });
  const [ofWork, ofLogs] = [
    "work: the two lines meet outside the loads",
    "bilog: the two lines meet outside the loads",
  ];
  const ofLines = "intersection: the two lines meet outside the loads";

  test("below the first load: a great step, and the virgin line picked behind it", () => {
    // Drawn back from 80 at 0.03 a step, the virgin line falls from 0.4 to the strain of the start far below 10.
    const strains = [0, 0.01, 0.02, 0.4, 0.43, 0.46, 0.49, 0.52];
    const picks = { recompression_from: 10, recompression_to: 40, virgin_from: 80, virgin_to: 1280 };
    expect(refusals(doubled(8), strains, picks)).toEqual(
      expect.arrayContaining([
        ...[ofWork, ofLogs, ofLines],
        "pacheco_silva: the virgin line meets the initial value before the first load",
      ]),
    );
  });

  test("above the last load: level between a first step that is picked, and the last step", () => {
    // On log of stress: 0.0664 x from 10 on, and 0.02 + 0.206 (x - 1.806) from 640 on, meet at x = 2.09, beyond 800.
    const loads = [...doubled(7), 800];
    const strains = [0, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.04];
    const picks = { recompression_from: 10, recompression_to: 20, virgin_from: 640, virgin_to: 800 };
    expect(refusals(loads, strains, picks)).toEqual(expect.arrayContaining([ofWork, ofLogs, ofLines]));
  });

  test("Pacheco Silva's horizontal line, where a nearly level part is picked as the virgin line", () => {
    // The specimen swells under the second load. From 20 to 40 the line rises by 0.0015 a doubled stress, to the strain
    // of the first load at about 50: from the curve above 50 a horizontal line meets it nowhere within the loads.
    const strains = [0.1, 0.098, 0.0995, 0.18, 0.29, 0.36, 0.37, 0.38, 0.39];
    const picks = { recompression_from: 10, recompression_to: 40, virgin_from: 20, virgin_to: 40 };
    expect(refusals(doubled(9), strains, picks)).toContain("pacheco_silva: the construction ends beyond the loads");
  });
});

test("a recompression line that begins above the virgin line is refused; it may begin with it", () => {
  const strains = [0, 0.01, 0.02, 0.03, 0.08, 0.13, 0.18, 0.23];
  const picked = (recompression_from: number, recompression_to: number) =>
    stressOf(strains, "intersection", { recompression_from, recompression_to, virgin_from: 80 });
  expect(picked(160, 320)).toBe(
    "the recompression line (160 to 320) begins above the virgin line (80 to 1280): move one of them",
  );
  // Both lines are then equally steep.
  expect(picked(80, 160)).toMatch(/^no bend in the curve/);
});

test("lines picked so that they share a load step are remarked; they may meet at a load", () => {
  const strains = [0, 0.01, 0.02, 0.03, 0.08, 0.13, 0.18, 0.23];
  const said = (recompression_to: number, virgin_from: number) => {
    const outcome = then(curve(strains), (test) =>
      preconsolidation(test, { picks: { recompression_to, virgin_from, virgin_to: 1280 } }),
    );
    return outcome.ok ? outcome.remarks.map(english).join("; ") : english(outcome.reason);
  };
  expect(said(160, 80)).toContain(
    "the recompression line (10 to 160) and the virgin line (80 to 1280) overlap: move an end of one of them",
  );
  expect(said(80, 80)).not.toContain("overlap");
  expect(said(80, 160)).not.toContain("overlap");
});

test("a greatest curvature picked outside the loads is refused; at the first or the last load it is not", () => {
  const strains = [0, 0.01, 0.02, 0.03, 0.08, 0.13, 0.18, 0.23];
  for (const outside of [9.9, 1290])
    expect(stressOf(strains, "casagrande", { greatest_curvature: outside })).toBe(
      `the greatest curvature picked at ${outside} lies outside the loads (10 to 1280): move it`,
    );
  // At 10 the curve rises by 0.0332 a log cycle, the virgin line by 0.1661, drawn at a slope of 1.5: the tangent at 0.3,
  // the bisector at 0.147 or 0.01626 a cycle, which meets 0.03 + 0.1661 (x - 1.903) at x = 1.801.
  expect(stressOf(strains, "casagrande", { greatest_curvature: 10 })).toBeCloseTo(63.2, 1);
  expect(stressOf(strains, "casagrande", { greatest_curvature: 1280 })).toBeCloseTo(1280, 0);
  const picked = then(curve(strains), (test) => preconsolidation(test, { picks: { greatest_curvature: 80 } }));
  expect(picked.ok && picked.remarks.map(english)).toEqual(["picked by hand: greatest curvature = 80"]);
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
