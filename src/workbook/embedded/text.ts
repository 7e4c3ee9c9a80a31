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

/** In a cell of text only what begins as a formula, or looks like a link as the engine writes it, would become something else. */
const isMarked = (text: string): boolean => /^'*(?:[=+]|\[.+\]\(.+\)$)/s.test(text);

/** What a cell of text holds, by its content: without the apostrophe that keeps the text from becoming something else. */
export const bareValue = (content: string): string =>
  content.startsWith("'") && isMarked(content) ? content.slice(1) : content;

/** Whether an address lies in a zone of those ("A1:B4": number) whose number is one of `wanted`. */
export function inZonesOf(
  zones: Readonly<Record<string, number>> | undefined,
  wanted: (number: number) => boolean,
): (address: string) => boolean {
  const places = Object.entries(zones ?? {}).flatMap(([address, number]) => (wanted(number) ? [address] : []));
  const single = new Set(places);
  const several = places.filter((address) => address.includes(":")).map((address) => helpers.toZone(address));
  return (address) => {
    if (single.has(address)) return true;
    if (several.length === 0) return false;
    const { left: col, top: row } = helpers.toZone(address);
    return several.some(({ left, right, top, bottom }) => col >= left && col <= right && row >= top && row <= bottom);
  };
}

/** A text as it has to be typed to stay that text: an apostrophe in front where the engine would read something else. */
export const typedText = (text: string, format?: string): string =>
  (format === TEXT_FORMAT ? isMarked(text) : wouldChange(text)) ? `'${text}` : text;

/** The text of a cell of text without an apostrophe that it does not need. */
export const bareText = (content: string): string =>
  content.startsWith("'") && !isMarked(content.slice(1)) ? content.slice(1) : content;

/** A constant as it has to be typed into a cell of a format. */
export function typed(value: CellValue, format?: string): string {
  if (typeof value === "string") return typedText(value, format);
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}
