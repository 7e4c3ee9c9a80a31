import type { PlotSpec } from "../../src/plots/spec";
import { logTimePlot, rootTimePlot } from "../../src/plots/time";
import { logTimeLines, rootTimeLines } from "../../src/reduction/increment/constructions/lines";
import { reduceIncrement } from "../../src/reduction/increment/reduce";
import type { Outcome } from "../../src/reduction/outcome";
import { timeCurve } from "./curves";
import { english } from "../../src/reduction/message";

const { times, readings } = timeCurve;
const valueOf = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const seriesOf = (spec: PlotSpec, label: string) => {
  const found = spec.series.find((series) => series.label === label);
  if (!found) throw new Error(`no series ${label}`);
  return found;
};

describe.each([
  ["log of time", logTimePlot, "logTime", ["d0", "d50", "d100", "t50", "t100"]],
  ["root of time", rootTimePlot, "rootTime", ["d0", "d90", "d100", "1.15 line"]],
] as const)("%s", (_, plot, method, known) => {
  const spec = valueOf(plot(times, readings));
  const increment = reduceIncrement(times, readings);
  const clean = valueOf(increment.cleaned);
  const lines =
    method === "logTime"
      ? logTimeLines(clean, valueOf(increment.logTime))
      : rootTimeLines(clean, valueOf(increment.rootTime));

  test("every line of the construction is drawn and labelled with its own name", () => {
    for (const { label } of lines.filter((line) => line.label !== "readings"))
      expect(seriesOf(spec, label).letters).toBe(label);
    for (const label of known) expect(seriesOf(spec, label).letters).toBe(label);
  });

  test("lines that are not guides are drawn exactly as the reduction gives them", () => {
    for (const line of lines.filter(({ style, label }) => style !== "guide" && label !== "readings"))
      expect(seriesOf(spec, line.label).points).toEqual(line.points);
  });

  test("all readings are drawn, unaltered", () => {
    expect(seriesOf(spec, "readings").points.map(([, reading]) => reading)).toEqual(readings);
  });

  test("deformation increases downward, and the frame holds the readings and the marks of the guides", () => {
    expect(spec.y.reversed).toBe(true);
    expect(spec.x.reversed).toBe(false);
    const [low, high] = spec.y.domain;
    for (const { points } of spec.series.filter(({ style }) => style === "guide" || style === "points"))
      for (const [, y] of points) {
        expect(y).toBeGreaterThanOrEqual(low);
        expect(y).toBeLessThanOrEqual(high);
      }
  });

  // Common practice, no source: settlement is drawn downward, whether the dial rises or falls.
  test("readings that fall on compression are drawn downward too, and swelling upward", () => {
    const falling = readings.map((reading) => 1000 - reading);
    expect(valueOf(plot(times, falling)).y.reversed).toBe(false);
    expect(valueOf(plot(times, falling, { sense: "fall" })).y.reversed).toBe(false);
    // On a dial that rises on compression, the same readings show a swelling specimen.
    expect(valueOf(plot(times, falling, { sense: "rise" })).y.reversed).toBe(true);
  });

  test("levels extend to the reading axis and vertical lines down to the time axis", () => {
    expect(seriesOf(spec, "d100").points[0][0]).toBe(spec.x.domain[0]);
    const upright = seriesOf(spec, method === "logTime" ? "t50" : "root t90");
    expect(upright.points[1]).toEqual([upright.points[0][0], spec.y.domain[1]]);
  });

  test("if a method does not apply, the readings are drawn with its reason", () => {
    const straight = times.map((time) => 1 + 0.1 * Math.log10(1 + time));
    const outcome = reduceIncrement(times, straight)[method];
    if (outcome.ok) throw new Error("the method should not apply to this curve");
    const refused = valueOf(plot(times, straight));
    expect(refused.series.map(({ label }) => label)).toEqual(["readings"]);
    expect(refused.refusal).toEqual(outcome.reason);
  });

  test("the plot includes the remarks of the method", () => {
    const shuffled = [...times.keys()].reverse();
    const spec = valueOf(
      plot(
        shuffled.map((index) => times[index]),
        shuffled.map((index) => readings[index]),
      ),
    );
    expect(spec.remarks.map(english).join()).toContain("order");
  });

  test("values that are not a time curve are refused", () => {
    expect(plot([0, -1, 2, 3], [1, 2, 3, 4])).toMatchObject({ ok: false, fault: "input" });
    expect(plot([null, null], [1, 2])).toMatchObject({ ok: false });
  });
});

test("log time has whole decades on a log axis", () => {
  const { x } = valueOf(logTimePlot(times, readings));
  expect(x).toMatchObject({ scale: "log", domain: [0.1, 10000], label: expect.stringContaining("min") });
});

test("root time starts at zero and ends not far beyond t90; a note mentions later readings", () => {
  const spec = valueOf(rootTimePlot(times, readings));
  expect(spec.x).toMatchObject({ scale: "root", domain: [0, expect.any(Number)] });
  expect(seriesOf(spec, "readings").points[4]).toEqual([Math.sqrt(times[4]), readings[4]]);
  const beyond = times.filter((time) => Math.sqrt(time) > spec.x.domain[1]).length;
  expect(beyond).toBeGreaterThan(0);
  expect(spec.notes).toEqual([expect.stringContaining(String(beyond))]);
});

test("the axis names the quantity of the readings", () => {
  expect(valueOf(logTimePlot(times, readings, { readingLabel: "Dial (mm)" })).y.label).toBe("Dial (mm)");
});

test("a blank, null or the 0 of desktop Excel, is not plotted as a reading", () => {
  for (const blank of [null, 0]) {
    const gap = readings.map((reading, index) => (index === 5 ? blank : reading));
    const { points } = seriesOf(valueOf(logTimePlot(times, gap)), "readings");
    expect(points).toHaveLength(readings.length - 1);
  }
});

test("a long logger series is drawn as the averages that the reduction uses", () => {
  const many = Array.from({ length: 5000 }, (_, index) => 0.05 * 1.0021 ** index);
  const spec = valueOf(
    logTimePlot(
      many,
      many.map((time) => 1 + Math.sqrt(time) / (1 + Math.sqrt(time))),
    ),
  );
  expect(seriesOf(spec, "readings").points.length).toBeLessThan(200);
});

test("the points of the 4:1 pair are crosses, which nobody takes for readings", () => {
  const { series } = valueOf(logTimePlot(times, readings));
  const points = series.filter(({ style }) => style === "points");
  expect(points.map(({ label, symbol }) => [label, symbol])).toEqual([
    ["4:1 pair", "cross"],
    ["readings", "filled"],
  ]);
});
