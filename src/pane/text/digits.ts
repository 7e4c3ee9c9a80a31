/**
 * A number with at least `least` and at most `digits` significant digits, in a form that a person may also type: with
 * the decimal mark of the language, without marks of thousands.
 */
import { language, LOCALES } from "./language";

export const shown = (value: number, digits = 6, least = 1): string =>
  value.toLocaleString(LOCALES[language()], {
    minimumSignificantDigits: least,
    maximumSignificantDigits: digits,
    useGrouping: false,
  });

/** A number with this many decimals, in the same form. */
export const shownTo = (value: number, decimals: number): string =>
  value.toLocaleString(LOCALES[language()], {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: false,
  });
