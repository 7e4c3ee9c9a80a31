import { LINE_FACTOR } from "../../../src/reduction/increment/cv";
import { logTimeLines, rootTimeLines } from "../../../src/reduction/increment/lines";
import { reduceIncrement } from "../../../src/reduction/increment/reduce";
import { SCENARIOS } from "../../generators/time-curves";

const scenario = SCENARIOS.find(({ name }) => name === "dial of 0.0001 in");
const curve = scenario!.make(4);
const { cleaned, logTime, rootTime } = reduceIncrement(curve.times, curve.readings);
if (!cleaned.ok || !logTime.ok || !rootTime.ok) throw new Error("the curve must reduce");

/** How far a point stands from the straight line through the ends of another, in y, with x as drawn. */
const offLine = (
  [a, b]: (readonly [number, number])[],
  [x, y]: readonly [number, number],
  axis: (x: number) => number,
) => y - (a[1] + ((b[1] - a[1]) * (axis(x) - axis(a[0]))) / (axis(b[0]) - axis(a[0])));

describe("log time", () => {
  const lines = logTimeLines(cleaned.value, logTime.value);
  const of = (label: string) => lines.find((line) => line.label === label)!.points as (readonly [number, number])[];
  const { d0, d50, d100, t50, t100 } = logTime.value;

  test("every line that a hand would draw", () => {
    expect(lines.map(({ label }) => label)).toEqual([
      "readings",
      "early parabola",
      "steepest tangent",
      "secondary tail",
      "d0",
      "d50",
      "d100",
      "t50",
      "t100",
    ]);
  });
  test("the readings are the readings", () => {
    expect(of("readings")).toEqual(curve.times.map((t, i) => [t, curve.readings[i]]));
  });
  test("a ruler along tangent and tail meets at t100, d100", () => {
    expect(offLine(of("steepest tangent"), [t100, d100], Math.log10)).toBeCloseTo(0, 9);
    expect(offLine(of("secondary tail"), [t100, d100], Math.log10)).toBeCloseTo(0, 9);
  });
  test("the parabola keeps the 4:1 rule", () => {
    for (const [t, d] of of("early parabola")) {
      const four = d0 + 2 * (d - d0);
      const [t4, d4] = [4 * t, d0 + logTime.value.parabola.root * Math.sqrt(4 * t)];
      expect(t4).toBeGreaterThan(0);
      expect(d4).toBeCloseTo(four, 12);
    }
  });
  test("d50 is half way, and t50 stands under it", () => {
    expect(of("d50").every(([, y]) => y === d50)).toBe(true);
    expect(d50).toBeCloseTo((d0 + d100) / 2, 12);
    expect(of("t50").every(([x]) => x === t50)).toBe(true);
  });
});

describe("root time", () => {
  const lines = rootTimeLines(cleaned.value, rootTime.value);
  const of = (label: string) => lines.find((line) => line.label === label)!.points as (readonly [number, number])[];
  const { d0, d90, d100, t90 } = rootTime.value;
  const plain = (x: number) => x;

  test("every line that a hand would draw", () => {
    expect(lines.map(({ label }) => label)).toEqual([
      "readings",
      "straight part",
      "1.15 line",
      "d0",
      "d90",
      "d100",
      "root t90",
    ]);
  });
  test("the second line starts at d0 and has 1.15 times the abscissae", () => {
    expect(of("1.15 line")[0]).toEqual([0, d0]);
    const [, [x, y]] = of("straight part");
    expect(offLine(of("1.15 line"), [LINE_FACTOR * x, y], plain)).toBeCloseTo(0, 12);
  });
  test("it meets the curve at root t90, d90", () => {
    expect(offLine(of("1.15 line"), [Math.sqrt(t90), d90], plain)).toBeCloseTo(0, 9);
  });
  test("d90 is nine tenths of the way", () => expect(d0 + 0.9 * (d100 - d0)).toBeCloseTo(d90, 12));
});
