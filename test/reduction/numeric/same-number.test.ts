import { ROUNDING, sameNumber } from "../../../src/reduction/numeric/same-number";

test("numbers that differ by rounding are the same, whichever comes first", () => {
  for (const value of [0.001, 100, -4e6]) {
    const near = value * (1 + 0.9 * ROUNDING);
    const off = value * (1 + 1.2 * ROUNDING);
    expect([sameNumber(value, near), sameNumber(near, value)]).toEqual([true, true]);
    expect([sameNumber(value, off), sameNumber(off, value)]).toEqual([false, false]);
  }
});

test("zero is the same as zero alone", () => {
  expect([sameNumber(0, 0), sameNumber(0, 1e-300), sameNumber(1, -1)]).toEqual([true, false, false]);
});
