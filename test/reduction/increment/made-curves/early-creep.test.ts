/**
 * Much creep that begins within primary: every part of the compression creeps from when it came,
 *
 *   d(t) = d0 + primary U(T) + tail integral of log10(1 + (T - s)/a) dU(s),
 *
 * with 0.15 to 0.35 of primary per log cycle and a of 0.3 to 1. With late creep alone the fit gives a cv 10 to 20 % low. The
 * curves with late creep beside them are as before. A dial of 0.001 mm, t50 of 1 to 20 min; 40 curves of each kind.
 */
import { T50, T90 } from "../../../../src/reduction/increment/cv";
import { reduceIncrement } from "../../../../src/reduction/increment/reduce";
import type { Outcome } from "../../../../src/reduction/outcome";
import { BY_HAND, degree, random } from "../../../generators/time-curves";

const T_HALF = 0.19673075;
const LOGGER = Array.from({ length: 46 }, (_, i) => 0.05 * 10 ** (i / 10));

/** The time factors by which a 60th, two 60ths ... of the compression has come, less half a part. */
const PARTS = Array.from({ length: 60 }, (_, k) => {
  let [low, high] = [1e-9, 10];
  while (high / low > 1.0001) {
    const middle = Math.sqrt(low * high);
    if (degree(middle) < (k + 0.5) / 60) low = middle;
    else high = middle;
  }
  return low;
});
const creepOfParts = (a: number) => (T: number) =>
  PARTS.reduce((sum, part) => sum + (T > part ? Math.log10(1 + (T - part) / a) : 0), 0) / PARTS.length;
const creepAtEnd = (T: number): number => Math.log10(1 + (T / 1.10135) ** 4) / 4;

function curve(times: readonly number[], isEarly: boolean, seed: number) {
  const r = random(seed * 6007 + times.length);
  const [t50, primary, tail, a] = [
    r.logUniform(1, 20),
    r.logUniform(0.25, 1.2),
    r.uniform(0.15, 0.35),
    r.uniform(0.3, 1),
  ];
  const creep = isEarly ? creepOfParts(a) : creepAtEnd;
  const readings = times.map((time) => {
    const T = (T_HALF * time) / t50;
    return Math.round(1000 * (2 + primary * (degree(T) + tail * creep(T)) + 0.0006 * r.normal())) / 1000;
  });
  return { t50, readings };
}

/** cv over the true cv, and whether something is said of it; undefined if the method refuses. */
const found = <T>(outcome: Outcome<T>, t50: number, rate: (value: T) => number) =>
  outcome.ok
    ? { error: Math.abs(100 * ((rate(outcome.value) * t50) / T_HALF - 1)), silent: outcome.remarks.length === 0 }
    : undefined;

const CASES = [
  { name: "creep within primary, by hand", times: BY_HAND, isEarly: true, most: 9 },
  { name: "creep within primary, logger", times: LOGGER, isEarly: true, most: 8 },
  { name: "creep past primary, by hand", times: BY_HAND, isEarly: false, most: 2 },
  { name: "creep past primary, logger", times: LOGGER, isEarly: false, most: 1 },
];

describe.each(CASES)("$name", ({ times, isEarly, most }) => {
  const reduced = Array.from({ length: 40 }, (_, seed) => {
    const { t50, readings } = curve(times, isEarly, seed + 1);
    const { fit, logTime, rootTime } = reduceIncrement(times, readings);
    return {
      fit: found(fit, t50, ({ rate }) => rate),
      log: found(logTime, t50, (log) => T50 / log.t50),
      root: found(rootTime, t50, (root) => T90 / root.t90),
    };
  });

  test(`the fit gives a cv within ${most} % in 90 of 100 curves`, () => {
    const errors = reduced.map(({ fit }) => fit?.error ?? Infinity).sort((a, b) => a - b);
    expect(errors[35]).toBeLessThan(most);
  });

  test.each(["fit", "log", "root"] as const)(
    "%s: at most 2 curves have a cv off by more than 15 %% without a remark",
    (method) => {
      const wrong = reduced.filter((one) => one[method]?.silent && one[method].error > 15);
      expect(wrong.length).toBeLessThanOrEqual(2);
    },
  );
});
