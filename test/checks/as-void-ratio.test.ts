/** An index of a curve in strain or in void ratio, as the questions compare it with their limits. */
import { asVoidRatio } from "../../src/checks/questions/as-void-ratio";
import type { Reduced } from "../../src/record/reduced-test";

/** A reduced test of which only the kind of its curve and the initial void ratio matter here. */
const reduced = (kind: "e" | "strain" | undefined, e0: number | undefined): Reduced =>
  ({
    curve: kind === undefined ? { ok: false } : { ok: true, value: { kind } },
    specimen: e0 === undefined ? { ok: false } : { ok: true, value: { e0 } },
  }) as unknown as Reduced; // The other fields are not read.

test("Cc of a curve in strain is its slope times 1 + e0; that of a curve in void ratio is its slope", () => {
  expect(asVoidRatio(reduced("strain", 1.5), 0.2)).toBeCloseTo(0.5, 12);
  expect(asVoidRatio(reduced("e", 1.5), 0.2)).toBe(0.2);
  expect(asVoidRatio(reduced("e", undefined), 0.2)).toBe(0.2);
});

test("there is none without a curve, nor without e0 where the curve is in strain", () => {
  expect(asVoidRatio(reduced(undefined, 1.5), 0.2)).toBeUndefined();
  expect(asVoidRatio(reduced("strain", undefined), 0.2)).toBeUndefined();
});
