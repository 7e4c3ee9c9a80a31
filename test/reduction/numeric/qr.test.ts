import fc from "../../properties";
import { solveQr } from "../../../src/reduction/numeric/qr";

const entry = fc.integer({ min: -50, max: 50 }).map((part) => part / 10);

test("what is left of b is at right angles to every column", () => {
  const system = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 4 })).chain(([cols, more]) =>
    fc.record({
      columns: fc.array(fc.array(entry, { minLength: cols + more, maxLength: cols + more }), {
        minLength: cols,
        maxLength: cols,
      }),
      b: fc.array(entry, { minLength: cols + more, maxLength: cols + more }),
    }),
  );
  fc.assert(
    fc.property(system, ({ columns, b }) => {
      const x = solveQr(Float64Array.from(columns.flat()), b.length, columns.length, Float64Array.from(b));
      // Columns that nearly depend on one another have no solution that is worth comparing.
      fc.pre(x.every((value) => Math.abs(value) < 1e4));
      const left = b.map(
        (value, i) => value - columns.reduce((sum, column, j) => sum + (column[i] ?? 0) * (x[j] ?? 0), 0),
      );
      for (const column of columns)
        expect(column.reduce((sum, value, i) => sum + value * (left[i] ?? 0), 0)).toBeCloseTo(0, 6);
    }),
  );
});

test("the solution is written into the place that is given, and a column of zeros has none", () => {
  const x = new Float64Array(2);
  expect(solveQr(Float64Array.of(1, 1, 1, 0, 0, 0), 3, 2, Float64Array.of(1, 2, 3), x)).toBe(x);
  expect(x[0]).toBeCloseTo(2, 12);
  expect(x[1]).toBe(0);
});
