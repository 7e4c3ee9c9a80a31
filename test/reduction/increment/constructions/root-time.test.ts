/** The root-of-time construction as a whole: its lines, what picks lift, what is refused, and a crooked beginning. */
import { rootTime } from "../../../../src/reduction/increment/constructions/root-time";
import type { Series } from "../../../../src/reduction/increment/readings";
import type { Signals } from "../../../../src/reduction/increment/signals";
import { BY_HAND } from "../../../generators/time-curves";
import { construct, exact, FIT, saidOf, seriesOf, valueOf } from "./exact-load";

const of = construct(rootTime);

test("on exact theory it gives t90 1.5 % early and d100 0.35 % of primary low, at the most, by its convention", () => {
  const still = { ...FIT, tail: 0 };
  const { d0, d90, d100, t90, straight } = valueOf(of({}, { series: exact(BY_HAND, still), fit: still }));
  expect((0.848 / (t90 * FIT.rate) - 1) * 100).toBeCloseTo(1.5, 0);
  expect((1400 - d100) / 400).toBeGreaterThan(0.0025);
  expect((1400 - d100) / 400).toBeLessThan(0.0035);
  expect(d100).toBeCloseTo(d0 + (d90 - d0) / 0.9, 9);
  expect(d90).toBeCloseTo(d0 + (straight.slope / 1.15) * Math.sqrt(t90), 9);
  expect(straight).toMatchObject({ from: 0.1, to: 8 });
  expect(saidOf(of())).toBe("");
});

describe("a pick lifts the refusals that concern its value alone", () => {
  test.each<[Partial<Signals>, RegExp]>([
    [{ firstU: 0.9 }, /^method: .*about 90 % of primary compression was over before the first reading/],
    [{ early: 0 }, /^method: .*only 0 of the readings lie in the first half/],
  ])("of d0 and of the straight part: %j", (signals, refusal) => {
    expect(saidOf(of({}, { signals }))).toMatch(refusal);
    expect(saidOf(of({ d90: 1360 }, { signals }))).toMatch(refusal);
    expect(saidOf(of({ d0: 1001 }, { signals }))).toBe("picked by hand: d0 = 1001");
    // From there to the end of the record no line is straight, but that is another refusal.
    expect(saidOf(of({ straight_from: 0.25 }, { signals }))).toMatch(/the 1.15 line does not meet the curve/);
    expect(saidOf(of({ straight_to: 8 }, { signals }))).toBe("picked by hand: straight part to = 8");
  });

  test.each<[Partial<Signals>, RegExp]>([
    [{ steepness: 1 }, /^method: .*no inflection in the readings/],
    [{ bend: 1 }, /^method: .*no inflection in the readings/],
    [{ lastT: 0.2 }, /^method: .*the readings stop at about 50 % .*; try the log-of-time method or the fit to theory$/],
  ])("of d90: %j", (signals, refusal) => {
    expect(saidOf(of({}, { signals }))).toMatch(refusal);
    expect(saidOf(of({ d0: 1001 }, { signals }))).toMatch(refusal);
    expect(saidOf(of({ d90: 1360 }, { signals }))).toBe("picked by hand: d90 = 1360");
  });
});

describe("a picked d90", () => {
  test("gives the time at which the curve reaches it, and d100", () => {
    const reading = exact().readings[8];
    const { d0, d90, d100, t90 } = valueOf(of({ d90: reading }));
    expect([d90, t90]).toEqual([reading, expect.closeTo(BY_HAND[8], 9)]);
    expect(d100).toBeCloseTo(d0 + (reading - d0) / 0.9, 9);
    // Before the end of the straight part it is still a pick.
    expect(valueOf(of({ d90: exact().readings[5] })).t90).toBeCloseTo(BY_HAND[5], 9);
  });

  test("outside the readings, or on the other side of d0, is refused", () => {
    const refusal = (d90: number) => `input: the picked d90 (${d90}) lies outside the readings: pick it within them`;
    expect(saidOf(of({ d90: 2000 }))).toBe(refusal(2000));
    expect(saidOf(of({ d90: 1030, d0: 1040 }))).toBe(refusal(1030));
    expect(saidOf(of({ d90: 1040, d0: 1040 }))).toBe(refusal(1040));
  });
});

test("a record that ends before the 1.15 line is refused", () => {
  expect(saidOf(of({}, { series: exact(BY_HAND.filter((t) => t <= 30)) }))).toBe(
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
    const found = valueOf(of({ d0 }));
    expect(found.d0).toBe(d0);
    expect(found.straight.slope).toBeCloseTo(xy / xx, 9);
    const heavy = { ...exact(), weights: times.map((t) => (t === 8 ? 1e9 : 1)) };
    expect(valueOf(of({ d0 }, { series: heavy })).straight.slope).toBeCloseTo((readings[6] - d0) / Math.sqrt(8), 5);
  });

  test("that is picked goes through the readings of its span", () => {
    const bent = seriesOf(BY_HAND, (t, i) => (t <= 4 ? 1000 + 60 * Math.sqrt(t) : exact().readings[i]));
    expect(valueOf(of({ straight_to: 4 }, { series: bent }))).toMatchObject({
      d0: expect.closeTo(1000, 9),
      straight: { from: 0.1, to: 4, slope: expect.closeTo(60, 9) },
    });
    expect(saidOf(of({ straight_from: 500 }))).toBe(
      "input: the picked straight part holds fewer than 2 readings: it needs 2",
    );
  });

  test("with fewer than two readings is refused", () => {
    expect(saidOf(of({}, { series: exact([10, 60, 240, 1440]) }))).toBe(
      "method: the root-of-time method does not apply: fewer than 2 readings in the straight part; read earlier",
    );
  });

  test("against the movement is refused; a pick is to be checked", () => {
    const dips = seriesOf(BY_HAND, (t, i) => (t <= 8 ? 1000 - 5 * Math.sqrt(t) : exact().readings[i]));
    const advice = "try the log-of-time method or the fit to theory";
    const wrong = "input: the picked straight part runs against the readings: check the picks";
    expect(saidOf(of({}, { series: dips }))).toBe(
      `method: the root-of-time method does not apply: there is no straight part at the beginning; ${advice}`,
    );
    expect(saidOf(of({ straight_to: 4 }, { series: dips }))).toBe(wrong);
    expect(saidOf(of({ d0: 2000 }))).toBe(wrong);
  });

  test("is remarked from 2 % of primary on, and refused from 5 % on unless it is picked", () => {
    // Readings that stand off the line by turns, by `off` to either side; primary is 400.
    const early = [0.1, 0.25, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 7, 8];
    const signs = [1, -1, -1, 1, 1, -1, -1, 1, 1, -1, -1, 1];
    const crooked = (off: number) =>
      exactWith([...early, ...BY_HAND.filter((t) => t > 8)], (i) => off * (signs[i] ?? 0));
    expect(saidOf(of({}, { series: crooked(7) }))).toBe("");
    expect(saidOf(of({}, { series: crooked(9.5) }))).toBe(
      "the readings stand off the straight part by 2 % of primary on average",
    );
    expect(saidOf(of({}, { series: crooked(19) }))).toBe(
      "the readings stand off the straight part by 5 % of primary on average",
    );
    expect(saidOf(of({}, { series: crooked(24) }))).toMatch(/^method: .*there is no straight part at the beginning/);
    expect(saidOf(of({ straight_to: 8 }, { series: crooked(24) }))).toBe(
      "the readings stand off the straight part by 6 % of primary on average; picked by hand: straight part to = 8",
    );
  });

  test("leaves out disturbed first readings, and says so", () => {
    const disturbed = exactWith([0.1, 0.25, 0.5, 1, 2, 3, 4, 6, 8, 30, 60, 120, 480, 1440], (i) => (i ? 0 : -20));
    expect(valueOf(of({}, { series: disturbed })).straight.from).toBe(0.25);
    expect(saidOf(of({}, { series: disturbed }))).toMatch(
      /^the first reading, row 1 \(0.1 min\), stands off the straight part /,
    );
  });
});

/** Exact readings, each moved. */
const exactWith = (times: readonly number[], move: (index: number) => number): Series => {
  const series = exact(times);
  return { ...series, readings: series.readings.map((d, i) => d + move(i)) };
};

test("the drawn procedure says which readings the straight part goes through", () => {
  expect(saidOf(of({}, { procedure: "drawn" }))).toBe(
    "root time as drawn: straight part through the readings from 0.1 to 8 min",
  );
});
