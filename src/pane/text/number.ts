/** Writes a number with the digits of a cell's format and the marks of the pane's language. */
import { partFor } from "../../workbook/look/number-format";
import type { CellValue } from "../../workbook/port";
import { language, LOCALES } from "./language";

/** The number of significant digits that every number except 0 keeps. */
const LEAST_DIGITS = 2;

/** The decimal mark of the pane's language. */
export const decimalMark = (): string => (0.5).toLocaleString(LOCALES[language()]).charAt(1);

/** A reading as a person types it: with all its digits, without marks of thousands; in the pane's language unless another is given. */
export const readingText = (value: number, into = language()): string =>
  value.toLocaleString(LOCALES[into], { maximumSignificantDigits: 12, useGrouping: false });

/** A number below this is written with a power of ten: 1.45e-11, and not eleven zeros. */
const WITH_POWER = 1e-6;

/** The content of a cell, a number as a person types it. */
export function contentText(content: CellValue): string {
  if (typeof content !== "number") return String(content);
  if (content === 0 || Math.abs(content) >= WITH_POWER) return readingText(content);
  return String(Number(content.toPrecision(12))).replace(".", decimalMark());
}

/**
 * `code` is a format of the data sheet: "0.000", "0.0%", "0.0E+00", or a format that depends on the size of the number.
 * Without it, the number is written as it is. A number has no marks of thousands: "1.439" would be read as a decimal.
 */
export function numberText(value: number, code?: string): string {
  const locale = LOCALES[language()];
  const format = code && partFor(code, value);
  if (format?.includes("E"))
    return value
      .toExponential(/\.(0*)E/.exec(format)?.[1]?.length ?? 1)
      .replace(".", decimalMark())
      .replace("-", "−");
  if (format === undefined) return value.toLocaleString(locale, { maximumSignificantDigits: 6, useGrouping: false });
  const isPercent = format.endsWith("%");
  const digits = /\.(0*)/.exec(format)?.[1]?.length ?? 0;
  const size = Math.abs(isPercent ? 100 * value : value);
  // A small number keeps two digits, whatever the format says.
  const needed = size > 0 ? LEAST_DIGITS - 1 - Math.floor(Math.log10(size)) : 0;
  const decimals = Math.min(Math.max(digits, needed), 12);
  return value
    .toLocaleString(locale, {
      style: isPercent ? "percent" : "decimal",
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
    })
    .replace("-", "−");
}
