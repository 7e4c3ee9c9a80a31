/** The log-of-time construction as a whole: what picks lift, what is refused, and what is said of a short tail. */
import { logTime } from "../../../../src/reduction/increment/constructions/log-time";
import type { Picks } from "../../../../src/reduction/increment/constructions/picks";
import { curveAt } from "../../../../src/reduction/increment/fit/model";
import type { TheoryFit } from "../../../../src/reduction/increment/fit/theory-fit";
import type { Signals } from "../../../../src/reduction/increment/signals";
import { english } from "../../../../src/reduction/message";
import { BY_HAND } from "../../../generators/time-curves";
import { construct, END, exact, FIT, saidOf, seriesOf, timeAt, valueOf } from "./exact-load";

const of = construct(logTime);
const until = (last: number) => exact(BY_HAND.filter((t) => t <= last));

test("on exact theory it finds what theory holds, without a remark", () => {
  const { d0, d50, d100, t50, t100, tailSlope, pair, parabola } = valueOf(of());
  expect(Math.abs(d0 - 1000)).toBeLessThan(0.2);
  expect(Math.abs(d100 - 1400)).toBeLessThan(4);
  expect(d50).toBe((d0 + d100) / 2);
  expect(t50 / timeAt(0.5)).toBeCloseTo(1, 1);
  expect(t100 / END).toBeCloseTo(1, 1);
  expect(tailSlope).toBeCloseTo(20, 9);
  expect(d0).toBe(parabola.d0);
  expect(pair.fourTimes).toBe(4 * pair.time);
  expect(saidOf(of())).toBe("");
});

test("t50 is where the curve is half way", () => {
  const { d0, d100 } = valueOf(of());
  const half = valueOf(of({ d0: 2 * exact().readings[6] - d100 }));
  expect(half.t50).toBeCloseTo(BY_HAND[6], 9);
  expect(d0).not.toBe(half.d0);
});

describe("a pick lifts the refusals that concern its value alone", () => {
  test.each<[Partial<Signals>, RegExp]>([
    [{ firstU: 0.9 }, /^method: .*about 90 % of primary compression was over before the first reading/],
    [{ early: 0 }, /^method: .*only 0 of the readings lie in the first half/],
  ])("of d0: %j", (signals, refusal) => {
    expect(saidOf(of({}, { signals }))).toMatch(refusal);
    expect(saidOf(of({ d100: 1390 }, { signals }))).toMatch(refusal);
    expect(saidOf(of({ d0: 1001 }, { signals }))).toBe("picked by hand: d0 = 1001");
    expect(valueOf(of({ d0: 1001 }, { signals })).d0).toBe(1001);
  });

  test.each<[Partial<Signals>, RegExp]>([
    [{ steepness: 1 }, /^method: .*no inflection in the readings/],
    [{ bend: 1 }, /^method: .*no inflection in the readings/],
    [
      { lastT: 0.2 },
      /^method: .*the readings stop at about 50 % of primary compression: .*; try the root-of-time method$/,
    ],
  ])("of d100: %j", (signals, refusal) => {
    expect(saidOf(of({}, { signals }))).toMatch(refusal);
    expect(saidOf(of({ d0: 1001 }, { signals }))).toMatch(refusal);
    expect(saidOf(of({ d100: 1390 }, { signals }))).toBe("picked by hand: d100 = 1390");
    expect(valueOf(of({ d100: 1390 }, { signals })).d100).toBe(1390);
  });

  test("and none that concerns both", () => {
    expect(saidOf(of({ d0: 1001, d100: 1390 }, { signals: { clearness: 10 } }))).toMatch(
      /^method: .*lost in the noise/,
    );
  });
});

test("t100 of a picked d100 is the time at which the curve reaches it", () => {
  expect(valueOf(of({ d100: exact().readings[9] })).t100).toBeCloseTo(BY_HAND[9], 9);
  expect(saidOf(of({ d100: 2000 }))).toBe(
    "input: the picked d100 (2000) lies outside the readings: pick it within them",
  );
  expect(saidOf(of({ d100: 900 }))).toMatch(/^input: the picked d100 \(900\) lies outside/);
});

describe("a tangent and a tail that do not cross within the readings", () => {
  /** Someone pushed the dial 3000 divisions on in the night: the tail lies far above the curve. */
  const pushed = seriesOf(
    [...BY_HAND.filter((t) => t <= 60), 600, 1000, 1440],
    (t) => curveAt(FIT, t) + (t > 200 ? 3000 : 0),
  );

  test("are refused; with a picked line the remedy is another pick", () => {
    expect(saidOf(of({}, { series: pushed }))).toBe(
      "method: the log-of-time method does not apply: the tangent and the tail do not cross within the readings; try the root-of-time method",
    );
    expect(saidOf(of({ d0: 900 }, { series: pushed }))).toMatch(/^method: .*; try the root-of-time method$/);
    for (const picks of [{ tail_from: 600 }, { tail_to: 1440 }, { tangent_from: 8, tangent_to: 30 }])
      expect(saidOf(of(picks, { series: pushed }))).toBe(
        "input: the tangent and the tail do not cross within the readings: pick the tangent on the steepest part, or a later tail",
      );
  });

  test("with d100 picked they need not cross", () => {
    expect(saidOf(of({ d100: 1390, d0: 1000 }, { series: pushed }))).toBe("picked by hand: d0 = 1000, d100 = 1390");
  });
});

test("picks of d0 and d100 that run against the readings are refused", () => {
  expect(saidOf(of({ d0: 1500 }))).toMatch(
    /^input: d0 \(1500\) and d100 \(1\d+(\.\d)?\) run against the readings: check the picks$/,
  );
  expect(saidOf(of({ d0: 1300, d100: 1200 }))).toBe(
    "input: d0 (1300) and d100 (1200) run against the readings: check the picks",
  );
  expect(saidOf(of({ d0: 1300, d100: 1300 }))).toMatch(/run against the readings/);
  const falling: TheoryFit = { ...FIT, primary: -400, tail: -20 };
  const series = exact(BY_HAND, falling);
  expect(valueOf(of({}, { series, fit: falling })).d100).toBeLessThan(620);
  expect(saidOf(of({ d0: 500 }, { series, fit: falling }))).toMatch(/run against the readings/);
});

test("a record that begins after half of primary has no t50", () => {
  const late = exact(BY_HAND.filter((t) => t >= 8));
  expect(saidOf(of({ d0: 1000 }, { series: late }))).toBe(
    "method: the log-of-time method does not apply: half of primary compression was over before the first reading (8 min); read earlier",
  );
  const in_time = exact([7.7, ...BY_HAND.filter((t) => t >= 8)]);
  expect(valueOf(of({ d0: 1000 }, { series: in_time })).t50).toBeLessThan(8);
});

describe("the slope of the tail", () => {
  test("is not given where too few readings past t100 show it, and the remark says why", () => {
    const short = of({}, { series: until(60) });
    expect(valueOf(short).tailSlope).toBeUndefined();
    expect(english(valueOf(short).noTailSlope!)).toMatch(/^no two of the readings lie past the end of primary/);
    expect(saidOf(short)).toMatch(
      /no two of the readings lie past the end of primary: .*; go on reading; the slope of the tail is not given$/,
    );
    expect(valueOf(of()).noTailSlope).toBeUndefined();
  });

  test("that is the slope of the fit is given with a remark", () => {
    const byFit = of({}, { series: until(120) });
    expect(valueOf(byFit).tailSlope).toBe(20);
    expect(saidOf(byFit)).toMatch(/; the slope of the tail is that of the fit to theory: it is uncertain$/);
  });

  test("of a picked tail counts the cycles of the pick", () => {
    const picked = of(
      { tail_from: 240, tail_to: 400 },
      { series: exact([...BY_HAND.filter((t) => t <= 240), 300, 400, 1440]) },
    );
    expect(valueOf(picked).tailSlope).toBeUndefined();
    expect(saidOf(picked)).toMatch(
      /span 0.22 of a log cycle: .*; the slope of the tail is not given; picked by hand: tail from = 240, tail to = 400$/,
    );
    expect(valueOf(of({ tail_from: 30 }, { series: until(60) })).tailSlope).toBeGreaterThan(20);
    expect(valueOf(of({ tail_to: 480 })).tailSlope).toBeGreaterThan(19);
  });
});

test("picks of the pair and of the tangent replace the choice of the aided procedure", () => {
  const { readings } = exact();
  const found = valueOf(of({ pair_at: 0.5 }));
  expect([found.pair.time, found.pair.fourTimes]).toEqual([0.5, 2]);
  expect(found.d0).toBeCloseTo(2 * readings[2] - readings[4], 9);
  expect(saidOf(of({ pair_at: 0.05 }))).toMatch(/^input: the picked 4:1 pair at 0.05 min/);
  expect(valueOf(of({ tangent_from: 8, tangent_to: 30 })).tangent).toMatchObject({ from: 8, to: 30 });
  expect(valueOf(of({ tangent_to: 30 })).tangent.to).toBe(30);
  expect(valueOf(of({ tangent_from: 8 })).tangent.from).toBe(8);
  expect(saidOf(of({ tangent_from: 500, tangent_to: 600 }))).toMatch(/^input: the picked tangent/);
  expect(saidOf(of({ tail_from: 900 }))).toMatch(/^input: the picked tail/);
});

test("a tangent and a tail picked so that they overlap are remarked, and those that meet are not", () => {
  expect(saidOf(of({ tangent_from: 8, tangent_to: 30, tail_from: 15 }))).toMatch(
    /the tangent \(8 to 30 min\) and the tail \(15 to 1440 min\) overlap: move an end of one of them/,
  );
  expect(saidOf(of({ tangent_from: 8, tangent_to: 30, tail_from: 30 }))).not.toMatch(/overlap/);
});

test("the drawn procedure says what a person needs to draw it again, without what was picked", () => {
  const drawn = (picks: Picks) => saidOf(of(picks, { procedure: "drawn" }));
  expect(drawn({})).toBe(
    "log time as drawn: 4:1 pair at 0.25 and 1 min, tangent through the readings from 8 to 30 min, tail through those from 240 to 1440 min",
  );
  expect(drawn({ d0: 1000 })).toBe(
    "picked by hand: d0 = 1000; log time as drawn: tangent through the readings from 8 to 30 min, tail through those from 240 to 1440 min",
  );
  expect(drawn({ d100: 1390 })).toBe("picked by hand: d100 = 1390; log time as drawn: 4:1 pair at 0.25 and 1 min");
  expect(drawn({ d0: 1000, d100: 1390 })).toBe(
    "picked by hand: d0 = 1000, d100 = 1390; log time as drawn: by the picks",
  );
});
