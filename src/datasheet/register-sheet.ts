/**
 * Builds a register of rings, frames, dials, balances and deflection sets as a sheet of the workbook, which the laboratory
 * fills in and keeps.
 */
import { REGISTER_KINDS } from "../record/register";
import { REGISTER_STRESS_UNIT, REGISTER_UNIT } from "../record/register-cells";
import { SET_KEY, SET_NUMBER } from "../record/register-sets";
import type { SheetLanguage } from "../specification/text/language";
import { planIn } from "../specification/text/plan-in-language";
import type { System } from "../specification/measures";
import { LENGTH_UNITS, STRESS_UNITS } from "../specification/form/unit-choices";
import { cellAddress } from "../workbook/address";
import { firstRow, tableSheet, type TableColumn, type TableSheet } from "../workbook/table-sheet";
import type { Box, CellPlan, SheetPlan } from "../workbook/port";

/** The number of rows of equipment with a frame, and of rows of deflection sets. */
const ROWS = 60;
const SET_ROWS = 240;

const input = (name: string, heading: string, width: number, more: Partial<TableColumn> = {}): TableColumn => ({
  name,
  heading,
  width,
  kind: "input",
  ...more,
});

const DATE = { format: "yyyy-mm-dd" };

const COLUMNS: readonly TableColumn[] = [
  input("register_kind", "Kind", 14, { choices: REGISTER_KINDS }),
  input("register_number", "Number", 12, { format: "@" }),
  input("register_diameter", "Diameter", 10),
  input("register_height", "Height", 10),
  input("register_mass", "Mass, g", 10),
  input("register_lever_ratio", "Lever ratio", 10),
  input("register_dial_factor", "Dial factor", 10),
  input("register_frame", "Set: frame", 12, { format: "@" }),
  input("register_disks", "Set: disks", 14),
  input("register_paper", "Set: paper", 14),
  input("register_calibrated", "Calibrated on", 13, DATE),
  input("register_due", "Due", 13, DATE),
  input("register_by", "By", 16),
  input("register_remark", "Remark", 30),
];

/** The first column of the table of deflection sets; one blank column stands between the tables. */
const SETS_FROM = COLUMNS.length + 1;

const SET_COLUMNS: readonly TableColumn[] = [
  input(SET_NUMBER, "Deflection set", 14, { format: "@" }),
  input("register_set_stress", "Stress", 10),
  input("register_set_loading", "On loading", 11),
  input("register_set_unloading", "On unloading", 12),
  {
    name: SET_KEY,
    heading: "Row of the set",
    width: 14,
    kind: "result",
    // The set and how many rows it has down to this one.
    formula: (row) => {
      const [top, here] = [cellAddress(TOP, SETS_FROM), cellAddress(row, SETS_FROM)];
      const fixed = top.replace(/(\D+)(\d+)/, "$$$1$$$2");
      return `=IF(${here}="","",${here}&"/"&COUNTIF(${fixed}:${here},${here}))`;
    },
  },
];

const NOTES = [
  "One row for each. A ring has diameter, height and mass; a frame its lever ratio; a dial the length of one division; a mass of a hanger its mass; a deflection set its frame, disks and paper.",
  "A deflection set has its deflections in the table on the right: one row for each stress, cumulative since the seating stress.",
  "Unit of diameter, height, dial factor and deflections:",
  "Unit of the stresses of deflection sets:",
];
const TOP = firstRow({ notes: NOTES });

/** A cell below the title in which a unit is chosen. */
const unitCell = (row: number, choices: readonly string[], value: string): CellPlan => ({
  ...{ row, col: UNIT_COLUMN, kind: "input", choices, value },
});
const UNIT_COLUMN = 5;

const toTheRight = (cell: CellPlan): CellPlan => ({ ...cell, col: cell.col + SETS_FROM });
const boxToTheRight = (box: Box): Box => ({ ...box, col: box.col + SETS_FROM });

/** The plan of a blank register. Lengths and dial factors have one unit, stresses another; the sheet names both. */
export const registerSheet = (system: System, language: SheetLanguage = "en"): SheetPlan =>
  planIn(language, registerPlan(system));

function registerPlan(system: System): SheetPlan {
  const title = "Register of rings, frames, dials, balances and deflection sets";
  const table: TableSheet = { name: "Register", title, notes: NOTES, columns: COLUMNS, rows: [], length: ROWS };
  const plan = tableSheet(table);
  const sets = tableSheet({ ...table, notes: NOTES.map(() => ""), columns: SET_COLUMNS, length: SET_ROWS });
  const ofSets = sets.cells.filter(({ row }) => row >= TOP - 1).map(toTheRight);
  const unit = (row: number): Box => ({ row, col: UNIT_COLUMN, rows: 1, cols: 1 });
  return {
    ...plan,
    rows: sets.rows,
    cols: SETS_FROM + SET_COLUMNS.length,
    cells: [
      ...plan.cells,
      unitCell(TOP - 3, LENGTH_UNITS, system === "SI" ? "mm" : "in"),
      unitCell(TOP - 2, STRESS_UNITS, system === "SI" ? "kPa" : "tsf"),
      ...ofSets,
    ],
    names: {
      ...plan.names,
      ...Object.fromEntries(Object.entries(sets.names).map(([name, box]) => [name, boxToTheRight(box)])),
      [REGISTER_UNIT]: unit(TOP - 3),
      [REGISTER_STRESS_UNIT]: unit(TOP - 2),
    },
    columnWidths: {
      ...plan.columnWidths,
      ...Object.fromEntries(SET_COLUMNS.map(({ width }, col) => [SETS_FROM + col, width])),
    },
    behind: false,
  };
}
