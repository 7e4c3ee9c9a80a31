import { cAlphaPlot, cvPlot } from "../../src/plots/coefficients";
import type { PlotSpec } from "../../src/plots/spec";
import type { Outcome } from "../../src/reduction/outcome";
import { english } from "../../src/reduction/message";

/** kPa: loading, a loop at 200 kPa, reloading and further loading, then unloading. Row 4 has no stress. */
const stresses = [25, 50, 100, null, 200, 50, 200, 400, 100];
const logTime = [9, 8, 4, null, 1.5, 3, 7, 1.2, 2];
const rootTime = [11, null, 5, null, 1.8, 4, 8, 1.4, 3];

const valueOf = (outcome: Outcome<PlotSpec>): PlotSpec => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const pointsOf = (spec: PlotSpec, label: string) => spec.series.find((series) => series.label === label)?.points;

describe("cv against mean stress", () => {
  const spec = valueOf(cvPlot(stresses, logTime, rootTime, { before: 5, chosen: "log time" }));

  test("cv stands at the mean stress of its load; reloading has another symbol, unloading is left out", () => {
    expect(pointsOf(spec, "log time, first loading")).toEqual([
      [15, 9],
      [37.5, 8],
      [75, 4],
      [150, 1.5],
      [300, 1.2],
    ]);
    expect(pointsOf(spec, "log time, reloading")).toEqual([[125, 7]]);
    expect(pointsOf(spec, "root time, first loading")).toHaveLength(4);
  });

  test("each method has its own shape, each kind of load its own symbol", () => {
    const symbols = spec.series
      .filter(({ style }) => style === "points")
      .map(({ shape, symbol }) => `${symbol} ${shape}`);
    expect(new Set(symbols).size).toBe(4);
    expect(spec.notes[0]).toMatch(/Circles: log time; triangles: root time.*reloading/);
  });

  test("both axes have whole decades and show their units", () => {
    expect(spec.x).toMatchObject({ scale: "log", domain: [10, 1000], label: expect.stringContaining("(kPa)") });
    expect(spec.y).toMatchObject({ scale: "log", domain: [1, 100], label: expect.stringContaining("(m2/yr)") });
    const us = valueOf(cvPlot(stresses, logTime, rootTime, { stressUnit: "tsf", cvUnit: "ft2/day" }));
    expect(us.x.label).toContain("(tsf)");
    expect(us.y.label).toContain("(ft2/day)");
  });

  test("the reported cv is joined from load to load, but not across unloading", () => {
    const lines = spec.series.filter(({ label }) => label === "cv reported").map(({ points }) => points);
    expect(lines).toEqual([
      [
        [15, 9],
        [37.5, 8],
        [75, 4],
      ],
      [
        [125, 7],
        [300, 1.2],
      ],
    ]);
    const none = valueOf(cvPlot(stresses, logTime, rootTime));
    expect(none.series.some(({ label }) => label === "cv reported")).toBe(false);
  });

  test("the reported method may differ from load to load", () => {
    const chosen = stresses.map((_, row) => (row < 2 ? ("root time" as const) : ("log time" as const)));
    const mixed = valueOf(cvPlot([25, 50, 100], [9, 8, 4], [11, 10, 5], { chosen }));
    expect(pointsOf(mixed, "cv reported")).toEqual([
      [12.5, 11],
      [37.5, 10],
      [75, 4],
    ]);
  });

  test("with the preconsolidation stress, loads that begin below it are not virgin, and a line marks it", () => {
    const marked = valueOf(cvPlot(stresses, logTime, rootTime, { before: 5, yieldStress: 80 }));
    expect(pointsOf(marked, "log time, virgin")).toEqual([
      [150, 1.5],
      [300, 1.2],
    ]);
    expect(pointsOf(marked, "log time, not virgin")?.map(([stress]) => stress)).toEqual([15, 37.5, 75, 125]);
    expect(marked.series.find(({ style }) => style === "guide")).toMatchObject({
      letters: "σ′p 80 kPa",
      points: [
        [80, 1],
        [80, 100],
      ],
    });
  });

  test("a load without a cv is named in a note", () => {
    expect(spec.notes).toContain("No cv by root time under 50 kPa.");
    expect(spec.notes.join()).not.toContain("by log time under");
  });

  test("refuses if only unloading has a cv", () => {
    expect(cvPlot([100, 25], [null, 3], [null, 4])).toMatchObject({ ok: false, fault: "input" });
    expect(cvPlot([], [], [])).toMatchObject({ ok: false });
  });
});

describe("C alpha against stress", () => {
  const values = [0.001, 0.002, 0.004, null, 0.01, 0.009, 0.003, 0.012, -0.001];
  const spec = valueOf(cAlphaPlot(stresses, values, { yieldStress: 90 }));

  test("C alpha stands at the stress of its load, on linear axes from zero", () => {
    expect(pointsOf(spec, "C alpha, virgin")).toEqual([
      [200, 0.01],
      [400, 0.012],
    ]);
    expect(pointsOf(spec, "C alpha, not virgin")?.map(([stress]) => stress)).toEqual([25, 50, 100, 200]);
    expect(spec.x).toMatchObject({ scale: "linear", domain: [0, 416] });
    expect(spec.y.scale).toBe("linear");
    expect(spec.y.domain[0]).toBe(0);
    expect(spec.y.domain[1]).toBeGreaterThan(0.012);
    expect(spec.y.label).toContain("strain");
  });

  test("stress has whole decades if asked for, and the axis says so", () => {
    const log = valueOf(cAlphaPlot(stresses, values, { stressScale: "log", basis: "e" }));
    expect(log.x).toMatchObject({ scale: "log", domain: [10, 1000], label: expect.stringContaining("log scale") });
    expect(log.y.label).toContain("void ratio");
  });

  test("a tail that swells gives no C alpha", () => {
    expect(valueOf(cAlphaPlot([25, 50], [-0.001, 0.002])).notes.join()).toContain("No C alpha under 25 kPa.");
  });
});
