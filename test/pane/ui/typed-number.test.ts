import { typedNonZero, typedNumber } from "../../../src/pane/ui/typed-number";

test.each([
  ["12.5", 12.5],
  [" 12,5 ", 12.5],
  ["-3", -3],
  ["1e-3", 0.001],
  ["0", 0],
  ["", undefined],
  ["  ", undefined],
  ["12,5,3", NaN],
  ["12.5 kPa", NaN],
  ["Infinity", NaN],
])("%p is the number %p", (typed, expected) => expect(typedNumber(typed)).toBe(expected));

test.each([
  ["12,5", 12.5],
  ["-2.5", -2.5],
  ["0", undefined],
  ["", undefined],
  ["x", undefined],
])("where 0 is a blank, %p is %p", (typed, expected) => expect(typedNonZero(typed)).toBe(expected));
