/** Printed collapse and swelling pressure (sources in data/wetting.json), through the worksheet functions. */
import { COLLAPSE, SWELLING_PRESSURE, WETTING_STRAIN } from "../../src/functions/wetting";
import data from "./data/wetting.json";

const column = (values: readonly number[]): any[][] => values.map((value) => [value]);
const byLabel = (rows: any[][]): Record<string, any> => Object.fromEntries(rows);

test.each(data.collapse.potential_percent)(`collapse of %s percent: ${data.collapse.source}`, (percent) => {
  const table = byLabel(COLLAPSE(20, 20 * (1 - percent / 100), 20, 200));
  expect(table.potential).toBeCloseTo(percent / 100, 12);
  expect(table.index).toBe(table.potential);
  expect(table.class).toBe(data.collapse.class);
});

test(`constant volume: ${data.constantVolume.source}`, () => {
  const { height_mm, stress, swell_mm, byHand, pressure } = data.constantVolume;
  const strains = swell_mm.map((swell) => WETTING_STRAIN(height_mm, height_mm + swell));
  strains.forEach((strain, i) =>
    // Half a unit of the last printed digit.
    expect(Math.abs(-100 * strain - (byHand.swell_percent[i] ?? NaN))).toBeLessThanOrEqual(0.005),
  );
  const table = byLabel(SWELLING_PRESSURE(column(stress), column(strains), "constant volume"));
  expect(table.pressure).toBe(pressure);
});
