/** Takes the dates and temperatures of a logger's file for blank cells of the data sheet. */
import { nth } from "../../reduction/numeric/lists";
import type { CellValue, NamedColumns } from "../../workbook/port";
import { DAY_MINUTES, UNIX_EPOCH } from "../../workbook/day-number";
import type { LoadStep } from "./loads";
import type { LoggerRows } from "./rows";
import type { Target } from "./target";

/** The dates and the temperature of one stretch of rows. */
export interface Conditions {
  /**
   * The days of its first and its last row in the form of a date cell; undefined if the times of the file have no
   * dates.
   */
  readonly firstDay?: number;
  /** The moment of its first row, a day with its fraction, to the second. */
  readonly firstMoment?: number;
  readonly lastDay?: number;
  /** Mean temperature in degrees Celsius; undefined if no row has one. */
  readonly temperature?: number;
}

/**
 * Returns the days and the mean temperature of a stretch. The mean is weighted by time, because loggers read more often
 * after a load.
 */
export function conditionsOf(rows: LoggerRows, { from, to }: LoadStep): Conditions {
  const dayAt = (row: number): number => Math.floor(nth(rows.times, row) / DAY_MINUTES) + UNIX_EPOCH;
  const momentAt = (row: number): number => UNIX_EPOCH + Math.round(60 * nth(rows.times, row)) / (60 * DAY_MINUTES);
  const temperature = meanTemperature(rows, from, to);
  return {
    ...(rows.dated && to > from ? { firstDay: dayAt(from), lastDay: dayAt(to - 1), firstMoment: momentAt(from) } : {}),
    ...(temperature === undefined ? {} : { temperature }),
  };
}

function meanTemperature({ times, temperatures = [] }: LoggerRows, from: number, to: number): number | undefined {
  let [sum, span, plain, count] = [0, 0, 0, 0];
  let before: { readonly time: number; readonly temperature: number } | undefined;
  for (let row = from; row < to; row++) {
    const temperature = temperatures[row] ?? NaN;
    if (Number.isNaN(temperature)) continue;
    const time = nth(times, row);
    if (before && time > before.time) {
      sum += ((temperature + before.temperature) / 2) * (time - before.time);
      span += time - before.time;
    }
    plain += temperature;
    count++;
    before = { time, temperature };
  }
  if (count === 0) return undefined;
  return Number((span > 0 ? sum / span : plain / count).toFixed(1));
}

/** The values for blank cells of the sheet, and their number by kind. */
export interface BlankCells {
  readonly columns: NamedColumns;
  readonly dates: number;
  readonly temperatures: number;
}

/** The conditions of a stretch of rows that is written to a load of the sheet. */
export interface LoadConditions extends Conditions {
  /** The number of the load, counted from 1. */
  readonly load: number;
}

/** A column with the values of some rows; null leaves a cell unchanged. */
function column(values: readonly (readonly [row: number, value: number])[]): (CellValue | null)[] {
  const cells = new Array<CellValue | null>(Math.max(0, ...values.map(([row]) => row + 1))).fill(null);
  for (const [row, value] of values) cells[row] = value;
  return cells;
}

/**
 * Returns the blank cells that the file can fill: the date with its time and the temperature of each load, and the dates on which the
 * test started and ended. The test starts with load 1 and ends with the last load of the sheet that has a stress.
 */
export function blankCells(target: Target, loads: readonly LoadConditions[]): BlankCells {
  const cellOf = (load: number) => target.loads[load - 1];
  const rowOf = (load: number): number => cellOf(load)?.row ?? load - 1;
  const dates = loads.flatMap(({ load, firstMoment }) =>
    firstMoment !== undefined && cellOf(load)?.started === "" ? [[rowOf(load), firstMoment] as const] : [],
  );
  const temperatures = loads.flatMap(({ load, temperature }) =>
    temperature !== undefined && cellOf(load)?.temperature === "" ? [[rowOf(load), temperature] as const] : [],
  );
  const last = Math.max(
    ...target.loads.flatMap(({ stress, held }, index) => (stress !== undefined || held > 0 ? [index + 1] : [])),
    ...loads.map(({ load }) => load),
  );
  const started = target.testStarted === "" ? loads.find(({ load }) => load === 1)?.firstDay : undefined;
  const ended = target.testEnded === "" ? loads.find(({ load }) => load === last)?.lastDay : undefined;
  return {
    columns: {
      ...(dates.length > 0 && { load_started: column(dates) }),
      ...(temperatures.length > 0 && { load_temperature: column(temperatures) }),
      ...(started !== undefined && { date_started: [started] }),
      ...(ended !== undefined && { date_ended: [ended] }),
    },
    dates: dates.length + (started === undefined ? 0 : 1) + (ended === undefined ? 0 : 1),
    temperatures: temperatures.length,
  };
}
