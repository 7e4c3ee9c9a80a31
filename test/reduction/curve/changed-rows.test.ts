/** What happens to the results of made curves when a row is typed twice, a record is split in two, or a load is missing. */
import { makeCurve, RECIPES, type MadeCurve } from "../../generators/compression-curves";
import { compressionIndex } from "../../../src/reduction/curve/indices";
import { preconsolidation } from "../../../src/reduction/curve/preconsolidation";
import { testCurve } from "../../../src/reduction/curve/shape/points";
import { then } from "../../../src/reduction/outcome";

type Rows = Pick<MadeCurve, "stresses" | "values" | "kind">;
const CURVES = Object.keys(RECIPES)
  .filter((scenario) => !/not reached|before the first/.test(scenario))
  .flatMap((scenario) => Array.from({ length: 6 }, (_, seed) => makeCurve(scenario, seed + 1)));

const stressOf = ({ stresses, values, kind }: Rows) =>
  then(testCurve(stresses, values, kind), (test) => preconsolidation(test));
const Cc = ({ stresses, values, kind }: Rows) =>
  then(testCurve(stresses, values, kind), (test) => compressionIndex(test));

/** The rows of first loading after the first; swelling at seating falls out, because the stress does not rise there. */
const loadings = ({ stresses }: Rows): number[] =>
  stresses.flatMap((stress, i) => (i > 0 && stress > Math.max(...stresses.slice(0, i)) ? [i] : []));

/** The rows with another row in front of a row, of the same stress; its value lies at this share of the way from the row before. */
function withRowBefore({ stresses, values, kind }: Rows, i: number, share: number): Rows {
  const value = values[i - 1]! + share * (values[i]! - values[i - 1]!);
  const before = (list: number[], row: number) => [...list.slice(0, i), row, ...list.slice(i)];
  return { stresses: before(stresses, stresses[i]!), values: before(values, value), kind };
}

test.each([
  ["a row typed twice", 1],
  ["a record split in two, of which the first part has 92 % of the compression", 0.92],
])("%s changes neither stress nor Cc", (_, share) => {
  let asked = 0;
  for (const curve of CURVES) {
    const [stress, index] = [stressOf(curve), Cc(curve)];
    for (const i of loadings(curve)) {
      const changed = withRowBefore(curve, i, share);
      const [stressNow, indexNow] = [stressOf(changed), Cc(changed)];
      expect(stressNow.ok).toBe(stress.ok);
      if (stress.ok && stressNow.ok) expect(stressNow.value.stress / stress.value.stress).toBeCloseTo(1, 3);
      if (index.ok && indexNow.ok) expect(indexNow.value.value / index.value.value).toBeCloseTo(1, 3);
      asked += Number(stress.ok);
    }
  }
  expect(asked).toBeGreaterThan(300);
});

test("with one load less, the ranges of the preconsolidation stress still meet, or a remark or refusal is there", () => {
  const apart: string[] = [];
  let asked = 0;
  for (const curve of CURVES) {
    const whole = stressOf(curve);
    if (!whole.ok) continue;
    for (const i of loadings(curve)) {
      const others = (list: number[]) => list.filter((_, row) => row !== i);
      const less = stressOf({ ...curve, stresses: others(curve.stresses), values: others(curve.values) });
      asked++;
      if (!less.ok || less.remarks.length > 0) continue;
      if (less.value.low > 1.02 * whole.value.high || whole.value.low > 1.02 * less.value.high)
        apart.push(`${curve.scenario}: without ${curve.stresses[i]}, ${less.value.low} to ${less.value.high}`);
    }
  }
  expect(apart).toEqual([]);
  expect(asked).toBeGreaterThan(300);
});
