/** Writes a number with the digits of a cell's format and the marks of the pane's language. */
import { partFor } from "../../workbook/look/number-format";
import type { CellValue } from "../../workbook/port";
import { language, LOCALES } from "./language";
import { withPower } from "./powers";

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

/** From this size on a number of a format with a power is written without one: 0.0631. */
const WITHOUT_POWER = 1e-4;

/** A number with a count of significant figures, in a power of ten if it is small: 0.0631, 4.40×10⁻⁸. */
function inFigures(value: number, figures: number): string {
  const size = Math.abs(value);
  if (size !== 0 && (size < WITHOUT_POWER || size >= 10 ** figures))
    return withPower(value.toExponential(figures - 1).replace(".", decimalMark()), language()).replace("-", "−");
  return value
    .toLocaleString(LOCALES[language()], {
      minimumSignificantDigits: figures,
      maximumSignificantDigits: figures,
      useGrouping: false,
    })
    .replace("-", "−");
}

/**
 * `code` is a format of the data sheet: "0.000", "0.0%", "0.0E+00", or a format that depends on the size of the number.
 * Without it, the number is written as it is. A number has no marks of thousands: "1.439" would be read as a decimal.
 */
export function numberText(value: number, code?: string): string {
  const locale = LOCALES[language()];
  const format = code && partFor(code, value);
  if (format?.includes("E")) return inFigures(value, (/\.(0*)E/.exec(format)?.[1]?.length ?? 1) + 1);
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
