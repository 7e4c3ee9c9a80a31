/**
 * Whether the data sheet has changed since the report was made: a list beside the pages with each number or text as it
 * was and as it is, and a line at the top of the report that counts the differences.
 */
import { loadSuffix } from "../../specification/readings";
import { LOAD_RESULTS } from "../../record/names";
import { cellNamed } from "../../record/record";
import { cellAddress } from "../../workbook/address";
import type { Box, CellPlan, CellValue } from "../../workbook/port";
import { say, type Message } from "../../reduction/message";
import { isError } from "../../workbook/cell-error";
import { inFormula, live, toldExpression } from "../../specification/sentences/told-formula";
import { COLUMNS, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";

/** Columns of the list, to the right of the pages. */
const [WHAT, CELL, THEN, NOW, DIFFERS] = [COLUMNS + 1, COLUMNS + 2, COLUMNS + 3, COLUMNS + 4, COLUMNS + 5];
export const STATE_WIDTHS: Readonly<Record<number, number>> = {
  [WHAT]: 44,
  [CELL]: 12,
  [THEN]: 16,
  [NOW]: 16,
  [DIFFERS]: 8,
};
export const STATE_COLUMNS = DIFFERS + 1;
/** The cells of the choices of the report: a row above the list, from its first column on. */
export const CHOICES_ROW = 1;
export const CHOICES = WHAT;

/** Longer texts cannot be compared in one cell of every host. */
const LONGEST = 8000;

/** Single cells whose value, or a text made from it, the report shows. */
const SINGLE: readonly string[] = [
  "laboratory",
  "project",
  "job_number",
  "report_number",
  "boring",
  "sample",
  "sample_type",
  "specimen",
  "depth",
  "sample_top",
  "specimen_orientation",
  "soil_description",
  "group_symbol",
  "atterberg_limits",
  "liquid_limit",
  "plastic_limit",
  "fines_content",
  "clay_content",
  "organic_content",
  "sensitivity",
  "plasticity_index",
  "liquidity_index",
  "activity",
  "void_index",
  "condition",
  "preparation",
  "standard",
  "test_method",
  "tested_by",
  "date_tested",
  "checked_by",
  "date_checked",
  "length_unit",
  "stress_unit",
  "cv_unit",
  "density_unit",
  "mv_unit",
  "ring_number",
  "drainage",
  "dial_factor",
  "dial_sense",
  "zero_reading",
  "seating_stress",
  "diameter",
  "initial_height",
  "ring_mass",
  "ring_and_wet_before",
  "ring_and_wet_after",
  "ring_and_dry",
  "specific_gravity",
  "specific_gravity_basis",
  "time_method",
  "curve_from",
  "water_content_initial",
  "water_content_final",
  "water_content_trimmings",
  "density_initial",
  "dry_density_initial",
  "void_ratio_initial",
  "saturation_initial",
  "final_height",
  "void_ratio_final",
  "saturation_final",
  "preconsolidation_stress",
  "preconsolidation_low",
  "preconsolidation_high",
  "in_situ_stress",
  "overconsolidation_ratio",
  "compression_index",
  "recompression_index",
  "swelling_index",
  "c_alpha_chosen",
  "inundation_stress",
  "inundation_strain",
  "swelling_pressure",
  "wetting_strain",
  "swelling_pressure_used",
  "test_remarks",
  "deviations",
  "specimen_remark",
  "preconsolidation_remark",
  "preconsolidation_verdict",
  "field_remark",
  "quality_remark",
];

/** Columns of the load table and of the changes by hand; each is compared by its sum and its texts. */
const COLUMN_NAMES: readonly string[] = [
  "load_stress",
  "load_temperature",
  "pick_load",
  "pick_after",
  "apparatus_stress",
  "apparatus_loading",
  "apparatus_unloading",
  ...LOAD_RESULTS,
];

const TEXT_COLUMNS: readonly string[] = [
  "load_remark",
  "time_remark",
  "pick_of",
  "pick_reason",
  "pick_by",
  "load_method",
];

interface Compared {
  readonly what: string;
  readonly cell: string;
  readonly then: CellValue;
  readonly now: string;
}

const total = (cells: DataCells, name: string): number =>
  (cells.source.values[name] ?? []).reduce((sum, [value]) => (typeof value === "number" ? sum + value : sum), 0);

/** Number of letters in the texts of a column: a change of a remark almost always changes it. */
const letters = (cells: DataCells, name: string): number =>
  (cells.source.values[name] ?? []).reduce((sum, [value]) => sum + String(value ?? "").length, 0);

function compared(cells: DataCells, loads: readonly ReportedLoad[]): Compared[] {
  const found: Compared[] = [];
  for (const name of SINGLE) {
    const reference = cells.at(name);
    const value = cells.source.values[name]?.[0]?.[0] ?? "";
    if (!reference || (typeof value === "string" && value.length > LONGEST)) continue;
    found.push({
      what: cells.words(cellNamed(name)),
      cell: cells.place(name)!,
      then: isError(value) ? "error" : value,
      now: `=IFERROR(IF(${reference}="","",${reference}),"error")`,
    });
  }
  const add = (name: string, what: Message, then: number, formula: string): void => {
    found.push({ what: cells.words(what), cell: cells.place(name)!, then, now: `=IFERROR(${formula},"error")` });
  };
  for (const name of COLUMN_NAMES)
    if (cells.has(name)) add(name, say`Sum: ${cellNamed(name)}`, total(cells, name), `SUM(${cells.column(name)})`);
  for (const name of TEXT_COLUMNS)
    if (cells.has(name))
      add(name, say`Letters: ${cellNamed(name)}`, letters(cells, name), `SUMPRODUCT(LEN(${cells.column(name)}))`);
  for (const { number } of loads)
    for (const series of ["times", "readings"]) {
      const name = `${series}_${loadSuffix(number)}`;
      if (cells.has(name))
        add(
          name,
          series === "times" ? say`Sum: times of load ${number}` : say`Sum: readings of load ${number}`,
          total(cells, name),
          `SUM(${cells.column(name)})`,
        );
    }
  return found;
}

export interface State {
  /** The line at the top of the report. */
  readonly line: Block;
  /** The list beside the pages. */
  readonly cells: readonly CellPlan[];
  readonly names: Readonly<Record<string, Box>>;
  readonly rows: number;
}

export function state(cells: DataCells, loads: readonly ReportedLoad[]): State {
  const t = cells.words;
  const rows = compared(cells, loads);
  const first = 3;
  const headings = [
    [WHAT, say`Of the data sheet`],
    [CELL, say`Cell`],
    [THEN, say`When made`],
    [NOW, say`Now`],
    [DIFFERS, say`Differs`],
  ] as const;
  const list: CellPlan[] = [
    {
      row: 0,
      col: WHAT,
      kind: "note",
      value: t(
        say`What the report was made from. This list is not printed; the line at the top of the report counts what differs.`,
      ),
    },
    ...headings.map(([col, value]): CellPlan => ({ row: first - 1, col, kind: "heading", value: t(value) })),
    ...rows.flatMap(({ what, cell, then, now }, index): CellPlan[] => {
      const row = first + index;
      const [a, b] = [cellAddress(row, THEN), cellAddress(row, NOW)];
      return [
        { row, col: WHAT, kind: "label", value: what },
        { row, col: CELL, kind: "label", value: cell },
        { row, col: THEN, kind: "label", value: then },
        { row, col: NOW, kind: "label", formula: now },
        {
          row,
          col: DIFFERS,
          kind: "label",
          formula: `=IF(AND(ISNUMBER(${a}),ISNUMBER(${b})),IF(ABS(${a}-${b})<=0.000000001*ABS(${a}),0,1),IF(EXACT(${a}&"",${b}&""),0,1))`,
        },
      ];
    }),
  ];
  const box = (col: number): Box => ({ row: first, col, rows: rows.length, cols: 1 });
  const same = t(say`The data sheet still says what it said when this report was made.`);
  const differing = live("SUM({report_differs})");
  const name = live("INDEX({report_compared},MATCH(1,{report_differs},0))");
  const other = t(say`OUT OF DATE: ${differing} of ${rows.length} compared differ, the first: ${name}. Make it again.`);
  const line: Block = {
    rows: 1,
    cells: [
      {
        row: 0,
        col: 0,
        kind: "remark",
        formula: `=IF(SUM({report_differs})=0,${inFormula(same)},${toldExpression(other)})`,
      },
    ],
    names: { report_state: { row: 0, col: 0, rows: 1, cols: 1 } },
  };
  const names = {
    report_compared: box(WHAT),
    report_then: box(THEN),
    report_now: box(NOW),
    report_differs: box(DIFFERS),
  };
  return { line, cells: list, names, rows: first + rows.length };
}
