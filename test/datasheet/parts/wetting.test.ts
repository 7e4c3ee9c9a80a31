/** The stage of wetting on the sheet, held against the functions and against printed figures. */
import { blankSheet, fillSheet } from "../../../src/datasheet";
import { demoTest } from "../../../src/datasheet/demo-test";
import { readRecord } from "../../../src/record/record";
import { stageAt, wettingPlaces } from "../../../src/record/wetting";
import { collapse } from "../../../src/reduction/wetting";
import { swellingPressure } from "../../../src/reduction/swelling-pressure";
import type { CellValue } from "../../../src/workbook/port";
import { namedValues } from "../read-sheet";
import { calculate } from "../sheet-in-engine";

const { ring_mass, ring_and_dry, specific_gravity } = demoTest("SI").cells;
/** A specimen of 20 mm under a dial that counts millimetres, zeroed under the seating stress. */
const SOIL = {
  diameter: 71.4,
  initial_height: 20,
  ring_mass,
  ring_and_dry,
  specific_gravity,
  dial_factor: 1,
  zero_reading: 0,
  seating_stress: 5,
};

/** The end reading of each load, at one day. */
const ends = (readings: readonly number[]): Record<string, CellValue[]> =>
  Object.fromEntries(
    readings.flatMap((reading, index) => {
      const load = String(index + 1).padStart(2, "0");
      return [
        [`times_${load}`, [0, 1440]],
        [`readings_${load}`, [readings[index - 1] ?? 0, reading]],
      ];
    }),
  );

const small = () => blankSheet("SI", { loads: 10, readingRows: 30 });

test("a collapse under 200 kPa gives potential, index and class, and the strain on the height chosen", async () => {
  const filled = {
    ...SOIL,
    load_stress: [50, 100, 200, 200, 400],
    load_mark: [undefined, undefined, undefined, "wetting"],
    ...ends([0.1, 0.2, 0.4, 1.4, 1.9]),
  };
  const sheet = await calculate(fillSheet(small(), filled));
  const held = collapse(19.6, 18.6, 20, 200);
  if (!held.ok) throw new Error("no collapse");
  expect([sheet.value("wetting_load"), sheet.value("wetting_stress")]).toEqual([4, 200]);
  expect(sheet.value("wetting_height_before")).toBeCloseTo(19.6, 9);
  expect(sheet.value("wetting_height_after")).toBeCloseTo(18.6, 9);
  expect(sheet.value("wetting_strain")).toBeCloseTo(1 / 19.6, 9);
  expect(sheet.value("collapse_potential")).toBeCloseTo(held.value.potential, 9);
  expect(sheet.value("collapse_index")).toBeCloseTo(0.05, 9);
  expect(sheet.value("collapse_class")).toBe("moderate");
  expect([sheet.value("wetting_swell"), sheet.value("swelling_pressure_used")]).toEqual(["", ""]);
  const onInitial = await calculate(fillSheet(small(), { ...filled, wetting_reference: "initial height" }));
  expect(onInitial.value("wetting_strain")).toBeCloseTo(0.05, 9);
});

test("a specimen that swells under seating and is loaded back gives its swelling pressure", async () => {
  const stresses = [5, 25, 50, 100, 200];
  const readings = [-1.2, -0.9, -0.5, -0.1, 0.4];
  const sheet = await calculate(
    fillSheet(small(), {
      ...SOIL,
      swelling_method: "load back",
      load_stress: stresses,
      load_mark: ["wetting"],
      ...ends(readings),
    }),
  );
  const held = swellingPressure(
    stresses,
    readings.map((reading) => reading / 20),
    "load back",
  );
  if (!held.ok) throw new Error("no pressure");
  expect([sheet.value("wetting_load"), sheet.value("load_branch")]).toEqual([1, "wetting"]);
  expect(sheet.value("wetting_strain")).toBeCloseTo(-0.06, 9);
  expect(sheet.value("wetting_swell")).toBeCloseTo(0.06, 9);
  expect(sheet.value("swelling_pressure_used")).toBeCloseTo(held.value.pressure, 6);
  expect([sheet.value("swelling_pressure_low"), sheet.value("swelling_pressure_high")]).toEqual([100, 200]);
  expect([sheet.value("collapse_potential"), sheet.value("collapse_index")]).toEqual(["", ""]);
});

// A thesis, D 71.4 mm, H0 11 mm (figures for wetting, read): the load was raised to 82.46 kPa so that nothing swelled,
// and then taken off; strains on unloading 0, 0.96, 2.30, 2.92, 4.90, 6.59 %.
test("a volume held constant gives the printed pressure, and the unloading after it the printed swell", async () => {
  const swell = [0, 0.106, 0.253, 0.321, 0.539, 0.725];
  const sheet = await calculate(
    fillSheet(small(), {
      ...SOIL,
      initial_height: 11,
      swelling_method: "constant volume",
      load_stress: [5, 41.23, 82.46, 41.23, 19.99, 10, 5, 2.5],
      load_mark: ["wetting"],
      ...ends([0, 0, ...swell.map((mm) => -mm)]),
    }),
  );
  expect(sheet.value("swelling_pressure_used")).toBeCloseTo(82.46, 9);
  const strains = [2, 3, 4, 5, 6, 7].map((load) => -100 * Number(sheet.value("strain_end", load)));
  [0, 0.96, 2.3, 2.92, 4.9, 6.59].forEach((printed, i) => expect(Math.abs(strains[i] - printed)).toBeLessThan(0.006));
});

test("a load of the stress before is wetting only if it is marked; a mark on another stress is remarked on", async () => {
  const sheet = await calculate(
    fillSheet(small(), {
      ...SOIL,
      swelling_pressure: 60,
      load_stress: [50, 50, 100],
      load_mark: [undefined, undefined, "wetting"],
      ...ends([0.1, 0.12, 0.3]),
    }),
  );
  expect(sheet.value("load_branch", 1)).toBe("wetting");
  expect(sheet.value("load_remark", 2)).toContain("marked as wetting, but the stress is not that of the load before");
  // The value that was measured stands where no method is chosen.
  expect(sheet.value("swelling_pressure_used")).toBe(60);
});

test("a blank sheet shows none, and no error", async () => {
  const sheet = await calculate(small());
  expect(sheet.errors).toEqual([]);
  for (const name of ["wetting_load", "wetting_strain", "swelling_pressure_used", "collapse_class", "wetting_rate"])
    expect(sheet.value(name)).toBe("");
});

test("each of several stages has its own strain and step; collapse and class are of the first, and the sheet says so", async () => {
  const filled = {
    ...SOIL,
    load_stress: [50, 100, 100, 200, 200, 400],
    load_mark: [undefined, undefined, "wetting", undefined, "wetting"],
    ...ends([0.1, 0.2, 0.6, 0.9, 1.9, 2.2]),
  };
  const sheet = await calculate(fillSheet(small(), filled));
  const strains = [0, 1, 2, 3, 4, 5].map((row) => sheet.value("load_wetting_strain", row));
  expect(strains.map((strain) => strain !== "")).toEqual([false, false, true, false, true, false]);
  // Heights 19.8 to 19.4, and 19.1 to 18.1 mm.
  expect(strains[2]).toBeCloseTo(0.4 / 19.8, 9);
  expect(strains[4]).toBeCloseTo(1 / 19.1, 9);
  expect(sheet.value("wetting_load")).toBe(3);
  expect(sheet.value("wetting_strain")).toBeCloseTo(0.4 / 19.8, 9);
  expect(sheet.value("collapse_potential")).toBeCloseTo(0.02, 9);
  expect(sheet.value("wetting_stages")).toBe("2 stages; these results: load 3");
  const record = readRecord(await namedValues(fillSheet(small(), filled)));
  expect(wettingPlaces(record)).toEqual([2, 4]);
  expect(wettingPlaces(record).map((at) => stageAt(record, at))).toMatchObject([
    { value: { stress: 100, strain: expect.closeTo(0.4 / 19.8, 9) } },
    { value: { stress: 200, strain: expect.closeTo(1 / 19.1, 9) } },
  ]);
  const onInitial = await calculate(fillSheet(small(), { ...filled, wetting_reference: "initial height" }));
  expect(onInitial.value("load_wetting_strain", 4)).toBeCloseTo(0.05, 9);
});

test("with one stage, its strain stands in its row, and nothing is said of others", async () => {
  const sheet = await calculate(
    fillSheet(small(), { ...SOIL, load_stress: [5, 25], load_mark: ["wetting"], ...ends([-1.2, -0.9]) }),
  );
  expect(sheet.value("load_wetting_strain")).toBeCloseTo(-0.06, 9);
  expect([sheet.value("load_wetting_strain", 1), sheet.value("wetting_stages")]).toEqual(["", ""]);
});
