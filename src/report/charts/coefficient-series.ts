/** The columns of cv and C alpha against stress. */
import { cAlphaPlot, cvPlot } from "../../plots/coefficients";
import type { PlotSpec } from "../../plots/spec";
import { SAME_LOAD } from "../../reduction/curve/loads";
import type { TimeMethod } from "../../reduction/increment/constructions/picks";
import { firstOf } from "../../reduction/numeric/lists";
import { given, type Outcome } from "../../reduction/outcome";
import { unitNamed, unitsOf } from "../../reduction/units";
import type { BlockColumn, BlockSeries, SeriesBlock, Where } from "./series-block";
import { markAt } from "./series-lines";
import { frameOf, Sheet, titled, type DrawnColumns, type Source } from "./sheet-cells";

interface CoefficientSource {
  readonly stresses: Source;
  /** Name, symbol shape and cells of each set of values. */
  readonly sets: readonly { readonly name: string; readonly shape: "circle" | "triangle"; readonly values: Source }[];
  /** The values that are joined by a line. */
  readonly joined?: { readonly name: string; readonly values: Source };
  /** The cell of the stress before the first load. */
  readonly before?: string;
  readonly yieldStress?: string;
  /** The stress at which the value of a load is drawn: the mean or the end of the load. */
  readonly at: "mean" | "end";
}

type CellOfRow = (index: number, where: Where) => string;
const each = (rows: number, cell: CellOfRow) => (where: Where) =>
  Array.from({ length: rows }, (_, index) => cell(index, where));

const above = (stress: string, other: string): string => `${stress}>${other}*${1 + SAME_LOAD}`;
const orZero = (cell: string): string => `IF(ISNUMBER(${cell}),${cell},0)`;

/**
 * The columns of each load: the stress before it, the greatest stress before it, the stress at which its values are
 * drawn (`left` for a load that is not drawn), and its kind.
 */
function loadColumns({ stresses, before, yieldStress, at }: CoefficientSource, left: number): BlockColumn[] {
  const { rows } = stresses;
  const start = before ? orZero(before) : "0";
  return [
    {
      name: "from",
      heading: "Stress before",
      rows,
      cells: each(rows, (i, where) =>
        i === 0
          ? `=${start}`
          : `=IF(ISNUMBER(${stresses.cell(i - 1)}),${stresses.cell(i - 1)},${where.cell("from", i - 1)})`,
      ),
    },
    {
      name: "greatest",
      heading: "Greatest before",
      rows,
      cells: each(rows, (i, where) =>
        i === 0 ? `=${start}` : `=MAX(${where.cell("greatest", i - 1)},${orZero(stresses.cell(i - 1))})`,
      ),
    },
    {
      name: "x",
      heading: at === "mean" ? "Mean stress" : "Stress",
      rows,
      cells: each(rows, (i, where) => {
        const here = stresses.cell(i);
        const value = at === "mean" ? `(${where.cell("from", i)}+${here})/2` : here;
        return `=IF(ISNUMBER(${here}),IF(${above(here, where.cell("from", i))},${value},${left}),${left})`;
      }),
    },
    {
      name: "virgin",
      heading: "1 virgin, 0 not, -1 unloading or wetting",
      rows,
      cells: each(rows, (i, where) => {
        const [here, from] = [stresses.cell(i), where.cell("from", i)];
        const beyond = yieldStress ? `IF(ISNUMBER(${yieldStress}),IF(${above(yieldStress, from)},0,1),1)` : "1";
        return (
          `=IF(ISNUMBER(${here}),IF(${above(here, from)},` +
          `IF(${above(where.cell("greatest", i), from)},0,${beyond}),-1),-1)`
        );
      }),
    },
  ];
}

interface Drawn {
  readonly column: BlockColumn;
  readonly series: BlockSeries;
}

/** The values that are joined by a line, and each set of values in two series of symbols: virgin loads and others. */
function valueColumns({ stresses: { rows }, sets, joined, yieldStress }: CoefficientSource): Drawn[] {
  const column = (name: string, heading: string, values: Source, kind: string): BlockColumn => ({
    name,
    heading,
    rows,
    cells: each(rows, (i, where) => {
      const cell = values.cell(i);
      return `=IF(ISNUMBER(${cell}),IF((${cell}>0)*(${where.cell("virgin", i)}${kind}),${cell},NA()),NA())`;
    }),
  });
  const kinds = yieldStress ? (["virgin", "not virgin"] as const) : (["first loading", "reloading"] as const);
  const line: Drawn[] = joined
    ? [
        {
          column: column("joined", joined.name, joined.values, ">=0"),
          series: { name: joined.name, style: "thin", x: "x", y: "joined" },
        },
      ]
    : [];
  const symbols = sets.flatMap(({ name: set, shape, values }) =>
    kinds.map((kind, index): Drawn => {
      const name = `${set}, ${kind}`;
      return {
        column: column(name, name, values, index === 0 ? "=1" : "=0"),
        series: { name, style: "points", symbol: index === 0 ? "filled" : "open", shape, x: "x", y: name },
      };
    }),
  );
  return [...line, ...symbols];
}

/**
 * The columns of coefficients against stress. `loadSteps` distinguishes virgin loads from others; unloading and wetting
 * are left out.
 */
export function coefficientBlock(source: CoefficientSource, spec: PlotSpec): DrawnColumns {
  const frame = frameOf(spec);
  const { yieldStress } = source;
  const mark = yieldStress ? markAt("σ′p", "Preconsolidation stress", yieldStress, frame) : undefined;
  const drawn = valueColumns(source);
  return {
    ...frame,
    columns: [
      ...loadColumns(source, frame.x.domain[0]),
      ...(mark?.columns ?? []),
      ...drawn.map(({ column }) => column),
    ],
    series: [...(mark ? [mark.series] : []), ...drawn.map(({ series }) => series)],
  };
}

const CV_NAMES = { "log time": "cv_log_time", "root time": "cv_root_time" } as const;

export function cvOf(sheet: Sheet, by: "chosen" | TimeMethod | "both"): Outcome<SeriesBlock> {
  const names = by === "both" ? Object.values(CV_NAMES) : [by === "chosen" ? "cv_chosen" : CV_NAMES[by]];
  const lacking = sheet.lacks("load_stress", ...names);
  if (lacking) return lacking;
  const numbers = names.map((name) => sheet.numbers(name));
  const first = firstOf(numbers);
  const blank = first.map(() => null);
  const spec = cvPlot(
    sheet.numbers("load_stress"),
    by === "root time" ? blank : first,
    by === "root time" ? first : (numbers[1] ?? blank),
    {
      stressUnit: sheet.word("stress_unit") || undefined,
      cvUnit: unitNamed(sheet.word("cv_unit"), unitsOf("cv")),
      inWords: sheet.words,
      before: sheet.number("seating_stress"),
      yieldStress: sheet.number("preconsolidation_stress"),
    },
  );
  if (!spec.ok) return spec;
  const chosen = sheet.source("cv_chosen");
  return given(
    {
      title: titled(sheet, spec.value.title),
      ...coefficientBlock(
        {
          stresses: sheet.source("load_stress")!,
          sets: names.map((name, index) => ({
            name: name === "cv_chosen" ? "cv" : name === "cv_root_time" ? "root time" : "log time",
            shape: by === "root time" || index === 1 ? "triangle" : "circle",
            values: sheet.source(name)!,
          })),
          joined: chosen && (by === "both" || by === "chosen") ? { name: "cv reported", values: chosen } : undefined,
          before: sheet.address("seating_stress"),
          yieldStress: sheet.address("preconsolidation_stress"),
          at: "mean",
        },
        spec.value,
      ),
    },
    spec.remarks,
  );
}

export function cAlphaOf(sheet: Sheet, stressScale?: "linear" | "log"): Outcome<SeriesBlock> {
  const lacking = sheet.lacks("load_stress", "c_alpha");
  if (lacking) return lacking;
  const spec = cAlphaPlot(sheet.numbers("load_stress"), sheet.numbers("c_alpha"), {
    stressScale,
    inWords: sheet.words,
    stressUnit: sheet.word("stress_unit") || undefined,
    before: sheet.number("seating_stress"),
    yieldStress: sheet.number("preconsolidation_stress"),
  });
  if (!spec.ok) return spec;
  const values = sheet.source("c_alpha")!;
  return given(
    {
      title: titled(sheet, spec.value.title),
      ...coefficientBlock(
        {
          stresses: sheet.source("load_stress")!,
          sets: [{ name: "C alpha", shape: "circle", values }],
          joined: { name: "C alpha of the test", values },
          before: sheet.address("seating_stress"),
          yieldStress: sheet.address("preconsolidation_stress"),
          at: "end",
        },
        spec.value,
      ),
    },
    spec.remarks,
  );
}
