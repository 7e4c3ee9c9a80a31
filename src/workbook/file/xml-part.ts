/** Parts of a file from outside, read as XML. A part that is damaged or can harm is refused with a sentence. */
import { say, verbatim } from "../../reduction/message";
import { WorkbookError } from "../port";
import { parseXml } from "./xml";
import { damaged } from "./zip";

/** The bytes of a part as text, without the XML declaration. */
function decoded(bytes: Uint8Array, path: string): string {
  const head = String.fromCharCode(...bytes.subarray(0, 200));
  const declared = /^<\?xml[^>]*encoding=["']([\w.:-]+)/.exec(head)?.[1];
  const wide = head.startsWith("\xff\xfe") || head.startsWith("<\0") ? "utf-16le" : undefined;
  const wideTurned = head.startsWith("\xfe\xff") || head.startsWith("\0<") ? "utf-16be" : undefined;
  try {
    const text = new TextDecoder(wide ?? wideTurned ?? declared ?? "utf-8", { fatal: true }).decode(bytes);
    return text.replace(/^\s*<\?xml[^>]*\?>/, "");
  } catch {
    throw damaged(say`the characters of its part ${verbatim(path)} cannot be read`);
  }
}

/**
 * Whether a document type declaration comes before the root. No part of a workbook has one, and its entities can grow
 * without limit.
 */
function hasDocumentType(text: string): boolean {
  for (let at = 0; ;) {
    while (/\s/.test(text[at] ?? "")) at++;
    const end = text.startsWith("<?", at) ? "?>" : text.startsWith("<!--", at) ? "-->" : undefined;
    if (end === undefined) return text.startsWith("<!DOCTYPE", at);
    const found = text.indexOf(end, at);
    if (found < 0) return false;
    at = found + end.length;
  }
}

/**
 * Elements of a workbook are nested within at most twenty others; parsers take very long, or overflow, with far deeper
 * nesting.
 */
const MOST_DEPTH = 250;

/** Whether elements are nested deeper than in any workbook; comments are ignored. */
function isTooDeep(text: string): boolean {
  let depth = 0;
  for (let at = text.indexOf("<"); at >= 0; at = text.indexOf("<", at + 1)) {
    const next = text[at + 1];
    if (next === "/") depth--;
    else if (next !== "!" && next !== "?") {
      if (++depth > MOST_DEPTH) return true;
      const end = text.indexOf(">", at);
      if (text[end - 1] === "/") depth--;
    }
  }
  return false;
}

/**
 * A part as text that a parser of XML takes without harm. Refuses a part that declares a document type or is nested too
 * deep.
 */
export function safeText(bytes: Uint8Array, path: string): string {
  const text = decoded(bytes, path);
  if (hasDocumentType(text))
    throw new WorkbookError(
      say`The file is not opened: its part ${verbatim(path)} declares a document type, which no workbook does and which can harm. Have it saved anew by Excel or LibreOffice.`,
    );
  if (isTooDeep(text))
    throw damaged(say`elements of its part ${verbatim(path)} stand more than ${MOST_DEPTH} deep in one another`);
  return text;
}

/** The XML of a text that `safeText` returned. */
export function parsePart(text: string, path: string): Document {
  try {
    return parseXml(text);
  } catch {
    throw damaged(say`its part ${verbatim(path)} is not valid XML`);
  }
}
