/**
 * AGGREGATE, which the engine lacks (Microsoft, "AGGREGATE function": the numbers of its functions and options; that #VALUE! follows where
 * the second argument of a function is missing). Rows that a filter hides count as hidden ones (from memory).
 */
import { addFunction, EvaluationError, helpers } from "@odoo/o-spreadsheet";
import { wordFor } from "../engine-words";
import type { Place } from "./engine-parts";
import { computeOf, isError, isRange, numberOf, type Argument, type Compute, type Held } from "./held";

/** The functions by their number, from 1 on; those from LARGE on take a second argument, and arrays. */
const FUNCTIONS = [
  ...["AVERAGE", "COUNT", "COUNTA", "MAX", "MIN", "PRODUCT", "STDEV.S", "STDEV.P", "SUM", "VAR.S", "VAR.P", "MEDIAN"],
  ...["MODE.SNGL", "LARGE", "SMALL", "PERCENTILE.INC", "QUARTILE.INC", "PERCENTILE.EXC", "QUARTILE.EXC"],
];
const FIRST_OF_ARRAYS = FUNCTIONS.indexOf("LARGE");

const noAnswer = (): EvaluationError =>
  new EvaluationError(wordFor("The function has no answer for these cells: check them."), "#VALUE!");

/** What the engine gives to the computation of a function. */
interface Context {
  readonly locale: unknown;
  readonly getters: {
    isRowHidden(sheetId: string, row: number): boolean;
    getCorrespondingFormulaCell(
      place: Place,
    ): { readonly compiledFormula: { readonly symbols: readonly string[] } } | undefined;
  };
}

/** What is left out by each option from 0 to 7. */
const isHiddenLeftOut = (option: number): boolean => option % 2 === 1;
const areErrorsLeftOut = (option: number): boolean => option % 4 >= 2;
const isNestedLeftOut = (option: number): boolean => option < 4;

/** Whether a cell counts with an option; the cells of a calculated array have no place, and count. */
function counts(cell: Held, option: number, { getters }: Context): boolean {
  if (areErrorsLeftOut(option) && isError(cell)) return false;
  // The engine's cells have their place.
  const place = cell.position as Place | undefined;
  if (!place) return true;
  if (isHiddenLeftOut(option) && getters.isRowHidden(place.sheetId, place.row)) return false;
  if (!isNestedLeftOut(option)) return true;
  const formula = getters.getCorrespondingFormulaCell(place)?.compiledFormula;
  return !formula?.symbols.some((name) => /^(?:SUBTOTAL|AGGREGATE)$/i.test(name));
}

const compute: Compute = function (number, option, ...given) {
  // The engine calls every computation with its context.
  const context = this as Context;
  const at = Math.trunc(numberOf(number, this.locale)) - 1;
  const left = option === undefined ? 0 : Math.trunc(numberOf(option, this.locale));
  const name = FUNCTIONS[at];
  const isOfArrays = at >= FIRST_OF_ARRAYS;
  const references: readonly Argument[] = isOfArrays ? given.slice(0, 1) : given;
  const cells = references.flatMap((one): readonly Held[] => (isRange(one) ? one.flat() : one ? [one] : []));
  const isReference = isOfArrays || cells.every(({ position }) => position !== undefined);
  if (!name || left < 0 || left > 7 || !isReference || (isOfArrays && given.length !== 2)) return noAnswer();
  const counted = cells.filter((cell) => counts(cell, left, context));
  const column = counted.length > 0 ? counted : [{ value: null }];
  return counted.find(isError) ?? computeOf(name).call(this, [column], ...(isOfArrays ? [given[1]] : []));
};

addFunction("AGGREGATE", {
  description: "A sum, mean, greatest value and so on of cells, without hidden rows, errors or nested subtotals.",
  isExported: true,
  args: [
    ...["function_number (number)", "options (number)", "ref (any, range<any>)"],
    "further_ref (any, range<any>, repeating, optional)",
  ].map((one) => helpers.arg(one, "")),
  // The engine's type of a computation does not tell the arguments of one function.
  compute: compute as never,
});
