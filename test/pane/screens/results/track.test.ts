/** Where the readings of the methods lie on their common scale. */
import fc from "../../../properties";
import { placeOn, scaleOf } from "../../../../src/pane/screens/results/track";

test("every stress lies inside the scale, in the order of the stresses", () => {
  const stresses = fc.array(fc.double({ min: 0.1, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(stresses, (some) => {
      const scale = scaleOf(some)!;
      const places = [...some].sort((a, b) => a - b).map((stress) => placeOn(scale, stress));
      expect(places.every((place) => place > 0 && place < 1)).toBe(true);
      expect([...places].sort((a, b) => a - b)).toEqual(places);
    }),
  );
});

test("the scale is even in the log of stress", () => {
  const scale = scaleOf([10, 100, 1000])!;
  const [a, b, c] = [10, 100, 1000].map((stress) => placeOn(scale, stress));
  expect(b! - a!).toBeCloseTo(c! - b!, 12);
  expect(b).toBeCloseTo(0.5, 12);
});

test("a stress beyond the scale stands at its end; without a stress there is no scale", () => {
  const scale = scaleOf([100, 200, undefined])!;
  expect(placeOn(scale, 1)).toBe(0);
  expect(placeOn(scale, 1e5)).toBe(1);
  expect(scaleOf([undefined, 0, -5])).toBeUndefined();
});
