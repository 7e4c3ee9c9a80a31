import { branches } from "../../../../src/reduction/curve/shape/branches";
import { testCurve, type Kind } from "../../../../src/reduction/curve/shape/points";
import { then } from "../../../../src/reduction/outcome";
import { english } from "../../../../src/reduction/message";
import { inEnglish } from "../../../in-english";

const read = (stresses: (number | null)[], values: (number | null)[], kind: Kind = "e") =>
  then(testCurve(stresses, values, kind), branches);
const stressesOf = (points: readonly { stress: number }[]) => points.map(({ stress }) => stress);

const LOADS = [12.5, 25, 50, 100, 200, 400, 800];
const VOIDS = [1.0, 0.99, 0.98, 0.96, 0.88, 0.78, 0.68];

test("finds a loop that reloads to the same stress, further loading, and the final unloading", () => {
  const outcome = read(
    [25, 50, 100, 200, 50, 12.5, 50, 200, 400, 800, 200, 50],
    [0.99, 0.98, 0.96, 0.88, 0.89, 0.91, 0.9, 0.875, 0.78, 0.68, 0.69, 0.71],
  );
  if (!outcome.ok) throw new Error(english(outcome.reason));
  const { firstLoading, loops, finalUnloading, seating } = outcome.value;
  expect(stressesOf(firstLoading)).toEqual([25, 50, 100, 200, 400, 800]);
  expect(loops).toHaveLength(1);
  expect(stressesOf(loops[0].unload)).toEqual([200, 50, 12.5]);
  expect(stressesOf(loops[0].reload)).toEqual([12.5, 50, 200]);
  expect(stressesOf(finalUnloading)).toEqual([800, 200, 50]);
  expect(seating).toEqual([]);
});

test("two loops in one unloading are two loops; a reload at the end is a loop", () => {
  const outcome = read([100, 200, 50, 100, 25, 150], [0.96, 0.88, 0.9, 0.89, 0.92, 0.89]);
  if (!outcome.ok) throw new Error(english(outcome.reason));
  expect(outcome.value.loops.map(({ unload, reload }) => [stressesOf(unload), stressesOf(reload)])).toEqual([
    [
      [200, 50],
      [50, 100],
    ],
    [
      [100, 25],
      [25, 150],
    ],
  ]);
  expect(outcome.value.finalUnloading).toEqual([]);
});

test("swelling at seating is left out of first loading, with a remark", () => {
  const outcome = read(LOADS, [0.96, ...VOIDS.slice(1)]);
  if (!outcome.ok) throw new Error(english(outcome.reason));
  expect(stressesOf(outcome.value.seating)).toEqual([12.5]);
  expect(outcome.remarks.map(english)).toEqual([
    "the specimen swelled up to stress 25: first loading is read from there",
  ]);
});

test("of two rows with one stress the later value counts, and the remark names the row", () => {
  const outcome = read([25, 25, 50, 100], [0.99, 0.985, 0.98, 0.96]);
  if (!outcome.ok) throw new Error(english(outcome.reason));
  expect(outcome.value.firstLoading.map(({ value }) => value)).toEqual([0.985, 0.98, 0.96]);
  expect(english(outcome.remarks[0])).toContain("row 2");
});

describe("wetting: water added under constant stress", () => {
  const STRESSES = [6.25, 12.5, 25, 50, 50, 100, 200, 400, 800];

  test("swelling is not a fault: the step is recognized, and first loading begins at the wetted point", () => {
    const outcome = read(STRESSES, [0.8, 0.795, 0.79, 0.78, 0.86, 0.85, 0.82, 0.75, 0.66]);
    if (!outcome.ok) throw new Error(english(outcome.reason));
    const { wetting, seating, firstLoading } = outcome.value;
    expect(wetting.map((step) => step.map(({ row, value }) => [row, value]))).toEqual([
      [
        [4, 0.78],
        [5, 0.86],
      ],
    ]);
    expect(stressesOf(seating)).toEqual([6.25, 12.5, 25]);
    expect(stressesOf(firstLoading)).toEqual([50, 100, 200, 400, 800]);
    expect(outcome.remarks.map(english)).toEqual([
      "row 5 has the stress of the row before (water added, or the load left standing); the later value is used",
      "the specimen swelled up to stress 50: first loading is read from there",
    ]);
  });

  test("after a collapse first loading is read on the longer part, and never over the step", () => {
    const outcome = read(STRESSES, [0.8, 0.795, 0.79, 0.78, 0.72, 0.71, 0.68, 0.61, 0.52]);
    if (!outcome.ok) throw new Error(english(outcome.reason));
    expect(outcome.value.firstLoading.map(({ value }) => value)).toEqual([0.72, 0.71, 0.68, 0.61, 0.52]);
    expect(outcome.value.wetting).toHaveLength(1);
    expect(outcome.remarks.map(english).at(-1)).toBe(
      "row 5: the specimen collapsed under stress 50: first loading is read from there, after the collapse",
    );
    // Wetted late: the part before the collapse is the longer one, and ends with the point before the step.
    const late = read([25, 50, 100, 200, 200, 400], [0.8, 0.79, 0.77, 0.74, 0.64, 0.6]);
    if (!late.ok) throw new Error(english(late.reason));
    expect(late.value.firstLoading.map(({ value }) => value)).toEqual([0.8, 0.79, 0.77, 0.74]);
    expect(late.value.afterCollapse.map(({ value }) => value)).toEqual([0.64, 0.6]);
    expect(late.remarks.map(english).at(-1)).toMatch(/read up to there, before the collapse$/);
  });

  test("a load that is left standing, and creeps a little, stays part of first loading", () => {
    const outcome = read([25, 50, 100, 100, 200, 400], [0.8, 0.79, 0.77, 0.766, 0.7, 0.62]);
    if (!outcome.ok) throw new Error(english(outcome.reason));
    expect(outcome.value.firstLoading.map(({ value }) => value)).toEqual([0.8, 0.79, 0.766, 0.7, 0.62]);
    expect(outcome.value.afterCollapse).toEqual([]);
  });

  test("a first load that swells by more than the next loads compress is not a fault", () => {
    const outcome = read([5, 10, 20, 40, 80, 160, 320, 640], [0.9, 0.96, 0.99, 0.985, 0.97, 0.93, 0.85, 0.76]);
    if (!outcome.ok) throw new Error(english(outcome.reason));
    expect(stressesOf(outcome.value.seating)).toEqual([5, 10]);
  });
});

test.each(LOADS.flatMap((_, k) => [0.001, 0.01, 0.1, 10, 100, 1000].map((factor) => [k, factor] as const)))(
  "load %i (from 0) typed at %d times its stress is questioned, and its row named",
  (k, factor) => {
    const stresses = LOADS.map((stress, i) => (i === k ? stress * factor : stress));
    const outcome = read(stresses, VOIDS);
    // A first load that is too low is accepted: it may be a light seating load.
    if (k === 0 && factor < 1) expect(outcome.ok).toBe(true);
    else
      expect(inEnglish(outcome)).toMatchObject({
        ok: false,
        fault: "input",
        reason: expect.stringContaining(`row ${k + 1}:`),
      });
  },
);

test("a stress and a value are named as they were typed, without the rounding of a unit", () => {
  const rounded = [100, 200, 4000.0000000000005, 800, 1600];
  expect(inEnglish(read(rounded, [0.96, 0.88, 0.78, 0.68, 0.58]))).toMatchObject({
    reason: expect.stringMatching(/^row 3: the stress 4000 does not fit/),
  });
  expect(inEnglish(read([25, 50, 100, 200, 400], [1, 0.9, 0.8, 0.86123456789, 0.6]))).toMatchObject({
    reason: "row 4: the void ratio 0.861235 does not fit the rows around it while the stress rises: check it",
  });
});

test("the question names the stress, and a stress that would fit", () => {
  expect(inEnglish(read([100, 200, 4000, 800, 1600], [0.96, 0.88, 0.78, 0.68, 0.58]))).toMatchObject({
    reason:
      "row 3: the stress 4000 does not fit the rows around it, where about 400 would: check its decimal point, its zeros and its unit",
  });
});

test("a compression beyond creep as load is taken off is remarked with its row", () => {
  const loads = [50, 100, 200, 400, 200, 50];
  // Creep is 0.1 % of the height: 0.002 of the first void ratio of 1.
  const said = (fall: number) => {
    const outcome = read(loads, [1, 0.97, 0.9, 0.5, 0.5 - fall, 0.51 - fall]);
    return outcome.ok ? outcome.remarks.map(english) : [english(outcome.reason)];
  };
  expect(said(0.0019)).toEqual([]);
  expect(said(0.0021)).toEqual([
    "row 5: the specimen compressed as load was taken off: check the stress and the value",
  ]);
});

test("even steps of any size, and unloading, are not questioned", () => {
  for (const ratio of [1.25, 1.5, 2, 4, 8]) {
    const loads = [0, 1, 2, 3, 4, 5].map((i) => 10 * ratio ** i);
    const outcome = read([...loads, loads[4], loads[2]], [1, 0.98, 0.95, 0.85, 0.75, 0.65, 0.66, 0.68]);
    expect(outcome.ok).toBe(true);
  }
});

test("a value that does not fit the others is refused with its row", () => {
  const typed = (k: number, value: number) => VOIDS.map((e, i) => (i === k ? value : e));
  expect(inEnglish(read(LOADS, typed(4, 0.58)))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("row 5"),
  });
  expect(inEnglish(read(LOADS, typed(5, 1.08)))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("row 6"),
  });
});

test("values of the other kind are recognized", () => {
  expect(inEnglish(read(LOADS, VOIDS, "strain"))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining('kind "e"'),
  });
  const strains = VOIDS.map((e) => (1 - e) / 2);
  expect(inEnglish(read(LOADS, strains))).toMatchObject({
    fault: "input",
    reason: expect.stringContaining('"strain"'),
  });
  expect(
    inEnglish(
      read(
        LOADS,
        strains.map((strain) => 100 * strain),
        "strain",
      ),
    ),
  ).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("ratios"),
  });
});

test("one point is not a curve", () => {
  expect(read([100], [0.9])).toMatchObject({ fault: "method" });
  expect(read([], [])).toMatchObject({ fault: "input" });
});
