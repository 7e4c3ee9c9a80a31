/** Numbers of the data sheet in the report: live formulas, rounded once, for display, by their number formats. */
import { lengthOfReadings } from "../../record/reading-unit";
import { say } from "../../reduction/message";
import { powerOfTen } from "../../reduction/power-of-ten";
import { shownWords, wordedExpression } from "../../record/shown-words";
import { inFormula } from "../../specification/sentences/told-formula";
import { THREE_FIGURES } from "../../workbook/look/number-format";
import type { CellPlan } from "../../workbook/port";
import type { DataCells } from "./source";

/** Stands in the place of a value that the data sheet does not have; the report says what is missing and why. */
export const NOTHING = "-";

/**
 * An expression for the word of a cell in the language of the report, whatever the language of the sheet; any other text is
 * kept.
 */
export const worded = (cells: DataCells, reference: string, name: string | undefined): string =>
  wordedExpression(reference, name === undefined ? [] : shownWords(name, cells.language, cells.words));

/** Stands in the place of a value if the cell of the data sheet shows an error. */
const errorOf = (cells: DataCells): string => inFormula(cells.words(say`error`));

/** A formula that shows a cell, or "-" if the cell is blank. With the name of the cell, its words are in the language of the report. */
export const shownFormula = (cells: DataCells, reference: string, name?: string): string =>
  `=IFERROR(IF(${reference}="","${NOTHING}",${worded(cells, reference, name)}),${errorOf(cells)})`;

/** A formula that shows an expression, or "error". */
export const orError = (cells: DataCells, expression: string): string => `=IFERROR(${expression},${errorOf(cells)})`;

/**
 * A formula that shows an expression, or "-" if one of the cells that it needs is blank; undefined if the sheet lacks
 * such a cell.
 */
export const worked = (needs: readonly (string | undefined)[], expression: string): string | undefined =>
  needs.some((need) => need === undefined)
    ? undefined
    : `=IFERROR(IF(COUNT(${needs.join(",")})<${needs.length},"${NOTHING}",${expression}),"${NOTHING}")`;

/** Decimals that show a number with a count of significant figures; 0 if its whole part has as many. */
export const decimalsFor = (value: number, figures: number): number =>
  value === 0 ? 0 : Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(value)) + 1e-12));

const decimal = (digits: number): string => (digits > 0 ? `0.${"0".repeat(digits)}` : "0");

/**
 * The format of a number that may span decades (cv, mv, C alpha), by its value when the report was made: two figures,
 * unless more are asked for.
 */
export function twoFigures(value: number | undefined, figures = 2): string {
  if (value === undefined) return "0.00";
  const decimals = decimalsFor(value, figures);
  return decimals > 6 ? "0.0E+00" : decimal(decimals);
}

/**
 * As THREE_FIGURES, but a number below 0.1 with decimals and not with a power, unless it needs more than six: mv is 0.0631 on
 * paper. A number from 10 up has one decimal, and from 100 up none: cv is 14.7 m2/yr, M 2377 kPa. By its value when the report was
 * made.
 */
export function threeFigures(value: number | undefined): string {
  if (!value) return THREE_FIGURES;
  const [size, decimals] = [Math.abs(value), decimalsFor(value, 3)];
  return size >= 10 || (size < 0.1 && decimals <= 6) ? decimal(decimals) : THREE_FIGURES;
}

/**
 * Coefficients of permeability as a table prints them: 3.0 under the unit 10⁻⁹ m/s. No number format of Excel writes a power of
 * ten so, therefore the unit has it: that of the greatest value when the report was made, if it is below 0.001.
 */
export function inPower(cells: DataCells, unit: string, values: readonly number[]) {
  const most = Math.max(0, ...values);
  const power = most > 0 && most < 1e-3 ? Math.floor(Math.log10(most) + 1e-12) : 0;
  const reference = cells.at(unit);
  return {
    unit: power === 0 || !reference ? unit : `="${powerOfTen(power)} "&${reference}`,
    /** The formula of a cell, in the power of the unit. */
    formula: (name: string, row = 0): string | undefined => {
      const shown = cells.at(name, row);
      return shown && (power === 0 ? shownFormula(cells, shown, name) : worked([shown], `${shown}/1E${power}`));
    },
    /** The format of a value: two figures. */
    format: (value: number | undefined): string => twoFigures(value === undefined ? value : value / 10 ** power),
  };
}

/** The format of numbers as they were typed: as many decimals as any of them has, at most four, and the least that is asked for. */
export function typedFormat(values: readonly number[], least = 0): string {
  for (let digits = least; digits < 4; digits++) {
    const scale = 10 ** digits;
    if (values.every((value) => Math.abs(value * scale - Math.round(value * scale)) < 1e-6 * scale))
      return decimal(digits);
  }
  return decimal(4);
}

/** Digits by trade practice: lengths 0.01 mm, densities 0.01 Mg/m3, e 0.001, w 0.1 %, S 1 %, strain 0.01 %, Gs 0.01. */
export const FORMATS = {
  ratio: "0.000",
  gravity: "0.00",
  water: "0.0%",
  saturation: "0%",
  strain: "0.00%",
  temperature: "0.0",
  index: "0.000",
  date: "yyyy-mm-dd",
  mass: "0.00",
} as const;

const BY_UNIT: Readonly<Record<string, string>> = {
  mm: "0.00",
  cm: "0.000",
  in: "0.0000",
  "Mg/m3": "0.00",
  "g/cm3": "0.00",
  "t/m3": "0.00",
  "kN/m3": "0.0",
  pcf: "0.0",
  m: "0.00",
  ft: "0.0",
};

/** The format of a length, density or depth in the sheet's unit. */
export const formatIn = (cells: DataCells, unit: string, otherwise = "0.00"): string =>
  BY_UNIT[cells.text(unit)] ?? otherwise;

/** The format of a deformation, and of a height that follows from one: 0.001 mm, or 0.0001 of another unit. */
export const formatOfDeformation = (cells: DataCells): string =>
  formatIn(cells, "length_unit", "0.000") === "0.00" ? "0.000" : "0.0000";

/** The format of a working height or deflection: a digit more, so that what follows from a difference of two of them follows from print. */
export const formatOfWorking = (cells: DataCells): string => `${formatOfDeformation(cells)}0`;

/** The unit of the readings: divisions, or the length that a reading of a transducer is in. */
export const unitOfReadings = (cells: DataCells): string =>
  lengthOfReadings(cells.source.record) ?? cells.words(say`div`);

/** One item of the report: label, value and unit. */
export interface Shown {
  readonly label: string;
  /** The cell of the data sheet that holds the value. */
  readonly name?: string;
  /** Or a formula for the value; undefined if the sheet lacks a cell that the formula needs. */
  readonly formula?: string | undefined;
  readonly value?: string | number;
  readonly format?: string;
  /** A name of the data sheet whose cell holds the unit, a formula for it, or the unit itself. */
  readonly unit?: string;
  readonly isText?: boolean;
  /** A date needs two columns. */
  readonly isDate?: boolean;
}

/** The cell of a unit: a live formula if the sheet has a cell with the unit, otherwise text. */
export function unitCell(cells: DataCells, unit: string | undefined, row: number, col: number): CellPlan[] {
  if (!unit) return [];
  if (unit.startsWith("=")) return [{ row, col, kind: "unit", formula: unit }];
  const reference = cells.at(unit);
  return [
    {
      row,
      col,
      kind: "unit",
      ...(reference
        ? { formula: `=${worded(cells, reference, unit)}&""` }
        : { value: unit.endsWith("_unit") ? NOTHING : unit }),
    },
  ];
}

/** The cell of a unit that is blank unless a condition holds: no unit stands beside a value that is missing. */
export const unitIf = (
  cells: DataCells,
  condition: string,
  unit: string | undefined,
  row: number,
  col: number,
): CellPlan[] =>
  unitCell(cells, unit, row, col).map(({ value, formula }) => {
    const shown = formula?.slice(1) ?? inFormula(String(value));
    return { row, col, kind: "unit", formula: `=IF(${condition},${shown},"")` };
  });

/** The unit of an item. */
export function unitOf(cells: DataCells, { name, unit }: Shown, row: number, col: number): CellPlan[] {
  if (name === undefined) return unitCell(cells, unit, row, col);
  const reference = cells.at(name);
  return reference ? unitIf(cells, `IFERROR(${reference}<>"",TRUE)`, unit, row, col) : [];
}

/** The cell of an item's value. */
export function shownCell(cells: DataCells, shown: Shown, row: number, col: number): CellPlan {
  const { name, formula, value, format, isText } = shown;
  const reference = name === undefined ? undefined : cells.at(name);
  const content =
    value !== undefined
      ? { value }
      : formula !== undefined
        ? { formula }
        : reference !== undefined
          ? { formula: shownFormula(cells, reference, name) }
          : { value: NOTHING };
  return { row, col, kind: "result", ...(format ? { format } : {}), align: isText ? "left" : "right", ...content };
}
