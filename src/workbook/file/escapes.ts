/**
 * Characters of texts that XML cannot hold (XML 1.0, 2.2), in the spelling of a file: "_x0007_" (ISO/IEC 29500-1,
 * 22.9.2.19). In a text that itself looks like such a spelling, the underscore is escaped.
 */
import { child, childrenOf, type Linked } from "./xml";

const FORBIDDEN = String.raw`[\0-\x08\x0b-\x1f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]`;
const UNHELD = new RegExp(`_(?=x[0-9a-f]{4}_)|${FORBIDDEN}`, "gi");

export const heldText = (text: string): string =>
  text.replace(UNHELD, (one) => `_x${one.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`);

export const plainText = (held: string): string =>
  held.replace(/_x([0-9a-f]{4})_/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)));

/** For places of a file without such a spelling: each forbidden character becomes the replacement character. */
export const readableText = (text: string): string => text.replace(new RegExp(FORBIDDEN, "g"), "\ufffd");

/** The text of the runs of a string, without phonetic text. */
export function runsText<E extends Linked<E>>(string: Linked<E>): string {
  let text = "";
  for (const one of childrenOf(string))
    if (one.localName === "t") text += one.textContent;
    else if (one.localName === "r") text += child(one, "t")?.textContent ?? "";
  return plainText(text);
}
