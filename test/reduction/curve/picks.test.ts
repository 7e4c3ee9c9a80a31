/** Picks by hand of the compression curve, compared with arithmetic by hand. */
import { compressionIndex, recompressionIndex, swellingIndex } from "../../../src/reduction/curve/indices";
import { fieldCurve } from "../../../src/reduction/curve/field-curve";
import { CURVE_PICK_NAMES, CURVE_PICK_WORDS, picksOfYield, type CurvePicks } from "../../../src/reduction/curve/picks";
import { preconsolidation } from "../../../src/reduction/curve/preconsolidation";
import { METHOD_NAMES, type MethodName } from "../../../src/reduction/curve/method-words";
import { testCurve, type TestCurve } from "../../../src/reduction/curve/shape/points";
import { english } from "../../../src/reduction/message";
import type { Outcome } from "../../../src/reduction/outcome";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const refusal = (outcome: Outcome<unknown>): string => (outcome.ok ? "not refused" : english(outcome.reason));

/** Slope 0.02 up to 100, 0.4 beyond, a loop from 800 to 100 that yields again at 400, and an unloading from 3200. */
const STRESSES = [12.5, 25, 50, 100, 200, 400, 800, 400, 200, 100, 200, 400, 800, 1600, 3200, 800, 200, 50];
const decade = Math.log10(2);
const loading = (stress: number) => 1 - 0.02 * Math.log10(stress / 12.5) - 0.38 * Math.max(0, Math.log10(stress / 100));
const top = loading(800);
const end = loading(3200);
const VOIDS = [
  ...[12.5, 25, 50, 100, 200, 400, 800].map(loading),
  ...[top + 0.012, top + 0.026, top + 0.042],
  ...[top + 0.038, top + 0.024, top],
  ...[1600, 3200].map(loading),
  ...[end + 0.02, end + 0.06, end + 0.11],
];
const TEST = value(testCurve(STRESSES, VOIDS, "e"));
const stress = (picks: CurvePicks, method?: MethodName, test: TestCurve = TEST) =>
  preconsolidation(test, { picks, method });

test("picked ends choose the points of the virgin line: Cc is the slope through them", () => {
  const bent = value(testCurve([10, 20, 40, 80, 160, 320, 640], [1, 0.995, 0.99, 0.93, 0.8, 0.72, 0.66], "e"));
  expect(value(compressionIndex(bent, undefined, { virgin_from: 160, virgin_to: 320 })).value).toBeCloseTo(
    (0.8 - 0.72) / decade,
    12,
  );
  // Three points, evenly spaced on log stress: the slope between the outer two.
  expect(value(compressionIndex(bent, undefined, { virgin_from: 160, virgin_to: 640 })).value).toBeCloseTo(
    (0.8 - 0.66) / (2 * decade),
    12,
  );
  expect(english(value(compressionIndex(bent, undefined, { virgin_to: 320 })).basis)).toMatch(
    /^virgin line .* to 320$/,
  );
});

test("Cr is the slope between the picked points of the loop, on its reload branch, or an end of the loop", () => {
  const Cr = (picks: CurvePicks) => value(recompressionIndex(TEST, undefined, picks));
  expect(Cr({}).value).toBeCloseTo(0.042 / (3 * decade), 12);
  expect(Cr({ loop_from: 100, loop_to: 800 }).value).toBeCloseTo(Cr({}).value, 12);
  expect(Cr({ loop_to: 400 }).value).toBeCloseTo((0.042 - 0.024) / (2 * decade), 12);
  // Half-way on log stress between 200 and 400 the reload is half-way between their void ratios.
  expect(Cr({ loop_to: 200 * Math.SQRT2 }).value).toBeCloseTo((0.042 - 0.031) / (1.5 * decade), 12);
  expect(english(Cr({ loop_from: 200, loop_to: 400 }).basis)).toBe("reload loop 200 to 400");
});

test("Cs is the slope through the picked points of the final unloading", () => {
  expect(value(swellingIndex(TEST, undefined, { unloading_from: 200, unloading_to: 800 })).value).toBeCloseTo(
    0.04 / (2 * decade),
    12,
  );
  expect(value(swellingIndex(TEST, undefined, { unloading_to: 200 })).value).toBeCloseTo(0.05 / (2 * decade), 12);
});

test("a remark names the picked ends of the final unloading, and no other", () => {
  const remarks = (picks: CurvePicks): string[] => {
    const found = swellingIndex(TEST, undefined, picks);
    return found.ok ? found.remarks.map(english) : [refusal(found)];
  };
  expect(remarks({ unloading_from: 200, unloading_to: 800 })).toEqual([
    "picked by hand: unloading from = 200, unloading to = 800",
  ]);
  expect(remarks({ unloading_to: 200 })).toEqual(["picked by hand: unloading to = 200"]);
  expect(remarks({})).toEqual([]);
});

// Janbu's method reads no yield from these straight lines.
const APPLICABLE = METHOD_NAMES.filter((method) => method !== "janbu");

test.each(APPLICABLE)("the remark on the stress by %s names the picks on which the stress depends", (method) => {
  const AT: Required<CurvePicks> = {
    ...{ greatest_curvature: 50, recompression_from: 12.5, recompression_to: 100, virgin_from: 200, virgin_to: 3200 },
    ...{ loop_from: 100, loop_to: 800, unloading_from: 200, unloading_to: 800 },
  };
  const named = CURVE_PICK_NAMES.filter((name) => {
    const read = stress({ [name]: AT[name] }, method);
    return read.ok && read.remarks.map(english).includes(`picked by hand: ${CURVE_PICK_WORDS[name]} = ${AT[name]}`);
  });
  expect(named).toEqual(picksOfYield(method));
});

test("Casagrande's construction goes through the picked point of greatest curvature: hand arithmetic", () => {
  // On the straight recompression line at 50 the tangent is that line, slope 0.02; the virgin line has the slope 0.4.
  const read = value(stress({ greatest_curvature: 50, virgin_from: 200, virgin_to: 3200, recompression_to: 100 }));
  // Drawn with the virgin line at a slope of 1.5: slopes on the paper are 1.5 / 0.4 times those of the curve.
  const scale = 1.5 / 0.4;
  const bisector = Math.tan(Math.atan(0.02 * scale) / 2) / scale;
  // From (50, e) the bisector falls by b x, the recompression and virgin lines by 0.02 log 2 + 0.4 (x - log 2).
  const x = (0.38 * decade) / (0.4 - bisector);
  expect(read.stress / (50 * 10 ** x)).toBeCloseTo(1, 2);
});

test("the intersection of lines follows both picked lines: hand arithmetic", () => {
  const bent = value(testCurve([10, 20, 40, 80, 160, 320, 640], [1, 0.995, 0.985, 0.94, 0.85, 0.74, 0.63], "e"));
  const picks = { recompression_from: 10, recompression_to: 20, virgin_from: 320, virgin_to: 640 };
  // e = 1 - 0.005 n and e = 0.63 + 0.11 (6 - n), n in doublings of 10: 1 - 0.005 n = 1.29 - 0.11 n.
  const n = 0.29 / 0.105;
  expect(value(stress(picks, "intersection", bent)).stress).toBeCloseTo(10 * 2 ** n, 9);
});

test("the field curve has the picked Cr, or the Cr given, and meets the picked virgin line", () => {
  const input = { test: TEST, inSituStress: 25, initialVoidRatio: 1.01, preconsolidationStress: 100 };
  const at = (more: object) => value(fieldCurve({ ...input, ...more }));
  expect(at({ picks: { loop_to: 400 } }).recompression?.value).toBeCloseTo(0.018 / (2 * decade), 12);
  expect(at({ recompressionIndex: 0.05 }).points[1].voidRatio).toBeCloseTo(1.01 - 0.05 * Math.log10(4), 12);
  expect(at({ recompressionIndex: 0.05 }).recompression?.value).toBe(0.05);
});

test("picks that the curve does not have are refused, with what to move", () => {
  expect(refusal(stress({ virgin_from: 900, virgin_to: 1500 }))).toBe(
    "the virgin line picked from 900 to 1500 has fewer than two points of first loading: move an end",
  );
  expect(refusal(stress({ recompression_from: 90, recompression_to: 150 }))).toMatch(
    /^the recompression line picked from 90 to /,
  );
  expect(refusal(stress({ virgin_from: 400, virgin_to: 200 }))).toMatch(/must lie below virgin to \(200\)/);
  expect(refusal(stress({ greatest_curvature: 5 }))).toMatch(/picked at 5 lies outside the loads \(12.5 to 3200\)/);
  const Cr = (test: TestCurve, picks: CurvePicks) => refusal(recompressionIndex(test, undefined, picks));
  expect(Cr(TEST, { loop_from: 50 })).toMatch(/pick stresses within 100 to 800$/);
  expect(Cr(TEST, { loop_from: 800, loop_to: 100 })).toMatch(/must lie below loop to/);
  const plain = value(testCurve(STRESSES.slice(0, 7), VOIDS.slice(0, 7), "e"));
  expect(Cr(plain, { loop_from: 50 })).toMatch(/has no unload-reload loop/);
  expect(refusal(swellingIndex(plain, undefined, { unloading_to: 50 }))).toMatch(/has no final unloading/);
  expect(refusal(swellingIndex(TEST, undefined, { unloading_to: 60 }))).toMatch(
    /fewer than two points of the unloading/,
  );
});
