/** The classification on the sheet: the indices by their definitions, and sheets with limits as text. */
import { blankSheet, demoSheet, fillSheet } from "../../../src/datasheet";
import { readRecord } from "../../../src/record/record";
import { calculate } from "../sheet-in-engine";

test("the indices follow from the limits, the clay, e0 and w0 by their definitions", async () => {
  const sheet = await calculate(demoSheet("SI"));
  const n = (name: string) => Number(sheet.value(name));
  expect(sheet.errors).toEqual([]);
  expect(n("plasticity_index")).toBeCloseTo(0.34, 9);
  expect(n("liquidity_index")).toBeCloseTo((n("water_content_initial") - 0.28) / 0.34, 9);
  expect(n("activity")).toBeCloseTo(0.34 / 0.48, 9);
  // Burland (1990), constants read second hand: eL = 0.62 x 2.72.
  const eL = 0.62 * 2.72;
  const e100 = 0.109 + 0.679 * eL - 0.089 * eL ** 2 + 0.016 * eL ** 3;
  expect(n("intrinsic_void_ratio")).toBeCloseTo(e100, 9);
  expect(n("intrinsic_index")).toBeCloseTo(0.256 * eL - 0.04, 9);
  expect(n("void_index")).toBeCloseTo((n("void_ratio_initial") - e100) / (0.256 * eL - 0.04), 9);
});

test("a blank sheet shows none, and limits that are the same give no liquidity index", async () => {
  const names = ["plasticity_index", "liquidity_index", "activity", "void_index", "intrinsic_void_ratio"];
  const blank = await calculate(blankSheet("SI", { loads: 6, readingRows: 60 }));
  expect(names.map((name) => blank.value(name))).toEqual(names.map(() => ""));
  const same = await calculate(fillSheet(demoSheet("SI"), { plastic_limit: 0.62 }));
  expect([same.errors, same.value("liquidity_index")]).toEqual([[], ""]);
});

test("limits that an older sheet has as text are read as text", () => {
  const { words, numbers, faults } = readRecord({ atterberg_limits: [["LL 62, PL 28"]] });
  expect([words.atterberg_limits, numbers.liquid_limit, faults]).toEqual(["LL 62, PL 28", undefined, []]);
});

test("text in the cell of a limit is told with the cell, and no number is guessed", () => {
  const { numbers, faults } = readRecord({ liquid_limit: [["about 60"]] });
  expect([numbers.liquid_limit, faults.map(({ name }) => name)]).toEqual([undefined, ["liquid_limit"]]);
});
