/** A dial that was reset or touched while the load stood, on made curves of theory with creep, read to 0.001. */
import { secondarySlope } from "../../../src/reduction/increment/constructions/secondary";
import { progress } from "../../../src/reduction/increment/progress";
import { reduceIncrement, constructionRemarks } from "../../../src/reduction/increment/reduce";
import { english } from "../../../src/reduction/message";
import { BY_HAND, degree, SCENARIOS } from "../../generators/time-curves";

const TIMES = BY_HAND;
const curve = (t50: number) =>
  TIMES.map((t) => {
    const T = (0.19673075 * t) / t50;
    return 5 - 0.6 * degree(T) - 0.02 * Math.log10(1 + T / 1.1);
  });
const rounded = (readings: readonly number[]) => readings.map((reading) => Math.round(1000 * reading) / 1000);
const jumped = (t50: number, by: number, after: number) =>
  reduceIncrement(TIMES, rounded(curve(t50).map((reading, i) => (i >= after ? reading + by : reading))));
const said = (increment: ReturnType<typeof reduceIncrement>) => constructionRemarks(increment).map(english).join("; ");

test.each([2, 0.3, -0.3, -2].flatMap((by) => [5, 8, 11].map((after) => [by, after] as const)))(
  "a jump of %d before reading %i (from 0) is named with its row",
  (by, after) => {
    const increment = jumped(10, by, after);
    const words = said(increment);
    expect(words).toMatch(
      new RegExp(
        `^the readings jump by ${by < 0 ? "-" : ""}[\\d.]+ at row ${after + 1} \\(${TIMES[after]} min\\), and follow`,
      ),
    );
    const size = Number(/jump by (-?[\d.]+)/.exec(words)![1]);
    expect(Math.abs(size - by)).toBeLessThan(0.06);
    for (const outcome of [increment.logTime, increment.rootTime, increment.fit])
      expect(outcome.ok ? outcome.remarks.map(english).join() : english(outcome.reason)).toMatch(
        /the readings jump by/,
      );
  },
);

test("beside a jump no reading is said to go back, and initial compression is that of the readings without the jump", () => {
  for (const initial of [0.15, 0.25])
    for (const after of [5, 8, 11]) {
      const readings = curve(2).map((reading, i) => reading - initial + (i >= after ? 0.3 : 0));
      const { fit } = reduceIncrement([0, ...TIMES], rounded([5, ...readings]));
      const words = fit.ok ? fit.remarks.map(english).join("; ") : english(fit.reason);
      expect(words).toMatch(/the readings jump by/);
      expect(words).not.toMatch(/goes back/);
      // 0.25 at once, 0.6 of primary and 0.06 of creep.
      const share = /initial compression is (\d+) %/.exec(words)?.[1];
      expect(share).toBe(initial < 0.2 ? undefined : "28");
    }
});

test("secondary compression is refused over a span in which the dial jumped, and given before and behind the jump", () => {
  const slopeOf = (after: number, from?: number, to?: number) => {
    const found = secondarySlope(jumped(1, -0.06, after), from, to);
    return found.ok ? found.value : english(found.reason);
  };
  const at = (time: number) => TIMES.indexOf(time);
  for (const [from, to] of [[], [60], [60, 240], [120, 1440]] as const)
    expect(slopeOf(at(240), from, to)).toMatch(/^the readings jump by -0\.06\d* at row \d+ \(240 min\)/);
  for (const [from, to] of [[240], [15, 120]] as const) expect(slopeOf(at(240), from, to)).toBeCloseTo(0.02, 2);
});

test("a load that is still on says that the dial jumped", () => {
  const readings = rounded(curve(10).map((reading, i) => (i >= 6 ? reading + 0.06 : reading)));
  const found = progress(reduceIncrement(TIMES.slice(0, 11), readings.slice(0, 11)), "log time");
  expect(found.ok && found.remarks.map(english).join("; ")).toMatch(
    /the readings jump by 0\.0[56]\d* at row 7 \(\d+ min\)/,
  );
});

/** The jolt of a logger, a tenth of primary, on 80 readings in equal steps of log time. */
describe.each([0.06, -0.06])("a jolt of %d", (by) => {
  const times = Array.from({ length: 80 }, (_, i) => 0.05 * (1440 / 0.05) ** (i / 79));
  const t50 = 10;
  const readings = times.map((t) => {
    const T = (0.19673075 * t) / t50;
    return 5 - 0.6 * degree(T) - 0.02 * Math.log10(1 + T / 1.1);
  });

  test.each([3, 30, 100, 400])("after %d min is named at its reading, and the fit leaves it out", (after) => {
    const index = times.findIndex((t) => t > after);
    const increment = reduceIncrement(times, rounded(readings.map((d, i) => (i < index ? d : d + by))));
    const { fit } = increment;
    if (!fit.ok) throw new Error(english(fit.reason));
    const words = fit.remarks.map(english);
    expect(words[0]).toContain(` at row ${index + 1} (`);
    expect(words[1]).toBe("the fit to theory leaves the jump out, the constructions do not: take cv from the fit");
    expect(words.join("; ")).not.toMatch(/time zero|left out as a wrong reading/);
    expect(fit.value.rate / (0.19673075 / t50)).toBeGreaterThan(0.97);
    expect(fit.value.rate / (0.19673075 / t50)).toBeLessThan(1.03);
    expect(Math.abs(fit.value.d100 - 4.4)).toBeLessThan(0.012);
    expect(said(increment)).not.toMatch(/time zero/);
  });
});

test("a construction that the jump falsifies by more than 15 % says by how much; without a jump that takes 35 %", () => {
  const times = Array.from({ length: 40 }, (_, i) => 0.1 * 14400 ** (i / 39));
  const made = (by: number) =>
    reduceIncrement(times, rounded(times.map((t) => 5 - 0.6 * degree((0.19673075 * t) / 10) + (t > 20 ? by : 0))));
  const { fit, logTime, rootTime } = made(-0.04);
  if (!fit.ok || !logTime.ok || !rootTime.ok) throw new Error("all three must apply");
  const rates = [fit.value.rate, 0.197 / logTime.value.t50, 0.848 / rootTime.value.t90];
  const ratio = Math.max(...rates) / Math.min(...rates);
  expect(ratio).toBeGreaterThan(1.15);
  expect(ratio).toBeLessThan(1.35);
  expect(logTime.remarks.map(english).join("; ")).toContain(` is ${ratio.toFixed(1)} times that by `);
  expect(said(made(0))).not.toMatch(/times that by/);
});

test("a load that came after the clock is no jump", () => {
  const late = (t: number) => degree((0.19673075 * Math.max(t - 0.2, 0)) / 3);
  const times = Array.from({ length: 60 }, (_, i) => 0.05 * (1440 / 0.05) ** (i / 59));
  const words = said(reduceIncrement(times, rounded(times.map((t) => 5 - 0.6 * late(t)))));
  expect(words).toMatch(/the load came \d+ s after the clock was started/);
  expect(words).not.toMatch(/jump/);
});

test("one wrong reading, and a curve without a jump, are none", () => {
  expect(said(jumped(10, 0, 5))).not.toMatch(/jump/);
  const spike = reduceIncrement(TIMES, rounded(curve(10).map((reading, i) => (i === 8 ? reading + 0.3 : reading))));
  expect(said(spike)).not.toMatch(/jump/);
  expect(said(spike)).toMatch(/row 9 \([\d.]+ min\) is left out as a wrong reading/);
});

test("no made curve without a jump is said to jump: every scenario, and curves that depart from theory", () => {
  const scenarios = SCENARIOS.flatMap(({ make }) => Array.from({ length: 12 }, (_, seed) => make(seed + 1)));
  const laws: readonly ((t: number, t50: number) => number)[] = [
    (t, t50) => 1 - Math.exp(-t / t50),
    (t, t50) => t / (t + t50),
    (t, t50) => 0.5 * degree((0.2 * t) / t50) + 0.5 * degree((0.004 * t) / t50),
    (t, t50) => 0.3 * Math.log10(1 + t / t50),
    (t, t50) => (t < t50 ? 0.02 * t : 0.02 * t50 + 0.9 * degree((0.2 * (t - t50)) / t50)),
  ];
  const departing = laws.flatMap((law) =>
    [0.5, 2, 8, 30, 120].map((t50) => ({ times: TIMES, readings: rounded(TIMES.map((t) => 3 + law(t, t50))) })),
  );
  const jumps = [...scenarios, ...departing].filter(({ times, readings }) =>
    said(reduceIncrement(times, readings)).includes("readings jump by"),
  );
  expect(jumps.map(({ readings }) => readings)).toEqual([]);
});
