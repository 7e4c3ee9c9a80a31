/** The root-of-time construction as a whole: its lines, what picks lift, what is refused, and a crooked beginning. */
import { rootTime, type RootTime } from "../../../../src/reduction/increment/constructions/root-time";
import type { Picks } from "../../../../src/reduction/increment/constructions/picks";
import type { Procedure } from "../../../../src/reduction/increment/constructions/procedure";
import type { TheoryFit } from "../../../../src/reduction/increment/fit/theory-fit";
import type { Series } from "../../../../src/reduction/increment/readings";
import type { Signals } from "../../../../src/reduction/increment/signals";
import { english } from "../../../../src/reduction/message";
import type { Outcome } from "../../../../src/reduction/outcome";
import { BY_HAND } from "../../../generators/time-curves";
import { cleanOf, exact, FIT, GOOD, seriesOf } from "./exact-load";

interface Asked {
  readonly series?: Series;
  readonly signals?: Partial<Signals>;
  readonly procedure?: Procedure;
  readonly fit?: TheoryFit;
}
const of = (picks: Picks = {}, { series = exact(), signals = {}, procedure, fit = FIT }: Asked = {}) =>
  rootTime(cleanOf(series), fit, { ...GOOD, ...signals }, picks, procedure);
const value = (outcome: Outcome<RootTime>): RootTime => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const said = (outcome: Outcome<RootTime>): string =>
  outcome.ok ? outcome.remarks.map(english).join("; ") : `${outcome.fault}: ${english(outcome.reason)}`;

test("on exact theory it gives t90 1.5 % early and d100 0.35 % of primary low, at the most, by its convention", () => {
  const still = { ...FIT, tail: 0 };
  const { d0, d90, d100, t90, straight } = value(of({}, { series: exact(BY_HAND, still), fit: still }));
  expect((0.848 / (t90 * FIT.rate) - 1) * 100).toBeCloseTo(1.5, 0);
  expect((1400 - d100) / 400).toBeGreaterThan(0.0025);
  expect((1400 - d100) / 400).toBeLessThan(0.0035);
  expect(d100).toBeCloseTo(d0 + (d90 - d0) / 0.9, 9);
  expect(d90).toBeCloseTo(d0 + (straight.slope / 1.15) * Math.sqrt(t90), 9);
  expect(straight).toMatchObject({ from: 0.1, to: 8 });
  expect(said(of())).toBe("");
});

describe("a pick lifts the refusals that concern its value alone", () => {
  test.each<[Partial<Signals>, RegExp]>([
    [{ firstU: 0.9 }, /^method: .*about 90 % of primary compression was over before the first reading/],
    [{ early: 0 }, /^method: .*only 0 of the readings lie in the first half/],
  ])("of d0 and of the straight part: %j", (signals, refusal) => {
    expect(said(of({}, { signals }))).toMatch(refusal);
    expect(said(of({ d90: 1360 }, { signals }))).toMatch(refusal);
    expect(said(of({ d0: 1001 }, { signals }))).toBe("picked by hand: d0 = 1001");
    // From there to the end of the record no line is straight, but that is another refusal.
    expect(said(of({ straight_from: 0.25 }, { signals }))).toMatch(/the 1.15 line does not meet the curve/);
    expect(said(of({ straight_to: 8 }, { signals }))).toBe("picked by hand: straight part to = 8");
  });

  test.each<[Partial<Signals>, RegExp]>([
    [{ steepness: 1 }, /^method: .*no inflection in the readings/],
    [{ bend: 1 }, /^method: .*no inflection in the readings/],
    [{ lastT: 0.2 }, /^method: .*the readings stop at about 50 % .*; try the log-of-time method or the fit to theory$/],
  ])("of d90: %j", (signals, refusal) => {
    expect(said(of({}, { signals }))).toMatch(refusal);
    expect(said(of({ d0: 1001 }, { signals }))).toMatch(refusal);
    expect(said(of({ d90: 1360 }, { signals }))).toBe("picked by hand: d90 = 1360");
  });
});

describe("a picked d90", () => {
  test("gives the time at which the curve reaches it, and d100", () => {
    const reading = exact().readings[8];
    const { d0, d90, d100, t90 } = value(of({ d90: reading }));
    expect([d90, t90]).toEqual([reading, expect.closeTo(BY_HAND[8], 9)]);
    expect(d100).toBeCloseTo(d0 + (reading - d0) / 0.9, 9);
    // Before the end of the straight part it is still a pick.
    expect(value(of({ d90: exact().readings[5] })).t90).toBeCloseTo(BY_HAND[5], 9);
  });

  test("outside the readings, or on the other side of d0, is refused", () => {
    const refusal = (d90: number) => `input: the picked d90 (${d90}) lies outside the readings: pick it within them`;
    expect(said(of({ d90: 2000 }))).toBe(refusal(2000));
    expect(said(of({ d90: 1030, d0: 1040 }))).toBe(refusal(1030));
    expect(said(of({ d90: 1040, d0: 1040 }))).toBe(refusal(1040));
  });
});

test("a record that ends before the 1.15 line is refused", () => {
  expect(said(of({}, { series: exact(BY_HAND.filter((t) => t <= 30)) }))).toBe(
    "method: the root-of-time method does not apply: the 1.15 line does not meet the curve within the readings; try the log-of-time method or the fit to theory",
  );
});

describe("the straight part", () => {
  test("through a picked d0 is the least-squares line that starts there, up to 60 % of primary", () => {
    const { times, readings } = exact();
    const d0 = 1010;
    const early = times.filter((t) => t <= 8);
    const xy = early.reduce((sum, t, i) => sum + Math.sqrt(t) * (readings[i] - d0), 0);
    const xx = early.reduce((sum, t) => sum + t, 0);
    const found = value(of({ d0 }));
    expect(found.d0).toBe(d0);
    expect(found.straight.slope).toBeCloseTo(xy / xx, 9);
    const heavy = { ...exact(), weights: times.map((t) => (t === 8 ? 1e9 : 1)) };
    expect(value(of({ d0 }, { series: heavy })).straight.slope).toBeCloseTo((readings[6] - d0) / Math.sqrt(8), 5);
  });

  test("that is picked goes through the readings of its span", () => {
    const bent = seriesOf(BY_HAND, (t, i) => (t <= 4 ? 1000 + 60 * Math.sqrt(t) : exact().readings[i]));
    expect(value(of({ straight_to: 4 }, { series: bent }))).toMatchObject({
      d0: expect.closeTo(1000, 9),
      straight: { from: 0.1, to: 4, slope: expect.closeTo(60, 9) },
    });
    expect(said(of({ straight_from: 500 }))).toBe(
      "input: the picked straight part holds fewer than 2 readings: it needs 2",
    );
  });

  test("with fewer than two readings is refused", () => {
    expect(said(of({}, { series: exact([10, 60, 240, 1440]) }))).toBe(
      "method: the root-of-time method does not apply: fewer than 2 readings in the straight part; read earlier",
    );
  });

  test("against the movement is refused; a pick is to be checked", () => {
    const dips = seriesOf(BY_HAND, (t, i) => (t <= 8 ? 1000 - 5 * Math.sqrt(t) : exact().readings[i]));
    const advice = "try the log-of-time method or the fit to theory";
    const wrong = "input: the picked straight part runs against the readings: check the picks";
    expect(said(of({}, { series: dips }))).toBe(
      `method: the root-of-time method does not apply: there is no straight part at the beginning; ${advice}`,
    );
    expect(said(of({ straight_to: 4 }, { series: dips }))).toBe(wrong);
    expect(said(of({ d0: 2000 }))).toBe(wrong);
  });

  test("is remarked from 2 % of primary on, and refused from 5 % on unless it is picked", () => {
    // Readings that stand off the line by turns, by `off` to either side; primary is 400.
    const early = [0.1, 0.25, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8];
    const signs = [1, -1, -1, 1, 1, -1, -1, 1, 1, -1, -1, 1];
    const crooked = (off: number) =>
      exactWith([...early, ...BY_HAND.filter((t) => t > 8)], (i) => off * (signs[i] ?? 0));
    expect(said(of({}, { series: crooked(7) }))).toBe("");
    expect(said(of({}, { series: crooked(9.5) }))).toBe(
      "the readings stand off the straight part by 2 % of primary on average",
    );
    expect(said(of({}, { series: crooked(19) }))).toBe(
      "the readings stand off the straight part by 5 % of primary on average",
    );
    expect(said(of({}, { series: crooked(24) }))).toMatch(/^method: .*there is no straight part at the beginning/);
    expect(said(of({ straight_to: 8 }, { series: crooked(24) }))).toBe(
      "the readings stand off the straight part by 6 % of primary on average; picked by hand: straight part to = 8",
    );
  });

  test("leaves out disturbed first readings, and says so", () => {
    const disturbed = exactWith([0.1, 0.25, 0.5, 1, 2, 3, 4, 6, 8, 30, 60, 120, 480, 1440], (i) => (i ? 0 : -20));
    expect(value(of({}, { series: disturbed })).straight.from).toBe(0.25);
    expect(said(of({}, { series: disturbed }))).toMatch(/^the first reading stands off the straight part .* \(row 1\)/);
  });
});

/** Exact readings, each moved. */
const exactWith = (times: readonly number[], move: (index: number) => number): Series => {
  const series = exact(times);
  return { ...series, readings: series.readings.map((d, i) => d + move(i)) };
};

test("the drawn procedure says which readings the straight part goes through", () => {
  expect(said(of({}, { procedure: "drawn" }))).toBe(
    "root time as drawn: straight part through the readings from 0.1 to 8 min",
  );
});
