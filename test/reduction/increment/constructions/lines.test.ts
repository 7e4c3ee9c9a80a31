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

describe("where the lines begin and end", () => {
  const first = curve.times[0];
  const last = curve.times[curve.times.length - 1];
  const ends = (lines: ReturnType<typeof logTimeLines>, label: string) =>
    lines.find((line) => line.label === label)!.points as (readonly [number, number])[];

  test("log time: levels run from the first reading to their time, times from their level to that of d0", () => {
    const lines = logTimeLines(cleaned.value, logTime.value);
    const { d0, d50, d100, t50, t100, tangent, tail, parabola } = logTime.value;
    const of = (label: string) => ends(lines, label);
    expect(of("d0")).toEqual([[first, d0], [t50, d0]]); // prettier-ignore
    expect(of("d50")).toEqual([[first, d50], [t50, d50]]); // prettier-ignore
    expect(of("d100")).toEqual([[first, d100], [t100, d100]]); // prettier-ignore
    expect(of("t50")).toEqual([[t50, d50], [t50, d0]]); // prettier-ignore
    expect(of("t100")).toEqual([[t100, d100], [t100, d0]]); // prettier-ignore
    expect(of("half distance").map(([x]) => x)).toEqual([first, first, first]);
    // Tangent and tail pass their crossing by a ratio of times of 1.6, so that the eye sees it.
    expect(of("steepest tangent")[1][0]).toBeCloseTo(1.6 * t100, 9);
    expect(of("secondary tail").map(([x]) => x)).toEqual([expect.closeTo(t100 / 1.6, 9), last]);
    // The tangent begins at the level of d0, or at the first reading.
    const [from, level] = of("steepest tangent")[0];
    const reaches = tangent.time * 10 ** ((d0 - tangent.reading) / tangent.slope);
    expect(from).toBeCloseTo(Math.max(reaches, first), 9);
    if (reaches > first) expect(level).toBeCloseTo(d0, 9);
    expect(of("secondary tail")[1][1]).toBeCloseTo(tail.atOneMinute + tail.slope * Math.log10(last), 9);
    // Thirteen points of the parabola, evenly on log time over its span.
    const early = of("early parabola");
    expect(early).toHaveLength(13);
    expect([early[0][0], early[12][0]]).toEqual([parabola.from, expect.closeTo(parabola.to, 9)]);
    expect(early[6][0]).toBeCloseTo(Math.sqrt(parabola.from * parabola.to), 9);
  });

  test("root time: both lines run from d0 almost to d100, the levels from the axis to root t90", () => {
    const lines = rootTimeLines(cleaned.value, rootTime.value);
    const { d0, d90, d100, t90, straight } = rootTime.value;
    const of = (label: string) => ends(lines, label);
    const x90 = Math.sqrt(t90);
    expect(of("readings")).toEqual(curve.times.map((t, i) => [Math.sqrt(t), curve.readings[i]]));
    expect(of("straight part")[0]).toEqual([0, d0]);
    expect(of("straight part")[1][1]).toBeCloseTo(d0 + 0.98 * (d100 - d0), 9);
    expect(of("1.15 line")[1][1]).toBe(of("straight part")[1][1]);
    expect(of("1.15 abscissae")[1][0]).toBeCloseTo(Math.sqrt(straight.to), 12);
    expect(of("d0")).toEqual([[0, d0], [x90, d0]]); // prettier-ignore
    expect(of("d90")).toEqual([[0, d90], [x90, d90]]); // prettier-ignore
    expect(of("d100")).toEqual([[0, d100], [x90, d100]]); // prettier-ignore
    expect(of("root t90")).toEqual([[x90, d90], [x90, d0]]); // prettier-ignore
  });

  test("readings and pair are points, levels and times guides, marks and the parabola curves, the rest ruled lines", () => {
    const styles = (lines: ReturnType<typeof logTimeLines>, style: string) =>
      lines.filter((line) => line.style === style).map(({ label }) => label);
    const log = logTimeLines(cleaned.value, logTime.value);
    expect(styles(log, "points")).toEqual(["readings", "4:1 pair"]);
    expect(styles(log, "curve")).toEqual(["early parabola", "offset", "same offset", "half distance"]);
    expect(styles(log, "construction")).toEqual(["steepest tangent", "secondary tail"]);
    expect(styles(log, "guide")).toEqual(["d0", "d50", "d100", "t50", "t100"]);
    const root = rootTimeLines(cleaned.value, rootTime.value);
    expect(styles(root, "construction")).toEqual(["straight part", "1.15 line"]);
    expect(styles(root, "guide")).toEqual(["d0", "d90", "d100", "root t90"]);
    expect(styles(root, "curve")).toEqual(["1.15 abscissae"]);
  });
});
