/**
 * The numbers of a plot as live formulas on the cells of a data sheet, or on two columns of any sheet, with a chart of
 * them: if a reading changes, the chart changes. Formulas name cells by sheet and address, which both hosts understand.
 *
 * The ends of the axes are fixed when the series are made, as in the pane's plot of the same numbers: whole decades of
 * time and stress, round numbers elsewhere. If the host fitted an axis, it would begin at zero or end at odd numbers,
 * and the lines of a construction could not reach it. Later readings within the ends appear by themselves; for readings
 * beyond them the chart must be inserted again.
 */
import { cellNamed, nameOf, readRecord, type NamedValues } from "../../record/record";
import { MOST_LOADS, readingsName, timesName } from "../../specification/readings";
import { ADOPTABLE, type AdoptableName } from "../../specification/adoptable";
import { picksOfCurve } from "../../record/picks";
import { rulesOf } from "../../specification/versions";
import { cAlphaPlot, cvPlot } from "../../plots/coefficients";
import type { TimeMethod } from "../../reduction/increment/constructions/picks";
import { SAME_LOAD } from "../../reduction/curve/loads";
import { FIELD_FACTOR } from "../../reduction/curve/field-curve";
import { fieldCurvePlot } from "../../plots/field";
import { fieldBlock } from "./field";
import { intrinsicPlot } from "../../plots/intrinsic";
import { intrinsicBlock } from "./intrinsic";
import { compressionPlot } from "../../plots/compression";
import { swellPlot } from "../../plots/swell";
import { logTimePlot, rootTimePlot, type Cells } from "../../plots/time";
import { labelIn, type InWords } from "../../plots/words";
import type { PlotAxis, PlotSpec } from "../../plots/spec";
import { METHOD_PLOTS } from "../../plots/methods";
import type { MethodName } from "../../reduction/curve/method-words";
import { OF_CURVE, type CurvePicks } from "../../reduction/curve/picks";
import { english, listed, say, verbatim } from "../../reduction/message";
import { firstOf } from "../../reduction/numeric/lists";
import { badInput, given, notApplicable, then, type Outcome } from "../../reduction/outcome";
import { roundedDomain } from "../../workbook/chart-axis";
import { asColumn, lengthOf, liesAcross, partOfList } from "../../workbook/lists";
import type { Box, CellValue, ChartAxis, SheetName } from "../../workbook/port";
import { constructionColumns, type Frame } from "./series-lines";
import { addressOn, type BlockColumn, type BlockSeries, type SeriesBlock, type Where } from "./series-block";

export type { SeriesBlock } from "./series-block";
export { chartsSheet, seriesSheet } from "./series-sheet";

/**
 * A data sheet of the workbook: its names as `listNames` gives them, and its values as `readNames` gives them, in the
 * units of the sheet.
 */
export interface DataSheet {
  readonly sheet: string;
  readonly names: readonly SheetName[];
  readonly values: NamedValues;
  /** The language of titles, axes and names of series; English if omitted. */
  readonly inWords?: InWords;
}

export type DataPlot =
  | { readonly plot: "compression"; readonly value: "e" | "strain"; readonly method?: MethodName }
  | { readonly plot: "log time" | "root time"; readonly load: number }
  | { readonly plot: "cv"; readonly by: "chosen" | TimeMethod | "both" }
  | { readonly plot: "field" }
  | { readonly plot: "swell" }
  | { readonly plot: "intrinsic" }
  | { readonly plot: "c alpha" };

/** Two columns of a sheet, of equal length, with their numbers; a blank is null. */
export interface RangePlot {
  readonly plot: "log time" | "root time" | "compression e" | "compression strain" | "cv" | "c alpha";
  readonly sheet: string;
  readonly x: Box;
  readonly y: Box;
  readonly xs: Cells;
  readonly ys: Cells;
  readonly method?: MethodName;
  /** Replaces the title of the plot. */
  readonly title?: string;
  readonly xLabel?: string;
  readonly yLabel?: string;
}

/** A column of cells: the address of the whole column and of each cell. */
interface Source {
  readonly whole: string;
  readonly cell: (index: number) => string;
  readonly rows: number;
}

const sourceOf = (sheet: string, box: Box, rows = lengthOf(box)): Source => ({
  whole: addressOn(sheet, partOfList(box, 0, rows)),
  cell: (index) => addressOn(sheet, partOfList(box, index, 1)),
  rows,
});

const axisOf = ({ label, scale, domain, reversed }: PlotAxis): ChartAxis =>
  scale === "log"
    ? { label, scale, domain, reversed }
    : { label, scale: "linear", domain: roundedDomain(domain), reversed };

const frameOf = ({ x, y }: PlotSpec): Frame => ({ x: axisOf(x), y: axisOf(y) });

const lastOf = (cells: Cells): number => cells.reduce<number>((last, cell, row) => (cell === null ? last : row + 1), 0);

/** A chart covers this many rows beyond those with readings: room for a test that is still running. */
const ROOM = 24;

interface TimeSource {
  readonly times: Source;
  readonly readings: Source;
  /** The number of readings that the chart shows now; the columns have more rows. */
  readonly shown: number;
  readonly picks?: string;
  /** A formula for the procedure of the construction; "aided" if the sheet has no cells for it. */
  readonly procedure?: string;
}

/** The columns of a time curve and its construction. */
function timeBlock(
  plot: "log time" | "root time",
  { times, readings, shown, picks, procedure }: TimeSource,
  sheet: string,
  boxes: readonly [Box, Box],
  spec: PlotSpec,
): Pick<SeriesBlock, "x" | "y" | "columns" | "series"> {
  const frame = frameOf(spec);
  // The block has its cells in columns, whichever way the readings lie.
  const [t, r] = boxes.map((box) => {
    const { whole } = sourceOf(sheet, box, shown);
    return liesAcross(box) ? `TRANSPOSE(${whole})` : whole;
  });
  const root = plot === "root time";
  // Wrong readings are shown too: the reader judges what the method left out. Zero is a time in the first row only.
  const isRead = `ISNUMBER(${t})*ISNUMBER(${r})*${root ? `((${t}>0)*(${r}<>0)+(${t}=0))` : `(${t}>0)*(${r}<>0)`}`;
  const columns: BlockColumn[] = [
    {
      name: "x",
      heading: root ? "Root of time" : "Time",
      rows: shown,
      cells: () => [`=IF(${isRead},${root ? `SQRT(ABS(${t}))` : t},${frame.x.domain[0]})`],
    },
    { name: "y", heading: "Reading", rows: shown, cells: () => [`=IF(${isRead},${r},NA())`] },
  ];
  const name = root ? "ROOT_TIME_LINES" : "LOG_TIME_LINES";
  const more = procedure ? `,${picks ?? '""'},${procedure}` : picks ? `,${picks}` : "";
  const call = () => `CLAY.${name}(${times.whole},${readings.whole}${more})`;
  const drawn = constructionColumns(plot, call, frame);
  return {
    ...frame,
    columns: [...columns, ...drawn.columns],
    series: [...drawn.series, { name: "readings", style: "points", symbol: "filled", x: "x", y: "y" }],
  };
}

/** A dashed vertical line at the stress in a cell; nothing while the cell is blank. */
function upright(letters: string, heading: string, cell: string, { x, y }: Frame) {
  const [across, up] = [`${letters} x`, `${letters} y`];
  const columns: BlockColumn[] = [
    { name: across, heading, rows: 2, cells: () => Array(2).fill(`=IF(ISNUMBER(${cell}),${cell},${x.domain[0]})`) },
    { name: up, heading: "y", rows: 2, cells: () => y.domain.map((end) => `=IF(ISNUMBER(${cell}),${end},NA())`) },
  ];
  const series: BlockSeries = { name: letters, style: "dashed", lettered: true, x: across, y: up };
  return { columns, series };
}

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

/** The columns of a compression curve and the construction of a method, in the plane of the method. */
function curveBlock(
  { stresses, value, values, kind, method, picks = "", inSitu, initial }: CurveSource,
  spec: PlotSpec,
): Pick<SeriesBlock, "x" | "y" | "columns" | "series"> {
  const frame = frameOf(spec);
  const each = (cell: (index: number, where: Where) => string) => (where: Where) =>
    Array.from({ length: stresses.rows }, (_, index) => cell(index, where));
  const rows = stresses.rows;
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
  const columns: BlockColumn[] = [
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
      cells: each((index, where) => `=IF(${isThere(index, where)},${stresses.cell(index)},${frame.x.domain[0]})`),
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
  const call = (where: Where) =>
    `CLAY.PRECONSOLIDATION_LINES(${stresses.whole},${values ?? where.column("value")},"${method}","${kind}"${picks || initial ? `,${picks}` : ""}${initial ? `,${initial}` : ""})`;
  const isOwnPlane = method !== undefined && METHOD_PLOTS[method].quantity !== undefined;
  // If the method reads nothing now, its own plane has no axes: only the test is drawn.
  const isDrawn = method !== undefined && !(isOwnPlane && spec.refusal !== undefined);
  const drawn = isDrawn ? constructionColumns(method, call, frame) : { columns: [], series: [] };
  const test: BlockSeries[] = [
    { name: "test", style: "thin", x: "x", y: "test" },
    { name: "loading", style: "points", symbol: "filled", x: "x", y: "loading" },
    { name: "unloading", style: "points", symbol: "open", x: "x", y: "unloading" },
  ];
  const marks = inSitu ? [upright("σ′v0", "In-situ stress", inSitu, frame)] : [];
  return {
    ...frame,
    columns: [...columns, ...drawn.columns, ...marks.flatMap((mark) => mark.columns)],
    series: [...marks.map((mark) => mark.series), ...drawn.series, ...(isOwnPlane && isDrawn ? [] : test)],
  };
}

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

/**
 * The columns of coefficients against stress. `loadSteps` distinguishes virgin loads from others; unloading and wetting
 * are left out.
 */
function coefficientBlock(
  { stresses, sets, joined, before, yieldStress, at }: CoefficientSource,
  spec: PlotSpec,
): Pick<SeriesBlock, "x" | "y" | "columns" | "series"> {
  const frame = frameOf(spec);
  const { rows } = stresses;
  const each = (cell: (index: number, where: Where) => string) => (where: Where) =>
    Array.from({ length: rows }, (_, index) => cell(index, where));
  const above = (stress: string, other: string): string => `${stress}>${other}*${1 + SAME_LOAD}`;
  const orZero = (cell: string): string => `IF(ISNUMBER(${cell}),${cell},0)`;
  const start = before ? orZero(before) : "0";
  const helpers: BlockColumn[] = [
    {
      name: "from",
      heading: "Stress before",
      rows,
      cells: each((i, where) =>
        i === 0
          ? `=${start}`
          : `=IF(ISNUMBER(${stresses.cell(i - 1)}),${stresses.cell(i - 1)},${where.cell("from", i - 1)})`,
      ),
    },
    {
      name: "greatest",
      heading: "Greatest before",
      rows,
      cells: each((i, where) =>
        i === 0 ? `=${start}` : `=MAX(${where.cell("greatest", i - 1)},${orZero(stresses.cell(i - 1))})`,
      ),
    },
    {
      name: "x",
      heading: at === "mean" ? "Mean stress" : "Stress",
      rows,
      cells: each((i, where) => {
        const here = stresses.cell(i);
        const value = at === "mean" ? `(${where.cell("from", i)}+${here})/2` : here;
        return `=IF(ISNUMBER(${here}),IF(${above(here, where.cell("from", i))},${value},${frame.x.domain[0]}),${frame.x.domain[0]})`;
      }),
    },
    {
      name: "virgin",
      heading: "1 virgin, 0 not, -1 unloading or wetting",
      rows,
      cells: each((i, where) => {
        const [here, from] = [stresses.cell(i), where.cell("from", i)];
        const beyond = yieldStress ? `IF(ISNUMBER(${yieldStress}),IF(${above(yieldStress, from)},0,1),1)` : "1";
        return (
          `=IF(ISNUMBER(${here}),IF(${above(here, from)},` +
          `IF(${above(where.cell("greatest", i), from)},0,${beyond}),-1),-1)`
        );
      }),
    },
  ];
  const columns = [...helpers];
  const series: BlockSeries[] = [];
  if (yieldStress) {
    const mark = upright("σ′p", "Preconsolidation stress", yieldStress, frame);
    columns.push(...mark.columns);
    series.push(mark.series);
  }
  const shown = (values: Source, when: (where: Where, i: number) => string) =>
    each((i, where) => {
      const cell = values.cell(i);
      return `=IF(ISNUMBER(${cell}),IF((${cell}>0)*(${when(where, i)}),${cell},NA()),NA())`;
    });
  if (joined) {
    columns.push({
      name: "joined",
      heading: joined.name,
      rows,
      cells: shown(joined.values, (where, i) => `${where.cell("virgin", i)}>=0`),
    });
    series.push({ name: joined.name, style: "thin", x: "x", y: "joined" });
  }
  const kinds = yieldStress ? (["virgin", "not virgin"] as const) : (["first loading", "reloading"] as const);
  for (const { name, shape, values } of sets)
    kinds.forEach((kind, index) => {
      const column = `${name}, ${kind}`;
      const wanted = index === 0 ? 1 : 0;
      columns.push({
        name: column,
        heading: column,
        rows,
        cells: shown(values, (where, i) => `${where.cell("virgin", i)}=${wanted}`),
      });
      series.push({
        name: column,
        style: "points",
        symbol: index === 0 ? "filled" : "open",
        shape,
        x: "x",
        y: column,
      });
    });
  return { ...frame, columns, series };
}

/** The cells that a data sheet has under its names. */
class Sheet {
  readonly #places: ReadonlyMap<string, Box>;
  constructor(private readonly data: DataSheet) {
    this.#places = new Map(
      data.names.flatMap(({ name, place }) => (place === "lost" ? [] : [[name, place] as const])).reverse(),
    );
  }

  /** The picks by hand of the compression curve. */
  get curvePicks(): CurvePicks {
    return picksOfCurve(readRecord(this.data.values).picks);
  }

  get words(): InWords {
    return this.data.inWords ?? english;
  }

  get name(): string {
    return this.data.sheet;
  }

  box(name: string): Box | undefined {
    return this.#places.get(name);
  }

  source(name: string): Source | undefined {
    const box = this.box(name);
    return box && sourceOf(this.data.sheet, box);
  }

  address(name: string): string | undefined {
    return this.source(name)?.whole;
  }

  /** One cell of a list, by a formula for its number from 1. */
  taken(name: string, number: string): string | undefined {
    const box = this.box(name);
    const whole = this.address(name);
    return box && whole && `INDEX(${whole},${liesAcross(box) ? "0," : ""}${number})`;
  }

  numbers(name: string): (number | null)[] {
    return asColumn(this.data.values[name] ?? []).map(([cell]) => (typeof cell === "number" ? cell : null));
  }

  number(name: string): number | undefined {
    return this.numbers(name)[0] ?? undefined;
  }

  word(name: string, row = 0): string {
    const cell: CellValue = this.data.values[name]?.[row]?.[0] ?? "";
    return typeof cell === "string" && !cell.startsWith("#") ? cell.trim() : "";
  }

  /** A refusal that names the missing cells; undefined if none is missing. */
  lacks(...names: readonly string[]): Outcome<never> | undefined {
    const absent = names.filter((name) => !this.#places.has(name));
    return absent.length === 0
      ? undefined
      : badInput(
          say`the sheet "${verbatim(this.data.sheet)}" has no cells named ${listed(absent.map(verbatim))}: name them in the sheet check`,
        );
  }
}

const titled = (sheet: Sheet, words: string): string =>
  [words, sheet.word("boring"), sheet.word("sample")].filter(Boolean).join(", ");

/** The columns of the table of picks; undefined if the sheet has none. */
function tableOfPicks(sheet: Sheet): readonly [loads: string, columns: string] | undefined {
  const [loads, of, after] = ["pick_load", "pick_of", "pick_after"].map((name) => sheet.address(name));
  return loads && of && after ? [loads, `${loads},${of},${after}`] : undefined;
}

/** The picks by hand of a load, if the sheet has a table of picks; blank if the load has none. */
function picksOf(sheet: Sheet, load: number): string | undefined {
  const [loads, columns] = tableOfPicks(sheet) ?? [];
  return loads && `IF(COUNT(${loads})=0,"",CLAY.LOAD_PICKS(${load},${columns}))`;
}

/** The picks by hand of the compression curve, if the formulas of the sheet read them. */
function curvePicksOf(sheet: Sheet): { readonly formula?: string; readonly picks: CurvePicks } {
  const [, columns] = tableOfPicks(sheet) ?? [];
  const isPicked = rulesOf({ version: sheet.number("template_version") }).curveIsPicked;
  if (!columns || !isPicked) return { picks: {} };
  return {
    formula: `CLAY.LOAD_PICKS("${OF_CURVE}",${columns})`,
    picks: sheet.curvePicks,
  };
}

/** The cell with the procedure of a load in the load table. */
function procedureOf(sheet: Sheet, load: number): string | undefined {
  const numbers = sheet.address("load_number");
  const procedure = numbers && sheet.taken("load_procedure", `MATCH(${load},${numbers},0)`);
  return procedure && `IFERROR(${procedure},"aided")`;
}

function timeOf(sheet: Sheet, plot: "log time" | "root time", load: number): Outcome<SeriesBlock> {
  const [timesOf, readingsOf] = [timesName(load), readingsName(load)];
  const lacking = sheet.lacks(timesOf, readingsOf);
  if (lacking) return lacking;
  const [xs, ys] = [sheet.numbers(timesOf), sheet.numbers(readingsOf)];
  const draw = plot === "log time" ? logTimePlot : rootTimePlot;
  const sense = sheet.word("dial_sense") === "fall" ? "fall" : "rise";
  const spec = draw(xs, ys, { readingLabel: sheet.words(say`Dial reading`), sense, inWords: sheet.words });
  if (!spec.ok) return spec;
  const boxes = [sheet.box(timesOf)!, sheet.box(readingsOf)!] as const;
  const stress = sheet.numbers("load_stress")[load - 1];
  const under = stress == null ? "" : `${Number(stress.toPrecision(4))} ${sheet.word("stress_unit")}`.trimEnd();
  const title = under ? say`Load ${load}, ${verbatim(under)}` : say`Load ${load}`;
  return given(
    {
      title: titled(sheet, sheet.words(title)),
      ...timeBlock(
        plot,
        {
          times: sheet.source(timesOf)!,
          readings: sheet.source(readingsOf)!,
          shown: Math.min(lengthOf(boxes[0]), lengthOf(boxes[1]), lastOf(ys) + ROOM),
          picks: picksOf(sheet, load),
          procedure: procedureOf(sheet, load),
        },
        sheet.name,
        boxes,
        spec.value,
      ),
    },
    spec.remarks,
  );
}

function compressionOf(sheet: Sheet, kind: "e" | "strain", method?: MethodName): Outcome<SeriesBlock> {
  const needed = kind === "e" ? ["load_stress", "void_ratio_curve"] : ["load_stress", "strain_end"];
  const lacking = sheet.lacks(...needed);
  if (lacking) return lacking;
  const stresses = sheet.source("load_stress")!;
  const [end, primary, point] = ["strain_end", "strain_d100", "curve_point"].map((name) => sheet.source(name));
  // The strain at the point from which the void ratio of the curve is calculated.
  const strain = (i: number): string =>
    primary && point ? `IF(${point.cell(i)}="d100",${primary.cell(i)},${end!.cell(i)})` : end!.cell(i);
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
      ),
    },
    spec.remarks,
  );
}

const CV_NAMES = { "log time": "cv_log_time", "root time": "cv_root_time" } as const;

function cvOf(sheet: Sheet, by: "chosen" | TimeMethod | "both"): Outcome<SeriesBlock> {
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
      cvUnit: sheet.word("cv_unit") || undefined,
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

/** An adopted value: what it is, and a formula that is blank while nothing is adopted. */
function adoptedIn(sheet: Sheet, name: AdoptableName): { readonly formula?: string; readonly value?: number } {
  const row = ADOPTABLE.findIndex((one) => one.name === name);
  const cell = sheet.taken("adopted_value", String(row + 1));
  if (!cell) return {};
  return { formula: `IF(ISNUMBER(${cell}),${cell},"")`, value: sheet.numbers("adopted_value")[row] ?? undefined };
}

/** The field curve; refuses, and names the missing input, if the sheet has no in-situ stress or no initial void ratio. */
function fieldOf(sheet: Sheet): Outcome<SeriesBlock> {
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

/** The strain of the stage of wetting against time, with the line of its rate. Refuses a sheet without such a stage. */
function swellOf(sheet: Sheet): Outcome<SeriesBlock> {
  const needed = ["wetting_load", "wetting_strain", "wetting_rate", "load_number", "end_reading", "dial_factor"];
  const lacking = sheet.lacks(...needed);
  if (lacking) return lacking;
  const load = sheet.number("wetting_load");
  const strain = sheet.number("wetting_strain");
  if (load === undefined || strain === undefined)
    return notApplicable(say`no stage of wetting has been read (${nameOf("load_mark")})`);
  const [timesOf, readingsOf] = [timesName(load), readingsName(load)];
  const lackingReadings = sheet.lacks(timesOf, readingsOf);
  if (lackingReadings) return lackingReadings;
  const row = sheet.numbers("load_number").indexOf(load);
  const [before, after] = ["wetting_height_before", "wetting_height_after"].map((name) => sheet.number(name) ?? NaN);
  const factor = (sheet.word("dial_sense") === "fall" ? -1 : 1) * (sheet.number("dial_factor") ?? NaN);
  const end = sheet.numbers("end_reading")[row] ?? NaN;
  // The height that the sheet refers the strain to.
  const reference = strain === 0 ? before! : (before! - after!) / strain;
  const ys = sheet.numbers(readingsOf);
  const strains = ys.map((reading) => (reading === null ? null : strain + ((reading - end) * factor) / reference));
  const stress = sheet.number("wetting_stress");
  const rate = sheet.number("wetting_rate");
  const spec = swellPlot(sheet.numbers(timesOf), strains, {
    rate,
    stress: stress === undefined ? undefined : `${Number(stress.toPrecision(4))} ${sheet.word("stress_unit")}`.trim(),
    inWords: sheet.words,
  });
  if (!spec.ok) return spec;
  const [times, readings] = [sheet.source(timesOf)!, sheet.source(readingsOf)!];
  const shown = Math.min(times.rows, readings.rows, lastOf(ys) + ROOM);
  return given({
    title: titled(sheet, spec.value.title),
    ...swellBlock(sheet, { times, readings, row, shown }, spec.value),
  });
}

function swellBlock(
  sheet: Sheet,
  { times, readings, row, shown }: { times: Source; readings: Source; row: number; shown: number },
  spec: PlotSpec,
): Pick<SeriesBlock, "x" | "y" | "columns" | "series"> {
  const frame = frameOf(spec);
  const at = (name: string): string => sheet.address(name)!;
  const end = sheet.source("end_reading")!.cell(row);
  const sense = sheet.address("dial_sense");
  const factor = `${sense ? `IF(${sense}="fall",-1,1)*` : ""}${at("dial_factor")}`;
  const reference = `IF(${at("wetting_strain")}=0,${at("wetting_height_before")},(${at("wetting_height_before")}-${at("wetting_height_after")})/${at("wetting_strain")})`;
  const isRead = (i: number): string =>
    `AND(ISNUMBER(${times.cell(i)}),ISNUMBER(${readings.cell(i)}),${times.cell(i)}>0)`;
  const strainAt = (i: number): string =>
    `100*(${at("wetting_strain")}+(${readings.cell(i)}-${end})*${factor}/${reference})`;
  const each = (cell: (i: number) => string): string[] => Array.from({ length: shown }, (_, i) => cell(i));
  const columns: BlockColumn[] = [
    {
      name: "x",
      heading: "Time",
      rows: shown,
      cells: () => each((i) => `=IF(${isRead(i)},${times.cell(i)},${frame.x.domain[0]})`),
    },
    { name: "y", heading: "Strain, %", rows: shown, cells: () => each((i) => `=IF(${isRead(i)},${strainAt(i)},NA())`) },
  ];
  const points: BlockSeries = { name: "readings", style: "points", symbol: "filled", x: "x", y: "y" };
  const line = spec.series.find(({ label }) => label === "rate at the end");
  if (!line) return { ...frame, columns, series: [points] };
  const [[from], [to]] = [firstOf(line.points), line.points.at(-1)!];
  const rateColumns: BlockColumn[] = [
    { name: "rate x", heading: "Rate", rows: 2, cells: () => [`=${from}`, `=${to}`] },
    {
      name: "rate y",
      heading: "y",
      rows: 2,
      cells: () => [
        `=IF(ISNUMBER(${at("wetting_rate")}),100*(${at("wetting_strain")}-${at("wetting_rate")}*LOG10(${to}/${from})),NA())`,
        `=IF(ISNUMBER(${at("wetting_rate")}),100*${at("wetting_strain")},NA())`,
      ],
    },
  ];
  const rate: BlockSeries = { name: "rate at the end", style: "line", lettered: true, x: "rate x", y: "rate y" };
  return { ...frame, columns: [...columns, ...rateColumns], series: [rate, points] };
}

/** The void index beside the intrinsic line; refuses, and names the missing input, if the sheet has no liquid limit. */
function intrinsicOf(sheet: Sheet): Outcome<SeriesBlock> {
  const results = ["intrinsic_void_ratio", "intrinsic_index"];
  const typed = ["liquid_limit", "specific_gravity", "void_ratio_initial"];
  const lacking = sheet.lacks("load_stress", "void_ratio_curve", "stress_unit", ...typed, ...results);
  if (lacking) return lacking;
  const [liquidLimit, specificGravity, initial] = typed.map((name) => sheet.number(name));
  if (liquidLimit === undefined || specificGravity === undefined || initial === undefined)
    return badInput(
      say`the void index needs ${listed(typed.filter((name) => sheet.number(name) === undefined).map(cellNamed))}`,
    );
  const spec = intrinsicPlot(sheet.numbers("load_stress"), sheet.numbers("void_ratio_curve"), {
    stressUnit: sheet.word("stress_unit") || undefined,
    ...{ liquidLimit, specificGravity, initialVoidRatio: initial },
    inSituStress: sheet.number("in_situ_stress"),
    inWords: sheet.words,
  });
  if (!spec.ok) return spec;
  const stresses = sheet.source("load_stress")!;
  const block = intrinsicBlock(
    {
      stress: stresses.cell,
      voidRatio: sheet.source("void_ratio_curve")!.cell,
      rows: stresses.rows,
      intrinsicVoidRatio: sheet.address("intrinsic_void_ratio")!,
      intrinsicIndex: sheet.address("intrinsic_index")!,
      initial: sheet.address("void_ratio_initial")!,
      stressUnit: sheet.address("stress_unit")!,
      inSitu: sheet.address("in_situ_stress"),
    },
    frameOf(spec.value),
  );
  return given({ title: titled(sheet, spec.value.title), ...block }, spec.remarks);
}

function cAlphaOf(sheet: Sheet): Outcome<SeriesBlock> {
  const lacking = sheet.lacks("load_stress", "c_alpha");
  if (lacking) return lacking;
  const spec = cAlphaPlot(sheet.numbers("load_stress"), sheet.numbers("c_alpha"), {
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

/** A plot of a data sheet. Refuses, with the reason, if cells are missing or hold nothing to draw. */
export function seriesOf(data: DataSheet, plot: DataPlot): Outcome<SeriesBlock> {
  const sheet = new Sheet(data);
  return then(blockOf(sheet, plot), (block) => given(named(block, sheet.words)));
}

function blockOf(sheet: Sheet, plot: DataPlot): Outcome<SeriesBlock> {
  if (plot.plot === "compression") return compressionOf(sheet, plot.value, plot.method);
  if (plot.plot === "cv") return cvOf(sheet, plot.by);
  if (plot.plot === "c alpha") return cAlphaOf(sheet);
  if (plot.plot === "field") return fieldOf(sheet);
  if (plot.plot === "swell") return swellOf(sheet);
  if (plot.plot === "intrinsic") return intrinsicOf(sheet);
  return timeOf(sheet, plot.plot, plot.load);
}

/** The block with the names of its series in a language. */
const named = (block: SeriesBlock, words: InWords): SeriesBlock => ({
  ...block,
  series: block.series.map((series) => ({ ...series, name: labelIn(words, series.name) })),
});

/** The time curves of all loads that have one, in test order. Refuses if no load has one. */
export function everyLoad(data: DataSheet, plot: "log time" | "root time"): Outcome<SeriesBlock[]> {
  const sheet = new Sheet(data);
  const made = Array.from({ length: MOST_LOADS }, (_, index) => index + 1)
    .filter((load) => sheet.numbers(readingsName(load)).some((reading) => reading !== null))
    .flatMap((load) => {
      const block = timeOf(sheet, plot, load);
      return block.ok ? [block.value] : [];
    });
  return made.length
    ? given(made)
    : badInput(say`the sheet "${verbatim(data.sheet)}" has no load with readings to draw`);
}

/** A plot of two columns of a sheet. Refuses, with the reason, if they hold nothing to draw. */
export function seriesOfRange(range: RangePlot): Outcome<SeriesBlock> {
  const { plot, sheet, x, y, xs, ys, method } = range;
  const rows = Math.min(x.rows, y.rows);
  const [across, up] = [sourceOf(sheet, x, rows), sourceOf(sheet, y, rows)];
  const named = (spec: PlotSpec): PlotSpec => ({
    ...spec,
    title: range.title ?? spec.title,
    x: { ...spec.x, label: range.xLabel ?? spec.x.label },
    y: { ...spec.y, label: range.yLabel ?? spec.y.label },
  });
  const made = (
    spec: Outcome<PlotSpec>,
    block: (spec: PlotSpec) => Pick<SeriesBlock, "x" | "y" | "columns" | "series">,
  ): Outcome<SeriesBlock> =>
    spec.ok ? given({ title: named(spec.value).title, ...block(named(spec.value)) }, spec.remarks) : spec;
  switch (plot) {
    case "log time":
    case "root time":
      return made((plot === "log time" ? logTimePlot : rootTimePlot)(xs, ys), (spec) =>
        timeBlock(plot, { times: across, readings: up, shown: rows }, sheet, [x, y], spec),
      );
    case "compression e":
    case "compression strain": {
      const kind = plot === "compression e" ? "e" : "strain";
      return made(compressionPlot(xs, ys, kind, { method }), (spec) =>
        curveBlock({ stresses: across, value: up.cell, values: up.whole, kind, method }, spec),
      );
    }
    case "cv":
      return made(
        cvPlot(
          xs,
          ys,
          ys.map(() => null),
        ),
        (spec) =>
          coefficientBlock(
            {
              stresses: across,
              sets: [{ name: "cv", shape: "circle", values: up }],
              joined: { name: "test", values: up },
              at: "mean",
            },
            spec,
          ),
      );
    case "c alpha":
      return made(cAlphaPlot(xs, ys), (spec) =>
        coefficientBlock(
          {
            stresses: across,
            sets: [{ name: "C alpha", shape: "circle", values: up }],
            joined: { name: "test", values: up },
            at: "end",
          },
          spec,
        ),
      );
  }
}
