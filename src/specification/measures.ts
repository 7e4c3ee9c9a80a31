/** The measure of each number on the data sheet: its unit, which stands beside it, and its number format. */
import { LEVELS, THREE_FIGURES } from "../workbook/look/number-format";

export type System = "SI" | "US";

/** The cells of the sheet that contain a unit. */
export type UnitCell =
  "length_unit" | "stress_unit" | "cv_unit" | "density_unit" | "mv_unit" | "conductivity_unit" | "depth_unit";

interface MeasureSpec {
  /**
   * The cell of the sheet that contains the unit, or a fixed unit; "" for a pure number. `unlessOne` is the unit of readings
   * whose dial factor is not 1; readings with a factor of 1 are lengths, in the unit of the cell.
   */
  readonly unit: { readonly cell: UnitCell; readonly per?: string; readonly unlessOne?: string } | string;
  /**
   * The number format. The digits follow trade practice (ASTM D6026 leaves them to the laboratory). If it is left out,
   * the cell shows the number as it was typed.
   */
  readonly format?: string | Readonly<Record<System, string>>;
}

/** The cell with the unit of each measure whose unit a person chooses. */
const UNIT_CELLS = {
  length: "length_unit",
  stress: "stress_unit",
  cv: "cv_unit",
  density: "density_unit",
  compressibility: "mv_unit",
  factor: "length_unit",
  conductivity: "conductivity_unit",
  depth: "depth_unit",
} as const satisfies Readonly<Record<string, UnitCell>>;

/** The cell with the length of one division. */
const FACTOR = "dial_factor";

/** Readings are divisions of the dial; with a dial factor of 1 they are lengths. */
const OF_READINGS = { cell: UNIT_CELLS.length, unlessOne: "div" } as const;

export const MEASURES = {
  text: { unit: "" },
  date: { unit: "", format: "yyyy-mm-dd" },
  /** A date with the time of day. */
  moment: { unit: "", format: "yyyy-mm-dd hh:mm" },
  /** A date with the time of day in a narrow column; the year stands with the dates of the test. */
  applied: { unit: "", format: "d mmm hh:mm" },
  /** A number, or a word instead of it. */
  pick: { unit: "" },
  length: { unit: { cell: UNIT_CELLS.length }, format: { SI: "0.000", US: "0.0000" } },
  stress: { unit: { cell: UNIT_CELLS.stress }, format: { SI: "0.0", US: "0.000" } },
  cv: { unit: { cell: UNIT_CELLS.cv }, format: THREE_FIGURES },
  density: { unit: { cell: UNIT_CELLS.density }, format: { SI: "0.00", US: "0.0" } },
  compressibility: { unit: { cell: UNIT_CELLS.compressibility }, format: THREE_FIGURES },
  /** The length of one division of the dial or transducer. */
  factor: { unit: { cell: UNIT_CELLS.factor, per: "/div" }, format: "0.0####" },
  conductivity: { unit: { cell: UNIT_CELLS.conductivity }, format: "0.00E+00" },
  depth: { unit: { cell: UNIT_CELLS.depth }, format: "0.00" },
  mass: { unit: "g", format: "0.00" },
  percent: { unit: "", format: "0.0%" },
  strain: { unit: "", format: "0.00%" },
  ratio: { unit: "", format: "0.000" },
  small: { unit: "", format: "0.0000" },
  /** A pure number as a person typed it. */
  typed: { unit: "" },
  count: { unit: "", format: "0" },
  temperature: { unit: "deg C", format: "0.0" },
  minutes: { unit: "min", format: "0.00" },
  /** Times as a person types them: 0.1, 1440. */
  time: { unit: "min" },
  /** A reading as a person typed it: in divisions of the dial, or in units of length if the factor is 1. */
  reading: { unit: OF_READINGS },
  /**
   * Readings that a construction finds, between two steps of the dial: readings of 100 and more are divisions, and smaller ones
   * may be millimetres or, on a US sheet below 2, inches. A format cannot follow the unit.
   */
  drawn: { unit: OF_READINGS, format: LEVELS },
} as const satisfies Record<string, MeasureSpec>;

export type Measure = keyof typeof MEASURES;

const spec = (measure: Measure): MeasureSpec => MEASURES[measure];

/** The content of the unit cell beside a number: a text, or a formula that repeats the unit cell of the sheet. */
export function unitOf(measure: Measure): { value: string } | { formula: string } {
  const { unit } = spec(measure);
  if (typeof unit === "string") return { value: unit };
  if (unit.unlessOne) return { formula: `=IF({${FACTOR}}=1,{${unit.cell}},"${unit.unlessOne}")` };
  return { formula: `={${unit.cell}}${unit.per ? `&"${unit.per}"` : ""}` };
}

/** The unit beside a number. `inCell` gives the content of a unit cell, or of the cell with the dial factor. */
export function unitText(measure: Measure, inCell: (cell: UnitCell | typeof FACTOR) => string): string {
  const { unit } = spec(measure);
  if (typeof unit === "string") return unit;
  return unit.unlessOne && inCell(FACTOR) !== "1" ? unit.unlessOne : inCell(unit.cell) + (unit.per ?? "");
}

const hasUnitCell = (measure: Measure): measure is keyof typeof UNIT_CELLS => measure in UNIT_CELLS;

/** The cell that contains the unit of a measure; undefined if the unit is fixed. */
export const unitCellOf = (measure: Measure): UnitCell | undefined =>
  hasUnitCell(measure) ? UNIT_CELLS[measure] : undefined;

export function formatOf(measure: Measure, system: System): string | undefined {
  const { format } = spec(measure);
  return typeof format === "string" ? format : format?.[system];
}

/** The numbers that a person may type for this measure. */
export interface Limits {
  readonly least?: number;
  /** True if `least` itself is refused. */
  readonly above?: boolean;
  readonly most?: number;
}

/**
 * The greatest numbers that can be, whatever the unit of the cell: each is generous in the smallest unit of its list. Common
 * practice, no source.
 */
export const MOST = {
  /** No specimen has 1 m, in mm. */
  length: 1000,
  /** 120 MPa in lb/ft2; frames reach 10 to 50 MPa. */
  stress: 2_500_000,
  /** No hole is as deep, in feet. */
  depth: 50_000,
  /** 19 years in minutes. */
  time: 10_000_000,
  /** A converter of 24 bits counts to 17 million. */
  reading: 100_000_000,
  /** 3 m2/s in m2/yr: no clay, nor sand. */
  cv: 100_000_000,
  ratio: 1000,
} as const;

export const positive = (most: number): Limits => ({ least: 0, above: true, most });
const notNegative = (most: number): Limits => ({ least: 0, most });
export const eitherSign = (most: number): Limits => ({ least: -most, most });

/** The dates 1990-01-01 and 2099-12-31 in days since 1899-12-30. */
export const DATE_LIMITS = { least: 32_874, most: 73_050 } as const;

const LIMITS: Partial<Record<Measure, Limits>> = {
  length: positive(MOST.length),
  factor: positive(MOST.length),
  mass: positive(20_000),
  stress: notNegative(MOST.stress),
  depth: notNegative(MOST.depth),
  time: notNegative(MOST.time),
  reading: eitherSign(MOST.reading),
  temperature: positive(60),
};

/** True for a date, with or without the time of day. */
export const isDate = (measure: Measure): boolean => ["date", "moment", "applied"].includes(measure);

export const limitsOf = (measure: Measure): Limits => LIMITS[measure] ?? {};
