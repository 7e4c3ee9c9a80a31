/**
 * Printed whole tests, entered on the data sheet cell by cell and calculated by its formulas. Times of readings, and masses that a
 * source does not give, are invented to fit what it gives.
 */
import { blankSheet, fillSheet, type SheetValues } from "../../src/datasheet";
import { CURVE_PICK_WORDS, OF_CURVE, type CurvePickName } from "../../src/reduction/curve/picks";
import { calculate } from "../datasheet/sheet-in-engine";
import curves from "./data/compression-curves.json";
import specimens from "./data/specimen.json";
import timeCurves from "./data/time-curves.json";

/** One reading a load, after 24 h. */
const readAfterADay = (readings: readonly number[]): SheetValues =>
  Object.fromEntries(
    readings.flatMap((reading, index) => [
      [`times_0${index + 1}`, [1440]],
      [`readings_0${index + 1}`, [reading]],
    ]),
  );
const off = (value: unknown, printed: number): number => Math.abs(Number(value) - printed);

/**
 * R. F. Craig, Craig's Soil Mechanics, 7th ed. (2004), Example 7.1, from memory. The book gives the height, the dial, the water
 * content at the end with full saturation, and Gs; the ring of 75 mm and 100 g is invented. The unloading to no stress cannot
 * be entered as a load: it is the final height. The book draws 325 kPa; the sheet answers 286 kPa.
 */
describe("Craig, example 7.1", () => {
  const STRESSES = [54, 107, 214, 429, 858, 1716, 3432];
  const DIAL = [4.747, 4.493, 4.108, 3.449, 2.608, 1.676, 0.737];
  const PRINTED = { e0: 0.891, e: [0.866, 0.841, 0.802, 0.737, 0.653, 0.56, 0.467], yieldStress: 325, Cc: 0.31 };
  const [H0, ZERO, LAST] = [19, 5, 1.48];
  const [WATER, GS, DIAMETER, RING] = [0.198, 2.73, 75, 100];
  const height = H0 - (ZERO - LAST);
  const dry = (GS * ((Math.PI * DIAMETER ** 2) / 4) * (height / (1 + WATER * GS))) / 1000;
  const sheet = () =>
    calculate(
      fillSheet(blankSheet("SI"), {
        ...{ diameter: DIAMETER, initial_height: H0, specific_gravity: GS, ring_mass: RING },
        ...{ ring_and_dry: RING + dry, ring_and_wet_after: RING + dry * (1 + WATER) },
        ...{ ring_and_wet_before: RING + dry * 1.32, final_height_measured: height },
        ...{ dial_factor: 1, dial_sense: "fall", zero_reading: ZERO, load_stress: STRESSES },
        ...readAfterADay(DIAL),
      }),
    );

  test("the void ratios are those that the book prints, to the digits printed", async () => {
    const found = await sheet();
    expect(off(found.value("void_ratio_initial"), PRINTED.e0)).toBeLessThanOrEqual(0.001);
    PRINTED.e.forEach((e, load) => expect(off(found.value("void_ratio_end", load), e)).toBeLessThanOrEqual(0.001));
    expect(off(found.value("water_content_final"), WATER)).toBeLessThanOrEqual(1e-6);
  });

  test("Casagrande's construction is within 15 % of the stress read by hand, and Cc is that of the book", async () => {
    const found = await sheet();
    expect(off(found.value("preconsolidation_stress"), PRINTED.yieldStress)).toBeLessThanOrEqual(
      0.15 * PRINTED.yieldStress,
    );
    expect(off(found.value("compression_index"), PRINTED.Cc)).toBeLessThanOrEqual(0.01);
  });
});

/**
 * A problem of Das's textbook in inches and lb/ft2, as solved in a US course's homework of 2012 (scribd.com/doc/300564454): dry mass
 * 95.2 g, area 4.91 in2, height 0.748 in. The readings are the printed heights, which fall; the ring is invented.
 */
describe("Das, the test of 0.748 in", () => {
  const HEIGHTS = [0.6947, 0.685, 0.6705, 0.652, 0.6358, 0.6252];
  const PRINTED = { Hs: 0.441, e0: 0.694, e: [0.573, 0.551, 0.518, 0.477, 0.44, 0.416], Cc: 0.131 };
  const [H0, MASS, RING] = [0.748, 95.2, 100];

  test("height of solids, void ratios and Cc are those printed", async () => {
    const found = await calculate(
      fillSheet(blankSheet("US"), {
        ...{ length_unit: "in", stress_unit: "psf", diameter: Math.sqrt((4 * 4.91) / Math.PI), initial_height: H0 },
        ...{ specific_gravity: 2.68, ring_mass: RING, ring_and_dry: RING + MASS },
        ...{ ring_and_wet_before: RING + 1.26 * MASS, ring_and_wet_after: RING + 1.16 * MASS },
        ...{ dial_factor: 1, dial_sense: "fall", zero_reading: H0 },
        load_stress: [500, 1000, 2000, 4000, 8000, 16_000],
        ...readAfterADay(HEIGHTS),
      }),
    );
    expect(off(found.value("solids_height"), PRINTED.Hs)).toBeLessThanOrEqual(0.0005);
    expect(off(found.value("void_ratio_initial"), PRINTED.e0)).toBeLessThanOrEqual(0.001);
    PRINTED.e.forEach((e, load) => expect(off(found.value("void_ratio_end", load), e)).toBeLessThanOrEqual(0.001));
    // The curve flattens at its end, and bends nowhere as that of a specimen that yields.
    expect(found.value("preconsolidation_stress")).toBe("");
    expect(off(found.value("compression_index"), PRINTED.Cc)).toBeLessThanOrEqual(0.01);
  });
});

/** A specimen in a ring of 75 mm and 100 g, with this height, void ratio and Gs: the ring and the water are invented. */
function specimenOf(height: number, e0: number, Gs = 2.7): SheetValues {
  const [diameter, ring] = [75, 100];
  const dry = ((Math.PI * diameter ** 2) / 4) * (height / (1 + e0)) * (Gs / 1000);
  return {
    ...{ diameter, initial_height: height, specific_gravity: Gs, ring_mass: ring, ring_and_dry: ring + dry },
    ...{ ring_and_wet_before: ring + dry * (1 + e0 / Gs), ring_and_wet_after: ring + dry * (1 + (0.8 * e0) / Gs) },
  };
}

/** A printed curve as a test: its readings are the heights that its void ratios give a specimen of 20 mm. */
const testOf = (e0: number, stress: readonly number[], voidRatio: readonly number[]): SheetValues => ({
  ...{ length_unit: "mm", ...specimenOf(20, e0), dial_factor: 1, dial_sense: "fall", zero_reading: 20 },
  load_stress: [...stress],
  ...readAfterADay(voidRatio.map((e) => (20 * (1 + e)) / (1 + e0))),
});

/** Rows of the table of picks for the curve. */
const pickedOnCurve = (picks: Partial<Record<CurvePickName, number>>): SheetValues => {
  const rows = Object.entries(picks) as [CurvePickName, number][]; // Object.entries types the names as strings.
  return {
    pick_load: rows.map(() => OF_CURVE),
    pick_of: rows.map(([name]) => CURVE_PICK_WORDS[name]),
    pick_after: rows.map(([, value]) => value),
    pick_reason: rows.map(() => "as the source"),
    pick_by: rows.map(() => "A"),
  };
};

/** The curve steepens to its end; the range of the stress was read again. The sheet answers 6.61 tsf, and Cc 0.246. */
describe(`Das, example 11.2: ${curves.dasExample11_2.source}`, () => {
  const { stress, voidRatio, recalculated } = curves.dasExample11_2;
  const [e0 = NaN, ...e] = voidRatio;

  test("void ratios are those printed; Cc is that of the last two points, and the stress in the range read by hand", async () => {
    const found = await calculate(
      fillSheet(blankSheet("US"), {
        stress_unit: "tsf",
        ...testOf(e0, stress.slice(1), e),
        ...pickedOnCurve({ virgin_from: 16, virgin_to: 32 }),
      }),
    );
    expect(off(found.value("void_ratio_initial"), e0)).toBeLessThanOrEqual(1e-9);
    e.forEach((one, load) => expect(off(found.value("void_ratio_end", load), one)).toBeLessThanOrEqual(1e-9));
    expect(off(found.value("compression_index"), recalculated.CcLastPair)).toBeLessThanOrEqual(0.0005);
    const [low = NaN, high = NaN] = recalculated.preconsolidation;
    expect(found.value("preconsolidation_stress")).toBeGreaterThan(low);
    expect(found.value("preconsolidation_stress")).toBeLessThan(high);
  });
});

/**
 * The source gives no void ratio before the first load (1.12 is invented), and no point of greatest curvature (79 kPa is on the
 * knee). The sheet answers 115.1 kPa and 0.448, the source 115 kPa and 0.451.
 */
describe(`Das, soft clay: ${curves.dasSoftClay.source}`, () => {
  const { stress, voidRatio, published } = curves.dasSoftClay;

  test("with the steepest two points and the knee picked, stress and Cc are those printed within 1 %", async () => {
    const picks = { virgin_from: 191.52, virgin_to: 383.04, greatest_curvature: 79 };
    const found = await calculate(
      fillSheet(blankSheet("SI"), { ...testOf(1.12, stress, voidRatio), ...pickedOnCurve(picks) }),
    );
    expect(off(found.value("preconsolidation_stress"), published.preconsolidation)).toBeLessThanOrEqual(
      0.01 * published.preconsolidation,
    );
    expect(off(found.value("compression_index"), published.Cc)).toBeLessThanOrEqual(0.01 * published.Cc);
  });
});

/**
 * The notes take 80 kPa, where the straight part begins; Casagrande's construction on the sheet answers 65 kPa, which is lower by
 * 19 % and is not compared here.
 */
describe(`French clay: ${curves.frenchClay.source}`, () => {
  const { stress, settlement_mm, height_mm, e0, voidRatio, inSitu, published } = curves.frenchClay;

  test("settlements give the printed void ratios; Cc from yield on is that printed within 2 %", async () => {
    const found = await calculate(
      fillSheet(blankSheet("SI"), {
        ...{ ...specimenOf(height_mm, e0), dial_factor: 1, dial_sense: "rise", zero_reading: 0 },
        ...{ load_stress: stress, in_situ_stress: inSitu, ...readAfterADay(settlement_mm) },
        ...pickedOnCurve({ virgin_from: 80, virgin_to: 300 }),
      }),
    );
    voidRatio.forEach((e, load) => expect(off(found.value("void_ratio_end", load), e)).toBeLessThanOrEqual(0.0005));
    expect(off(found.value("compression_index"), published.Cc)).toBeLessThanOrEqual(0.02 * published.Cc);
  });
});

/** The sheet answers 18.954 mm, a root of t90 of 6.53 (printed: 18.955 and 6.65) and cv of 1.729 mm2/min. */
describe(`Heriot-Watt, one load: ${timeCurves.heriotWatt13.source}`, () => {
  const { minutes, thickness, published, recalculated } = timeCurves.heriotWatt13;

  test("the corrected zero is that printed within 0.005 mm, the root of t90 within 3 %, cv within 6 %", async () => {
    const found = await calculate(
      fillSheet(blankSheet("SI"), {
        ...{ ...specimenOf(19, 0.85), dial_factor: 1, dial_sense: "fall", zero_reading: 19, cv_unit: "mm2/min" },
        ...{ seating_stress: 150, load_stress: [250], times_01: minutes, readings_01: thickness },
      }),
    );
    expect(off(found.value("root_d0"), published.correctedZero)).toBeLessThan(0.005);
    expect(off(Math.sqrt(Number(found.value("root_t90"))), published.rootT90)).toBeLessThanOrEqual(
      0.03 * published.rootT90,
    );
    const printed = recalculated.cvMm2PerMinFromPublished;
    expect(off(found.value("cv_root_time"), printed)).toBeLessThanOrEqual(0.06 * printed);
  });
});

describe(`Bay Mud specimen: ${specimens.bayMud.source}`, () => {
  const { height_mm, volume_cm3, w0, wf, Gs, dry_mass_g, rederived } = specimens.bayMud;

  test("height of solids, void ratio, saturation and densities are those worked out again", async () => {
    const ring = 100;
    const found = await calculate(
      fillSheet(blankSheet("SI"), {
        ...{ diameter: Math.sqrt((4000 * volume_cm3) / height_mm / Math.PI), initial_height: height_mm },
        ...{ specific_gravity: Gs, ring_mass: ring, ring_and_dry: ring + dry_mass_g },
        ...{ ring_and_wet_before: ring + dry_mass_g * (1 + w0), ring_and_wet_after: ring + dry_mass_g * (1 + wf) },
      }),
    );
    expect(off(found.value("solids_height"), rederived.Hs_mm)).toBeLessThanOrEqual(0.0002);
    expect(off(found.value("void_ratio_initial"), rederived.e0)).toBeLessThanOrEqual(0.0002);
    expect(off(found.value("saturation_initial"), rederived.S0)).toBeLessThanOrEqual(0.00005);
    expect(off(found.value("density_initial"), rederived.density)).toBeLessThanOrEqual(0.00005);
    expect(off(found.value("dry_density_initial"), rederived.dry_density)).toBeLessThanOrEqual(0.00005);
    expect(found.value("water_content_final")).toBeCloseTo(wf, 10);
  });
});
