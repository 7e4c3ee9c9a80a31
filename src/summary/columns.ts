/**
 * The columns of a summary of a project. Each gives a property of a specimen: as a live formula that refers to the
 * names of the data sheet, or as a constant for a specimen from another file. All values have the units of the summary.
 */
import { convert } from "../reduction/units";
import { unquoted } from "../workbook/address";
import { THREE_FIGURES } from "../workbook/look/number-format";
import type { CellValue } from "../workbook/port";
import type { RemarkName, ResultName, WordName, NumberName } from "../record/names";
import { shownWords, wordedExpression, wordedText } from "../record/shown-words";
import { RECORD_UNITS, type TestRecord } from "../record/record";
import type { Adopted } from "../record/adopted";
import { ADOPTABLE, CV_RANGES } from "../specification/results/adoptable";
import { DATA_SHEET_NAME } from "../specification/readings";
import { MEASURES } from "../specification/measures";
import { STAGES } from "../specification/form/wetting";
import { inFormula } from "../specification/sentences/told-formula";
import { formulaIn, labelIn, type SheetWords } from "../specification/text/words";

/** The measures for which the summary has a unit of its own. */
export const SUMMARY_MEASURES = ["stress", "depth", "density", "cv"] as const;

export type SummaryMeasure = (typeof SUMMARY_MEASURES)[number];

export type SummaryUnits = Readonly<Record<SummaryMeasure, string>>;

export const SUMMARY_UNITS: Readonly<Record<"SI" | "US", SummaryUnits>> = {
  SI: { stress: "kPa", depth: "m", density: "Mg/m3", cv: "m2/yr" },
  US: { stress: "tsf", depth: "ft", density: "pcf", cv: "ft2/day" },
};

/** Facts about a specimen besides its record. */
export interface Beside {
  /** The number of the reviewer's questions that need an answer. */
  readonly open: number;
  /** The day number on which the values were read. */
  readonly day: number;
  /** For a specimen from another file: the name of the file with the sheet, and the SHA-256 of its bytes. */
  readonly file?: string;
  readonly hash?: string;
}

/** Returns the reference to a name of the specimen's data sheet for a formula. */
export type Refer = (name: string) => string;

export interface SummaryColumn {
  /** The name of the column's cells on the summary. */
  readonly name: string;
  readonly heading: string;
  readonly measure?: SummaryMeasure;
  readonly unit?: string;
  /** The width in characters. */
  readonly width: number;
  readonly format?: string;
  /** The names of the data sheet that the formula refers to. */
  readonly needs: readonly string[];
  /** The formula; without it, the column contains constants, also for a sheet of the workbook. */
  readonly formula?: (of: Refer, units: SummaryUnits, words: SheetWords) => string;
  readonly value: (record: TestRecord, beside: Beside, units: SummaryUnits, words: SheetWords) => CellValue | undefined;
}

const blankOr = (of: string, formula = of): string => `=IF(${of}="","",${formula})`;

const wordOf = (record: TestRecord, name: WordName | RemarkName): string | undefined =>
  ({ ...record.remarks, ...record.words })[name];

const numberOf = (record: TestRecord, name: NumberName | ResultName): number | undefined =>
  ({ ...record.numbers, ...record.results })[name];

const word = (of: WordName | RemarkName, heading: string, width = 12): SummaryColumn => ({
  ...{ name: `summary_${of}`, heading, width, needs: [of] },
  formula: (refer) => blankOr(refer(of)),
  value: (record) => wordOf(record, of),
});

/** The column of a word that a worksheet function or a formula of the sheet gives; here it is in the language of the summary. */
const given = (of: RemarkName, heading: string, width: number): SummaryColumn => ({
  ...word(of, heading, width),
  formula: (refer, _, { language }) => blankOr(refer(of), wordedExpression(refer(of), shownWords(of, language))),
  value: (record, _, __, { language }) => {
    const text = wordOf(record, of);
    return text === undefined ? undefined : wordedText(text, shownWords(of, language));
  },
});

const number = (of: NumberName | ResultName, heading: string, format: string): SummaryColumn => ({
  ...{ name: `summary_${of}`, heading, format, width: 10, needs: [of] },
  formula: (refer) => blankOr(refer(of)),
  value: (record) => numberOf(record, of),
});

const converted = (value: string, refer: Refer, measure: SummaryMeasure, units: SummaryUnits): string =>
  `CLAY.CONVERT_UNIT(${value},${refer(MEASURES[measure].unit.cell)},"${units[measure]}")`;

/** Converts a value of a record to the unit of the summary. */
export function inUnits(value: number, measure: SummaryMeasure, units: SummaryUnits): number {
  const { quantity, to: ofRecord } = RECORD_UNITS[measure];
  return convert(value, quantity, ofRecord, units[measure]);
}

const measured = (
  of: NumberName | ResultName,
  heading: string,
  measure: SummaryMeasure,
  format: string,
): SummaryColumn => ({
  ...{ name: `summary_${of}`, heading, measure, format, width: 10, needs: [of, MEASURES[measure].unit.cell] },
  formula: (refer, units) => blankOr(refer(of), converted(refer(of), refer, measure, units)),
  value: (record, _, units) => {
    const found = numberOf(record, of);
    return found === undefined ? undefined : inUnits(found, measure, units);
  },
});

/** The column of an index of the void ratio divided by 1 + e0, which is the index of the strain. */
const ratio = (of: "compression_index" | "recompression_index", name: string, heading: string): SummaryColumn => ({
  ...{ name, heading, format: "0.000", width: 8, needs: [of, "void_ratio_initial"] },
  formula: (refer) =>
    `=IF(OR(${refer(of)}="",${refer("void_ratio_initial")}=""),"",${refer(of)}/(1+${refer("void_ratio_initial")}))`,
  value: ({ results }) => {
    const [index, e0] = [results[of], results.void_ratio_initial];
    return index === undefined || e0 === undefined ? undefined : index / (1 + e0);
  },
});

const endOfCv = (which: "MIN" | "MAX", heading: string): SummaryColumn => ({
  ...{ name: `summary_cv_${which.toLowerCase()}`, heading, measure: "cv", format: THREE_FIGURES, width: 10 },
  needs: ["cv_chosen", "cv_unit"],
  formula: (refer, units) => {
    const cv = refer("cv_chosen");
    const end = converted(`${which}(IF(ISNUMBER(${cv}),${cv},""))`, refer, "cv", units);
    return `=IF(COUNT(${cv})=0,"",${end})`;
  },
  value: ({ loads }, _, units) => {
    const found = loads.flatMap(({ results }) => results.cv_chosen ?? []);
    return found.length === 0 ? undefined : inUnits(Math[which === "MIN" ? "min" : "max"](...found), "cv", units);
  },
});

/** The text between the number of stages and the load, in the language of the summary, as a string of a formula. */
const ofStages = (words: SheetWords): string => formulaIn(words, inFormula(STAGES));

/** The number of stages of wetting, and the load of the one that the results are of, as the data sheet says it in its own language. */
const stagesOfWetting: SummaryColumn = {
  ...{ name: "summary_wetting_stages", heading: "Stages of wetting", width: 26 },
  needs: ["wetting_stages", "load_wetting_strain", "wetting_load"],
  formula: (refer, _, words) =>
    blankOr(
      refer("wetting_stages"),
      `COUNT(${refer("load_wetting_strain")})&${ofStages(words)}&${refer("wetting_load")}`,
    ),
  value: (record, _, __, words) => {
    const { loads, results } = record;
    const stages = loads.filter((load) => load.results.load_wetting_strain !== undefined).length;
    return stages < 2 || results.wetting_load === undefined
      ? wordOf(record, "wetting_stages")
      : `${stages}${ofStages(words).slice(1, -1)}${results.wetting_load}`;
  },
};

/** The quantities of a table whose value in use was adopted by the engineer; the values stand in their own columns. */
const adopted = (
  of: "adopted_value" | "adopted_cv",
  quantities: readonly { readonly name: keyof Adopted; readonly label: string }[],
): Omit<SummaryColumn, "name" | "heading" | "width"> => ({
  needs: [of],
  formula: (refer, _, words) =>
    `=IF(COUNT(${refer(of)})=0,"",${quantities
      .map(({ label }, index) => `IF(COUNT(INDEX(${refer(of)},${index + 1}))>0,"${labelIn(words, label)}; ","")`)
      .join("&")})`,
  value: (record, _, __, words) =>
    quantities.flatMap(({ name, label }) => (record.adopted?.[name] ? [`${labelIn(words, label)}; `] : [])).join("") ||
    undefined,
});

const constant = (
  name: string,
  heading: string,
  width: number,
  value: SummaryColumn["value"],
  format?: string,
): SummaryColumn => ({ name, heading, width, needs: [], value, ...(format && { format }) });

/**
 * The column with the data sheet of the row. Its formula refers to the sheet, so that it follows a new name of the
 * sheet.
 */
export const KEY = "summary_sheet";
export const FILE = "summary_file";
export const HASH = "summary_sha256";
export const OPEN = "summary_open_checks";

/**
 * A text in a formula. Quotation marks are replaced, because the two hosts spell them differently in the names of
 * sheets.
 */
const quotedText = (text: string): string => `"${text.replaceAll('"', "'")}"`;

/** The formula of the first cell of a row. */
export const keyFormula = (sheet: string, refer: Refer): string =>
  `=IF(COUNT(${refer(DATA_SHEET_NAME)})>=0,${quotedText(sheet)},"")`;

const KEY_OF = new RegExp(`(?:'((?:[^']|'')+)'|([\\p{L}_][\\p{L}\\p{N}_.]*))!${DATA_SHEET_NAME}`, "u");

/** The sheet that the formula of a row's first cell refers to. */
export function sheetOfKey(content: CellValue | undefined): string | undefined {
  const [, inQuotes, bare] = KEY_OF.exec(String(content ?? "")) ?? [];
  return unquoted(inQuotes, bare);
}

export const COLUMNS: readonly SummaryColumn[] = [
  constant(KEY, "Data sheet", 22, (_, { file }) => file),
  word("boring", "Boring"),
  word("sample", "Sample"),
  word("specimen", "Specimen", 11),
  measured("depth", "Depth", "depth", "0.00"),
  word("soil_description", "Soil", 26),
  word("group_symbol", "Group", 8),
  word("atterberg_limits", "Limits as text", 14),
  number("liquid_limit", "Liquid limit", "0.0%"),
  number("plasticity_index", "Plasticity index", "0.0%"),
  number("water_content_initial", "w0", "0.0%"),
  measured("density_initial", "Density", "density", "0.00"),
  number("liquidity_index", "Liquidity index", "0.00"),
  number("void_ratio_initial", "e0", "0.000"),
  number("void_index", "Void index", "0.00"),
  measured("in_situ_stress", "In-situ stress", "stress", "0.0"),
  measured("preconsolidation_stress", "Preconsol. stress", "stress", "0.0"),
  measured("preconsolidation_low", "not less than", "stress", "0.0"),
  measured("preconsolidation_high", "not more than", "stress", "0.0"),
  number("overconsolidation_ratio", "OCR", "0.00"),
  number("compression_index", "Cc", "0.000"),
  number("recompression_index", "Cr", "0.000"),
  number("swelling_index", "Cs", "0.000"),
  ratio("compression_index", "summary_compression_ratio", "CR"),
  ratio("recompression_index", "summary_recompression_ratio", "RR"),
  endOfCv("MIN", "cv from"),
  endOfCv("MAX", "cv to"),
  measured("cv_recompression", "cv, recompression", "cv", THREE_FIGURES),
  measured("cv_virgin", "cv, virgin", "cv", THREE_FIGURES),
  number("c_alpha_chosen", "C alpha-epsilon", "0.0000"),
  measured("wetting_stress", "Wetted under", "stress", "0.0"),
  number("wetting_strain", "Strain on wetting", "0.00%"),
  stagesOfWetting,
  number("collapse_index", "Collapse index", "0.0%"),
  measured("swelling_pressure_used", "Swelling pressure", "stress", "0.0"),
  { name: "summary_adopted", heading: "Adopted values", width: 26, ...adopted("adopted_value", ADOPTABLE) },
  { name: "summary_adopted_cv", heading: "Adopted cv", width: 22, ...adopted("adopted_cv", CV_RANGES) },
  given("quality_class", "Quality", 16),
  constant(OPEN, "Open checks", 8, (_, { open }) => open, "0"),
  word("tested_by", "Tested by"),
  word("checked_by", "Checked by"),
  constant("summary_day", "Read on", 11, (_, { day }) => Math.floor(day), "yyyy-mm-dd"),
  constant(FILE, "File", 22, (_, { file }) => file),
  constant(HASH, "SHA-256 of the file", 20, (_, { hash }) => hash),
];

/** All names of a data sheet that the summary refers to. */
export const NEEDED_NAMES: readonly string[] = [
  ...new Set([DATA_SHEET_NAME, ...COLUMNS.flatMap(({ needs }) => needs)]),
];

export const COLUMN_NAMES: readonly string[] = COLUMNS.map(({ name }) => name);
