/** Constants in the form in which they are typed into the engine. */
import { DEFAULT_LOCALE, helpers } from "@odoo/o-spreadsheet";
import type { CellValue } from "../../port";

/** The form of dates if the comma is the decimal mark: a text in this form must stay a text too. */
const DAYS_FIRST = { ...DEFAULT_LOCALE, dateFormat: "dd/mm/yyyy" };

/**
 * Whether the engine would read a typed text as something else: a number, a date, a formula, a logical value, an error.
 */
function wouldChange(text: string): boolean {
  if (text.includes("\n") && !/^['=]/.test(text)) return false;
  return (
    /^['=+#[]|^(?:true|false)$/i.test(text) ||
    helpers.isNumber(text, DEFAULT_LOCALE) ||
    helpers.isDateTime(text, DEFAULT_LOCALE) ||
    helpers.isDateTime(text, DAYS_FIRST)
  );
}

/** The format of a cell that keeps all entries as text. */
export const TEXT_FORMAT = "@";

/**
 * Whether a text in a cell of text format would become something else: only if it begins like a formula, or looks like
 * a link as the engine writes links.
 */
const isMarked = (text: string): boolean => /^'*(?:[=+]|\[.+\]\(.+\)$)/s.test(text);

/**
 * The text that a cell of text format holds, from its content: without the apostrophe that keeps the text from becoming
 * something else.
 */
export const bareValue = (content: string): string =>
  content.startsWith("'") && isMarked(content) ? content.slice(1) : content;

/** Tells whether an address lies in one of the zones ("A1:B4": number) whose number is `wanted`. */
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

/**
 * A text in the form in which it is typed to stay that text: with an apostrophe in front if the engine would read it as
 * something else.
 */
export const typedText = (text: string, format?: string): string =>
  (format === TEXT_FORMAT ? isMarked(text) : wouldChange(text)) ? `'${text}` : text;

/** The content of a cell of text format, without an apostrophe that it does not need. */
export const bareText = (content: string): string =>
  content.startsWith("'") && !isMarked(content.slice(1)) ? content.slice(1) : content;

/** A constant in the form in which it is typed into a cell of a format. */
export function typed(value: CellValue, format?: string): string {
  if (typeof value === "string") return typedText(value, format);
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}
