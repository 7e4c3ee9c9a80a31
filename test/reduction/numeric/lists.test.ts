import { firstOf, lastOf, neighbours, nth } from "../../../src/reduction/numeric/lists";

test("nth, firstOf and lastOf give the elements of a list", () => {
  const list = [3, 5, 8];
  expect([firstOf(list), nth(list, 1), lastOf(list)]).toEqual([3, 5, 8]);
  expect(lastOf(Float64Array.of(0, 2))).toBe(2);
});

test("a missing element is a fault of the program and throws", () => {
  expect(() => nth([1, 2], 2)).toThrow("a list of 2 has no place 2");
  expect(() => nth([1, 2], -1)).toThrow(RangeError);
  expect(() => firstOf([])).toThrow(RangeError);
  expect(() => lastOf([])).toThrow(RangeError);
});

test("neighbours gives the pairs of a list", () => {
  expect(neighbours([3, 5, 8])).toEqual([
    [3, 5],
    [5, 8],
  ]);
  expect(neighbours([3])).toEqual([]);
  expect(neighbours([])).toEqual([]);
});
