/** Loads as masses, and the force of a load cell. */
import fc from "../properties";
import { cellStress, changeOfMasses, hangingStress, nearestMasses } from "../../src/reduction/frame-masses";
import { hangerMass } from "../../src/reduction/loading";
import { english } from "../../src/reduction/message";
import type { Outcome } from "../../src/reduction/outcome";

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};

test("the stress of the mass that a stress needs is that stress", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 3200, noNaN: true }),
      fc.double({ min: 35, max: 113, noNaN: true }),
      fc.constantFrom(1, 5, 9.8, 10, 11),
      fc.constantFrom(0, 0.2),
      (stress, diameter, lever, cap) => {
        const mass = must(hangerMass(stress, diameter, lever, cap));
        expect(must(hangingStress(mass, diameter, lever, cap)) / stress).toBeCloseTo(1, 9);
      },
    ),
  );
});

test("the nearest combination is as near as any, by all subsets", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 40 }), { maxLength: 9 }),
      fc.integer({ min: 0, max: 200 }),
      (quarters, wantedQuarters) => {
        const [masses, wanted] = [quarters.map((q) => q / 4), wantedQuarters / 4];
        const found = must(nearestMasses(wanted, masses));
        let [least, fewest] = [Infinity, Infinity];
        for (let subset = 0; subset < 2 ** masses.length; subset++) {
          const taken = masses.filter((_, i) => subset & (1 << i));
          const off = Math.abs(taken.reduce((sum, mass) => sum + mass, 0) - wanted);
          if (off < least - 1e-9 || (off < least + 1e-9 && taken.length < fewest))
            [least, fewest] = [Math.min(off, least), taken.length];
        }
        expect(Math.abs(found.sum - wanted)).toBeCloseTo(least, 9);
        expect(found.masses).toHaveLength(fewest);
        expect(found.masses.reduce((sum, mass) => sum + mass, 0)).toBeCloseTo(found.sum, 9);
        // No mass hangs oftener than there is of it.
        expect(changeOfMasses(masses, found.masses).on).toEqual([]);
      },
    ),
    { numRuns: 200 },
  );
});

test("a mass on the hanger may be zero, not less; diameter and lever must be above zero", () => {
  expect(must(hangingStress(0, 63.5, 10, 0.5))).toBeGreaterThan(0);
  expect(hangingStress(-0.1, 63.5).ok).toBe(false);
  expect(hangingStress(1, 0).ok).toBe(false);
  expect(hangingStress(1, 63.5, 0).ok).toBe(false);
});

test("the combination hangs from the greatest mass, and a change names what goes on and what comes off", () => {
  expect(must(nearestMasses(8, [1, 2, 5, 2])).masses).toEqual([5, 2, 1]);
  expect(must(nearestMasses(1, Array<number>(40).fill(1)))).toEqual({ masses: [1], sum: 1 });
  expect(must(nearestMasses(5, []))).toEqual({ masses: [], sum: 0 });
  expect(changeOfMasses([5, 2, 2], [2, 1, 5])).toEqual({ on: [1], off: [2] });
  expect(changeOfMasses([2, 2], [2, 2])).toEqual({ on: [], off: [] });
});

test("a mass of zero, and more masses than a frame has, are refused", () => {
  expect(nearestMasses(1, [1, 0]).ok).toBe(false);
  expect(nearestMasses(1, Array<number>(41).fill(1)).ok).toBe(false);
});

// Definition: 1250 - 50 units of 0.5 N are 600 N on the 3166.92 mm2 of a ring of 63.5 mm: 189.459 kPa.
test("the stress of a load cell is its force over the area", () => {
  expect(must(cellStress(1250, 50, 0.5, 63.5))).toBeCloseTo(600 / ((Math.PI * 63.5 ** 2) / 4 / 1000), 9);
  expect(cellStress(40, 50, 0.5, 63.5).ok).toBe(false);
  expect(cellStress(50, 50, 0.5, 63.5).ok).toBe(false);
  expect(cellStress(60, 50, -0.5, 63.5).ok).toBe(false);
  expect(cellStress(60, 50, 0.5, 0).ok).toBe(false);
});

test("a load cell without a calibration factor, or a specimen without a diameter, is named", () => {
  const said = (factor: number, diameter: number) => {
    const found = cellStress(1250, 50, factor, diameter);
    return found.ok ? "answered" : english(found.reason);
  };
  expect(said(0, 63.5)).toBe("the calibration factor is blank or zero: enter a number greater than zero");
  expect(said(0.5, 0)).toBe("the diameter is blank or zero: enter a number greater than zero");
  expect(said(0.5, 63.5)).toBe("answered");
});
