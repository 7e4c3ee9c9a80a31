/** A number in the digits of a cell's format and the marks of the pane's language. */
import { partFor } from "../../workbook/number-format";
import { language, LOCALES } from "./language";

/** Digits that are left of any number but 0. */
const LEAST_DIGITS = 2;

/** A reading as a person types it: all its digits, none grouped. */
export const readingText = (value: number): string =>
  value.toLocaleString(LOCALES[language()], { maximumSignificantDigits: 12, useGrouping: false });

/** `format` is one of the data sheet's: "0.000", "0.0%", "0.0E+00", or one that follows the number's size; absent, the number as it is. */
export function numberText(value: number, code?: string): string {
  const locale = LOCALES[language()];
  const format = code && partFor(code, value);
  if (format?.includes("E"))
    return value
      .toExponential(/\.(0*)E/.exec(format)?.[1]?.length ?? 1)
      .replace(".", (0.5).toLocaleString(locale).charAt(1))
      .replace("-", "−");
  if (format === undefined) return value.toLocaleString(locale, { maximumSignificantDigits: 6 });
  const isPercent = format.endsWith("%");
  const digits = /\.(0*)/.exec(format)?.[1]?.length ?? 0;
  const size = Math.abs(isPercent ? 100 * value : value);
  // Whatever the format says, two digits are left of a small number.
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
