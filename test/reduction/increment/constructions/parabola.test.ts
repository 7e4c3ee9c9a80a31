/** d0 of log time: the parabola through the early readings, and the 4:1 pair. */
import {
  earlyParabola,
  pairOfReadings,
  pairOnParabola,
  parabolaThrough,
  type Pair,
} from "../../../../src/reduction/increment/constructions/parabola";
import { curveThroughReadings } from "../../../../src/reduction/increment/constructions/smooth-curve";
import type { Series } from "../../../../src/reduction/increment/readings";
import { english, type Message } from "../../../../src/reduction/message";
import { BY_HAND } from "../../../generators/time-curves";
import { exact, FIT, seriesOf, timeAt } from "./exact-load";

const ROOT = (t: number) => 1000 + 50 * Math.sqrt(t);
const HALF = timeAt(0.5);

const early = (series: Series, step = 1) => {
  const remarks: Message[] = [];
  const parabola = earlyParabola(series, FIT, step, remarks);
  return { ...parabola, said: remarks.map(english) };
};

describe("the early parabola", () => {
  test("goes through the readings up to half of primary", () => {
    const bent = seriesOf([0.5, 1, 2, HALF * 0.9999, HALF * 1.0001, 100], (t) => (t > HALF ? 3000 : ROOT(t)));
    const found = early(bent);
    expect([found.d0, found.root].map((one) => Number(one.toFixed(9)))).toEqual([1000, 50]);
    expect(found).toMatchObject({ from: 0.5, to: HALF * 0.9999, said: [] });
  });

  test("on exact theory gives d0 of theory, within 0.05 % of primary", () => {
    expect(Math.abs(early(exact()).d0 - 1000)).toBeLessThan(0.0005 * 400);
  });

  test("goes through two readings at the least, and through all of a record that stops early", () => {
    expect(early(seriesOf([20, 40, 80, 160], ROOT))).toMatchObject({ from: 20, to: 40 });
    expect(early(seriesOf([1, 2, 4], ROOT))).toMatchObject({ from: 1, to: 4 });
  });

  test("leaves out disturbed first readings and says so, if two others remain", () => {
    const late = seriesOf(BY_HAND, (t, i) => ROOT(t) - (i < 2 ? 20 : 0));
    const found = early(late);
    expect(found.from).toBe(0.5);
    expect(found.d0).toBeCloseTo(1000, 9);
    expect(found.said).toEqual([
      expect.stringMatching(/^the first 2 readings, row 1 \(0.1 min\), row 2 \(0.25 min\), stand off /),
    ]);
  });

  test("says how far d0 by single pairs differs, from 3 % of primary and from three divisions on", () => {
    // The pair of 1 and 4 min gives d0 too low by the shift, the pair of 0.25 and 1 min too high by it twice.
    const shifted = (by: number, step: number) =>
      early(
        seriesOf([0.25, 1, 4], (t) => ROOT(t) + (t === 1 ? -by : 0)),
        step,
      ).said;
    expect(shifted(3.9, 1)).toEqual([]);
    expect(shifted(4.1, 1)).toEqual([
      "the 4:1 pairs of the early parabola give d0 from 991.8 to 1004.1, 12 divisions, 3.1 % of primary apart: bedding, slow loading or a late start of the clock",
    ]);
    expect(shifted(5.9, 6)).toEqual([]);
    expect(shifted(6.1, 6)).toEqual([
      expect.stringMatching(/give d0 from 987.8 to 1006.1, 18 in the readings, 4.6 % of/),
    ]);
  });

  test("compares means of neighbouring pairs of a dense record, so that noise alone is not remarked", () => {
    const dense = Array.from({ length: 60 }, (_, i) => 0.1 * (i + 1));
    expect(early(seriesOf(dense, (t, i) => ROOT(t) + (i % 2 ? 5 : -5))).said).toEqual([]);
  });
});

describe("a pair on the parabola", () => {
  test.each([
    [0.1, 8],
    [0.25, 1],
    [1, 2],
    [2, 60],
  ])("is two times as 1 to 4 on it, from %d to %d min where there is room", (from, to) => {
    const { time, fourTimes, reading, readingAtFour } = pairOnParabola({ d0: 1000, root: 50, from, to });
    expect(fourTimes).toBe(4 * time);
    expect(reading).toBeCloseTo(ROOT(time), 9);
    expect(readingAtFour).toBeCloseTo(ROOT(fourTimes), 9);
    expect(time).toBeGreaterThanOrEqual(from);
    if (4 * from <= to) {
      expect(fourTimes).toBeLessThanOrEqual(to);
      // It stands in the middle of the span, on a log scale.
      expect(time * fourTimes).toBeCloseTo(from * to, 9);
    } else expect(time).toBe(from);
  });

  test("the parabola through a pair passes both readings, and d0 lies before the first by their distance", () => {
    const pair: Pair = { time: 1, reading: 1050, fourTimes: 4, readingAtFour: 1080 };
    const { d0, root, from, to } = parabolaThrough(pair);
    expect([d0, root, from, to]).toEqual([1020, 30, 1, 4]);
    const wider = parabolaThrough({ ...pair, fourTimes: 9 });
    expect([wider.d0, wider.root]).toEqual([1035, 15]);
  });
});

describe("a pair of readings", () => {
  const pairOf = (
    series: Series,
    from = 0,
    pair_at?: number,
  ): Partial<Pair & { readonly said: string[]; readonly refused: string }> => {
    const remarks: Message[] = [];
    const curve = curveThroughReadings(series);
    const found = pairOfReadings(series, curve, FIT, from, pair_at === undefined ? {} : { pair_at }, remarks);
    return found.ok
      ? { ...found.value, said: remarks.map(english) }
      : { refused: `${found.fault}: ${english(found.reason)}` };
  };

  test("is the first reading with a reading at four times its time, before half of primary", () => {
    expect(pairOf(exact())).toMatchObject({ time: 0.25, fourTimes: 1, said: [] });
    expect(pairOf(exact(), 0.3)).toMatchObject({ time: 0.5, fourTimes: 2 });
    expect(pairOf(exact(), 0.25)).toMatchObject({ time: 0.25 });
    const series = seriesOf([0.3, 1, 2, 4, 8, 15, 60], ROOT);
    expect(pairOf(series)).toMatchObject({ time: 1, reading: 1050, fourTimes: 4, readingAtFour: 1100 });
  });

  test("counts a time within half a hundredth of four times the other", () => {
    expect(pairOf(seriesOf([0.5, 0.9, 2.009, 100], ROOT))).toMatchObject({ time: 0.5, fourTimes: 2.009 });
    expect(pairOf(seriesOf([0.5, 0.9, 1.991, 100], ROOT))).toMatchObject({ time: 0.5, fourTimes: 1.991 });
    expect(pairOf(seriesOf([0.5, 0.9, 2.011, 3.6, 100], ROOT))).toMatchObject({ time: 0.9, fourTimes: 3.6 });
  });

  test("without such a reading is the first one, and the curve through the readings at four times its time", () => {
    const found = pairOf(seriesOf([0.3, 0.9, 1.5, 100], ROOT));
    expect(found).toMatchObject({ time: 0.3, fourTimes: 1.2, said: [] });
    expect(found.readingAtFour).toBeGreaterThan(ROOT(0.9));
    expect(found.readingAtFour).toBeLessThan(ROOT(1.5));
  });

  test("may reach 60 % of primary, with a remark, and no further", () => {
    const [within, beyond] = [timeAt(0.599) / 4, timeAt(0.601) / 4];
    expect(pairOf(seriesOf([within, 10, 30, 100], ROOT))).toMatchObject({
      time: within,
      said: ["the 4:1 pair reaches 60 % of primary compression: d0 is uncertain"],
    });
    expect(pairOf(seriesOf([beyond, 10, 30, 100], ROOT))).toEqual({
      refused:
        "method: the log-of-time method does not apply: no reading and four times its time lie before half of primary compression; read earlier, or pick d0",
    });
  });

  test("that is picked must lie within the readings with its fourfold time", () => {
    expect(pairOf(exact(), 0, 0.1)).toMatchObject({ time: 0.1, fourTimes: 0.4, said: [] });
    expect(pairOf(exact(), 0, 360)).toMatchObject({ time: 360, fourTimes: 1440 });
    expect(pairOf(exact(), 0, 0.099)).toEqual({
      refused:
        "input: the picked 4:1 pair at 0.099 min and four times it must lie within the readings (0.1 to 1440 min)",
    });
    expect(pairOf(exact(), 0, 361).refused).toMatch(/^input: the picked 4:1 pair at 361 min/);
    expect(pairOf(exact(), 0, 15).said).toEqual(["the 4:1 pair reaches 98 % of primary compression: d0 is uncertain"]);
  });
});
