import { curveAt } from "../../../src/reduction/increment/fit/model";
import {
  FIT_LIMITS,
  halfCycleSpans,
  judge,
  LOG_TIME_LIMITS,
  ROOT_TIME_LIMITS,
  signalsOf,
  type Signals,
} from "../../../src/reduction/increment/signals";
import { say } from "../../../src/reduction/message";
import { BY_HAND } from "../../generators/time-curves";
import { inEnglish } from "../../in-english";
import { cleanOf, exact, FIT, seriesOf, timeAt } from "./constructions/exact-load";

const GOOD: Signals = {
  steps: 500,
  primarySteps: 400,
  clearness: 300,
  steepness: 6,
  bend: 5,
  lastT: 10,
  firstU: 0.05,
  early: 6,
  misfit: 0.002,
  drift: 1,
};
const judged = (changed: Partial<Signals>, limits = LOG_TIME_LIMITS) =>
  inEnglish(judge({ ...GOOD, ...changed }, limits, say`try ROOT_TIME`));

test("a good record is neither refused nor remarked", () => {
  for (const limits of [LOG_TIME_LIMITS, ROOT_TIME_LIMITS, FIT_LIMITS])
    expect(judged({}, limits)).toEqual({ remarks: [] });
});

// Limits: the numerical study named in signals.ts.
test.each<[Partial<Signals>, Partial<Signals>, RegExp]>([
  [{ steps: 9 }, { steps: 11 }, /only 9 steps of the instrument: it is lost in the resolution/],
  [{ clearness: 24 }, { clearness: 26 }, /only 24 times the scatter .* lost in the noise/],
  [{ steepness: 1.4 }, { steepness: 1.6 }, /no inflection in the readings.*; try ROOT_TIME/],
  [{ bend: 1.25 }, { bend: 1.35 }, /no inflection in the readings.*; try ROOT_TIME/],
  [{ lastT: 1.5 }, { lastT: 1.7 }, /the readings stop at about 98 % of primary/],
  [{ firstU: 0.42 }, { firstU: 0.38 }, /about 42 % of primary compression was over before the first reading/],
  [{ early: 1 }, { early: 2 }, /only 1 of the readings lie in the first half/],
])("log time refuses %j and not %j", (beyond, within, message) => {
  expect(judged(beyond).refusal).toMatch(message);
  expect(judged(within).refusal).toBeUndefined();
});

test.each<[Partial<Signals>, Partial<Signals>, RegExp]>([
  [{ primarySteps: 39 }, { primarySteps: 41 }, /only 39 steps of the instrument: cv is uncertain/],
  [{ clearness: 59 }, { clearness: 61 }, /only 59 times the scatter/],
  [{ steepness: 2.1 }, { steepness: 2.3 }, /nearly as steep/],
  [{ bend: 1.6 }, { bend: 1.8 }, /nearly as steep/],
  [{ lastT: 2.9 }, { lastT: 3.1 }, /end of primary is uncertain/],
  [{ firstU: 0.32 }, { firstU: 0.28 }, /d0 is uncertain/],
  [{ early: 2 }, { early: 3 }, /only 2 readings in the first half/],
  [{ misfit: 0.013 }, { misfit: 0.011 }, /depart from theory by 1.3 % of primary/],
  [{ misfit: 0.008, drift: 2 }, { misfit: 0.006, drift: 2 }, /by 0.8 % of primary .* in a row to the same side/],
  [{ misfit: 0.01, drift: 1.6 }, { misfit: 0.01, drift: 1.4 }, /in a row to the same side/],
])("log time remarks %j and not %j", (beyond, within, message) => {
  expect(judged(beyond).remarks.join("; ")).toMatch(message);
  expect(judged(within).remarks).toEqual([]);
});

test("root time and the fit need less of a record than log time", () => {
  expect(judged({ lastT: 1 }, ROOT_TIME_LIMITS)).toEqual({ remarks: [] });
  expect(judged({ lastT: 0.8 }, ROOT_TIME_LIMITS).refusal).toMatch(/the readings stop/);
  expect(judged({ lastT: 1, firstU: 0.39, early: 2 }, FIT_LIMITS)).toEqual({ remarks: [] });
  expect(judged({ lastT: 0.4 }, FIT_LIMITS).refusal).toMatch(/the readings stop/);
});

test.each([
  ["log time", LOG_TIME_LIMITS],
  ["root time", ROOT_TIME_LIMITS],
  ["the fit", FIT_LIMITS],
] as const)("a signal at the limit of %s itself passes it", (_, limits) => {
  const { steps, primarySteps } = limits;
  const pairs = ["clearness", "steepness", "bend", "lastT", "firstU", "early"] as const;
  expect(judged({ steps }, limits)).toEqual({ remarks: [] });
  expect(judged({ primarySteps }, limits)).toEqual({ remarks: [] });
  for (const name of pairs) {
    expect(judged({ [name]: limits[name][0] }, limits).refusal).toBeUndefined();
    expect(judged({ [name]: limits[name][1] }, limits)).toEqual({ remarks: [] });
  }
});

test("a misfit is remarked once: above 1.2 % whatever the drift, above 0.7 % with a drift above 1.5", () => {
  expect(judged({ misfit: 0.007, drift: 2 })).toEqual({ remarks: [] });
  expect(judged({ misfit: 0.012, drift: 1.5 })).toEqual({ remarks: [] });
  expect(judged({ misfit: 0.012, drift: 2 }).remarks).toEqual([
    "the readings depart from theory by 1.2 % of primary on average, several in a row to the same side: look at the plot",
  ]);
  expect(judged({ misfit: 0.013, drift: 2 }).remarks).toEqual([
    "the readings depart from theory by 1.3 % of primary on average: look at the plot",
  ]);
});

test("a refusal comes without remarks", () => {
  expect(judged({ steps: 9, misfit: 0.02, clearness: 10 })).toEqual({
    refusal: "the whole movement is only 9 steps of the instrument: it is lost in the resolution",
    remarks: [],
  });
});

describe("the signals of a record", () => {
  const of = (times: readonly number[], fit = FIT, step = 2) => signalsOf(cleanOf(exact(times, fit), step), fit);

  test("on exact theory are those of the fit that made it", () => {
    const found = of(BY_HAND);
    expect(found.steps).toBeCloseTo((curveAt(FIT, 1440) - curveAt(FIT, 0.1)) / 2, 9);
    expect(found.primarySteps).toBe(200);
    expect(found.clearness).toBe(4000);
    expect(found.lastT).toBe(36);
    expect(found.misfit).toBeCloseTo(0.1 / 400, 12);
    expect(found.drift).toBe(1);
    // At the inflection U rises by 0.688 a cycle (Terzaghi's series, calculated), 275 divisions; the tail by 20.
    expect(found.steepness).toBeCloseTo((0.688 * 400) / 20, 0);
    // The readings alone give it over half a cycle or more: a little less.
    expect(found.bend).toBeGreaterThan(10);
    expect(found.bend).toBeLessThan(found.steepness);
  });

  test("count the readings from 3 to 50 % of primary, and give U of the first, on the clock of the load", () => {
    const edge = [timeAt(0.029), timeAt(0.031), 1, 2, timeAt(0.499), timeAt(0.501), 100];
    expect(of(edge).early).toBe(4);
    expect(of(edge).firstU).toBeCloseTo(0.029, 9);
    expect(signalsOf(cleanOf(exact(edge)), { ...FIT, timeZero: 1 }).firstU).toBeGreaterThan(0.17);
  });

  test("are infinite where nothing limits them: no step, no noise, no creep, no tail yet", () => {
    const bare = { ...FIT, noise: 0, tail: 0, scatter: 0 };
    expect(of(BY_HAND, bare, 0)).toMatchObject({
      ...{ steps: Infinity, primarySteps: Infinity, clearness: Infinity, steepness: Infinity, drift: 0 },
    });
    // T at the last reading: a tail of half a cycle has begun at T = 3.
    expect(of(BY_HAND.filter((t) => t < 119)).bend).toBe(Infinity);
    expect(of(BY_HAND.filter((t) => t <= 120)).bend).toBeLessThan(Infinity);
  });

  test("the bend is the steepest slope over the last, over half cycles, without wrong readings", () => {
    const bent = seriesOf(BY_HAND, (t) => 10 * Math.log10(t) + 90 * Math.log10(Math.min(Math.max(t, 4), 30) / 4));
    expect(signalsOf(cleanOf(bent), FIT).bend).toBeCloseTo(10, 9);
    const wrong = { ...bent, readings: bent.readings.map((d, i) => (i === 3 ? d + 300 : d)) };
    expect(signalsOf(cleanOf(wrong), FIT).bend).not.toBeCloseTo(10, 1);
    expect(signalsOf(cleanOf(wrong), { ...FIT, leftOut: [3] }).bend).toBeCloseTo(10, 9);
    expect(signalsOf(cleanOf(seriesOf([1, 200], (t) => t)), FIT).bend).toBe(Infinity);
  });

  test("half cycles are the shortest runs of three readings or more that span one", () => {
    const half = Math.sqrt(10);
    expect(halfCycleSpans([1, 2, half, 10, 100])).toEqual([
      [0, 1, 2],
      [1, 2, 3],
      [2, 3, 4],
    ]);
    expect(halfCycleSpans([1, 1.1, 1.2, 3, 3.2])).toEqual([[0, 1, 2, 3, 4]]);
    expect(halfCycleSpans([1, 10])).toEqual([]);
    expect(halfCycleSpans([])).toEqual([]);
  });
});
