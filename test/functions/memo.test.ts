import { memoize } from "../../src/functions/memo";

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
  const { sum } = counted();
  // Every pair of many small inputs: a hash trusted without comparison would confuse some of 2^16 of them.
  for (let a = 0; a < 256; a++)
    for (let b = 0; b < 256; b++) expect(sum([a * 1e-300], [b * 1e-300])).toBe(a * 1e-300 + b * 1e-300);
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
