/** The straight tail: which readings it goes through, its slope, and what is said of a short one. */
import type { Picks } from "../../../../src/reduction/increment/constructions/picks";
import type { Procedure } from "../../../../src/reduction/increment/constructions/procedure";
import { cyclesPast, noSlope, tailLine, type Tail } from "../../../../src/reduction/increment/constructions/tail";
import type { TheoryFit } from "../../../../src/reduction/increment/fit/theory-fit";
import type { Series } from "../../../../src/reduction/increment/readings";
import { shareOf } from "../../../../src/reduction/increment/share";
import { english, say } from "../../../../src/reduction/message";
import type { Outcome } from "../../../../src/reduction/outcome";
import { BY_HAND } from "../../../generators/time-curves";
import { cleanOf, END, exact, FIT, seriesOf } from "./exact-load";

const tailOf = (series: Series, procedure: Procedure, picks: Picks = {}, step = 1, fit: TheoryFit = FIT) =>
  tailLine(cleanOf(series, step), series, fit, picks, procedure, shareOf(step, fit.primary));
const value = (outcome: Outcome<Tail>): Tail => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const said = (outcome: Outcome<Tail>): string[] =>
  outcome.ok ? outcome.remarks.map(english) : [`${outcome.fault}: ${english(outcome.reason)}`];
const at = ({ slope, atOneMinute }: Tail, t: number): number => atOneMinute + slope * Math.log10(t);
const until = (last: number) => BY_HAND.filter((t) => t <= last);

/** The line of theory: 20 a log cycle through the end of primary at d100. */
const ASYMPTOTE = (t: number) => 1400 + 20 * Math.log10(t / END);

describe("how much of a tail shows a slope", () => {
  test("the log cycles past the end of primary count from the first reading at or past it", () => {
    expect(cyclesPast([1, 10, 100, 1000], 10)).toBeCloseTo(2, 12);
    expect(cyclesPast([1, 10, 100, 1000], 10.01)).toBeCloseTo(1, 12);
    expect(cyclesPast([1, 10, 100, 1000], 10 * (1 + 1e-12))).toBeCloseTo(2, 12);
    expect(cyclesPast([1, 10, 100], 100)).toBe(0);
    expect(cyclesPast([1, 10, 100], 101)).toBe(0);
  });

  test("a quarter of a log cycle is enough, and less is not", () => {
    expect(noSlope(0.25)).toBeUndefined();
    expect(noSlope(Math.log10(10 ** 0.25))).toBeUndefined();
    expect(english(noSlope(0.249)!)).toBe(
      "the readings past the end of primary span 0.25 of a log cycle: secondary compression needs 0.25 of a log cycle; go on reading",
    );
    expect(english(noSlope(0.12, say`the readings of the span`)!)).toBe(
      "the readings of the span past the end of primary span 0.12 of a log cycle: secondary compression needs 0.25 of a log cycle; go on reading",
    );
    expect(english(noSlope(0)!)).toBe(
      "no two of the readings lie past the end of primary: secondary compression needs 0.25 of a log cycle; go on reading",
    );
  });
});

describe("aided", () => {
  test("on exact theory it is the line that theory approaches, although creep and primary go on in it", () => {
    const tail = value(tailOf(exact(), "aided"));
    for (const t of [END, 1440]) expect(at(tail, t)).toBeCloseTo(ASYMPTOTE(t), 9);
    expect(tail).toMatchObject({ from: 120, to: 1440, own: true });
    expect(tail.cycles).toBeCloseTo(Math.log10(12), 12);
    // A dial that runs backwards, and no creep.
    const falling: TheoryFit = { ...FIT, primary: -400, tail: -20 };
    expect(value(tailOf(exact(BY_HAND, falling), "aided", {}, 1, falling)).slope).toBeCloseTo(-20, 9);
    const still: TheoryFit = { ...FIT, tail: 0 };
    const flat = value(tailOf(exact(BY_HAND, still), "aided", {}, 1, still));
    expect(flat.slope).toBeCloseTo(0, 9);
    expect(at(flat, 100)).toBeCloseTo(1400, 9);
  });

  test("readings count from twice the end of primary where they follow theory, else from three times", () => {
    const from = (fit: Partial<TheoryFit>, step = 1) => {
      const times = [...until(60), 90, 130, 140, 240, 480, 1440];
      return value(tailOf(exact(times), "aided", {}, step, { ...FIT, ...fit })).from;
    };
    expect(from({})).toBe(90);
    // Half a hundredth of primary is 2; four tenths of a step of 10 are 4.
    expect(from({ misfit: 1.9 })).toBe(90);
    expect(from({ misfit: 2.1 })).toBe(140);
    expect(from({ misfit: 3.9 }, 10)).toBe(90);
    expect(from({ misfit: 4.1 }, 10)).toBe(140);
  });

  test("a tail that is too short takes the slope of the fit, through the mean of the last two readings", () => {
    const outcome = tailOf(exact(until(120)), "aided");
    const tail = value(outcome);
    expect(tail).toMatchObject({ own: false, slope: 20, from: 60, to: 120 });
    expect(at(tail, 100)).toBeCloseTo(ASYMPTOTE(100), 9);
    // By hand at 60 min, T 1.5: 400 x 0.8106 exp(-2.467 T) is 8.0 to come, less the 1.0 by which creep runs ahead of its line.
    expect(said(outcome)).toEqual([
      "readings of the tail were corrected by up to 7 divisions, 1.8 % of primary for primary compression still to come and creep just begun: row 10 (60 min)",
      "the tail is too short to show its slope: d100 leans on that of the fit to theory",
    ]);
    // With 240 min the tail of 0.30 of a cycle shows its slope.
    expect(said(tailOf(exact(until(240)), "aided"))).toEqual([
      "the tail is only 0.30 of a log cycle long: its slope is uncertain",
    ]);
  });

  test("a tail of 0.45 of a log cycle and more has no remark on its length", () => {
    const lengthOf = (last: number) =>
      said(tailOf(exact([...until(60), 100, 150, 200, last]), "aided")).filter((one) => /log cycle/.test(one));
    expect(lengthOf(100 * 10 ** 0.451)).toEqual([]);
    expect(lengthOf(100 * 10 ** 0.444)).toEqual(["the tail is only 0.44 of a log cycle long: its slope is uncertain"]);
  });

  test("a correction is named above half a hundredth of primary, and above half a division", () => {
    const times = [...until(60), 75, 85];
    const named = (step: number) => said(tailOf(exact(times), "aided", {}, step))[0];
    // By hand as above: 2.64 divisions at 75 min and 1.33 at 85 min, and half a hundredth of primary is 2.
    expect(named(1)).toMatch(/^readings .* by up to 2.6 divisions, 0.66 % of primary for .* begun: row 11 \(75 min\)$/);
    expect(named(5.2)).toMatch(
      /^readings of the tail were corrected by up to 2.6 in the readings, .*: row 11 \(75 min\)$/,
    );
    expect(named(5.4)).toMatch(/^the tail is too short/);
  });

  test("a picked d100 needs no tail: nothing is said of it", () => {
    expect(said(tailOf(exact(until(120)), "aided", { d100: 1400 }))).toEqual([]);
  });
});

describe("drawn", () => {
  test("it is the least-squares line through the raw readings after three times the end of primary", () => {
    const tail = value(tailOf(exact(), "drawn"));
    expect(tail).toMatchObject({ from: 240, to: 1440, own: true });
    const line = seriesOf(BY_HAND, (t) => 900 + 7 * Math.log10(t));
    const drawn = value(tailOf(line, "drawn"));
    expect([drawn.slope, drawn.atOneMinute].map((one) => Number(one.toFixed(9)))).toEqual([7, 900]);
    expect(said(tailOf(exact(), "drawn"))).toEqual([]);
  });

  test("a weight of two counts like two readings", () => {
    const times = [...until(120), 240, 480, 1440];
    const heavy = { ...seriesOf(times, (t) => t), weights: times.map((t) => (t === 480 ? 2 : 1)) };
    const twice = seriesOf([...times.slice(0, -1), 480, 1440], (t) => t);
    expect(value(tailOf(heavy, "drawn")).slope).toBeCloseTo(value(tailOf(twice, "drawn")).slope, 9);
  });

  test("where it is too short, readings past the end of primary are added, and the remark says so", () => {
    const outcome = tailOf(exact(until(240)), "drawn");
    expect(value(outcome)).toMatchObject({ from: 120, to: 240 });
    expect(said(outcome)).toEqual([
      "the tail is only 0.30 of a log cycle long: its slope is uncertain",
      "the tail begins at 2.7 times the end of primary: some of it is still primary compression",
    ]);
  });

  test("without a quarter of a log cycle past the end of primary it is refused, unless d100 is picked", () => {
    const times = [...until(60), 80];
    expect(said(tailOf(exact(times), "drawn"))).toEqual([
      'method: the log-of-time method does not apply: the readings past the end of primary span 0.12 of a log cycle: secondary compression needs 0.25 of a log cycle; go on reading, or use the procedure "aided"',
    ]);
    expect(value(tailOf(exact(times), "drawn", { d100: 1400 }))).toMatchObject({ from: 60, to: 80 });
  });
});

describe("picked", () => {
  test("it goes through the raw readings of the span, ends included", () => {
    const line = seriesOf(BY_HAND, (t) => 900 + 7 * Math.log10(t) + (t === 30 ? 50 : 0));
    const tail = value(tailOf(line, "aided", { tail_from: 60, tail_to: 480 }));
    expect([tail.slope, tail.atOneMinute].map((one) => Number(one.toFixed(9)))).toEqual([7, 900]);
    expect(tail).toMatchObject({ from: 60, to: 480, own: true });
    expect(value(tailOf(line, "drawn", { tail_from: 60, tail_to: 500 }))).toMatchObject({ from: 60, to: 500 });
  });

  test("without a start it begins at three times the end of primary, without an end at the last reading", () => {
    expect(value(tailOf(exact(), "aided", { tail_to: 480 }))).toMatchObject({ from: 240, to: 480 });
    expect(value(tailOf(exact(), "aided", { tail_from: 60 }))).toMatchObject({ from: 60, to: 1440 });
  });

  test("a span with fewer than two readings is refused", () => {
    expect(said(tailOf(exact(), "aided", { tail_from: 500 }))).toEqual([
      "input: the picked tail (500 to 1440 min) holds 1 readings: it needs 2",
    ]);
    expect(value(tailOf(exact(), "aided", { tail_from: 480 }))).toMatchObject({ from: 480 });
  });

  test("a slope against the movement is set to zero, at the mean of the readings", () => {
    const back = seriesOf(BY_HAND, (t) => 1500 - 10 * Math.log10(t));
    const tail = value(tailOf(back, "drawn", { tail_from: 120, tail_to: 480 }));
    expect(tail.slope).toBe(0);
    expect(tail.atOneMinute).toBeCloseTo(1500 - 10 * Math.log10(240), 9);
    const falling: TheoryFit = { ...FIT, primary: -400, tail: -20 };
    expect(value(tailOf(back, "drawn", { tail_from: 120 }, 1, falling)).slope).toBeCloseTo(-10, 9);
  });
});
