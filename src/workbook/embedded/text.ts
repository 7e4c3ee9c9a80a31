/** Constants as the engine wants them typed. */
import { DEFAULT_LOCALE, helpers } from "@odoo/o-spreadsheet";
import type { CellValue } from "../port";

/** Whether a text, typed as it stands, would become something else: a number, a date, a formula, a logical value, an error. */
function wouldChange(text: string): boolean {
  if (text.includes("\n") && !/^['=]/.test(text)) return false;
  return (
    /^['=+#[]|^(?:true|false)$/i.test(text) ||
    helpers.isNumber(text, DEFAULT_LOCALE) ||
    helpers.isDateTime(text, DEFAULT_LOCALE)
  );
}

/** The format of a cell that keeps what is typed as text. */
export const TEXT_FORMAT = "@";

/** In a cell of text only what begins as a formula would become something else, and an apostrophe would show. */
const wouldBeFormula = (text: string): boolean => /^'*[=+]/.test(text);

/** A cell's value as it was meant: without the apostrophe that keeps a cell of text from being a formula. */
export const readValue = (value: CellValue | null, format?: string): CellValue =>
  typeof value === "string" && format === TEXT_FORMAT && /^'+[=+]/.test(value) ? value.slice(1) : (value ?? "");

/** A text as it has to be typed to stay that text: an apostrophe in front where the engine would read something else. */
export const typedText = (text: string, format?: string): string =>
  (format === TEXT_FORMAT ? wouldBeFormula(text) : wouldChange(text)) ? `'${text}` : text;

/** The text of a cell of text without an apostrophe that it does not need. */
export const bareText = (content: string): string =>
  content.startsWith("'") && !wouldBeFormula(content.slice(1)) ? content.slice(1) : content;

/** A constant as it has to be typed into a cell of a format. */
export function typed(value: CellValue, format?: string): string {
  if (typeof value === "string") return typedText(value, format);
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}
