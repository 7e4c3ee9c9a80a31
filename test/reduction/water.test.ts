/** The limits and the refusals of the properties of water; test/published/water.test.ts has the figures in print. */
import fc from "../properties";
import { notSaltContent, poreWaterDensity, saltCorrection, waterDensity } from "../../src/reduction/water";
import { inEnglish } from "../in-english";

test("a temperature above 0 and up to 60 C has a density", () => {
  expect([0.01, 60].map((t) => waterDensity(t).ok)).toEqual([true, true]);
  for (const t of [-1, 0, 60.01, 293])
    expect(inEnglish(waterDensity(t))).toMatchObject({
      fault: "input",
      reason: `the temperature is ${t}: give degrees Celsius above 0 and up to 60`,
    });
});

test("a salt content above 0 and up to 0.26 is one; above 1 it is taken for g/kg", () => {
  expect([0.001, 0.26].map(notSaltContent)).toEqual([undefined, undefined]);
  const reason = "enter the mass of salt over that of the pore water as a ratio, 0.035 for sea water";
  for (const s of [-0.1, 0, 0.27, 1])
    expect(inEnglish(notSaltContent(s)!)).toMatchObject({ reason: `the salt content is ${s}: ${reason}` });
  expect(inEnglish(notSaltContent(35)!)).toMatchObject({
    reason: `the salt content is 35: ${reason}, so 0.035 for 35 g/kg`,
  });
});

test("masses that cannot be are refused, with what to check", () => {
  for (const [wet, dry, salt, reason] of [
    [0, 40, 0.035, /^the wet mass is blank/],
    [60, -1, 0.035, /^the dry mass is -1/],
    [60, 40, 0, /^the salt content is 0/],
    [40, 60, 0.035, /^the wet mass \(40\) is not above the dry mass \(60\): .* swapped/],
    [40, 40, 0.035, /^the wet mass \(40\) is not above the dry mass \(40\)/],
    [10, 2.6, 0.26, /^the pore water would hold 2\.6 of salt, more than the dry mass \(2\.6\)/],
    [10, 1, 0.26, /^the pore water would hold 3\.16.* of salt, more than the dry mass \(1\)/],
  ] as const)
    expect(inEnglish(saltCorrection(wet, dry, salt))).toMatchObject({
      fault: "input",
      reason: expect.stringMatching(reason),
    });
});

test("the parts add up to the wet soil, and the salt is its share of the pore water", () => {
  const masses = fc.record({
    dry: fc.double({ min: 1, max: 500, noNaN: true }),
    w: fc.double({ min: 0.05, max: 2, noNaN: true }),
    salt: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
  });
  fc.assert(
    fc.property(masses, ({ dry, w, salt }) => {
      const found = saltCorrection(dry * (1 + w), dry, salt);
      if (!found.ok) throw new Error("refused");
      const { value } = found;
      expect(value.poreWater + value.solids).toBeCloseTo(dry * (1 + w), 9);
      expect(value.salt + value.solids).toBeCloseTo(dry, 9);
      expect(value.salt).toBeCloseTo(salt * value.poreWater, 9);
      expect(value.w).toBeCloseTo(value.poreWater / value.solids, 12);
      expect(value.wUncorrected).toBeCloseTo(w, 9);
      expect(value.w).toBeGreaterThan(w);
    }),
  );
});

test("salt makes the pore water heavier, in proportion", () => {
  expect(poreWaterDensity(0.9975, 0)).toBe(0.9975);
  expect(poreWaterDensity(0.9975, 0.035)).toBeCloseTo(1.024, 12);
});
