import { memoize } from "../../../src/reduction/numeric/memoize";

const counted = (bounds?: { entries?: number; numbers?: number }) => {
  let calls = 0;
  const sum = memoize((...lists) => {
    calls++;
    return lists.reduce((total, list) => total + Array.from(list).reduce((a, b) => a + b, 0), 0);
  }, bounds);
  return { sum, calls: () => calls };
};

test("equal numbers are computed once", () => {
  const { sum, calls } = counted();
  expect(sum([1, 2], [3])).toBe(6);
  expect(sum(Float64Array.of(1, 2), [3])).toBe(6);
  expect(calls()).toBe(1);
});

test("other numbers, another order and another division into lists are other inputs", () => {
  const { sum, calls } = counted();
  sum([1, 2], [3]);
  sum([2, 1], [3]);
  sum([1], [2, 3]);
  sum([1, 2, 3], []);
  sum([1, 2], [3.0000000001]);
  expect(calls()).toBe(5);
});

test("inputs with the same hash are distinguished", () => {
  // Of 200,000 inputs about four pairs share one of the 2^32 hashes: without a comparison they would be confused.
  const { sum } = counted({ entries: 1e6 });
  let confused = 0;
  for (let i = 0; i < 200_000; i++) if (sum([Math.sqrt(i)]) !== Math.sqrt(i)) confused++;
  expect(confused).toBe(0);
});

test("NaN is a number like any other", () => {
  const { sum, calls } = counted();
  sum([NaN]);
  sum([NaN]);
  expect(calls()).toBe(1);
});

test("the least recently used entry is dropped when the entries are full", () => {
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

test("the count of stored numbers is limited too", () => {
  const { sum, calls } = counted({ numbers: 5 });
  sum([1, 2, 3]);
  sum([4, 5, 6]);
  sum([1, 2, 3]);
  expect(calls()).toBe(3);
});

test("what is dropped makes room: as many numbers as the limit are kept", () => {
  const { sum, calls } = counted({ numbers: 5 });
  sum([1, 2, 3]);
  sum([4, 5, 6]);
  sum([7, 8]);
  expect(calls()).toBe(3);
  sum([4, 5, 6]);
  sum([7, 8]);
  expect(calls()).toBe(3);
});

test("a long list that differs in one number is another input, wherever the number stands", () => {
  const { sum, calls } = counted();
  const long = Float64Array.from({ length: 10_000 }, (_, i) => Math.sqrt(i));
  const places = [0, 1, 2, 3, 4, 4999, 5000, 9998, 9999];
  const others = places.map((place) => long.map((value, i) => (i === place ? -1 : value)));
  [long, ...others].forEach((list) => sum(list));
  expect(calls()).toBe(1 + places.length);
  expect(sum(long)).toBe(long.reduce((a, b) => a + b, 0));
});
