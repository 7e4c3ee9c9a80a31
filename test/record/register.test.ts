/** A register of equipment, and its values for a data sheet. */
import fc from "../properties";
import { readRecord, type NamedValues } from "../../src/record/record";
import { lookupsOf, readRegister } from "../../src/record/register";
import type { CellValue } from "../../src/workbook/port";

const column = (...cells: CellValue[]): CellValue[][] => cells.map((cell) => [cell]);

const REGISTER: NamedValues = {
  register_length_unit: column("mm"),
  register_kind: column("ring", "frame", "dial", "Balance", "ring", "", "shelf"),
  register_number: column("R-7", "F-2", 12, "B-1", "R-8", "", "S-1"),
  register_diameter: column(63.5, "", "", "", 50, "", ""),
  register_height: column(25.4, "", "", "", "20 mm", "", ""),
  register_mass: column(71.23, "", "", "", "", "", ""),
  register_lever_ratio: column("", 10, "", "", "", "", ""),
  register_dial_factor: column("", "", 0.002, "", "", "", ""),
  register_due: column("", 46_500, 46_400, 46_300, "", "", ""),
};
const items = readRegister(REGISTER) ?? [];

const SHEET: NamedValues = {
  length_unit: column("mm"),
  ring_number: column("r-7 "),
  frame_number: column("F-2"),
  dial_number: column(12),
  balance_number: column(""),
  registered_diameter: column(""),
  lever_ratio: column(10),
  dial_factor: column(0.01),
};
const lookups = (changes: NamedValues = {}) => {
  const values = { ...SHEET, ...changes };
  return lookupsOf(readRecord(values), values, items);
};

test("rows with a kind and a number are read; a value that is no number is left out", () => {
  expect(items.map(({ kind, number, row }) => [row, kind, number])).toEqual([
    [1, "ring", "R-7"],
    [2, "frame", "F-2"],
    [3, "dial", "12"],
    [4, "balance", "B-1"],
    [5, "ring", "R-8"],
  ]);
  expect(items[4]).toMatchObject({ diameter: 50, height: undefined });
});

test("a register without a unit of length is not read", () =>
  expect(readRegister({ ...REGISTER, register_length_unit: column("") })).toBeUndefined());

test("blank, equal and different cells are distinguished; a balance without a number gives no values", () => {
  expect(lookups().lines.map(({ cell, state }) => [cell, state])).toEqual([
    ["registered_diameter", "blank"],
    ["registered_height", "blank"],
    ["registered_ring_mass", "blank"],
    ["lever_ratio", "same"],
    ["frame_calibration_due", "blank"],
    ["dial_factor", "differs"],
    ["dial_calibration_due", "blank"],
  ]);
});

test("a number that the register does not contain is reported, and gives no values", () => {
  const { lines, unknown } = lookups({ ring_number: column("R-9") });
  expect(unknown).toEqual([{ kind: "ring", number: "R-9" }]);
  expect(lines.some(({ kind }) => kind === "ring")).toBe(false);
});

test("if a number is in several rows, the last row counts, and the number is reported", () => {
  const twice = readRegister({ ...REGISTER, register_number: column("R-7", "F-2", 12, "B-1", "R-7", "", "S-1") }) ?? [];
  const { lines, repeated } = lookupsOf(readRecord(SHEET), SHEET, twice);
  expect(repeated).toEqual([{ kind: "ring", number: "r-7" }]);
  expect(lines.find(({ cell }) => cell === "registered_diameter")?.registered).toBe(50);
});

test("lengths are converted to the unit of the data sheet: an inch is 25.4 mm", () => {
  const { lines } = lookups({ length_unit: column("in") });
  expect(lines.find(({ cell }) => cell === "registered_diameter")?.registered).toBe(2.5);
  expect(lines.find(({ cell }) => cell === "registered_height")?.registered).toBe(1);
});

test("values that were copied once are equal afterwards, in either unit", () =>
  fc.assert(
    fc.property(fc.double({ min: 1, max: 200, noNaN: true }), fc.constantFrom("mm", "in"), (diameter, unit) => {
      const register = readRegister({ ...REGISTER, register_diameter: column(diameter) }) ?? [];
      const before: NamedValues = { ...SHEET, length_unit: column(unit) };
      const found = lookupsOf(readRecord(before), before, register).lines[0];
      if (!found) throw new Error("the ring is not found");
      const after: NamedValues = { ...before, registered_diameter: column(found.registered) };
      expect(lookupsOf(readRecord(after), after, register).lines[0]?.state).toBe("same");
    }),
  ));
