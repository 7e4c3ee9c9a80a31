/** Days as cells hold them: a number of days since 1899-12-30, with the time of day as its fraction. */

/** The day number of 1970-01-01. */
export const UNIX_EPOCH = 25_569;

/** The minutes of a day. */
export const DAY_MINUTES = 1440;

/** The day number of a moment, in universal time. */
export const dayNumberOf = (date: Date): number => date.getTime() / 60_000 / DAY_MINUTES + UNIX_EPOCH;

/** The day number of a moment in local time, as a person types it into a cell. */
export const localDayNumber = (date: Date): number =>
  dayNumberOf(new Date(date.getTime() - date.getTimezoneOffset() * 60_000));

/** The moment of a day number, in universal time, to the minute. */
export const dateOfDay = (day: number): Date => new Date(Math.round((day - UNIX_EPOCH) * DAY_MINUTES) * 60_000);

/** "2026-03-09" */
export const isoDay = (day: number): string => dateOfDay(Math.floor(day)).toISOString().slice(0, 10);

/** "2026-03-09 14:05" */
export const isoMoment = (day: number): string => dateOfDay(day).toISOString().slice(0, 16).replace("T", " ");

const two = (value: number): string => String(value).padStart(2, "0");

/** The time of day of a moment to the second, "14:05:30", and the day that it belongs to after rounding. */
export function clockOf(moment: number): { readonly day: number; readonly clock: string } {
  const seconds = Math.round(moment * 86_400);
  const day = Math.floor(seconds / 86_400);
  const rest = seconds - 86_400 * day;
  return { day, clock: [Math.floor(rest / 3600), Math.floor(rest / 60) % 60, rest % 60].map(two).join(":") };
}
