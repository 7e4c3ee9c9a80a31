import { studentsT95 } from "../../../src/reduction/numeric/students-t";

// Two-sided 95 % points to three decimals: any statistical table.
const TABLE = [
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [9, 2.262],
  [10, 2.228],
  [11, 2.201],
  [12, 2.179],
  [15, 2.131],
  [20, 2.086],
  [30, 2.042],
  [60, 2.0],
  [120, 1.98],
] as const;

test("the points are those of the tables to their last digit", () => {
  for (const [freedom, t] of TABLE) expect(Math.abs(studentsT95(freedom) - t)).toBeLessThanOrEqual(0.00051);
});

test("between two whole numbers up to ten, the lesser counts; without a degree of freedom there is no end", () => {
  expect(studentsT95(9.9)).toBe(studentsT95(9));
  expect(studentsT95(0.9)).toBe(Infinity);
  expect(studentsT95(1e9)).toBeCloseTo(1.959964, 6);
});

test("the table holds up to ten degrees, the expansion from there on", () => {
  expect(studentsT95(10)).toBe(2.228);
  expect(studentsT95(10.5)).toBeGreaterThan(2.21);
  expect(studentsT95(10.5)).toBeLessThan(2.22);
  // To five decimals, from memory.
  for (const [freedom, t] of [
    [12, 2.17881],
    [15, 2.13145],
    [20, 2.08596],
    [30, 2.04227],
  ])
    // prettier-ignore
    expect(Math.abs(studentsT95(freedom) - t)).toBeLessThan(0.0001);
});
