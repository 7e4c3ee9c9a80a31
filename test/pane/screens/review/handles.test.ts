import {
  handlesOf,
  onAxes,
  placeOf,
  valueAt,
  valueByKey,
  type Frame,
  type Handle,
} from "../../../../src/pane/screens/review/handles";
import { plotOf } from "../../../../src/pane/screens/review/increment";
import {
  TIME_METHODS,
  type PickName,
  type Picks,
  type TimeMethod,
} from "../../../../src/reduction/increment/constructions/picks";
import { reduceIncrement } from "../../../../src/reduction/increment/reduce";
import { BY_HAND, SCENARIOS } from "../../../generators/time-curves";
import { english } from "../../../../src/reduction/message";

const FRAME: Frame = { left: 58, top: 14, right: 258, bottom: 234 };
const { times, readings } = SCENARIOS.find(({ name }) => name === "dial of 0.0001 in")!.make(7);
const swelling = SCENARIOS.find(({ name }) => name === "swelling")!.make(7);

function shown(
  method: TimeMethod,
  picks: Picks = {},
  curve: { times: number[]; readings: number[] } = { times, readings },
) {
  const increment = reduceIncrement(curve.times, curve.readings, picks);
  const set = handlesOf(increment, reduceIncrement(curve.times, curve.readings), picks, method);
  const spec = plotOf(curve, increment, method, { readingLabel: "Reading" });
  if (!spec.ok) throw new Error(english(spec.reason));
  return {
    increment,
    set,
    spec: spec.value,
    handle: (name: PickName) => set.handles.find((one) => one.name === name)!,
  };
}

test.each(TIME_METHODS)("%s: the handles stand where the construction is", (method) => {
  const { increment, handle, set } = shown(method);
  const { logTime, rootTime } = increment;
  if (!logTime.ok || !rootTime.ok) throw new Error("the curve is sound");
  const { d0, d100, tail, pair, tangent } = logTime.value;
  const { d0: rootD0, d90, straight } = rootTime.value;
  const expected: Partial<Record<PickName, number>> =
    method === "log time"
      ? {
          d0,
          d100,
          tail_from: tail.from,
          tail_to: tail.to,
          pair_at: pair.time,
          tangent_from: tangent.from,
          tangent_to: tangent.to,
        }
      : { d0: rootD0, d90, straight_from: straight.from, straight_to: straight.to };
  expect(Object.fromEntries(set.handles.map(({ name, value }) => [name, value]))).toEqual(expected);
  expect(handle("d0").kind).toBe("level");
});

test.each(TIME_METHODS)("%s: a handle that is dropped at its place stays, to a step or a reading", (method) => {
  for (const curve of [{ times, readings }, swelling]) {
    const { set, spec } = shown(method, {}, curve);
    for (const handle of set.handles) {
      const value = valueAt(handle, set, spec, FRAME, placeOf(handle, spec, FRAME));
      expect(Math.abs(value - handle.value)).toBeLessThanOrEqual(handle.kind === "level" ? set.step : 0);
    }
  }
});

test("a level that is dragged down reads more compression, by round steps", () => {
  const { set, spec, handle } = shown("log time");
  const d100 = handle("d100");
  const place = placeOf(d100, spec, FRAME);
  const lower = valueAt(d100, set, spec, FRAME, place + 20);
  expect(lower).toBeGreaterThan(d100.value);
  expect(lower / set.step).toBeCloseTo(Math.round(lower / set.step), 6);
  expect(valueAt(d100, set, spec, FRAME, 1e6)).toBe(d100.most);
});

test("the end of a span snaps to the nearest reading on the drawing", () => {
  const { set, spec, handle } = shown("log time");
  const from = handle("tail_from");
  for (const time of BY_HAND) {
    const place = placeOf({ ...from, value: time }, spec, FRAME);
    expect(valueAt(from, set, spec, FRAME, place + 3)).toBe(time);
  }
  expect(valueAt(from, set, spec, FRAME, -500)).toBe(BY_HAND[0]);
});

test("a time of a logger is written short, and still includes its reading", () => {
  const logger = { times: times.map((time) => time * 1.000123456), readings };
  const { set, spec, handle } = shown("log time", {}, logger);
  for (const name of ["tail_from", "tail_to"] as const)
    for (const time of logger.times) {
      const handled = handle(name);
      const value = valueAt(handled, set, spec, FRAME, placeOf({ ...handled, value: time }, spec, FRAME));
      if (name === "tail_from") expect(value).toBeLessThanOrEqual(time);
      else expect(value).toBeGreaterThanOrEqual(time);
      expect(value / time).toBeCloseTo(1, 3);
    }
});

test("arrow keys move a level as the drawing shows it, with Shift ten times as far", () => {
  const { set, spec, handle } = shown("log time");
  const d0 = handle("d0");
  const by = (key: string, larger = false) => valueByKey(d0, set, spec, key, larger)! - d0.value;
  expect(by("ArrowDown")).toBeGreaterThan(0);
  expect(by("ArrowUp")).toBeLessThan(0);
  expect(by("ArrowRight")).toBeGreaterThan(0);
  expect(by("ArrowDown", true)).toBeGreaterThan(5 * by("ArrowDown"));
  expect(valueByKey(d0, set, spec, "a", false)).toBeUndefined();
});

test("arrow keys move the end of a span from reading to reading, and stop at the last", () => {
  const { set, spec, handle } = shown("log time");
  const at = (value: number): Handle => ({ ...handle("tail_from"), value });
  const by = (value: number, key: string, larger = false) => valueByKey(at(value), set, spec, key, larger);
  expect(by(60, "ArrowRight")).toBe(120);
  expect(by(60, "ArrowLeft")).toBe(30);
  expect(by(70, "ArrowLeft")).toBe(60);
  expect(by(60, "ArrowRight", true)).toBe(480);
  expect(by(1440, "ArrowRight")).toBe(1440);
  expect([by(60, "Home"), by(60, "End")]).toEqual([BY_HAND[0], 1440]);
});

test("a refused pick keeps its handle, and the readings are still drawn", () => {
  const picks = { d100: 1e6 };
  const { increment, spec, handle } = shown("log time", picks);
  expect(increment.logTime.ok).toBe(false);
  expect(handle("d100").value).toBe(1e6);
  expect(placeOf(handle("d100"), spec, FRAME)).toBe(FRAME.bottom);
  expect(english(spec.refusal!)).toMatch(/d100/);
  expect(spec.series.map(({ style }) => style)).toEqual(["points"]);
});

test("a pick is never 0, which the sheet takes for a blank", () => {
  const around = readings.map((reading) => reading - readings[0] - 0.002);
  const { set, spec, handle } = shown("log time", {}, { times, readings: around });
  const zero = placeOf({ ...handle("d0"), value: 0 }, spec, FRAME);
  const value = valueAt(handle("d0"), set, spec, FRAME, zero);
  expect(value).not.toBe(0);
  expect(Math.abs(value)).toBeLessThan(set.step);
});

test("a plot on other axes keeps its series, and levels reach the axis", () => {
  const { spec } = shown("log time");
  const x = { ...spec.x, domain: [0.01, 100_000] as const };
  const moved = onAxes(spec, x, spec.y);
  const level = (of: typeof spec) => of.series.find(({ label }) => label === "d100")!;
  expect(level(moved).points[0]).toEqual([0.01, level(spec).points[0][1]]);
  expect(moved.series.map(({ style }) => style)).toEqual(spec.series.map(({ style }) => style));
});

test("readings that are not a curve have no handles", () => {
  const nothing = reduceIncrement([0], [5]);
  expect(handlesOf(nothing, nothing, {}, "log time").handles).toEqual([]);
});
