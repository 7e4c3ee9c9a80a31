/** The readings and numbers of loads, row by row as on the sheet, so that a remark names the row that a person sees. */
import type { Picks, TimeMethod } from "../reduction/increment/constructions/picks";
import type { Procedure } from "../reduction/increment/constructions/procedure";
import type { Increment } from "../reduction/increment/reduce";
import { reducedOnce } from "../reduction/increment/reduced-once";
import { picksOfLoad, procedureOfLoad } from "./picks";
import { rulesOf } from "../specification/versions";
import type { LoadRecord, TestRecord } from "./record";

/** null is a blank. */
export type Cells = readonly (number | null)[];

/** Times in minutes and readings in divisions of a load, in the rows of the sheet; blank rows are kept. */
export function loadCurve({ readings }: Pick<LoadRecord, "readings">): {
  readonly times: Cells;
  readonly readings: Cells;
} {
  const rows = Math.max(0, ...readings.map(({ row }) => row));
  const times = new Array<number | null>(rows).fill(null);
  const values = new Array<number | null>(rows).fill(null);
  for (const { row, time, reading } of readings) {
    times[row - 1] = time ?? null;
    values[row - 1] = reading ?? null;
  }
  return { times, readings: values };
}

export const hasReadings = ({ readings }: Pick<LoadRecord, "readings">): boolean =>
  readings.some(({ reading }) => reading !== undefined);

/** The loads that have readings, in the order of their rows. */
export const loadsRead = ({ loads }: Pick<TestRecord, "loads">): LoadRecord[] => loads.filter(hasReadings);

/** The increment of a load, with the picks and the procedure of the sheet unless others are given. */
export function incrementOfLoad(
  record: TestRecord,
  load: Pick<LoadRecord, "number" | "readings">,
  tried: { readonly picks?: Picks; readonly procedure?: Procedure } = {},
): Increment {
  const { times, readings } = loadCurve(load);
  const { picks = picksOfLoad(record.picks, load.number), procedure = procedureOfLoad(record, load.number) } = tried;
  return reducedOnce(times, readings, picks, procedure, rulesOf(record).zerosCount);
}

/** The construction of an increment by one of the methods. */
export const outcomeOf = ({ logTime, rootTime }: Increment, method: TimeMethod): Increment["logTime" | "rootTime"] =>
  method === "log time" ? logTime : rootTime;

/** One number of every load as a column of the load table, in the rows of the sheet. */
export function loadColumn(
  loads: readonly Pick<LoadRecord, "row">[],
  read: (index: number) => number | null | undefined,
): (number | null)[] {
  const column = new Array<number | null>(Math.max(0, ...loads.map(({ row }) => row))).fill(null);
  loads.forEach(({ row }, index) => (column[row - 1] = read(index) ?? null));
  return column;
}

/** Whether readings rise or fall when the specimen compresses; "rise" if the sheet does not say. */
export const dialSense = ({ words }: Pick<TestRecord, "words">): "rise" | "fall" =>
  words.dial_sense === "fall" ? "fall" : "rise";
