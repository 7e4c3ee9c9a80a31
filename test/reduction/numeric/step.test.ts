/** Readings are whole numbers of steps of an instrument, counted from any zero, in either sense. */
import fc from "../../properties";
import { readingStep } from "../../../src/reduction/numeric/step";

const stepOf = (readings: readonly number[]) => readingStep(readings, Math.min(...readings), Math.max(...readings));

const STEPS = [0.0001, 0.001, 0.002, 0.01, 1];

const counts = fc.uniqueArray(fc.integer({ min: 0, max: 2000 }), { minLength: 8, maxLength: 30 });

/** The largest whole number that divides every difference. */
function common(values: readonly number[]): number {
  const divisor = (a: number, b: number): number => (b ? divisor(b, a % b) : a);
  const [first = 0, ...others] = values;
  return others.reduce((sofar, value) => divisor(sofar, Math.abs(value - first)), 0);
}

test("the step is the largest number of which all differences are whole multiples, from any zero and in either sense", () => {
  fc.assert(
    fc.property(
      counts,
      fc.constantFrom(...STEPS),
      fc.double({ min: -100, max: 100, noNaN: true }),
      fc.constantFrom(1, -1),
      (values, step, zeroInSteps, sense) => {
        const readings = values.map((count) => (zeroInSteps + sense * count) * step);
        expect(stepOf(readings) / (step * common(values))).toBeCloseTo(1, 9);
      },
    ),
    { numRuns: 500 },
  );
});

test("a dial of 0.001 mm that reads 32.112 less the compression keeps its step", () => {
  const compression = [0.092, 0.112, 0.136, 0.17, 0.218, 0.287, 0.383, 0.498, 0.6];
  expect(stepOf(compression.map((d) => 32.112 - d))).toBeCloseTo(0.001, 12);
});

test("readings that are alike, and readings with more digits than an instrument shows, have no step", () => {
  expect(stepOf([2, 2, 2])).toBe(0);
  expect(stepOf([])).toBe(0);
  expect(stepOf([0, Math.SQRT2, Math.E, Math.PI, 5])).toBe(0);
});

test("a step down to a hundred-thousandth of the range is found, a smaller one is not", () => {
  const readings = (step: number) => [0, step, 3 * step, 500, 1000];
  expect(stepOf(readings(0.02))).toBeCloseTo(0.02, 9);
  expect(stepOf(readings(0.005))).toBe(0);
  expect(stepOf([0, 1, 3, 50_000, 100_000])).toBe(1);
});

test("readings that are off their step by a five-millionth of their range keep the step, by a 300,000th they have none", () => {
  expect(stepOf([0, 1, 2.9998, 7.0002, 500, 1000])).toBeCloseTo(1, 9);
  expect(stepOf([0, 2, 5.0002, 9, 1000])).toBeCloseTo(1, 9);
  expect(stepOf([0, 1, 2.996, 7.003, 500, 1000])).toBe(0);
  // A millionth of the range is no step yet.
  expect(stepOf([0, 1, 1_000_000])).toBe(1_000_000);
});

test.each([
  [[0.13, 0.19, 0.25, 0.36, 0.49], 0.01],
  [[6.6802, 6.65734, 6.62686, 6.58622], 0.00254],
  [[0.0025, -0.0025, 0.0075, 0.005], 0.0025],
  [[19, 18.908, 18.857, 18.805, 18.76], 0.001],
  [[5, 5, 5], 0],
])("the step of %j is %d", (values, step) => expect(stepOf(values)).toBeCloseTo(step, 9));

test("readings of many digits have no step", () => {
  expect(stepOf([0.048163409, 0.061818855, 0.077208207, 0.098972036, 0.32067918])).toBe(0);
});
