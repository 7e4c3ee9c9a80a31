/** The tables of the report that have a row for each load. */
import { say, type Message } from "../../reduction/message";
import { isWord } from "../../specification/list-words";
import { readingsName, timesName } from "../../specification/readings";
import type { CellPlan } from "../../workbook/port";
import { inFormula } from "../../specification/sentences/told-formula";
import {
  FORMATS,
  inPower,
  NOTHING,
  orError,
  shownCell,
  shownFormula,
  threeFigures,
  twoFigures,
  unitCell,
  worded,
} from "../page/cells";
import { band, COLUMNS, gap, paragraph, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";
import { stressFormat } from "./specimen";

/** One column of a table of loads. */
export interface LoadColumn {
  /** The heading in one line or two. */
  readonly heading: readonly [Message, Message?];
  readonly unit?: string;
  readonly format?: (row: number) => string | undefined;
  /** The formula of a load, or a number; undefined if the sheet has no cell for it. */
  readonly formula: (load: ReportedLoad) => string | number | undefined;
  readonly isText?: boolean;
}

/** The least rows of loads in the part of a table before the end of a page. */
const LEAST_ROWS = 6;
/** The least rows of loads that go on to the next page. */
const LEAST_ON_NEXT = 3;
/** The number of heading rows of a table: two lines and the units. */
const HEAD = 3;

/** The heading cells of a table: two lines and the units. */
function headings(cells: DataCells, columns: readonly LoadColumn[]): CellPlan[] {
  const head = columns.flatMap((column, col): CellPlan[] => [
    ...[0, 1].map((row): CellPlan => {
      const message = column.heading[row];
      return { row, col, kind: "heading", value: message ? cells.words(message) : "", align: alignOf(column) };
    }),
    ...unitCell(cells, column.unit, 2, col).map((cell) => ({ ...cell, align: alignOf(column) })),
  ]);
  for (let col = columns.length; col < COLUMNS; col++)
    head.push({ row: 0, col, kind: "heading" }, { row: 1, col, kind: "heading" });
  return head;
}

const alignOf = ({ isText }: LoadColumn) => (isText ? ("center" as const) : ("right" as const));

/**
 * A table with a row for each load, which may continue on the next page. `names` are the names of its columns on the report;
 * those of a later part end in its number ("report_strain_2").
 */
export function loadTable(
  cells: DataCells,
  title: Message,
  columns: readonly LoadColumn[],
  loads: readonly ReportedLoad[],
  names: Readonly<Record<string, number>>,
): Block[] {
  const rowOf = (load: ReportedLoad, row: number): CellPlan[] =>
    columns.map((column, col) => {
      const content = column.formula(load);
      const shown = typeof content === "number" ? { value: content } : { formula: content };
      return {
        ...shownCell(cells, { label: "", ...shown, format: column.format?.(load.row) }, row, col),
        align: alignOf(column),
        // A bold word would touch the number before it.
        ...(column.isText && { kind: "label" }),
      };
    });
  /** A part of the table; a later part begins with the title. */
  const partOf = (some: readonly ReportedLoad[], number: number): Block => {
    const top = number === 1 ? 0 : 1;
    const first = top + HEAD;
    const suffix = number === 1 ? "" : `_${number}`;
    const boxes = Object.entries(names).map(([name, col]) => [
      name + suffix,
      { row: first, col, rows: some.length, cols: 1 },
    ]);
    const again = number === 1 ? [] : band(cells.words(say`${title}, continued`)).cells;
    const head = headings(cells, columns).map((one) => ({ ...one, row: one.row + top }));
    return {
      rows: first + some.length,
      cells: [...again, ...head, ...some.flatMap((load, index) => rowOf(load, first + index))],
      names: Object.fromEntries(boxes),
      ...(some.length > LEAST_ROWS && {
        split: {
          least: first + LEAST_ROWS,
          at: (rows) => {
            const before = Math.min(Math.max(1, rows - first), some.length - LEAST_ON_NEXT);
            return [partOf(some.slice(0, before), number), partOf(some.slice(before), number + 1)] as const;
          },
        },
      }),
    };
  };
  return [band(cells.words(title)), partOf(loads, 1)];
}

/** The formula that shows a cell of the load's row. */
export const cellOfLoad =
  (cells: DataCells, name: string) =>
  ({ row }: ReportedLoad): string | undefined => {
    const reference = cells.at(name, row);
    return reference && shownFormula(cells, reference, name);
  };

export const always = (format: string) => () => format;
/** By the value in the row of a load: two significant figures, unless more are asked for. */
export const perLoad = (cells: DataCells, name: string, figures?: number) => (row: number) =>
  twoFigures(cells.number(name, row), figures);

export const inThreeFigures = (cells: DataCells, name: string) => (row: number) =>
  threeFigures(cells.number(name, row));

/** Minutes from the first instant of the load to its last reading. */
function duration(cells: DataCells, { number }: ReportedLoad): string | undefined {
  const [times, readings] = [cells.column(timesName(number)), cells.column(readingsName(number))];
  return (
    times && readings && orError(cells, `IF(COUNT(${readings})=0,"${NOTHING}",MAX(IF(ISNUMBER(${readings}),${times})))`)
  );
}

/** The construction that gives cv of a load: the one picked for the load, or the one of the sheet. */
function methodOf(cells: DataCells, { row }: ReportedLoad): string | undefined {
  const chosen = cells.at("load_method", row) ?? cells.at("time_method");
  const cv = cells.at("cv_chosen", row);
  if (!chosen || !cv) return undefined;
  const [root, log] = [say`root`, say`log`].map((word) => inFormula(cells.words(word)));
  return orError(cells, `IF(${cv}="","${NOTHING}",IF(${isWord(chosen, "root time")},${root},${log}))`);
}

export const loadColumn: LoadColumn = { heading: [say`Load`], formula: ({ number }) => number, format: always("0") };

const stressColumn = (cells: DataCells, loads: readonly ReportedLoad[]): LoadColumn => ({
  heading: [say`Stress`],
  unit: "stress_unit",
  formula: cellOfLoad(cells, "load_stress"),
  format: always(stressFormat(cells, loads)),
});

/** Void ratio at the end of the load and at d100, then strain; strain first if the curve of the report is in strain. */
function ofCompression(cells: DataCells): LoadColumn[] {
  const strain = (at: Message, name: string): LoadColumn => ({
    heading: [say`Strain`, at],
    formula: cellOfLoad(cells, name),
    format: always(FORMATS.strain),
  });
  const voidRatio = (at: Message, name: string): LoadColumn => ({
    heading: [say`e`, at],
    formula: cellOfLoad(cells, name),
    format: always(FORMATS.ratio),
  });
  const [end, primary] = [say`at end`, say`at d100`];
  return isInStrain(cells)
    ? [strain(end, "strain_end"), strain(primary, "strain_d100"), voidRatio(end, "void_ratio_end")]
    : [voidRatio(end, "void_ratio_end"), voidRatio(primary, "void_ratio_d100"), strain(end, "strain_end")];
}
const isInStrain = (cells: DataCells): boolean => cells.source.curve === "strain";

/** The branch of a load, or the word for water that was added under it. */
function branchOf(cells: DataCells, { row }: ReportedLoad): string | undefined {
  const [mark, branch] = [cells.at("load_mark", row), cells.at("load_branch", row)];
  const ofBranch = branch && shownFormula(cells, branch, "load_branch");
  if (!mark || !ofBranch) return ofBranch ?? (mark && shownFormula(cells, mark, "load_mark"));
  return orError(cells, `IF(${mark}="",${ofBranch.slice(1)},${worded(cells, mark, "load_mark")})`);
}

export function loadsOfTest(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const k = inPower(
    cells,
    "conductivity_unit",
    loads.flatMap(({ row }) => cells.number("conductivity", row) ?? []),
  );
  const columns: LoadColumn[] = [
    loadColumn,
    stressColumn(cells, loads),
    { heading: [say`Branch`, say`or water`], formula: (load) => branchOf(cells, load), isText: true },
    { heading: [say`Duration`], unit: "min", formula: (load) => duration(cells, load) },
    ...ofCompression(cells),
    {
      heading: [say`mv`],
      unit: "mv_unit",
      formula: cellOfLoad(cells, "volume_compressibility"),
      format: inThreeFigures(cells, "volume_compressibility"),
    },
    {
      heading: [say`cv`],
      unit: "cv_unit",
      formula: cellOfLoad(cells, "cv_chosen"),
      format: inThreeFigures(cells, "cv_chosen"),
    },
    { heading: [say`cv`, say`by`], formula: (load) => methodOf(cells, load), isText: true },
    {
      heading: [say`C alpha`, say`in strain`],
      formula: cellOfLoad(cells, "c_alpha"),
      format: perLoad(cells, "c_alpha"),
    },
    {
      heading: [say`k`],
      unit: k.unit,
      formula: ({ row }) => k.formula("conductivity", row),
      format: (row) => k.format(cells.number("conductivity", row)),
    },
  ];
  return [
    ...loadTable(cells, say`Loads`, columns, loads, {
      report_loads: 0,
      report_stress: 1,
      report_strain: isInStrain(cells) ? 4 : 6,
      report_void_ratio: isInStrain(cells) ? 6 : 4,
      report_cv: 8,
    }),
    ...paragraph(
      cells.words(
        say`-  nothing to show: the remarks on loads and the list of what is missing say why. "error": the cell of the data sheet shows one. mv is strain of the load on its starting height over the increase of stress, calculated before rounding: from the heights in print it follows within one unit of the last digit of their difference. k is calculated from cv, mv and the unit weight of water; it is no substitute for a direct test.`,
      ),
      { kind: "note" },
    ),
    gap,
  ];
}

/** The temperatures of the loads, cv at 20 deg C and the points of the curve: a test without temperatures and with one kind of point has no such table. */
export function conditionsOfLoads(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const has = (name: string) => loads.some(({ row }) => !cells.isBlank(name, row));
  const points = new Set(loads.map(({ row }) => cells.text("curve_point", row)));
  const columns: LoadColumn[] = [
    ...(has("load_temperature")
      ? [
          {
            heading: [say`Temper-`, say`ature`] as const,
            unit: cells.words(say`deg C`),
            formula: cellOfLoad(cells, "load_temperature"),
            format: always(FORMATS.temperature),
          },
        ]
      : []),
    ...(has("cv_20")
      ? [
          {
            heading: [say`cv at`, say`20 deg C`] as const,
            unit: "cv_unit",
            formula: cellOfLoad(cells, "cv_20"),
            format: inThreeFigures(cells, "cv_20"),
          },
        ]
      : []),
    // The conduct of the test says which point it is, if it is the same for all loads.
    ...(points.size > 1
      ? [{ heading: [say`Curve`, say`point at`] as const, formula: cellOfLoad(cells, "curve_point"), isText: true }]
      : []),
  ];
  if (columns.length === 0) return [];
  const title = say`Temperatures of the loads, and points of the curve`;
  return [...loadTable(cells, title, [loadColumn, stressColumn(cells, loads), ...columns], loads, {}), gap];
}
