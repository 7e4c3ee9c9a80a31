import { designParameters, modulusNumber, type DesignInput } from "../../../src/reduction/curve/design";
import { testCurve } from "../../../src/reduction/curve/shape/points";
import { badInput, given, type Outcome } from "../../../src/reduction/outcome";
import { english, say } from "../../../src/reduction/message";
import { inEnglish } from "../../in-english";

const must = <T>(found: Outcome<T>): T => {
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};

// Two straight lines that meet at 160, Cr 0.05, Cc 0.5, with a loop from 640 to 40 and back, and Cs 0.06.
const e = (stress: number) => 1.2 - 0.05 * Math.log10(stress / 10) - 0.45 * Math.max(0, Math.log10(stress / 160));
const down = (from: number, to: number, slope: number) => e(from) + slope * Math.log10(from / to);
const S = [10, 20, 40, 80, 160, 320, 640, 160, 40, 160, 640, 1280, 320, 80];
const E = [
  ...[10, 20, 40, 80, 160, 320, 640].map(e),
  down(640, 160, 0.05),
  down(640, 40, 0.05),
  down(640, 160, 0.05),
  e(640),
  e(1280),
  down(1280, 320, 0.06),
  down(1280, 80, 0.06),
];
const E0 = 1.25;
const STRAIN = E.map((one) => (E0 - one) / (1 + E0));
const byVoidRatio = must(testCurve(S, E, "e"));
const byStrain = must(testCurve(S, STRAIN, "strain"));
const read = (more: Partial<DesignInput> = {}) =>
  designParameters({
    test: byVoidRatio,
    inSituStress: 50,
    increase: 100,
    initialVoidRatio: E0,
    preconsolidationStress: given(160),
    ...more,
  });
const remarks = (more: Partial<DesignInput>): string => {
  const found = read(more);
  return found.ok ? found.remarks.map(english).join("; ") : english(found.reason);
};

test("by void ratio: the two ends of the range, the slopes over 1 + e0, and the values that follow from them", () => {
  const { eInSitu, eFinal, mv, M, CR, RR, SR, modulusNumber: m } = must(read());
  expect(must(eInSitu)).toBeCloseTo(e(50), 12);
  expect(must(eFinal)).toBeCloseTo(e(150), 12);
  expect(must(mv)).toBeCloseTo((e(50) - e(150)) / (1 + e(50)) / 100, 12);
  expect(must(M) * must(mv)).toBeCloseTo(1, 12);
  expect(must(CR).value).toBeCloseTo(0.5 / 2.25, 9);
  expect(must(RR).value).toBeCloseTo(0.05 / 2.25, 9);
  expect(must(SR).value).toBeCloseTo(0.06 / 2.25, 9);
  expect(must(m)).toBeCloseTo((Math.LN10 * 2.25) / 0.5, 7);
});

test("by strain: the same values, where only e needs the initial void ratio", () => {
  const [a, b] = [must(read()), must(read({ test: byStrain }))];
  for (const item of ["eInSitu", "eFinal", "mv", "M", "modulusNumber"] as const)
    expect(must(b[item])).toBeCloseTo(must(a[item]), 7);
  for (const item of ["CR", "RR", "SR"] as const) expect(must(b[item]).value).toBeCloseTo(must(a[item]).value, 9);
  const without = must(read({ test: byStrain, initialVoidRatio: undefined }));
  expect(inEnglish(without.eInSitu)).toMatchObject({
    fault: "input",
    reason: expect.stringContaining("initial void ratio"),
  });
  expect(must(without.mv)).toBe(must(b.mv));
  expect(must(without.CR)).toEqual(must(b.CR));
});

test("the modulus number times the stress is the tangent of the virgin line", () => {
  const [CR, stress, step] = [0.2, 300, 1e-3];
  const strain = CR * Math.log10((stress + step) / stress);
  expect(modulusNumber(CR) * (stress + step / 2)).toBeCloseTo(step / strain, 4);
});

test("without an in-situ stress the slopes are given, and the other values say what is missing", () => {
  const { eInSitu, mv, M, CR } = must(read({ inSituStress: undefined }));
  for (const one of [eInSitu, mv, M])
    expect(inEnglish(one)).toMatchObject({
      fault: "input",
      reason: expect.stringContaining("in-situ stress is blank"),
    });
  expect(CR.ok).toBe(true);
  expect(remarks({ inSituStress: undefined })).toContain("no in-situ stress");
});

test("a stress beyond the curve is refused, and the refusal names it", () => {
  const below = must(read({ inSituStress: 5 }));
  expect(inEnglish(below.beyond)).toMatchObject({
    fault: "method",
    reason: expect.stringMatching(/^the in-situ stress \(5\) lies beyond/),
  });
  expect(below.mv).toEqual(below.beyond);
  expect(below.eFinal.ok).toBe(true);
  const above = must(read({ increase: 1300 }));
  expect(english(above.beyond!.reason)).toMatch(/^the in-situ stress plus the increase \(1350\) lies beyond/);
  expect(above.eInSitu.ok).toBe(true);
});

test("the remark says which part of the increase is virgin", () => {
  expect(remarks({ increase: 200 })).toContain("passes the preconsolidation stress (160)");
  expect(remarks({})).toContain("stays below the preconsolidation stress (160)");
  expect(remarks({ inSituStress: 160, increase: 100 })).toBe("");
  expect(remarks({ inSituStress: 200 })).toContain("OCR below 0.9");
  expect(remarks({ preconsolidationStress: badInput(say`none`) })).toContain("preconsolidation stress is not known");
});

test("if the reload is much stiffer than first loading over the range, the remark says by how much", () => {
  // First loading twice as soft as the reload, up to yield: a disturbed specimen.
  const soft = (stress: number) => e(stress) + 0.05 * Math.max(0, Math.log10(160 / stress));
  const test = must(testCurve(S, [...[10, 20, 40, 80].map(soft), ...E.slice(4)], "e"));
  // Half the slope, on a height that is smaller by (1 + 0.896) / (1 + 1.190).
  expect(remarks({ test })).toMatch(/on the reload mv is 0.58 times that of first loading/);
  expect(remarks({})).not.toContain("on the reload");
  // The reload does not reach stresses below the loop.
  expect(remarks({ test, inSituStress: 20, increase: 50 })).not.toContain("on the reload");
});

test("rows that make no curve are refused", () => {
  const one = must(testCurve([100], [1], "e"));
  expect(read({ test: one })).toMatchObject({ ok: false, fault: "method" });
});

describe("at the edges", () => {
  const exact = (more: Partial<DesignInput>) => {
    const found = read(more);
    return found.ok ? found.remarks.map(english) : [english(found.reason)];
  };
  const BELOW =
    "the increase stays below the preconsolidation stress (160): RR applies, CR and the modulus number do not";
  const PASSES =
    "the increase passes the preconsolidation stress (160): mv and M mix recompression and virgin compression";

  test("an increase that ends at the preconsolidation stress stays below it, and one that begins there is virgin", () => {
    expect(exact({ inSituStress: 60, increase: 100 })).toEqual([BELOW]);
    expect(exact({ inSituStress: 60, increase: 101 })).toEqual([PASSES]);
    expect(exact({ inSituStress: 160, increase: 101 })).toEqual([]);
    expect(exact({ inSituStress: 159, increase: 101 })).toEqual([PASSES]);
  });

  test("what is not known is said: the in-situ stress, the preconsolidation stress, e0", () => {
    expect(exact({ inSituStress: undefined })).toEqual([
      "no in-situ stress: e_in_situ, e_final, mv and M are not given",
    ]);
    expect(exact({ preconsolidationStress: badInput(say`none`) })).toEqual([
      "the preconsolidation stress is not known, nor which part of 50 to 150 is virgin: adopt or give one",
    ]);
    const without = inEnglish(must(read({ test: byStrain, initialVoidRatio: undefined })));
    expect(without.eFinal).toEqual({
      ok: false,
      fault: "input",
      reason: "this needs the initial void ratio too: give it",
    });
    expect(inEnglish(must(read({ inSituStress: undefined })).eFinal)).toEqual({
      ...{ ok: false, fault: "input" },
      reason: "the in-situ stress is blank or zero: enter a number greater than zero",
    });
    // Void ratios without e0 are divided by 1 + e of the first load.
    expect(must(must(read({ initialVoidRatio: undefined })).CR).value).toBeCloseTo(0.5 / (1 + e(10)), 9);
  });

  test("nothing lies beyond the curve unless a stress does", () => {
    expect(must(read()).beyond).toBeUndefined();
    expect(must(read({ inSituStress: undefined })).beyond).toBeUndefined();
  });

  test("by the field curve: CR is that of its virgin line, and nothing is said of a reload", () => {
    const { CR, eInSitu } = must(read({ field: {} }));
    expect(english(must(CR).basis)).toBe("the field curve");
    expect(must(CR).readings).toEqual([]);
    // The field curve begins at the in-situ stress with e0.
    expect(must(eInSitu)).toBeCloseTo(E0, 9);
    expect(exact({ field: {} })).toContain(BELOW);
    const refused = must(read({ field: {}, inSituStress: undefined }));
    expect(inEnglish(refused.CR)).toMatchObject({
      fault: "input",
      reason: expect.stringMatching(/^the in-situ stress is blank/),
    });
    const noYield = must(read({ field: {}, preconsolidationStress: badInput(say`none`) }));
    expect(inEnglish(noYield.CR)).toMatchObject({ reason: "none" });
  });

  test("remarks of the slopes are said once each", () => {
    const short = must(testCurve(S.slice(0, 7), E.slice(0, 7), "e"));
    const said = exact({ test: short });
    expect(said.filter((one) => /Cr from initial loading/.test(one))).toHaveLength(1);
    expect(new Set(said).size).toBe(said.length);
  });
});
