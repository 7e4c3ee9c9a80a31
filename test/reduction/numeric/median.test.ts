import { median, medianOfSorted } from "../../../src/reduction/numeric/median";

test("the median is the middle value in order of size, the upper one of two", () => {
  expect(median([10, 9, 100])).toBe(10);
  expect(median([10, 9, 100, 11])).toBe(11);
  expect(median(new Set([7]))).toBe(7);
  expect(median([])).toBeNaN();
});

test("of sorted numbers it is the middle one, or the mean of two", () => {
  expect(medianOfSorted([9, 10, 100])).toBe(10);
  expect(medianOfSorted([9, 10, 12, 100])).toBe(11);
  expect(medianOfSorted([7])).toBe(7);
});
