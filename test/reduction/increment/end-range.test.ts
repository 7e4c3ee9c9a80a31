/**
 * How far the end of primary may lie from the time that the fit predicts: what must hold for any range. Its constants rest
 * on the study (test/study/progress.ts).
 */
import { endOfPrimary, END_RULES, type EndRule } from "../../../src/reduction/increment/end-of-primary";
import { endRange } from "../../../src/reduction/increment/end-range";
import { curveAt } from "../../../src/reduction/increment/fit/model";
import type { TheoryFit } from "../../../src/reduction/increment/fit/theory-fit";
import type { Series } from "../../../src/reduction/increment/readings";
import { BY_HAND } from "../../generators/time-curves";
import { exact, FIT } from "./constructions/exact-load";

const until = (last: number) => BY_HAND.filter((t) => t <= last);
const of = (rule: EndRule, last: number, fit: Partial<TheoryFit> = {}, series?: Series) => {
  const whole = { ...FIT, ...fit };
  return endRange(series ?? exact(until(last), whole), whole, rule, endOfPrimary(rule, whole)!);
};

describe.each(END_RULES)("%s", (rule) => {
  const own = rule === "log time" ? { earlier: 0.1, later: 0.2 } : { earlier: 0.1, later: 0.15 };

  test("on a whole record without noise it is hardly more than what the construction adds of itself", () => {
    const { earlier, later } = of(rule, 1440, { noise: 0 });
    expect(earlier).toBeGreaterThanOrEqual(own.earlier);
    expect(later).toBeGreaterThanOrEqual(own.later);
    expect(Math.max(earlier, later)).toBeLessThan(0.35);
  });

  test("more noise and fewer readings make it wider", () => {
    for (const side of ["earlier", "later"] as const) {
      expect(of(rule, 60, { noise: 2 })[side]).toBeGreaterThan(of(rule, 60, { noise: 0.5 })[side]);
      expect(of(rule, 30, { noise: 2 })[side]).toBeGreaterThan(of(rule, 1440, { noise: 2 })[side]);
    }
  });

  test("readings far from the end, with noise, give no upper limit but a lower one", () => {
    const { earlier, later } = of(rule, 8, { noise: 4 });
    expect(later).toBe(Infinity);
    expect(earlier).toBeLessThan(2);
  });

  test("direction, zero, unit and clock of the readings change nothing", () => {
    const usual = of(rule, 60);
    const same = (found: typeof usual, digits = 9) => {
      expect(found.earlier).toBeCloseTo(usual.earlier, digits);
      expect(found.later).toBeCloseTo(usual.later, digits);
    };
    same(of(rule, 60, { primary: -400, tail: -20, d0: 5000 }), 6);
    const inches = { d0: 1000 / 25.4, primary: 400 / 25.4, tail: 20 / 25.4, noise: 0.1 / 25.4 };
    same(of(rule, 60, inches), 6);
    // The load came two minutes before the clock: its readings are those of exact theory two minutes later.
    const series = exact(until(60).map((t) => t + 2));
    const onClock = { ...series, times: until(60) };
    const late = of(rule, 60, { timeZero: 2 }, onClock);
    const asRead = of(rule, 60, {}, series);
    expect([late.earlier, late.later]).toEqual([expect.closeTo(asRead.earlier, 9), expect.closeTo(asRead.later, 9)]);
  });

  test("k times slower, it is as wide", () => {
    const slow = { rate: FIT.rate / 60 };
    const fit = { ...FIT, ...slow };
    const series = exact(until(60).map((t) => 60 * t), fit); // prettier-ignore
    const [found, usual] = [endRange(series, fit, rule, endOfPrimary(rule, fit)!), of(rule, 60)];
    expect([found.earlier, found.later]).toEqual([expect.closeTo(usual.earlier, 6), expect.closeTo(usual.later, 6)]);
  });

  test("it holds the end of a second answer, on the side on which it lies", () => {
    const usual = of(rule, 60);
    const slower = of(rule, 60, { otherRate: FIT.rate / 3 });
    expect(slower.later).toBeGreaterThan(usual.later + 0.3);
    expect(slower.earlier).toBe(usual.earlier);
    const faster = of(rule, 60, { otherRate: FIT.rate * 3 });
    expect(faster.earlier).toBeGreaterThan(usual.earlier + 0.3);
    expect(faster.later).toBe(usual.later);
  });

  test("neighbouring residuals to one side make it wider than the same residuals by turns", () => {
    const moved = (sign: (i: number) => number) => {
      const series = exact();
      return of(rule, 1440, { noise: 2 }, { ...series, readings: series.readings.map((d, i) => d + 2 * sign(i)) });
    };
    const drifting = moved((i) => (i < 7 ? 1 : -1));
    const byTurns = moved((i) => (i % 2 ? 1 : -1));
    expect(drifting.earlier).toBeGreaterThan(byTurns.earlier);
    expect(drifting.later).toBeGreaterThan(byTurns.later);
  });
});

describe("root time", () => {
  test("the noise of d100 on the flat curve widens it: by the time in which the curve moves by twice the noise", () => {
    const fit = { ...FIT, tail: 0, noise: 0 };
    const { d100, t100 } = endOfPrimary("root time", fit)!;
    const noise = 0.1;
    const widened = of("root time", 1440, { tail: 0, noise });
    const without = of("log time", 1440, { tail: 0, noise });
    // By bisection on exact theory: when the curve stands twice the noise before d100, and after it.
    const timeOf = (reading: number): number => {
      let [low, high] = [1, 1000];
      for (let i = 0; i < 100; i++) {
        const middle = (low + high) / 2;
        if (curveAt(fit, middle) < reading) low = middle;
        else high = middle;
      }
      return low;
    };
    expect(widened.earlier).toBeGreaterThan(Math.log(t100 / timeOf(d100 - 2 * noise)));
    expect(widened.later).toBeGreaterThan(Math.log(timeOf(d100 + 2 * noise) / t100));
    expect(without.earlier).toBeLessThan(widened.earlier);
  });

  test("a curve that never moves so far past d100 gives no upper limit", () => {
    expect(of("root time", 1440, { tail: 0, noise: 3 }).later).toBe(Infinity);
    expect(of("log time", 1440, { tail: 0, noise: 3 }).later).toBeLessThan(1);
  });
});
