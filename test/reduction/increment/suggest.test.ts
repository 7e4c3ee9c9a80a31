/** The suggested construction on curves with known truth; the seeds are not those with which the rule was found. */
import { T50, T90 } from "../../../src/reduction/increment/cv";
import type { TimeMethod } from "../../../src/reduction/increment/constructions/picks";
import { reduceIncrement } from "../../../src/reduction/increment/reduce";
import { suggestMethod, type Suggestion } from "../../../src/reduction/increment/suggest";
import { SCENARIOS } from "../../generators/time-curves";
import { asTyped, english } from "../../../src/reduction/message";

interface Case {
  readonly scenario: string;
  readonly suggestion: Suggestion;
  /** |ln(cv / true cv)| by each construction; infinite if it refused. */
  readonly error: Readonly<Record<TimeMethod, number>>;
}

const SEEDS = Array.from({ length: 60 }, (_, i) => 70_001 + i);
const cases: Case[] = [];
let neither = 0;

beforeAll(() => {
  for (const { name, make } of SCENARIOS)
    for (const seed of name === "logger at a steady rate" ? SEEDS.slice(0, 6) : SEEDS) {
      const { times, readings, truth, height } = make(seed);
      const increment = reduceIncrement(times, readings);
      const { logTime, rootTime } = increment;
      const suggested = suggestMethod(increment);
      if (!suggested.ok) {
        neither++;
        expect([logTime.ok, rootTime.ok]).toEqual([false, false]);
        expect(english(suggested.reason)).not.toBe("");
        continue;
      }
      const off = (rate: number) => Math.abs(Math.log((rate * (height / 2) ** 2) / truth.cv));
      cases.push({
        scenario: name,
        suggestion: suggested.value,
        error: {
          "log time": logTime.ok ? off(T50 / logTime.value.t50) : Infinity,
          "root time": rootTime.ok ? off(T90 / rootTime.value.t90) : Infinity,
        },
      });
    }
});

const other = (method: TimeMethod): TimeMethod => (method === "log time" ? "root time" : "log time");
const nearer = (of: readonly Case[], choose: (one: Case) => TimeMethod): number =>
  of.filter((one) => one.error[choose(one)] < one.error[other(choose(one))]).length / of.length;
const mean = (of: readonly Case[], choose: (one: Case) => TimeMethod): number =>
  of.reduce((sum, one) => sum + one.error[choose(one)], 0) / of.length;
const bothApply = () => cases.filter(({ error }) => Number.isFinite(error["log time"] + error["root time"]));

test("if one construction refuses, the other is suggested, with the reason of the refusal", () => {
  const single = cases.filter(({ suggestion }) => suggestion.why === "the only one");
  expect(single.length).toBeGreaterThan(40);
  for (const { suggestion, error } of single) {
    expect(error[suggestion.method]).toBeLessThan(Infinity);
    expect(error[other(suggestion.method)]).toBe(Infinity);
    expect(english(suggestion.otherRefusal!)).toMatch(/does not apply/);
  }
  expect(neither).toBeGreaterThan(200);
});

test("the suggestion is nearer to the truth more often than either construction alone", () => {
  const of = bothApply();
  expect(of.length).toBeGreaterThan(900);
  const suggested = nearer(of, ({ suggestion }) => suggestion.method);
  const log = nearer(of, () => "log time");
  const root = nearer(of, () => "root time");
  // Measured with these seeds: 81 %, against 77 % (always log time) and 23 % (always root time).
  expect(suggested).toBeGreaterThan(0.78);
  expect(suggested).toBeGreaterThan(Math.max(log, root) + 0.03);
});

test("the error of the suggestion is smaller on average, and clearly smaller if the two are more than 5 % apart", () => {
  const of = bothApply();
  const apart = of.filter(({ suggestion }) => Math.abs(Math.log(suggestion.ratio!)) > 0.05);
  expect(apart.length).toBeGreaterThan(80);
  for (const some of [of, apart]) {
    const suggested = mean(some, ({ suggestion }) => suggestion.method);
    expect(suggested).toBeLessThan(mean(some, () => "log time"));
    expect(suggested).toBeLessThan(mean(some, () => "root time"));
  }
});

test("the figures of a suggestion are those of the two constructions", () => {
  const { make } = SCENARIOS.find(({ name }) => name === "dial of 0.0001 in")!;
  const { times, readings } = make(70_001);
  const increment = reduceIncrement(times, readings);
  const { fit, logTime, rootTime } = increment;
  const suggested = suggestMethod(increment);
  if (!suggested.ok || !fit.ok || !logTime.ok || !rootTime.ok) throw new Error("the curve is sound");
  const { ratio, overFit, straightReadings } = suggested.value;
  expect(ratio).toBeCloseTo((T90 / rootTime.value.t90) * (logTime.value.t50 / T50), 12);
  expect(overFit!["log time"]).toBeCloseTo(T50 / logTime.value.t50 / fit.value.rate, 12);
  const { from, to } = rootTime.value.straight;
  expect(straightReadings).toBe(times.filter((time) => time >= from && time <= to).length);
});

test("readings that depart from theory are not judged by the fit, but by the remarks of each construction", () => {
  const { make } = SCENARIOS.find(({ name }) => name === "dial of 0.0001 in")!;
  const { times, readings } = make(70_001);
  const increment = reduceIncrement(times, readings);
  const { fit, logTime, rootTime } = increment;
  if (!fit.ok || !logTime.ok || !rootTime.ok) throw new Error("the curve is sound");
  const crooked = { ...fit, value: { ...fit.value, misfit: 0.03 * Math.abs(fit.value.primary) } };
  const why = (log: string[], root: string[]) => {
    const suggested = suggestMethod({
      ...increment,
      fit: crooked,
      logTime: { ...logTime, remarks: log.map(asTyped) },
      rootTime: { ...rootTime, remarks: root.map(asTyped) },
    });
    return suggested.ok && [suggested.value.method, suggested.value.why];
  };
  expect(why(["both", "short tail"], ["both"])).toEqual(["root time", "fewer remarks"]);
  expect(why(["both"], ["both", "crooked"])).toEqual(["log time", "fewer remarks"]);
  expect(why(["short tail"], ["crooked"])).toEqual(["log time", "as many remarks"]);
});
