/** A load that still stands in the frame: the times that it is read at, what was read so far, and when the load was applied. */
import { readingsName, timesName } from "../specification/load-table";
import type { CellValue } from "../workbook/port";
import type { LoadRecord, NamedValues, TestRecord } from "./record";

/** A row of the load's readings. */
export interface StandingRow {
  /** Row of the two columns, from 1. */
  readonly row: number;
  /** Minutes since the load was applied. */
  readonly time: number;
  /** Divisions; absent while the time is still to be read. */
  readonly reading?: number;
}

export interface StandingLoad {
  readonly number: number;
  /** Row of the load table, from 1. */
  readonly row: number;
  /** In kPa. */
  readonly stress?: number;
  /** When the load was applied, as the cell holds it: a day number, with the time of day as its fraction. */
  readonly started?: number;
  /** In order of time. */
  readonly rows: readonly StandingRow[];
  /** Index of the last row that has a reading; -1 before any was read. */
  readonly lastRead: number;
  /** The first row, from 1, behind all that the two columns hold; absent where they are full. */
  readonly freeRow?: number;
}

const column = (values: NamedValues, name: string): CellValue[] => (values[name] ?? []).map(([cell]) => cell ?? "");

const asNumber = (cell: CellValue | undefined): number | undefined => (typeof cell === "number" ? cell : undefined);

/** How many rows of a column there are down to the last that holds anything. */
const usedRows = (cells: readonly CellValue[]): number =>
  cells.reduce<number>((used, cell, index) => (cell === "" ? used : index + 1), 0);

/** The loads that can be read: those with a stress. */
export const loadsToRead = ({ loads }: TestRecord): readonly LoadRecord[] =>
  loads.filter(({ stress }) => stress !== undefined);

/** The load that stands unless another is chosen: the last one that has readings; before any was read, the first one. */
export const loadInFrame = (record: TestRecord): number | undefined => {
  const loads = loadsToRead(record);
  return (loads.filter(({ readings }) => readings.length > 0).at(-1) ?? loads[0])?.number;
};

/**
 * A load of the record with its schedule, from the values of the sheet by name. A time of 0 counts in the first row alone: elsewhere it
 * is a blank. Undefined where the test has no such load.
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
