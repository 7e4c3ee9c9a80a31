/** Writes readings into the workbook: first the sheet that keeps the file, then the data sheet in one step. */
import { fileSheet, LINES_AT_ONCE, linesName, type FileRecord } from "../../../exchange/logger/file-sheet";
import type { NamedColumns, WorkbookPort } from "../../../workbook/port";
import { pause, Stopped } from "../../../workbook/in-slices";
import { noted } from "../../live/unfinished";

export interface Job {
  readonly dataSheet: string;
  readonly columns: NamedColumns;
  /** Names whose cells must be blank, because nobody has agreed to replace their contents. */
  readonly blank: readonly string[];
  readonly record: FileRecord;
  readonly lines: readonly string[];
  /** The text of the file sheet once it contains all lines. */
  readonly keptAll: string;
}

/** The progress of the file sheet: work that was stopped or refused continues from here. */
export interface Kept {
  /** The record for which the sheet was made, as JSON; another record needs another sheet. */
  readonly record: string;
  readonly sheet: string;
  readonly lines: number;
}

/** Thrown if a line of the file sheet differs from the file although it was written twice. */
export class NotKept extends Error {
  constructor(
    readonly sheet: string,
    /** The line of the file, counted from 1. */
    readonly line: number,
  ) {
    super(`Line ${line} of the file does not stand on the sheet "${sheet}" as it was read.`);
  }
}

/** Thrown when a sheet was renamed or deleted, or another workbook was opened, while the sheet was being written. */
export class SheetChanged extends Error {
  constructor(
    readonly sheet: string,
    /** The new name of the sheet; undefined if the workbook no longer contains it. */
    readonly now: string | undefined,
  ) {
    super(`The sheet "${sheet}" is not there any more.`);
  }
}

/** Returns a check that throws SheetChanged once another sheet has this name or the sheet is gone. */
export async function staying(port: WorkbookPort, sheet: string): Promise<() => Promise<void>> {
  const before = (await port.findSheets([])).find((one) => one.sheet === sheet);
  return async () => {
    const now = (await port.findSheets([])).find((one) => one.id === before?.id)?.sheet;
    if (now !== sheet) throw new SheetChanged(sheet, now);
  };
}

/** The number of attempts to write the lines: a second one if the lines changed during the first. */
const ROUNDS = 2;

/** The same columns with nothing to write in them. */
const nothingIn = (columns: NamedColumns): NamedColumns =>
  Object.fromEntries(Object.entries(columns).map(([name, list]) => [name, list.map(() => null)]));

/**
 * Reads the kept lines again. Returns the index of the first line that differs from the file; undefined if all are
 * equal.
 */
export async function firstNotKept(
  port: WorkbookPort,
  sheet: string,
  lines: readonly string[],
  signal: AbortSignal,
): Promise<number | undefined> {
  for (let from = 0; from < lines.length; from += LINES_AT_ONCE) {
    await pause();
    if (signal.aborted) throw new Stopped();
    const name = linesName(from / LINES_AT_ONCE);
    const { [name]: cells = [] } = await port.readNames(sheet, [name]);
    const piece = lines.slice(from, from + LINES_AT_ONCE);
    const differs = piece.findIndex((line, index) => cells[index]?.[0] !== line);
    if (differs >= 0) return from + differs;
  }
  return undefined;
}

type Course = [before: Kept | undefined, tell: (kept: Kept) => void, signal: AbortSignal];

/**
 * Asks the data sheet whether it would accept the columns, keeps the file, then fills the data sheet. After each piece
 * it calls `tell` with the number of lines kept so far. The file sheet says that all lines are there only after they
 * were read again and compared; lines that an undo has removed are written once more. Throws Stopped if the signal is
 * aborted, NotKept if lines do not stay, and SheetChanged if one of the two sheets changes; in all three cases the data
 * sheet has not been written. If the pane is closed in between, a note in the workbook stays.
 */
export const writeReadings = (port: WorkbookPort, job: Job, ...course: Course): Promise<Kept> =>
  noted(port, "readings", job.dataSheet, () => writeNoted(port, job, ...course));

async function writeNoted(
  port: WorkbookPort,
  { dataSheet, columns, blank, record, lines: all, keptAll }: Job,
  ...[before, tell, signal]: Course
): Promise<Kept> {
  const dataSheetStays = await staying(port, dataSheet);
  await port.fillNames(dataSheet, nothingIn(columns), blank);
  const key = JSON.stringify(record);
  let kept = before?.record === key ? before : undefined;
  if (!kept || !(await port.sheetNames()).includes(kept.sheet))
    kept = { record: key, sheet: await port.insertSheet(fileSheet(record)), lines: 0 };
  tell(kept);
  const fileSheetStays = await staying(port, kept.sheet);
  const bothStay = async (): Promise<void> => {
    await dataSheetStays();
    await fileSheetStays();
  };
  const lines = all.slice(0, record.lines);
  const pieceFrom = (from: number): NamedColumns => ({
    [linesName(from / LINES_AT_ONCE)]: lines.slice(from, from + LINES_AT_ONCE),
  });
  for (let round = 1; ; round++) {
    while (kept.lines < lines.length) {
      await pause();
      if (signal.aborted) throw new Stopped();
      await bothStay();
      await port.fillNames(kept.sheet, pieceFrom(kept.lines));
      kept = { ...kept, lines: Math.min(kept.lines + LINES_AT_ONCE, lines.length) };
      tell(kept);
    }
    await bothStay();
    const differs = await firstNotKept(port, kept.sheet, lines, signal);
    if (differs === undefined) break;
    kept = { ...kept, lines: differs - (differs % LINES_AT_ONCE) };
    tell(kept);
    if (round === ROUNDS) throw new NotKept(kept.sheet, differs + 1);
  }
  // The last piece is written again in one step with the text that all lines are there, so that one undo removes
  // both.
  await bothStay();
  if (lines.length > 0) {
    const last = (Math.ceil(lines.length / LINES_AT_ONCE) - 1) * LINES_AT_ONCE;
    await port.fillNames(kept.sheet, { ...pieceFrom(last), logger_kept: [keptAll] });
  }
  if (signal.aborted) throw new Stopped();
  await bothStay();
  await port.fillNames(dataSheet, columns, blank);
  return kept;
}
