/**
 * Cells in: what Excel and the embedded sheet hand over, made plain.
 *
 * Excel on the desktop hands a blank cell over as 0, the web as null or "". What cannot be used is thrown as a
 * `CellError`, which the sheet shows as #VALUE! with its message.
 */
import { convert, UNITS, type Quantity } from "../reduction/units";

/** An error as a cell shows it: the code, and the message that its hover text carries. */
export class CellError extends Error {
  constructor(
    readonly code: "#VALUE!" | "#N/A",
    message: string,
  ) {
    super(message);
    this.name = "CellError";
  }
}

export const refuseCell = (message: string): never => {
  throw new CellError("#VALUE!", message);
};

/** A number, or null for a blank cell. */
export type Cell = number | null;

const isBlank = (cell: unknown): boolean =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

const shown = (cell: unknown): string => {
  if (typeof cell === "string") return `the text "${cell.length > 30 ? `${cell.slice(0, 30)}…` : cell}"`;
  if (typeof cell === "boolean") return `the logical value ${cell ? "TRUE" : "FALSE"}`;
  return "an error value";
};

/** One cell of a range, as a number or blank. `where` names it in messages: "row 3 of the times". */
export function toCell(cell: unknown, where: string): Cell {
  if (isBlank(cell)) return null;
  if (typeof cell === "number" && Number.isFinite(cell)) return cell;
  return refuseCell(`${where} holds ${shown(cell)} where a number is needed: correct or clear that cell`);
}

const single = (argument: unknown): unknown => {
  while (Array.isArray(argument) && argument.length === 1) argument = argument[0];
  return argument;
};

/** Whether an optional argument was left out (omitted, null, or a blank string). */
export const isOmitted = (argument: unknown): boolean => isBlank(single(argument));

/** A required number. `name` is the trade's word for it: "the ring mass". */
export function toNumber(argument: unknown, name: string): number {
  const value = single(argument);
  if (Array.isArray(value))
    return refuseCell(`${name} is a range of cells where one number is needed: choose one cell`);
  return toCell(value, name) ?? refuseCell(`${name} is blank: enter a number`);
}

/** A required number greater than zero. */
export function toPositive(argument: unknown, name: string): number {
  const value = toNumber(argument, name);
  return value > 0 ? value : refuseCell(`${name} is ${value}: it must be greater than zero`);
}

/** An optional number greater than zero; a blank cell, or the 0 that desktop Excel makes of one, counts as left out. */
export function toOptionalPositive(argument: unknown, name: string): number | undefined {
  if (isOmitted(argument) || single(argument) === 0) return undefined;
  return toPositive(argument, name);
}

/** An optional number; left out gives undefined. */
export function toOptionalNumber(argument: unknown, name: string): number | undefined {
  return isOmitted(argument) ? undefined : toNumber(argument, name);
}

/** One of the words in `choices`, spelt in any case; left out gives `fallback`. */
export function toChoice<T extends string>(argument: unknown, name: string, choices: readonly T[], fallback: T): T {
  if (isOmitted(argument)) return fallback;
  const value = single(argument);
  const found = choices.find((choice) => choice.toLowerCase() === String(value).trim().toLowerCase());
  return found ?? refuseCell(`${name} is ${JSON.stringify(value)}: use one of ${choices.join(", ")}`);
}

/** A unit of the quantity; left out gives `fallback`. */
export const toUnit = (argument: unknown, quantity: Quantity, fallback: string): string =>
  toChoice(argument, `the ${quantity} unit`, Object.keys(UNITS[quantity]), fallback);

/** A length argument in mm. */
export const toMillimetres = (argument: unknown, name: string, unit: string): number =>
  convert(toPositive(argument, name), "length", unit, "mm");

/** A column or a row of cells as one list; a scalar is a list of one. `name` is plural: "the times". */
export function toSeries(argument: unknown, name: string): Cell[] {
  if (!Array.isArray(argument)) return [toCell(argument, `row 1 of ${name}`)];
  const rows = argument.length > 0 && Array.isArray(argument[0]) ? (argument as unknown[][]) : [argument as unknown[]];
  if (rows.length > 1 && rows.some((row) => row.length > 1))
    return refuseCell(
      `${name} must be one column or one row: the range has ${rows.length} rows and ${rows[0].length} columns`,
    );
  const flat = rows.length > 1 ? rows.map((row) => row[0]) : rows[0];
  const word = rows.length > 1 ? "row" : "cell";
  return flat.map((cell, index) => toCell(cell, `${word} ${index + 1} of ${name}`));
}

/** Two series that pair by position. */
export function toPair(first: unknown, firstName: string, second: unknown, secondName: string): [Cell[], Cell[]] {
  const a = toSeries(first, firstName);
  const b = toSeries(second, secondName);
  if (a.length !== b.length)
    return refuseCell(
      `${firstName} have ${a.length} cells and ${secondName} have ${b.length}: choose two ranges of the same length`,
    );
  return [a, b];
}
