/** The columns of a compression curve and the construction of a method. */
import { compressionPlot } from "../../plots/compression";
import { METHOD_PLOTS } from "../../plots/methods";
import type { PlotSpec } from "../../plots/spec";
import type { InWords } from "../../plots/words";
import type { MethodName } from "../../reduction/curve/method-words";
import { given, type Outcome } from "../../reduction/outcome";
import { isWord } from "../../specification/list-words";
import { rulesOf } from "../../specification/versions";
import type { BlockColumn, BlockSeries, SeriesBlock, Where } from "./series-block";
import { callOf, constructionColumns, markAt } from "./series-lines";
import { Sheet, curvePicksOf, frameOf, titled, type DrawnColumns, type Source } from "./sheet-cells";

interface CurveSource {
  readonly stresses: Source;
  /** Each value as an expression that gives a number, or a text if there is no value. */
  readonly value: (index: number) => string;
  /** The values as one range, if their cells are neighbours. */
  readonly values?: string;
  readonly kind: "e" | "strain";
  readonly method?: MethodName;
  /** The picks by hand of the curve, as an expression. */
  readonly picks?: string;
  /** The cell of the in-situ stress. */
  readonly inSitu?: string;
  /** The value before the first load, as a cell or a number. */
  readonly initial?: string;
}

/** The columns of the test: its values, stresses, and its points on loading and on unloading. */
function columnsOfTest({ stresses, value, kind }: CurveSource, left: number): BlockColumn[] {
  const { rows } = stresses;
  const each = (cell: (index: number, where: Where) => string) => (where: Where) =>
    Array.from({ length: rows }, (_, index) => cell(index, where));
  const isThere = (index: number, where: Where) =>
    `AND(ISNUMBER(${stresses.cell(index)}),ISNUMBER(${where.cell("value", index)}))`;
  const isLess = (index: number) =>
    index === 0
      ? "FALSE"
      : `AND(ISNUMBER(${stresses.cell(index - 1)}),${stresses.cell(index)}<${stresses.cell(index - 1)})`;
  const along =
    (unloads: boolean) =>
    (index: number, where: Where): string =>
      `=IF(${isThere(index, where)},IF(${isLess(index)},${
        unloads ? where.cell("value", index) : "NA()"
      },${unloads ? "NA()" : where.cell("value", index)}),NA())`;
  return [
    {
      name: "value",
      heading: kind === "e" ? "Void ratio" : "Strain",
      rows,
      cells: each((index) => `=IF(ISNUMBER(${value(index)}),${value(index)},"")`),
    },
    {
      name: "x",
      heading: "Stress",
      rows,
      cells: each((index, where) => `=IF(${isThere(index, where)},${stresses.cell(index)},${left})`),
    },
    {
      name: "test",
      heading: "Test",
      rows,
      cells: each((index, where) => `=IF(${isThere(index, where)},${where.cell("value", index)},NA())`),
    },
    { name: "loading", heading: "Loading", rows, cells: each(along(false)) },
    { name: "unloading", heading: "Unloading", rows, cells: each(along(true)) },
  ];
}

const TEST: readonly BlockSeries[] = [
  { name: "test", style: "thin", x: "x", y: "test" },
  { name: "loading", style: "points", symbol: "filled", x: "x", y: "loading" },
  { name: "unloading", style: "points", symbol: "open", x: "x", y: "unloading" },
];

/** The columns of a compression curve and the construction of a method, in the plane of the method. */
export function curveBlock(source: CurveSource, spec: PlotSpec, words: InWords): DrawnColumns {
  const { stresses, values, kind, method, picks, inSitu, initial } = source;
  const frame = frameOf(spec);
  const call = (where: Where, language?: string) =>
    callOf(
      "PRECONSOLIDATION_LINES",
      [stresses.whole, values ?? where.column("value"), `"${method}"`, `"${kind}"`],
      [picks, initial, language],
      "",
    );
  const isOwnPlane = method !== undefined && METHOD_PLOTS[method].quantity !== undefined;
  // If the method reads nothing now, its own plane has no axes: only the test is drawn.
  const isDrawn = method !== undefined && !(isOwnPlane && spec.refusal !== undefined);
  const drawn = isDrawn ? constructionColumns(method, call, frame, words) : { columns: [], series: [] };
  const marks = inSitu ? [markAt("σ′v0", "In-situ stress", inSitu, frame)] : [];
  return {
    ...frame,
    columns: [...columnsOfTest(source, frame.x.domain[0]), ...drawn.columns, ...marks.flatMap((mark) => mark.columns)],
    series: [...marks.map((mark) => mark.series), ...drawn.series, ...(isOwnPlane && isDrawn ? [] : TEST)],
  };
}

export function compressionOf(sheet: Sheet, kind: "e" | "strain", method?: MethodName): Outcome<SeriesBlock> {
  const needed = kind === "e" ? ["load_stress", "void_ratio_curve"] : ["load_stress", "strain_end"];
  const lacking = sheet.lacks(...needed);
  if (lacking) return lacking;
  const stresses = sheet.source("load_stress")!;
  const [end, primary, point] = ["strain_end", "strain_d100", "curve_point"].map((name) => sheet.source(name));
  // The strain at the point from which the void ratio of the curve is calculated.
  const strain = (i: number): string =>
    primary && point ? `IF(${isWord(point.cell(i), "d100")},${primary.cell(i)},${end!.cell(i)})` : end!.cell(i);
  const curve = sheet.source("void_ratio_curve");
  const [ends, primaries] = [sheet.numbers("strain_end"), sheet.numbers("strain_d100")];
  const values =
    kind === "e"
      ? sheet.numbers("void_ratio_curve")
      : ends.map((value, row) =>
          primary && sheet.word("curve_point", row) === "d100" ? (primaries[row] ?? null) : value,
        );
  const stress = sheet.number("in_situ_stress");
  // As in the spread of methods on the sheet.
  const seesInitial = rulesOf({ version: sheet.number("template_version") }).startsAtInitialVoidRatio && kind === "e";
  const picks = curvePicksOf(sheet);
  const spec = compressionPlot(sheet.numbers("load_stress"), values, kind, {
    stressUnit: sheet.word("stress_unit") || undefined,
    inWords: sheet.words,
    method,
    picks: picks.picks,
    initial: seesInitial ? sheet.number("void_ratio_initial") : undefined,
    // So that the frame includes this stress; the line of the chart follows the cell.
    marks: stress ? [{ label: "in-situ stress", letters: "σ′v0", stress }] : [],
  });
  if (!spec.ok) return spec;
  return given(
    {
      title: titled(sheet, spec.value.title),
      ...curveBlock(
        {
          stresses,
          value: kind === "e" ? (i) => curve!.cell(i) : strain,
          values: kind === "e" ? curve!.whole : undefined,
          kind,
          method,
          picks: picks.formula,
          inSitu: sheet.address("in_situ_stress"),
          initial: seesInitial ? sheet.address("void_ratio_initial") : undefined,
        },
        spec.value,
        sheet.words,
      ),
    },
    spec.remarks,
  );
}
