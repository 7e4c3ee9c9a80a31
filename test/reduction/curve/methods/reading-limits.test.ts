/** The reading of a compression curve: each limit on both sides, on curves of straight steps (strain per doubled stress). */
import { readCurve, virginLineOf } from "../../../../src/reduction/curve/methods/reading";
import type { CurvePicks } from "../../../../src/reduction/curve/picks";
import { testCurve } from "../../../../src/reduction/curve/shape/points";
import { then } from "../../../../src/reduction/outcome";
import { english } from "../../../../src/reduction/message";

type More = readonly (readonly [stress: number, strain: number])[];
/** Strains that grow by these steps, at 10, 20, 40 and so on, and points after them. */
function curve(steps: readonly number[], more: More = []) {
  const strains = [0];
  for (const step of steps) strains.push(Number((strains[strains.length - 1] + step).toFixed(9)));
  const stresses = strains.map((_, i) => 10 * 2 ** i);
  return testCurve([...stresses, ...more.map(([stress]) => stress)], [...strains, ...more.map(([, u]) => u)], "strain");
}
const times = (count: number, step: number): number[] => Array.from({ length: count }, () => step);
const read = (steps: readonly number[], more?: More, picks?: CurvePicks) =>
  then(curve(steps, more), (test) => readCurve(test, picks));
const said = (steps: readonly number[], more?: More, picks?: CurvePicks): string[] => {
  const found = read(steps, more, picks);
  return found.ok ? found.remarks.map(english) : [`${found.fault}: ${english(found.reason)}`];
};
const virgin = (steps: readonly number[], more?: More, picks?: CurvePicks) => {
  const found = then(curve(steps, more), (test) => virginLineOf(test, picks));
  return found.ok ? found.value.virgin : english(found.reason);
};
const value = (steps: readonly number[]) => {
  const found = read(steps);
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};

const STEEP = "steep from the first load: yield may lie among the first loads, or the specimen be disturbed";
const FROM_FIRST =
  "method: no bend in the curve: it is steep from the first loads on, so yield lies below them; begin at lower loads";
const NONE =
  "method: no bend in the curve to read: yield was not reached, lies below the first loads, or the specimen is disturbed";
const TURNS = "the curve turns down only in the last load step: there is no virgin line yet; load further";
const OR_GIVE = "; or give the two stresses between which the slope is wanted";

test("a curve of two straight lines is read without a remark, its corner in both lines", () => {
  const { parts, knee, law, flattens, wide, scatter } = value([...times(3, 0.01), ...times(4, 0.05)]);
  expect([parts.recompression, parts.virgin]).toEqual([{ from: 0, to: 3 }, { from: 3, to: 7 }]); // prettier-ignore
  expect(10 ** knee.corner).toBeCloseTo(80, 0);
  expect({ form: law.form, flattens, wide, scatter }).toEqual({ form: "free", flattens: false, wide: false, scatter: 0.002 }); // prettier-ignore
  expect(said([...times(3, 0.01), ...times(4, 0.05)])).toEqual([]);
});

test("five points of first loading are needed, and fewer than seven remarked", () => {
  expect(said([0.01, 0.01, 0.05])).toEqual([
    "method: only 4 first-loading points: a preconsolidation stress needs 5 at the least",
  ]);
  expect(said([...times(2, 0.01), ...times(2, 0.05)])).toEqual(["only 5 first-loading points"]);
  expect(said([...times(2, 0.01), ...times(3, 0.05)])).toEqual(["only 6 first-loading points"]);
  expect(said([...times(3, 0.01), ...times(3, 0.05)])).toEqual([]);
});

test("the virgin line must be twice as steep as the start; below 2.5 times the bend is weak", () => {
  const rises = (ratio: number) => said([...times(3, 0.02), ...times(4, 0.02 * ratio)]);
  expect(rises(1.99)).toEqual([FROM_FIRST]);
  expect(rises(2.01)).toEqual(["a weak bend: the virgin line is only 2.0 times as steep as the start", STEEP]);
  expect(rises(2.49)).toEqual(["a weak bend: the virgin line is only 2.5 times as steep as the start"]);
  expect(rises(2.51)).toEqual([]);
});

test("a first step steeper than 0.45 of the virgin line is remarked, and beyond 0.6 and its doubt refused", () => {
  const early = (share: number) => said([0.1 * share, 0.01, 0.01, ...times(5, 0.1)]);
  expect(early(0.44)).toEqual([]);
  expect(early(0.46)).toEqual([STEEP]);
  expect(early(0.6)).toEqual([STEEP]);
  expect(early(0.7)).toEqual([FROM_FIRST]);
});

test("a virgin part that turns flatter at its end is said to flatten; with few points yield may read low", () => {
  const flatter = "the virgin part flattens beyond stress";
  expect(said([...times(3, 0.01), ...times(4, 0.1), 0.079])).toEqual([`${flatter} 1280: its steepest stretch is used`]);
  expect(value([...times(3, 0.01), ...times(4, 0.1), 0.079]).law.form).toBe("bent");
  expect(said([...times(2, 0.01), ...times(3, 0.1), 0.079])).toEqual([
    `${flatter} 320: its steepest stretch is used, and yield may read low`,
  ]);
  expect(value([...times(2, 0.01), ...times(3, 0.1), 0.079]).law.form).toBe("held");
});

test("a last step more than 1.2 times as steep as the step before says that the virgin line may not be reached", () => {
  const grows = (ratio: number) => said([...times(4, 0.01), 0.05, 0.1, 0.1 * ratio]);
  const two = "the virgin line rests on 2 points only";
  expect(grows(1.15)).toEqual([two]);
  expect(grows(1.21)).toEqual([
    two,
    "the slope still grows at the last load (1.2 times that of the step before): the virgin line may not be reached, and yield and Cc may read low",
    "the bend is widely rounded: the specimen may be disturbed, and yield may read high",
  ]);
});

test("a last step more than 1.2 times as steep is remarked although the steps before it are part of the virgin line", () => {
  const grows = (ratio: number) => said([...times(4, 0.01), 0.05, 0.1, 0.1, 0.1 * ratio]);
  expect(virgin([...times(4, 0.01), 0.05, 0.1, 0.1, 0.124])).toEqual({ from: 5, to: 8 });
  expect(grows(1.19).filter((remark) => remark.includes("still grows"))).toEqual([]);
  expect(grows(1.24)).toContain(
    "the slope still grows at the last load (1.2 times that of the step before): the virgin line may not be reached, and yield and Cc may read low",
  );
});

test("a curve that turns down only in its last step has no virgin line; two steps are enough", () => {
  expect(said([...times(6, 0.01), 0.1])).toEqual([`method: ${TURNS}`]);
  expect(virgin([...times(6, 0.01), 0.1])).toBe(TURNS + OR_GIVE);
  expect(said([...times(5, 0.01), 0.1, 0.1])).toEqual([]);
  expect(virgin([...times(5, 0.01), 0.1, 0.1])).toEqual({ from: 5, to: 7 });
});

test("a level step before the last, steep one is named, without a ratio", () => {
  const two = "the virgin line rests on 2 points only";
  const level = (step: number) => said([...times(5, 0.01), 0.05, step, 0.15]);
  expect(level(0)).toEqual([
    two,
    "the specimen did not compress in the step before the last: check that reading; the virgin line may not be reached, and yield and Cc may read low",
  ]);
  expect(level(0.001)).toEqual([
    two,
    "the slope still grows at the last load (150.0 times that of the step before): the virgin line may not be reached, and yield and Cc may read low",
  ]);
});

test("each load under which the specimen swelled by more than three times the scatter is named by its row", () => {
  const swelled = (row: number) => `row ${row}: the specimen swelled as the stress rose: check the reading`;
  expect(said([...times(2, 0.02), -0.01, ...times(4, 0.06)])).toContain(swelled(4));
  expect(said([...times(3, 0.01), ...times(2, 0.05), -0.02, ...times(2, 0.06)])).toContain(swelled(7));
  // The scatter is held below 0.005 of the whole compression, here 0.228 to 0.232.
  expect(said([0.01, 0.01, -0.004, ...times(4, 0.054)])).toContain(swelled(4));
  expect(said([0.01, 0.01, -0.003, ...times(4, 0.054)])).not.toContain(swelled(4));
});

/**
 * A curve is straight if its standard deviation about one line is below 0.06 of the whole compression, and a bend
 * explains less than 0.95 of the variance. The two numbers stand beside each curve; the third is what a bend with a
 * flattening virgin part explains, which counts from eight points on.
 */
describe("a curve that is straight within its scatter has no bend", () => {
  test.each([
    ["0.033, 0.24, 0.71: no bend", [0.011, 0.04, 0.026, 0.023, 0.033, 0.026, 0.019], true],
    ["0.056, 0.98: two lines on seven points", [0.01, 0.027, 0.04, 0.037, 0.039, 0.034], false],
    ["0.052, 0.70, 0.996: flattens, but on seven points only", [0.01, 0.023, 0.032, 0.035, 0.026, 0.02], true],
    ["0.050, 0.57, 0.98: flattens, on eight points", [0.026, 0.021, 0.069, 0.064, 0.05, 0.038, 0.046], false],
    ["0.073, 0.89: too far off the line to be straight", [0.007, 0.036, 0.042, 0.052, 0.06, 0.033], false],
  ] as const)("%s", (_, steps, straight) => {
    expect(said(steps).includes(FROM_FIRST)).toBe(straight);
    expect(read(steps).ok).toBe(!straight);
    // All of them are steeper than a recompression: they have a virgin line.
    expect(virgin(steps)).toMatchObject({ to: expect.any(Number) });
  });

  test("the first step is allowed the doubt of its slope before it counts as steep", () => {
    // 0.026 of 0.042 is 0.62; the doubt is the scatter of two readings over one doubled stress.
    expect(said([0.026, 0.012, 0.023, 0.027, 0.041, 0.04, 0.046])[0]).toMatch(/^a weak bend/);
  });

  test("a bend of exactly twice the slope is weak, and read", () => {
    expect(said([0.02, 0.04, 0.027, 0.022, 0.026, 0.019, 0.02])).toContain(
      "a weak bend: the virgin line is only 2.0 times as steep as the start",
    );
  });

  test("a level virgin line, which only a pick can give, is no bend", () => {
    const level = testCurve([10, 20, 40, 80, 160, 320, 640], [0.01, 0.01, 0.01, 0.01, 0.06, 0.11, 0.16], "strain");
    const picked = then(level, (test) => readCurve(test, { recompression_to: 40, virgin_from: 20, virgin_to: 40 }));
    expect(picked.ok || `method: ${english(picked.reason)}`).toBe(NONE);
  });
});

test("a curve that unloads from the first load on has no first loading to read", () => {
  const falling = testCurve([100, 50, 25, 12.5], [0.1, 0.09, 0.08, 0.07], "strain");
  for (const outcome of [then(falling, (test) => readCurve(test)), then(falling, (test) => virginLineOf(test))])
    expect(outcome.ok || english(outcome.reason)).toBe(
      "the test has one first-loading point only: there is no curve to read",
    );
});

test("a last load close to the load before it tells little of its slope: the virgin part may flatten there", () => {
  // From 1280 to 1350 the step is 0.023 log cycle, and its slope 0.7 of the virgin line.
  const steps = [...times(3, 0.01), ...times(4, 0.05)];
  const end = (share: number): More => [[1350, 0.23 + share * 0.05 * Math.log2(1350 / 1280)]];
  expect(said(steps, end(0.81))).toEqual([]);
  expect(said(steps, end(0.7))).toEqual(["the virgin part flattens beyond stress 1280: its steepest stretch is used"]);
});

test("one step before yield gives an uncertain line of recompression", () => {
  expect(said([0.01, ...times(6, 0.1)])).toEqual([
    "only one load step before yield: the line of recompression is uncertain",
  ]);
  expect(said([0.01, 0.01, ...times(6, 0.1)])).toEqual([]);
});

describe("beside an unloading", () => {
  const loading = [...times(4, 0.02), ...times(3, 0.1)];
  /** Unloading from 1280 by two steps of a factor of four, each by a share of two virgin steps. */
  const rebound = (share: number): More => [[320, 0.38 - 0.2 * share], [80, 0.38 - 0.4 * share]]; // prettier-ignore

  test("loading must be twice as steep: otherwise yield was not reached, and there is no virgin line", () => {
    expect(said(loading, rebound(0.49))).toEqual([]);
    expect(said(loading, rebound(0.51))).toEqual([
      "method: no bend in the curve: loading is no steeper than unloading, so yield was not reached; load further",
    ]);
    expect(virgin(loading, rebound(0.49))).toEqual({ from: 4, to: 7 });
    expect(virgin(loading, rebound(0.51))).toBe(
      "no bend in the curve: loading is no steeper than unloading, so yield was not reached; load further" + OR_GIVE,
    );
  });

  test("the unloading of a loop tells the same", () => {
    const loop = (share: number): More => [...rebound(share), [320, 0.38 - 0.2 * share], [1280, 0.38], [2560, 0.48]]; // prettier-ignore
    expect(said(loading, loop(0.49))).toEqual([]);
    expect(said(loading, loop(0.51))[0]).toMatch(/loading is no steeper than unloading/);
  });

  test("a straight curve is virgin throughout if it is twice as steep as the unloading, or steeper than recompression is", () => {
    const unloading = (slope: number): More => [[320, 0.35 - 2 * slope], [80, 0.35 - 4 * slope]]; // prettier-ignore
    expect(said(times(7, 0.05), unloading(0.024))).toEqual([FROM_FIRST]);
    expect(virgin(times(7, 0.05), unloading(0.024))).toEqual({ from: 0, to: 7 });
    // Without an unloading: strain of 0.1 per log cycle and more, 0.0301 per doubled stress.
    expect(said(times(7, 0.031))).toEqual([FROM_FIRST]);
    expect(virgin(times(7, 0.031))).toEqual({ from: 0, to: 7 });
    expect(said(times(7, 0.029))).toEqual([NONE]);
    expect(virgin(times(7, 0.029))).toBe(NONE.replace("method: ", "") + OR_GIVE);
  });
});

describe("picked ends of the lines", () => {
  const steps = [...times(3, 0.01), ...times(4, 0.05)];
  const parts = (picks: CurvePicks) => {
    const found = read(steps, [], picks);
    if (!found.ok) return english(found.reason);
    return [found.value.parts.recompression, found.value.parts.virgin];
  };
  test("replace the automatic ones, one by one; a stress within a thousandth of a load is that load", () => {
    expect(parts({ recompression_from: 20 })).toEqual([{ from: 1, to: 3 }, { from: 3, to: 7 }]); // prettier-ignore
    expect(parts({ recompression_to: 40 })).toEqual([{ from: 0, to: 2 }, { from: 3, to: 7 }]); // prettier-ignore
    expect(parts({ virgin_from: 160.1, virgin_to: 639.5 })).toEqual([{ from: 0, to: 3 }, { from: 4, to: 6 }]); // prettier-ignore
    expect(parts({ virgin_from: 161 })).toEqual([{ from: 0, to: 3 }, { from: 5, to: 7 }]); // prettier-ignore
    expect(parts({ virgin_to: 638 })).toEqual([{ from: 0, to: 3 }, { from: 3, to: 5 }]); // prettier-ignore
  });
  test("choose the points that the smooth curve is fitted to, its corner with them", () => {
    // The first step is off the line of the next two, which meets the virgin line at 80.
    const found = read([0.002, ...times(2, 0.01), ...times(4, 0.05)], [], { recompression_from: 20 });
    expect(found.ok && [10 ** found.value.knee.corner, found.value.knee.misfit]).toEqual([
      expect.closeTo(80, 1),
      expect.closeTo(0, 9),
    ]);
    // Held to a virgin line of two points.
    const held = read([0.002, ...times(2, 0.01), ...times(2, 0.05), 0.02], [], {
      recompression_from: 20,
      virgin_to: 160,
    });
    expect(held.ok && [held.value.law.form, 10 ** held.value.knee.corner]).toEqual(["held", expect.closeTo(80, 1)]);
  });

  test("one step of recompression is uncertain wherever it begins", () => {
    expect(said(steps, [], { recompression_from: 20, recompression_to: 40 })).toContain(
      "only one load step before yield: the line of recompression is uncertain",
    );
  });

  test("are named in a remark, and refused with fewer than two points", () => {
    expect(said(steps, [], { recompression_from: 20, virgin_to: 640 })).toEqual([
      "picked by hand: recompression from = 20, virgin to = 640",
      "the virgin part flattens beyond stress 640: its steepest stretch is used",
    ]);
    expect(parts({ virgin_from: 1000 })).toBe(
      "the virgin line picked from 1000 to 1280 has fewer than two points of first loading: move an end",
    );
    expect(parts({ recompression_to: 15 })).toBe(
      "the recompression line picked from 10 to 15 has fewer than two points of first loading: move an end",
    );
    expect(virgin(steps, [], { virgin_from: 1000 })).toMatch(/^the virgin line picked from 1000 to 1280/);
    expect(virgin(steps, [], { virgin_from: 160 })).toEqual({ from: 4, to: 7 });
    const line = then(curve(steps), (test) => virginLineOf(test, { recompression_from: 20, virgin_from: 160, virgin_to: 640 })); // prettier-ignore
    expect(line.ok && line.remarks.map(english)).toEqual(["picked by hand: virgin from = 160, virgin to = 640"]);
    // A step of 0.05 in a doubled stress, as a share of the whole strain of 0.23.
    expect(line.ok && line.value.line.slope * 0.23).toBeCloseTo(0.05 / Math.log10(2), 9);
  });
});
