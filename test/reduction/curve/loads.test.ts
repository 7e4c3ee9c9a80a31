import fc from "../../properties";
import { loadSteps, putsLoadOn, type LoadStepOptions } from "../../../src/reduction/curve/loads";

const kinds = (stresses: (number | null)[], options?: LoadStepOptions) =>
  loadSteps(stresses, options).map((step) => step?.kind);

test("loads of a test with a loop and unloading, preconsolidation stress 120", () => {
  expect(kinds([25, 50, 100, 200, 400, 200, 50, 100, 400, 800, 200], { preconsolidationStress: 120 })).toEqual([
    "recompression",
    "recompression",
    "recompression",
    "across yield",
    "virgin",
    "unloading",
    "unloading",
    "reload",
    "reload",
    "virgin",
    "unloading",
  ]);
});

test("a load that begins on the reload is not virgin, even if it ends beyond the greatest stress so far", () => {
  expect(kinds([100, 400, 100, 800, 1600], { preconsolidationStress: 90 }).slice(2)).toEqual([
    "unloading",
    "reload",
    "virgin",
  ]);
});

test("a load that ends at the preconsolidation stress is recompression; a load that begins there is virgin", () => {
  expect(kinds([50, 100, 200], { preconsolidationStress: 100 })).toEqual(["recompression", "recompression", "virgin"]);
});

test("without the preconsolidation stress all first loading has one kind", () => {
  expect(kinds([25, 50, 25, 50, 100])).toEqual([
    "first loading",
    "first loading",
    "unloading",
    "reload",
    "first loading",
  ]);
});

test("an equal stress is wetting: water added, or the load left standing", () => {
  expect(kinds([25, 25, 50.1, 50, 100], { preconsolidationStress: 30 })).toEqual([
    "recompression",
    "wetting",
    "across yield",
    "wetting",
    "virgin",
  ]);
  // Inundation under the seating stress.
  expect(kinds([5, 25], { before: 5 })).toEqual(["wetting", "first loading"]);
});

test("rows without a stress are skipped; the first load begins at the seating stress", () => {
  const steps = loadSteps([null, 25, 0, 50], { before: 5 });
  expect(steps.map((step) => step && [step.from, step.to])).toEqual([undefined, [5, 25], undefined, [25, 50]]);
});

test("for all stresses, a virgin load begins at the greatest stress so far and not below yield, and units change nothing", () => {
  const stress = fc.constantFrom(12.5, 25, 50, 100, 200, 400, 800);
  fc.assert(
    fc.property(fc.array(stress, { minLength: 1, maxLength: 12 }), stress, (stresses, preconsolidationStress) => {
      const steps = loadSteps(stresses, { preconsolidationStress });
      steps.forEach((step, i) => {
        const before = stresses.slice(0, i);
        if (step!.kind === "virgin") {
          expect(step!.from).toBe(Math.max(...before));
          expect(step!.from).toBeGreaterThanOrEqual(preconsolidationStress);
          expect(putsLoadOn(step!)).toBe(true);
        }
        if (putsLoadOn(step!)) expect(step!.to).toBeGreaterThan(step!.from);
      });
      const scaled = loadSteps(
        stresses.map((s) => s * 20.885),
        { preconsolidationStress: preconsolidationStress * 20.885 },
      );
      expect(scaled.map((step) => step!.kind)).toEqual(steps.map((step) => step!.kind));
    }),
  );
});
