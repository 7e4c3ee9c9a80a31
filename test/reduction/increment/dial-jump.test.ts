/** A dial that was reset or touched while the load stood, on made curves of theory with creep, read to 0.001. */
import { logTimeLines, rootTimeLines } from "../../../src/reduction/increment/constructions/lines";
import { secondarySlope } from "../../../src/reduction/increment/constructions/secondary";
import { offCurve } from "../../../src/reduction/increment/off-curve";
import { progress } from "../../../src/reduction/increment/progress";
import { reduceIncrement, constructionRemarks } from "../../../src/reduction/increment/reduce";
import { suggestMethod } from "../../../src/reduction/increment/suggest";
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
    expect(words[1]).toBe(
      "the fit and the constructions leave the jump out: d0 to d100 are readings of the dial before it",
    );
    expect(words.join("; ")).not.toMatch(/time zero|left out as a wrong reading/);
    expect(fit.value.rate / (0.19673075 / t50)).toBeGreaterThan(0.97);
    expect(fit.value.rate / (0.19673075 / t50)).toBeLessThan(1.03);
    expect(Math.abs(fit.value.d100 - 4.4)).toBeLessThan(0.012);
    expect(said(increment)).not.toMatch(/time zero/);
  });
});

describe("the constructions leave the jump out", () => {
  const dense = Array.from({ length: 40 }, (_, i) => 0.1 * 14400 ** (i / 39));
  const primary = (t: number) => 5 - 0.6 * degree((0.19673075 * t) / 10) - 0.02 * Math.log10(1 + t / 56);
  const made = (by: number, after: number, procedure: "aided" | "drawn") =>
    reduceIncrement(dense, rounded(dense.map((t) => primary(t) + (t > after ? by : 0))), {}, procedure);

  test.each(["aided", "drawn"] as const)(
    "%s: d0, d100 and the times are those of the record without the jump",
    (way) => {
      const plain = made(0, 0, way);
      if (!plain.logTime.ok || !plain.rootTime.ok) throw new Error("both must apply");
      for (const by of [-0.08, 0.08, 1.5])
        for (const after of [2, 20, 200]) {
          const { logTime, rootTime, jump } = made(by, after, way);
          if (!logTime.ok || !rootTime.ok) throw new Error("both must apply");
          expect(Math.abs(jump!.by - by)).toBeLessThan(0.004);
          for (const name of ["d0", "d50", "d100"] as const)
            expect(Math.abs(logTime.value[name] - plain.logTime.value[name])).toBeLessThan(0.012);
          for (const name of ["d0", "d90", "d100"] as const)
            expect(Math.abs(rootTime.value[name] - plain.rootTime.value[name])).toBeLessThan(0.012);
          expect(Math.abs(Math.log(logTime.value.t50 / plain.logTime.value.t50))).toBeLessThan(0.03);
          expect(Math.abs(Math.log(rootTime.value.t90 / plain.rootTime.value.t90))).toBeLessThan(0.03);
          expect(said(made(by, after, way))).not.toMatch(/times that by|differ by/);
        }
    },
  );

  test("the readings of the record stay, and the lines have those after the jump moved back beside them", () => {
    const { cleaned, logTime, rootTime, jump } = made(0.3, 20, "aided");
    if (!cleaned.ok || !logTime.ok || !rootTime.ok) throw new Error("both must apply");
    const raw = rounded(dense.map((t) => primary(t) + (t > 20 ? 0.3 : 0)));
    expect(cleaned.value.series.readings).toEqual(raw);
    for (const [lines, x] of [
      [logTimeLines(cleaned.value, logTime.value, jump), (t: number) => t],
      [rootTimeLines(cleaned.value, rootTime.value, jump), Math.sqrt],
    ] as const) {
      const of = (label: string) => lines.find((line) => line.label === label)!.points;
      expect(of("readings").map(([, reading]) => reading)).toEqual(raw);
      const later = dense.flatMap((t, i) => (t > 20 ? [[x(t), raw[i]! - jump!.by]] : []));
      expect(of("readings less the jump")).toEqual(later);
    }
    const plain = made(0, 0, "aided");
    if (!plain.cleaned.ok || !plain.logTime.ok) throw new Error("log time must apply");
    expect(logTimeLines(plain.cleaned.value, plain.logTime.value).map(({ label }) => label)).not.toContain(
      "readings less the jump",
    );
  });

  test("a tail that holds the jump has no slope; a tail after the jump has", () => {
    const slopeOf = (after: number) => {
      const { logTime } = made(-0.08, after, "aided");
      if (!logTime.ok) throw new Error(english(logTime.reason));
      const { tailSlope, noTailSlope } = logTime.value;
      return tailSlope ?? english(noTailSlope!);
    };
    expect(slopeOf(400)).toMatch(/^the readings jump by -0\.0[78]/);
    expect(slopeOf(5)).toBeCloseTo(-0.02, 2);
  });

  test("the slope of a span after the jump is positive in the direction of the movement, whichever way the dial jumped", () => {
    for (const by of [-1.5, 1.5]) {
      const slope = secondarySlope(made(by, 20, "aided"), 300, 1440);
      expect(slope.ok && slope.value).toBeCloseTo(0.018, 3);
    }
  });

  test("a pick that is a reading of the dial after the jump is refused with the jump", () => {
    const readings = rounded(dense.map((t) => primary(t) + (t > 20 ? 1.5 : 0)));
    const { logTime } = reduceIncrement(dense, readings, { d100: 5.9 });
    expect(logTime.ok ? "" : `${logTime.fault}: ${english(logTime.reason)}`).toMatch(
      /^input: the readings jump by 1\.5 .*; the fit and the constructions leave the jump out: d0 to d100 are readings of the dial before it; the picked d100 \(5\.9\) lies outside the readings/,
    );
  });

  test("where both constructions refuse, the jump is said once, and then the reason of each", () => {
    const until = dense.filter((t) => t < 18);
    const increment = reduceIncrement(until, rounded(until.map((t) => primary(t) + (t > 3 ? 0.3 : 0))));
    const suggested = suggestMethod(increment);
    const reasons =
      /^(neither construction applies: )?the readings jump by 0\.3 .* contains the jump; the fit .* before it; the log-of-time method does not apply: .*; the root-of-time method does not apply: /;
    for (const words of [said(increment), suggested.ok ? "" : english(suggested.reason)]) {
      expect(words).toMatch(reasons);
      expect(words.match(/the readings jump/g)).toHaveLength(1);
    }
  });

  test("a method that refuses the readings without the jump says the jump and its own reason", () => {
    const until = dense.filter((t) => t < 40);
    const { fit, logTime } = reduceIncrement(until, rounded(until.map((t) => primary(t) + (t > 3 ? 0.3 : 0))));
    expect(fit.ok).toBe(true);
    expect(logTime.ok ? "" : english(logTime.reason)).toMatch(
      /^the readings jump by 0\.3\d* at .* contains the jump; the fit .* before it; the log-of-time method does not apply: the readings stop at/,
    );
  });

  test("a load that is still on is foretold without the jump, and the next reading is expected on the dial as it stands", () => {
    const until = dense.filter((t) => t < 60);
    const load = (by: number) => reduceIncrement(until, rounded(until.map((t) => primary(t) + (t > 6 ? by : 0))));
    const [plain, jumped] = [progress(load(0), "log time"), progress(load(0.3), "log time")];
    if (!plain.ok || !jumped.ok || !plain.value.expected.ok || !jumped.value.expected.ok)
      throw new Error("must answer");
    const [a, b] = [plain.value.expected.value, jumped.value.expected.value];
    expect(Math.abs(Math.log(a.t100 / b.t100))).toBeLessThan(0.1);
    expect(Math.abs(a.U - b.U)).toBeLessThan(0.02);
    expect(jumped.remarks.map(english).join("; ")).toMatch(/the fit and the constructions leave the jump out/);
    expect(offCurve(load(0.3), 120, primary(120) + 0.3)).toBeUndefined();
    expect(offCurve(load(0.3), 120, primary(120))).toBeDefined();
    // The jump is no movement of the specimen: it widens nothing.
    expect(offCurve(load(1.5), 120, primary(120) + 1.5)).toBeUndefined();
    expect(offCurve(load(1.5), 120, primary(120) + 1.6)).toBeDefined();
  });
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
