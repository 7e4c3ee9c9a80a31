/**
 * Describes a load that is still on the specimen: its schedule, the readings so far, and the time at which it was
 * applied.
 */
import { say, type Message } from "../reduction/message";
import { readingsName, timesName } from "../specification/readings";
import type { CellValue } from "../workbook/port";
import type { LoadRecord, NamedValues, TestRecord } from "./record";

/** A row of the load's readings. */
export interface StandingRow {
  /** The row of the two columns, counted from 1. */
  readonly row: number;
  /** Minutes since the load was applied. */
  readonly time: number;
  /** In divisions; missing until the reading is taken. */
  readonly reading?: number;
}

export interface StandingLoad {
  readonly number: number;
  /** The row of the load table, counted from 1. */
  readonly row: number;
  /** In kPa. */
  readonly stress?: number;
  /**
   * The moment at which the load was applied, as the cell contains it: a day number with the time of day as its
   * fraction.
   */
  readonly started?: number;
  /** The rows in the order of time. */
  readonly rows: readonly StandingRow[];
  /** The index of the last row with a reading; -1 if no reading was taken. */
  readonly lastRead: number;
  /** The first row, counted from 1, below the contents of both columns; missing if the columns are full. */
  readonly freeRow?: number;
}

const column = (values: NamedValues, name: string): CellValue[] => (values[name] ?? []).map(([cell]) => cell ?? "");

const asNumber = (cell: CellValue | undefined): number | undefined => (typeof cell === "number" ? cell : undefined);

/** The number of rows of a column down to the last row that is not blank. */
export const usedRows = (cells: readonly CellValue[]): number =>
  cells.reduce<number>((used, cell, index) => (cell === "" ? used : index + 1), 0);

/** True if the moment has a time of day. A date alone does not tell when the load was applied. */
export const hasTimeOfDay = (started: number | undefined): started is number =>
  started !== undefined && started % 1 !== 0;

/** The question to ask before a second reading is written for a time that has one. */
export function readAlready({ rows }: StandingLoad, time: number): Message | undefined {
  const same = rows.find((one) => one.reading !== undefined && one.time === time);
  return (
    same &&
    say`the load has a reading at ${same.time} min already, in row ${same.row} of its times: write this one only if the time is wrong there`
  );
}

/** The loads that can be read: the loads that have a stress. */
export const loadsToRead = ({ loads }: TestRecord): readonly LoadRecord[] =>
  loads.filter(({ stress }) => stress !== undefined);

/**
 * The load that is taken to be on the specimen: the last load with readings, or the first load if there are no
 * readings.
 */
export const loadInFrame = (record: TestRecord): number | undefined => {
  const loads = loadsToRead(record);
  return (loads.filter(({ readings }) => readings.length > 0).at(-1) ?? loads[0])?.number;
};

/**
 * A load of the record with its schedule, from the values of the sheet by name. A time of 0 counts in the first row
 * only; in other rows it is a blank. Returns undefined if the test has no such load.
 */
export function standingLoad(record: TestRecord, values: NamedValues, number: number): StandingLoad | undefined {
  const load = record.loads.find((one) => one.number === number);
  if (!load) return undefined;
  const times = column(values, timesName(number));
  const readings = column(values, readingsName(number));
  const rows = times.flatMap((cell, index): StandingRow[] => {
    const time = asNumber(cell);
    if (time === undefined || time < 0 || (time === 0 && index > 0)) return [];
    return [{ row: index + 1, time, reading: asNumber(readings[index]) }];
  });
  rows.sort((a, b) => a.time - b.time);
  const used = Math.max(usedRows(times), usedRows(readings));
  return {
    number,
    row: load.row,
    stress: load.stress,
    started: asNumber(values.load_started?.[load.row - 1]?.[0]),
    rows,
    lastRead: rows.reduce((last, { reading }, index) => (reading === undefined ? last : index), -1),
    freeRow: used < times.length ? used + 1 : undefined,
  };
}
