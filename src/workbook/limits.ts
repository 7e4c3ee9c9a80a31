/**
 * The longest text and formula of a cell in Excel, and the most line feeds of a text ("Excel specifications and limits", Microsoft); the
 * embedded sheet saves for Excel, and has the same limits.
 */
import { say, type Message } from "../reduction/message";

export const LONGEST_TEXT = 32_767;
export const MOST_LINE_FEEDS = 253;
export const LONGEST_FORMULA = 8_192;

export const lineFeedsOf = (text: string): number => text.split("\n").length - 1;

/** The reason why no cell takes a value; undefined if a cell takes it. */
export function faultOfText(value: unknown): Message | undefined {
  if (typeof value !== "string") return undefined;
  if (value.length > LONGEST_TEXT)
    return say`its text has ${value.length} characters, and ${LONGEST_TEXT} at most are taken`;
  const feeds = lineFeedsOf(value);
  return feeds > MOST_LINE_FEEDS
    ? say`its text has ${feeds} line feeds, and ${MOST_LINE_FEEDS} at most are taken`
    : undefined;
}
