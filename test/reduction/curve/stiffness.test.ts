import fc from "../../properties";
import {
  coefficientOfCompressibility,
  conductivity,
  constrainedModulus,
  volumeCompressibility,
  type Load,
} from "../../../src/reduction/curve/stiffness";
import { english } from "../../../src/reduction/message";
import type { Outcome } from "../../../src/reduction/outcome";

const value = (found: Outcome<number>): number => {
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};
const refusal = (found: Outcome<number>): string =>
  found.ok ? `gave ${found.value}` : `${found.fault}: ${english(found.reason)}`;
const close = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b));

/** A load under which the specimen compresses, or an unloading under which it swells; void ratios and strains of one specimen. */
const loads = fc
  .record({
    e0: fc.integer({ min: 30, max: 300 }).map((part) => part / 100),
    before: fc.integer({ min: 0, max: 100 }).map((part) => part / 1000),
    change: fc.integer({ min: 1, max: 100 }).map((part) => part / 1000),
    stress: fc.integer({ min: 1, max: 1000 }),
    more: fc.integer({ min: 1, max: 1000 }),
    unloaded: fc.boolean(),
  })
  .map(({ e0, before, change, stress, more, unloaded }) => {
    const e = (strain: number) => e0 - strain * (1 + e0);
    const [low, high] = [
      { stress, strain: before },
      { stress: stress + more, strain: before + change },
    ];
    const [from, to] = unloaded ? [high, low] : [low, high];
    const both = { stress: [from.stress, to.stress], initialVoidRatio: e0 } as const;
    const byStrain: Load = { ...both, value: [from.strain, to.strain], kind: "strain" };
    const byVoidRatio: Load = { ...both, value: [e(from.strain), e(to.strain)], kind: "e" };
    return { e0, byStrain, byVoidRatio };
  });

test("void ratio and strain of one specimen give the same av and mv", () => {
  fc.assert(
    fc.property(loads, ({ byStrain, byVoidRatio }) => {
      close(value(coefficientOfCompressibility(byVoidRatio)), value(coefficientOfCompressibility(byStrain)));
      for (const height of ["start", "initial"] as const)
        close(value(volumeCompressibility(byVoidRatio, height)), value(volumeCompressibility(byStrain, height)));
    }),
  );
});

test("mv is av over one plus the void ratio to which its height belongs, M is one over mv, and all are above zero", () => {
  fc.assert(
    fc.property(loads, ({ e0, byVoidRatio }) => {
      const av = value(coefficientOfCompressibility(byVoidRatio));
      expect(av).toBeGreaterThan(0);
      close(value(volumeCompressibility(byVoidRatio)) * (1 + byVoidRatio.value[0]), av);
      close(value(volumeCompressibility(byVoidRatio, "initial")) * (1 + e0), av);
      for (const height of ["start", "initial"] as const)
        close(value(constrainedModulus(byVoidRatio, height)) * value(volumeCompressibility(byVoidRatio, height)), 1);
    }),
  );
});

test("what has no stiffness is refused, and the reason says why", () => {
  const load: Load = { stress: [100, 200], value: [0.9, 0.8], kind: "e" };
  const all = [coefficientOfCompressibility, volumeCompressibility, constrainedModulus];
  const strain: Load = { stress: [100, 200], value: [0.1, 0.05], kind: "strain" };
  for (const one of all) {
    expect(refusal(one({ ...load, stress: [100, 100] }))).toMatch(/^method: the stress is the same before and after/);
    expect(refusal(one({ ...load, value: [0.8, 0.9] }))).toMatch(/^method: the specimen swelled under the load/);
    expect(refusal(one({ ...load, stress: [200, 100] }))).toMatch(/^method: .*compressed as the load was taken off/);
    expect(refusal(one(strain))).toMatch(/^method: the specimen swelled under the load/);
  }
  expect(refusal(constrainedModulus({ ...load, value: [0.9, 0.9] }))).toMatch(/^method: the load did not compress/);
  expect(value(volumeCompressibility({ ...load, value: [0.9, 0.9] }))).toBe(0);
});

test("what needs the initial void ratio says so, and the rest does without it", () => {
  const byStrain: Load = { stress: [100, 200], value: [0.05, 0.1], kind: "strain" };
  expect(refusal(coefficientOfCompressibility(byStrain))).toMatch(
    /^input: av from strain needs the initial void ratio/,
  );
  close(value(volumeCompressibility(byStrain, "initial")), 0.0005);
  const byVoidRatio: Load = { stress: [100, 200], value: [0.9, 0.8], kind: "e" };
  expect(refusal(volumeCompressibility(byVoidRatio, "initial"))).toMatch(/^input: mv on the initial height needs/);
  close(value(coefficientOfCompressibility(byVoidRatio)), 0.001);
});

test("k = cv mv gamma_w, with 9.80665 kN/m3 for water", () => expect(conductivity(1, 1)).toBe(9.80665));
