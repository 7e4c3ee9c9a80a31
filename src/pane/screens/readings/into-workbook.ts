/** Readings into the workbook: first the sheet that keeps the file, then, in one step, the data sheet. */
import { fileSheet, LINES_AT_ONCE, linesName, type FileRecord } from "../../../exchange/logger/file-sheet";
import type { NamedColumns, WorkbookPort } from "../../../workbook/port";
import { pause, Stopped } from "../../live/in-slices";

export interface Job {
  readonly dataSheet: string;
  readonly columns: NamedColumns;
  /** Names that must hold nothing, since no one has agreed to replace what they hold. */
  readonly blank: readonly string[];
  readonly record: FileRecord;
  readonly lines: readonly string[];
  /** What the file sheet says once its lines are all there. */
  readonly keptAll: string;
}

/** How far the file sheet has come: work that was stopped or refused goes on from here. */
export interface Kept {
  /** What the sheet was made for: another record needs another sheet. */
  readonly record: string;
  readonly sheet: string;
  readonly lines: number;
}

/** The same columns with nothing to write in them. */
const nothingIn = (columns: NamedColumns): NamedColumns =>
  Object.fromEntries(Object.entries(columns).map(([name, list]) => [name, list.map(() => null)]));

/**
 * Asks the data sheet whether it would take the columns, keeps the file, then fills the sheet. `tell` hears how many lines are
 * kept after each piece. Throws Stopped when the signal says so, before the data sheet is written.
 */
export async function writeReadings(
  port: WorkbookPort,
  { dataSheet, columns, blank, record, lines, keptAll }: Job,
  before: Kept | undefined,
  tell: (kept: Kept) => void,
  signal: AbortSignal,
): Promise<Kept> {
  await port.fillNames(dataSheet, nothingIn(columns), blank);
  const key = JSON.stringify(record);
  let kept = before?.record === key ? before : undefined;
  if (!kept || !(await port.sheetNames()).includes(kept.sheet))
    kept = { record: key, sheet: await port.insertSheet(fileSheet(record)), lines: 0 };
  tell(kept);
  while (kept.lines < record.lines) {
    await pause();
    if (signal.aborted) throw new Stopped();
    const piece = lines.slice(kept.lines, Math.min(kept.lines + LINES_AT_ONCE, record.lines));
    const done: number = kept.lines + piece.length;
    const said: NamedColumns = done === record.lines ? { logger_kept: [keptAll] } : {};
    await port.fillNames(kept.sheet, { [linesName(kept.lines / LINES_AT_ONCE)]: piece, ...said });
    kept = { ...kept, lines: done };
    tell(kept);
  }
  if (signal.aborted) throw new Stopped();
  await port.fillNames(dataSheet, columns, blank);
  return kept;
}
