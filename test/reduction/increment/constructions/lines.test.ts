import { LINE_FACTOR } from "../../../../src/reduction/increment/cv";
import { logTimeLines, rootTimeLines } from "../../../../src/reduction/increment/constructions/lines";
import { reduceIncrement } from "../../../../src/reduction/increment/reduce";
import { SCENARIOS } from "../../../generators/time-curves";
import { english } from "../../../../src/reduction/message";

const scenario = SCENARIOS.find(({ name }) => name === "dial of 0.0001 in");
const curve = scenario!.make(4);
const { cleaned, logTime, rootTime } = reduceIncrement(curve.times, curve.readings);
if (!cleaned.ok || !logTime.ok || !rootTime.ok) throw new Error("the curve must reduce");

/** Distance in y of a point from the straight line through two others, with x as drawn. */
const offLine = (
  [a, b]: (readonly [number, number])[],
  [x, y]: readonly [number, number],
  axis: (x: number) => number,
) => y - (a[1] + ((b[1] - a[1]) * (axis(x) - axis(a[0]))) / (axis(b[0]) - axis(a[0])));

describe("log time", () => {
  const lines = logTimeLines(cleaned.value, logTime.value);
  const of = (label: string) => lines.find((line) => line.label === label)!.points as (readonly [number, number])[];
  const { d0, d50, d100, t50, t100 } = logTime.value;

  test("every line of the hand construction is there", () => {
    expect(lines.map(({ label }) => label)).toEqual([
      "readings",
      "early parabola",
      "4:1 pair",
      "offset",
      "same offset",
      "steepest tangent",
      "secondary tail",
      "d0",
      "d50",
      "d100",
      "half distance",
      "t50",
      "t100",
    ]);
  });
  test("the readings are drawn unchanged", () => {
    expect(of("readings")).toEqual(curve.times.map((t, i) => [t, curve.readings[i]]));
  });
  test("the tangent and the tail meet at t100, d100", () => {
    expect(offLine(of("steepest tangent"), [t100, d100], Math.log10)).toBeCloseTo(0, 9);
    expect(offLine(of("secondary tail"), [t100, d100], Math.log10)).toBeCloseTo(0, 9);
  });
  test("the parabola follows the 4:1 rule", () => {
    for (const [t, d] of of("early parabola")) {
      const four = d0 + 2 * (d - d0);
      const [t4, d4] = [4 * t, d0 + logTime.value.parabola.root * Math.sqrt(4 * t)];
      expect(t4).toBeGreaterThan(0);
      expect(d4).toBeCloseTo(four, 12);
    }
  });
  test("the offset between the readings of the pair, laid off from the first reading, ends at d0", () => {
    const [[t1, d1], [t4, d4]] = of("4:1 pair");
    expect(t4 / t1).toBeCloseTo(4, 9);
    expect(of("offset")).toEqual([
      [t1, d4],
      [t1, d1],
    ]);
    const [[, from], [, to]] = of("same offset");
    expect(from).toBe(d1);
    expect(to).toBeCloseTo(d0, 9);
    expect(from - to).toBeCloseTo(d4 - d1, 9);
  });
  test("in the drawn procedure the pair is two readings", () => {
    const drawn = reduceIncrement(curve.times, curve.readings, {}, "drawn").logTime;
    if (!drawn.ok) throw new Error(english(drawn.reason));
    const pair = logTimeLines(cleaned.value, drawn.value).find(({ label }) => label === "4:1 pair")!;
    for (const [t, d] of pair.points) expect(curve.readings[curve.times.indexOf(t)]).toBeCloseTo(d, 12);
  });
  test("the half distance runs from d0 through d50 to d100, along the start of their levels", () => {
    expect(of("half distance").map(([, y]) => y)).toEqual([d0, d50, d100]);
    for (const level of ["d0", "d50", "d100"]) expect(of(level)[0][0]).toBe(of("half distance")[0][0]);
  });
  test("d50 is half way, and t50 stands below it", () => {
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

  test("every line of the hand construction is there", () => {
    expect(lines.map(({ label }) => label)).toEqual([
      "readings",
      "straight part",
      "1.15 line",
      "1.15 abscissae",
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
  test("at one level the abscissae of the two lines are as 1 to 1.15", () => {
    const [[zero, y], [x, same], [further, again]] = of("1.15 abscissae");
    expect([zero, same, again]).toEqual([0, y, y]);
    expect(further / x).toBeCloseTo(1.15, 12);
    expect(offLine(of("straight part"), [x, y], plain)).toBeCloseTo(0, 12);
    expect(offLine(of("1.15 line"), [further, y], plain)).toBeCloseTo(0, 12);
  });
  test("the second line meets the curve at root t90, d90", () => {
    expect(offLine(of("1.15 line"), [Math.sqrt(t90), d90], plain)).toBeCloseTo(0, 9);
  });
  test("d90 is nine tenths of the way from d0 to d100", () => expect(d0 + 0.9 * (d100 - d0)).toBeCloseTo(d90, 12));
});
