/** Writes times and moments for the bench screen. */
import { clockOf, DAY_MINUTES, dayNumberOf, isoDay } from "../../../workbook/day-number";
import { numberText } from "../../text/number";

/** A time of the schedule in minutes, as a text: "0.25 min", "24 h". */
export function timeText(minutes: number): string {
  return minutes >= 60 && Number.isInteger(minutes / 60)
    ? `${minutes / 60} h`
    : `${numberText(Number(minutes.toPrecision(4)))} min`;
}

/** A duration as a text: "1 d 02:03:04", "02:03:04". */
export function lastingText(minutes: number): string {
  const { day, clock } = clockOf(Math.max(0, minutes) / DAY_MINUTES);
  return day > 0 ? `${day} d ${clock}` : clock;
}

/** The time of day of a moment, with the date if it is not today: "14:05:30", "2026-03-10 09:00:00". */
export function momentText(moment: number, now: number): string {
  const { day, clock } = clockOf(moment);
  return day === Math.floor(now) ? clock : `${isoDay(day)} ${clock}`;
}

/** A moment in the form of a date and time field: "2026-03-09T14:05:30". */
export function fieldText(moment: number): string {
  const { day, clock } = clockOf(moment);
  return `${isoDay(day)}T${clock}`;
}

/** The moment in such a field; undefined if it contains none. */
export function fieldMoment(typed: string): number | undefined {
  const moment = dayNumberOf(new Date(`${typed}Z`));
  return Number.isFinite(moment) ? moment : undefined;
}
