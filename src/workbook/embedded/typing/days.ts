/**
 * Days as they are written in German: 31.12.2026, with or without a time of day. The engine takes the points of a day for those of a
 * number, and reads such an entry as a text.
 */

const WITH_POINTS = /^\s*(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4}|\d{2})(?:,?\s+(\d{1,2}:\d{2}(?::\d{2})?))?\s*$/;

/** A year of two digits below this is one of 2000 and later, as Excel reads it. */
const CENTURY_CHANGES_AT = 30;

const fullYear = (year: string): number =>
  year.length === 4 ? Number(year) : Number(year) + (Number(year) < CENTURY_CHANGES_AT ? 2000 : 1900);

const two = (value: number): string => String(value).padStart(2, "0");

/** "2026-12-31" for "31.12.2026", "2026-12-31 9:15" for "31.12.26 9:15"; undefined if the text is no day of the calendar. */
export function dayWithPoints(text: string): string | undefined {
  const [, dayText, monthText, yearText, time] = WITH_POINTS.exec(text) ?? [];
  if (dayText === undefined || monthText === undefined || yearText === undefined) return undefined;
  const [day, month, year] = [Number(dayText), Number(monthText), fullYear(yearText)];
  const date = new Date(Date.UTC(year, month - 1, day));
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return undefined;
  return [`${year}-${two(month)}-${two(day)}`, time].filter(Boolean).join(" ");
}
