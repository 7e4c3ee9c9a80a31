import { FIELD_FACTOR, fieldCurve, type FieldCurveInput } from "../../../src/reduction/curve/field-curve";
import { testCurve, type Kind } from "../../../src/reduction/curve/shape/points";
import { english } from "../../../src/reduction/message";
import type { Outcome } from "../../../src/reduction/outcome";

const must = <T>(found: Outcome<T>): T => {
  if (!found.ok) throw new Error(english(found.reason));
  return found.value;
};

// Two straight lines that meet at 100: Cr 0.04 before, Cc 0.5 beyond; an unloading with 0.06 at the end.
const E0 = 1.1;
const e = (stress: number) => 1.08 - 0.04 * Math.log10(stress / 10) - 0.46 * Math.max(0, Math.log10(stress / 100));
const S = [10, 20, 40, 100, 200, 400, 800, 1600, 400, 100];
const E = S.map((stress, i) => (i < 8 ? e(stress) : e(1600) + 0.06 * Math.log10(1600 / stress)));
const curve = (kind: Kind) => must(testCurve(S, kind === "e" ? E : E.map((one) => (E0 - one) / (1 + E0)), kind));
const read = (more: Partial<FieldCurveInput> = {}) =>
  fieldCurve({ test: curve("e"), inSituStress: 50, initialVoidRatio: E0, preconsolidationStress: 100, ...more });
const text = (more: Partial<FieldCurveInput>): string => {
  const found = read(more);
  return found.ok ? found.remarks.map(english).join("; ") : `${found.fault}: ${english(found.reason)}`;
};

/** Where the straight virgin line of the laboratory has a void ratio. */
const stressAt = (voidRatio: number) => 100 * 10 ** ((e(100) - voidRatio) / 0.5);

test("three points: in situ, preconsolidation along Cr, and the laboratory line at 0.42 e0", () => {
  for (const kind of ["e", "strain"] as const) {
    const { points, compressionIndex, recompression } = must(read({ test: curve(kind) }));
    const [start, bend, end] = points;
    expect(start).toEqual({ label: "in situ", stress: 50, voidRatio: E0 });
    expect([bend?.label, bend?.stress]).toEqual(["preconsolidation", 100]);
    expect(bend?.voidRatio).toBeCloseTo(E0 - 0.06 * Math.log10(2), 9);
    expect(recompression?.value).toBeCloseTo(0.06, 9);
    expect(end?.label).toBe("meets the laboratory line");
    expect(end?.voidRatio).toBeCloseTo(FIELD_FACTOR * E0, 12);
    expect((end?.stress ?? NaN) / stressAt(FIELD_FACTOR * E0)).toBeCloseTo(1, 6);
    // The field virgin line goes from the second point to the third.
    const fall = (bend?.voidRatio ?? NaN) - FIELD_FACTOR * E0;
    expect(compressionIndex * Math.log10(stressAt(FIELD_FACTOR * E0) / 100)).toBeCloseTo(fall, 6);
    expect(points).toHaveLength(3);
  }
});

test("up to 1.05 times the in-situ stress the clay counts as normally consolidated: the line begins at the in-situ point", () => {
  const { points, compressionIndex } = must(read({ inSituStress: 100 / 1.05 }));
  expect(points.map(({ label }) => label)).toEqual(["in situ", "meets the laboratory line"]);
  const [start, end] = points;
  expect(compressionIndex).toBeCloseTo(
    (E0 - FIELD_FACTOR * E0) / Math.log10((end?.stress ?? NaN) / (start?.stress ?? NaN)),
    9,
  );
  expect(must(read({ inSituStress: 100 / 1.06 })).points).toHaveLength(3);
});

test("another factor moves the meeting point; a given Cr replaces that of the test", () => {
  expect(must(read({ factor: 0.4 })).points.at(-1)?.voidRatio).toBeCloseTo(0.4 * E0, 12);
  const { recompression, points } = must(read({ recompressionIndex: 0.02 }));
  expect([recompression?.value, english(recompression?.basis ?? 0)]).toEqual([0.02, "the value given"]);
  expect(points[1]?.voidRatio).toBeCloseTo(E0 - 0.02 * Math.log10(2), 12);
  const byStrain = must(read({ test: curve("strain"), recompressionIndex: 0.02 / (1 + E0) }));
  expect(byStrain.recompression?.value).toBeCloseTo(0.02, 12);
});

test("without a preconsolidation stress the curve is read by Casagrande's construction", () => {
  const stress = must(read({ preconsolidationStress: undefined })).points[1]?.stress ?? NaN;
  expect(stress / 100).toBeGreaterThan(0.9);
  expect(stress / 100).toBeLessThan(1.1);
});

test("remarks: an unlikely OCR, Cr from the rebound, and a meeting point beyond the loads", () => {
  expect(text({})).toBe("Cr from the final unloading: the test has no reload loop");
  expect(text({ recompressionIndex: 0.02 })).toBe("");
  expect(text({ inSituStress: 4, recompressionIndex: 0.02 })).toMatch(/^OCR above 20/);
  expect(text({ factor: 0.3, recompressionIndex: 0.02 })).toMatch(
    /^the meeting point lies beyond the greatest load \(1600\): the virgin line is extended$/,
  );
});

test("refusals: a factor that is no share, a curve without a virgin line, and lines that do not meet beyond yield", () => {
  for (const factor of [0, 1, -0.4, NaN]) expect(text({ factor })).toMatch(/^input: the factor is .*0.42 is usual/);
  expect(must(read({ factor: 0.99, inSituStress: 20, preconsolidationStress: 20 })).points).toHaveLength(2);
  const straight = must(testCurve([10, 20, 40, 80, 160], [1, 0.99, 0.98, 0.97, 0.96], "e"));
  expect(text({ test: straight })).toMatch(/^method: /);
  // Steep from the first load: there is a virgin line, and no yield to read.
  const virgin = must(testCurve([10, 20, 40, 80, 160, 320, 80], [1.5, 1.35, 1.2, 1.05, 0.9, 0.75, 0.77], "e"));
  expect(text({ test: virgin, initialVoidRatio: 1.55, preconsolidationStress: undefined })).toMatch(/^method: no bend/);
  expect(
    must(read({ test: virgin, initialVoidRatio: 1.55, preconsolidationStress: 8, inSituStress: 8 })).points,
  ).toHaveLength(2);
  expect(text({ preconsolidationStress: 2000 })).toMatch(
    /^method: the laboratory virgin line reaches 0.42 e0 at stress/,
  );
});
