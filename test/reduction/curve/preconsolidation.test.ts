/** Distribution of errors over curves with known truth, per scenario; see the generator for what each scenario holds. */
import fc from "../../properties";
import { makeCurve, RECIPES, type MadeCurve } from "../../generators/compression-curves";
import { compressionIndex } from "../../../src/reduction/curve/indices";
import { testCurve, type Kind } from "../../../src/reduction/curve/shape/points";
import {
  preconsolidation,
  preconsolidationSpread,
  type PreconsolidationOptions,
} from "../../../src/reduction/curve/preconsolidation";
import { METHOD_NAMES } from "../../../src/reduction/curve/method-words";
import { then } from "../../../src/reduction/outcome";
import { english } from "../../../src/reduction/message";
import { inEnglish } from "../../in-english";

const reduce = (
  { stresses, values, kind }: Pick<MadeCurve, "stresses" | "values" | "kind">,
  options?: PreconsolidationOptions,
) => then(testCurve(stresses, values, kind), (test) => preconsolidation(test, options));

const SEEDS = Array.from({ length: 60 }, (_, seed) => seed);
const made = (scenario: string): MadeCurve[] => SEEDS.map((seed) => makeCurve(scenario, seed));
const quantile = (values: number[], q: number): number =>
  [...values].sort((a, b) => a - b)[Math.round(q * (values.length - 1))];

/**
 * Limits of the result over the truth: the 5th percentile is no lower, the median lies between, the 95th percentile is
 * no higher. The truth is the corner of the law; on a rounded bend the construction by its nature reads higher.
 */
const EXPECTED: Record<string, [p5: number, low: number, high: number, p95: number]> = {
  "sharp, exact": [0.9, 0.98, 1.04, 1.12],
  "slight rounding, exact": [0.9, 0.98, 1.06, 1.12],
  "rounding, noise": [0.88, 0.98, 1.08, 1.14],
  "disturbed, wide rounding": [0.85, 1, 1.16, 1.25],
  "loop and unloading": [0.88, 0.98, 1.08, 1.14],
  "swelling at seating": [0.88, 0.97, 1.07, 1.14],
  "sensitive, virgin line bends": [0.93, 0.97, 1.03, 1.06],
  "seven points": [0.88, 0.97, 1.06, 1.12],
  "twelve points": [0.88, 0.98, 1.08, 1.15],
  "load increment ratio 0.5": [0.88, 0.98, 1.07, 1.12],
};

describe.each(Object.entries(EXPECTED))("%s", (scenario, [p5, low, high, p95]) => {
  const read = made(scenario).map((curve) => ({ curve, outcome: reduce(curve) }));
  const accepted = read.flatMap(({ curve, outcome }) => (outcome.ok ? [{ curve, value: outcome.value }] : []));
  const ratios = accepted.map(({ curve, value }) => value.stress / curve.truth.preconsolidation);

  test("every curve gives an answer", () => expect(accepted).toHaveLength(SEEDS.length));

  test("Casagrande's construction over the truth stays within the limits", () => {
    expect(quantile(ratios, 0.05)).toBeGreaterThanOrEqual(p5);
    expect(quantile(ratios, 0.5)).toBeGreaterThanOrEqual(low);
    expect(quantile(ratios, 0.5)).toBeLessThanOrEqual(high);
    expect(quantile(ratios, 0.95)).toBeLessThanOrEqual(p95);
  });

  test("the interval holds the truth in 95 percent of curves, allowing for sixty curves, and is not too wide", () => {
    const held = accepted.filter(
      ({ curve: { truth }, value }) => value.low <= truth.preconsolidation && truth.preconsolidation <= value.high,
    );
    expect(held.length / accepted.length).toBeGreaterThanOrEqual(0.95);
    expect(
      quantile(
        accepted.map(({ value }) => value.high / value.low),
        0.5,
      ),
    ).toBeLessThan(1.5);
  });

  test("Cc is within 5 percent if the virgin line is straight", () => {
    if (scenario === "sensitive, virgin line bends") return;
    const errors = made(scenario)
      .filter(({ law }) => law !== "natural")
      .map((curve) => {
        const index = then(testCurve(curve.stresses, curve.values, curve.kind), (test) => compressionIndex(test));
        return index.ok ? index.value.value / curve.truth.Cc : NaN;
      });
    expect(quantile(errors, 0.05)).toBeGreaterThan(0.95);
    expect(quantile(errors, 0.95)).toBeLessThan(1.05);
  });
});

const remarked = (scenario: string) => made(scenario).map((curve) => ({ curve, outcome: reduce(curve) }));

test("a curve that has not reached yield is always refused", () => {
  for (const { outcome } of remarked("yield not reached"))
    expect(outcome).toMatchObject({ ok: false, fault: "method" });
});

test("a curve with yield before the first load is always refused, and its Cc is given", () => {
  for (const { curve, outcome } of remarked("yield before the first load")) {
    expect(outcome).toMatchObject({ ok: false, fault: "method" });
    if (curve.law === "natural" || curve.truth.Cc < 0.3) continue;
    const index = then(testCurve(curve.stresses, curve.values, curve.kind), (test) => compressionIndex(test));
    expect(index.ok && index.value.value / curve.truth.Cc).toBeCloseTo(1, 1);
  }
});

test("a curve with one virgin point, or with yield in the second increment, is refused, or is near with a remark", () => {
  for (const scenario of ["one virgin point", "yield in the second increment"])
    for (const { curve, outcome } of remarked(scenario))
      if (outcome.ok) {
        expect(outcome.remarks.length).toBeGreaterThan(0);
        expect(outcome.value.stress / curve.truth.preconsolidation).toBeGreaterThan(0.8);
        expect(outcome.value.stress / curve.truth.preconsolidation).toBeLessThan(1.25);
      }
});

test("the other methods are near the truth on ordinary curves", () => {
  const limits: Record<string, [number, number]> = {
    work: [0.9, 1.25],
    bilog: [0.85, 1.25],
    intersection: [0.85, 1.15],
    pacheco_silva: [0.75, 1.1],
  };
  const spreads = ["slight rounding, exact", "rounding, noise", "seven points", "twelve points"].flatMap((scenario) =>
    made(scenario).map((curve) => ({ curve, values: all(curve) })),
  );
  for (const [method, [low, high]] of Object.entries(limits)) {
    const column = METHOD_NAMES.indexOf(method as (typeof METHOD_NAMES)[number]);
    const ratios = spreads.flatMap(({ curve, values }) => (values[column] ?? NaN) / curve.truth.preconsolidation);
    expect(quantile(ratios, 0.05)).toBeGreaterThan(low);
    expect(quantile(ratios, 0.95)).toBeLessThan(high);
  }
});

test("Janbu's modulus gives an answer on fine load steps and refuses doubling steps", () => {
  const fine = made("load increment ratio 0.5").flatMap((curve) => {
    const outcome = reduce(curve, { method: "janbu" });
    return outcome.ok ? [outcome.value.stress / curve.truth.preconsolidation] : [];
  });
  expect(fine.length).toBeGreaterThan(0.9 * SEEDS.length);
  expect(quantile(fine, 0.5)).toBeGreaterThan(0.95);
  expect(quantile(fine, 0.5)).toBeLessThan(1.1);
  expect(inEnglish(reduce(made("rounding, noise")[0], { method: "janbu" }))).toMatchObject({
    ok: false,
    reason: expect.stringContaining("coarser"),
  });
});

const anyCurve = fc.record({
  scenario: fc.constantFrom(...Object.keys(RECIPES)),
  seed: fc.integer({ min: 1000, max: 100_000 }),
});
/** The stress by every method, then the interval. */
function all({ stresses, values, kind }: Pick<MadeCurve, "stresses" | "values" | "kind">): (number | undefined)[] {
  const outcome = then(testCurve(stresses, values, kind), (test) => preconsolidationSpread(test));
  if (!outcome.ok) return [];
  const { methods, low, high } = outcome.value;
  return [...methods.map(({ result }) => (result.ok ? result.value.stress : undefined)), low, high];
}

test("another unit of stress changes only the unit of the answer", () => {
  fc.assert(
    fc.property(anyCurve, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), ({ scenario, seed }, factor) => {
      const curve = makeCurve(scenario, seed);
      const here = all(curve);
      const there = all({ ...curve, stresses: curve.stresses.map((stress) => stress * factor) });
      expect(there).toHaveLength(here.length);
      here.forEach((value, i) => {
        if (value === undefined) expect(there[i]).toBeUndefined();
        else expect(there[i]! / factor / value).toBeCloseTo(1, 6);
      });
    }),
    // The curve once gave 606.79 and 606.77: the search for the best width stopped one step earlier in one unit.
    { numRuns: 30, examples: [[{ scenario: "one virgin point", seed: 20977 }, 0.001]] },
  );
});

test("void ratio and strain give the same stress by every method, and the same Cc after conversion", () => {
  fc.assert(
    fc.property(anyCurve, fc.double({ min: 0.4, max: 3, noNaN: true }), ({ scenario, seed }, e0) => {
      const curve = makeCurve(scenario, seed);
      const strains = curve.kind === "strain" ? curve.values : curve.values.map((e) => (e0 - e) / (1 + e0));
      const voids = curve.kind === "e" ? curve.values : curve.values.map((strain) => e0 - strain * (1 + e0));
      const given = (values: number[], kind: Kind) => ({ stresses: curve.stresses, values, kind });
      const byVoids = all(given(voids, "e"));
      const byStrain = all(given(strains, "strain"));
      expect(byStrain).toHaveLength(byVoids.length);
      byVoids.forEach((value, i) => {
        if (value === undefined) expect(byStrain[i]).toBeUndefined();
        else expect(byStrain[i]! / value).toBeCloseTo(1, 6);
      });
      const [Cc, ratio] = [given(voids, "e"), given(strains, "strain")].map(({ stresses, values, kind }) =>
        then(testCurve(stresses, values, kind), (test) => compressionIndex(test)),
      );
      expect(ratio.ok).toBe(Cc.ok);
      if (Cc.ok && ratio.ok) expect((ratio.value.value * (1 + e0)) / Cc.value.value).toBeCloseTo(1, 4);
    }),
    { numRuns: 30 },
  );
});

test("a flatter drawing reads higher on a rounded bend; the default slope is 1.5", () => {
  const curve = made("disturbed, wide rounding")[0];
  const at = (drawingSlope?: number) => {
    const outcome = reduce(curve, { drawingSlope });
    return outcome.ok ? outcome.value.stress : NaN;
  };
  expect(at(1)).toBeGreaterThan(at(1.5) * 1.005);
  expect(at(1.5)).toBeGreaterThan(at(4) * 1.02);
  expect(at()).toBe(at(1.5));
});

test("picks by hand replace the automatic points and get a remark", () => {
  const curve = made("rounding, noise")[0];
  const automatic = reduce(curve);
  const greatest = curve.stresses[curve.stresses.length - 1];
  const picks = { virgin_from: greatest / 2.1, virgin_to: greatest, greatest_curvature: 100 };
  const picked = reduce(curve, { picks });
  if (!automatic.ok || !picked.ok) throw new Error("refused");
  expect(picked.value.stress).not.toBeCloseTo(automatic.value.stress, 3);
  expect(picked.remarks.map(english)).toEqual(
    expect.arrayContaining([
      expect.stringMatching(/^picked by hand: virgin from = .*, virgin to = /),
      "picked by hand: greatest curvature = 100",
    ]),
  );
  expect(english(picked.value.points)).toContain("virgin");
});

test("the spread holds every method, the median, and a verdict in words", () => {
  const curve = made("load increment ratio 0.5")[0];
  const outcome = then(testCurve(curve.stresses, curve.values, curve.kind), (test) => preconsolidationSpread(test));
  if (!outcome.ok) throw new Error(english(outcome.reason));
  const { methods, median, spread, verdict } = outcome.value;
  expect(methods.map(({ method }) => method)).toEqual(METHOD_NAMES);
  const values = methods.flatMap(({ result }) => (result.ok ? [result.value.stress] : []));
  expect(median).toBeCloseTo(quantile(values, 0.5), -1);
  expect(spread).toBeCloseTo((Math.max(...values) - Math.min(...values)) / median, 12);
  expect(english(verdict)).toMatch(/^(well defined|the methods agree|uncertain|unreliable)/);
});

test("fewer than five first-loading points are refused, fewer than seven get a remark", () => {
  const sharp = (n: number) => ({
    stresses: Array.from({ length: n }, (_, i) => 25 * 2 ** i),
    values: Array.from({ length: n }, (_, i) => 1 - 0.01 * i - 0.09 * Math.max(0, i - 1.5)),
    kind: "e" as const,
  });
  expect(inEnglish(reduce(sharp(4)))).toMatchObject({
    ok: false,
    fault: "method",
    reason: expect.stringContaining("only 4"),
  });
  expect(inEnglish(reduce(sharp(6)))).toMatchObject({
    ok: true,
    remarks: expect.arrayContaining(["only 6 first-loading points"]),
  });
});

test("yield before the second load is refused, and a short test gets a remark", () => {
  const bend = (k: number) => ({
    stresses: Array.from({ length: 8 }, (_, i) => 25 * 2 ** i),
    values: Array.from({ length: 8 }, (_, i) => 1 - 0.01 * i - 0.09 * Math.max(0, i - k)),
    kind: "e" as const,
  });
  expect(reduce(bend(0.8))).toMatchObject({ ok: false, fault: "method" });
  const short = reduce(bend(5.3));
  expect(short.ok && short.remarks.some((remark) => english(remark).includes("load to 4 times"))).toBe(true);
});

test("a method that lies more than 5 percent outside the range says so, and why", () => {
  // Strain per doubled load from 10 kPa on: recompression 0.34 times as steep as the virgin line, which begins at 160.
  const strains = [0, 0.02, 0.04, 0.06, 0.08, 0.138, 0.196, 0.254];
  const curve = { stresses: strains.map((_, i) => 10 * 2 ** i), values: strains, kind: "strain" } as const;
  expect(inEnglish(reduce(curve, { method: "pacheco_silva" }))).toHaveProperty("remarks", [
    "below the range that these points allow: an approximation by construction, which reads low",
  ]);
  expect(inEnglish(reduce(curve))).toHaveProperty("remarks", []);
  // At 0.13 times it reads 2 to 3 percent below the range.
  const flat = [0, 0.008, 0.016, 0.024, 0.032, 0.092, 0.152, 0.212];
  expect(inEnglish(reduce({ ...curve, values: flat }, { method: "pacheco_silva" }))).toHaveProperty("remarks", []);
});
