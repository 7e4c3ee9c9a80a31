/** A record read from the calculated demonstration, and from sheets that lack names or hold unusable values. */
import { blankSheet, demoSheet, FIELDS, type System } from "../../src/datasheet";
import { demoTest } from "../../src/datasheet/demo-test";
import { HAND_TIMES } from "../../src/specification/readings";
import * as names from "../../src/record/names";
import { RECORD_NAMES, readRecord, type NamedValues, type TestRecord } from "../../src/record/record";
import { convert } from "../../src/reduction/units";
import { namedValues, withoutNames, withValues } from "../datasheet/read-sheet";
import { inEnglish } from "../in-english";

const IN_USE = { SI: ["mm", "kPa", "m"], US: ["in", "tsf", "ft"] } as const;

describe.each<System>(["SI", "US"])("the demonstration, %s", (system) => {
  const [length, stress, depth] = IN_USE[system];
  const typed = demoTest(system);
  let values: NamedValues;
  let record: TestRecord;
  beforeAll(async () => {
    values = await namedValues(demoSheet(system));
    record = readRecord(values);
  });

  test("has every name and no fault", () => {
    expect(record.missing).toEqual([]);
    expect(record.faults).toEqual([]);
  });

  test("has the typed numbers, converted once", () => {
    const { numbers } = record;
    const cell = (name: string) => typed.cells[name] as number;
    expect(numbers.diameter).toBeCloseTo(convert(cell("diameter"), "length", length, "mm"), 9);
    expect(numbers.initial_height).toBeCloseTo(convert(cell("initial_height"), "length", length, "mm"), 9);
    expect(numbers.dial_factor).toBeCloseTo(convert(cell("dial_factor"), "length", length, "mm"), 12);
    expect(numbers.in_situ_stress).toBeCloseTo(convert(cell("in_situ_stress"), "stress", stress, "kPa"), 9);
    expect(numbers.depth).toBeCloseTo(convert(cell("depth"), "length", depth, "m"), 9);
    expect(numbers.ring_and_dry).toBe(cell("ring_and_dry"));
    expect(numbers.zero_reading).toBe(cell("zero_reading"));
  });

  test("has words and dates unchanged", () => {
    expect(record.words).toMatchObject({
      project: "Example causeway (invented)",
      sample: "U7",
      date_started: "2031-03-03",
      drainage: "double",
      time_method: "log time",
      specific_gravity_basis: "measured",
      stress_unit: stress,
      depth_unit: depth,
    });
    expect(record.words.tested_by).toBeUndefined();
  });

  test("has every load with its stress, mark, day and readings", () => {
    expect(record.loads.map((load) => load.number)).toEqual(typed.loads.map((_, index) => index + 1));
    record.loads.forEach((load, index) => {
      expect(load.stress).toBeCloseTo(convert(typed.loads[index], "stress", stress, "kPa"), 9);
      expect(load.inundated).toBe(index === 0);
      expect(load.readings.map(({ time }) => time)).toEqual([...HAND_TIMES]);
      expect(load.readings.map(({ reading }) => reading)).toEqual([...typed.readings[index]]);
      expect(load.readings[3].row).toBe(4);
    });
    expect(record.loads[1].started).toBe("2031-03-04");
  });

  test("has tins and the calibration table in their filled rows", () => {
    expect(record.tins.map(({ number }) => number)).toEqual(["T14", "T22", "T31"]);
    expect(record.tins[0].mass).toBe(21.35);
    expect(record.deflections).toHaveLength(11);
    const last = (typed.columns.apparatus_unloading as number[])[10];
    expect(record.deflections[10].unloading).toBeCloseTo(convert(last, "length", length, "mm"), 9);
  });

  test("has the results of the sheet, in the same units: one follows from another by arithmetic", () => {
    const { numbers, results, loads } = record;
    expect(results.dry_mass).toBeCloseTo(numbers.ring_and_dry! - numbers.ring_mass!, 9);
    expect(results.void_ratio_initial).toBeCloseTo(numbers.initial_height! / results.solids_height! - 1, 9);
    const volume = (Math.PI * numbers.diameter! ** 2 * numbers.initial_height!) / 4000;
    expect(results.dry_density_initial).toBeCloseTo(results.dry_mass! / volume, 9);
    for (const { results: shown } of loads)
      expect(shown.height_end! + shown.corrected_deformation!).toBeCloseTo(numbers.initial_height!, 9);
    // mv of the fourth load on the height at its start, from the heights: 1/MPa is m2/MN.
    const [before, load] = [loads[2], loads[3]];
    const squeeze = (before.results.height_end! - load.results.height_end!) / before.results.height_end!;
    expect(load.results.volume_compressibility).toBeCloseTo((1000 * squeeze) / (load.stress! - before.stress!), 9);
    expect(load.results.cv_chosen).toBe(load.results.cv_log_time);
    expect(loads[15].words.load_branch).toBe("unloading");
    expect(record.remarks.specimen_remark).toBe("ok");
  });
});

describe("the names", () => {
  test("the types list the names of the specification, and every field is in one of them", () => {
    const read: string[] = [
      ...[names.NUMBERS, names.WORDS, names.RESULTS, names.REMARKS, names.LOAD_RESULTS, names.LOAD_WORDS].flat(),
      ..."tin_number tin_mass tin_and_wet tin_and_dry apparatus_stress apparatus_loading apparatus_unloading".split(
        " ",
      ),
      ..."load_stress load_mark load_started load_temperature".split(" "),
      ..."pick_load pick_of pick_before pick_after pick_reason pick_by pick_when".split(" "),
      ..."adopted_value adopted_reason adopted_by adopted_day".split(" "),
      ..."adopted_cv adopted_cv_low adopted_cv_high adopted_cv_reason adopted_cv_by adopted_cv_day".split(" "),
    ];
    const fields = FIELDS.map(({ name }) => name).filter((name) => !/^(times|readings)_\d\d$/.test(name));
    // Calculated from the tins, by every method, or from the picks: the record is read from their inputs instead.
    const unread = ["tin_water_content", "preconsolidation_spread", "pick_remark", "adopted_constructed"];
    unread.push("adopted_cv_from", "adopted_cv_to", "adopted_cv_constructed", "adopted_cv_source");
    // What the sheet says of itself while it is filled in.
    unread.push("missing_inputs", "next_load", "test_state", "adopted_source", "register_source");
    unread.push("input_remark", "choice_remark", "entry_remark", "curve_gap", "size_remark", "unusual_remark");
    expect(read.sort()).toEqual(fields.filter((name) => !unread.includes(name)).sort());
  });

  test("the names to ask a port for are those of the sheet, and those that a firm may add", () => {
    for (const { name } of FIELDS) expect(RECORD_NAMES).toContain(name);
    for (const name of ["times_48", "readings_48", "load_mass", "override_of"]) expect(RECORD_NAMES).toContain(name);
  });
});

describe("an incomplete sheet", () => {
  const sheet: NamedValues = {
    length_unit: [["mm"]],
    stress_unit: [["kPa"]],
    diameter: [[63.5]],
    ring_mass: [[74.36]],
    load_stress: [[12.5], [25], [""]],
  };
  const faultOf = (changes: Parameters<typeof withValues>[1]) =>
    inEnglish(readRecord(withValues(sheet, changes)).faults);

  test("without names the record is empty, and every name is listed as missing", () => {
    const record = readRecord({});
    expect(record).toMatchObject({ numbers: {}, words: {}, loads: [], tins: [], results: {}, faults: [] });
    expect(record.missing).toHaveLength(FIELDS.length);
  });

  test("with some names their values are read, and the other names are listed", () => {
    const record = readRecord(sheet);
    expect(record.numbers).toEqual({ diameter: 63.5, ring_mass: 74.36 });
    expect(record.loads.map(({ stress }) => stress)).toEqual([12.5, 25]);
    expect(record.faults).toEqual([]);
    expect(record.missing).toContain("specific_gravity");
    expect(record.missing).not.toContain("diameter");
  });

  test("a blank sheet has no loads and no faults, though its times are filled in", async () => {
    const record = readRecord(await namedValues(blankSheet("US")));
    expect(record.loads).toEqual([]);
    expect(record.faults).toEqual([]);
    expect(record.numbers).toEqual({ field_factor: 0.42 });
  });

  test("without a unit a length is not guessed, and the missing unit is named once", () => {
    const record = readRecord({ ...withoutNames(sheet, "length_unit"), initial_height: [[25.4]] });
    expect(record.numbers).toEqual({ ring_mass: 74.36 });
    expect(inEnglish(record.faults)).toEqual([
      expect.objectContaining({
        name: "length_unit",
        kind: "unit",
        sentence: expect.stringContaining("lengths cannot"),
      }),
    ]);
  });

  test.each([
    ["a unit that is none", { length_unit: "furlong" }, "length_unit", "unit", /"furlong", which is no unit of length/],
    ["text", { ring_mass: "about 74" }, "ring_mass", "text", /Mass of the ring \(ring_mass\) holds "about 74"/],
    ["a number as text", { ring_mass: "74.36" }, "ring_mass", "number as text", /"74.36" stored as text: re-enter/],
    ["a decimal comma", { ring_mass: "74,36" }, "ring_mass", "number as text", /"74,36" stored as text/],
    ["an error", { ring_mass: "#REF!" }, "ring_mass", "error", /shows #REF!/],
    ["a logical value", { ring_mass: true }, "ring_mass", "logical value", /holds true: enter a number/],
    ["a date", { ring_mass: 45_000 }, "ring_mass", "date", /looks like a date \(2023-03-15\)/],
    ["a word that is no choice", { drainage: "both" }, "drainage", "choice", /choose one of double, single/],
    ["a date typed as text", { date_started: "3 March" }, "date_started", "date", /no date here/],
  ] as const)("%s: listed, and gives no value", (_, changes, name, kind, sentence) => {
    const [fault, ...others] = faultOf(changes).filter((one) => one.name === name);
    expect(others).toEqual([]);
    expect(inEnglish(fault)).toMatchObject({ name, kind, sentence: expect.stringMatching(sentence) });
    const record = readRecord(withValues(sheet, changes));
    expect({ ...record.numbers, ...record.words }).not.toHaveProperty(name);
  });

  test("a fault in a column names its row", () => {
    const [fault] = faultOf({ load_stress: [12.5, "25 kPa"] });
    expect(inEnglish(fault)).toMatchObject({
      name: "load_stress",
      row: 2,
      sentence: expect.stringContaining(", row 2, holds"),
    });
  });

  test("blank readings stay blank, zeros stay zeros, and the time schedule after the last reading is left out", () => {
    const times = [0, 0.1, 0.25, 0.5, 1].map((time) => [time]);
    const record = readRecord({ ...sheet, times_02: times, readings_02: [[0], [""], [12], [""], [""]] });
    expect(record.loads[1].readings).toEqual([
      { row: 1, time: 0, reading: 0 },
      { row: 2, time: 0.1, reading: undefined },
      { row: 3, time: 0.25, reading: 12 },
    ]);
  });

  test("columns and cells that a firm adds are read: hanger mass, temperature, overrides, register", () => {
    const record = readRecord({
      ...sheet,
      registered_diameter: [[63.48]],
      load_mass: [[0.4], [0.81]],
      load_temperature: [[20.5], [21]],
      override_of: [["cv of load 3"], [""]],
      override_reason: [[""], [""]],
      override_by: [["NN"], [""]],
    });
    expect(record.numbers.registered_diameter).toBe(63.48);
    expect(record.loads.map(({ hangerMass, temperature }) => [hangerMass, temperature])).toEqual([
      [0.4, 20.5],
      [0.81, 21],
    ]);
    expect(inEnglish(record.overrides)).toEqual([{ of: "cv of load 3", reason: undefined, by: "NN" }]);
  });
});
