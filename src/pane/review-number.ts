/** A number with so many significant digits, as it may also be typed: the language's decimal mark, no marks of thousands. */
import { language, LOCALES } from "./text/language";

export const shown = (value: number, digits = 6): string =>
  value.toLocaleString(LOCALES[language()], { maximumSignificantDigits: digits, useGrouping: false });
