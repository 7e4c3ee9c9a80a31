/** Levels are shown to the step of the readings, and to one digit more at most. */
import { levelDecimals, levelShown } from "../../../src/reduction/increment/level-decimals";
import { readingStep } from "../../../src/reduction/numeric/step";
import fc from "../../properties";

test("rounding a level changes it by less than half a step, and by no more than a twentieth of the next power of ten", () =>
  fc.assert(
    fc.property(
      fc.constantFrom(1, 2, 5, 10, 25, 0.5, 0.2, 0.25, 0.1, 0.01, 0.002, 0.0001, 0.00254),
      fc.double({ min: -20_000, max: 20_000, noNaN: true }),
      (step, level) => {
        const decimals = levelDecimals(step)!;
        expect(Math.abs(Number(level.toFixed(decimals)) - level)).toBeLessThanOrEqual(step / 2 + 1e-9);
        // The last decimal is a tenth of the power of ten of the step at the finest, unless there are no decimals.
        if (decimals > 0) expect(10 ** -decimals).toBeGreaterThan(step / 100);
      },
    ),
  ));

test("the step of readings decides, whatever their size", () => {
  const dial = [12_003, 12_045, 12_110, 12_131];
  expect(levelShown(12_064.3812, readingStep(dial, 12_003, 12_131))).toEqual({ digits: "12064.4" });
  expect(levelShown(8.234567, 0.001)).toEqual({ digits: "8.2346" });
  expect(levelShown(8.234567, 0)).toEqual({ digits: "8.235" });
});
