/** The plot of the void index: the loads against the intrinsic and the sedimentation line. */
import { INTRINSIC_LABELS, intrinsicPlot, type IntrinsicPlotOptions } from "../../src/plots/intrinsic";
import type { PlotSpec } from "../../src/plots/spec";
import { english } from "../../src/reduction/message";

// eL = 1.5: e*100 = 0.98125 and C*c = 0.344, computed from the constants of Burland (1990), which were read second hand.
const OPTIONS: IntrinsicPlotOptions = {
  liquidLimit: 0.6,
  specificGravity: 2.5,
  initialVoidRatio: 1.3,
  inSituStress: 50,
};
const drawn = (options: Partial<IntrinsicPlotOptions> = {}): PlotSpec => {
  const plot = intrinsicPlot([25, 50, 100, 200], [1.28, 1.25, 1.2, 1.0], { ...OPTIONS, ...options });
  if (!plot.ok) throw new Error(english(plot.reason));
  return plot.value;
};
const pointsOf = (spec: PlotSpec, label: string) => spec.series.find((one) => one.label === label)?.points ?? [];

test("e of 1.2 has the void index 0.636; the in-situ point has that of e0", () => {
  const spec = drawn();
  expect(pointsOf(spec, INTRINSIC_LABELS.loads)[2]![1]).toBeCloseTo(0.636, 3);
  expect(pointsOf(spec, INTRINSIC_LABELS.inSitu)).toEqual([[50, expect.closeTo((1.3 - 0.98125) / 0.344, 9)]]);
});

test("the intrinsic line has 1.18, 0 and -1.00 at 10, 100 and 1000 kPa; the sedimentation line has 0 at 500 kPa", () => {
  const spec = drawn();
  const at = (label: string, stress: number) =>
    pointsOf(spec, label).find(([x]) => Math.abs(x / stress - 1) < 1e-9)![1];
  expect([10, 100, 1000].map((stress) => at(INTRINSIC_LABELS.intrinsic, stress))).toEqual([
    expect.closeTo(1.18, 2),
    expect.closeTo(0, 9),
    expect.closeTo(-1, 2),
  ]);
  const line = pointsOf(spec, INTRINSIC_LABELS.sedimentation);
  const [before, after] = [line.filter(([x]) => x < 500).at(-1)!, line.find(([x]) => x > 500)!];
  expect(before[1]).toBeGreaterThan(0);
  expect(after[1]).toBeLessThan(0);
  expect(spec.notes.join(" ")).toMatch(/sedimentation compression line .* from memory/);
});

test("the lines are drawn in the unit of the stresses", () => {
  const [first] = pointsOf(drawn({ stressUnit: "tsf" }), INTRINSIC_LABELS.intrinsic);
  expect(first![0]).toBeCloseTo(10 / 95.76, 4);
});

test("a liquid limit in percent is refused", () => {
  const plot = intrinsicPlot([25, 50], [1.28, 1.25], { ...OPTIONS, liquidLimit: 60 });
  expect(plot.ok ? "" : english(plot.reason)).toMatch(/enter it as a ratio, 0.6 for 60 %/);
});
