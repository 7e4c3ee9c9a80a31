/**
 * One curve in other units gives the same answer: times in another unit, readings shifted, mirrored or in another unit.
 *
 * On curves of every scenario of the generator, with either procedure: the answers agree to a millionth, and if one
 * curve is refused the other is too.
 */
import fc from "../../../properties";
import { PROCEDURES, type Procedure } from "../../../../src/reduction/increment/constructions/procedure";
import { reduceIncrement } from "../../../../src/reduction/increment/reduce";
import type { Outcome } from "../../../../src/reduction/outcome";
import { SCENARIOS, type TimeCurve } from "../../../generators/time-curves";

/** A reading of 0 is a blank; the logger at a steady rate has up to 50,000 readings, and is tested in one case only. */
const CURVES = SCENARIOS.filter(({ name }) => name !== "logger at a steady rate");

/** Converts the answers of the changed curve back to those of the curve. */
interface Back {
  readonly time: (t: number) => number;
  readonly reading: (d: number) => number;
}
const unchanged = (value: number): number => value;

interface Answers {
  readonly times: readonly number[];
  readonly readings: readonly number[];
}

const answersOf = <T>(outcome: Outcome<T>, read: (value: T) => Answers): Answers | string =>
  outcome.ok ? read(outcome.value) : outcome.fault;

function reduced(times: readonly number[], readings: readonly number[], procedure: Procedure) {
  const { fit, logTime, rootTime } = reduceIncrement(times, readings, {}, procedure);
  return [
    answersOf(fit, ({ rate, rateLow, rateHigh, d0, d100 }) => ({
      times: [1 / rate, 1 / rateLow, 1 / rateHigh],
      readings: [d0, d100],
    })),
    answersOf(logTime, ({ t50, t100, d0, d100 }) => ({ times: [t50, t100], readings: [d0, d100] })),
    answersOf(rootTime, ({ t90, d0, d100 }) => ({ times: [t90], readings: [d0, d100] })),
  ];
}

function expectSame(curve: TimeCurve, changed: { times: number[]; readings: number[] }, back: Back): void {
  const travel = Math.max(...curve.readings) - Math.min(...curve.readings);
  for (const procedure of PROCEDURES) {
    const before = reduced(curve.times, curve.readings, procedure);
    const after = reduced(changed.times, changed.readings, procedure);
    before.forEach((one, k) => {
      const other = after[k];
      if (typeof one === "string" || typeof other === "string") {
        expect(other).toBe(one);
        return;
      }
      one.times.forEach((t, i) => {
        const again = back.time(other.times[i]);
        if (t !== again) expect(Math.abs(again / t - 1)).toBeLessThan(1e-6);
      });
      one.readings.forEach((d, i) => expect(Math.abs(back.reading(other.readings[i]) - d) / travel).toBeLessThan(1e-6));
    });
  }
}

const curves = fc
  .record({ scenario: fc.constantFrom(...CURVES), seed: fc.integer({ min: 1, max: 1e6 }) })
  .map(({ scenario, seed }) => scenario.make(seed))
  .filter(({ readings }) => readings.every((d) => d !== 0));

test("times k times as long give times k times as long, so that cv is 1/k of it", () => {
  fc.assert(
    fc.property(curves, fc.constantFrom(60, 1440, 1 / 60, 1 / 1440, 7.3), (curve, k) =>
      expectSame(
        curve,
        { times: curve.times.map((t) => k * t), readings: curve.readings },
        { time: (t) => t / k, reading: unchanged },
      ),
    ),
    { numRuns: 60 },
  );
});

test("readings from another zero give d0 and d100 from that zero, and the same times", () => {
  fc.assert(
    fc.property(curves, fc.double({ min: 10, max: 50, noNaN: true }), (curve, zero) =>
      expectSame(
        curve,
        { times: curve.times, readings: curve.readings.map((d) => d + zero) },
        { time: unchanged, reading: (d) => d - zero },
      ),
    ),
    { numRuns: 60 },
  );
});

test("a dial that runs the other way gives the same times", () => {
  fc.assert(
    fc.property(curves, fc.double({ min: 20, max: 50, noNaN: true }), (curve, zero) =>
      expectSame(
        curve,
        { times: curve.times, readings: curve.readings.map((d) => zero - d) },
        { time: unchanged, reading: (d) => zero - d },
      ),
    ),
    { numRuns: 60 },
  );
});

test("readings in another unit give the same times", () => {
  fc.assert(
    fc.property(curves, fc.constantFrom(1 / 25.4, 0.1, 1000), (curve, k) =>
      expectSame(
        curve,
        { times: curve.times, readings: curve.readings.map((d) => k * d) },
        { time: unchanged, reading: (d) => d / k },
      ),
    ),
    { numRuns: 60 },
  );
});

/** Curves that once gave another answer: with two equally steep lines, or with a time zero counted in seconds. */
test.each([
  ["much secondary compression", 1007],
  ["swelling", 1008],
  ["dial of 0.0001 in", 1008],
  ["repeated and out of order", 1010],
  ["time zero off by 2 to 6 s", 1003],
  ["time zero off by 2 to 6 s", 1008],
])("%s, %d: in seconds, and mirrored", (name, seed) => {
  const curve = SCENARIOS.find((scenario) => scenario.name === name)!.make(seed);
  const seconds = curve.times.map((t) => 60 * t);
  expectSame(curve, { times: seconds, readings: curve.readings }, { time: (t) => t / 60, reading: unchanged });
  const mirrored = curve.readings.map((d) => 12.345 - d);
  expectSame(curve, { times: curve.times, readings: mirrored }, { time: unchanged, reading: (d) => 12.345 - d });
});
