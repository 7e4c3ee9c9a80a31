/** Reads one cell of a logger's file as a number or as a time. */
import { nth } from "../../reduction/numeric/lists";
import type { DateOrder, DecimalMark, TimeForm } from "./layout";

const PLAIN = { ".": /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i, ",": /^[+-]?(?:\d+,?\d*|,\d+)(?:e[+-]?\d+)?$/i };
/**
 * A thousands separator is removed only where the figure cannot be read otherwise: a space or an apostrophe, or the
 * other mark if it stands beside the decimal mark or occurs twice.
 */
const GROUPED = {
  ".": /^[+-]?[1-9]\d{0,2}(?:(?:[ '\u00a0\u202f]\d{3})+(?:\.\d*)?|(?:,\d{3})+\.\d*|(?:,\d{3}){2,})$/,
  ",": /^[+-]?[1-9]\d{0,2}(?:(?:[ '\u00a0\u202f]\d{3})+(?:,\d*)?|(?:\.\d{3})+,\d*|(?:\.\d{3}){2,})$/,
};

/** A number that a cell can hold; undefined if it is larger, as 1e999 is. */
const finite = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);

/** No number or time in print has more characters; a pattern is not tried on a longer text. */
export const LONGEST_FIGURE = 400;

/** The number in a cell; undefined if the cell is not a number with that decimal mark, or the number is too large. */
export function numberIn(cell: string, decimal: DecimalMark): number | undefined {
  const text = cell.trim().replace(/^\u2212/, "-");
  if (text.length > LONGEST_FIGURE) return undefined;
  if (PLAIN[decimal].test(text)) return finite(Number(decimal === "," ? text.replace(",", ".") : text));
  if (!GROUPED[decimal].test(text)) return undefined;
  const whole = text.replace(decimal === "," ? /[. '\u00a0\u202f]/g : /[, '\u00a0\u202f]/g, "");
  return finite(Number(whole.replace(",", ".")));
}

const MINUTES = { s: 1 / 60, min: 1, h: 60, d: 1440 } as const;
const CLOCK = /^(\d+):(\d{1,2})(?::(\d{1,2})(?:[.,](\d{1,6}))?)?\s*([ap]m)?z?$/i;
const DATE = /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})$/;

/** Days since 1970-01-01; undefined if there is no such day. A year of two digits is in this century. */
export function dayNumber(cell: string, order: DateOrder): number | undefined {
  const parts = DATE.exec(cell.trim())?.slice(1).map(Number);
  if (!parts) return undefined;
  const at = (letter: string): number => nth(parts, order.indexOf(letter));
  const year = at("y") < 100 ? 2000 + at("y") : at("y");
  const date = new Date(Date.UTC(year, at("m") - 1, at("d")));
  return year >= 1970 && date.getUTCMonth() === at("m") - 1 && date.getUTCDate() === at("d")
    ? date.getTime() / 86_400_000
    : undefined;
}

/** Milliseconds of "1:02:03.5" or, for m:ss, of "62:03.5"; clock times may leave out the seconds and may say am or pm. */
function milliseconds(cell: string, form: "h:mm:ss" | "m:ss" | "clock"): number | undefined {
  if (form === "m:ss") {
    const [, minutes, tail] = /^(\d+):(\d{1,2}(?:[.,]\d+)?)$/.exec(cell) ?? [];
    const seconds = Number(tail?.replace(",", "."));
    return seconds < 60 ? Math.round(60_000 * Number(minutes) + 1000 * seconds) : undefined;
  }
  const found = CLOCK.exec(cell);
  if (!found) return undefined;
  const [, first, second, third, fraction = "", half] = found;
  if (third === undefined && form === "h:mm:ss") return undefined;
  let hours = Number(first);
  const [minutes, seconds] = [Number(second), Number(third ?? 0)];
  if (minutes > 59 || seconds > 59 || (half && form === "h:mm:ss")) return undefined;
  if (half) {
    if (hours < 1 || hours > 12) return undefined;
    hours = (hours % 12) + (half.toLowerCase() === "pm" ? 12 : 0);
  } else if (form === "clock" && hours > 23) return undefined;
  return 3_600_000 * hours + 60_000 * minutes + 1000 * seconds + Number(`0.${fraction || 0}`) * 1000;
}

/** Minutes, and whether they include a date. */
export interface TimeRead {
  readonly minutes: number;
  readonly dated: boolean;
}

/** About 2000 years. A figure beyond it is no time of a test. */
const MOST_MINUTES = 1e9;

const elapsed = (minutes: number): TimeRead | undefined =>
  Math.abs(minutes) <= MOST_MINUTES ? { minutes, dated: false } : undefined;

/**
 * Reads a time in the form given; the date may stand before it in the same cell, or in `dateCell`. With a date the
 * minutes count from 1970. Undefined if the cell cannot be read.
 */
export function timeIn(
  cell: string,
  form: TimeForm,
  decimal: DecimalMark,
  order: DateOrder,
  dateCell?: string,
): TimeRead | undefined {
  const text = cell.trim();
  if (text.length > LONGEST_FIGURE) return undefined;
  if (form === "s" || form === "min" || form === "h" || form === "d") {
    return elapsed((numberIn(text, decimal) ?? NaN) * MINUTES[form]);
  }
  if (form !== "clock") return elapsed((milliseconds(text, form) ?? NaN) / 60_000);
  const split = dateCell === undefined ? /^(\S+?)[ T]+(\S.*)$/.exec(text.replace(/\s+([ap]m)$/i, "$1")) : null;
  const [, before = "", behind = ""] = split ?? [];
  const hasOwnDate = DATE.test(before);
  const date = dateCell ?? (hasOwnDate ? before : undefined);
  const clock = milliseconds(hasOwnDate ? behind : text, "clock");
  if (clock === undefined) return undefined;
  if (date === undefined) return { minutes: clock / 60_000, dated: false };
  const day = dayNumber(date, order);
  return day === undefined ? undefined : { minutes: (day * 86_400_000 + clock) / 60_000, dated: true };
}
