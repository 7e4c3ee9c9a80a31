/** The steepest tangent: on the smooth curve, and by readings. */
import { smoothCurve } from "../../../../src/reduction/increment/constructions/smooth-curve";
import { steepestTangent, tangentOfReadings } from "../../../../src/reduction/increment/constructions/tangent";
import type { Picks } from "../../../../src/reduction/increment/constructions/picks";
import { curveAt } from "../../../../src/reduction/increment/fit/model";
import type { Series } from "../../../../src/reduction/increment/readings";
import { english } from "../../../../src/reduction/message";
import { BY_HAND } from "../../../generators/time-curves";
import { exact, FIT, seriesOf } from "./exact-load";

describe("on the smooth curve", () => {
  const curve = smoothCurve(exact(), FIT);

  test("it stands at the inflection of theory, T = 0.404, where U rises by 0.688 a log cycle", () => {
    const { time, slope, reading, from, to } = steepestTangent(curve, FIT, 0.1, 1440);
    // Source: Terzaghi's series, calculated; over the short reach of the slope it is 1 % less.
    expect((time * FIT.rate) / 0.404).toBeCloseTo(1, 1);
    expect(slope / 400).toBeCloseTo(0.688, 1);
    expect(reading).toBeCloseTo(curveAt(FIT, time), 9);
    expect([Math.log10(time / from), Math.log10(to / time)].map((one) => Number(one.toFixed(9)))).toEqual([0.12, 0.12]);
  });

  test("no slope within half a log cycle of the inflection is greater", () => {
    const { slope } = steepestTangent(curve, FIT, 0.1, 1440);
    for (let k = -12; k <= 12; k++)
      expect(curve.slope((0.40418 / FIT.rate) * 10 ** (k / 20))).toBeLessThanOrEqual(slope);
  });

  test("it is sought between the first and the last reading", () => {
    expect(steepestTangent(curve, FIT, 30, 1440).time).toBeGreaterThanOrEqual(30);
    expect(steepestTangent(curve, FIT, 30, 1440).time).toBeLessThan(30 * 10 ** 0.05);
    expect(steepestTangent(curve, FIT, 0.1, 8).time).toBeLessThanOrEqual(8);
    expect(steepestTangent(curve, FIT, 0.1, 8).time).toBeGreaterThan(8 / 10 ** 0.05);
  });

  test("readings that fall have the tangent that falls most", () => {
    const falling = { ...FIT, primary: -400, tail: -20 };
    const { slope, time } = steepestTangent(smoothCurve(exact(BY_HAND, falling), falling), falling, 0.1, 1440);
    expect(slope / -400).toBeCloseTo(0.688, 1);
    expect((time * FIT.rate) / 0.404).toBeCloseTo(1, 1);
  });
});

describe("by readings", () => {
  const of = (series: Series, picks: Picks = {}, fit = FIT) => {
    const found = tangentOfReadings(series, fit, picks);
    return found.ok ? found.value : `${found.fault}: ${english(found.reason)}`;
  };
  /** 10 a log cycle, and 100 from 4 to 30 min. */
  const BENT = seriesOf(BY_HAND, (t) => 10 * Math.log10(t) + 90 * Math.log10(Math.min(Math.max(t, 4), 30) / 4));

  test("it is the line through three readings over half a cycle that is steepest, and of equal ones the first", () => {
    expect(of(BENT)).toMatchObject({ from: 4, to: 15 });
    expect(of(BENT)).toMatchObject({ slope: expect.closeTo(100, 9) });
    const found = of(BENT);
    if (typeof found === "string") throw new Error(found);
    // The point is the mean of the readings on log time.
    expect(found.time).toBeCloseTo((4 * 8 * 15) ** (1 / 3), 9);
    expect(found.reading).toBeCloseTo(10 * Math.log10(found.time) + 90 * Math.log10(found.time / 4), 9);
    const falling = { ...BENT, readings: BENT.readings.map((d) => -d) };
    expect(of(falling, {}, { ...FIT, primary: -400 })).toMatchObject({ from: 4, to: 15 });
  });

  test("readings that nowhere move with the load have none", () => {
    expect(of(BENT, {}, { ...FIT, primary: -400 })).toBe(
      "method: the log-of-time method does not apply: no three readings show a steepest part; try the root-of-time method",
    );
    expect(of(seriesOf([1, 2], (t) => t))).toMatch(/^method: .* no three readings show a steepest part/);
    expect(of(seriesOf(BY_HAND, () => 5))).toMatch(/^method: .* no three readings show a steepest part/);
  });

  test("a picked span replaces it; an end that is not picked is that of the steepest line", () => {
    expect(of(BENT, { tangent_from: 0.5, tangent_to: 4 })).toMatchObject({ from: 0.5, to: 4 });
    expect(of(BENT, { tangent_from: 0.5, tangent_to: 4 })).toMatchObject({ slope: expect.closeTo(10, 9) });
    expect(of(BENT, { tangent_from: 2 })).toMatchObject({ from: 2, to: 15 });
    expect(of(BENT, { tangent_to: 30 })).toMatchObject({ from: 4, to: 30 });
  });

  test("a picked span with fewer than two readings, or against the movement, is refused", () => {
    expect(of(BENT, { tangent_from: 4, tangent_to: 7 })).toBe(
      "input: the picked tangent (4 to 7 min) holds 1 reading: it needs 2",
    );
    expect(of(BENT, { tangent_from: 5, tangent_to: 7 })).toBe(
      "input: the picked tangent (5 to 7 min) holds no readings: it needs 2",
    );
    expect(of(BENT, { tangent_from: 480, tangent_to: 1440 }, { ...FIT, primary: -400 })).toBe(
      "input: the picked tangent (480 to 1440 min) runs against the readings: check the picks",
    );
    expect(
      of(
        seriesOf(BY_HAND, () => 5),
        { tangent_from: 4, tangent_to: 30 },
      ),
    ).toMatch(/runs against the readings/);
  });
});
