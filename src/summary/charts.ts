/**
 * The charts of a project on a sheet of their own: stresses against depth, compression curves and cv of all specimens,
 * Cc against water content. The numbers beside them are live formulas in the units of the summary. In a row without a
 * specimen, x is a number and y is #N/A: if x contained a text, the chart would use 1, 2, 3 for all x.
 */
import type { TestRecord } from "../record/record";
import { LINE_STRESSES } from "../reduction/curve/intrinsic";
import { convert } from "../reduction/units";
import { intrinsicLineAt, sedimentationLineAt } from "../specification/formulas";
import type { SheetLanguage } from "../specification/text/language";
import { wordIn } from "../specification/list-words";
import { besideIn, wordsOf } from "../specification/text/words";
import { boxAddress, quoted } from "../workbook/address";
import { roundedDomain } from "../workbook/look/chart-axis";
import type { Box, CellContent, ChartAxis, ChartPlan, ChartSeries, SheetPlan } from "../workbook/port";
import { referenceTo } from "../workbook/references";
import { inUnits, type SummaryUnits } from "./columns";

/** A data sheet whose curves are drawn. */
export interface Curve {
  readonly sheet: string;
  /** The name of the specimen beside its line. */
  readonly called: string;
  readonly record: TestRecord;
  /** True if the sheet has the names of the void index: sheets from version 6 on. */
  readonly hasVoidIndex?: boolean;
}

/** The summary whose rows are drawn: its columns, and the rows with a specimen, counted from 0 within the columns. */
export interface DrawnSummary {
  readonly sheet: string;
  readonly boxes: ReadonlyMap<string, Box>;
  readonly rows: readonly number[];
}

export interface ChartsSheet {
  readonly plan: SheetPlan;
  /** The contents to write once the sheet exists; `sheet` is the name that it got. */
  readonly cells: readonly CellContent[];
}

/** The names of a data sheet that its curves need. */
export const CURVE_NAMES: readonly string[] = [
  "load_stress",
  "stress_unit",
  "void_ratio_end",
  "strain_end",
  "void_ratio_initial",
  "cv_chosen",
  "cv_unit",
];

/** The names of a data sheet that its void index needs. */
export const VOID_INDEX_NAMES: readonly string[] = ["intrinsic_void_ratio", "intrinsic_index"];

const CHART: Pick<Box, "rows" | "cols"> = { rows: 24, cols: 8 };
const ACROSS = 2;
/** The numbers stand to the right of the charts. */
const LEFT = ACROSS * CHART.cols + 1;
const TOP = 3;
/** With more names than this beside the ends of the lines, the names would overlap. */
const MOST_LETTERED = 12;

/** The headings of the columns of a curve, in their order. */
const CURVE_COLUMNS = ["stress", "e", "strain", "e/e0", "Iv", "cv"] as const;
type CurveColumn = (typeof CURVE_COLUMNS)[number];

/** The headings of the columns of single values; each pair x and y has the names of two columns of the summary. */
const POINTS = [
  { name: "in-situ stress", x: "summary_in_situ_stress", y: "summary_depth" },
  { name: "preconsolidation stress", x: "summary_preconsolidation_stress", y: "summary_depth" },
  { name: "not less than", x: "summary_preconsolidation_low", y: "summary_depth" },
  { name: "not more than", x: "summary_preconsolidation_high", y: "summary_depth" },
  { name: "Cc by w0", x: "summary_water_content_initial", y: "summary_compression_index" },
  { name: "Cc by liquid limit", x: "summary_liquid_limit", y: "summary_compression_index" },
] as const;

const ONE = { rows: 1, cols: 1 };

/** Gives a text of the sheet in its language. */
type InLanguage = (text: string) => string;

function pointCells({ sheet, boxes, rows }: DrawnSummary, t: InLanguage): CellContent[] {
  const at = (name: string, row: number): string | undefined => {
    const box = boxes.get(name);
    return box && `${quoted(sheet)}!${boxAddress({ row: box.row + row, col: box.col, ...ONE })}`;
  };
  return POINTS.flatMap(({ name, x, y }, index) => {
    const col = LEFT + 2 * index;
    return [
      { row: TOP - 1, col, value: `${t(name)}: x` },
      { row: TOP - 1, col: col + 1, value: "y" },
      ...rows.flatMap((row, down): CellContent[] => {
        const [ofX, ofY] = [at(x, row), at(y, row)];
        if (!ofX || !ofY) return [];
        return [
          { row: TOP + down, col, formula: `=IF(ISNUMBER(${ofX}),${ofX},0)` },
          { row: TOP + down, col: col + 1, formula: `=IF(AND(ISNUMBER(${ofX}),ISNUMBER(${ofY})),${ofY},NA())` },
        ];
      }),
    ];
  });
}

/** The columns of the intrinsic and the sedimentation line: stress, and the void index of each. */
const LINES_LEFT = LEFT + 2 * POINTS.length + 1;
const LINE_NAMES = ["intrinsic line", "sedimentation line"] as const;

const lineCells = (units: SummaryUnits, t: InLanguage): CellContent[] => [
  { row: TOP - 1, col: LINES_LEFT, value: t("line: stress") },
  ...LINE_NAMES.map((name, index) => ({ row: TOP - 1, col: LINES_LEFT + 1 + index, value: t(name) })),
  ...LINE_STRESSES.flatMap((stress, down): CellContent[] => {
    const kPa = String(stress);
    const row = TOP + down;
    return [
      { row, col: LINES_LEFT, value: convert(stress, "stress", "kPa", units.stress) },
      { row, col: LINES_LEFT + 1, formula: `=${intrinsicLineAt(kPa)}` },
      { row, col: LINES_LEFT + 2, formula: `=${sedimentationLineAt(kPa)}` },
    ];
  }),
];

const lineSeries = (t: InLanguage): ChartSeries[] =>
  LINE_NAMES.map((name, index): ChartSeries => {
    const box = (col: number): Box => ({ row: TOP, col, rows: LINE_STRESSES.length, cols: 1 });
    const ends = { x: { box: box(LINES_LEFT) }, y: { box: box(LINES_LEFT + 1 + index) } };
    return { name: t(name), ...ends, style: "dashed", lettered: true };
  });

const CURVES_LEFT = LINES_LEFT + LINE_NAMES.length + 2;
const columnOf = (index: number, column: CurveColumn): number =>
  CURVES_LEFT + index * (CURVE_COLUMNS.length + 1) + CURVE_COLUMNS.indexOf(column);

/** The rows of the table of loads that have a stress. */
const rowsOf = ({ record }: Curve): number[] =>
  record.loads.flatMap(({ row, stress }) => (stress === undefined ? [] : [row]));

function curveCells(curve: Curve, index: number, units: SummaryUnits, t: InLanguage): CellContent[] {
  const refer = (name: string): string => referenceTo(name, curve.sheet);
  const cells = rowsOf(curve).flatMap((row, down): CellContent[] => {
    const of = (name: string): string => `INDEX(${refer(name)},${row})`;
    const ifBoth = (name: string, value: string): string =>
      `=IF(AND(ISNUMBER(${of("load_stress")}),ISNUMBER(${of(name)})),${value},NA())`;
    const formulas: Record<CurveColumn, string> = {
      stress: `=IF(ISNUMBER(${of("load_stress")}),CLAY.CONVERT_UNIT(${of("load_stress")},${refer("stress_unit")},"${units.stress}"),1)`,
      e: ifBoth("void_ratio_end", of("void_ratio_end")),
      strain: ifBoth("strain_end", of("strain_end")),
      Iv: curve.hasVoidIndex
        ? `=IF(AND(ISNUMBER(${of("load_stress")}),ISNUMBER(${of("void_ratio_end")}),ISNUMBER(${refer("intrinsic_index")})),(${of("void_ratio_end")}-${refer("intrinsic_void_ratio")})/${refer("intrinsic_index")},NA())`
        : "=NA()",
      "e/e0": ifBoth("void_ratio_end", `${of("void_ratio_end")}/${refer("void_ratio_initial")}`),
      cv: ifBoth("cv_chosen", `CLAY.CONVERT_UNIT(${of("cv_chosen")},${refer("cv_unit")},"${units.cv}")`),
    };
    return CURVE_COLUMNS.map((column) => ({
      row: TOP + down,
      col: columnOf(index, column),
      formula: formulas[column],
    }));
  });
  return [
    { row: TOP - 2, col: columnOf(index, "stress"), value: curve.called },
    ...CURVE_COLUMNS.map((column) => ({ row: TOP - 1, col: columnOf(index, column), value: t(column) })),
    ...cells,
  ];
}

const decades = (values: readonly number[]): [number, number] => {
  const logs = values.filter((value) => value > 0).map(Math.log10);
  const [low, high] = [Math.floor(Math.min(...logs)), Math.ceil(Math.max(...logs))];
  return [10 ** low, 10 ** Math.max(high, low + 1)];
};

const span = (values: readonly number[], least?: number): [number, number] => {
  const [low, high] = [least ?? Math.min(...values), Math.max(...values)];
  return roundedDomain([low, high > low ? high : low + 1]);
};

const axis = (
  label: string,
  scale: ChartAxis["scale"],
  domain: readonly [number, number],
  reversed = false,
): ChartAxis => ({ ...{ label, scale, domain, reversed } });

type Undrawn = Omit<ChartPlan, "box">;

const ratiosOf = ({ loads, results }: TestRecord): number[] =>
  loads.flatMap((load) => {
    const [e, e0] = [load.results.void_ratio_end, results.void_ratio_initial];
    return e === undefined || !e0 ? [] : [e / e0];
  });

const voidIndicesOf = ({ loads, results }: TestRecord): number[] =>
  loads.flatMap((load) => {
    const [e, e100, Cc] = [load.results.void_ratio_end, results.intrinsic_void_ratio, results.intrinsic_index];
    return e === undefined || e100 === undefined || !Cc ? [] : [(e - e100) / Cc];
  });

/** What a chart draws of each sheet over its stresses: a column, the axis for its values, and the values now. */
interface Drawn {
  readonly title: string;
  readonly column: CurveColumn;
  readonly axisOf: (values: readonly number[]) => ChartAxis;
  readonly valuesOf: (record: TestRecord) => readonly number[];
  /** The lines of the plane that are drawn with the curves. */
  readonly lines?: readonly ChartSeries[];
}

const drawnOverStress = (units: SummaryUnits, t: InLanguage): readonly Drawn[] => [
  {
    title: t("Compression curves"),
    column: "e",
    axisOf: (values) => axis(t("Void ratio e"), "linear", span(values)),
    valuesOf: ({ loads }) => loads.flatMap(({ results }) => results.void_ratio_end ?? []),
  },
  {
    title: t("Compression curves in strain"),
    column: "strain",
    axisOf: (values) => axis(t("Strain"), "linear", span(values), true),
    valuesOf: ({ loads }) => loads.flatMap(({ results }) => results.strain_end ?? []),
  },
  {
    title: t("Compression curves in e/e0"),
    column: "e/e0",
    axisOf: (values) => axis("e / e0", "linear", span(values)),
    valuesOf: ratiosOf,
  },
  {
    title: t("Compression curves in void index"),
    column: "Iv",
    axisOf: (values) => axis(t("Void index"), "linear", span(values)),
    valuesOf: voidIndicesOf,
    lines: lineSeries(t),
  },
  {
    title: t("cv against stress"),
    column: "cv",
    axisOf: (values) => axis(`cv, ${t(units.cv)}`, "log", decades(values)),
    valuesOf: ({ loads }) =>
      loads.flatMap(({ results }) =>
        results.cv_chosen === undefined ? [] : [inUnits(results.cv_chosen, "cv", units)],
      ),
  },
];

/** A chart with one line for each sheet over its stresses; nothing if no sheet has a value. */
function curvesOver(drawn: Drawn, curves: readonly Curve[], units: SummaryUnits, t: InLanguage): Undrawn[] {
  const { title, column, axisOf, valuesOf, lines = [] } = drawn;
  const values = curves.flatMap(({ record }) => valuesOf(record)).filter(Number.isFinite);
  const stresses = curves.flatMap(({ record }) =>
    record.loads.flatMap(({ stress }) => (stress === undefined ? [] : [inUnits(stress, "stress", units)])),
  );
  if (values.length === 0 || stresses.length === 0) return [];
  const series = curves.flatMap((curve, index): ChartSeries[] => {
    const rows = rowsOf(curve).length;
    const box = (of: CurveColumn): Box => ({ row: TOP, col: columnOf(index, of), rows, cols: 1 });
    if (rows === 0) return [];
    return [
      {
        name: curve.called,
        x: { box: box("stress") },
        y: { box: box(column) },
        style: "line",
        ...(curves.length <= MOST_LETTERED && { lettered: true }),
      },
    ];
  });
  const x = axis(`${t("Stress")}, ${units.stress}`, "log", decades(stresses));
  return [{ title, x, y: axisOf(values), series: [...series, ...lines] }];
}

const POINT_LOOKS: Record<(typeof POINTS)[number]["name"], Pick<ChartSeries, "symbol" | "shape">> = {
  "in-situ stress": { symbol: "open" },
  "preconsolidation stress": { symbol: "filled" },
  "not less than": { symbol: "cross" },
  "not more than": { symbol: "cross" },
  "Cc by w0": { symbol: "filled" },
  "Cc by liquid limit": { symbol: "filled" },
};

function pointSeries(rows: number, index: number, t: InLanguage): ChartSeries[] {
  const point = POINTS[index];
  if (!point) return [];
  const box = (col: number): Box => ({ row: TOP, col, rows, cols: 1 });
  const col = LEFT + 2 * index;
  return [
    {
      name: t(point.name),
      x: { box: box(col) },
      y: { box: box(col + 1) },
      style: "points",
      ...POINT_LOOKS[point.name],
    },
  ];
}

/** The present values of the rows of the summary, which give the ends of the axes. */
export type Shown = (name: string) => readonly number[];

/** The axis and the title of the charts of Cc, by their points. */
const CC_OVER = {
  4: { label: "w0", title: "Cc against initial water content" },
  5: { label: "Liquid limit", title: "Cc against liquid limit" },
} as const;

/** Cc against a column of the summary; nothing if no row has both. */
function ccChart(index: 4 | 5, rows: number, shown: Shown, t: InLanguage): Undrawn[] {
  const { x, y } = POINTS[index];
  const { label, title } = CC_OVER[index];
  const [across, up] = [shown(x), shown(y)];
  if (across.length === 0 || up.length === 0) return [];
  return [
    {
      title: t(title),
      x: axis(t(label), "linear", span(across, 0)),
      y: axis("Cc", "linear", span(up, 0)),
      series: pointSeries(rows, index, t),
    },
  ];
}

function pointCharts(rows: number, shown: Shown, units: SummaryUnits, t: InLanguage): Undrawn[] {
  const stresses = POINTS.slice(0, 4).flatMap(({ x }) => shown(x));
  const depths = shown("summary_depth");
  return [
    ...(stresses.length > 0 && depths.length > 0
      ? [
          {
            title: t("Stresses against depth: open in situ, filled preconsolidation, crosses its range"),
            x: axis(`${t("Stress")}, ${units.stress}`, "linear", span(stresses, 0)),
            y: axis(`${t("Depth")}, ${units.depth}`, "linear", span(depths, 0), true),
            series: [0, 1, 2, 3].flatMap((index) => pointSeries(rows, index, t)),
          },
        ]
      : []),
    ...ccChart(4, rows, shown, t),
    ...ccChart(5, rows, shown, t),
  ];
}

/** The charts in a grid below the note of the sheet, in their order. */
const inGrid = (undrawn: readonly Undrawn[]): ChartPlan[] =>
  undrawn.map((chart, index) => ({
    ...chart,
    box: { row: 1 + Math.floor(index / ACROSS) * CHART.rows, col: (index % ACROSS) * CHART.cols, ...CHART },
  }));

const FOLLOWS =
  "Every number here is a formula: it follows the summary and the data sheets. Insert the charts once more when a sheet was added.";

/** Plans the sheet of charts, in the language of the summary, and the contents of its cells. A chart is left out if no sheet has values for it. */
export function chartsSheet(
  summary: DrawnSummary,
  curves: readonly Curve[],
  shown: Shown,
  units: SummaryUnits,
  language: SheetLanguage = "en",
): ChartsSheet {
  const words = wordsOf(language);
  const t: InLanguage = (text) => wordIn(words.language, besideIn(words, text));
  const undrawn = [
    ...pointCharts(summary.rows.length, shown, units, t),
    ...drawnOverStress(units, t).flatMap((drawn) => curvesOver(drawn, curves, units, t)),
  ];
  const cells = [
    ...pointCells(summary, t),
    ...lineCells(units, t),
    ...curves.flatMap((curve, index) => curveCells(curve, index, units, t)),
  ];
  const last = Math.max(...cells.map(({ row }) => row), Math.ceil(undrawn.length / ACROSS) * CHART.rows + 1);
  return {
    cells,
    plan: {
      name: t("Summary charts"),
      rows: last + 1,
      cols: Math.max(...cells.map(({ col }) => col)) + 1,
      cells: [{ row: 0, col: LEFT, kind: "note", value: t(FOLLOWS) }],
      names: {},
      columnWidths: {},
      merges: [],
      freezeRows: 0,
      charts: inGrid(undrawn),
      hostWords: words.host,
    },
  };
}
