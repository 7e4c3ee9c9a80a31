/** Limits of error in the report, which a laboratory can change in cells, with who and why. */
import { say, type Message } from "../../reduction/message";
import type { Box, CellPlan } from "../../workbook/port";
import { unitCell } from "../page/cells";
import { band, COLUMNS, gap, paragraph, type Block } from "../page/page";
import type { DataCells, KeptLimit } from "../page/source";

interface Limit {
  readonly name: string;
  readonly label: Message;
  /** A name of the data sheet whose cell holds the unit, or the unit itself. */
  readonly unit?: string;
  readonly format: string;
  readonly value: (cells: DataCells) => number;
  readonly basis: Message;
}

const isInch = (cells: DataCells): boolean => cells.text("length_unit") === "in";
/** A length given in mm, as a round number in the unit of the sheet. */
const inUnit =
  (mm: number, inches: number) =>
  (cells: DataCells): number =>
    isInch(cells) ? inches : cells.text("length_unit") === "cm" ? mm / 10 : mm;

const COMMON = say`common practice, no source`;

/** The default limits: the quantity lies within -+ the limit. */
const LIMITS: readonly Limit[] = [
  {
    name: "limit_mass",
    label: say`Balance, each weighing`,
    unit: "g",
    format: "0.000",
    value: () => 0.01,
    basis: COMMON,
  },
  {
    name: "limit_height",
    label: say`Caliper, initial height`,
    unit: "length_unit",
    format: "0.0000",
    value: inUnit(0.02, 0.001),
    basis: COMMON,
  },
  {
    name: "limit_diameter",
    label: say`Caliper, diameter`,
    unit: "length_unit",
    format: "0.0000",
    value: inUnit(0.02, 0.001),
    basis: COMMON,
  },
  {
    name: "limit_reading",
    label: say`Dial, each reading`,
    unit: "length_unit",
    format: "0.00000",
    value: (cells) => {
      const factor = cells.number("dial_factor");
      // A factor of 1 means a logger: its resolution is not on the sheet.
      return factor === undefined || factor === 1 ? inUnit(0.001, 0.00005)(cells) : factor / 2;
    },
    basis: say`half a division, no source`,
  },
  {
    name: "limit_apparatus",
    label: say`Apparatus deflection`,
    unit: "length_unit",
    format: "0.00000",
    value: inUnit(0.002, 0.0001),
    basis: COMMON,
  },
  {
    name: "limit_gravity",
    label: say`Specific gravity`,
    format: "0.000",
    value: (cells) => (cells.text("specific_gravity_basis").toLowerCase() === "measured" ? 0.02 : 0.05),
    basis: COMMON,
  },
  {
    name: "limit_force",
    label: say`Force, of itself`,
    format: "0.0%",
    value: () => 0.005,
    basis: say`ASTM D2435, from memory`,
  },
];

const COVERAGE_NAME = "limit_coverage";
export const LIMIT_NAMES: readonly string[] = [...LIMITS.map(({ name }) => name), COVERAGE_NAME];
/** The name of the cell beside a limit: who changed it and why. */
export const byOf = (name: string): string => `${name}_by`;
export const whyOf = (name: string): string => `${name}_why`;

const [VALUE, UNIT, U, BASIS, BY, WHY] = [3, 4, 5, 6, 9, 10];

/** A limit with its value unless a person sets another one. */
type Row = Omit<Limit, "value" | "unit"> & { readonly standing: number; readonly unit?: string | undefined };

const rowsOf = (cells: DataCells): readonly Row[] => [
  ...LIMITS.map((limit) => ({ ...limit, standing: limit.value(cells) })),
  {
    name: COVERAGE_NAME,
    label: say`Coverage factor k`,
    format: "0.0",
    standing: 2,
    basis: say`about 95 %; JCGM 100, 6.3.3`,
    unit: undefined,
  },
];

const HEADINGS = [
  [0, say`Input`],
  [VALUE, say`Limit -+`],
  [UNIT, say`Unit`],
  [U, say`u`],
  [BASIS, say`Basis`],
  [BY, say`Set by`],
  [WHY, say`Why`],
] as const;

/** The row of headings, with a cell in every column. */
function headOf(cells: DataCells): CellPlan[] {
  const head = HEADINGS.map(([col, value]): CellPlan => ({
    row: 0,
    col,
    kind: "heading",
    value: cells.words(value),
    ...(col === VALUE || col === U ? { align: "right" } : {}),
  }));
  const filled = Array.from({ length: COLUMNS }, (_, col) => col)
    .filter((col) => !head.some((one) => one.col === col))
    .map((col): CellPlan => ({ row: 0, col, kind: "heading" }));
  return [...head, ...filled];
}

/** The cells of a limit; `set` is what a person set in an earlier report. */
function cellsOf(
  cells: DataCells,
  { name, label, unit, format, standing, basis }: Row,
  set: KeptLimit | undefined,
  row: number,
): CellPlan[] {
  const t = cells.words;
  return [
    { row, col: 0, kind: "label", value: t(label) },
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
    { row, col: BASIS, kind: "label", value: t(set ? say`was ${standing}: ${basis}` : basis) },
    { row, col: BY, kind: "input", value: set?.by, format: "@" },
    { row, col: WHY, kind: "input", value: set?.why, format: "@" },
    { row, col: WHY + 1, kind: "input", format: "@" },
  ];
}

/** The names of the cells of a limit. */
const namesOf = ({ name }: Row, row: number): readonly (readonly [string, Box])[] =>
  (
    [
      [name, VALUE],
      [byOf(name), BY],
      [whyOf(name), WHY],
    ] as const
  ).map(([called, col]) => [called, { row, col, rows: 1, cols: 1 }]);

export function limits(cells: DataCells, kept: Readonly<Record<string, KeptLimit>> = {}): Block[] {
  const t = cells.words;
  const rows = rowsOf(cells);
  const body = rows.flatMap((one, index) => cellsOf(cells, one, kept[one.name], index + 1));
  const names = Object.fromEntries(rows.flatMap((one, index) => namesOf(one, index + 1)));
  return [
    band(t(say`Uncertainty of measurement: limits of error, to be changed here`), { withNext: true }),
    { rows: rows.length + 1, cells: [...headOf(cells), ...body], names, withNext: true },
    ...paragraph(
      t(
        say`A quantity lies anywhere within -+ its limit: its standard uncertainty u is limit / root 3 (JCGM 100:2008, 4.3.7). A deformation is the difference of two readings. Inputs count as independent; first order (5.1.2). Give initials and reason beside a limit that you change: the next report keeps it.`,
      ),
      { kind: "note" },
    ),
    gap,
  ];
}

/** The standard uncertainty that follows from a limit, as an expression. */
export const u = (name: string): string => `({${name}}/SQRT(3))`;
/** The coverage factor, as an expression. */
export const K = `{${COVERAGE_NAME}}`;
