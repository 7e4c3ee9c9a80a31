/**
 * Ordinary functions of Excel that the engine lacks and engineers use in sheets of their own. Their answers stand in the table of
 * `test/workbook/embedded/evaluation/ordinary-functions.ts`.
 */
import { addFunction, EvaluationError, helpers } from "@odoo/o-spreadsheet";
import { wordFor } from "../engine-words";
import {
  computeOf,
  errorIn,
  isError,
  isRange,
  numberOf,
  single,
  textIn,
  type Argument,
  type Compute,
  type Held,
} from "./held";

const noAnswer = (code: string): EvaluationError =>
  new EvaluationError(wordFor("The function has no answer for these cells: check them."), code);
export const noNumber = (): EvaluationError => noAnswer("#NUM!");
const noDivision = (): EvaluationError => noAnswer("#DIV/0!");

/** Adds a function. `args` are the engine's own descriptions of arguments: "value (number)". */
function add(name: string, args: readonly string[], description: string, compute: Compute): void {
  addFunction(name, {
    description,
    isExported: true,
    args: args.map((one) => helpers.arg(one, "")),
    // The engine's type of a computation does not tell the arguments of one function.
    compute: compute as never,
  });
}

/** Adds a function of single numbers; an argument that is left out is undefined. */
export function ofNumbers(
  name: string,
  args: readonly string[],
  description: string,
  compute: (...numbers: number[]) => number | EvaluationError,
): void {
  add(name, args, description, function (...given) {
    return compute(...given.map((one) => numberOf(one, this.locale)));
  });
}

/** The numbers of some arguments, as SUM takes them: of a range only numbers, of a single value also a number in a text. */
function numbersIn(given: readonly Argument[], locale: unknown): number[] {
  return given.flatMap((one) => {
    if (one === undefined) return [];
    if (isRange(one) || one.position !== undefined)
      return (isRange(one) ? one.flat() : [one]).flatMap(({ value }) => (typeof value === "number" ? [value] : []));
    return [numberOf(one, locale)];
  });
}

/** Adds a function of all the numbers of its arguments. */
function ofAll(
  name: string,
  description: string,
  compute: (numbers: readonly number[]) => number | EvaluationError,
): void {
  add(name, ["value (number, range<number>, repeating)"], description, function (...given) {
    return errorIn(given) ?? compute(numbersIn(given, this.locale));
  });
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
const mean = (numbers: readonly number[]): number => sum(numbers) / numbers.length;
const deviations = (numbers: readonly number[], power: number): number => {
  const middle = mean(numbers);
  return sum(numbers.map((one) => (one - middle) ** power));
};
/** The standard deviation of a sample. */
const deviation = (numbers: readonly number[]): number => Math.sqrt(deviations(numbers, 2) / (numbers.length - 1));

ofNumbers("SIGN", ["value (number)"], "The sign of a number: 1, 0 or -1.", (value) => Math.sign(value));
ofNumbers("RADIANS", ["angle (number)"], "An angle in degrees as radians.", (angle) => (angle * Math.PI) / 180);
ofNumbers("SQRTPI", ["value (number)"], "The square root of a number times pi.", (value) =>
  value < 0 ? noNumber() : Math.sqrt(value * Math.PI),
);
ofNumbers("MROUND", ["value (number)", "multiple (number)"], "A number rounded to a multiple.", (value, multiple) => {
  if (value * multiple < 0) return noNumber();
  return multiple === 0 ? 0 : Math.round(Number((value / multiple).toPrecision(15))) * multiple;
});
ofNumbers("QUOTIENT", ["value (number)", "divisor (number)"], "The whole part of a division.", (value, divisor) =>
  divisor === 0 ? noDivision() : Math.trunc(value / divisor),
);
ofNumbers(
  "EVEN",
  ["value (number)"],
  "A number rounded away from zero to an even one.",
  (value) => Math.sign(value) * 2 * Math.ceil(Math.abs(value) / 2),
);
const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
ofNumbers("FACT", ["value (number)"], "The factorial of a number.", (value) =>
  value < 0 || value >= 171 ? noNumber() : factorial(Math.trunc(value)),
);
ofNumbers("COMBIN", ["count (number)", "chosen (number)"], "The number of choices among a count.", (count, chosen) => {
  const [n, k] = [Math.trunc(count), Math.trunc(chosen)];
  if (n < 0 || k < 0 || n < k) return noNumber();
  let choices = 1;
  for (let i = 1; i <= k; i++) choices = (choices * (n - k + i)) / i;
  return Math.round(choices);
});
ofNumbers(
  "STANDARDIZE",
  ["value (number)", "mean (number)", "standard_deviation (number)"],
  "The distance of a value from a mean in standard deviations.",
  (value, middle, spread) => (spread <= 0 ? noNumber() : (value - middle) / spread),
);

ofAll("SUMSQ", "The sum of the squares.", (numbers) => sum(numbers.map((one) => one ** 2)));
ofAll("DEVSQ", "The sum of the squares of the deviations from the mean.", (numbers) =>
  numbers.length ? deviations(numbers, 2) : noNumber(),
);
ofAll("GEOMEAN", "The geometric mean.", (numbers) =>
  numbers.length && numbers.every((one) => one > 0) ? Math.exp(mean(numbers.map(Math.log))) : noNumber(),
);
ofAll("HARMEAN", "The harmonic mean.", (numbers) =>
  numbers.length && numbers.every((one) => one > 0) ? 1 / mean(numbers.map((one) => 1 / one)) : noNumber(),
);
ofAll("SKEW", "The skewness of a sample.", (numbers) => {
  const [n, s] = [numbers.length, deviation(numbers)];
  return n < 3 || s === 0 ? noDivision() : (n / (n - 1) / (n - 2)) * (deviations(numbers, 3) / s ** 3);
});
ofAll("KURT", "The excess kurtosis of a sample.", (numbers) => {
  const [n, s] = [numbers.length, deviation(numbers)];
  if (n < 4 || s === 0) return noDivision();
  const below = (n - 2) * (n - 3);
  return ((n * (n + 1)) / (n - 1) / below) * (deviations(numbers, 4) / s ** 4) - (3 * (n - 1) ** 2) / below;
});
for (const name of ["MODE", "MODE.SNGL"])
  ofAll(name, "The value that occurs most often.", (numbers) => {
    const counts = new Map<number, number>();
    for (const one of numbers) counts.set(one, (counts.get(one) ?? 0) + 1);
    let [mode, most] = [0, 0];
    for (const [one, count] of counts) if (count > most) [mode, most] = [one, count];
    return most < 2 ? noAnswer("#N/A") : mode;
  });

add(
  "TRIMMEAN",
  ["data (range<number>)", "share (number)"],
  "The mean without a share of the extreme values.",
  function (data, share) {
    const numbers = numbersIn([data], this.locale).sort((a, b) => a - b);
    const part = Number(single(share)?.value);
    if (!numbers.length || !(part >= 0) || part >= 1) return errorIn([data]) ?? noNumber();
    const off = Math.floor((numbers.length * part) / 2);
    return errorIn([data]) ?? mean(numbers.slice(off, numbers.length - off));
  },
);

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
/** Whole numbers for GCD and LCM: decimals are cut off; undefined if one of them is below 0. */
function wholeNumbers(numbers: readonly number[]): number[] | undefined {
  const whole = numbers.map(Math.trunc);
  return whole.some((one) => one < 0) ? undefined : whole;
}

ofAll("GCD", "The greatest whole number that divides all numbers.", (numbers) => {
  return wholeNumbers(numbers)?.reduce(divisor, 0) ?? noNumber();
});
ofAll("LCM", "The least whole number that all numbers divide.", (numbers) => {
  const whole = wholeNumbers(numbers);
  return whole?.reduce((least, one) => (one === 0 ? 0 : (least / divisor(least, one)) * one), 1) ?? noNumber();
});

/**
 * The share of the data below a value, cut off to `significance` decimals. `ends` is 0 if the least and the greatest value have the
 * ranks 0 and 1, and 1 if they have ranks within.
 */
function percentRank(
  data: readonly number[],
  value: number,
  significance: number,
  ends: 0 | 1,
): number | EvaluationError {
  const sorted = [...data].sort((a, b) => a - b);
  const below = sorted.filter((one) => one <= value).length - 1;
  const [low, high = low] = [sorted[below], sorted[below + 1]];
  if (!(significance >= 1) || sorted.length === 0) return noNumber();
  if (low === undefined || high === undefined || value > Math.max(...sorted)) return noAnswer("#N/A");
  const first = sorted.indexOf(low);
  const place = low === value ? first : below + (value - low) / (high - low);
  const rank = sorted.length === 1 && ends === 0 ? 1 : (place + ends) / (sorted.length - 1 + 2 * ends);
  const scale = 10 ** Math.trunc(significance);
  return Math.floor(rank * scale + 1e-9) / scale;
}

for (const [name, ends] of [
  ["PERCENTRANK", 0],
  ["PERCENTRANK.INC", 0],
  ["PERCENTRANK.EXC", 1],
] as const)
  add(
    name,
    ["data (range<number>)", "value (number)", "significance (number, default=3)"],
    "The share of the data below a value.",
    function (data, value, significance) {
      const wrong = errorIn([data]);
      if (wrong) return wrong;
      const digits = significance === undefined ? 3 : numberOf(significance, this.locale);
      return percentRank(numbersIn([data], this.locale), numberOf(value, this.locale), digits, ends);
    },
  );

/** Functions under their newer names. */
for (const [name, older, ...args] of [
  ["FORECAST.LINEAR", "FORECAST", "x (number, range<number>)", "data_y (range<number>)", "data_x (range<number>)"],
  ["RANK.EQ", "RANK", "value (number)", "data (range)", "is_ascending (boolean, default=FALSE)"],
] as const)
  add(name, args, `The same as ${older}.`, computeOf(older));

add(
  "RANK.AVG",
  ["value (number)", "data (range)", "is_ascending (boolean, default=FALSE)"],
  "The rank of a value; equal values share the mean of their ranks.",
  function (value, data, isAscending) {
    const rank = computeOf("RANK").call(this, value, data, ...(isAscending === undefined ? [] : [isAscending]));
    const equal = numbersIn([data], this.locale).filter((one) => one === single(value)?.value).length;
    return typeof rank === "number" ? rank + (equal - 1) / 2 : rank;
  },
);

/** The first cell of an argument; a blank one is null. */
const firstIn = (given: Argument): Held | undefined => (isRange(given) ? given[0]?.[0] : given);

add("N", ["value (any, range)"], "A value as a number: a text counts as 0.", (given) => {
  const cell = firstIn(given);
  if (cell && isError(cell)) return cell;
  return typeof cell?.value === "number" ? { value: cell.value } : cell?.value === true ? 1 : 0;
});
add("T", ["value (any, range)"], "A value if it is a text, otherwise an empty text.", (given) => {
  const cell = firstIn(given);
  if (cell && isError(cell)) return cell;
  return typeof cell?.value === "string" ? cell.value : "";
});

/** Excel's errors by their numbers (Microsoft, ERROR.TYPE; from memory), with the engine's own codes for them. */
const ERROR_NUMBERS: Readonly<Record<string, number>> = {
  ...{ "#NULL!": 1, "#DIV/0!": 2, "#VALUE!": 3, "#ERROR": 3, "#REF!": 4, "#REF": 4, "#NAME?": 5, "#BAD_EXPR": 5 },
  ...{ "#NUM!": 6, "#N/A": 7, "#SPILL!": 9, "#CALC!": 14 },
};
add("ERROR.TYPE", ["error (any, range)"], "The number of an error; #N/A for another value.", (given) => {
  const { value } = firstIn(given) ?? {};
  return ERROR_NUMBERS[String(value)] ?? noAnswer("#N/A");
});

/** A cell of Excel holds no longer text. */
const LONGEST = 32_767;
add("REPT", ["text (string)", "times (number)"], "A text repeated.", function (text, times) {
  const count = Math.trunc(numberOf(times, this.locale));
  const one = textIn(text);
  return count < 0 || one.length * count > LONGEST ? noAnswer("#VALUE!") : one.repeat(count);
});
for (const name of ["CODE", "UNICODE"])
  add(name, ["text (string)"], "The number of the first character of a text.", (text) => {
    return textIn(text).codePointAt(0) ?? noAnswer("#VALUE!");
  });
add("UNICHAR", ["number (number)"], "The character of a number.", function (number) {
  const code = numberOf(number, this.locale);
  return code < 1 || code > 0x10ffff ? noAnswer("#VALUE!") : String.fromCodePoint(Math.trunc(code));
});

add(
  "FIXED",
  ["value (number)", "places (number, default=2)", "no_commas (boolean, default=FALSE)"],
  "A number as a text with fixed decimal places.",
  function (value, places, noCommas) {
    const digits = Math.trunc(Number(single(places)?.value ?? 2));
    const rounded = computeOf("ROUND").call(this, value, { value: digits });
    const format = `${single(noCommas)?.value === true ? "0" : "#,##0"}${digits > 0 ? `.${"0".repeat(digits)}` : ""}`;
    // ROUND answers with a cell, or with a bare number.
    const cell = typeof rounded === "object" && rounded !== null ? (rounded as Held) : { value: rounded };
    return computeOf("TEXT").call(this, cell, { value: format });
  },
);

add(
  "NUMBERVALUE",
  ["text (string)", "decimal_sign (string, optional)", "group_sign (string, optional)"],
  "The number that a text shows, with the signs given, or with those of the workbook.",
  function (text, decimal, group) {
    const word = (given: Argument, other: string) => (given === undefined ? other : textIn(given).slice(0, 1));
    // The engine's type of a locale is its own.
    const isPoint = (this.locale as { readonly decimalSeparator: string }).decimalSeparator !== ",";
    const [point, comma] = [word(decimal, isPoint ? "." : ","), word(group, isPoint ? "," : ".")];
    const [whole = "", ...rest] = textIn(text).replace(/\s/g, "").split(point);
    const plain = [whole.split(comma).join(""), ...rest].join(".");
    const [, digits = "", percents = ""] = /^(.*?)(%*)$/.exec(plain) ?? [];
    const number = Number(digits) / 100 ** percents.length;
    return Number.isFinite(number) ? number : noAnswer("#VALUE!");
  },
);

add(
  "XMATCH",
  [
    "search_key (string, number, boolean)",
    "lookup_range (any, range)",
    "match_mode (any, default=0)",
    "search_mode (any, default=1)",
  ],
  "The position of a value in a row or a column.",
  function (key, range, mode, search) {
    const columns = isRange(range) ? range : [[range ?? { value: null }]];
    let count = 0;
    const places = columns.map((column) => column.map(() => ({ value: ++count })));
    return computeOf("XLOOKUP").call(
      this,
      key,
      columns,
      places,
      undefined,
      mode ?? { value: 0 },
      search ?? { value: 1 },
    );
  },
);
