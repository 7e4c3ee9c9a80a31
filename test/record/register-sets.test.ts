/** Deflection sets of a register, and the deflection table of a data sheet that names one. */
import { readRecord, type NamedValues } from "../../src/record/record";
import { lookupsOf, readRegister } from "../../src/record/register";
import { readSets } from "../../src/record/register-sets";
import type { CellValue } from "../../src/workbook/port";

const column = (...cells: CellValue[]): CellValue[][] => cells.map((cell) => [cell]);

const REGISTER: NamedValues = {
  register_length_unit: column("mm"),
  register_stress_unit: column("kPa"),
  register_kind: column("deflection set", "deflection set", "frame"),
  register_number: column("D-1", 7, "D-1"),
  register_frame: column("LF-2", "", ""),
  register_disks: column("coarse disks", "", ""),
  register_paper: column("paper 54", "", ""),
  register_calibrated: column(46_388, "", ""),
  register_due: column(46_753, "", ""),
  register_set: column("D-1", "d-1", "D-1", "", 7, "D-1"),
  register_set_stress: column(25, 50, 100, 200, 25, "x"),
  register_set_loading: column(0, 0.012, 0.02, 0.03, 0.005, 0.1),
  register_set_unloading: column(0.008, "", 0.02, 0.03, "", ""),
};
const items = readRegister(REGISTER) ?? [];
const sets = readSets(REGISTER);
const blank = (): CellValue[][] => column(...Array<CellValue>(12).fill(""));
const SHEET: NamedValues = {
  length_unit: column("mm"),
  stress_unit: column("kPa"),
  deflection_set: column("d-1"),
  apparatus_stress: blank(),
  apparatus_loading: blank(),
  apparatus_unloading: blank(),
};
const lookups = (changes: NamedValues = {}, of = sets) => {
  const values = { ...SHEET, ...changes };
  return lookupsOf(readRecord(values), values, items, of);
};
const tableOf = (changes: NamedValues = {}, of = sets) => lookups(changes, of).lines.find(({ table }) => table);

test("rows with a number, a stress and a deflection are read, whatever the case of the number", () =>
  expect(sets.map(({ set, stress, loading, unloading }) => [set, stress, loading, unloading])).toEqual([
    ["D-1", 25, 0, 0.008],
    ["d-1", 50, 0.012, undefined],
    ["D-1", 100, 0.02, 0.02],
    ["7", 25, 0.005, undefined],
  ]));

test("the set brings its frame, its due day, its day with disks and paper, and its table", () => {
  const { lines } = lookups();
  expect(lines.map(({ cell, registered, state }) => [cell, registered, state])).toEqual([
    ["deflection_set_frame", "LF-2", "blank"],
    ["deflection_set_due", 46_753, "blank"],
    ["calibration_date", "2027-01-01, coarse disks, paper 54", "blank"],
    ["apparatus_stress", 3, "blank"],
  ]);
  expect(tableOf()?.table?.apparatus_loading.slice(0, 4)).toEqual([0, 0.012, 0.02, ""]);
  expect(tableOf()?.table?.apparatus_unloading.slice(0, 4)).toEqual([0.008, "", 0.02, ""]);
});

test("stresses and deflections come in the units of the sheet: 1 tsf is 95.76 kPa, an inch 25.4 mm", () => {
  const table = tableOf({ length_unit: column("in"), stress_unit: column("tsf") })?.table;
  expect(Number(table?.apparatus_stress[2]) * 95.760518).toBeCloseTo(100, 4);
  expect(Number(table?.apparatus_loading[2])).toBeCloseTo(0.02 / 25.4, 12);
});

test("a table that holds other values differs, also in a row beyond the set; the same values are the same", () => {
  const { apparatus_stress, apparatus_loading, apparatus_unloading } = tableOf()!.table!;
  const taken = {
    apparatus_stress: column(...apparatus_stress),
    apparatus_loading: column(...apparatus_loading),
    apparatus_unloading: column(...apparatus_unloading),
  };
  expect(tableOf(taken)?.state).toBe("same");
  const longer = [...apparatus_stress.slice(0, 3), 400, ...apparatus_stress.slice(4)];
  expect(tableOf({ ...taken, apparatus_stress: column(...longer) })).toMatchObject({ state: "differs", held: 4 });
});

test("a set without deflections, or with more than the table of the sheet takes, is reported and gives no table", () => {
  expect(lookups({}, []).withoutTable).toBe("D-1".toLowerCase());
  const short = { apparatus_stress: column("", "") };
  expect(lookups(short).withoutTable).toBe("d-1");
  expect(tableOf(short)).toBeUndefined();
  expect(lookups().withoutTable).toBeUndefined();
});

test("a set that is not in the register is reported, and gives no values", () => {
  const { lines, unknown } = lookups({ deflection_set: column("D-9") });
  expect(unknown).toEqual([{ kind: "deflection set", number: "D-9" }]);
  expect(lines).toEqual([]);
});
