/**
 * From a column of times and a column of readings to a clean series. Nothing is altered: a reading that cannot be used
 * is left out, and a remark names its row.
 *
 * A blank cell may be 0 as well as null: desktop Excel passes a blank cell as 0, the web as null, and both must give
 * the same answers. Only the first time of a load is zero, so a zero time after the first row is a blank cell.
 */
import { say, type Message } from "../message";
import { badInput, given, then, type Outcome } from "../outcome";
import { nth } from "../numeric/lists";
import { readingStep } from "../numeric/step";
import { straightLine, type FittedLine } from "../numeric/straight-line";
import { averagesOf, runsOf } from "./cleaning/averages";
import { asDates, unitRemarks } from "./cleaning/minutes";
import { leftOut, withTimeIn } from "./cleaning/row-words";
import { readRows } from "./cleaning/rows";

/** A series in order of time; the arrays have the same length. */
export interface Series {
  /** Minutes, increasing, greater than zero. */
  readonly times: readonly number[];
  readonly readings: readonly number[];
  /** The rows of the range that each point comes from: "row 7", "rows 120 to 136". */
  readonly rows: readonly Message[];
  /** How many readings were averaged into each point, at most MOST_WEIGHT. */
  readonly weights: readonly number[];
}

export interface CleanReadings {
  /** The series that the reductions use: every reading, or averages of the readings in equal steps of log time. */
  readonly series: Series;
  /** The reading at t = 0, if there is one. */
  readonly zeroReading: number | undefined;
  /** How many readings were used, before averaging. */
  readonly count: number;
  /** The last time of the range, in minutes. */
  readonly lastTime: number;
  /**
   * The step in which the readings come (dial division, logger digit), in the reading unit; 0 if the readings show
   * none.
   */
  readonly step: number;
  /** Largest reading less smallest. */
  readonly travel: number;
}

/** The series without the readings that were found wrong. */
export function usedReadings({ series }: CleanReadings, { leftOut }: { readonly leftOut: readonly number[] }): Series {
  if (!leftOut.length) return series;
  const kept = <T>(values: readonly T[]) => values.filter((_, i) => !leftOut.includes(i));
  return {
    times: kept(series.times),
    readings: kept(series.readings),
    rows: kept(series.rows),
    weights: kept(series.weights),
  };
}

/** The indices of the times from one time to another, both included. */
export const indicesFrom = (times: readonly number[], from: number, to = Infinity): number[] =>
  times.flatMap((time, index) => (time >= from && time <= to ? [index] : []));

/** The least-squares line on log of time through the points at indices. */
export const lineOnLogTime = ({ times, readings, weights }: Series, index: readonly number[]): FittedLine =>
  straightLine(
    index.map((i) => Math.log10(nth(times, i))),
    index.map((i) => nth(readings, i)),
    index.map((i) => nth(weights, i)),
  );

/** Converts null to NaN; the reduction treats both as a blank. A typed column is returned as it is. */
export const columnOf = (cells: ArrayLike<number | null>): Float64Array =>
  cells instanceof Float64Array ? cells : Float64Array.from(cells, (cell) => cell ?? NaN);

/**
 * `zerosCount`: whether 0 is a reading, as of a transducer that was zeroed; a blank must then be null or NaN. Refuses a
 * negative time (naming its row) and dates in the place of times. Each method says how few readings are enough.
 */
export function cleanReadings(
  timeCells: ArrayLike<number | null>,
  readingCells: ArrayLike<number | null>,
  zerosCount = false,
): Outcome<CleanReadings> {
  const times = columnOf(timeCells);
  return then(readRows(times, columnOf(readingCells), zerosCount), (kept) => {
    const dates = asDates(kept.times);
    if (dates) return badInput(dates);
    const runs = runsOf(kept);
    const least = Math.min(...runs.map((run) => run.least));
    const most = Math.max(...runs.map((run) => run.most));
    const step = readingStep(kept.readings, least, most);
    const { spikes, ...series } = averagesOf(kept, runs, step);
    const count = kept.times.length;
    return given(
      {
        series,
        zeroReading: kept.zeroReading,
        count,
        lastTime: kept.times[count - 1] ?? 0,
        step,
        travel: count ? most - least : 0,
      },
      [
        ...(spikes.length ? [leftOut(spikes, say`far off the readings before and after`, withTimeIn(times))] : []),
        ...unitRemarks(series, kept.times),
      ],
    );
  });
}
