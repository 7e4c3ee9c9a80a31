/**
 * Notes on work that takes several requests. A pane that is closed or reloaded in between never sends the others: the
 * note stays in the settings of the workbook, and the next pane says what is half done. A note is written and taken out
 * in requests that the work makes anyway.
 */
import { KINDS_OF_WORK, type KindOfWork, type WorkNote } from "../port";
import { timeStamp } from "../time-stamp";
import { isSeveral, send, type Step } from "./requests";

const KEY = "clayledger unfinished ";

/** Writes a note with the next request. Returns its id. */
export function note(context: Excel.RequestContext, kind: KindOfWork, sheet: string): string {
  const id = Math.random().toString(36).slice(2);
  const since = timeStamp(new Date());
  context.workbook.settings.add(KEY + id, JSON.stringify({ kind, sheet, since }));
  return id;
}

/** Takes a note out with the next request; Excel does nothing if it is not there. */
export const strike = (context: Excel.RequestContext, id: string): void =>
  context.workbook.settings.getItemOrNullObject(KEY + id).delete();

/** Takes a note out at once, after a failure; if Excel refuses this too, the note stays. */
export async function strikeNow(context: Excel.RequestContext, id: string | undefined): Promise<void> {
  if (id === undefined) return;
  strike(context, id);
  await context.sync().catch(() => undefined);
}

/** Carries out steps that write cells of a sheet, with a note as long as they take more than one request. */
export async function sendNoted(context: Excel.RequestContext, sheet: string, steps: readonly Step[]): Promise<void> {
  if (!isSeveral(steps)) return send(context, steps);
  let noted: string | undefined;
  const write = { act: () => void (noted = note(context, "cells", sheet)) };
  const takeOut = { act: () => noted !== undefined && strike(context, noted) };
  try {
    await send(context, [write, ...steps, takeOut]);
  } catch (error) {
    await strikeNow(context, noted);
    throw error;
  }
}

/** The note behind a setting of the workbook; undefined for a setting that is none, or that somebody changed. */
function noteOf({ key, value }: Excel.Setting): WorkNote | undefined {
  if (!key.startsWith(KEY)) return undefined;
  try {
    // Only `note` writes these settings; the fields are looked at before they are used.
    const { kind, sheet, since }: Partial<WorkNote> = JSON.parse(String(value));
    const isKnown = kind !== undefined && KINDS_OF_WORK.includes(kind) && typeof sheet === "string";
    return isKnown ? { id: key.slice(KEY.length), kind, sheet, since: String(since) } : undefined;
  } catch {
    return undefined;
  }
}

export async function unfinishedWork(context: Excel.RequestContext): Promise<WorkNote[]> {
  const settings = context.workbook.settings.load("items/key,items/value");
  await context.sync();
  return settings.items.flatMap((setting) => noteOf(setting) ?? []);
}
