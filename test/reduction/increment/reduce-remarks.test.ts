/** What the reduction of a load says beyond its parts: each remark on both sides of its limit, on readings of exact theory. */
import type { Picks } from "../../../src/reduction/increment/constructions/picks";
import { curveAt } from "../../../src/reduction/increment/fit/model";
import { constructionRemarks, reduceIncrement, type Increment } from "../../../src/reduction/increment/reduce";
import { english, say } from "../../../src/reduction/message";
import { badInput, given, notApplicable } from "../../../src/reduction/outcome";
import { translated } from "../../../src/pane/text/messages";
import { BY_HAND } from "../../generators/time-curves";
import { exact, FIT, saidOf } from "./constructions/exact-load";

/** Rounded to a hundredth of a division, as a transducer shows it. */
const READINGS = exact().readings.map((d) => Math.round(100 * d) / 100);
const remarks = (increment: Increment): string[] =>
  increment.logTime.ok ? increment.logTime.remarks.map(english) : [english(increment.logTime.reason)];
const of = (picks: Picks = {}, readings: readonly number[] = READINGS, times: readonly number[] = BY_HAND) =>
  remarks(reduceIncrement(times, readings, picks));

test("readings of exact theory have no remark", () => expect(of()).toEqual([]));

describe("methods that disagree", () => {
  const { logTime } = reduceIncrement(BY_HAND, READINGS);
  if (!logTime.ok) throw new Error(english(logTime.reason));
  const { d0, d100, t50 } = logTime.value;
  /** A pick of d100, which root time does not use, that makes half way come earlier. */
  const ofCv = (times: number) => of({ d100: 2 * curveAt(FIT, t50 / times) - d0 }).filter((one) => /^cv/.test(one));

  test("log time that differs from the fit by 13 % is remarked on log time alone, until all methods say so", () => {
    expect(ofCv(1.1)).toEqual([]);
    for (const times of [1.16, 1.32]) {
      const increment = reduceIncrement(BY_HAND, READINGS, { d100: 2 * curveAt(FIT, t50 / times) - d0 });
      expect(remarks(increment).filter((one) => /^cv/.test(one))).toEqual([
        `cv by log time is ${times.toFixed(1)} times that by the fit to theory`,
      ]);
      for (const other of [increment.fit, increment.rootTime]) expect(saidOf(other)).not.toMatch(/cv by/);
    }
  });

  test("in cv are remarked from 1.35 times on, and from twice on not to be relied on", () => {
    // By its convention root time gives the least cv of a load with creep: up to 2 % below the fit.
    expect(ofCv(1.38)).toEqual([
      expect.stringMatching(/^cv by log time is 1.4 times that by (root time|the fit to theory)$/),
    ]);
    expect(ofCv(1.9)[0]).toMatch(/^cv by log time is \S+ times that by [a-z ]+$/);
    expect(ofCv(2.1)).toEqual([
      expect.stringMatching(
        /^cv by log time is 2.\d times that by .*: do not rely on either without looking at the plot$/,
      ),
    ]);
  });

  test("root time that differs from the fit by 13 % is remarked on root time alone, until all methods say so", () => {
    // A pick of d90 where the curve of the fit is at this multiple of its t90: T90 is 0.848.
    const ofT90 = (times: number) =>
      reduceIncrement(BY_HAND, READINGS, { d90: curveAt(FIT, (0.848 / FIT.rate) * times) });
    const onRoot = (increment: Increment) =>
      increment.rootTime.ok ? increment.rootTime.remarks.map(english).filter((one) => /^cv/.test(one)) : ["refused"];
    for (const [slow, fast] of [
      [1.1, 1 / 1.1],
      [1.16, 1 / 1.16],
      [1.3, 1 / 1.3],
    ] as const) {
      const [later, earlier] = [ofT90(slow), ofT90(fast)];
      const ratio = slow.toFixed(1);
      expect(onRoot(later)).toEqual(slow < 1.13 ? [] : [`cv by the fit to theory is ${ratio} times that by root time`]);
      expect(onRoot(earlier)).toEqual(
        slow < 1.13 ? [] : [`cv by root time is ${ratio} times that by the fit to theory`],
      );
      for (const increment of [later, earlier]) {
        expect(remarks(increment)).toEqual([]);
        expect(saidOf(increment.fit)).toBe("");
      }
    }
    const apart = ofT90(1.5);
    expect(onRoot(apart)).toHaveLength(1);
    expect(saidOf(apart.fit)).toMatch(/^cv by .* is 1.5 times that by root time$/);
  });

  test("in d0 or d100 are remarked from 15 % of primary compression on", () => {
    const { rootTime } = reduceIncrement(BY_HAND, READINGS);
    if (!rootTime.ok) throw new Error(english(rootTime.reason));
    const primary = d100 - d0;
    // d100 of root time lies a ninth beyond d90.
    const ofD100 = (share: number) => {
      const d90 = rootTime.value.d0 + 0.9 * (d100 - share * primary - rootTime.value.d0);
      return of({ d90 }).filter((one) => /differ/.test(one));
    };
    expect(ofD100(0.14)).toEqual([]);
    expect(ofD100(0.16)).toEqual(["d100 by log time and by root time differ by 16 % of primary compression"]);
    // A pair past the parabola: at T of 0.2 and 0.8, U is 0.504 and 0.887, and d0 lies 0.12 of primary too far; at T of
    // 0.25 and 1, U is 0.562 and 0.931, and d0 lies 0.19 too far (Terzaghi's series): 14 and 23 % of what is left.
    const ofD0 = (pair_at: number) => of({ pair_at }).filter((one) => /^d0 .*differ/.test(one));
    expect(ofD0(0.2 / FIT.rate)).toEqual([]);
    expect(ofD0(0.25 / FIT.rate)).toEqual(["d0 by log time and by root time differ by 23 % of primary compression"]);
  });
});

describe("initial compression", () => {
  const last = curveAt(FIT, 1440);
  /** The reading before the load that makes d0 lie at a share of the whole movement. */
  const zeroFor = (share: number) => (1000 - share * last) / (1 - share);
  const said = (zero: number) => of({}, [zero, ...READINGS], [0, ...BY_HAND]).filter((one) => /initial/.test(one));

  test("is remarked above a fifth of the movement", () => {
    expect(said(zeroFor(0.19))).toEqual([]);
    expect(said(zeroFor(0.21))).toEqual([
      "initial compression is 21 % of the movement: gas, bedding or the deflection of the apparatus",
    ]);
    expect(said(zeroFor(0.6))).toEqual([expect.stringMatching(/^initial compression is 60 % of the movement/)]);
  });

  test("is not remarked where the reading before the load lies on the other side, or there is none", () => {
    expect(said(1100)).toEqual([]);
    expect(said(2000)).toEqual([]);
    expect(of().filter((one) => /initial/.test(one))).toEqual([]);
  });
});

describe("a reading that goes back against the movement", () => {
  const moved = (index: number, by: number, sense = 1) =>
    of({}, READINGS.map((d, i) => sense * (i === index ? d - by : d) + (sense < 0 ? 5000 : 0))).filter((one) => /goes back/.test(one)); // prettier-ignore

  test("is named by its row, on a dial that runs either way", () => {
    const rise = READINGS[12] - READINGS[11];
    expect(moved(12, rise + 6)).toEqual([
      `row 13 (${BY_HAND[12]} min) goes back against the movement: check the reading`,
    ]);
    expect(moved(12, rise + 6, -1)).toEqual([
      `row 13 (${BY_HAND[12]} min) goes back against the movement: check the reading`,
    ]);
    // As far forward as it would have to go back.
    expect(moved(12, -6)).toEqual([]);
  });

  test("is not named within three steps of the instrument", () => {
    const coarse = (back: number) => {
      const readings = exact().readings.map((d) => 2 * Math.round(d / 2));
      readings[12] = readings[11] - back;
      readings[13] = readings[11] + 4;
      return of({}, readings).filter((one) => /goes back/.test(one));
    };
    expect(coarse(6)).toEqual([]);
    expect(coarse(8)).toEqual([`row 13 (${BY_HAND[12]} min) goes back against the movement: check the reading`]);
  });

  test("two at the most are named", () => {
    const saw = READINGS.map((d, i) => (i >= 9 && i % 2 ? d - 60 : d));
    expect(of({}, saw).filter((one) => /goes back/.test(one)).length).toBeLessThanOrEqual(2);
  });
});

describe("the remarks of both constructions, for a person who has not chosen", () => {
  const increment = (parts: Partial<Increment>): Increment => ({ ...reduceIncrement(BY_HAND, READINGS), ...parts });
  const words = (parts: Partial<Increment>) => constructionRemarks(increment(parts)).map(english);
  const remarked = (...said: string[]) =>
    given(
      {},
      said.map((one) => say`${{ verbatim: one }}`),
    ) as never;

  test("are said once each, those of log time first", () => {
    expect(words({ logTime: remarked("a", "b"), rootTime: remarked("b", "c") })).toEqual(["a", "b", "c"]);
  });
  test("of one that refuses are its reason", () => {
    expect(words({ logTime: notApplicable(say`no log time`), rootTime: remarked("c") })).toEqual(["no log time", "c"]);
  });
  test("begin with those on the readings where both refuse", () => {
    const both = { logTime: notApplicable(say`no log time`), rootTime: notApplicable(say`no root time`) };
    expect(words({ cleaned: remarked("row 2"), ...both })).toEqual(["row 2", "no log time", "no root time"]);
    expect(words({ cleaned: remarked("row 2"), ...both, rootTime: remarked("c") })).toEqual(["no log time", "c"]);
  });
  test("advise in a circle nowhere: where both refuse, neither advises the other", () => {
    const both = (last: number) => {
      const times = [...BY_HAND.filter((t) => t < last), last];
      return constructionRemarks(reduceIncrement(times, exact(times).readings));
    };
    const stops = (method: string, advice: string) =>
      expect.stringMatching(`^the ${method} method does not apply: the readings stop at .*; ${advice}$`);
    // The fit applies from T = 0.45 on, root time from 0.85, log time from 1.6.
    const fitApplies = both(0.7 / FIT.rate);
    expect(fitApplies.map(english)).toEqual([
      stops("log-of-time", "try the fit to theory, or pick d0 and d100 by hand"),
      stops("root-of-time", "try the fit to theory, or pick d0 and d90 by hand"),
    ]);
    expect(fitApplies.map((one) => translated(one, "de"))).toEqual([
      expect.stringMatching("; die Anpassung an die Theorie versuchen, oder d0 und d100 von Hand festlegen$"),
      expect.stringMatching("; die Anpassung an die Theorie versuchen, oder d0 und d90 von Hand festlegen$"),
    ]);
    const line = BY_HAND.map((t) => 1000 + 100 * Math.log10(t));
    const noBend = "the curve is nowhere clearly steeper than its tail; go on reading, or pick";
    expect(constructionRemarks(reduceIncrement(BY_HAND, line)).map(english)).toEqual([
      expect.stringMatching(`^the log-of-time method .*${noBend} d0 and d100 by hand$`),
      expect.stringMatching(`^the root-of-time method .*${noBend} d0 and d90 by hand$`),
    ]);
    // Where one applies, the other may advise it.
    expect(both(1.2 / FIT.rate).map(english)).toContainEqual(stops("log-of-time", "try the root-of-time method"));
  });

  test("the name of the method left off, a reason has the same advice", () => {
    const line = BY_HAND.map((t) => 1000 + 100 * Math.log10(t));
    const { logTime: log } = reduceIncrement(BY_HAND, line);
    expect(log.ok || english(log.reason.cause!)).toMatch(
      /^no inflection .*; go on reading, or pick d0 and d100 by hand$/,
    );
  });

  test("are none where the readings cannot be used", () => {
    expect(words({ cleaned: badInput(say`row 1`) })).toEqual([]);
  });
});
