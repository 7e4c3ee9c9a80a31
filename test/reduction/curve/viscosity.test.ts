import { temperatureFactor, viscosityRatio } from "../../../src/reduction/curve/viscosity";

/** Dynamic viscosity of water, mPa s, on the 1.002 of 20 C: from memory. Handbooks differ by up to 0.2 percent at 50 C. */
const HANDBOOK = [
  [10, 1.307],
  [20, 1.002],
  [30, 0.7975],
  [40, 0.6532],
  [50, 0.5471],
] as const;

test("the ratio is within 0.2 percent of handbook values", () => {
  for (const [temperature, viscosity] of HANDBOOK)
    expect(Math.abs((viscosityRatio(temperature) * 1.002) / viscosity - 1)).toBeLessThan(0.002);
});

test("the factor of cv is the ratio, and a temperature that no laboratory has is refused", () => {
  expect(temperatureFactor(30)).toMatchObject({ ok: true, value: viscosityRatio(30) });
  expect([0, 0.1, 60, 60.1].map((temperature) => temperatureFactor(temperature).ok)).toEqual([
    false,
    true,
    true,
    false,
  ]);
});
