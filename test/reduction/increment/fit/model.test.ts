import fc from "../../../properties";
import { power } from "../../../../src/reduction/increment/fit/model";

test("a power is that of the arithmetic, for every multiple of a half", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), fc.constantFrom(2, 3, 4.5, 7, 2.5, 5), (x, m) => {
      expect(power(x, m) / x ** m).toBeCloseTo(1, 12);
    }),
  );
});
