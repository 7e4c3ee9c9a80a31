/** What a person types beside a result to compare it with. */
import { compare } from "../../../../src/book/agreement";
import type { Quantity } from "../../../../src/book/comparison";
import { isTypedValue, pairOf, usualTolerance } from "../../../../src/pane/screens/by-hand/typed-values";

const waterContent: Quantity = {
  ...{ key: "water_content_initial", name: "water_content_initial", value: 0.5305, unit: "", format: "0.0%", row: 0 },
  ...{ reading: "rounding", tolerance: 0.0019 },
};
const byHand = (typed: string, quantity = waterContent): number | undefined =>
  pairOf(quantity, { key: quantity.key, byHand: typed })?.byHand;

test("a value that the sheet shows in percent is typed as a ratio or with its % sign", () => {
  expect(["0.53", "53 %", "53.0%", " 53,0 % "].map((typed) => byHand(typed))).toEqual([0.53, 0.53, 0.53, 0.53]);
});

test("what is no number is no value by hand, nor is a % sign behind a quantity without percent", () => {
  expect(["", "%", "0 %", "53 % of it"].map((typed) => byHand(typed))).toEqual(Array(4).fill(undefined));
  expect(byHand("53 %", { ...waterContent, format: "0.000" })).toBeUndefined();
});

describe("the digits typed say how far a value by hand may differ", () => {
  const voidRatio: Quantity = {
    ...{ key: "void_ratio_initial", name: "void_ratio_initial", value: 0.5749, unit: "", format: "0.000", row: 0 },
    ...{ reading: "rounding", tolerance: 0.001 / 0.5749 },
  };
  const agrees = (typed: string, quantity = voidRatio, percent?: string): boolean => {
    const pair = pairOf(quantity, { key: quantity.key, byHand: typed, ...(percent !== undefined && { percent }) })!;
    return compare(quantity.value, pair.byHand, pair.tolerance).agrees;
  };

  test("0.57 agrees with 0.5749 and 0.58 does not; a zero at the end is a digit", () => {
    expect(["0.57", "0,57", "5.7e-1", "0.6", "0.575", "0.574"].map((typed) => [typed, agrees(typed)])).toEqual(
      ["0.57", "0,57", "5.7e-1", "0.6", "0.575", "0.574"].map((typed) => [typed, true]),
    );
    for (const typed of ["0.58", "0.570", "0.5700", "5.70E-1", "0.5", "0.573"])
      expect([typed, agrees(typed)]).toEqual([typed, false]);
  });

  test("the digits of a value in percent are those before its sign", () => {
    expect(["53 %", "53.0 %", "53.1 %", "0.53"].map((typed) => agrees(typed, waterContent))).toEqual(
      Array(4).fill(true),
    );
    expect(["54 %", "52.8 %", "0.528"].map((typed) => agrees(typed, waterContent))).toEqual(Array(3).fill(false));
  });

  test("a tolerance that a person types counts, and a value that is read off a drawing keeps its own", () => {
    expect(agrees("0.57", voidRatio, "0.5")).toBe(false);
    const read: Quantity = { ...voidRatio, reading: "root time", tolerance: 0.03 };
    expect(pairOf(read, { key: read.key, byHand: "0.6" })?.tolerance).toBe(0.03);
    expect(usualTolerance(read)).toBe("read off a root-time plot: 3 %");
  });

  test("a text of a cell is a value if it is a number, with its zeros", () => {
    expect(["0.570", " 53.0 %", "-5", "1.2e-8", ".5"].filter((content) => !isTypedValue(content))).toEqual([]);
    expect(["", "Cc", "load 5", "5 kPa", "e", "%", "12 May"].filter(isTypedValue)).toEqual([]);
  });
});
