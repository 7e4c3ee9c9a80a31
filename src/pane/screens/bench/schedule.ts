/**
 * Compares the readings of a load with the clock: which were read, which one is next, which are late. All moments are
 * day numbers in local time.
 */
import { hasTimeOfDay, type StandingLoad, type StandingRow } from "../../../record/standing-load";
import { DAY_MINUTES } from "../../../workbook/day-number";

/** A reading is late by this share of its time, but not before this number of minutes. Common practice, no source. */
const LATE_SHARE = 0.1;
const LATE_LEAST = 0.1;

/** The minutes by which a reading may differ from its time on the schedule. */
const slackAt = (time: number): number => Math.max(LATE_SHARE * time, LATE_LEAST);

export type DueState = "read" | "late" | "next" | "to come";

export interface Due extends StandingRow {
  readonly state: DueState;
  /** The moment at which the reading is due; missing if the moment of loading is unknown. */
  readonly at?: number;
}

/** The minutes since the load was applied; undefined if the moment of loading is unknown. */
export const elapsed = ({ started }: Pick<StandingLoad, "started">, now: number): number | undefined =>
  hasTimeOfDay(started) ? (now - started) * DAY_MINUTES : undefined;

/** The readings with the moments at which they are due. If the moment of loading is unknown, no reading is late. */
export function dueReadings(load: StandingLoad, now: number): Due[] {
  const gone = elapsed(load, now);
  const isLate = (time: number): boolean => gone !== undefined && gone > time + slackAt(time);
  const { lastRead } = load;
  const next = load.rows.findIndex(({ reading, time }, i) => i > lastRead && reading === undefined && !isLate(time));
  return load.rows.map((row, i) => ({
    ...row,
    state:
      row.reading !== undefined ? "read" : i === next ? "next" : isLate(row.time) || i < lastRead ? "late" : "to come",
    at: hasTimeOfDay(load.started) ? load.started + row.time / DAY_MINUTES : undefined,
  }));
}

/**
 * The row for a reading taken now: the row that the person chose, otherwise the row after the last reading whose time
 * is nearest to the clock. Without a clock, it is the first row after the last reading.
 */
export function rowForNow(load: StandingLoad, now: number, chosen?: number): StandingRow | undefined {
  const named = load.rows.find(({ row, reading }) => row === chosen && reading === undefined);
  if (named) return named;
  const open = load.rows.slice(load.lastRead + 1);
  const gone = elapsed(load, now);
  if (gone === undefined) return open[0];
  const distance = ({ time }: StandingRow) => Math.abs(time - gone);
  return open.reduce<StandingRow | undefined>(
    (best, row) => (best === undefined || distance(row) < distance(best) ? row : best),
    undefined,
  );
}

/**
 * True if the last reading has a later time than the clock: either the moment of loading or the clock of the computer
 * is wrong.
 */
export function isClockBehind(load: StandingLoad, now: number): boolean {
  const gone = elapsed(load, now);
  const last = load.rows[load.lastRead];
  return gone !== undefined && last !== undefined && gone < last.time - slackAt(last.time);
}

/** True if the clock is so far from a scheduled time that the reading gets the time of the clock. */
export const isOffSchedule = (time: number, gone: number): boolean => Math.abs(gone - time) > slackAt(time);
