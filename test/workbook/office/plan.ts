import type { SheetPlan } from "../../../src/workbook/port";

/** A small sheet with one of everything. Row 5 holds constants that Excel would read as something else. */
export const PLAN: SheetPlan = {
  name: "Test",
  rows: 7,
  cols: 4,
  cells: [
    { row: 0, col: 0, kind: "title", value: "Consolidation test" },
    { row: 1, col: 0, kind: "heading", value: "Specimen" },
    { row: 2, col: 0, kind: "label", value: "Initial height" },
    { row: 2, col: 1, kind: "input", value: 19.05, format: "0.00", note: "Mean of four readings of the calliper." },
    { row: 2, col: 2, kind: "unit", value: "mm" },
    { row: 3, col: 0, kind: "label", value: "Length unit" },
    { row: 3, col: 1, kind: "input", value: "mm", format: "@", choices: ["mm", "cm", "in"] },
    { row: 4, col: 0, kind: "label", value: "Height after load" },
    { row: 4, col: 1, kind: "result", formula: "={t50}*{initial_height}", format: "0.000" },
    { row: 5, col: 0, kind: "remark", value: "00123" },
    { row: 5, col: 1, kind: "note", value: "=not a formula" },
    { row: 5, col: 2, kind: "note", value: "Mar 3" },
    { row: 6, col: 0, kind: "remark", value: "" },
    { row: 6, col: 1, kind: "input", value: true },
  ],
  names: {
    initial_height: { row: 2, col: 1, rows: 1, cols: 1 },
    t50: { row: 3, col: 1, rows: 2, cols: 1 },
  },
  columnWidths: { 0: 24, 3: 10 },
  merges: [{ row: 0, col: 0, rows: 1, cols: 4 }],
  freezeRows: 1,
};
