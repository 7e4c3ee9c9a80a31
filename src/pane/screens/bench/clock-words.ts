/** Writes times and moments for the bench screen. */
import { clockOf, dateOfDay, isoDay } from "../../../workbook/day-number";
import { numberText } from "../../text/number";

const two = (value: number): string => String(value).padStart(2, "0");

/** A time of the schedule in minutes, as a text: "0.25 min", "24 h". */
export function timeText(minutes: number): string {
  return minutes >= 60 && Number.isInteger(minutes / 60)
    ? `${minutes / 60} h`
    : `${numberText(Number(minutes.toPrecision(4)))} min`;
}

/** A duration as a text: "1 d 02:03:04", "02:03:04". */
export function lastingText(minutes: number): string {
  const seconds = Math.max(0, Math.round(60 * minutes));
  const days = Math.floor(seconds / 86_400);
  const clock = [Math.floor(seconds / 3600) % 24, Math.floor(seconds / 60) % 60, seconds % 60].map(two).join(":");
  return days > 0 ? `${days} d ${clock}` : clock;
}

/** The time of day of a moment, with the date if it is not today: "14:05:30", "2026-03-10 09:00:00". */
export function momentText(moment: number, now: number): string {
  const { day, clock } = clockOf(moment);
  return day === Math.floor(now) ? clock : `${isoDay(day)} ${clock}`;
}

/** A moment in the form of a date and time field: "2026-03-09T14:05:30". */
export const fieldText = (day: number): string => {
  const seconds = Math.round(day * 86_400);
  return new Date(dateOfDay(0).getTime() + seconds * 1000).toISOString().slice(0, 19);
};

/** The moment in such a field; undefined if it contains none. */
export function fieldMoment(typed: string): number | undefined {
  const date = new Date(`${typed}Z`);
  const day = date.getTime() / 86_400_000 - dateOfDay(0).getTime() / 86_400_000;
  return Number.isFinite(day) ? day : undefined;
}
