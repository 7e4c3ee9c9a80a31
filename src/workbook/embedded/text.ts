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

/** A text as it has to be typed to stay that text: an apostrophe in front where the engine would read something else. */
export const typedText = (text: string): string => (wouldChange(text) ? `'${text}` : text);

/** A constant as it has to be typed. */
export function typed(value: CellValue): string {
  if (typeof value === "string") return typedText(value);
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}
