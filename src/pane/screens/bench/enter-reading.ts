/** Writes one reading of a load into its sheet, and takes it back: only cells that hold what was shown are changed. */
import { readingsName, timesName } from "../../../specification/load-table";
import type { CellValue, NamedColumns, WorkbookPort } from "../../../workbook/port";
import type { Entry } from "./bench-state";

/** The columns of a name with one cell filled. */
const oneCell = (row: number, value: CellValue): (CellValue | null)[] => [
  ...new Array<null>(row - 1).fill(null),
  value,
];

/** What the two cells of a row hold now. */
async function held(port: WorkbookPort, sheet: string, { load, row }: Pick<Entry, "load" | "row">) {
  const [times, readings] = [timesName(load), readingsName(load)];
  const values = await port.readNames(sheet, [times, readings]);
  const cell = (name: string): CellValue => values[name]?.[row - 1]?.[0] ?? "";
  return { time: cell(times), reading: cell(readings) };
}

/** The result of a writing: "changed meanwhile" where the cells held something else than was shown, and nothing was written. */
export type Written = "written" | "changed meanwhile";

/** Writes the reading, and its time where that is not in the sheet yet. A cell that holds a reading already is left alone. */
export async function writeReading(port: WorkbookPort, sheet: string, entry: Entry): Promise<Written> {
  const { load, row, time, reading, timeBefore } = entry;
  const now = await held(port, sheet, entry);
  if (now.reading !== "" || now.time !== timeBefore) return "changed meanwhile";
  const cells: NamedColumns = {
    ...(time !== timeBefore && { [timesName(load)]: oneCell(row, time) }),
    [readingsName(load)]: oneCell(row, reading),
  };
  await port.fillNames(sheet, cells);
  return "written";
}

/** Clears the reading that was written, and puts the time back that stood beside it. */
export async function takeBack(port: WorkbookPort, sheet: string, entry: Entry): Promise<Written> {
  const { load, row, time, reading, timeBefore } = entry;
  const now = await held(port, sheet, entry);
  if (now.reading !== reading || now.time !== time) return "changed meanwhile";
  await port.fillNames(sheet, {
    ...(time !== timeBefore && { [timesName(load)]: oneCell(row, timeBefore) }),
    [readingsName(load)]: oneCell(row, ""),
  });
  return "written";
}

/** Writes the moment at which the load was applied into the row of the load table. */
export const writeStart = (port: WorkbookPort, sheet: string, row: number, started: number): Promise<void> =>
  port.fillNames(sheet, { load_started: oneCell(row, started) });
