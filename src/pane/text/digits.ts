/** A number with so many significant digits at most (`least`: at least), as it may also be typed: the language's decimal mark, no marks of thousands. */
import { language, LOCALES } from "./language";

export const shown = (value: number, digits = 6, least = 1): string =>
  value.toLocaleString(LOCALES[language()], {
    minimumSignificantDigits: least,
    maximumSignificantDigits: digits,
    useGrouping: false,
  });
