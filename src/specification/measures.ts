/** What a number on the data sheet measures: the unit that stands beside it and the format it is shown in. */
import { THREE_FIGURES } from "../workbook/number-format";

export type System = "SI" | "US";

/** Cells of the sheet that say a unit. */
export type UnitCell =
  "length_unit" | "stress_unit" | "cv_unit" | "density_unit" | "mv_unit" | "conductivity_unit" | "depth_unit";

interface MeasureSpec {
  /** The cell of the sheet that says the unit, or a fixed unit; "" for a pure number. */
  readonly unit: { readonly cell: UnitCell; readonly per?: string } | string;
  /** Number format; digits follow trade practice (ASTM D6026 leaves them to the laboratory). Absent: as typed. */
  readonly format?: string | Readonly<Record<System, string>>;
}

export const MEASURES = {
  text: { unit: "" },
  date: { unit: "", format: "yyyy-mm-dd" },
  /** Date and time of day. */
  moment: { unit: "", format: "yyyy-mm-dd hh:mm" },
  /** A number, or a word in its place. */
  pick: { unit: "" },
  length: { unit: { cell: "length_unit" }, format: { SI: "0.000", US: "0.0000" } },
  stress: { unit: { cell: "stress_unit" }, format: { SI: "0.0", US: "0.000" } },
  cv: { unit: { cell: "cv_unit" }, format: THREE_FIGURES },
  density: { unit: { cell: "density_unit" }, format: { SI: "0.00", US: "0.0" } },
  compressibility: { unit: { cell: "mv_unit" }, format: THREE_FIGURES },
  /** Length per division of the dial or transducer. */
  factor: { unit: { cell: "length_unit", per: "/div" }, format: "0.0####" },
  conductivity: { unit: { cell: "conductivity_unit" }, format: "0.00E+00" },
  depth: { unit: { cell: "depth_unit" }, format: "0.00" },
  mass: { unit: "g", format: "0.00" },
  percent: { unit: "", format: "0.0%" },
  strain: { unit: "", format: "0.00%" },
  ratio: { unit: "", format: "0.000" },
  small: { unit: "", format: "0.0000" },
  count: { unit: "", format: "0" },
  temperature: { unit: "deg C", format: "0.0" },
  minutes: { unit: "min", format: "0.00" },
  /** Times as typed: 0.1, 1440. */
  time: { unit: "min" },
  /** Dial divisions, or the length itself where the factor is 1, as typed. */
  reading: { unit: "div" },
  /** Readings found by a construction, between divisions. */
  drawn: { unit: "div", format: "0.0##" },
} as const satisfies Record<string, MeasureSpec>;

export type Measure = keyof typeof MEASURES;

const spec = (measure: Measure): MeasureSpec => MEASURES[measure];

/** What the unit cell beside a number holds: a text, or the formula that repeats the sheet's unit cell. */
export function unitOf(measure: Measure): { value: string } | { formula: string } {
  const { unit } = spec(measure);
  if (typeof unit === "string") return { value: unit };
  return { formula: `={${unit.cell}}${unit.per ? `&"${unit.per}"` : ""}` };
}

/** The unit beside a number, by what the cell that says it holds. */
export function unitText(measure: Measure, inCell: (cell: UnitCell) => string): string {
  const { unit } = spec(measure);
  return typeof unit === "string" ? unit : inCell(unit.cell) + (unit.per ?? "");
}

/** The cell that says the unit of a measure; undefined where its unit is fixed. */
export function unitCellOf(measure: Measure): UnitCell | undefined {
  const { unit } = spec(measure);
  return typeof unit === "string" ? undefined : unit.cell;
}

export function formatOf(measure: Measure, system: System): string | undefined {
  const { format } = spec(measure);
  return typeof format === "string" ? format : format?.[system];
}

/** What a person may type where a number of this measure belongs. */
export interface Limits {
  readonly least?: number;
  /** The least itself is refused. */
  readonly above?: boolean;
  readonly most?: number;
}

export const ANY_NUMBER: Limits = {};
const POSITIVE: Limits = { least: 0, above: true };
const NOT_NEGATIVE: Limits = { least: 0 };

/** Days since 1899-12-30 of 1990-01-01 and 2099-12-31. */
export const DATE_LIMITS = { least: 32_874, most: 73_050 } as const;

const LIMITS: Partial<Record<Measure, Limits>> = {
  length: POSITIVE,
  factor: POSITIVE,
  mass: { ...POSITIVE, most: 20_000 },
  stress: NOT_NEGATIVE,
  depth: NOT_NEGATIVE,
  time: NOT_NEGATIVE,
  temperature: { ...POSITIVE, most: 60 },
};

export const limitsOf = (measure: Measure): Limits => LIMITS[measure] ?? ANY_NUMBER;
