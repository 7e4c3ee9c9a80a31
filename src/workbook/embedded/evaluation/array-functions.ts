/**
 * FILTER, SORT and SORTBY with the arguments that they have in Excel. In the engine further arguments of FILTER are conditions, where Excel's
 * third is the answer if nothing is left; an order of -1 counts as ascending in SORT; and SORTBY is missing. Arguments by Microsoft's pages
 * of the three functions (from memory).
 * Casts: the engine's type of a computation does not tell the arguments of one function.
 */
import { EvaluationError, helpers } from "@odoo/o-spreadsheet";
import { wordFor } from "../engine-words";
import {
  computeOf,
  errorIn,
  functionRegistry,
  isRange,
  numberOf,
  single,
  type Argument,
  type Compute,
  type Held,
} from "./held";

type Table = readonly (readonly Held[])[];

/** Excel's error for an array without cells. */
const noCells = (): EvaluationError =>
  new EvaluationError(
    wordFor("Nothing is left of the array: give FILTER a third argument, which is shown then."),
    "#CALC!",
  );

const noAnswer = (): EvaluationError =>
  new EvaluationError(wordFor("The function has no answer for these cells: check them."), "#VALUE!");

/** Columns of cells. */
const tableOf = (given: Argument): Table => (isRange(given) ? given : [[given ?? { value: null }]]);
const heightOf = (table: Table): number => table[0]?.length ?? 0;
const turned = (table: Table): Table =>
  Array.from({ length: heightOf(table) }, (_, row) => table.map((column) => column[row] ?? { value: null }));

/** Gives a function the arguments that it has in Excel. `args` are the engine's own descriptions of arguments. */
function define(name: string, args: readonly string[], description: string, compute: Compute): void {
  const given = args.map((one) => helpers.arg(one, ""));
  const definition = { description, isExported: true, args: given, compute: compute as never };
  if (functionRegistry.contains(name)) functionRegistry.replace(name, definition);
  else functionRegistry.add(name, definition);
}

const filterAll = computeOf("FILTER");
define(
  "FILTER",
  ["array (any, range<any>)", "include (any, range<any>)", "if_empty (any, range<any>, optional)"],
  "The rows or columns of an array for which the second argument is true; the third if there are none.",
  function (array, include, ifEmpty) {
    const asked = tableOf(include);
    const error = errorIn([include]);
    if (error) return error;
    if (asked.flat().some(({ value }) => typeof value === "string")) return noAnswer();
    const found = filterAll.call(this, array, include);
    // The engine answers #N/A where nothing is left; conditions of another size are another error.
    const isNone = found instanceof EvaluationError && found.value === "#N/A";
    return isNone ? (ifEmpty ?? noCells()) : found;
  },
);

const sortRows = computeOf("SORT");

/** The order of a sort as the engine wants it; undefined if it is neither 1 nor -1. */
function isAscending(order: Argument, locale: unknown): Held | undefined {
  const number = order === undefined ? 1 : numberOf(order, locale);
  return number === 1 || number === -1 ? { value: number === 1 } : undefined;
}

const cellsIn = (given: Argument): Argument[] => (given === undefined ? [] : tableOf(given).flat());

define(
  "SORT",
  [
    "array (any, range<any>)",
    "sort_index (number, range<number>, optional)",
    "sort_order (number, range<number>, optional)",
    "by_col (boolean, default=FALSE)",
  ],
  "An array sorted by one or more of its columns: 1 ascending, -1 descending.",
  function (array, index, order, byColumn) {
    const isTurned = Boolean(single(byColumn)?.value);
    const table = isTurned ? turned(tableOf(array)) : tableOf(array);
    const indices = index === undefined ? [{ value: 1 }] : cellsIn(index);
    const orders = cellsIn(order);
    const criteria = indices.flatMap((one, at) => [one, isAscending(orders.length > 1 ? orders[at] : orders[0], this.locale)]); // prettier-ignore
    const isWithin = (one: Argument): boolean => {
      const number = numberOf(one, this.locale);
      return number >= 1 && number <= table.length;
    };
    if (!criteria.every(Boolean) || !indices.every(isWithin)) return noAnswer();
    const sorted = sortRows.call(this, table, ...criteria) as Table;
    return isTurned ? turned(sorted) : sorted;
  },
);

define(
  "SORTBY",
  [
    "array (any, range<any>)",
    "by_array (any, range<any>)",
    "sort_order (number, optional)",
    "further_array (any, range<any>, repeating, optional)",
    "further_order (number, repeating, optional)",
  ],
  "An array sorted by the values of other columns or rows: 1 ascending, -1 descending.",
  function (array, ...given) {
    const keys = given.filter((_, at) => at % 2 === 0).map(tableOf);
    // The keys lie in rows if the first does: then the columns are sorted.
    const isTurned = (keys[0]?.length ?? 0) > 1;
    const table = isTurned ? turned(tableOf(array)) : tableOf(array);
    const columns = keys.map((key) => (isTurned ? turned(key) : key));
    const orders = columns.map((_, at) => isAscending(given[2 * at + 1], this.locale));
    if (columns.some((key) => key.length !== 1 || heightOf(key) !== heightOf(table))) return noAnswer();
    if (!orders.every(Boolean)) return noAnswer();
    if (heightOf(table) === 1) return array;
    const sorted = sortRows.call(this, table, ...columns.flatMap((key, at) => [key, orders[at]])) as Table;
    return isTurned ? turned(sorted) : sorted;
  },
);
