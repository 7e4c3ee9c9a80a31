import fc from "../../../properties";
import { consolidationRate, degreeOfConsolidation, timeFactor } from "../../../../src/reduction/increment/fit/terzaghi";
import { english } from "../../../../src/reduction/message";

/**
 * Sums the Fourier series term by term, with compensation, far beyond the needed terms: another way to the same number.
 */
function fourier(T: number): number {
  let sum = 0;
  let lost = 0;
  for (let k = 0; k < 20000; k++) {
    const M2 = ((2 * k + 1) * Math.PI * 0.5) ** 2;
    const term = (2 / M2) * (1 - Math.exp(-M2 * T)) - lost;
    const next = sum + term;
    lost = next - sum - term;
    sum = next;
    if (M2 * T > 50 && k > 100) {
      // The rest of the sum of 2/M^2, whose total is 1.
      let whole = 0;
      for (let j = k; j >= 0; j--) whole += 2 / ((2 * j + 1) * Math.PI * 0.5) ** 2;
      return sum + (1 - whole);
    }
  }
  throw new Error("series too short");
}

const factor = (U: number): number => {
  const T = timeFactor(U);
  if (!T.ok) throw new Error(english(T.reason));
  return T.value;
};

test("U is exact to 1e-12 for T from 1e-5 to 20", () => {
  for (let x = -5; x <= Math.log10(20); x += 0.01) {
    const T = 10 ** x;
    expect(Math.abs(degreeOfConsolidation(T) - fourier(T))).toBeLessThan(1e-12);
  }
});

test("the short-time series is U = 2 sqrt(T/pi) where the first image is below 1e-17", () => {
  for (const T of [1e-12, 1e-8, 1e-4, 0.01]) expect(degreeOfConsolidation(T)).toBe(2 * Math.sqrt(T / Math.PI));
});

test("there is no step where the series change over", () => {
  for (const T of [0.025, 16]) {
    const below = degreeOfConsolidation(T * (1 - 1e-12));
    const above = degreeOfConsolidation(T * (1 + 1e-12));
    expect(Math.abs(above - below)).toBeLessThan(1e-12);
  }
});

test("U is 0 before the load, and 1 long after", () => {
  expect(degreeOfConsolidation(0)).toBe(0);
  expect(degreeOfConsolidation(-1)).toBe(0);
  expect(degreeOfConsolidation(1e9)).toBe(1);
  expect(degreeOfConsolidation(NaN)).toBe(0);
});

test("T is the inverse of U, to 1e-10", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), (U) => {
      expect(Math.abs(degreeOfConsolidation(factor(U)) - U)).toBeLessThan(1e-13);
    }),
    { numRuns: 2000 },
  );
  fc.assert(
    fc.property(fc.double({ min: 1e-9, max: 3, noNaN: true }), (T) => {
      // Beyond T = 3 the digits of U no longer give T to 1e-10: U = 0.9995.
      expect(Math.abs(factor(degreeOfConsolidation(T)) / T - 1)).toBeLessThan(1e-10);
    }),
    { numRuns: 2000 },
  );
});

test("consolidationRate is the derivative of U", () => {
  for (const T of [0.001, 0.02, 0.03, 0.2, 0.8, 3]) {
    const h = 1e-5 * T;
    const slope = (degreeOfConsolidation(T + h) - degreeOfConsolidation(T - h)) / (2 * h);
    expect(Math.abs(consolidationRate(T) / slope - 1)).toBeLessThan(1e-6);
  }
});

test.each([1, 1.2, -0.1, NaN])("there is no time factor at U = %d", (U) => {
  expect(timeFactor(U)).toMatchObject({ ok: false, fault: "input" });
});
