import { compressionPlot } from "../../src/plots/compression";
import { scaledShape } from "../../src/plots/axes";
import type { PlotSpec } from "../../src/plots/spec";
import { DRAWING_SLOPE } from "../../src/reduction/curve/methods/casagrande";
import { testCurve } from "../../src/reduction/curve/shape/points";
import { preconsolidation } from "../../src/reduction/curve/preconsolidation";
import type { Outcome } from "../../src/reduction/outcome";
import { compressionCurve } from "./curves";
import { english } from "../../src/reduction/message";

const { stresses, voidRatios } = compressionCurve;
const strains = voidRatios.map((e) => (0.92 - e) / 1.92);
const valueOf = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const seriesOf = (spec: PlotSpec, label: string) => {
  const found = spec.series.find((series) => series.label === label);
  if (!found) throw new Error(`no series ${label}`);
  return found;
};
const spec = valueOf(compressionPlot(stresses, voidRatios, "e"));
const reading = valueOf(preconsolidation(valueOf(testCurve(stresses, voidRatios, "e"))));

test("every line of Casagrande's construction is drawn as the reduction gives it, with its label", () => {
  const construction = reading.lines.filter(({ label }) => label !== "first loading");
  expect(construction.map(({ label }) => label)).toEqual(
    expect.arrayContaining(["virgin line", "horizontal", "tangent", "bisector", "preconsolidation stress"]),
  );
  for (const { label, points, style } of construction) {
    expect(seriesOf(spec, label).letters).toBeTruthy();
    if (style !== "guide") expect(seriesOf(spec, label).points).toEqual(points);
  }
});

test("the yield stress has a line down to the stress axis, labelled with value and unit", () => {
  const { points, letters } = seriesOf(spec, "preconsolidation stress");
  expect(points[0][0]).toBe(reading.stress);
  expect(points[1]).toEqual([reading.stress, spec.y.domain[0]]);
  expect(letters).toBe(`σ′p ${Number(reading.stress.toPrecision(3))} kPa`);
  const tsf = valueOf(compressionPlot(stresses, voidRatios, "e", { stressUnit: "tsf" }));
  expect(seriesOf(tsf, "preconsolidation stress").letters).toContain("tsf");
  expect(tsf.x.label).toContain("tsf");
});

test("void ratio increases upward, strain downward, and the axes say which it is", () => {
  expect(spec.y).toMatchObject({ reversed: false, label: expect.stringContaining("Void ratio") });
  const strain = valueOf(compressionPlot(stresses, strains, "strain"));
  expect(strain.y).toMatchObject({ reversed: true, label: expect.stringContaining("strain") });
  expect(seriesOf(strain, "preconsolidation stress").points[1][1]).toBe(strain.y.domain[1]);
});

test("loading and reloading are filled, unloading is open, and all are joined in test order", () => {
  expect(seriesOf(spec, "loading")).toMatchObject({ symbol: "filled" });
  expect(seriesOf(spec, "unloading")).toMatchObject({ symbol: "open" });
  expect(seriesOf(spec, "unloading").points.map(([stress]) => stress)).toEqual([100, 25, 400, 100, 25]);
  expect(seriesOf(spec, "loading").points).toHaveLength(stresses.length - 5);
  expect(seriesOf(spec, "test").points.map(([stress]) => stress)).toEqual(stresses);
  expect(spec.notes.join()).toContain("unloading");
});

test("the stress axis has whole decades", () => expect(spec.x).toMatchObject({ scale: "log", domain: [10, 10000] }));

test("the note states the scale of the construction, which is the slope of the virgin line as drawn", () => {
  const [[x0, y0], [x1, y1]] = seriesOf(spec, "virgin line").points;
  expect(spec.drawnScale?.slope).toBe(DRAWING_SLOPE);
  expect(spec.drawnScale?.perCycle).toBeCloseTo(Math.abs(y1 - y0) / Math.log10(x1 / x0), 12);
  expect(spec.notes.join()).toContain(`slope of ${DRAWING_SLOPE} (`);
  expect(spec.notes.join()).toContain(`${Math.round((Math.atan(DRAWING_SLOPE) * 180) / Math.PI)}°`);
  expect(spec.notes.join()).toContain("drawn at that scale");
});

test("a scale that would make an unreadable shape is not used", () => {
  expect(scaledShape(spec.x, spec.y, { perCycle: 0.3, slope: 2 })).toBeGreaterThan(0);
  expect(scaledShape(spec.x, spec.y, { perCycle: 0.02, slope: 2 })).toBeUndefined();
  expect(scaledShape(spec.x, spec.y, { perCycle: 3, slope: 2 })).toBeUndefined();
});

test("a curve without yield keeps its points, with the reason", () => {
  const loads = [10, 20, 40, 80, 160, 320, 640];
  const straight = loads.map((stress) => 1.2 - 0.3 * Math.log10(stress / 10));
  const refused = valueOf(compressionPlot(loads, straight, "e"));
  expect(refused.series.map(({ label }) => label)).toEqual(["test", "loading"]);
  expect(english(refused.refusal!)).toContain("no bend");
  expect(refused.notes).toEqual([]);
});

test("values that are not a test are refused with a reason", () => {
  expect(compressionPlot([10, -20], [1, 0.9], "e")).toMatchObject({ ok: false, fault: "input" });
  expect(compressionPlot([10, 20], [1, 12], "strain")).toMatchObject({ ok: false, fault: "input" });
});

describe.each(["work", "bilog", "intersection", "pacheco_silva"] as const)("the construction by %s", (method) => {
  const drawn = valueOf(compressionPlot(stresses, voidRatios, "e", { method }));
  const read = valueOf(preconsolidation(valueOf(testCurve(stresses, voidRatios, "e")), { method }));

  test("every line stands in the plot, labelled, within its frame", () => {
    for (const { label, points, style } of read.lines.filter(({ label }) => label !== "first loading")) {
      expect(seriesOf(drawn, label)).toBeDefined();
      if (style === "construction") expect(seriesOf(drawn, label)).toMatchObject({ points, letters: label });
    }
    for (const [stress, value] of drawn.series
      .filter(({ style }) => style !== "guide")
      .flatMap(({ points }) => points)) {
      expect(stress).toBeGreaterThanOrEqual(drawn.x.domain[0]);
      expect(stress).toBeLessThanOrEqual(drawn.x.domain[1]);
      expect(value).toBeGreaterThanOrEqual(drawn.y.domain[0]);
      expect(value).toBeLessThanOrEqual(drawn.y.domain[1]);
    }
  });

  test("its stress is labelled; the note does not state Casagrande's scale", () => {
    expect(seriesOf(drawn, "preconsolidation stress").letters).toBe(`σ′p ${Number(read.stress.toPrecision(3))} kPa`);
    expect(drawn.drawnScale).toBeUndefined();
    expect(drawn.notes.join()).not.toContain("slope of");
  });
});

test("work is drawn on linear scales from zero, ln(1 + e) on log stress", () => {
  const by = (method: "work" | "bilog") => valueOf(compressionPlot(stresses, voidRatios, "e", { method }));
  expect(by("work").x).toMatchObject({ scale: "linear", label: "Effective vertical stress (kPa)" });
  expect(by("work").x.domain[0]).toBe(0);
  expect(by("work").y.label).toBe("Work per unit volume (kPa)");
  expect(by("bilog").x.scale).toBe("log");
  expect(by("bilog").y.label).toBe("ln(1 + e)");
});

test("if a method does not apply, the test is drawn with the reason", () => {
  const coarse = valueOf(compressionPlot(stresses, voidRatios, "e", { method: "janbu" }));
  expect(english(coarse.refusal!)).toContain("coarser than 1.6");
  expect(seriesOf(coarse, "loading").points.length).toBeGreaterThan(3);
});

test("marked stresses are vertical lines over the whole height, labelled, in every plane; the decades include them", () => {
  const marks = [{ label: "in-situ stress" as const, letters: "σ′v0", stress: 8 }];
  const marked = valueOf(compressionPlot(stresses, voidRatios, "e", { marks }));
  expect(seriesOf(marked, "in-situ stress")).toMatchObject({
    style: "guide",
    letters: "σ′v0 8 kPa",
    points: [
      [8, marked.y.domain[0]],
      [8, marked.y.domain[1]],
    ],
  });
  expect(marked.x.domain).toEqual([1, 10_000]);
  expect(spec.x.domain[0]).toBe(10);
  const work = valueOf(compressionPlot(stresses, voidRatios, "e", { marks, method: "work" }));
  expect(seriesOf(work, "in-situ stress").points[1]).toEqual([8, work.y.domain[1]]);
});

test("each of two stages of wetting is drawn as an upright dashed step", () => {
  const stages = valueOf(
    compressionPlot([25, 50, 50, 100, 200, 200, 400], [0.01, 0.02, 0.04, 0.05, 0.07, 0.12, 0.15], "strain"),
  );
  expect(stages.series.filter(({ label }) => label === "wetting")).toMatchObject([
    {
      style: "guide",
      points: [
        [50, 0.02],
        [50, 0.04],
      ],
    },
    {
      style: "guide",
      points: [
        [200, 0.07],
        [200, 0.12],
      ],
    },
  ]);
});
