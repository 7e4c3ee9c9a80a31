/** Decodes the bytes of a text file into lines. */
export interface TextFile {
  /** The file's lines in order; line n of the file is lines[n - 1]. */
  readonly lines: readonly string[];
  readonly encoding: "UTF-8" | "UTF-16" | "Windows-1252";
  /** Whether the last line ends with a line break: without one, the file may have been cut short. */
  readonly endsWhole: boolean;
}

/** This many bytes of a file without a byte order mark show whether it is UTF-16. */
const LOOKED_AT = 4096;

/**
 * In UTF-16, each character of plain western text has one zero byte: finds whether it comes first or second, if the
 * file is UTF-16.
 */
function utf16WithoutMark(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  const head = bytes.subarray(0, LOOKED_AT);
  const zerosAt = (odd: 0 | 1): number => head.filter((byte, index) => byte === 0 && index % 2 === odd).length;
  if (zerosAt(1) > 0.3 * head.length) return "utf-16le";
  if (zerosAt(0) > 0.3 * head.length) return "utf-16be";
  return undefined;
}

function encodingOf(bytes: Uint8Array): "utf-8" | "utf-16le" | "utf-16be" {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  return utf16WithoutMark(bytes) ?? "utf-8";
}

/** The text as lines, with any kind of line break; a blank end of the file is not a line. */
export function linesOf(text: string, encoding: TextFile["encoding"] = "UTF-8"): TextFile {
  const lines = text.split(/\r\n|\r|\n/);
  const endsWhole = lines[lines.length - 1] === "";
  if (endsWhole) lines.pop();
  return { lines, encoding, endsWhole };
}

/** Why bytes are not lines of text; the pane puts it into words. */
export type Refusal = "empty" | "archive" | "not text";

export type Decoded =
  { readonly ok: true; readonly value: TextFile } | { readonly ok: false; readonly refused: Refusal };

const refused = (why: Refusal): Decoded => ({ ok: false, refused: why });

/**
 * Decodes UTF-8 and UTF-16, with or without a byte order mark; other bytes are read as Windows-1252. Refuses an empty
 * file, a workbook or archive, and bytes that are not text.
 */
export function decode(bytes: Uint8Array): Decoded {
  if (bytes.length === 0) return refused("empty");
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return refused("archive");
  const encoding = encodingOf(bytes);
  try {
    // A file that is still being written may end within a character: the bytes of that character are left out.
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes, { stream: true });
    if (text.includes("\0")) return refused("not text");
    return { ok: true, value: linesOf(text, encoding === "utf-8" ? "UTF-8" : "UTF-16") };
  } catch {
    if (encoding !== "utf-8" || bytes.includes(0)) return refused("not text");
    return { ok: true, value: linesOf(new TextDecoder("windows-1252").decode(bytes), "Windows-1252") };
  }
}
