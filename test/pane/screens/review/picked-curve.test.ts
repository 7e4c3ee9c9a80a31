/** The handles of the compression curve and the values that its picks give, without a page. */
import curves from "../../../published/data/compression-curves.json";
import { placeOf, valueAt, valueByKey, type Frame, type Handle } from "../../../../src/pane/screens/review/handles";
import { curveValues, handlesOfCurve } from "../../../../src/pane/screens/review/picked-curve";
import { pickedCurvePlot } from "../../../../src/plots/picked-curve";
import type { CurvePicks } from "../../../../src/reduction/curve/picks";
import { preconsolidation, preconsolidationSpread } from "../../../../src/reduction/curve/preconsolidation";
import { METHOD_NAMES, type MethodName } from "../../../../src/reduction/curve/method-words";
import { testCurve } from "../../../../src/reduction/curve/shape/points";
import { standingPicks } from "../../../../src/reduction/curve/standing-picks";
import { english } from "../../../../src/reduction/message";
import type { Outcome } from "../../../../src/reduction/outcome";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const { hongKong, reloadLoop } = curves;
const TEST = value(testCurve(hongKong.stress, hongKong.voidRatio, "e"));
const LOOP = value(testCurve(reloadLoop.stress, reloadLoop.voidRatio, "e"));
const FRAME: Frame = { left: 58, top: 14, right: 258, bottom: 234 };

function shown(picks: CurvePicks = {}, method: MethodName = "casagrande", test = TEST) {
  const reading = preconsolidation(test, { method, picks });
  const spec = value(pickedCurvePlot(test, { method, picks, reading, spread: preconsolidationSpread(test) }));
  const set = handlesOfCurve(test, standingPicks(test, picks), method);
  return { spec, set, handle: (name: string): Handle => set.handles.find((one) => one.name === name)! };
}

test("the handles stand at the ends of the lines that the construction takes, and at its greatest curvature", () => {
  const { spec, handle, set } = shown();
  const drawn = spec.series.find(({ label }) => label === "greatest curvature")!.points[0][0];
  expect(handle("greatest_curvature").value).toBeCloseTo(drawn, 9);
  expect([handle("virgin_to").value, handle("unloading_from").value, handle("unloading_to").value]).toEqual([
    1280, 20, 1280,
  ]);
  expect(set.handles.map(({ name }) => name)).not.toContain("loop_from");
  const loop = shown({}, "casagrande", LOOP);
  expect([loop.handle("loop_from").value, loop.handle("loop_to").value]).toEqual([100, 800]);
});

test("in planes of their own the methods have the handles of the lines that they use", () => {
  const names = (method: MethodName) => shown({}, method).set.handles.map(({ name }) => name);
  const lines = ["recompression_from", "recompression_to", "virgin_from", "virgin_to"];
  expect(names("work")).toEqual(lines);
  expect(names("bilog")).toEqual(lines);
  expect(names("intersection")).toEqual([...lines, "unloading_from", "unloading_to"]);
});

test.each(["casagrande", "work", "bilog"] as const)(
  "%s: a handle dropped at its place stays where it was",
  (method) => {
    const { set, spec } = shown({}, method);
    for (const handle of set.handles)
      expect(valueAt(handle, set, spec, FRAME, placeOf(handle, spec, FRAME))).toBe(handle.value);
  },
);

test("the end of a line snaps to the nearest reading, and moves from reading to reading by keys", () => {
  const { set, spec, handle } = shown();
  const from = handle("virgin_from");
  const at = (stress: number) => placeOf({ ...from, value: stress }, spec, FRAME);
  expect(valueAt(from, set, spec, FRAME, at(160) + 5)).toBe(160);
  expect(valueAt(from, set, spec, FRAME, -500)).toBe(20);
  const by = (key: string, larger = false) => valueByKey({ ...from, value: 320 }, set, spec, key, larger);
  expect([by("ArrowLeft"), by("ArrowRight"), by("ArrowLeft", true), by("Home"), by("End")]).toEqual([
    160, 640, 40, 20, 1280,
  ]);
});

test("the point of greatest curvature moves along the curve by 1 percent, with Shift by about 10 percent", () => {
  const { set, spec, handle } = shown({ greatest_curvature: 200 });
  const point = handle("greatest_curvature");
  const by = (key: string, larger = false) => valueByKey(point, set, spec, key, larger);
  expect([by("ArrowRight"), by("ArrowLeft"), by("ArrowRight", true), by("Home")]).toEqual([202, 198, 221, 20]);
  expect(by("a")).toBeUndefined();
  expect(valueAt(point, set, spec, FRAME, placeOf({ ...point, value: 250 }, spec, FRAME))).toBe(250);
});

test("a pick that the curve refuses keeps its handle, and the curve is still drawn", () => {
  const picks = { virgin_from: 640, virgin_to: 320 };
  const { spec, handle } = shown(picks);
  expect(handle("virgin_from").value).toBe(640);
  expect(english(spec.refusal!)).toMatch(/must lie below virgin to/);
  expect(spec.series.some(({ label }) => label === "test")).toBe(true);
});

test("stress and indices follow the picks: hand arithmetic for the indices", () => {
  const automatic = curveValues(TEST, {}, "casagrande");
  const picked = curveValues(TEST, { virgin_from: 640, virgin_to: 1280, unloading_from: 80 }, "casagrande");
  const doubling = Math.log10(2);
  expect(value(picked.Cc).value).toBeCloseTo((0.789 - 0.691) / doubling, 12);
  expect(value(picked.Cs).value).toBeCloseTo((0.754 - 0.691) / (4 * doubling), 12);
  expect(value(picked.stress).stress).not.toBe(value(automatic.stress).stress);
});

test("every other method stands behind: its lines in the same plane, otherwise a mark over the whole height", () => {
  const spread = value(preconsolidationSpread(TEST));
  const stresses = METHOD_NAMES.flatMap((method) => {
    const found = spread.methods.find((one) => one.method === method)?.result;
    return found?.ok && method !== "casagrande" ? [found.value.stress] : [];
  });
  const guides = (method: MethodName) =>
    shown({}, method).spec.series.filter(({ isBehind, style }) => isBehind && style === "guide");
  const behind = guides("casagrande").map(({ points }) => points[0][0]);
  expect([...behind].sort((a, b) => a - b)).toEqual([...stresses].sort((a, b) => a - b));
  const work = shown({}, "work").spec;
  for (const { points } of guides("work")) expect(points.map(([, y]) => y)).toEqual(work.y.domain);
  expect(
    shown()
      .spec.series.filter(({ isBehind }) => isBehind)
      .every(({ letters }) => letters === undefined),
  ).toBe(true);
});
