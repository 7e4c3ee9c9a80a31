/**
 * The calculation book of the demonstration: every number has a line, and the result of each line is the number on the
 * sheet.
 */
import { bookSheet } from "../../src/book/book-sheet";
import { calculationBook, type Entry } from "../../src/book/calculation-book";
import { evaluateAgain } from "../../src/book/second-evaluation";
import { comparisonSheet, lastPlace, quantities } from "../../src/book/comparison";
import { demoSheet, FIELDS, fillSheet, type System } from "../../src/datasheet";
import { LOG_TIME } from "../../src/functions/increment";
import { LOAD_TABLE } from "../../src/specification/load-table";
import { readRecord, type NamedValues } from "../../src/record/record";
import { english, say, verbatim } from "../../src/reduction/message";
import type { SheetName } from "../../src/workbook/port";
import { namedValues, withValues } from "../datasheet/read-sheet";
import { calculate } from "../datasheet/sheet-in-engine";

/** Values read off a construction: no formula gives them. */
const READ_OFF =
  /^(design_(e_in_situ|e_final|cv)|preconsolidation_(stress|low|high)|(log|root)_(d0|d90|d100|t50|t100|t90)|tail_slope|end_reading)$/;
/** Values that their line rounds to these digits. */
const ROUNDED: Readonly<Record<string, number>> = {
  dry_mass_difference: 5e-4,
  void_ratio_final_difference: 5e-4,
  water_content_difference: 5e-4,
  final_height_difference: 5e-5,
};

describe.each<System>(["SI", "US"])("the demonstration, %s", (system) => {
  let values: NamedValues;
  let entries: Entry[];
  beforeAll(async () => {
    values = withValues(await namedValues(demoSheet(system)), {});
    entries = calculationBook(readRecord(values), values);
  });

  test("every number of the test on the sheet has a line", () => {
    const shown = FIELDS.filter(
      ({ name, kind, column }) => kind === "result" && !column && typeof values[name]?.[0]?.[0] === "number",
    ).map(({ name }) => name);
    expect(shown.length).toBeGreaterThan(30);
    expect(entries.filter(({ load }) => load === undefined).map(({ name }) => name)).toEqual(shown);
  });

  test("every number of a load has a line", () => {
    for (const load of [1, 5, 11, 16]) {
      const shown = LOAD_TABLE.columns
        .filter(({ name, kind }) => kind === "result" && typeof values[name]?.[load - 1]?.[0] === "number")
        .map(({ name }) => name);
      expect(shown.length).toBeGreaterThan(8);
      expect(entries.filter((entry) => entry.load === load).map(({ name }) => name)).toEqual(shown);
    }
  });

  test("a level of the readings is put in with one decimal more than the readings, and not with three", () => {
    const lines = entries.filter(({ name }) => /^(deformation_d100|height_middle|log_d50|root_d100)$/.test(name));
    expect(lines.length).toBeGreaterThan(30);
    for (const { said, name } of lines) {
      const text = english(said).split(";")[0]!;
      const levels =
        text
          .split(" = ")
          .at(-2)!
          .match(/(?<![\d.])\d{3,}(\.\d+)?/g) ?? [];
      expect([name, levels.length > 0]).toEqual([name, true]);
      for (const level of levels) expect(level).toMatch(/^\d+(\.\d)?$/);
    }
    const d100 = lines.find(({ name, load }) => name === "deformation_d100" && load === 5)!;
    const put = Number(/\((\d+\.\d) - /.exec(english(d100.said))![1]);
    expect(Math.abs(put - Number(values.log_d100![4]![0]))).toBeLessThanOrEqual(0.05);
  });

  test("the result of every line is the number on the sheet", () => {
    const bare = entries.filter(({ result, name }) => result === undefined && !READ_OFF.test(name));
    expect(bare.map(({ name, said }) => `${name}: ${english(said)}`)).toEqual([
      expect.stringMatching(/^inundation_stress: the stress of load 1/),
    ]);
    for (const { name, load, result, value, said } of entries) {
      if (result === undefined) continue;
      const room = ROUNDED[name] ?? 1e-6 * Math.max(Math.abs(value), 1e-9);
      if (Math.abs(result - value) > room * 1.001)
        throw new Error(`${name} ${load ?? ""} is ${value}, and its line comes to ${result}: ${english(said)}`);
    }
  });

  test("every formula, evaluated again by mathjs with its units, gives the same number", () => {
    const worked = entries.flatMap(({ worked: one }) => one ?? []);
    expect(worked.length).toBeGreaterThan(100);
    expect(worked.filter((one) => !evaluateAgain(one).agrees)).toEqual([]);
    // The check notices a number that is wrong by one part in a million.
    expect(worked.filter((one) => evaluateAgain({ ...one, result: one.result * (1 + 1e-6) }).agrees)).toEqual([]);
  });

  test("numbers are shown in the units of the sheet", () => {
    const line = english(entries.find(({ name }) => name === "solids_height")!.said);
    expect(line).toMatch(system === "SI" ? /63\.500 mm.* = 10\.\d+ mm$/ : / in\)?\^2.* = 0\.\d+ in$/);
  });

  test("every quantity that can be compared has a value, a unit and the tolerance of its kind", () => {
    const found = quantities(readRecord(values), values);
    const of = (key: string) => found.find((one) => one.key === key)!;
    expect(of("cv_log_time 5")).toMatchObject({ load: 5, tolerance: 0.1, unit: system === "SI" ? "m2/yr" : "ft2/day" });
    expect(of("preconsolidation_stress")).toMatchObject({ tolerance: 0.15, unit: system === "SI" ? "kPa" : "tsf" });
    expect(of("compression_index")).toMatchObject({ tolerance: 0.05, unit: "" });
    // The same load by the function, with the drawn procedure.
    const column = (name: string) => values[name].map(([cell]) => [cell]);
    const drawnT50 = LOG_TIME(
      column("times_06"),
      column("readings_06"),
      undefined,
      "t50",
      undefined,
      undefined,
      undefined,
      undefined,
      "drawn",
    )[0][0];
    expect(of("log_t50 6").drawn).toBeCloseTo(drawnT50 as number, 9);
    expect(of("log_t50 6").drawn).not.toBe(of("log_t50 6").value);
    expect(of("cv_log_time 6").drawn! / of("cv_log_time 6").value).toBeCloseTo(
      of("log_t50 6").value / (drawnT50 as number),
      2,
    );
    expect(of("compression_index").drawn).toBeUndefined();
    const e0 = of("void_ratio_initial");
    expect(e0.tolerance).toBeCloseTo(0.001 / e0.value, 12);
    expect(new Set(found.map(({ key }) => key)).size).toBe(found.length);
    expect(found.every(({ tolerance }) => tolerance > 0)).toBe(true);
  });
});

test("picks of the compression curve and adopted values are named, and their lines give the numbers of the sheet", async () => {
  const picks = {
    pick_load: ["curve", "curve"],
    pick_of: ["virgin to", "greatest curvature"],
    pick_after: [1600, 95],
    pick_reason: ["flatter", "by eye"],
    pick_by: ["AB", "AB"],
  };
  const adopted = {
    adopted_value: ["", "", "", 0.07],
    adopted_reason: ["", "", "", "agreed"],
    adopted_by: ["", "", "", "AB"],
    ...{ adopted_cv: [2.5], adopted_cv_reason: ["field rate"], adopted_cv_by: ["AB"] },
  };
  const values = withValues(await namedValues(fillSheet(demoSheet("SI"), { ...picks, ...adopted })), {});
  const entries = calculationBook(readRecord(values), values);
  const line = (name: string) => entries.find((entry) => entry.name === name)!;
  const text = (name: string) => english(line(name).said);
  expect(text("preconsolidation_stress")).toMatch(
    /^Casagrande: .*; picked by hand: greatest curvature 95, virgin to 1600$/,
  );
  expect(text("compression_index")).toMatch(/the virgin line, 200 to 1600, picked by hand$/);
  expect(line("compression_index").result).toBeCloseTo(line("compression_index").value, 6);
  expect(line("swelling_index")).toMatchObject({ result: 0.07, value: 0.07 });
  expect(line("cv_recompression")).toMatchObject({ result: 2.5, value: 2.5 });
  expect(["swelling_index", "cv_recompression"].map(text)).toEqual([
    "adopted by AB: agreed",
    "adopted by AB: field rate",
  ]);
  expect(text("cv_virgin")).toMatch(/^the geometric mean of the cv of \d loads from \d/);
  expect(text("design_cv")).toMatch(/: adopted for 62 to /);
});

test("lastPlace is one unit of the last digit that the format shows", () => {
  expect(lastPlace(1.45, "0.000")).toBeCloseTo(1e-3);
  expect(lastPlace(0.5312, "0.0%")).toBeCloseTo(1e-3);
  expect(lastPlace(0.1793, "0.00%")).toBeCloseTo(1e-4);
  expect(lastPlace(3.4e-10, "0.0E+00")).toBeCloseTo(1e-11, 15);
  expect(lastPlace(815, undefined)).toBeCloseTo(0.815);
});

test("the book on a sheet refers to the cells of the data sheet, whatever the name of the data sheet", () => {
  const plan = demoSheet("SI");
  const names: SheetName[] = Object.entries(plan.names).map(([name, place]) => ({ name, scope: "sheet", place }));
  const cell = { name: "cv_log_time", load: 3, row: 2, value: 1, unit: "m2/yr" };
  const entry: Entry = { ...cell, said: say`cv by ${verbatim("log time")}` };
  const { cells } = bookSheet("Dam's {a}", [entry], names);
  const formulas = cells.flatMap(({ formula }) => formula ?? []);
  expect(formulas).toEqual([expect.stringMatching(/^='Dam''s \{a\}'!\$[A-Z]+\$\d+$/)]);
  expect(formulas[0].endsWith(`$${plan.names.cv_log_time.row + 3}`)).toBe(true);
});

test('on the signed sheet a live formula says "agrees" or "differs"', async () => {
  const plan = { ...comparisonSheet(), behind: false };
  const top = plan.names.compare_value.row;
  const typed: Record<string, [number, number]> = { compare_value: [1, 1], compare_hand: [1.04, 1.06] };
  typed.compare_tolerance = [0.05, 0.05];
  const cells = plan.cells.map((cell) => {
    const name = Object.keys(typed).find((one) => plan.names[one].col === cell.col);
    return name && cell.row >= top && cell.row < top + 2 ? { ...cell, value: typed[name][cell.row - top] } : cell;
  });
  const sheet = await calculate({ ...plan, cells });
  expect(sheet.errors).toEqual([]);
  expect([0, 1, 2].map((row) => sheet.value("compare_result", row))).toEqual(["agrees", "differs", ""]);
});
