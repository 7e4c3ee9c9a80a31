/**
 * Uncertainty in the report: limits of error that a laboratory can change in cells, with who and why; intervals that
 * the worksheet functions calculate from them; and, apart from these, the spread of the constructions.
 */
import { readingsName, timesName } from "../../specification/load-table";
import type { CellPlan } from "../../workbook/port";
import { FORMATS, NOTHING, shownCell, twoFigures, unitCell, worked } from "../page/cells";
import { band, COLUMNS, gap, paragraph, type Block } from "../page/page";
import type { DataCells, KeptLimit, ReportedLoad } from "../page/source";
import { always, cell, loadTable, stressFormat, type LoadColumn } from "./data";

interface Limit {
  readonly name: string;
  readonly label: string;
  /** A name of the data sheet whose cell holds the unit, or the unit itself. */
  readonly unit?: string;
  readonly format: string;
  readonly value: (cells: DataCells) => number;
  readonly basis: string;
}

const isInch = (cells: DataCells): boolean => cells.text("length_unit") === "in";
/** A length given in mm, as a round number in the unit of the sheet. */
const inUnit =
  (mm: number, inches: number) =>
  (cells: DataCells): number =>
    isInch(cells) ? inches : cells.text("length_unit") === "cm" ? mm / 10 : mm;

const COMMON = "common practice, no source";

/** The default limits: the quantity lies within -+ the limit. */
export const LIMITS: readonly Limit[] = [
  { name: "limit_mass", label: "Balance, each weighing", unit: "g", format: "0.000", value: () => 0.01, basis: COMMON },
  {
    name: "limit_height",
    label: "Caliper, initial height",
    unit: "length_unit",
    format: "0.0000",
    value: inUnit(0.02, 0.001),
    basis: COMMON,
  },
  {
    name: "limit_diameter",
    label: "Caliper, diameter",
    unit: "length_unit",
    format: "0.0000",
    value: inUnit(0.02, 0.001),
    basis: COMMON,
  },
  {
    name: "limit_reading",
    label: "Dial, each reading",
    unit: "length_unit",
    format: "0.00000",
    value: (cells) => {
      const factor = cells.number("dial_factor");
      // A factor of 1 means a logger: its resolution is not on the sheet.
      return factor === undefined || factor === 1 ? inUnit(0.001, 0.00005)(cells) : factor / 2;
    },
    basis: "half a division, no source",
  },
  {
    name: "limit_apparatus",
    label: "Apparatus deflection",
    unit: "length_unit",
    format: "0.00000",
    value: inUnit(0.002, 0.0001),
    basis: COMMON,
  },
  {
    name: "limit_gravity",
    label: "Specific gravity",
    format: "0.000",
    value: (cells) => (cells.text("specific_gravity_basis").toLowerCase() === "measured" ? 0.02 : 0.05),
    basis: COMMON,
  },
  {
    name: "limit_force",
    label: "Force, of itself",
    format: "0.0%",
    value: () => 0.005,
    basis: "ASTM D2435, from memory",
  },
];

export const COVERAGE_NAME = "limit_coverage";
export const LIMIT_NAMES: readonly string[] = [...LIMITS.map(({ name }) => name), COVERAGE_NAME];
/** The name of the cell beside a limit: who changed it and why. */
export const byOf = (name: string): string => `${name}_by`;
export const whyOf = (name: string): string => `${name}_why`;

const [VALUE, UNIT, U, BASIS, BY, WHY] = [3, 4, 5, 6, 9, 10];

export function limits(cells: DataCells, kept: Readonly<Record<string, KeptLimit>> = {}): Block[] {
  const rows = [
    ...LIMITS.map((limit) => ({ ...limit, standing: limit.value(cells) })),
    {
      name: COVERAGE_NAME,
      label: "Coverage factor k",
      format: "0.0",
      standing: 2,
      basis: "about 95 %; JCGM 100, 6.3.3",
      unit: undefined,
    },
  ];
  const head: CellPlan[] = (
    [
      [0, "Input"],
      [VALUE, "Limit -+"],
      [UNIT, "Unit"],
      [U, "u"],
      [BASIS, "Basis"],
      [BY, "Set by"],
      [WHY, "Why"],
    ] as const
  ).map(([col, value]) => ({
    row: 0,
    col,
    kind: "heading",
    value,
    ...(col === VALUE || col === U ? { align: "right" } : {}),
  }));
  const filled = Array.from({ length: COLUMNS }, (_, col) => col)
    .filter((col) => !head.some((one) => one.col === col))
    .map((col): CellPlan => ({ row: 0, col, kind: "heading" }));
  const body = rows.flatMap(({ name, label, unit, format, standing, basis }, index): CellPlan[] => {
    const row = index + 1;
    const set = kept[name];
    return [
      { row, col: 0, kind: "label", value: label },
      { row, col: VALUE, kind: "input", value: set?.value ?? standing, format },
      ...unitCell(cells, unit, row, UNIT),
      ...(name === COVERAGE_NAME
        ? []
        : [
            {
              row,
              col: U,
              kind: "result" as const,
              formula: `={${name}}/SQRT(3)`,
              format: `${format.replace("%", "")}0${format.includes("%") ? "%" : ""}`,
            },
          ]),
      { row, col: BASIS, kind: "label", value: set ? `was ${standing}: ${basis}` : basis },
      { row, col: BY, kind: "input", value: set?.by, format: "@" },
      { row, col: WHY, kind: "input", value: set?.why, format: "@" },
      { row, col: WHY + 1, kind: "input", format: "@" },
    ];
  });
  const names = Object.fromEntries(
    rows.flatMap(({ name }, index) =>
      [
        [name, VALUE],
        [byOf(name), BY],
        [whyOf(name), WHY],
      ].map(([called, col]) => [called, { row: index + 1, col: Number(col), rows: 1, cols: 1 }]),
    ),
  );
  return [
    band("Uncertainty of measurement: limits of error, to be changed here", { withNext: true }),
    { rows: rows.length + 1, cells: [...head, ...filled, ...body], names, withNext: true },
    ...paragraph(
      "A quantity lies anywhere within -+ its limit, so that its standard uncertainty u is limit / root 3 (JCGM 100:2008, 4.3.7). A deformation is the difference of two readings. Inputs count as independent; first order (JCGM 100:2008, 5.1.2). Give initials and the reason beside a limit that you change: the next report of this sheet takes it over.",
      { kind: "note" },
    ),
    gap,
  ];
}

const u = (name: string): string => `({${name}}/SQRT(3))`;
const K = `{${COVERAGE_NAME}}`;

/** An item of an uncertainty function; "-" if the function refuses. */
const item = (
  call: (item: string) => string,
  needs: readonly (string | undefined)[],
  which: string,
): string | undefined => worked(needs, call(which));

/** The cells that every interval of e needs. */
function voidRatioCall(cells: DataCells, height: string | undefined, uHeight: string) {
  const needs = [
    height,
    ...["diameter", "ring_mass", "ring_and_dry", "specific_gravity"].map((name) => cells.at(name)),
  ];
  const unit = cells.at("length_unit") ?? '"mm"';
  const call = (which: string) =>
    `CLAY.VOID_RATIO_UNCERTAINTY(${needs.join(",")},${uHeight},${u("limit_diameter")},${u("limit_mass")},${u("limit_gravity")},${K},"${which}",${unit})`;
  return { needs, call };
}

/** Standard uncertainty of a deformation, and of the height at a load. */
const U_DEFORMATION = `(${u("limit_reading")}*SQRT(2))`;
const U_HEIGHT_AT = `SQRT(${u("limit_height")}^2+2*${u("limit_reading")}^2+${u("limit_apparatus")}^2)`;

const HEADINGS = [
  [3, "value"],
  [4, "U = k u"],
  [5, "low"],
  [6, "high"],
  [8, "greatest share of the variance"],
] as const;

export function intervals(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const ofVoidRatio = (label: string, name: string, height: string, uHeight: string, row: number): CellPlan[] => {
    const { needs, call } = voidRatioCall(cells, cells.at(height), uHeight);
    const one = (which: string, col: number, format?: string) =>
      shownCell(cells, { label, formula: item(call, needs, which), format, isText: !format }, row, col);
    return [
      { row, col: 0, kind: "label", value: label },
      shownCell(cells, { label, name, format: FORMATS.ratio }, row, 3),
      { ...one("u", 4, "0.0000"), formula: item((which) => `${K}*${call(which)}`, needs, "u") ?? NOTHING },
      one("low", 5, FORMATS.ratio),
      one("high", 6, FORMATS.ratio),
      one("largest", 8),
    ];
  };
  const basis = cells.at("specific_gravity_basis");
  const assumed = basis
    ? `=IF(${basis}="measured","Gs is stated as measured.",IF(${basis}="assumed","Gs IS ASSUMED: its limit of error is an estimate, and governs e.","It is not said whether Gs was measured: it counts as assumed."))`
    : undefined;
  const blocks: Block[] = [
    band("Intervals of e, strain, stress and cv"),
    {
      rows: 4,
      cells: [
        ...HEADINGS.map(([col, value]): CellPlan => ({
          row: 0,
          col,
          kind: "unit",
          value,
          align: col === 8 ? "left" : "right",
        })),
        ...ofVoidRatio("Initial void ratio e0", "void_ratio_initial", "initial_height", u("limit_height"), 1),
        ...ofVoidRatio("Final void ratio ef", "void_ratio_final", "final_height", U_HEIGHT_AT, 2),
        {
          row: 3,
          col: 0,
          kind: "remark",
          ...(assumed
            ? { formula: assumed }
            : { value: "It is not said whether Gs was measured: it counts as assumed." }),
        },
      ],
      names: {
        report_void_ratio_low: { row: 1, col: 5, rows: 1, cols: 1 },
        report_void_ratio_high: { row: 1, col: 6, rows: 1, cols: 1 },
        report_gravity_remark: { row: 3, col: 0, rows: 1, cols: 1 },
      },
    },
  ];
  return loads.length === 0 ? [...blocks, gap] : [...blocks, gap, ...intervalsOfLoads(cells, loads)];
}

function intervalsOfLoads(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const H0 = cells.at("initial_height");
  const of = (name: string, { row }: ReportedLoad) => cells.at(name, row);
  const strain = (load: ReportedLoad, which: string) => {
    const [measured, deflection] = [of("deformation", load), of("apparatus_deflection", load)];
    const corrected = cells.column("apparatus_stress");
    const uApparatus = corrected ? `IF(COUNT(${corrected})=0,0,${u("limit_apparatus")})` : "0";
    return item(
      (one) =>
        `CLAY.STRAIN_UNCERTAINTY(${measured},${H0},${U_DEFORMATION},${u("limit_height")},${deflection},${uApparatus},${K},"${one}")`,
      [measured, H0, deflection],
      which,
    );
  };
  const stress = (load: ReportedLoad, which: string) => {
    const needs = [of("load_stress", load), cells.at("diameter")];
    return item(
      (one) => `CLAY.STRESS_UNCERTAINTY(${needs.join(",")},${u("limit_force")},${u("limit_diameter")},${K},"${one}")`,
      needs,
      which,
    );
  };
  const expanded = (formula: string | undefined) => formula?.replace(/CLAY\./, `${K}*CLAY.`);
  const cv = (load: ReportedLoad, which: string) => {
    const value = of("cv_chosen", load);
    // A sheet of version 3 or older has one height for both constructions.
    const root = of("height_middle_root", load);
    const log = of("height_middle", load);
    const method = of("load_method", load) ?? cells.at("time_method");
    const height = root && log && method ? `IF(${method}="root time",${root},${log})` : log;
    const [times, readings] = [cells.column(timesName(load.number)), cells.column(readingsName(load.number))];
    const units = ["drainage", "cv_unit", "length_unit"].map((name) => cells.at(name) ?? "");
    if (!times || !readings || !method) return undefined;
    const fit = (end: string) => `CLAY.FIT_TIME(${times},${readings},${height},"${end}",${units.join(",")})`;
    return item(
      (one) =>
        `CLAY.CV_UNCERTAINTY(${value},${method},${fit("cv_low")},${fit("cv_high")},${height},${U_HEIGHT_AT},${K},"${one}")`,
      [value, height],
      which,
    );
  };
  const typed = stressFormat(cells, loads);
  const fine = typed.includes(".") ? `${typed}0` : `${typed}.0`;
  const cvFormat = (row: number) => twoFigures(cells.number("cv_chosen", row), 3);
  const columns: LoadColumn[] = [
    { heading: ["Load", ""], formula: ({ number }) => number, format: always("0") },
    { heading: ["Stress", ""], unit: "stress_unit", formula: cell(cells, "load_stress"), format: always(typed) },
    {
      heading: ["Stress", "-+ U"],
      unit: "stress_unit",
      formula: (load) => expanded(stress(load, "u")),
      format: always(fine),
    },
    { heading: ["Strain", "at end"], formula: cell(cells, "strain_end"), format: always(FORMATS.strain) },
    { heading: ["Strain", "-+ U"], formula: (load) => expanded(strain(load, "u")), format: always("0.000%") },
    { heading: ["cv", ""], unit: "cv_unit", formula: cell(cells, "cv_chosen"), format: cvFormat },
    { heading: ["cv", "low"], unit: "cv_unit", formula: (load) => cv(load, "low"), format: cvFormat },
    { heading: ["cv", "high"], unit: "cv_unit", formula: (load) => cv(load, "high"), format: cvFormat },
  ];
  return [
    ...loadTable(cells, "Intervals of the loads", columns, loads, {
      report_stress_uncertainty: 2,
      report_strain_uncertainty: 4,
      report_cv_low: 6,
      report_cv_high: 7,
    }),
    ...paragraph(
      "U is k times the standard uncertainty. The interval of cv is a factor, since cv is known by its ratio to the truth: it comes from the 95 % interval that the fit to theory leaves on the same readings, made 1.5 times (log time) or 3 times (root time) as wide, and the height; with k = 2 it held the truth in 94 and 91 of 100 simulated curves. It says nothing of a time zero that is off, of swings of temperature, or of which construction is the right one.",
      { kind: "note" },
    ),
    gap,
  ];
}

/** The spread of the methods: live, from the spill on the data sheet. */
export function interpretation(cells: DataCells): Block[] {
  const table = cells.rows("preconsolidation_spread");
  if (table === 0)
    return [
      band("Interpretation: the preconsolidation stress by every method"),
      ...paragraph("The data sheet has no table of methods (preconsolidation_spread)."),
      gap,
    ];
  const format = twoFigures(cells.number("preconsolidation_stress"), 3);
  const given = cells.source.values.preconsolidation_spread ?? [];
  const words = (row: number, col: number): string => String(given[row]?.[col] ?? "");
  const block = cells.block("preconsolidation_spread");
  const live = (row: number): string => {
    const part = `INDEX(${block},${row + 1},2)`;
    return `=IFERROR(IF(${part}="","${NOTHING}",${part}),"${NOTHING}")`;
  };
  const rows = given.map((_, row) => row).filter((row) => words(row, 0) !== "");
  const isStress = (row: number): boolean => !/^(spread|verdict|remark)$/.test(words(row, 0));
  const lines = rows.flatMap((row): Block[] => {
    // The note on a method may be long: it is copied when the report is made, in as many lines as it needs.
    if (/^(verdict|remark)$/.test(words(row, 0)))
      return paragraph(words(row, 1), { col: 3, lead: words(row, 0), kind: "remark" });
    const [first, ...others] = paragraph(words(row, 2) || NOTHING, { col: 5, kind: "remark" });
    const number: CellPlan[] = [
      { row: 0, col: 0, kind: "label", value: words(row, 0) },
      { row: 0, col: 3, kind: "result", formula: live(row), align: "right", format: isStress(row) ? format : "0%" },
      ...(isStress(row) ? unitCell(cells, "stress_unit", 0, 4) : []),
    ];
    return [{ ...first, cells: [...number, ...first.cells] }, ...others];
  });
  return [
    band("Interpretation: the preconsolidation stress by every method"),
    ...(lines.length
      ? lines
      : paragraph("The methods gave nothing: the curve has no points, or they do not apply to it.")),
    ...paragraph(
      "This is a spread of interpretation, shown apart: it is no uncertainty of measurement, has no probability, and is added to none of the intervals. The constructions of cv spread likewise: see the table of time curves.",
      { kind: "note" },
    ),
    gap,
  ];
}
