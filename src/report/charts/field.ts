/**
 * The field curve as columns of live formulas: one FIELD_CURVE spills its points, and the columns of each series pick theirs. A
 * series is blank if the field curve does not have its point: in normally consolidated clay, for example, the yield.
 */
import { fieldCurvePlot } from "../../plots/field";
import { cellNamed } from "../../record/record";
import { FIELD_FACTOR } from "../../reduction/curve/field-curve";
import { listed, say } from "../../reduction/message";
import { badInput, given, type Outcome } from "../../reduction/outcome";
import { ADOPTABLE, type AdoptableName } from "../../specification/results/adoptable";
import { Sheet, curvePicksOf, frameOf, titled } from "./sheet-cells";
import { FIELD_LABELS } from "../../plots/field";
import type { BlockColumn, BlockSeries, SeriesBlock, Where } from "./series-block";
import type { NamePlace } from "../../workbook/port";
import type { Frame } from "./series-lines";

/** The cells and expressions to which the formulas refer. */
export interface FieldSource {
  /** The columns of stresses and void ratios, and a cell of a column by its row, counted from 0. */
  readonly stresses: { readonly whole: string; readonly cell: (row: number) => string; readonly rows: number };
  readonly voidRatios: { readonly whole: string; readonly cell: (row: number) => string };
  readonly inSitu: string;
  readonly yieldStress: string;
  readonly factor: string;
  readonly initial: string;
  /** The picks by hand of the curve, and the adopted Cr, as expressions; blank if there is none. */
  readonly picks?: string;
  readonly recompressionIndex?: string;
}

/** Rows of FIELD_CURVE: at most three points, Cc, Cr, remark. */
const SPILL_ROWS = 8;
/** The most points of a field curve. */
const POINTS = 3;

/** The points of the field curve by their position; their number is the row of Cc minus one. */
function pointColumns(
  name: string,
  { x }: Frame,
  rows: number,
  rowOf: (index: number, count: string) => { readonly row: string; readonly when: string },
): BlockColumn[] {
  const count = (where: Where): string => `IFERROR(MATCH("Cc",${where.column("field label")},0)-1,0)`;
  const cells = (of: "field x" | "field y", otherwise: string) => (where: Where) =>
    Array.from({ length: rows }, (_, index) => {
      const { row, when } = rowOf(index, count(where));
      return `=IF(${when},IFERROR(INDEX(${where.column(of)},${row}),${otherwise}),${otherwise})`;
    });
  return [
    { name: `${name} x`, heading: `${name}, x`, rows, cells: cells("field x", String(x.domain[0])) },
    { name: `${name} y`, heading: `${name}, y`, rows, cells: cells("field y", "NA()") },
  ];
}

/** The columns of the laboratory curve, and of its value at the yield stress. */
function laboratoryColumns({ stresses, voidRatios, yieldStress }: FieldSource, { x }: Frame): BlockColumn[] {
  const each = (cell: (row: number) => string) => () => Array.from({ length: stresses.rows }, (_, row) => cell(row));
  const isThere = (row: number) => `AND(ISNUMBER(${stresses.cell(row)}),ISNUMBER(${voidRatios.cell(row)}))`;
  return [
    {
      name: "x",
      heading: "Stress",
      rows: stresses.rows,
      cells: each((row) => `=IF(${isThere(row)},${stresses.cell(row)},${x.domain[0]})`),
    },
    {
      name: "y",
      heading: "Void ratio",
      rows: stresses.rows,
      cells: each((row) => `=IF(${isThere(row)},${voidRatios.cell(row)},NA())`),
    },
    {
      name: "yield x",
      heading: "Yield, x",
      rows: 1,
      cells: () => [`=IF(ISNUMBER(${yieldStress}),${yieldStress},${x.domain[0]})`],
    },
    {
      name: "yield y",
      heading: "Yield, y",
      rows: 1,
      cells: () => [
        `=IF(ISNUMBER(${yieldStress}),IFERROR(CLAY.CURVE_AT(${stresses.whole},${voidRatios.whole},${yieldStress}),NA()),NA())`,
      ],
    },
  ];
}

const named = (nameAt: NamePlace) => ({ lettered: true, nameAt }) as const;

/** The points lie close together: each name has a side of its own. */
const SERIES: readonly BlockSeries[] = [
  { name: FIELD_LABELS.laboratory, style: "thin", x: "x", y: "y" },
  { name: FIELD_LABELS.loads, style: "points", symbol: "filled", x: "x", y: "y" },
  { name: FIELD_LABELS.field, style: "line", ...named("right"), x: "line x", y: "line y" },
  { name: FIELD_LABELS.inSitu, style: "points", symbol: "open", ...named("above"), x: "in situ x", y: "in situ y" },
  { name: FIELD_LABELS.fieldYield, style: "points", symbol: "open", ...named("right"), x: "bend x", y: "bend y" },
  {
    name: FIELD_LABELS.laboratoryYield,
    style: "points",
    symbol: "cross",
    ...named("below"),
    x: "yield x",
    y: "yield y",
  },
  { name: FIELD_LABELS.meeting, style: "points", symbol: "cross", ...named("left"), x: "meeting x", y: "meeting y" },
];

function fieldBlock(source: FieldSource, frame: Frame): Pick<SeriesBlock, "x" | "y" | "columns" | "series"> {
  const { stresses, voidRatios, inSitu, yieldStress, factor, initial, picks = "", recompressionIndex = "" } = source;
  const call = `CLAY.FIELD_CURVE(${stresses.whole},${voidRatios.whole},${inSitu},${yieldStress},${factor},${initial},"e",${picks},${recompressionIndex})`;
  const spill: BlockColumn[] = [
    { name: "field label", heading: "Field curve", rows: SPILL_ROWS, cells: () => [`=${call}`] },
    { name: "field x", heading: "Stress", rows: SPILL_ROWS, cells: () => [] },
    { name: "field y", heading: "Void ratio", rows: SPILL_ROWS, cells: () => [] },
  ];
  const columns = [
    ...laboratoryColumns(source, frame),
    ...pointColumns("line", frame, POINTS, (index, count) => ({ row: String(index + 1), when: `${index}<${count}` })),
    ...pointColumns("in situ", frame, 1, (_, count) => ({ row: "1", when: `${count}>0` })),
    ...pointColumns("bend", frame, 1, (_, count) => ({ row: "2", when: `${count}=${POINTS}` })),
    ...pointColumns("meeting", frame, 1, (_, count) => ({ row: count, when: `${count}>0` })),
    ...spill,
  ];
  return { ...frame, columns, series: SERIES };
}

/** An adopted value: what it is, and a formula that is blank while nothing is adopted. */
function adoptedIn(sheet: Sheet, name: AdoptableName): { readonly formula?: string; readonly value?: number } {
  const row = ADOPTABLE.findIndex((one) => one.name === name);
  const cell = sheet.taken("adopted_value", String(row + 1));
  if (!cell) return {};
  return { formula: `IF(ISNUMBER(${cell}),${cell},"")`, value: sheet.numbers("adopted_value")[row] ?? undefined };
}

/** The field curve; refuses, and names the missing input, if the sheet has no in-situ stress or no initial void ratio. */
export function fieldOf(sheet: Sheet): Outcome<SeriesBlock> {
  const needed = ["load_stress", "void_ratio_curve", "in_situ_stress", "preconsolidation_stress", "void_ratio_initial"];
  const lacking = sheet.lacks(...needed);
  if (lacking) return lacking;
  const [inSitu, initial] = [sheet.number("in_situ_stress"), sheet.number("void_ratio_initial")];
  if (inSitu === undefined || initial === undefined)
    return badInput(
      say`the field curve needs ${listed(["in_situ_stress", "void_ratio_initial"].filter((name) => sheet.number(name) === undefined).map(cellNamed))}`,
    );
  const [picks, recompression] = [curvePicksOf(sheet), adoptedIn(sheet, "recompression_index")];
  const spec = fieldCurvePlot(sheet.numbers("load_stress"), sheet.numbers("void_ratio_curve"), {
    stressUnit: sheet.word("stress_unit") || undefined,
    inSituStress: inSitu,
    initialVoidRatio: initial,
    preconsolidationStress: sheet.number("preconsolidation_stress"),
    factor: sheet.number("field_factor"),
    picks: picks.picks,
    recompressionIndex: recompression.value,
    inWords: sheet.words,
  });
  if (!spec.ok) return spec;
  const factor = sheet.address("field_factor");
  const block = fieldBlock(
    {
      stresses: sheet.source("load_stress")!,
      voidRatios: sheet.source("void_ratio_curve")!,
      inSitu: sheet.address("in_situ_stress")!,
      yieldStress: sheet.address("preconsolidation_stress")!,
      factor: factor ? `IF(${factor}="",${FIELD_FACTOR},${factor})` : String(FIELD_FACTOR),
      initial: sheet.address("void_ratio_initial")!,
      picks: picks.formula,
      recompressionIndex: recompression.formula,
    },
    frameOf(spec.value),
  );
  return given({ title: titled(sheet, spec.value.title), ...block }, spec.remarks);
}
