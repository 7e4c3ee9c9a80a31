import {
  DENSITY,
  SALT_CORRECTION,
  SATURATION,
  SOLIDS_HEIGHT,
  SPECIMEN,
  VOID_RATIO,
  VOID_RATIO_AT_STRAIN,
  WATER_CONTENT,
  WATER_DENSITY,
} from "../../src/functions/specimen";
import { refusal } from "./refusal";

/** An invented specimen: 63.5 by 25.4 mm, nearly saturated. */
const masses = [110.3, 259.2, 253.9, 218.7] as const;
const whole = (finalHeight?: unknown, unit?: unknown, item?: unknown): any[][] =>
  SPECIMEN(63.5, 25.4, ...masses, 2.71, finalHeight, unit, item);

test("SPECIMEN spills its items in order, with units and the remark", () => {
  const table = whole(24);
  expect(table.map(([label, , unit]) => [label, unit])).toEqual([
    ["w0", ""],
    ["wf", ""],
    ["dry_mass", "g"],
    ["Hs", "mm"],
    ["e0", ""],
    ["ef", ""],
    ["S0", ""],
    ["Sf", ""],
    ["density", "Mg/m3"],
    ["dry_density", "Mg/m3"],
    ["remark", ""],
  ]);
  // By hand: A = 31.669 cm2; Hs = 108.4 / (2.71 x 31.669) = 1.26307 cm; e0 = (2.54 - 1.26307) / 1.26307 = 1.01097.
  const items = Object.fromEntries(table);
  expect(items.w0).toBeCloseTo(40.5 / 108.4, 10);
  expect(items.Hs).toBeCloseTo(12.6307, 3);
  expect(items.e0).toBeCloseTo(1.01097, 4);
  expect(items.ef).toBeCloseTo((24 - 12.6307) / 12.6307, 4);
  expect(items.density).toBeCloseTo(148.9 / 80.44, 3);
  expect(items.remark).toBe("ok");
});

test("SPECIMEN gives one item, in inches as in millimetres", () => {
  const inches = (item: string): number => SPECIMEN(2.5, 1, ...masses, 2.71, 24 / 25.4, "in", item)[0][0];
  for (const item of ["w0", "e0", "ef", "S0", "Sf", "density", "dry_density"])
    expect(inches(item)).toBeCloseTo(whole(24, "mm", item)[0][0], 10);
  expect(inches("Hs") * 25.4).toBeCloseTo(whole(24, "mm", "Hs")[0][0], 10);
  expect(whole(24, null, "remark")).toEqual([["ok"]]);
});

test("SPECIMEN without a final height, blank or 0, has no ef and no Sf, and says why", () => {
  for (const blank of [undefined, null, "", 0]) {
    const items = Object.fromEntries(whole(blank));
    expect([items.ef, items.Sf, items.remark]).toEqual(["", "", "ok"]);
    expect(refusal(() => whole(blank, null, "ef"))).toMatch(/^#VALUE! ef needs the final height/);
    expect(refusal(() => whole(blank, null, "Sf"))).toMatch(/^#VALUE! Sf needs the final height/);
    expect(whole(blank, 0, "wf")[0][0]).toBeCloseTo(35.2 / 108.4, 10);
  }
});

test("SPECIMEN names every blank entry, with the same words for blank and 0", () => {
  const names = [
    "diameter",
    "height",
    "ring mass",
    "ring and wet soil before",
    "ring and wet soil after",
    "ring and dry soil",
    "specific gravity",
  ];
  names.forEach((name, index) => {
    const messages = [null, 0, "", [[null]]].map((blank) => {
      const entries: unknown[] = [63.5, 25.4, ...masses, 2.71];
      entries[index] = blank;
      return refusal(() => (SPECIMEN as (...entries: unknown[]) => unknown)(...entries));
    });
    expect(new Set(messages)).toEqual(
      new Set([`#VALUE! the ${name} is blank or zero: enter a number greater than zero`]),
    );
  });
});

test("SPECIMEN refuses impossible masses, and names both entries", () => {
  expect(refusal(() => SPECIMEN(63.5, 25.4, 210.4, 259.2, 253.9, 203.1, 2.71))).toBe(
    "#VALUE! the ring and dry soil (203.1) is less than the ring (210.4): check the two weighings, they may be swapped",
  );
  expect(refusal(() => SPECIMEN(63.5, 25.4, "110.3", 259.2, 253.9, 218.7, 2.71))).toBe(
    "#VALUE! the ring mass holds 110.3 stored as text: re-enter as a number",
  );
});

test("the single steps", () => {
  expect(WATER_CONTENT(259.2 - 110.3, 108.4)).toBeCloseTo(0.373616, 6);
  expect(WATER_CONTENT(259.2, 218.7, 110.3)).toBeCloseTo(0.373616, 6);
  expect(WATER_CONTENT(100, 80, 0)).toBe(WATER_CONTENT(100, 80, null));
  // Water at 20 C, 0.9982: Hs grows by 0.18 %.
  expect(SOLIDS_HEIGHT(108.4, 2.71, 63.5, "mm", 0.9982) / SOLIDS_HEIGHT(108.4, 2.71, 63.5)).toBeCloseTo(1 / 0.9982, 12);
  expect(SOLIDS_HEIGHT(108.4, 2.71, 63.5, null, 0)).toBe(SOLIDS_HEIGHT(108.4, 2.71, 63.5));
  expect(VOID_RATIO(25.4, 12.7)).toBe(1);
  expect(VOID_RATIO_AT_STRAIN(0.1, 1)).toBeCloseTo(0.8, 14);
  expect(VOID_RATIO_AT_STRAIN(null, 1)).toBe(VOID_RATIO_AT_STRAIN(0, 1));
  expect(SATURATION(0.35, 2.7, 0.945)).toBeCloseTo(1, 12);
});

test("density and unit weight", () => {
  expect(DENSITY(148.9, 63.5, 25.4)).toBeCloseTo(1.85107, 4);
  expect(DENSITY(148.9, 2.5, 1, "in", "kN/m3")).toBeCloseTo(1.85107 * 9.80665, 3);
  expect(DENSITY(148.9, 2.5, 1, "in", "pcf")).toBeCloseTo(1.85107 * 62.428, 2);
  expect(refusal(() => DENSITY(148.9, 63.5, 25.4, "yd"))).toMatch(/length unit is "yd": use one of mm, cm, m, in, ft/);
});

describe("water by temperature, and salt in the pore water", () => {
  const salted = (salt?: unknown, item?: unknown, temperature?: unknown): any[][] =>
    SPECIMEN(63.5, 25.4, ...masses, 2.71, 24, null, item, temperature, salt);

  test("SPECIMEN gives the same as before if both are blank or 0", () => {
    for (const blank of [undefined, null, "", 0]) expect(salted(blank, null, blank)).toEqual(whole(24));
  });

  test("the rows of the salt come before the remark, and saturation uses the density of the pore water", () => {
    expect(salted(0.035).map(([label]) => label)).toEqual([
      ...whole(24)
        .map(([label]) => label)
        .slice(0, -1),
      "salt",
      "dry_mass_uncorrected",
      "w0_uncorrected",
      "wf_uncorrected",
      "remark",
    ]);
    const items = Object.fromEntries(salted(0.035));
    const plain = Object.fromEntries(whole(24));
    expect(items.w0_uncorrected).toBe(plain.w0);
    expect(items.wf_uncorrected).toBe(plain.wf);
    expect(items.dry_mass + items.salt).toBeCloseTo(plain.dry_mass, 12);
    // By hand: S = volume of pore water over volume of voids, pore water at 1.000 + 0.0265 Mg/m3.
    const volume = (Math.PI / 4) * 6.35 ** 2 * 2.54;
    const voids = volume - items.dry_mass / 2.71;
    expect(items.S0).toBeCloseTo((148.9 - items.dry_mass) / 1.0265 / voids, 9);
    expect(items.density).toBe(plain.density);
    expect(salted(0.035, "salt")[0][0]).toBe(items.salt);
  });

  test("a temperature alone changes e0 and Hs, not the water contents", () => {
    const items = Object.fromEntries(salted(null, null, 20));
    const plain = Object.fromEntries(whole(24));
    expect(items.Hs / plain.Hs).toBeCloseTo(1 / 0.998204, 6);
    expect(items.w0).toBe(plain.w0);
    expect(items.S0).toBeCloseTo((plain.w0 * 2.71) / items.e0, 12);
  });

  test("SALT_CORRECTION takes a tare, and gives one item", () => {
    expect(SALT_CORRECTION(131.2, 91.2, 0.035, 31.2, "solids")[0][0]).toBeCloseTo(100 - 40 / 0.965, 12);
    expect(SALT_CORRECTION(131.2, 91.2, 0.035, 31.2).map(([label]) => label)).toEqual([
      "solids",
      "salt",
      "pore_water",
      "w",
      "w_uncorrected",
      "remark",
    ]);
  });

  test("WATER_DENSITY works in the units of density", () => {
    expect(WATER_DENSITY(20)).toBeCloseTo(0.998204, 6);
    expect(WATER_DENSITY(20, "kN/m3")).toBeCloseTo(9.78904, 4);
  });

  test("impossible values are refused with the remedy", () => {
    for (const wrong of [null, 0, -3, 68, 293.15])
      expect(refusal(() => WATER_DENSITY(wrong))).toMatch(/^#VALUE!.*degrees Celsius/);
    expect(refusal(() => salted(null, null, 68))).toMatch(/^#VALUE!.*degrees Celsius/);
    expect(refusal(() => salted(35))).toBe(
      "#VALUE! the salt content is 35: enter the mass of salt over that of the pore water as a ratio, 0.035 for sea water, so 0.035 for 35 g/kg",
    );
    expect(refusal(() => salted(0.5))).toMatch(/^#VALUE! the salt content is 0.5/);
    expect(refusal(() => SALT_CORRECTION(100, 60, null))).toMatch(/^#VALUE! the salt content is blank or zero/);
    expect(refusal(() => SALT_CORRECTION(60, 100, 0.035))).toMatch(/^#VALUE!.*swapped/);
    expect(refusal(() => SALT_CORRECTION(60, 60, 0.035))).toMatch(/^#VALUE!.*not above the dry mass/);
    expect(refusal(() => SALT_CORRECTION(100, 5, 0.26))).toMatch(/^#VALUE!.*more than the dry mass/);
  });
});
