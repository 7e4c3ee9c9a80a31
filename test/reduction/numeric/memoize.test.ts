import { memoize } from "../../../src/reduction/numeric/memoize";

const counted = (bounds?: { entries?: number; numbers?: number }) => {
  let calls = 0;
  const sum = memoize((...lists) => {
    calls++;
    return lists.reduce((total, list) => total + Array.from(list).reduce((a, b) => a + b, 0), 0);
  }, bounds);
  return { sum, calls: () => calls };
};

test("the same numbers are computed once", () => {
  const { sum, calls } = counted();
  expect(sum([1, 2], [3])).toBe(6);
  expect(sum(Float64Array.of(1, 2), [3])).toBe(6);
  expect(calls()).toBe(1);
});

test("numbers, their order and where the lists part all tell inputs apart", () => {
  const { sum, calls } = counted();
  sum([1, 2], [3]);
  sum([2, 1], [3]);
  sum([1], [2, 3]);
  sum([1, 2, 3], []);
  sum([1, 2], [3.0000000001]);
  expect(calls()).toBe(5);
});

test("inputs of one hash are still told apart", () => {
  // Among 200,000 inputs some four pairs share one of the 2^32 hashes: a hash trusted without comparison confuses them.
  const { sum } = counted({ entries: 1e6 });
  let confused = 0;
  for (let i = 0; i < 200_000; i++) if (sum([Math.sqrt(i)]) !== Math.sqrt(i)) confused++;
  expect(confused).toBe(0);
});

test("not-a-number is a number like any other", () => {
  const { sum, calls } = counted();
  sum([NaN]);
  sum([NaN]);
  expect(calls()).toBe(1);
});

test("the least lately used goes first when the entries are full", () => {
  const { sum, calls } = counted({ entries: 2 });
  sum([1]);
  sum([2]);
  sum([1]);
  sum([3]);
  expect(calls()).toBe(3);
  sum([1]);
  expect(calls()).toBe(3);
  sum([2]);
  expect(calls()).toBe(4);
});

test("the numbers held are bounded too", () => {
  const { sum, calls } = counted({ numbers: 5 });
  sum([1, 2, 3]);
  sum([4, 5, 6]);
  sum([1, 2, 3]);
  expect(calls()).toBe(3);
});
