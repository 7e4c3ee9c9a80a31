/**
 * Work that takes several writings: a note in the workbook says that it goes on. A pane that is closed or reloaded in
 * the middle leaves the note, and the next pane says what is half done.
 */
import type { KindOfWork, WorkbookPort, WorkNote } from "../../workbook/port";

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

/** Whether a note is out of date: the sheet that was half made is deleted, or its protection is on again. */
async function isSettled(port: WorkbookPort, sheets: readonly string[], { kind, sheet }: WorkNote): Promise<boolean> {
  if (!sheets.includes(sheet)) return kind === "sheet";
  return kind === "protection" && (await port.isProtected(sheet));
}

/** The work that was cut off and still matters. Notes that are out of date are taken out of the workbook. */
export async function cutOff(port: WorkbookPort): Promise<WorkNote[]> {
  const notes = await port.unfinishedWork();
  if (notes.length === 0) return [];
  const sheets = await port.sheetNames();
  const open: WorkNote[] = [];
  for (const note of notes) {
    if (await isSettled(port, sheets, note)) await port.strikeWork(note.id);
    else open.push(note);
  }
  return open;
}
