/** The parts of the first page: results with their ranges beside the curve, three remarks, signatures, a caution. */
import { METHOD_NAMES, METHOD_SAID } from "../../reduction/curve/method-words";
import { say, type Message } from "../../reduction/message";
import { jumpsIn, yieldMethodOf } from "../../record/reduced-test";
import { remarkOfTest } from "../../record/sheet-remarks";
import type { CellPlan, ChartPlan } from "../../workbook/port";
import { ADOPTABLE } from "../../specification/results/adoptable";
import { inFormula } from "../../specification/sentences/told-formula";
import {
  FORMATS,
  formatIn,
  NOTHING,
  shownCell,
  shownFormula,
  twoFigures,
  typedFormat,
  worded,
  worked,
} from "../page/cells";
import { band, COLUMNS, fits, gap, paragraph, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";
import { wrapped } from "../page/text";
import { date, LABEL_COLUMNS, text } from "./fields";
import { inLanguage, rowOfMethod } from "./interpretation";
import type { Missing } from "./required";
import { stressFormat } from "./specimen";

const HALF = COLUMNS / 2;
const [VALUE, FROM, TO] = [LABEL_COLUMNS, LABEL_COLUMNS + 1, LABEL_COLUMNS + 2];

/** An expression that rounds a cell to significant figures. */
const inFigures = (reference: string, figures: number): string =>
  `ROUND(${reference},${figures - 1}-INT(LOG(ABS(${reference}),10)))`;

/** The row of the preconsolidation stress in the table of adopted values, counted from 0. */
const ADOPTABLE_STRESS = ADOPTABLE.findIndex(({ name }) => name === "preconsolidation_stress");

/** The two cells of the range that the points allow. */
const LIMITS = ["preconsolidation_low", "preconsolidation_high"] as const;

const isStressAdopted = ({ source }: DataCells): boolean =>
  source.record.adopted?.preconsolidation_stress !== undefined;

/**
 * The preconsolidation stress as reported; the full number stands below it. It has two significant figures, and three
 * where two would put it outside its own range. An adopted stress is shown as it was typed.
 */
function reportedStress(cells: DataCells): { formula: string; format: string } {
  const [reference, value] = [cells.at("preconsolidation_stress"), cells.number("preconsolidation_stress")];
  if (!reference) return { formula: `="${NOTHING}"`, format: twoFigures(value) };
  if (isStressAdopted(cells) && value !== undefined)
    return { formula: shownFormula(cells, reference), format: typedFormat([value]) };
  const [low, high] = LIMITS.map((name) => cells.at(name));
  const two = inFigures(reference, 2);
  const rounded =
    low && high
      ? `IF(COUNT(${low},${high})<2,${two},IF(AND(${two}>=${low},${two}<=${high}),${two},${inFigures(reference, 3)}))`
      : two;
  const [least = -Infinity, greatest = Infinity] = LIMITS.map((name) => cells.number(name));
  const atTwo = value ? Number(value.toPrecision(2)) : 0;
  const figures = atTwo >= least && atTwo <= greatest ? 2 : 3;
  return { formula: worked([reference], rounded) ?? `="${NOTHING}"`, format: twoFigures(value, figures) };
}

const decimals = (value: number | undefined, figures: number): string =>
  value === undefined || value === 0
    ? "0.0"
    : `0.${"0".repeat(Math.max(1, figures - 1 - Math.floor(Math.log10(Math.abs(value)))))}`;

/** One result with its unit and its range. */
interface Result {
  readonly label: Message;
  /** The name of the unit cell on the data sheet. */
  readonly unit?: string;
  readonly name?: string;
  readonly formula?: string | undefined;
  readonly format: string;
  /** Format of the range; if left out, that of the value. */
  readonly rangeFormat?: string;
  readonly isText?: boolean;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}

function resultRow(cells: DataCells, one: Result, row: number): CellPlan[] {
  const { label, unit, from, to, format, rangeFormat = format } = one;
  const unitCell = unit === undefined ? undefined : cells.at(unit);
  const words = cells.words(label);
  const shown = { label: "", name: one.name, formula: one.formula, format, isText: one.isText ?? false };
  const range = (formula: string | undefined, col: number): CellPlan[] =>
    formula === undefined ? [] : [{ ...shownCell(cells, { label: "", formula, format: rangeFormat }, row, col) }];
  return [
    {
      row,
      col: 0,
      kind: "label",
      ...(unitCell ? { formula: `=${inFormula(`${words}, `)}&${worded(cells, unitCell, unit)}` } : { value: words }),
    },
    ...(one.name === undefined && one.formula === undefined ? [] : [shownCell(cells, shown, row, VALUE)]),
    ...range(from, FROM),
    ...range(to, TO),
  ];
}

/** The least or the greatest stress of all methods; undefined if the sheet has no table of methods. */
function ofMethods(cells: DataCells, which: "MIN" | "MAX"): string | undefined {
  const rows = METHOD_NAMES.flatMap((method) => rowOfMethod(cells, method) ?? []);
  if (rows.length === 0) return undefined;
  const stresses = cells.rowsOf("preconsolidation_spread", Math.min(...rows), Math.max(...rows), 1);
  return stresses && `=IFERROR(IF(COUNT(${stresses})=0,"${NOTHING}",${which}(${stresses})),"${NOTHING}")`;
}

/** The least or the greatest cv of first loading from the preconsolidation stress on; a reload does not count. */
function ofVirginLoads(cells: DataCells, which: "least" | "greatest"): string | undefined {
  const [cv, stress] = [cells.column("cv_chosen"), cells.column("load_stress")];
  const limit = cells.at("preconsolidation_stress");
  if (!cv || !stress || !limit) return undefined;
  return `=IFERROR(IF(ISNUMBER(${limit}),CLAY.CV_RANGE(${stress},${cv},${limit},MAX(${stress}),"${which}"),"${NOTHING}"),"${NOTHING}")`;
}

function ofSpecimen(cells: DataCells): Result[] {
  const density = formatIn(cells, "density_unit");
  return [
    {
      label: say`Initial void ratio e0`,
      name: "void_ratio_initial",
      format: FORMATS.ratio,
      from: "={report_void_ratio_low}",
      to: "={report_void_ratio_high}",
    },
    { label: say`Initial water content w0`, name: "water_content_initial", format: FORMATS.water },
    { label: say`Initial dry density`, name: "dry_density_initial", format: density, unit: "density_unit" },
    { label: say`Initial saturation S0`, name: "saturation_initial", format: FORMATS.saturation },
  ];
}

/** A stress of the constructions, or "-" where they refuse the curve: their cell shows #N/A, which is no fault of the sheet. */
const unlessRefused = (cells: DataCells, reference: string): string =>
  `=IF(ISNA(${reference}),"${NOTHING}",${shownFormula(cells, reference).slice(1)})`;

/** The stress that the constructions give, with a further digit: also where the engineer adopted another one. */
function asWorkedOut(cells: DataCells, value: number | undefined): Result {
  const constructed = cells.at("adopted_constructed", ADOPTABLE_STRESS);
  return {
    label: isStressAdopted(cells) ? say`  by the construction` : say`  before rounding (for OCR)`,
    ...(constructed ? { formula: unlessRefused(cells, constructed) } : { name: "preconsolidation_stress" }),
    format: decimals(value, 4),
  };
}

function ofYield(cells: DataCells, loads: readonly ReportedLoad[]): Result[] {
  const value = cells.number("preconsolidation_stress");
  const range = (name: string): string | undefined => {
    const reference = cells.at(name);
    return reference && unlessRefused(cells, reference);
  };
  return [
    {
      label: say`In-situ stress`,
      name: "in_situ_stress",
      format: stressFormat(cells, loads, "in_situ_stress"),
      unit: "stress_unit",
    },
    {
      label: say`Preconsolidation stress`,
      ...reportedStress(cells),
      unit: "stress_unit",
      // The format of the table under Interpretation, which shows the same two numbers.
      rangeFormat: twoFigures(value, 3),
      from: range(LIMITS[0]),
      to: range(LIMITS[1]),
    },
    asWorkedOut(cells, value),
    {
      label: say`  by all methods`,
      format: twoFigures(value, 3),
      from: ofMethods(cells, "MIN"),
      to: ofMethods(cells, "MAX"),
    },
    { label: say`Overconsolidation ratio`, name: "overconsolidation_ratio", format: "0.0" },
  ];
}

function ofCompression(cells: DataCells, loads: readonly ReportedLoad[]): Result[] {
  const all = loads.flatMap(({ row }) => cells.number("cv_chosen", row) ?? []);
  return [
    { label: say`Compression index Cc`, name: "compression_index", format: FORMATS.index },
    { label: say`Recompression index Cr`, name: "recompression_index", format: FORMATS.index },
    { label: say`Swelling index Cs`, name: "swelling_index", format: FORMATS.index },
    {
      label: say`cv of virgin loads`,
      unit: "cv_unit",
      format: twoFigures(all.length ? Math.min(...all) : undefined),
      from: ofVirginLoads(cells, "least"),
      to: ofVirginLoads(cells, "greatest"),
    },
    {
      label: say`C alpha, strain per log cycle`,
      name: "c_alpha_chosen",
      format: twoFigures(cells.number("c_alpha_chosen")),
    },
    { label: say`  of load`, name: "c_alpha_load", format: "0" },
    { label: say`C alpha / Cc, by void ratio`, name: "c_alpha_ratio", format: FORMATS.index },
    { label: say`Sample quality class`, name: "quality_class", format: "@", isText: true },
  ];
}

export interface CurveBeside {
  /** The chart beside the results, if the test has a curve. */
  readonly chart?: Omit<ChartPlan, "box"> | undefined;
  /** Rows of the chart; at least as many as the results need. */
  readonly rows: number;
}

const ROUNDED_STRESS = say`The preconsolidation stress is rounded to two figures, or to three if two would lie outside its range; OCR and design values follow from the number before rounding.`;
const ADOPTED_STRESS = say`The preconsolidation stress is the adopted one, and OCR and design values follow from it; below it stands the one that the construction gives.`;

/** The results with their ranges on the left, and the compression curve on the right. */
export function results(cells: DataCells, loads: readonly ReportedLoad[], { chart, rows }: CurveBeside): Block[] {
  const t = cells.words;
  const all = [...ofSpecimen(cells), ...ofYield(cells, loads), ...ofCompression(cells, loads)];
  const head: CellPlan[] = [[VALUE, say`value`] as const, [FROM, say`from`] as const, [TO, say`to`] as const].map(
    ([col, word]) => ({ row: 0, col, kind: "unit", value: t(word), align: "right" }),
  );
  const notes = paragraph(
    `${t(isStressAdopted(cells) ? ADOPTED_STRESS : ROUNDED_STRESS)} ${t(
      say`Ranges. e0: limits of error, k = 2. Preconsolidation stress: what the points of the curve allow, about 95 %. By all methods: the least and the greatest of them. cv: loads of first loading from the preconsolidation stress on, without reloading.`,
    )}`,
    { kind: "note", until: HALF },
  ).flatMap(({ cells: line }, index) => line.map((cell) => ({ ...cell, row: all.length + 1 + index })));
  const needed = all.length + 1 + notes.length;
  const height = Math.max(rows, needed);
  return [
    band(t(say`Results`)),
    {
      rows: height,
      cells: [...head, ...all.flatMap((one, index) => resultRow(cells, one, index + 1)), ...notes],
      charts: chart ? [{ ...chart, box: { row: 0, col: HALF, rows: height, cols: HALF } }] : [],
    },
    gap,
  ];
}

/** A remark in one line; if it does not fit, the line ends with a reference to the details. */
function oneLine(cells: DataCells, lead: string, said: string): Block {
  const whole = `${lead}: ${said}`;
  if (fits(whole, "label", 0)) return { rows: 1, cells: [{ row: 0, col: 0, kind: "label", value: whole }] };
  const more = ` … ${cells.words(say`(in full among the details)`)}`;
  let words = wrapped(whole, whole.length - 1)[0] ?? "";
  while (words.includes(" ") && !fits(words + more, "label", 0)) words = words.slice(0, words.lastIndexOf(" "));
  return { rows: 1, cells: [{ row: 0, col: 0, kind: "label", value: words + more }] };
}

/**
 * Three lines: the typed remarks, by which method the preconsolidation stress is and how well the methods agree, or else the remark on the curve, and the results of the checks with the count of missing items;
 * before them a line if the readings of a load jump.
 */
export function threeRemarks(cells: DataCells, lacking: readonly Missing[]): Block[] {
  const t = cells.words;
  const typed = ["deviations", "test_remarks"].map((name) => cells.text(name)).filter(Boolean);
  const told = (name: "preconsolidation_verdict" | "preconsolidation_remark"): string =>
    inLanguage(cells, cells.text(name), remarkOfTest(cells.source, name));
  // Where no methods can be compared, the remark on the curve says why.
  const ofStress = told("preconsolidation_verdict") || told("preconsolidation_remark");
  const count = (status: string) => cells.source.answered.filter(({ answer }) => answer.status === status).length;
  const [passed, stop, explain, note] = [count("pass"), count("stop"), count("explain"), count("note")];
  const required = lacking.filter(({ isRequired }) => isRequired).length;
  const nothing = t(say`nothing is said`);
  const isConstructed = cells.number("preconsolidation_stress") !== undefined && !isStressAdopted(cells);
  const onStress = !isConstructed
    ? say`On the preconsolidation stress`
    : say`Preconsolidation stress (${METHOD_SAID[yieldMethodOf(cells.source.record)]})`;
  return [
    band(t(say`Remarks`)),
    ...jumpsIn(cells.source.record)
      .slice(0, 1)
      .map(({ load, jump }) => oneLine(cells, t(say`Load ${load.record.number}`), t(jump.said))),
    oneLine(cells, t(say`On the test`), typed.join("; ") || nothing),
    oneLine(cells, t(onStress), ofStress || nothing),
    oneLine(
      cells,
      t(say`Checks`),
      t(
        say`${passed} passed; not passed: ${stop} that stop the issue, ${explain} to be explained, ${note} to be noted. Required items that are missing: ${required}`,
      ),
    ),
    gap,
  ];
}

const LINE = "_".repeat(22);

export function signatures(cells: DataCells): Block[] {
  const t = cells.words;
  const signed = (label: string, name: string, on: string): Block => ({
    rows: 2,
    cells: [
      { row: 1, col: 0, kind: "label", value: label },
      shownCell(cells, text(label, name), 1, 2),
      { row: 1, col: 5, kind: "label", value: t(say`Date`) },
      shownCell(cells, date("", on), 1, 6),
      { row: 1, col: 8, kind: "label", value: t(say`Signed`) },
      { row: 1, col: 9, kind: "label", value: LINE },
    ],
    merges: [{ row: 1, col: 6, rows: 1, cols: 2 }],
    withNext: true,
  });
  return [
    band(t(say`Signatures`)),
    signed(t(say`Tested by`), "tested_by", "date_tested"),
    { ...signed(t(say`Checked by`), "checked_by", "date_checked"), withNext: false },
    gap,
  ];
}

/** The main cautions in short; all cautions stand among the details. */
export const caution = (cells: DataCells): Block[] =>
  paragraph(
    cells.words(
      say`These results feed settlement design. They support, and do not replace, the judgement of a licensed engineer or authorised signatory. Preconsolidation stress and indices are interpretations; several answers can be defended. All cautions stand among the details.`,
    ),
    { kind: "note" },
  );
