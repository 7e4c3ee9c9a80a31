/** Remarks and refusals of the reading of a compression curve, each on a curve that gives it. */
import { preconsolidationSpread } from "../../../../src/reduction/curve/preconsolidation";
import { testCurve } from "../../../../src/reduction/curve/shape/points";
import { then } from "../../../../src/reduction/outcome";
import { english } from "../../../../src/reduction/message";

/** Everything that is said of a curve: its remarks, and those and the refusals of each method. */
function said(stresses: readonly number[], voids: readonly number[]): string[] {
  const found = then(testCurve([...stresses], [...voids], "e"), (test) => preconsolidationSpread(test));
  if (!found.ok) return [english(found.reason)];
  const ofMethods = found.value.methods.flatMap(({ result }) => (result.ok ? result.remarks : [result.reason]));
  return [...found.remarks, ...ofMethods].map(english);
}

const BY_1_4 = [12.5, 17.5, 24.5, 34.3, 48.02, 67.23, 94.12, 131.8, 184.5, 258.3];

test("a virgin line that is hardly steeper than the start is a weak bend", () => {
  const voids = [1.2, 1.196, 1.188, 1.1782, 1.1704, 1.1648, 1.1679];
  expect(said(BY_1_4.slice(0, 7), voids)).toContain(
    "a weak bend: the virgin line is only 2.5 times as steep as the start",
  );
});

test("a curve that is steep from the first load says that yield may lie among the first loads", () => {
  const stresses = [6.25, 12.5, 25, 50, 100, 200, 400, 800];
  const voids = [1.2, 1.148, 1.14, 1.132, 1.115, 1.06, 0.97, 0.87];
  expect(said(stresses, voids)).toContain(
    "steep from the first load: yield may lie among the first loads, or the specimen be disturbed",
  );
});

test("a specimen that swelled as the stress rose, before yield, is named by its row", () => {
  const stresses = [12.5, 18.75, 28.13, 42.19, 63.28, 94.92, 142.4];
  const voids = [1.2, 1.1917, 1.1945, 1.1883, 1.18, 1.1541, 1.132];
  expect(said(stresses, voids)).toContain("row 3: the specimen swelled as the stress rose: check the reading");
});

test("a modulus that does not fall at yield gives no stress by the fall of the modulus", () => {
  const voids = [1.2, 1.1959, 1.1924, 1.1893, 1.1842, 1.1809, 1.1766, 1.1729, 1.166, 1.1548];
  expect(said(BY_1_4, voids)).toContain("the modulus does not fall at yield");
});
