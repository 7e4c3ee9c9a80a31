/**
 * Compares results of the sheet with values calculated by hand: which results can be compared, how far each may differ,
 * and the sheet on which the comparison is signed. Numbers are in the units of the data sheet.
 */
import { cellAddress } from "../workbook/address";
import { FIELDS, type NamedField } from "../specification/fields";
import { labelOn } from "../record/labels/sheet-labels";
import { LOAD_TABLE } from "../specification/load-table";
import { formatOf, unitText, type Measure } from "../specification/measures";
import type { NamedValues, TestRecord } from "../record/record";
import { PROCEDURE_PICK } from "../reduction/increment/constructions/picks";
import type { Outcome } from "../reduction/outcome";
import { convert } from "../reduction/units";
import { partFor } from "../workbook/look/number-format";
import type { SheetPlan } from "../workbook/port";
import { rowOfLoad } from "../checks/integrity";
import { reduced } from "../record/reduced-test";
import type { LoadReduced } from "../record/reduced/load";
import type { SheetLanguage } from "../specification/text/language";
import { planIn, wordOfUnit } from "../specification/text/plan-in-language";
import { wordsOf } from "../specification/text/words";
import { shownWord } from "../specification/list-words";
import { tableSheet, type TableColumn } from "../workbook/table-sheet";

/** The reason why two numbers may differ. */
export type Reading = "rounding" | "log time" | "root time" | "yield" | "slope";

/**
 * How far a value may lie from a value read off a drawing, as a ratio to the latter: the spread of careful hand
 * readings. Common practice, no source; see DEVELOPERS.md.
 */
const GRAPHICAL: Readonly<Record<Exclude<Reading, "rounding">, number>> = {
  "log time": 0.1,
  "root time": 0.03,
  yield: 0.15,
  slope: 0.05,
};

const READ: readonly (readonly [Reading, readonly string[]])[] = [
  ["log time", ["log_t50", "log_t100", "log_d0", "log_d50", "log_d100", "cv_log_time"]],
  ["log time", ["cv_chosen", "cv_20", "conductivity", "deformation_d100", "strain_d100", "void_ratio_d100"]],
  ["root time", ["root_t90", "root_d0", "root_d90", "root_d100", "cv_root_time"]],
  ["yield", ["preconsolidation_stress", "preconsolidation_low", "preconsolidation_high", "overconsolidation_ratio"]],
  ["slope", ["compression_index", "recompression_index", "swelling_index", "c_alpha", "c_alpha_chosen"]],
  ["slope", ["c_alpha_ratio", "tail_slope", "quality_change", "quality_strain", "field_meeting_void_ratio"]],
  ["slope", ["field_compression_index", "field_recompression_index"]],
  ["yield", ["field_meeting_stress"]],
];
const READING_OF = new Map(READ.flatMap(([reading, names]) => names.map((name) => [name, reading] as const)));

export interface Quantity {
  /** "compression_index", "cv_log_time 3" */
  readonly key: string;
  readonly name: string;
  /** Number of a load. */
  readonly load?: number;
  /** Row of its column, from 0. */
  readonly row: number;
  readonly value: number;
  /**
   * The value by the "drawn" procedure, if the value is read off a construction of a load: a hand reading is compared
   * with this value first.
   */
  readonly drawn?: number;
  readonly unit: string;
  readonly format?: string;
  readonly reading: Reading;
  /** A ratio to the value by hand. */
  readonly tolerance: number;
}

const word = (values: NamedValues, name: string): string => String(values[name]?.[0]?.[0] ?? "");

/** The unit that the sheet shows for a measure. */
export const unitOn = (values: NamedValues, measure: Measure): string =>
  unitText(measure, (cell) => word(values, cell));

/** One unit of the last place that the format shows: rounding by hand may differ by this much. */
export function lastPlace(value: number, code: string | undefined): number {
  const format = code && partFor(code, value);
  if (format === undefined || !/0/.test(format)) return Math.abs(value) * 1e-3;
  const digits = /\.([0#]*)/.exec(format)?.[1]?.length ?? 0;
  if (/E/.test(format)) return 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - digits);
  return 10 ** -(digits + (format.endsWith("%") ? 2 : 0));
}

/** Values read off the drawn constructions of a load, by the names of the load table; cv in the unit of the sheet. */
function drawnMarks(
  { increment, cvLogTime, cvRootTime }: LoadReduced,
  cvUnit: string,
): Partial<Record<string, number>> {
  const { logTime, rootTime } = increment;
  const cv = (one: Outcome<number>) => (one.ok ? convert(one.value, "cv", "m2/yr", cvUnit) : undefined);
  return {
    ...(logTime.ok && {
      log_d0: logTime.value.d0,
      log_d50: logTime.value.d50,
      log_d100: logTime.value.d100,
      log_t50: logTime.value.t50,
      log_t100: logTime.value.t100,
    }),
    ...(rootTime.ok && {
      root_d0: rootTime.value.d0,
      root_d90: rootTime.value.d90,
      root_d100: rootTime.value.d100,
      root_t90: rootTime.value.t90,
    }),
    cv_log_time: cv(cvLogTime),
    cv_root_time: cv(cvRootTime),
  };
}

/** The record with every construction set to "drawn". */
const drawnThroughout = (record: TestRecord): TestRecord => ({
  ...record,
  words: { ...record.words, time_procedure: "drawn" },
  picks: record.picks.filter(({ of }) => of !== PROCEDURE_PICK),
});

/**
 * Results that can be compared with hand values: numbers that the sheet shows, first of the test and then load by load.
 */
export function quantities(record: TestRecord, values: NamedValues): Quantity[] {
  const system = word(values, "length_unit") === "in" ? "US" : "SI";
  const found: Quantity[] = [];
  const cvUnit = record.words.cv_unit ?? "m2/yr";
  const drawn = new Map(
    reduced(drawnThroughout(record)).loads.map((one) => [one.record.number, drawnMarks(one, cvUnit)]),
  );
  const add = ({ name, measure }: Pick<NamedField, "name" | "measure">, load?: number): void => {
    const row = load === undefined ? 0 : rowOfLoad(values, load);
    const value = values[name]?.[row]?.[0];
    if (typeof value !== "number" || value === 0 || measure === "text" || measure === "count") return;
    const format = formatOf(measure, system);
    const reading = READING_OF.get(name) ?? "rounding";
    const tolerance = reading === "rounding" ? lastPlace(value, format) / Math.abs(value) : GRAPHICAL[reading];
    const key = load === undefined ? name : `${name} ${load}`;
    found.push({
      key,
      name,
      ...(load === undefined ? {} : { load }),
      row,
      value,
      drawn: load === undefined ? undefined : drawn.get(load)?.[name],
      unit: unitOn(values, measure),
      format,
      reading,
      tolerance,
    });
  };
  for (const field of FIELDS) if (field.kind === "result" && !field.column) add(field);
  for (const { number } of record.loads)
    for (const column of LOAD_TABLE.columns) if (column.kind === "result") add(column, number);
  return found;
}

// --- The signed sheet ------------------------------------------------------------------------------------------------

const ROWS = 300;
/**
 * Columns of the value, the value by hand and the tolerance; the answer of CLAY.COMPARE fills three columns from
 * `difference` on.
 */
const [VALUE, HAND, TOLERANCE] = [3, 5, 6];

const LIVE = (row: number): string => {
  const [value, hand, tolerance] = [VALUE, HAND, TOLERANCE].map((col) => cellAddress(row, col));
  return `=IF(OR(${value}="",${hand}=""),"",CLAY.COMPARE(${value},${hand},${tolerance},${shownWord("English")}))`;
};

const COLUMNS: readonly TableColumn[] = [
  { name: "compare_sheet", heading: "Data sheet", width: 22, kind: "input", format: "@" },
  { name: "compare_quantity", heading: "Quantity", width: 34, kind: "input", format: "@" },
  { name: "compare_load", heading: "Load", width: 6, kind: "input" },
  { name: "compare_value", heading: "Sheet", width: 12, kind: "input" },
  { name: "compare_unit", heading: "Unit", width: 9, kind: "input", format: "@" },
  { name: "compare_hand", heading: "By hand", width: 12, kind: "input" },
  { name: "compare_tolerance", heading: "Tolerance", width: 10, kind: "input", format: "0.0%" },
  { name: "compare_difference", heading: "Difference", width: 12, kind: "result", formula: LIVE },
  { name: "compare_relative", heading: "of by hand", width: 10, kind: "result", format: "0.0%" },
  { name: "compare_result", heading: "Result", width: 9, kind: "result" },
  { name: "compare_by", heading: "By", width: 8, kind: "input", format: "@" },
  { name: "compare_when", heading: "When", width: 17, kind: "input", format: "@" },
];

/** The columns that are written; formulas fill the others. */
export const COMPARISON_NAMES: readonly string[] = COLUMNS.filter(({ kind }) => kind === "input").map(
  ({ name }) => name,
);

/** The plan of a blank sheet of comparisons in the language of the data sheet that is compared first. */
export const comparisonSheet = (language: SheetLanguage = "en"): SheetPlan =>
  planIn(
    language,
    tableSheet({
      name: "Comparison by hand",
      title: "Results compared with values by hand",
      notes: [
        "Each row is one number of a data sheet as it stood when it was compared, the value by hand, and who compared it.",
      ],
      columns: COLUMNS,
      rows: [],
      length: ROWS,
      isProtected: true,
    }),
  );

export interface Pair {
  readonly quantity: Quantity;
  readonly byHand: number;
  readonly tolerance: number;
}

export const comparisonRow = (
  sheet: string,
  { quantity, byHand, tolerance }: Pair,
  by: string,
  when: string,
  language: SheetLanguage,
): (string | number)[] => [
  sheet,
  labelOn(language, quantity.name),
  quantity.load ?? "",
  quantity.value,
  wordOfUnit(wordsOf(language), quantity.unit),
  byHand,
  tolerance,
  by,
  when,
];
