/** The sheet of a summary: headings with units, and named columns with room for rows. `update` writes the rows. */
import { planIn } from "../specification/text/plan-in-language";
import { LANGUAGE_NAMES, languageNamed, type SheetLanguage } from "../specification/text/language";
import type { Box, CellPlan, CellValue, SheetPlan } from "../workbook/port";
import { COLUMNS, SUMMARY_MEASURES, SUMMARY_UNITS, type SummaryMeasure, type SummaryUnits } from "./columns";

/**
 * The number of rows that the names of the columns cover: for specimens, and for rows that a person adds between them.
 */
const ROWS = 200;

const HEADINGS = 3;
export const FIRST_ROW = HEADINGS + 2;

/** The name of a cell that contains a unit. */
const unitName = (measure: SummaryMeasure): string => `summary_${measure}_unit`;

export const UNIT_NAMES: readonly string[] = SUMMARY_MEASURES.map(unitName);

/** The cell that names the language of the summary; one without it is English. */
export const SUMMARY_LANGUAGE = "summary_language";
/** The language stands in the row of the title, beside it. */
const LANGUAGE_AT = { row: 0, col: 6 } as const;

/** The language of a summary by the values of its names. */
export const languageOfSummary = (values: Readonly<Record<string, readonly (readonly CellValue[])[]>>): SheetLanguage =>
  languageNamed(values[SUMMARY_LANGUAGE]?.[0]?.[0]);

/** A sheet that has this name is a summary. */
export const SUMMARY_SHEET_NAME = unitName("stress");

const NOTES = [
  "One row for each data sheet, by formulas that follow it. Rows and columns of your own may be added: they stay.",
  "Open checks and rows from other files are constants of the day on which they were read: bring the summary up to date in the pane (Summary).",
];

/**
 * The plan of a blank summary with its texts in a language. Names and units are the same in each language, so that an
 * update finds them; a column is at least as wide as the longest word of its heading.
 */
export function summarySheet(system: "SI" | "US", language: SheetLanguage = "en"): SheetPlan {
  const inLanguage = planIn(language, englishSheet(system));
  const plan: SheetPlan = {
    ...inLanguage,
    cells: [...inLanguage.cells, { ...LANGUAGE_AT, kind: "note", value: LANGUAGE_NAMES[language] }],
    names: { ...inLanguage.names, [SUMMARY_LANGUAGE]: { ...LANGUAGE_AT, rows: 1, cols: 1 } },
  };
  if (language === "en") return plan;
  const widths = plan.cells.flatMap(({ kind, col, value }) => {
    const longest = Math.max(
      ...String(value)
        .split(" ")
        .map((word) => word.length),
    );
    return kind === "heading" ? [[col, Math.max(plan.columnWidths[col] ?? 0, longest + 2)] as const] : [];
  });
  return { ...plan, columnWidths: Object.fromEntries(widths) };
}

function englishSheet(system: "SI" | "US"): SheetPlan {
  const units = SUMMARY_UNITS[system];
  const headings = COLUMNS.flatMap(({ heading, measure, unit }, col): CellPlan[] => [
    { row: HEADINGS, col, kind: "heading", value: heading, wrap: true },
    { row: HEADINGS + 1, col, kind: "unit", value: measure ? units[measure] : unit },
  ]);
  const unitCells = SUMMARY_MEASURES.map((measure): [string, Box] => {
    const col = COLUMNS.findIndex((column) => column.measure === measure);
    return [unitName(measure), { row: HEADINGS + 1, col, rows: 1, cols: 1 }];
  });
  return {
    name: "Summary",
    rows: FIRST_ROW + ROWS,
    cols: COLUMNS.length,
    cells: [
      { row: 0, col: 0, kind: "title", value: "Summary of the project" },
      ...NOTES.map((value, index): CellPlan => ({ row: 1 + index, col: 0, kind: "note", value })),
      ...headings,
    ],
    names: {
      ...Object.fromEntries(COLUMNS.map(({ name }, col) => [name, { row: FIRST_ROW, col, rows: ROWS, cols: 1 }])),
      ...Object.fromEntries(unitCells),
    },
    columnWidths: Object.fromEntries(COLUMNS.map(({ width }, col) => [col, width])),
    rowHeights: { [HEADINGS]: 30 },
    merges: [],
    freezeRows: FIRST_ROW,
    paper: system === "US" ? "Letter" : "A4",
  };
}

/** The units in the headings of a summary; if a heading was cleared or contains no unit, its SI unit. */
export function unitsOfSummary(values: Readonly<Record<string, readonly (readonly unknown[])[]>>): SummaryUnits {
  const system = String(values[unitName("stress")]?.[0]?.[0] ?? "") === SUMMARY_UNITS.US.stress ? "US" : "SI";
  return SUMMARY_UNITS[system];
}
