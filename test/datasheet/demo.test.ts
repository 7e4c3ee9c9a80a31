/** The invented test, calculated: the results of the sheet against the values that the test was made from. */
import { blankSheet, demoSheet, fillSheet, type System } from "../../src/datasheet";
import { demoTest, TRUTH } from "../../src/datasheet/demo-test";
import { cellAddress } from "../../src/workbook/address";
import { HAND_TIMES } from "../../src/specification/readings";
import { testCurve } from "../../src/reduction/curve/shape/points";
import { preconsolidation } from "../../src/reduction/curve/preconsolidation";
import { reduceIncrement } from "../../src/reduction/increment/reduce";
import { reduceSpecimen } from "../../src/reduction/specimen";
import { loadSteps } from "../../src/reduction/curve/loads";
import { convert } from "../../src/reduction/units";
import { calculate, type Calculated } from "./sheet-in-engine";
import { english } from "../../src/reduction/message";

const within = (value: unknown, truth: number, share: number) => {
  expect(typeof value).toBe("number");
  expect(Math.abs((value as number) / truth - 1)).toBeLessThan(share);
};

const UNITS = { SI: ["kPa", "m2/yr"], US: ["tsf", "ft2/day"] } as const;

describe.each<System>(["SI", "US"])("the demonstration, %s", (system) => {
  const [stressUnit, cvUnit] = UNITS[system];
  const test_ = demoTest(system);
  let sheet: Calculated;
  beforeAll(async () => {
    sheet = await calculate(demoSheet(system));
  });

  test("shows no error", () => expect(sheet.errors).toEqual([]));

  test("finds the specimen that was put in", () => {
    within(sheet.value("void_ratio_initial"), TRUTH.initialVoidRatio, 0.001);
    within(sheet.value("saturation_initial"), TRUTH.initialSaturation, 0.002);
    within(sheet.value("water_content_initial"), (0.995 * 1.45) / 2.72, 0.001);
    within(sheet.value("saturation_final"), 1, 0.005);
    expect(sheet.value("specimen_remark")).toBe("ok");
  });

  test("finds the final void ratio by both routes, within a division of the dial and the rounding of the masses", () => {
    within(sheet.value("void_ratio_final"), sheet.value("void_ratio_final_by_water") as number, 0.002);
  });

  test("finds the compression curve that it was made from", () => {
    const inKpa = (name: string) => convert(sheet.value(name) as number, "stress", stressUnit, "kPa");
    // A rounded knee reads a little high by Casagrande's construction: up to 9 % at this width (design study, own
    // figures).
    within(inKpa("preconsolidation_stress"), TRUTH.preconsolidationStress, 0.1);
    expect(inKpa("preconsolidation_low")).toBeLessThan(TRUTH.preconsolidationStress);
    expect(inKpa("preconsolidation_high")).toBeGreaterThan(TRUTH.preconsolidationStress);
    within(sheet.value("compression_index"), TRUTH.compressionIndex, 0.02);
    within(sheet.value("recompression_index"), TRUTH.recompressionIndex, 0.05);
    within(sheet.value("swelling_index"), TRUTH.recompressionIndex, 0.05);
    within(
      sheet.value("overconsolidation_ratio"),
      inKpa("preconsolidation_stress") / (system === "SI" ? 62 : 62.245),
      0.001,
    );
  });

  test("finds cv and secondary compression of the loads on the virgin line", () => {
    const virgin = test_.loads.flatMap((load, index) =>
      index > 0 && load > Math.max(...test_.loads.slice(0, index)) && convert(load, "stress", stressUnit, "kPa") > 150
        ? [index]
        : [],
    );
    expect(virgin).toHaveLength(5);
    for (const index of virgin) {
      const cv = (name: string) => convert(sheet.value(name, index) as number, "cv", cvUnit, "m2/yr");
      within(cv("cv_log_time"), TRUTH.cvVirgin, 0.08);
      // On exact theory root time reads 1.5 % high; creep under the load makes it read low.
      within(cv("cv_root_time"), TRUTH.cvVirgin, 0.15);
      expect(sheet.value("cv_chosen", index)).toBe(sheet.value("cv_log_time", index));
    }
    // Strain per log cycle on the initial height; the tail of 24 h is not yet quite straight.
    const last = virgin[virgin.length - 1];
    within(
      sheet.value("c_alpha", last),
      (TRUTH.creepRatio * TRUTH.compressionIndex) / (1 + TRUTH.initialVoidRatio),
      0.15,
    );
  });

  test("says why the first load has no coefficient, and leaves unused loads blank", () => {
    expect(sheet.value("cv_log_time", 0)).toBe("");
    expect(sheet.value("load_remark", 0)).toMatch(/log/);
    for (const name of ["end_reading", "void_ratio_curve", "cv_chosen", "volume_compressibility", "load_remark"])
      expect([name, sheet.value(name, test_.loads.length)]).toEqual([name, ""]);
  });

  test("distinguishes unloading from loading", () => {
    const branches = test_.loads.map((_, index) => sheet.value("load_branch", index));
    expect(branches.join(" ")).toBe(
      test_.loads.map((load, index) => (load < (test_.loads[index - 1] ?? 0) ? "unloading" : "loading")).join(" "),
    );
  });

  test("has readings as a person takes them: whole divisions, each load from the last reading of the one before", () => {
    test_.readings.forEach((series, index) => {
      expect(series).toHaveLength(HAND_TIMES.length);
      expect(series.every(Number.isInteger)).toBe(true);
      if (index > 0) expect(series[0]).toBe(test_.readings[index - 1][HAND_TIMES.length - 1]);
    });
  });
});

test("both systems of units describe one specimen", async () => {
  const [si, us] = [demoTest("SI").cells, demoTest("US").cells];
  for (const mass of ["ring_mass", "ring_and_wet_before", "ring_and_dry", "specific_gravity"])
    expect(us[mass]).toBe(si[mass]);
  for (const length of ["diameter", "initial_height"])
    expect(convert(us[length] as number, "length", "in", "mm")).toBeCloseTo(si[length] as number, 6);
});

test.each<System>(["SI", "US"])("a blank %s sheet shows no error and no result", async (system) => {
  const plan = blankSheet(system);
  const sheet = await calculate(plan);
  expect(sheet.errors).toEqual([]);
  for (const name of ["void_ratio_initial", "preconsolidation_stress", "final_height", "test_summary"])
    expect([name, sheet.value(name)]).toEqual([name, ""]);
  for (let index = 0; index < 24; index++)
    for (const name of ["load_branch", "end_reading", "void_ratio_curve", "log_d0", "time_remark", "load_remark"])
      expect([name, sheet.value(name, index)]).toEqual([name, ""]);
});

test("blank cells passed as 0, as in desktop Excel, change nothing", async () => {
  const [web, desktop] = [await calculate(demoSheet("SI"), null), await calculate(demoSheet("SI"), 0)];
  expect(web.values.size).toBeGreaterThan(1500);
  expect([...desktop.values]).toEqual([...web.values]);
  expect((await calculate(blankSheet("SI"), 0)).errors).toEqual([]);
});

describe("choices", () => {
  const changed = (values: Parameters<typeof fillSheet>[1]) => calculate(fillSheet(demoSheet("SI"), values));

  test("the curve uses d100 where a load has one, and says where it has none", async () => {
    const sheet = await changed({ curve_from: "d100" });
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("void_ratio_curve", 5)).toBe(sheet.value("void_ratio_d100", 5));
    expect(sheet.value("curve_point", 5)).toBe("d100");
    expect(sheet.value("void_ratio_curve", 0)).toBe(sheet.value("void_ratio_end", 0));
    expect(sheet.value("curve_point", 0)).toBe("end");
    expect(sheet.value("load_remark", 0)).toMatch(/no d100/);
  });

  test("a dial that falls on compression gives the same test", async () => {
    const test_ = demoTest("SI");
    const down = (reading: number) => 10_000 - reading;
    const readings = Object.fromEntries(
      test_.readings.map((series, index) => [`readings_${String(index + 1).padStart(2, "0")}`, series.map(down)]),
    );
    const sheet = await changed({ ...readings, zero_reading: down(400), dial_sense: "fall" });
    const rising = await changed({});
    expect(sheet.errors).toEqual([]);
    for (const name of ["void_ratio_end", "strain_d100", "cv_log_time", "c_alpha"])
      expect(sheet.value(name, 5)).toBeCloseTo(rising.value(name, 5) as number, 6);
  });

  test("inches with kPa, a mixture of units, give the same void ratios and stresses", async () => {
    const inch = (mm: number) => mm / 25.4;
    const { columns } = demoTest("SI");
    const sheet = await changed({
      length_unit: "in",
      diameter: 2.5,
      initial_height: 1,
      final_height_measured: inch(17.43),
      dial_factor: inch(0.002),
      apparatus_loading: columns.apparatus_loading.map((mm) => inch(mm as number)),
      apparatus_unloading: columns.apparatus_unloading.map((mm) => inch(mm as number)),
    });
    const metric = await changed({});
    expect(sheet.errors).toEqual([]);
    for (const [name, index] of [
      ["void_ratio_initial"],
      ["preconsolidation_stress"],
      ["density_initial"],
      ["cv_chosen", 5],
    ] as const)
      expect(sheet.value(name, index)).toBeCloseTo(metric.value(name, index) as number, 6);
  });

  test("a reading below the schedule is the end reading if it is the latest", async () => {
    const [times, readings] = [
      [...HAND_TIMES, 2880, 1000],
      [...demoTest("SI").readings[5], 2440, 2395],
    ];
    const sheet = await changed({ times_06: times, readings_06: readings });
    expect(sheet.value("end_reading", 5)).toBe(2440);
  });

  test("a text among the times gets a remark at its load, and every other cell is unchanged", async () => {
    const sheet = await changed({ times_06: [0, 0.1, "1:30 min"] });
    const whole = await changed({});
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("load_remark", 5)).toMatch(/row 3 of the times holds the text "1:30 min"/);
    for (const name of ["preconsolidation_stress", "compression_index", "void_ratio_final"])
      expect(sheet.value(name)).toBe(whole.value(name));
    expect(sheet.value("void_ratio_end", 5)).toBe(whole.value("void_ratio_end", 5));
  });

  test("a dry mass above the wet mass is named where it shows, and results from readings stay right", async () => {
    const sheet = await changed({ ring_and_dry: 300 });
    expect(sheet.value("missing_inputs")).toMatch(
      /Ring \+ wet soil before, D\d+, must be heavier than ring \+ dry soil/,
    );
    expect(sheet.value("strain_end", 5)).toBe((await changed({})).value("strain_end", 5));
    expect(sheet.value("load_stress", 17)).toBe("");
    expect(sheet.value("void_ratio_end", 17)).toBe("");
  });

  test("a test that is still running shows errors only for results that its curve does not give yet", async () => {
    const { loads, cells, columns, readings } = demoTest("SI");
    const series = readings.slice(0, 4).map((values, index) => [`readings_0${index + 1}`, values] as const);
    const { ring_and_wet_before, ring_mass, diameter, initial_height, zero_reading, dial_factor } = cells;
    const started = { ring_and_wet_before, ring_mass, diameter, initial_height, zero_reading, dial_factor };
    const apparatus = { apparatus_stress: columns.apparatus_stress, apparatus_loading: columns.apparatus_loading };
    const plan = fillSheet(blankSheet("SI"), {
      ...started,
      ...apparatus,
      ...Object.fromEntries(series),
      load_stress: loads.slice(0, 5),
    });
    const sheet = await calculate(plan);
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("strain_end", 3)).toBeCloseTo(0.0356, 3);
    expect(sheet.value("void_ratio_end", 3)).toBe("");
    expect(sheet.value("strain_end", 4)).toBe("");
  });

  test("an empty calibration table means no correction, and every load says so", async () => {
    const plan = demoSheet("SI");
    const { row, col, rows } = plan.names.apparatus_stress;
    const emptied = plan.cells.map((cell) =>
      cell.row >= row && cell.row < row + rows && cell.col >= col && cell.col <= col + 2
        ? { ...cell, value: undefined }
        : cell,
    );
    const sheet = await calculate({ ...plan, cells: emptied });
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("apparatus_deflection", 5)).toBe(0);
    expect(sheet.value("load_remark", 5)).toMatch(/not corrected for the apparatus/);
  });

  test("a load beyond the calibration table is blank in its own row, and the head of the sheet names its cell", async () => {
    const sheet = await changed({ load_stress: [...demoTest("SI").loads.slice(0, 12), 12_800] });
    const { row, col } = demoSheet("SI").names.load_stress;
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("apparatus_deflection", 12)).toBe("");
    expect(sheet.value("preconsolidation_stress")).toBe("");
    expect(sheet.value("missing_inputs")).toContain(`does not reach its stress, ${cellAddress(row + 12, col)}`);
    expect(sheet.value("void_ratio_end", 11)).toBeCloseTo(0.73, 2);
  });
});

describe("the deflection of the apparatus is that since the seating stress", () => {
  // Disc readings at seating and three loads, and what is to be deducted: further published figures, arithmetic checked by hand.
  const disc = { apparatus_stress: [5, 50, 200, 800], apparatus_loading: [0.01, 0.042, 0.065, 0.088] };
  const taken = { zero_reading: 100, dial_factor: 0.002, initial_height: 20, load_stress: [5, 50, 200, 800, 50] };
  const series = Object.fromEntries(
    [110, 200, 300, 400, 390].map((end, index) => [`readings_0${index + 1}`, [90, ...Array(13).fill(undefined), end]]),
  );
  const sheetOf = (more: Parameters<typeof fillSheet>[1]) =>
    calculate(fillSheet(blankSheet("SI"), { ...disc, ...taken, ...series, ...more }));
  const deducted = (sheet: Calculated) => [0, 1, 2, 3, 4].map((load) => sheet.value("apparatus_deflection", load));

  test("it is the deflection with the disc under the load, less that under the seating stress", async () => {
    const sheet = await sheetOf({ seating_stress: 5 });
    const expected = [0, 0.032, 0.055, 0.078, 0.032];
    deducted(sheet).forEach((value, index) => expect(value).toBeCloseTo(expected[index], 12));
    expect(sheet.value("apparatus_deflection_seating")).toBeCloseTo(0.01, 12);
    expect(sheet.value("corrected_deformation", 1)).toBeCloseTo(0.2 - 0.032, 12);
  });

  test("unloading has its own column; the deflection at seating is that of loading", async () => {
    const sheet = await sheetOf({ seating_stress: 5, apparatus_unloading: [0.02, 0.05, 0.07, 0.088] });
    expect(deducted(sheet)[4]).toBeCloseTo(0.05 - 0.01, 12);
  });

  test("without a seating stress the zero was taken without load, and the whole deflection counts", async () => {
    for (const seating_stress of [undefined, 0]) {
      const sheet = await sheetOf(seating_stress === undefined ? {} : { seating_stress });
      expect(deducted(sheet)[3]).toBeCloseTo(0.088, 12);
    }
  });

  test("a seating stress below the table leaves the deflection blank, and every load says what to enter", async () => {
    const sheet = await sheetOf({ seating_stress: 2 });
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("apparatus_deflection_seating")).toBe("");
    expect(deducted(sheet)).toEqual(Array(5).fill(""));
    expect(sheet.value("load_remark", 1)).toMatch(
      /deflection table does not reach the seating stress: enter a row for it/,
    );
  });
});

describe("branches", () => {
  /** Reproducible numbers from 0 to 1 (a linear congruential generator). */
  const numbers = (seed: number) => () => (seed = (seed * 1_103_515_245 + 12_345) % 2 ** 31) / 2 ** 31;

  test.each([1, 2, 3])("the branch of a load on the sheet follows the one rule for loads, seed %p", async (seed) => {
    const next = numbers(seed);
    const seating = seed === 2 ? 0 : 10;
    let last = 10;
    const stresses = Array.from({ length: 24 }, () => {
      const move = next();
      const by = move < 0.3 ? 1 + 0.012 * (next() - 0.5) : move < 0.7 ? 1 + next() : 0.3 + 0.7 * next();
      return (last = Number((last * by).toPrecision(6)));
    });
    const sheet = await calculate(
      fillSheet(blankSheet("SI", { readingRows: 30 }), { seating_stress: seating, load_stress: stresses }),
    );
    const kinds = loadSteps(stresses, { before: seating }).map((step) => step!.kind);
    const words = kinds.map((kind) => (kind === "wetting" || kind === "unloading" ? kind : "loading"));
    expect(stresses.map((_, index) => sheet.value("load_branch", index))).toEqual(words);
    expect(new Set(words).size).toBe(3);
  });

  const series = (ends: readonly number[]) =>
    Object.fromEntries(
      ends.map((end, index) => {
        const from = ends[index - 1] ?? 400;
        const shape = demoTest("SI").readings[5].map((value, _, all) => (value - all[0]) / (all[14] - all[0]));
        return [`readings_0${index + 1}`, shape.map((share) => Math.round(from + (end - from) * share))];
      }),
    );
  const { diameter, initial_height, ring_mass, ring_and_dry, specific_gravity, dial_factor } = demoTest("SI").cells;
  const soil = { diameter, initial_height, ring_mass, ring_and_dry, specific_gravity, dial_factor, zero_reading: 400 };
  const apparatus = {
    apparatus_stress: [5, 50, 200],
    apparatus_loading: [0, 0.02, 0.04],
    apparatus_unloading: [0.01, 0.03, 0.04],
  };

  test("a first load that swells, and water added at constant stress, are not faults: blank, with the reason", async () => {
    const sheet = await calculate(
      fillSheet(blankSheet("SI"), {
        ...soil,
        ...apparatus,
        seating_stress: 5,
        load_stress: [10, 10, 50, 200, 50, 50],
        load_mark: [undefined, "inundated"],
        ...series([300, 200, 500, 900, 700, 650]),
      }),
    );
    const { row } = blankSheet("SI").names.load_stress;
    // Three loads are not a curve: the results say so, and no load shows an error.
    expect(sheet.errors.filter((error) => Number(/\d+/.exec(error)) > row)).toEqual([]);
    const branches = [0, 1, 2, 3, 4, 5].map((load) => sheet.value("load_branch", load));
    expect(branches).toEqual(["loading", "wetting", "loading", "loading", "unloading", "wetting"]);
    for (const load of [0, 1, 5])
      for (const name of [
        "volume_compressibility",
        "cv_log_time",
        "cv_root_time",
        "cv_chosen",
        "conductivity",
        "c_alpha",
      ])
        expect([load, name, sheet.value(name, load)]).toEqual([load, name, ""]);
    expect(sheet.value("load_remark", 0)).toMatch(/^the specimen swelled under the load: no cv, mv, k or C alpha/);
    expect(sheet.value("load_remark", 1)).toMatch(/^wetting: no cv, mv, k or C alpha/);
    expect(sheet.value("volume_compressibility", 2)).toBeGreaterThan(0);
    expect(sheet.value("inundation_stress")).toBe(10);
    expect(sheet.value("inundation_strain")).toBeCloseTo((-100 * 0.002) / 25.4, 9);
    // The apparatus does not move while the load stays on.
    expect([4, 5].map((load) => sheet.value("apparatus_deflection", load))).toEqual([0.03, 0.03]);
  });

  test("an unloading load keeps its constructions, and has no cv, k or C alpha; one line says so", async () => {
    const sheet = await calculate(demoSheet("SI"));
    const unloading = demoTest("SI").loads.flatMap((load, index, all) => (load < all[index - 1] ? [index] : []));
    expect(unloading).toHaveLength(5);
    for (const load of unloading) {
      for (const name of ["cv_log_time", "cv_root_time", "cv_chosen", "conductivity", "c_alpha"])
        expect([load, name, sheet.value(name, load)]).toEqual([load, name, ""]);
      expect(sheet.value("volume_compressibility", load)).toBeGreaterThan(0);
    }
    expect(unloading.some((load) => typeof sheet.value("root_t90", load) === "number")).toBe(true);
    expect(
      [...sheet.values.values()].filter((value) => /^No cv, k or C alpha is given for/.test(`${value}`)),
    ).toHaveLength(1);
  });

  test("water added under the seating stress is marked on the line before the first load", async () => {
    const sheet = await calculate(fillSheet(demoSheet("SI"), { seating_mark: "inundated" }));
    expect(sheet.errors).toEqual([]);
    expect([sheet.value("inundation_stress"), sheet.value("inundation_strain")]).toEqual([5, ""]);
  });
});

test("a tail without readings past the end of primary gives no C alpha, and the remark of the load says why", async () => {
  const plan = demoSheet("SI");
  const { row, col } = plan.names.readings_12;
  // Primary of load 12 ends at about 35 min; here it was read for an hour.
  const cells = plan.cells.map((cell) =>
    cell.col === col && cell.row >= row + 11 && cell.row < row + 15 ? { ...cell, value: undefined } : cell,
  );
  const sheet = await calculate({ ...plan, cells });
  expect(sheet.value("log_t100", 11)).toBeGreaterThan(0);
  expect(sheet.value("cv_log_time", 11)).toBeGreaterThan(0);
  expect([sheet.value("tail_slope", 11), sheet.value("c_alpha", 11)]).toEqual(["", ""]);
  expect(sheet.value("load_remark", 11)).toMatch(/secondary compression needs 0.25 of a log cycle/);
  expect(sheet.value("c_alpha", 10)).toBeGreaterThan(0);
});

test("the height of cv is half way between d0 and d100 of its own construction", async () => {
  const sheet = await calculate(demoSheet("SI"));
  const value = (name: string) => sheet.value(name, 5) as number;
  for (const [height, d0, d100] of [
    ["height_middle", "log_d0", "log_d100"],
    ["height_middle_root", "root_d0", "root_d100"],
  ])
    expect(value(height)).toBeCloseTo(
      25.4 - (((value(d0) + value(d100)) / 2 - 400) * 0.002 - value("apparatus_deflection")),
      9,
    );
  // cv = 0.197 (H/2)^2 / t50, in m2 a year of 365.25 days.
  const perYear = (mm2: number) => (mm2 * 365.25 * 1440) / 1e6;
  expect(value("cv_log_time")).toBeCloseTo(perYear((0.197 * (value("height_middle") / 2) ** 2) / value("log_t50")), 9);
  expect(value("cv_root_time")).toBeCloseTo(
    perYear((0.848 * (value("height_middle_root") / 2) ** 2) / value("root_t90")),
    9,
  );
});

test("the points of each method, and the reason of a method without an answer, are shown in full", async () => {
  const sheet = await calculate(demoSheet("SI"));
  expect(sheet.value("methods_remark")).toMatch(
    /^Casagrande: recompression [^;]+; Work: .*; Janbu: the load steps about yield/,
  );
});

test("Pacheco Silva's construction on the sheet begins at e0", async () => {
  const sheet = await calculate(demoSheet("SI"));
  const e0 = sheet.value("void_ratio_initial") as number;
  const stresses = demoTest("SI").loads;
  const curve = stresses.map((_, index) => sheet.value("void_ratio_curve", index) as number);
  const read = (test_: ReturnType<typeof testCurve>) => {
    const found = test_.ok && preconsolidation(test_.value, { method: "pacheco_silva" });
    return found && found.ok ? found.value.stress : NaN;
  };
  const names = [...Array(12).keys()].map((row) => sheet.value("preconsolidation_spread", row));
  const { row, col } = blankSheet("SI").names.preconsolidation_spread;
  const onSheet = sheet.values.get(cellAddress(row + names.indexOf("Pacheco Silva"), col + 1)) as number;
  // A first row without stress gives the specimen before loading.
  expect(onSheet).toBeCloseTo(read(testCurve([null, ...stresses], [e0, ...curve], "e")), 9);
  // Without e0 the construction reads higher, on this curve by 1.6 %.
  expect(read(testCurve(stresses, curve, "e")) / onSheet).toBeGreaterThan(1.01);
});

test("the note on Cr of the field curve says that it came from the loop", async () => {
  const sheet = await calculate(demoSheet("SI"));
  expect(sheet.value("field_recompression_from")).toMatch(/loop/);
});

test("a negligible difference shows as zero, not as minus zero", async () => {
  const sheet = await calculate(demoSheet("SI"));
  expect(sheet.value("dry_mass_difference")).toBe(0);
  expect(Object.is(sheet.value("dry_mass_difference"), -0)).toBe(false);
});

test("the block of results has field curve, quality, C alpha and the load of inundation, on the invented soil", async () => {
  const sheet = await calculate(demoSheet("SI"));
  const within = (name: string, expected: number, share: number) =>
    expect(Math.abs((sheet.value(name) as number) / expected - 1)).toBeLessThan(share);
  within("field_recompression_index", TRUTH.recompressionIndex, 0.05);
  within("c_alpha_ratio", TRUTH.creepRatio, 0.15);
  expect(sheet.value("field_meeting_void_ratio")).toBeCloseTo(0.42 * TRUTH.initialVoidRatio, 3);
  expect(sheet.value("quality_strain_class")).toMatch(/^[A-E]$/);
  expect(sheet.value("inundation_stress")).toBe(12.5);
  expect(sheet.value("inundation_strain")).toBeCloseTo(sheet.value("strain_end", 0) as number, 12);
  expect(sheet.value("cv_20", 5)).toBe("");
});

test("with a temperature there is cv at 20 degrees, and the field curve follows its factor", async () => {
  const warm = await calculate(
    fillSheet(demoSheet("SI"), { load_temperature: Array(16).fill(15), field_factor: 0.4, c_alpha_load: 12 }),
  );
  const ratio = (warm.value("cv_20", 5) as number) / (warm.value("cv_chosen", 5) as number);
  // Viscosity of water at 15 over 20 degrees Celsius: 1.1382 / 1.0016 mPa s (from memory of the tables).
  expect(ratio).toBeCloseTo(1.136, 2);
  expect(warm.value("field_meeting_void_ratio")).toBeCloseTo(0.4 * TRUTH.initialVoidRatio, 3);
  expect(warm.value("c_alpha_chosen")).toBe(warm.value("c_alpha", 11));
});

test("an error in one load does not show in the rows of unused loads", async () => {
  const loads = demoTest("SI").loads;
  const sheet = await calculate(fillSheet(demoSheet("SI"), { load_stress: [...loads.slice(0, 15), 12_800] }));
  for (const name of ["height_middle", "volume_compressibility", "cv_log_time", "conductivity"])
    expect([name, sheet.value(name, 16)]).toEqual([name, ""]);
});

describe("one choice of procedure for the test, and one for a load", () => {
  test('"drawn" gives what the functions give for "drawn"; the choice of a load comes before that of the test', async () => {
    const { readings } = demoTest("SI");
    const drawn = reduceIncrement(HAND_TIMES, readings[5], {}, "drawn");
    const aided = reduceIncrement(HAND_TIMES, readings[5]);
    const t50 = ({ logTime }: typeof drawn) => (logTime.ok ? logTime.value.t50 : NaN);
    expect(Math.abs(t50(drawn) / t50(aided) - 1)).toBeGreaterThan(1e-4);
    const sheet = await calculate(
      fillSheet(demoSheet("SI"), {
        time_procedure: "drawn",
        pick_load: [5],
        pick_of: ["procedure"],
        pick_after: ["aided"],
      }),
    );
    expect(sheet.errors).toEqual([]);
    expect([4, 5].map((load) => sheet.value("load_procedure", load))).toEqual(["aided", "drawn"]);
    expect(sheet.value("log_t50", 5)).toBeCloseTo(t50(drawn), 9);
    expect(sheet.value("log_t50", 4)).toBeCloseTo(t50(reduceIncrement(HAND_TIMES, readings[4])), 9);
    expect(sheet.value("pick_remark", 0)).toMatch(/^used/);
  });
});

test("a load that ends with a reading of 0 counts: the transducer was zeroed at the greatest compression", async () => {
  const { readings } = demoTest("SI");
  const end = readings[5][14];
  const shifted = Object.fromEntries(
    readings.map((series, index) => [
      `readings_${String(index + 1).padStart(2, "0")}`,
      series.map((reading) => reading - end),
    ]),
  );
  const sheet = await calculate(fillSheet(demoSheet("SI"), { ...shifted, zero_reading: 400 - end }));
  const plain = await calculate(demoSheet("SI"));
  expect(sheet.value("end_reading", 5)).toBe(0);
  for (const name of ["deformation", "strain_end", "void_ratio_end", "volume_compressibility"])
    expect(sheet.value(name, 5)).toBeCloseTo(plain.value(name, 5) as number, 9);
  // The reading of 0 at 24 h belongs to the time curve too.
  for (const name of ["log_t50", "log_t100", "tail_slope", "root_t90", "cv_chosen"])
    expect([name, (sheet.value(name, 5) as number) / (plain.value(name, 5) as number)]).toEqual([
      name,
      expect.closeTo(1, 6),
    ]);
  const desktop = await calculate(fillSheet(demoSheet("SI"), { ...shifted, zero_reading: 400 - end }), 0);
  expect([...desktop.values]).toEqual([...sheet.values]);
});

describe("water: its temperature and its salt", () => {
  const values = demoTest("SI").cells;
  const specimen = (more: object) => {
    const found = reduceSpecimen({
      diameter: values.diameter as number,
      height: values.initial_height as number,
      ring: values.ring_mass as number,
      ringAndWetBefore: values.ring_and_wet_before as number,
      ringAndWetAfter: values.ring_and_wet_after as number,
      ringAndDry: values.ring_and_dry as number,
      Gs: values.specific_gravity as number,
      ...more,
    });
    if (!found.ok) throw new Error(english(found.reason));
    return found.value;
  };

  test("at 20 degrees e0 is calculated with water of 0.9982 g/cm3", async () => {
    const sheet = await calculate(fillSheet(demoSheet("SI"), { test_temperature: 20 }));
    expect(sheet.errors).toEqual([]);
    // Kell (1975): 998.204 kg/m3.
    expect(sheet.value("water_density")).toBeCloseTo(0.998204, 6);
    const plain = (await calculate(demoSheet("SI"))).value("void_ratio_initial") as number;
    expect(sheet.value("void_ratio_initial")).toBeCloseTo((1 + plain) * 0.998204 - 1, 5);
  });

  test("salt is taken out of the dry mass, and both water contents stand side by side", async () => {
    const sheet = await calculate(fillSheet(demoSheet("SI"), { pore_salt: 0.035, test_temperature: 20 }));
    expect(sheet.errors).toEqual([]);
    const finalHeight = sheet.value("final_height") as number;
    const expected = specimen({ saltContent: 0.035, temperature: 20, finalHeight });
    for (const [name, value] of [
      ["dry_mass", expected.dryMass],
      ["salt_mass", expected.salt!.mass],
      ["solids_height", expected.Hs],
      ["water_content_initial", expected.w0],
      ["water_content_final", expected.wf],
      ["water_content_initial_weighed", expected.salt!.w0],
      ["water_content_final_weighed", expected.salt!.wf],
      ["void_ratio_initial", expected.e0],
      ["saturation_initial", expected.S0],
      ["saturation_final", expected.Sf!],
    ] as const)
      expect([name, (sheet.value(name) as number) / value]).toEqual([name, expect.closeTo(1, 9)]);
  });
});
