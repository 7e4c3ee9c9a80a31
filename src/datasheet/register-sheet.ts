/**
 * Builds a register of rings, frames, dials and balances as a sheet of the workbook, which the laboratory fills in and
 * keeps.
 */
import { REGISTER_KINDS, REGISTER_UNIT } from "../record/register";
import type { System } from "../specification/measures";
import { LENGTH_UNITS } from "../specification/unit-choices";
import { firstRow, tableSheet, type TableColumn, type TableSheet } from "../workbook/table-sheet";
import type { SheetPlan } from "../workbook/port";

/** The number of rows with a frame. */
const ROWS = 60;

const input = (name: string, heading: string, width: number, more: Partial<TableColumn> = {}): TableColumn => ({
  name,
  heading,
  width,
  kind: "input",
  ...more,
});

const DATE = { format: "yyyy-mm-dd" };

const COLUMNS: readonly TableColumn[] = [
  input("register_kind", "Kind", 10, { choices: REGISTER_KINDS }),
  input("register_number", "Number", 12, { format: "@" }),
  input("register_diameter", "Diameter", 10),
  input("register_height", "Height", 10),
  input("register_mass", "Mass, g", 10),
  input("register_lever_ratio", "Lever ratio", 10),
  input("register_dial_factor", "Dial factor", 10),
  input("register_calibrated", "Calibrated on", 13, DATE),
  input("register_due", "Due", 13, DATE),
  input("register_by", "By", 16),
  input("register_remark", "Remark", 30),
];

/** The plan of a blank register. Lengths and dial factors have one unit, which the sheet names. */
export function registerSheet(system: System): SheetPlan {
  const table: TableSheet = {
    name: "Register",
    title: "Register of rings, frames, dials and balances",
    notes: [
      "One row for each. A ring has diameter, height and mass; a frame its lever ratio; a dial the length of one division; a mass of a hanger its mass.",
      "Unit of diameter, height and dial factor:",
    ],
    columns: COLUMNS,
    rows: [],
    length: ROWS,
  };
  const plan = tableSheet(table);
  const unit = { row: firstRow(table) - 2, col: 4, rows: 1, cols: 1 };
  return {
    ...plan,
    cells: [
      ...plan.cells,
      { row: unit.row, col: unit.col, kind: "input", choices: LENGTH_UNITS, value: system === "SI" ? "mm" : "in" },
    ],
    names: { ...plan.names, [REGISTER_UNIT]: unit },
    behind: false,
  };
}
