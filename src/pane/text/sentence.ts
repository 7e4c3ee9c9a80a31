import { isStopped } from "../../workbook/in-slices";
import type { WorkbookError } from "../../workbook/port";
import { text } from ".";
import { inWords } from "./messages";

/**
 * An error as the pane shows it. A WorkbookError has a sentence; work that a person stopped left the workbook as it
 * was. The error is recognized by its name, because it may come from the code of another window.
 */
export function sentenceOf(error: unknown): string {
  // Any value may have been thrown; only these three properties are read.
  const { name, message, said } = (error ?? {}) as Partial<WorkbookError>;
  if (isStopped(error)) return text.stopped;
  return name === "WorkbookError" && said ? inWords(said) : text.unexpected(message || String(error));
}

/** A symbol of the trade at the beginning of a reason, such as e, mv or d100: it keeps its small letter. */
const SYMBOL = /^(?:e|k|[acm]v|[wdt][0-9f]\w*)(?![\w-])/;

/** Starts a reason that stands alone with a capital letter. */
export const sentence = (reason: string): string =>
  SYMBOL.test(reason) ? reason : reason.charAt(0).toUpperCase() + reason.slice(1);
