/** Water by temperature and with salt (sources in data/water.json), through the worksheet functions. */
import { TEMPERATURE_FACTOR } from "../../src/functions/curve";
import { SALT_CORRECTION, SOLIDS_HEIGHT, SPECIMEN, VOID_RATIO, WATER_DENSITY } from "../../src/functions/specimen";
import { poreWaterDensity, waterDensity } from "../../src/reduction/water";
import data from "./data/water.json";

test(`density of water at every degree of the table, to its last digit: ${data.density.source}`, () => {
  const { celsius, kg_m3 } = data.density;
  expect(celsius).toHaveLength(kg_m3.length);
  celsius.forEach((temperature, i) =>
    // Half a unit of the last printed digit, and the rounding of binary numbers.
    expect(Math.abs(WATER_DENSITY(temperature, "kg/m3") - kg_m3[i])).toBeLessThan(0.00055),
  );
});

test(`temperature factor: ${data.viscosity.source}`, () => {
  const { celsius, ratio } = data.viscosity;
  celsius.forEach((temperature, i) =>
    expect(Math.abs(TEMPERATURE_FACTOR(temperature) - ratio[i])).toBeLessThan(0.0005),
  );
});

test(`salt taken out of the dry mass: ${data.salt.source}`, () => {
  const { wet, dry, salt_content, by_hand } = data.salt;
  const items = Object.fromEntries(SALT_CORRECTION(wet, dry, salt_content));
  for (const item of ["pore_water", "salt", "solids"] as const)
    expect(Math.abs(items[item] - by_hand[item])).toBeLessThan(0.0005);
  expect(Math.abs(items.w - by_hand.w)).toBeLessThan(0.00005);
  expect(Math.abs(items.w_uncorrected - by_hand.w_uncorrected)).toBeLessThan(0.00005);
});

test("SPECIMEN takes out the same salt, and shows the results with and without it", () => {
  const { wet, dry, salt_content, by_hand } = data.salt;
  const ring = 50;
  const items = Object.fromEntries(
    SPECIMEN(63.5, 20, ring, ring + 102, ring + wet, ring + dry, 2.7, null, null, null, null, salt_content),
  );
  expect(Math.abs(items.dry_mass - by_hand.solids)).toBeLessThan(0.0005);
  expect(Math.abs(items.wf - by_hand.w)).toBeLessThan(0.00005);
  expect(Math.abs(items.wf_uncorrected - by_hand.w_uncorrected)).toBeLessThan(0.00005);
  expect(items.dry_mass_uncorrected).toBeCloseTo(dry, 12);
  expect(items.w0_uncorrected).toBeCloseTo((102 - dry) / dry, 12);
  expect(Math.abs(items.salt - by_hand.salt)).toBeLessThan(0.0005);
  // Before the test: the pore water is the wet mass less the solids.
  expect(items.w0).toBeCloseTo((102 - items.dry_mass) / items.dry_mass, 12);
});

test(`pore water with salt: sea water at laboratory temperature, and ${data.brine.source}`, () => {
  const water = (temperature: number) => {
    const found = waterDensity(temperature);
    return found.ok ? found.value : NaN;
  };
  expect(Math.abs(poreWaterDensity(water(23), data.salt.salt_content) - data.salt.sea_water_density)).toBeLessThan(
    5e-4,
  );
  expect(Math.abs(poreWaterDensity(water(20), data.brine.salt_content) / data.brine.density - 1)).toBeLessThan(0.005);
});

test("a void ratio of 1.5 is 0.0045 lower with the density of water at 20 C than with 1.000", () => {
  // 1 + e is proportional to the density of water: 2.5 x (1 - 0.998204) = 0.0045. Arithmetic, no source.
  const height = 20;
  const dry = (1.0 * 2.7 * ((Math.PI / 4) * 6.35 ** 2 * 2)) / 2.5;
  const e = (density?: number) => VOID_RATIO(height, SOLIDS_HEIGHT(dry, 2.7, 63.5, null, density));
  expect(e()).toBeCloseTo(1.5, 9);
  expect(e() - e(WATER_DENSITY(20))).toBeCloseTo(0.0045, 4);
  const ring = 50;
  const specimen = (temperature?: number) =>
    SPECIMEN(
      63.5,
      height,
      ring,
      ring + dry * 1.5,
      ring + dry * 1.4,
      ring + dry,
      2.7,
      null,
      null,
      "e0",
      temperature,
    )[0][0];
  expect(specimen()).toBeCloseTo(1.5, 9);
  expect(specimen(20)).toBeCloseTo(e(WATER_DENSITY(20)), 12);
});
