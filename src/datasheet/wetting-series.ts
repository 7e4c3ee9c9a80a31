/**
 * Builds a sheet for a series of specimens that were wetted each under its own stress: strain on wetting row by row,
 * and the swelling pressure by zero strain among them (ASTM D4546, from memory).
 */
import { LENGTH_UNITS, STRESS_UNITS } from "../specification/form/unit-choices";
import { asked } from "../specification/formulas";
import type { SheetLanguage } from "../specification/text/language";
import { planIn } from "../specification/text/plan-in-language";
import type { System } from "../specification/measures";
import { cellAddress } from "../workbook/address";
import type { CellPlan, SheetPlan } from "../workbook/port";
import { firstRow, tableSheet, type TableColumn, type TableSheet } from "../workbook/table-sheet";

/** The number of specimens that the sheet has rows for; the method wants four at least. */
const ROWS = 12;

/** The columns by their place. */
const [STRESS, BEFORE, AFTER, STRAIN] = [3, 4, 5, 6];
const at = (row: number, col: number): string => cellAddress(row, col);

const COLUMNS: readonly TableColumn[] = [
  { name: "series_specimen", heading: "Specimen", width: 16, kind: "input", format: "@" },
  { name: "series_water_content", heading: "Initial w", width: 10, kind: "input", format: "0.0%" },
  { name: "series_dry_density", heading: "Dry density", width: 11, kind: "input" },
  { name: "series_stress", heading: "Stress kept", width: 11, kind: "input" },
  { name: "series_height_before", heading: "Height before", width: 13, kind: "input" },
  { name: "series_height_after", heading: "Height after", width: 13, kind: "input" },
  {
    name: "series_strain",
    heading: "Strain on wetting",
    width: 16,
    kind: "result",
    format: "0.00%",
    formula: (row) =>
      `=IF(OR(${at(row, BEFORE)}="",${at(row, AFTER)}=""),"",CLAY.WETTING_STRAIN(${at(row, BEFORE)},${at(row, AFTER)}))`,
  },
  {
    name: "series_movement",
    heading: "The specimen",
    width: 13,
    kind: "result",
    formula: (row) =>
      `=IF(${at(row, STRAIN)}="","",IF(${at(row, STRESS)}="","enter the stress",IF(${at(row, STRAIN)}<0,"swelled",IF(${at(row, STRAIN)}>0,"compressed","did not move"))))`,
  },
];

/** The results, each with the item of the function that gives it. */
const RESULTS = [
  ["series_pressure", "Swelling pressure, zero strain", "pressure"],
  ["series_pressure_low", "  not less than", "low"],
  ["series_pressure_high", "  not more than", "high"],
  ["series_remark", "  remark", "remark"],
] as const;
const RESULTS_COLUMN = 9;

/** The plan of a blank series. */
export const wettingSeries = (system: System, language: SheetLanguage = "en"): SheetPlan =>
  planIn(language, seriesPlan(system));

function seriesPlan(system: System): SheetPlan {
  const table: TableSheet = {
    name: "Wetting series",
    title: "Specimens wetted under different stresses: swelling pressure by zero strain",
    notes: [
      "One row for each specimen. Heights are those just before wetting and at its end, under the same stress, less the deflection of the apparatus. Swell is negative.",
      "A cell may refer to a data sheet of this workbook, as in ='Test 1'!wetting_stress, ='Test 1'!wetting_height_before, ='Test 1'!wetting_height_after.",
      "Unit of stress, and of height:",
    ],
    columns: COLUMNS,
    rows: [],
    length: ROWS,
  };
  const plan = tableSheet(table);
  const top = firstRow(table);
  const [stressUnit, lengthUnit] = [
    { row: top - 2, col: STRESS, rows: 1, cols: 1 },
    { row: top - 2, col: BEFORE, rows: 1, cols: 1 },
  ];
  const results = RESULTS.flatMap(([name, label, item], index): CellPlan[] => {
    const call = `CLAY.SWELLING_PRESSURE({series_stress},{series_strain},"zero strain",${asked(item)})`;
    return [
      { row: top + index, col: RESULTS_COLUMN, kind: "label", value: label },
      {
        row: top + index,
        col: RESULTS_COLUMN + 1,
        kind: name === "series_remark" ? "remark" : "result",
        format: name === "series_remark" ? undefined : "0.0##",
        formula: `=IF(COUNT({series_strain})<2,"",${call})`,
      },
      ...(name === "series_remark"
        ? []
        : [{ row: top + index, col: RESULTS_COLUMN + 2, kind: "unit" as const, formula: "={series_stress_unit}" }]),
    ];
  });
  return {
    ...plan,
    cols: RESULTS_COLUMN + 3,
    cells: [
      ...plan.cells,
      {
        row: stressUnit.row,
        col: stressUnit.col,
        kind: "input",
        choices: STRESS_UNITS,
        value: system === "SI" ? "kPa" : "tsf",
      },
      {
        row: lengthUnit.row,
        col: lengthUnit.col,
        kind: "input",
        choices: LENGTH_UNITS,
        value: system === "SI" ? "mm" : "in",
      },
      { row: top - 1, col: RESULTS_COLUMN, kind: "heading", value: "Of the series" },
      { row: top - 1, col: RESULTS_COLUMN + 1, kind: "heading" },
      { row: top - 1, col: RESULTS_COLUMN + 2, kind: "heading" },
      ...results,
    ],
    names: {
      ...plan.names,
      series_stress_unit: stressUnit,
      series_length_unit: lengthUnit,
      ...Object.fromEntries(
        RESULTS.map(([name], index) => [name, { row: top + index, col: RESULTS_COLUMN + 1, rows: 1, cols: 1 }]),
      ),
    },
    columnWidths: { ...plan.columnWidths, [RESULTS_COLUMN]: 27, [RESULTS_COLUMN + 1]: 12, [RESULTS_COLUMN + 2]: 7 },
    behind: false,
  };
}
