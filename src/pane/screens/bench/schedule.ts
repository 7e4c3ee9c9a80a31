/** The readings of a load by the clock: which are read, which one is next, which are late. All moments are day numbers of the local clock. */
import type { StandingLoad, StandingRow } from "../../../record/standing-load";

const MINUTES = 1440;

/** A reading is late once so much of its time has passed again, and at least so many minutes. Common practice, no source. */
const LATE_SHARE = 0.1;
const LATE_LEAST = 0.1;

export type DueState = "read" | "late" | "next" | "to come";

export interface Due extends StandingRow {
  readonly state: DueState;
  /** When it is due; absent where the moment of loading is not known. */
  readonly at?: number;
}

/** A date without a time of day does not say when the load was applied. */
export const hasTimeOfDay = (started: number | undefined): started is number =>
  started !== undefined && started % 1 !== 0;

/** Minutes since the load was applied; undefined where the moment is not known. */
export const elapsed = ({ started }: Pick<StandingLoad, "started">, now: number): number | undefined =>
  hasTimeOfDay(started) ? (now - started) * MINUTES : undefined;

/** What is to be read at which moment. Without the moment of loading nothing is late. */
export function dueReadings(load: StandingLoad, now: number): Due[] {
  const gone = elapsed(load, now);
  const isLate = (time: number): boolean => gone !== undefined && gone > time + Math.max(LATE_SHARE * time, LATE_LEAST);
  const { lastRead } = load;
  const next = load.rows.findIndex(({ reading, time }, i) => i > lastRead && reading === undefined && !isLate(time));
  return load.rows.map((row, i) => ({
    ...row,
    state:
      row.reading !== undefined ? "read" : i === next ? "next" : isLate(row.time) || i < lastRead ? "late" : "to come",
    at: hasTimeOfDay(load.started) ? load.started + row.time / MINUTES : undefined,
  }));
}

/**
 * The row that a reading goes into now: the one that the person chose; otherwise, of those behind the last reading, the one whose time is
 * nearest the clock, and without a clock the first.
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

/** Whether a reading has a later time than the clock shows: then the moment of loading or the clock of the machine is wrong. */
export function isClockBehind(load: StandingLoad, now: number): boolean {
  const gone = elapsed(load, now);
  const last = load.rows[load.lastRead];
  return gone !== undefined && last !== undefined && gone < last.time - Math.max(LATE_SHARE * last.time, LATE_LEAST);
}

/** Whether the clock is so far from a scheduled time that the reading belongs to the clock's own time. */
export const isOffSchedule = (time: number, gone: number): boolean =>
  Math.abs(gone - time) > Math.max(LATE_SHARE * time, LATE_LEAST);
