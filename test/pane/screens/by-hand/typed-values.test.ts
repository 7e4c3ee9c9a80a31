/** What a person types beside a result to compare it with. */
import type { Quantity } from "../../../../src/book/comparison";
import { pairOf } from "../../../../src/pane/screens/by-hand/typed-values";

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
