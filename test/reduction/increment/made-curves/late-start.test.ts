/**
 * A clock started up to 20 s after the load, or before it: the fit finds the seconds, and root time, whose straight
 * part is then bent, remarks on it. Curves of theory with creep, a dial of 0.001 mm, t50 of 2 to 20 min; 40 of each
 * kind.
 */
import { reduceIncrement } from "../../../../src/reduction/increment/reduce";
import { BY_HAND, degree, random } from "../../../generators/time-curves";
import { english, joined } from "../../../../src/reduction/message";

const T50 = 0.19673075;
const LOGGER = Array.from({ length: 60 }, (_, i) => 0.1 * (1440 / 0.1) ** (i / 59));

function curve(times: readonly number[], seconds: number, seed: number) {
  const r = random(seed * 7351 + Math.round(10 * seconds));
  const [t50, primary, creep] = [r.logUniform(2, 20), r.logUniform(0.3, 1), r.uniform(0.03, 0.12)];
  const readings = times.map((clock) => {
    const T = (T50 * Math.max(clock + seconds / 60, 0)) / t50;
    const d = degree(T) + (creep / 3) * Math.log10(1 + (T / 1.10135) ** 3);
    return Math.round(1000 * (2 + primary * d + 0.0008 * r.normal())) / 1000;
  });
  return { t50, readings };
}

describe.each([
  ["hand schedule", BY_HAND],
  ["logger", LOGGER],
] as const)("%s", (_, times) => {
  test.each([8, 14, 20, -8, -14, -20])("the load came %d s before the clock", (seconds) => {
    const errors: number[] = [];
    let said = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const { t50, readings } = curve(times, seconds, seed);
      const { fit, rootTime } = reduceIncrement(times, readings);
      errors.push(fit.ok ? Math.abs((100 * fit.value.rate * t50) / T50 - 100) : Infinity);
      const words = english(rootTime.ok ? joined(rootTime.remarks) : rootTime.reason);
      if (/s (before|after) the clock was started: check the time zero/.test(words)) said++;
    }
    errors.sort((a, b) => a - b);
    // Bands as in the scenario "time zero off by 2 to 6 s" of the generator: 12 % at most; here 90 in 100 within 3 %.
    expect(errors[35]).toBeLessThan(3);
    expect(said).toBeGreaterThanOrEqual(36);
  });
});

test("a clock started with the load gets no remark", () => {
  let said = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const { fit } = reduceIncrement(BY_HAND, curve(BY_HAND, 0, seed).readings);
    if (fit.ok && fit.value.timeZero !== 0) said++;
  }
  expect(said).toBeLessThanOrEqual(2);
});
