/**
 * Writes one reading of a load into its sheet, and undoes it. A cell is changed only if it still contains what the
 * screen showed.
 */
import { hasTimeOfDay } from "../../../record/standing-load";
import { readingsName, timesName } from "../../../specification/readings";
import type { CellValue, NamedColumns, WorkbookPort } from "../../../workbook/port";
import type { Entry } from "./bench-state";

/** The column of a name with one cell filled. */
const oneCell = (row: number, value: CellValue): (CellValue | null)[] => [
  ...new Array<null>(row - 1).fill(null),
  value,
];

/** The present content of the two cells of a row. */
async function held(port: WorkbookPort, sheet: string, { load, row }: Pick<Entry, "load" | "row">) {
  const [times, readings] = [timesName(load), readingsName(load)];
  const values = await port.readNames(sheet, [times, readings]);
  const cell = (name: string): CellValue => values[name]?.[row - 1]?.[0] ?? "";
  return { time: cell(times), reading: cell(readings) };
}

/**
 * The result of a writing. "changed meanwhile" means that the cells contained something other than the screen showed,
 * so that nothing was written.
 */
export type Written = "written" | "changed meanwhile";

/** Writes the reading, and also its time if it differs from the time in the sheet. It never overwrites a reading. */
export async function writeReading(port: WorkbookPort, sheet: string, entry: Entry): Promise<Written> {
  const { load, row, time, reading, timeBefore } = entry;
  const now = await held(port, sheet, entry);
  if (now.reading !== "" || now.time !== timeBefore) return "changed meanwhile";
  const cells: NamedColumns = {
    ...(time !== timeBefore && { [timesName(load)]: oneCell(row, time) }),
    [readingsName(load)]: oneCell(row, reading),
  };
  await port.fillNames(sheet, cells, [], [readingsName(load)], { [timesName(load)]: oneCell(row, timeBefore) });
  return "written";
}

/** Clears the reading that was written, and restores the content of the time cell beside it. */
export async function takeBack(port: WorkbookPort, sheet: string, entry: Entry): Promise<Written> {
  const { load, row, time, reading, timeBefore } = entry;
  const now = await held(port, sheet, entry);
  if (now.reading !== reading || now.time !== time) return "changed meanwhile";
  const cells: NamedColumns = {
    ...(time !== timeBefore && { [timesName(load)]: oneCell(row, timeBefore) }),
    [readingsName(load)]: oneCell(row, ""),
  };
  const seen = { [timesName(load)]: oneCell(row, time), [readingsName(load)]: oneCell(row, reading) };
  await port.fillNames(sheet, cells, [], [], seen);
  return "written";
}

/**
 * Writes the moment at which the load was applied into the row of the load table. A moment that stands there already is
 * never overwritten, nor is a text; a day without a time is.
 */
export async function writeStart(port: WorkbookPort, sheet: string, row: number, started: number): Promise<Written> {
  const { load_started: column } = await port.readNames(sheet, ["load_started"]);
  const now = column?.[row - 1]?.[0] ?? "";
  if (typeof now === "number" && hasTimeOfDay(now)) return "changed meanwhile";
  const free = typeof now === "number" ? [] : ["load_started"];
  await port.fillNames(sheet, { load_started: oneCell(row, started) }, [], free, { load_started: oneCell(row, now) });
  return "written";
}
