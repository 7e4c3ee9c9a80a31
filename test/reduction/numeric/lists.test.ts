import { firstOf, lastOf, neighbours, nth } from "../../../src/reduction/numeric/lists";

test("the places of a list", () => {
  const list = [3, 5, 8];
  expect([firstOf(list), nth(list, 1), lastOf(list)]).toEqual([3, 5, 8]);
  expect(lastOf(Float64Array.of(0, 2))).toBe(2);
});

test("a place that a list has not is a fault of the program", () => {
  expect(() => nth([1, 2], 2)).toThrow("a list of 2 has no place 2");
  expect(() => nth([1, 2], -1)).toThrow(RangeError);
  expect(() => firstOf([])).toThrow(RangeError);
  expect(() => lastOf([])).toThrow(RangeError);
});

test("the neighbours in a list", () => {
  expect(neighbours([3, 5, 8])).toEqual([
    [3, 5],
    [5, 8],
  ]);
  expect(neighbours([3])).toEqual([]);
  expect(neighbours([])).toEqual([]);
});
