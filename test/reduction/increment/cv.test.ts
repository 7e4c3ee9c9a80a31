import { heightAtHalf } from "../../../src/reduction/increment/cv";

/**
 * A load calculated by hand: 20.000 mm at its start, a dial of 0.002 mm that rises, with 1000 at the start. 50
 * divisions immediate, 400 primary, 150 secondary: d0 = 1050, d100 = 1450, end 1600. At 50 % the dial reads 1250: 250
 * divisions or 0.500 mm lower, 19.500 mm. The mean of the heights at both ends is 19.400 mm, which is 0.5 % low, 1 % in
 * cv.
 */
test("the height is half way between d0 and d100, not half way between the ends of the load", () => {
  const end = { height: 20 - 600 * 0.002, reading: 1600 };
  expect(heightAtHalf(end, { d0: 1050, d100: 1450 }, 0.002)).toBeCloseTo(19.5, 12);
});

test("a dial that falls gives the same height", () => {
  const end = { height: 20 - 600 * 0.002, reading: 5000 - 600 };
  expect(heightAtHalf(end, { d0: 4950, d100: 4550 }, -0.002)).toBeCloseTo(19.5, 12);
});

test("a load that swells ends higher than its height at half way", () => {
  expect(heightAtHalf({ height: 20.3, reading: 850 }, { d0: 1000, d100: 900 }, 0.002)).toBeCloseTo(20.1, 12);
});
