/** Refusals of the field curve; its values are held against print in test/published. */
import { fieldCurve, type FieldCurveInput } from "../../../src/reduction/curve/field-curve";
import { english } from "../../../src/reduction/message";
import { clay } from "../example-data";

const read = (change: Partial<FieldCurveInput>) =>
  fieldCurve({ test: clay, inSituStress: 30, initialVoidRatio: 1.5, preconsolidationStress: 80, ...change });
const reason = (change: Partial<FieldCurveInput>): string => {
  const found = read(change);
  return found.ok ? JSON.stringify(found.value) : english(found.reason);
};

test("a factor outside 0 to 1 is refused, with the usual one", () => {
  for (const factor of [0, 1, -0.4, NaN])
    expect(reason({ factor })).toMatch(/it must lie between 0 and 1; 0.42 is usual/);
  expect(read({ factor: 0.4 }).ok).toBe(true);
});

test("a laboratory line that reaches the meeting point before yield is refused", () => {
  expect(reason({ preconsolidationStress: 1e6 })).toMatch(/reaches 0.42 e0 at stress .*, before yield/);
  expect(reason({ factor: 0.99, preconsolidationStress: 1e3 })).toMatch(
    /before yield: check e0 and the in-situ stress/,
  );
});
