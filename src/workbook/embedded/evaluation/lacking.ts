/**
 * A formula that the engine cannot read has no value on this page, and so has no formula that reads it: IFERROR, COUNT or SUMIF would take its
 * error for an answer, and show a number that Excel does not show. Such formulas are said to lack a value.
 * Casts: the code of a formula is a function of the formula that it belongs to, which the engine's type leaves out.
 */
import { EvaluationError } from "@odoo/o-spreadsheet";
import { wordFor } from "../engine-words";
import type { Execute } from "./branches";

interface Cell {
  readonly type?: string;
  readonly errorOriginPosition?: object;
}

/** The places of formulas that could not be read, as the errors name them from which other errors come. */
const origins = new WeakSet<object>();

/** Where the value that the formula lacks which is evaluated now would come from. */
let missing: object | undefined;

/** The error of a formula that cannot be read. */
export function lacking(
  error: EvaluationError,
  { __originCellPosition: place }: { readonly __originCellPosition?: object },
): EvaluationError {
  if (!place) return error;
  const origin = { ...place };
  origins.add(origin);
  return Object.assign(error, { errorOriginPosition: origin });
}

/** Whether a cell lacks a value because a formula could not be read. */
const lacks = ({ type, errorOriginPosition: origin }: Cell): boolean =>
  type === "error" && origin !== undefined && origins.has(origin);

/** Tells that the formula which is evaluated now has read a cell. */
export function noteRead(cell: Cell): void {
  if (lacks(cell)) missing ??= cell.errorOriginPosition;
}

/** By a range that was read: where the value comes from that one of its cells lacks. */
const missingIn = new WeakMap<object, object>();

/** Tells that the formula which is evaluated now has read the cells of a range. */
export function noteRange(cells: object): void {
  missing ??= missingIn.get(cells);
}

/**
 * Reads the cells of a range, and notes none of those that are evaluated meanwhile: one that was evaluated before may stand before them.
 * `noteRange` notes the first of all.
 */
export function withoutNotes<T>(read: () => T): T {
  const before = missing;
  try {
    return read();
  } finally {
    missing = before;
  }
}

/** Looks through the cells of a range, and gives them. Of a range beyond its sheet some may be missing. The first cell without a value counts. */
export function looked<T extends readonly (readonly (Cell | undefined)[])[]>(columns: T): T {
  for (const column of columns) {
    const first = column.find((cell) => cell && lacks(cell));
    if (!first?.errorOriginPosition) continue;
    missingIn.set(columns, first.errorOriginPosition);
    break;
  }
  return columns;
}

const noValue = (origin: object): EvaluationError =>
  Object.assign(
    new EvaluationError(wordFor("The sheet on this page cannot calculate a cell on which this one depends."), "#NAME?"),
    { errorOriginPosition: origin },
  );

/** The code of a formula; it answers with an error if the formula has read a cell that lacks a value. */
export const watched = (execute: Execute): Execute =>
  function (this: unknown, dependencies, reference, range, getSymbolValue, context) {
    const outer = missing;
    missing = undefined;
    try {
      const found = execute.call(this as never, dependencies, reference, range, getSymbolValue, context);
      return missing === undefined ? found : noValue(missing);
    } catch (error) {
      if (missing !== undefined) return noValue(missing);
      throw error;
    } finally {
      missing = outer;
    }
  };
