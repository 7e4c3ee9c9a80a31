/** The linear fit is the least of its cost, by the definition at the head of linear.ts. */
import fc from "../../../properties";
import {
  add,
  linearFit,
  ORDINARY_CREEP,
  solve,
  solveProducts,
  sumUp,
  unsolved,
} from "../../../../src/reduction/increment/fit/linear";

const N = 8;
const column = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: N, maxLength: N }).map((of) => Float64Array.from(of));
const columns = fc.record({ y: column(-5, 5), u: column(0, 1), c: column(0, 2), w: column(0.5, 10) });
type Columns = typeof columns extends fc.Arbitrary<infer T> ? T : never;

const fitted = ({ y, u, c, w }: Columns, lean: number) => {
  const fit = linearFit();
  sumUp(fit, y, u, c, w);
  solve(fit, lean);
  return fit;
};

const cost = ({ y, u, c, w }: Columns, lean: number, d0: number, primary: number, tail: number): number =>
  y.reduce(
    (sum, value, i) => sum + (w[i] ?? NaN) * (value - d0 - primary * (u[i] ?? NaN) - tail * (c[i] ?? NaN)) ** 2,
    lean * (tail - ORDINARY_CREEP * primary) ** 2,
  );

const leans = fc.constantFrom(0, 0.1, 3);

test("the cost is that of the definition, and no change of d0, primary or tail lowers it", () => {
  fc.assert(
    fc.property(columns, leans, (of, lean) => {
      const fit = fitted(of, lean);
      const { d0, primary, tail } = fit.solved;
      const least = cost(of, lean, d0, primary, tail);
      expect(fit.cost).toBeCloseTo(least, 8);
      for (const off of [-1e-3, 1e-3]) {
        expect(cost(of, lean, d0 + off, primary, tail)).toBeGreaterThanOrEqual(least - 1e-9);
        expect(cost(of, lean, d0, primary + off, tail)).toBeGreaterThanOrEqual(least - 1e-9);
        if (tail) expect(cost(of, lean, d0, primary, tail + off)).toBeGreaterThanOrEqual(least - 1e-9);
      }
    }),
  );
});

test("creep is zero where it would run against primary, and else runs with it", () => {
  fc.assert(
    fc.property(columns, leans, (of, lean) => {
      const { d0, primary, tail } = fitted(of, lean).solved;
      expect(tail * primary).toBeGreaterThanOrEqual(0);
      if (tail) return;
      // A little creep with the sense of primary does not help, wherever the other two follow it.
      const creep = 1e-4 * Math.sign(primary);
      const follows = fitted({ ...of, y: of.y.map((y, i) => y - creep * (of.c[i] ?? NaN)) }, 0).solved;
      if (lean === 0 && !follows.tail)
        expect(cost(of, 0, follows.d0, follows.primary, creep)).toBeGreaterThanOrEqual(
          cost(of, 0, d0, primary, 0) - 1e-9,
        );
    }),
  );
});

test("a reading that is taken away, and put back, leaves the sums of the others, and of all", () => {
  fc.assert(
    fc.property(columns, fc.integer({ min: 0, max: N - 1 }), (of, i) => {
      const { y, u, c, w } = of;
      const all = fitted(of, 1);
      const fit = fitted(of, 1);
      const [wi, yi, ui, ci] = [w, y, u, c].map((values) => values[i] ?? NaN) as [number, number, number, number]; // as: four values
      const sums = ({ w, y, u, c, yy, uu, cc, uy, cy, uc }: typeof fit) => [w, y, u, c, yy, uu, cc, uy, cy, uc];
      add(fit, -wi, yi, ui, ci);
      const others = fitted({ ...of, w: w.map((weight, k) => (k === i ? 0 : weight)) }, 1);
      sums(fit).forEach((sum, k) => expect(sum).toBeCloseTo(sums(others)[k] ?? NaN, 9));
      add(fit, wi, yi, ui, ci);
      sums(fit).forEach((sum, k) => expect(sum).toBeCloseTo(sums(all)[k] ?? NaN, 9));
    }),
  );
});

test("a part of a table is summed like columns of its own", () => {
  fc.assert(
    fc.property(columns, column(0, 1), ({ y, u, c, w }, before) => {
      const fit = linearFit();
      sumUp(fit, y, Float64Array.from([...before, ...u]), Float64Array.from([...before, ...c]), w, N);
      const own = linearFit();
      sumUp(own, y, u, c, w);
      expect(fit).toEqual(own);
    }),
  );
});

test("products that tell nothing of primary or of creep give none", () => {
  const solved = (uu: number, uc: number, cc: number, uy: number, cy: number) => {
    const of = { ...unsolved(), uu, uc, cc };
    solveProducts(of, uy, cy);
    return { primary: of.primary, tail: of.tail };
  };
  // U is the same in all readings.
  expect(solved(0, 0, 1, 0, 1)).toEqual({ primary: 0, tail: 0 });
  // Creep is in proportion to U, up to a rounding.
  expect(solved(1, 2, 4, 3, 6)).toEqual({ primary: 3, tail: 0 });
  expect(solved(1, 2, 4 * (1 + 1e-11), 3, 6)).toEqual({ primary: 3, tail: 0 });
  expect(solved(2, 2, 2 * (1 + 1e-11), 3, 4)).toEqual({ primary: 1.5, tail: 0 });
  // Creep runs with primary, then against it.
  expect(solved(1, 0, 1, 3, 2)).toEqual({ primary: 3, tail: 2 });
  expect(solved(1, 0, 1, 3, -2)).toEqual({ primary: 3, tail: 0 });
  expect(solved(1, 0, 1, -3, -2)).toEqual({ primary: -3, tail: -2 });
});
