/**
 * Readings that follow the curve are written without a question; misread and mistyped readings are questioned. Truth:
 * made curves and printed records.
 */
import { english } from "../../../src/reduction/message";
import { offCurve } from "../../../src/reduction/increment/off-curve";
import { reduceIncrement } from "../../../src/reduction/increment/reduce";
import { SCENARIOS, type TimeCurve } from "../../generators/time-curves";
import printed from "../../published/data/time-curves.json";

interface Record {
  readonly times: readonly number[];
  readonly readings: readonly number[];
}

/** For each reading from the third on: true if it is questioned, either as read or with an error added. */
function asked({ times, readings }: Record, slip = 0): boolean[] {
  const whole = Math.max(...readings) - Math.min(...readings);
  return times.slice(2).map((time, index) => {
    const count = index + 2;
    const soFar = reduceIncrement(times.slice(0, count), readings.slice(0, count));
    return offCurve(soFar, time, (readings[count] ?? NaN) + slip * whole) !== undefined;
  });
}

const share = (answers: readonly boolean[]): number => answers.filter(Boolean).length / answers.length;

/** Kinds of records that are read by hand without a fault in them. */
const SOUND = [
  "exact theory with creep, hand schedule",
  "dial of 0.0001 in",
  "dial of 0.01 mm",
  "much secondary compression",
  "large load ratio",
  "large initial compression",
  "fast, few early readings",
  "slow for 24 h",
  "swelling",
  "dial that runs backwards",
  "13 hand readings, inch dial",
];
const made = (name: string): TimeCurve[] => {
  const scenario = SCENARIOS.find((one) => one.name === name);
  if (!scenario) throw new Error(`no such scenario: ${name}`);
  return [41, 42, 43, 44].map((seed) => scenario.make(seed));
};

test("of the sound readings of eleven kinds of records, at most one in a hundred is questioned", () => {
  expect(share(SOUND.flatMap(made).flatMap((curve) => asked(curve)))).toBeLessThanOrEqual(0.01);
});

test.each([-0.5, 0.5])(
  "of readings that are wrong by half the whole movement (%s), three in four are questioned",
  (slip) => {
    expect(share(SOUND.flatMap(made).flatMap((curve) => asked(curve, slip)))).toBeGreaterThan(0.75);
  },
);

test.each([
  ["das11_11", printed.das11_11.minutes, printed.das11_11.inches],
  ["holtzKovacs9", printed.holtzKovacs9.minutes, printed.holtzKovacs9.dial],
  ["heriotWatt13", printed.heriotWatt13.minutes, printed.heriotWatt13.thickness],
  ["powrie4_4", printed.powrie4_4.minutes, printed.powrie4_4.settlement],
])("no reading of the printed record %s (source in the data) is questioned", (_, times, readings) => {
  expect(asked({ times, readings })).not.toContain(true);
});

test("two swapped digits in a printed record are questioned, and the expected range is given", () => {
  const { minutes, inches } = printed.das11_11;
  const soFar = reduceIncrement(minutes.slice(0, 10), inches.slice(0, 10));
  expect(inches[10]).toBe(0.1936);
  const doubt = offCurve(soFar, 60, 0.1396);
  expect(doubt && english(doubt)).toMatch(
    /^the reading 0\.1396 lies off the curve: at 60 min about 0\.1\d+ to 0\.[12]\d+ is expected/,
  );
});

test("the first two readings are never questioned", () => {
  expect(offCurve(reduceIncrement([], []), 0, 5000)).toBeUndefined();
  expect(offCurve(reduceIncrement([0], [500]), 0.1, 5000)).toBeUndefined();
});
