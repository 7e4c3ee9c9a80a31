/**
 * Turns the arguments that Excel and the embedded sheet pass into plain values.
 *
 * A blank cell arrives as 0 from desktop Excel and as null or "" from the web. So a blank counts as 0 where one number
 * is needed, and 0 counts as blank where zero means nothing (a mass, a height, a unit): the answer is the same in both.
 * An omitted argument arrives as undefined or null. Cells of a range keep their blanks as null, and the reduction
 * decides what a zero in a series means. A value that cannot be used throws a `CellError`, which the sheet shows as
 * #VALUE! with its message.
 */
import { english, listed, say, verbatim, type Message } from "../reduction/message";
import { firstOf } from "../reduction/numeric/lists";
import { notPositive } from "../reduction/outcome";
import { convert, unitNamed, unitsOf, type Quantity } from "../reduction/units";
import { englishWord, languageOfWord } from "../record/cells";

/** The error that a cell shows: its code, and the reason, whose words are its hover text. */
export class CellError extends Error {
  constructor(
    readonly code: "#VALUE!" | "#N/A",
    readonly reason: Message,
  ) {
    super(english(reason));
    this.name = "CellError";
  }
}

export const refuseCell = (reason: Message): never => {
  throw new CellError("#VALUE!", reason);
};

/** A number, or null for a blank cell. */
export type Cell = number | null;

/** A cell that a function cannot use: what the cell holds, and the remedy. */
class Unusable {
  constructor(
    readonly complaint: Message,
    /** The error code, if the cell holds an error. */
    readonly code?: string,
  ) {}
}

const ERROR_CODE = /^#[A-Z][A-Z0-9_/]*[!?]?$/;
const errorCell = (code: unknown): Unusable =>
  new Unusable(
    ERROR_CODE.test(String(code))
      ? say`the error ${verbatim(String(code))}: correct that cell first`
      : say`the error of another formula: correct that cell first`,
    String(code),
  );

/**
 * Whether a number format shows a date or a clock time. Quoted, escaped and bracketed parts are words, not format
 * codes.
 */
const showsTime = (format: unknown): boolean =>
  typeof format === "string" &&
  /[ymdhs]/i.test(format.replace(/"[^"]*"|\\.|\[(?!h+\]|m+\]|s+\])[^\]]*\]|General/gi, ""));

const isBlank = (value: unknown): boolean =>
  value === null || value === undefined || (typeof value === "string" && value.trim() === "");

/**
 * The plain value of a cell. Excel passes a cell that holds an error, a formatted number or a data card as an object:
 * `basicValue` is the value that the cell would show. Sources: @types/office-js, `Excel.CellValue`;
 * `CustomFunctions.Error`.
 */
function plain(cell: unknown): unknown {
  if (typeof cell === "string" && ERROR_CODE.test(cell)) return errorCell(cell);
  if (typeof cell !== "object" || cell === null || cell instanceof Unusable) return cell;
  if (cell instanceof Date) return new Unusable(say`a date where a number is needed: enter a plain number`);
  // The type of the object is unknown, so its properties are read by name.
  const { type, basicType, basicValue, numberFormat, code } = cell as Record<string, unknown>;
  if (type === "Error" || code !== undefined || cell instanceof Error) return errorCell(basicValue ?? code);
  if (basicType === "Error" || basicValue === undefined)
    return new Unusable(say`a data card where a number is needed: correct or clear that cell`);
  if (typeof basicValue === "number" && showsTime(numberFormat))
    return new Unusable(
      say`a date or a clock time where a number is needed: reformat as a number and re-enter, times in minutes`,
    );
  return plain(basicValue);
}

/** Says why a value is not a number; the message continues "... holds". */
function complaint(value: unknown): Message {
  if (value instanceof Unusable) return value.complaint;
  if (typeof value === "boolean")
    return say`the logical value ${verbatim(value ? "TRUE" : "FALSE")} where a number is needed: correct or clear that cell`;
  if (typeof value !== "string") return say`no finite number: correct that cell`;
  const text = value.trim();
  const quoted = say`the text "${verbatim(text.length > 30 ? `${text.slice(0, 30)}…` : text)}"`;
  if (Number.isFinite(Number(text))) return say`${verbatim(text)} stored as text: re-enter as a number`;
  if (/^[+-]?[\d.,'’\s]*\d[\d.,'’\s]*(e[+-]?\d+)?$/i.test(text))
    return say`${quoted}, which is not a number here: re-enter as a number, with this workbook's decimal sign and no spaces`;
  if (/^[+-]?[\d.,\s]*\d\s*[a-z%°"']/i.test(text)) return say`${quoted}: re-enter as a number alone, without the unit`;
  return say`${quoted} where a number is needed: correct or clear that cell`;
}

/** One cell of a range, as a number or blank. `where` names it in messages: "row 3 of the times". */
export function toCell(cell: unknown, where: Message): Cell {
  const value = plain(cell);
  if (isBlank(value)) return null;
  if (typeof value === "number" && Number.isFinite(value)) return value;
  return refuseCell(say`${where} holds ${complaint(value)}`);
}

/**
 * A cell of a column in which a word, such as "not read", or the #N/A of another function says that there is no value:
 * both give null, like a blank. Text with a digit before its first letter is refused, as in `toCell`: "~4", "−4", "½".
 */
export function toCellOrWord(cell: unknown, where: Message): Cell {
  const value = plain(cell);
  const isNoValue =
    typeof value === "string" ? !/^[^\p{L}]*\p{N}/u.test(value) : value instanceof Unusable && value.code === "#N/A";
  return isNoValue ? null : toCell(cell, where);
}

const single = (argument: unknown): unknown => {
  while (Array.isArray(argument) && argument.length === 1) argument = argument[0];
  return Array.isArray(argument) ? argument : plain(argument);
};

const oneCell = (argument: unknown, name: Message, isWord?: true): unknown => {
  const value = single(argument);
  if (!Array.isArray(value)) return value;
  return refuseCell(
    isWord
      ? say`${name} is a range of cells where one word is needed: choose one cell`
      : say`${name} is a range of cells where one number is needed: choose one cell`,
  );
};

/** Whether an optional argument was omitted (omitted, null, or a blank string). */
export const isOmitted = (argument: unknown): boolean => isBlank(single(argument));

/** Whether a word was omitted; 0 counts too, since desktop Excel passes a blank cell as 0. */
export const isNoWord = (argument: unknown): boolean => isOmitted(argument) || single(argument) === 0;

/** A required number; a blank cell is 0. `name` is the trade's word for it: "the ring mass". */
export function toNumber(argument: unknown, name: Message): number {
  const value = oneCell(argument, name);
  if (value === undefined) return refuseCell(say`${name} is missing: enter a number`);
  return toCell(value, name) ?? 0;
}

/** A required number greater than zero. */
export function toPositive(argument: unknown, name: Message): number {
  const value = toNumber(argument, name);
  const reason = notPositive(value, name);
  return reason ? refuseCell(reason) : value;
}

/**
 * An optional number greater than zero; a blank cell counts as omitted, and so does 0, since desktop Excel passes a
 * blank cell as 0.
 */
export const toOptionalPositive = (argument: unknown, name: Message): number | undefined =>
  isNoWord(argument) ? undefined : toPositive(argument, name);

/** An optional number for which zero is a value; undefined if omitted. */
export const toOptionalNumber = (argument: unknown, name: Message): number | undefined =>
  isOmitted(argument) ? undefined : toNumber(argument, name);

/** An optional number of either sign for which zero means nothing: blank or 0 counts as omitted. */
export const toOptionalNonZero = (argument: unknown, name: Message): number | undefined =>
  isNoWord(argument) ? undefined : toNumber(argument, name);

/** A word; undefined if it was omitted (blank, or 0, since desktop Excel passes a blank cell as 0). */
export function toOptionalWord(argument: unknown, name: Message): string | undefined {
  const value = oneCell(argument, name, true);
  if (isNoWord(value)) return undefined;
  if (value instanceof Unusable) return refuseCell(say`${name} holds ${value.complaint}`);
  return String(value).trim();
}

/** One of the words in `choices`, in upper or lower case, or the word of a German sheet for it; `fallback` if omitted. */
export function toChoice<T extends string>(argument: unknown, name: Message, choices: readonly T[], fallback: T): T {
  const word = toOptionalWord(argument, name);
  if (word === undefined) return fallback;
  const known = englishWord(word).toLowerCase();
  const found = choices.find((choice) => choice.toLowerCase() === known);
  return found ?? refuseCell(say`${name} is "${verbatim(word)}": use one of ${listed(choices.map(verbatim))}`);
}

/** What an argument holds, as a text. */
export const asText = (argument: unknown): string => String(single(argument)).trim();

/** Whether an argument is this English word in any case, or the word of another language for it. */
export const means = (argument: unknown, word: string): boolean => englishWord(asText(argument)).toLowerCase() === word;

/** The tag of the language of the words that a formula asks with: of the first word that is not English, otherwise "en". */
export const languageAsked = (...words: readonly unknown[]): string =>
  words.map((word) => languageOfWord(asText(word))).find(Boolean) ?? "en";

/** A unit of the quantity; `fallback` if omitted. */
export function toUnit(argument: unknown, quantity: Quantity, fallback: string): string {
  const name = say([`the ${quantity} unit`]);
  const word = toOptionalWord(argument, name);
  if (word === undefined) return fallback;
  const names = unitsOf(quantity);
  return (
    unitNamed(word, names) ?? refuseCell(say`${name} is "${verbatim(word)}": use one of ${listed(names.map(verbatim))}`)
  );
}

/** A length argument in mm. */
export const toMillimetres = (argument: unknown, name: Message, unit: string): number =>
  convert(toPositive(argument, name), "length", unit, "mm");

/** An optional length argument in mm; blank or 0 counts as omitted. */
export const toOptionalMillimetres = (argument: unknown, name: Message, unit: string): number | undefined =>
  isNoWord(argument) ? undefined : toMillimetres(argument, name, unit);

/** A column or a row of cells as one list, each read by `read`; a scalar is a list of one. `name` is plural: "the times". */
export function toSeries(argument: unknown, name: Message, read = toCell): Cell[] {
  if (!Array.isArray(argument)) {
    if (argument === undefined) return refuseCell(say`${name} are missing: choose a column or a row of cells`);
    return [read(argument, say`row ${1} of ${name}`)];
  }
  const rows: unknown[][] = Array.isArray(argument[0]) ? argument : [argument];
  const first = firstOf(rows);
  if (rows.length > 1 && rows.some((row) => row.length > 1))
    return refuseCell(
      say`${name} must be one column or one row: the range has ${rows.length} rows and ${first.length} columns`,
    );
  const flat = rows.length > 1 ? rows.map((row) => row[0]) : first;
  return flat.map((cell, index) =>
    read(cell, rows.length > 1 ? say`row ${index + 1} of ${name}` : say`cell ${index + 1} of ${name}`),
  );
}

/** Two series of equal length, paired by position. */
export function toPair(
  first: unknown,
  firstName: Message,
  second: unknown,
  secondName: Message,
  read = toCell,
): [Cell[], Cell[]] {
  const a = toSeries(first, firstName, read);
  const b = toSeries(second, secondName, read);
  if (a.length !== b.length)
    return refuseCell(
      say`${firstName} have ${a.length} cells and ${secondName} have ${b.length}: choose two ranges of the same length`,
    );
  return [a, b];
}
