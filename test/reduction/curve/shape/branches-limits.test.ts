/** The branches of a test: each limit on both sides, and what is said, in void ratio and in strain. */
import { branches, branchesOfAny } from "../../../../src/reduction/curve/shape/branches";
import { testCurve, type Kind } from "../../../../src/reduction/curve/shape/points";
import { english } from "../../../../src/reduction/message";
import { then } from "../../../../src/reduction/outcome";

type Points = readonly (readonly [stress: number, value: number])[];
const read = (points: Points, kind: Kind = "e") =>
  then(testCurve(points.map(([stress]) => stress), points.map(([, value]) => value), kind), branches); // prettier-ignore
const found = (points: Points, kind: Kind = "e") => {
  const outcome = read(points, kind);
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return { ...outcome.value, said: outcome.remarks.map(english) };
};
const refusal = (points: Points, kind: Kind = "e"): string => {
  const outcome = read(points, kind);
  return outcome.ok ? "accepted" : `${outcome.fault}: ${english(outcome.reason)}`;
};
/** Void ratios that fall by equal steps of 0.1 from 1, at stresses. */
const even = (...stresses: number[]): Points => stresses.map((stress, i) => [stress, 1 - 0.1 * i]);
const slip = (row: number, stress: number, about: number) =>
  `input: row ${row}: the stress ${stress} does not fit the rows around it, where about ${about} would: check its decimal point, its zeros and its unit`;
const stresses = (points: readonly { stress: number }[]) => points.map(({ stress }) => stress);

describe("a stress that is wrong by a decade", () => {
  test("is one that falls while the specimen goes on compressing, if a decade puts the rows in order again", () => {
    expect(refusal(even(50, 100, 200, 400, 80, 1600))).toBe(slip(5, 80, 800));
    expect(refusal(even(50, 100, 200, 400, 8, 1600))).toBe(slip(5, 8, 800));
    // 4000 typed for 400: the next load falls, and the row before it is the one to change.
    expect(refusal(even(50, 100, 200, 4000, 800, 1600))).toBe(slip(4, 4000, 400));
    // A decade would not put 300 between 400 and 1600.
    expect(refusal(even(50, 100, 200, 400, 300, 1600))).not.toMatch(/decimal point/);
  });

  test("is none if the specimen compressed by no more than noise: it was unloaded", () => {
    const unloaded = (squeezed: number): Points => [[10, 1], [60, 0.9], [360, 0.7], [80, 0.7 - squeezed], [1600, 0.5]]; // prettier-ignore
    // The whole compression is 0.5, of which 0.4 % are noise.
    expect(refusal(unloaded(0.0021))).toBe(slip(4, 80, 800));
    expect(refusal(unloaded(0.0019))).toBe("accepted");
    expect(found(unloaded(0.0019)).loops).toHaveLength(1);
  });

  test("is a last load of eight times the load before and more, where a decade less would fit the steps", () => {
    expect(refusal(even(25, 50, 100, 200, 4000))).toBe(slip(5, 4000, 400));
    expect(refusal(even(25, 50, 100, 200, 40_000))).toBe(slip(5, 40_000, 400));
    // By a decade less the last load would not be greater than the load before.
    expect(refusal(even(25, 50, 100, 200, 2100))).toBe("accepted");
    expect(refusal(even(25, 50, 100, 200, 2300))).toBe(slip(5, 2300, 230));
    // By a decade less it would still be a leap, by two it would fall.
    expect(refusal(even(25, 50, 100, 200, 6500))).toBe("accepted");
    expect(refusal(even(25, 50, 100, 200, 5900))).toBe(slip(5, 5900, 590));
  });

  test("is not looked for with fewer than three steps, in steps that are as large, or where loads go on from there", () => {
    expect(refusal(even(25, 50, 100, 2000))).toBe("accepted");
    expect(refusal(even(12.5, 25, 50, 100, 2000))).toBe(slip(5, 2000, 200));
    expect(refusal(even(1, 6, 36, 216, 4320))).toBe("accepted");
    expect(refusal(even(25, 50, 100, 200, 4000, 8000))).toBe("accepted");
    // Unloading afterwards makes it the last load of the rise.
    expect(refusal([...even(25, 50, 100, 200, 4000), [1000, 0.61], [250, 0.62]])).toBe(slip(5, 4000, 400));
  });

  test("of two rows that could be wrong is the one whose change makes the steps more even", () => {
    // 800 and 80: 8000 for 80 would make a leap of ten, 80 for 800 even steps.
    expect(refusal(even(10, 20, 40, 800, 160, 320))).toBe(slip(4, 800, 80));
    expect(refusal(even(10, 20, 40, 80, 16, 320))).toBe(slip(5, 16, 160));
  });
});

describe("values of the other kind", () => {
  const rising: Points = [[25, 0.02], [50, 0.03], [100, 0.05], [200, 0.1]]; // prettier-ignore
  const falling: Points = rising.map(([stress, value]) => [stress, 1 - value]);
  test("are named with what to give", () => {
    expect(refusal(rising, "e")).toBe('input: the values rise as the stress rises: check them, or give kind "strain"');
    expect(refusal(falling, "strain")).toBe(
      'input: the values fall as the stress rises: give kind "e" if they are void ratios, or compression as positive',
    );
    expect([refusal(rising, "strain"), refusal(falling, "e")]).toEqual(["accepted", "accepted"]);
  });
  test("are recognized from three loads on, by the loads of first loading alone", () => {
    expect(refusal(rising.slice(0, 3))).toMatch(/the values rise/);
    expect(refusal(rising.slice(0, 2))).not.toMatch(/the values rise/);
    expect(refusal([...rising.slice(0, 3), [25, 0.04], [12, 0.03]])).toMatch(/the values rise/);
  });
});

describe("a value that does not fit", () => {
  test("is the one without which the others follow one another", () => {
    const points = (row: number, by: number): Points => even(25, 50, 100, 200, 400).map(([stress, e], i) => [stress, i + 1 === row ? e + by : e]); // prettier-ignore
    expect(refusal(points(4, 0.16))).toBe(
      "input: row 4: the void ratio 0.86 does not fit the rows around it while the stress rises: check it",
    );
    // Too low a value: the next one seems to jump back, and the low one is the wrong one.
    expect(refusal(points(3, -0.26))).toMatch(/^input: row 3: the void ratio 0.54\d* does not fit/);
    // Where the others follow without either of the two rows, the later one is named.
    expect(refusal(points(3, -0.16))).toMatch(/^input: row 4: the void ratio 0.7\d* does not fit/);
    const strains = points(4, 0.16).map(([stress, e]) => [stress, (1 - e) / 2] as const);
    expect(refusal(strains, "strain")).toMatch(/^input: row 4: the strain 0.07\d* does not fit the rows around it/);
  });
  test("goes against the load by more than a tenth of the whole compression", () => {
    const back = (by: number): Points => [[25, 1], [50, 0.9], [100, 0.8], [200, 0.8 + by], [400, 0.6], [800, 0.5]]; // prettier-ignore
    expect(refusal(back(0.049))).toBe("accepted");
    expect(refusal(back(0.051))).toMatch(/^input: row \d: the void ratio/);
  });
});

test("one point of first loading is no curve, but rows of an unloading can be read", () => {
  const unloading: Points = [[800, 0.5], [200, 0.52], [50, 0.55]]; // prettier-ignore
  expect(refusal(unloading)).toBe("method: the test has one first-loading point only: there is no curve to read");
  const any = then(testCurve([800, 200, 50], [0.5, 0.52, 0.55], "e"), branchesOfAny);
  expect(any.ok && stresses(any.value.finalUnloading)).toEqual([800, 200, 50]);
  expect(refusal([[25, 1], [50, 0.9]])).toBe("accepted"); // prettier-ignore
});

describe("loops", () => {
  const before: Points = [[25, 1], [50, 0.95], [100, 0.9], [200, 0.8]]; // prettier-ignore
  const pairs = (points: readonly { stress: number; value: number }[]) => points.map(({ stress, value }) => [stress, value]); // prettier-ignore

  test("have the branches between the turns, with the turning points in both", () => {
    const { loops, finalUnloading, firstLoading, said } = found([...before, [50, 0.83], [12, 0.86], [50, 0.85], [200, 0.79], [400, 0.7], [100, 0.72]]); // prettier-ignore
    expect(loops.map(({ unload, reload }) => [stresses(unload), stresses(reload)])).toEqual([
      [[200, 50, 12], [12, 50, 200]], // prettier-ignore
    ]);
    expect(stresses(firstLoading)).toEqual([25, 50, 100, 200, 400]);
    expect(stresses(finalUnloading)).toEqual([400, 100]);
    expect(said).toEqual([]);
  });

  test("a stress that comes twice keeps its later value, on whatever branch", () => {
    const twice = "has the stress of the row before (water added, or the load left standing); the later value is used";
    const unload = found([...before, [50, 0.83], [50, 0.84], [12, 0.86], [400, 0.7]]); // prettier-ignore
    expect(pairs(unload.loops[0].unload)).toEqual([[200, 0.8], [50, 0.84], [12, 0.86]]); // prettier-ignore
    expect(unload.said).toEqual([`row 6 ${twice}`]);
    const reload = found([...before, [50, 0.83], [12, 0.86], [50, 0.85], [50, 0.845], [400, 0.7]]); // prettier-ignore
    expect(pairs(reload.loops[0].reload)).toEqual([[12, 0.86], [50, 0.845]]); // prettier-ignore
    expect(pairs(reload.loops[0].unload)).toEqual([[200, 0.8], [50, 0.83], [12, 0.86]]); // prettier-ignore
    const loading = found([...before.slice(0, 3), [100, 0.895], [200, 0.8], [400, 0.7]]);
    expect(pairs(loading.firstLoading)).toEqual([[25, 1], [50, 0.95], [100, 0.895], [200, 0.8], [400, 0.7]]); // prettier-ignore
    expect(loading.wetting.map(([a, b]) => [a.value, b.value])).toEqual([[0.9, 0.895]]);
  });

  test("a loop that ends the test is a loop, and not a last unloading", () => {
    const { loops, finalUnloading } = found([...before, [50, 0.83], [100, 0.82]]);
    expect(loops.map(({ unload, reload }) => [stresses(unload), stresses(reload)])).toEqual([[[200, 50], [50, 100]]]); // prettier-ignore
    expect(finalUnloading).toEqual([]);
  });
});

describe("swelling and collapse", () => {
  /** The whole compression of first loading is 0.4, from the point of least compression on. */
  const atSeating = (swell: number): Points => [[5, 1 - swell], [10, 1], [20, 0.95], [40, 0.9], [80, 0.8], [160, 0.6]]; // prettier-ignore

  test("at seating counts from 1 % of the whole compression on", () => {
    expect(stresses(found(atSeating(0.0041)).seating)).toEqual([5]);
    expect(stresses(found(atSeating(0.0039)).seating)).toEqual([]);
    expect(found(atSeating(0.0041)).said).toEqual([
      "the specimen swelled up to stress 10: first loading is read from there",
    ]);
  });

  test("counts within the first four loads only", () => {
    const swells = (count: number): Points => [...Array.from({ length: count }, (_, i) => [5 * 2 ** i, 0.9 + 0.02 * i] as const), ...[0, 1, 2, 3].map((i) => [5 * 2 ** (count + i), 0.85 - 0.15 * i] as const)]; // prettier-ignore
    expect(stresses(found(swells(4)).seating)).toEqual([5, 10, 20]);
    expect(stresses(found(swells(5)).seating)).toEqual([5, 10, 20]);
  });

  /** Water added under 40: the void ratio changes by `moved`; the whole compression is 0.4. */
  const wetted = (moved: number): Points => [[10, 1], [20, 0.98], [40, 0.95], [40, 0.95 + moved], [80, 0.8], [160, 0.7], [320, 0.6]]; // prettier-ignore

  test("on wetting: a swell from 1 % on, and a collapse from 5 % on, begin first loading anew", () => {
    expect(stresses(found(wetted(0.0041)).firstLoading)).toEqual([40, 80, 160, 320]);
    expect(stresses(found(wetted(0.0039)).firstLoading)).toEqual([10, 20, 40, 80, 160, 320]);
    expect(stresses(found(wetted(-0.0201)).firstLoading)).toEqual([40, 80, 160, 320]);
    expect(stresses(found(wetted(-0.0199)).firstLoading)).toEqual([10, 20, 40, 80, 160, 320]);
    expect(found(wetted(-0.0201)).said.at(-1)).toBe(
      "row 4: the specimen collapsed under stress 40: first loading is read from there, after the collapse",
    );
    expect(found(wetted(0.0041)).said.at(-1)).toBe(
      "the specimen swelled up to stress 40: first loading is read from there",
    );
  });

  test("a collapse with as many loads before it as from it on ends first loading; with fewer it begins it", () => {
    const collapse = (loads: number): Points => [[10, 1], [20, 0.98], [40, 0.95], [40, 0.85], ...[80, 160, 320].slice(0, loads).map((stress, i) => [stress, 0.75 - 0.1 * i] as const)]; // prettier-ignore
    // Before the collapse two loads and that of the step itself; from it on its load and the later ones.
    const late = found(collapse(1));
    expect(late.firstLoading.map(({ value }) => value)).toEqual([1, 0.98, 0.95]);
    expect(stresses(late.afterCollapse)).toEqual([40, 80]);
    expect(late.said.at(-1)).toBe(
      "row 4: the specimen collapsed under stress 40: first loading is read up to there, before the collapse",
    );
    const early = found(collapse(2));
    expect(stresses(early.firstLoading)).toEqual([40, 80, 160]);
    expect([stresses(early.seating), early.afterCollapse]).toEqual([[10, 20], []]);
  });
});
