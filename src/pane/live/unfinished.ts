/**
 * Work that takes several writings: a note in the workbook says that it goes on. A pane that is closed or reloaded in
 * the middle leaves the note, and the next pane says what is half done.
 */
import { asTyped } from "../../reduction/message";
import { WorkbookError, type KindOfWork, type WorkbookPort, type WorkNote } from "../../workbook/port";
import { freeSheetName } from "../../workbook/rules/sheet-names";
import { text } from "../text";
import { sentenceOf } from "../text/sentence";

/** Carries out work on a sheet; a note stands in the workbook until the work has ended. Throws what the work throws. */
export async function noted<T>(
  port: WorkbookPort,
  kind: KindOfWork,
  sheet: string,
  work: () => Promise<T>,
): Promise<T> {
  const id = await port.noteWork(kind, sheet);
  try {
    return await work();
  } finally {
    // If the note cannot be removed, the next pane shows it although the work is whole, and a person removes it.
    await port.strikeWork(id).catch(() => undefined);
  }
}

/**
 * Makes a new sheet and fills it in further writings; a note that the sheet is being made stands in the workbook until all of it
 * has ended. `name` is the name that the sheet gets if it is free.
 */
export async function notedSheet<T>(port: WorkbookPort, name: string, make: () => Promise<T>): Promise<T> {
  return noted(port, "sheet", freeSheetName(name, await port.sheetNames()), make);
}

/** Fills a sheet that was just made. If this fails, the sentence says that the sheet is there, and what to do with it. */
export const filled = async <T>(sheet: string, fill: () => Promise<T>): Promise<T> =>
  fill().catch((error: unknown) => {
    throw new WorkbookError(asTyped(`${sentenceOf(error)} ${text.unfinished.leftBehind(sheet)}`), { cause: error });
  });

/** Whether a note is out of date: the sheet that was half made is deleted, or its protection is on again. */
async function isSettled(port: WorkbookPort, sheets: readonly string[], { kind, sheet }: WorkNote): Promise<boolean> {
  if (!sheets.includes(sheet)) return kind === "sheet";
  return kind === "protection" && (await port.isProtected(sheet));
}

/** The work that was cut off and still matters. Notes that are out of date, or say the same again, are taken out of the workbook. */
export async function cutOff(port: WorkbookPort): Promise<WorkNote[]> {
  const notes = await port.unfinishedWork();
  if (notes.length === 0) return [];
  const sheets = await port.sheetNames();
  const open: WorkNote[] = [];
  for (const note of notes) {
    const isSaid = open.some(({ kind, sheet }) => kind === note.kind && sheet === note.sheet);
    if (isSaid || (await isSettled(port, sheets, note))) await port.strikeWork(note.id);
    else open.push(note);
  }
  return open;
}
