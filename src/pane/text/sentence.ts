import { text } from ".";

/** A failure as the pane shows it. A WorkbookError is a sentence already (told by its name: it may come from another window's code). */
export function sentenceOf(error: unknown): string {
  // Whatever was thrown, these two properties are looked at.
  const { name, message } = (error ?? {}) as Partial<Error>;
  return name === "WorkbookError" && message ? message : text.unexpected(message || String(error));
}

/** A reason that stands on its own begins with a capital. */
export const sentence = (reason: string): string => reason.charAt(0).toUpperCase() + reason.slice(1);
