import { text } from ".";

/**
 * An error as the pane shows it. The message of a WorkbookError is already a sentence. The error is recognized by its
 * name, because it may come from the code of another window.
 */
export function sentenceOf(error: unknown): string {
  // Any value may have been thrown; only these two properties are read.
  const { name, message } = (error ?? {}) as Partial<Error>;
  return name === "WorkbookError" && message ? message : text.unexpected(message || String(error));
}

/** Starts a reason that stands alone with a capital letter. */
export const sentence = (reason: string): string => reason.charAt(0).toUpperCase() + reason.slice(1);
