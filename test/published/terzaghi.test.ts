import { degreeOfConsolidation, T_END_OF_PRIMARY, timeFactor } from "../../src/reduction/increment/fit/terzaghi";
import { T_INFLECTION } from "../../src/reduction/increment/signals";
import data from "./data/terzaghi-table.json";
import { english } from "../../src/reduction/message";

const timeFactorAt = (percent: number): number => {
  const T = timeFactor(percent / 100);
  if (!T.ok) throw new Error(english(T.reason));
  return T.value;
};

/** Half a unit of the last printed digit. */
const halfUnit = (printed: string): number => 0.5 * 10 ** -printed.split(".")[1].length;

describe("published tables of time factor", () => {
  for (const { source, percent, T, misprints } of data.tables)
    test.each(percent.map((p, i) => [p, T[i]] as const))(`T at %d %% is %s: ${source.slice(0, 40)}`, (p, printed) => {
      const misprint = Object.keys(misprints).includes(String(p));
      const error = Math.abs(timeFactorAt(p) - Number(printed));
      // A misprint must differ: if it agreed, the list of misprints would be wrong.
      if (misprint) expect(error).toBeGreaterThan(halfUnit(printed));
      else expect(error).toBeLessThanOrEqual(halfUnit(printed) * (1 + 1e-9));
    });

  test.each(data.recalculated.percent.map((p, i) => [p, data.recalculated.T[i]]))(
    "T at %d %% is %d to six decimals",
    (p, T) => {
      expect(Math.abs(timeFactorAt(p) - T)).toBeLessThan(1e-6);
      expect(Math.abs(degreeOfConsolidation(T) - p / 100)).toBeLessThan(2e-5);
    },
  );
});

// No source: calculated here from the series.
test("the inflection on log time is at T = 0.40418, U = 0.70098, and its tangent meets the end at T = 1.10135", () => {
  const slope = (T: number) =>
    (degreeOfConsolidation(T * 1.0001) - degreeOfConsolidation(T / 1.0001)) / (2 * Math.log10(1.0001));
  let best = 0.3;
  for (let T = 0.3; T < 0.5; T += 1e-5) if (slope(T) > slope(best)) best = T;
  expect(best).toBeCloseTo(0.40418, 3);
  expect(best).toBeCloseTo(T_INFLECTION, 3);
  expect(degreeOfConsolidation(0.40418)).toBeCloseTo(0.70098, 5);
  const crossing = 0.40418 * 10 ** ((1 - degreeOfConsolidation(0.40418)) / slope(0.40418));
  expect(crossing).toBeCloseTo(1.10135, 4);
  expect(crossing).toBeCloseTo(T_END_OF_PRIMARY, 4);
});
