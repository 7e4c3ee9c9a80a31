/**
 * Reads a zip archive from outside (PKWARE's APPNOTE 6.3, 4.3) by its directory. fflate inflates the parts and trusts
 * the archive; this module checks each part: its length is the stated one, and its CRC-32 is the one it was packed
 * with.
 */
import { say, verbatim, type Message } from "../../reduction/message";
import { Inflate, strFromU8 } from "fflate";
import { WorkbookError } from "../port";

/** Files that unpack to more bytes than this are not opened. */
const LARGEST = 300e6;

export interface Archive {
  /** Paths in the order of the directory, with "/" between folders. */
  readonly paths: readonly string[];
  has(path: string): boolean;
  /**
   * The content of a part; a damaged part is refused with a sentence. All parts together have at most LARGEST bytes.
   */
  read(path: string): Uint8Array;
}

export const damaged = (what: Message): WorkbookError =>
  new WorkbookError(
    say`The file is damaged: ${what}. Get the file once more from where it came from, or let Excel or LibreOffice repair it and save it anew.`,
  );

const tooLarge = (): WorkbookError =>
  new WorkbookError(
    say`The file unpacks to more than ${LARGEST / 1e6} MB: it is too large to open here. Open it in Excel, and save the sheets that are wanted as a file of their own.`,
  );

interface Entry {
  readonly path: string;
  /** The path in the spelling of the archive. */
  readonly name: Uint8Array;
  readonly isLocked: boolean;
  readonly method: number;
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
  readonly offset: number;
}

const END = 0x06054b50;
const END_64 = 0x06064b50;
const LOCATOR_64 = 0x07064b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_ENTRY = 0x04034b50;
const END_SIZE = 22;
/** Longest comment after the end of the directory. */
const COMMENT = 0xffff;
/** Says that a number is written elsewhere, in 64 bits. */
const ELSEWHERE = 0xffffffff;

const u64 = (view: DataView, at: number): number => Number(view.getBigUint64(at, true));

/** The start of the directory, and the number of its entries; undefined if there is none. */
function directoryOf(view: DataView): { count: number; offset: number } | undefined {
  const length = view.byteLength;
  let end = length - END_SIZE;
  while (end >= 0 && end >= length - END_SIZE - COMMENT && view.getUint32(end, true) !== END) end--;
  if (end < 0 || view.getUint32(end, true) !== END) return undefined;
  const locator = end - 20;
  if (locator >= 0 && view.getUint32(locator, true) === LOCATOR_64) {
    const end64 = u64(view, locator + 8);
    if (end64 + 56 <= length && view.getUint32(end64, true) === END_64)
      return { count: u64(view, end64 + 32), offset: u64(view, end64 + 48) };
  }
  return { count: view.getUint16(end + 10, true), offset: view.getUint32(end + 16, true) };
}

/**
 * Reads the sizes and the offset of an entry that are written in 64 bits after its name, in this order, each only if it
 * is needed.
 */
function longNumbers(view: DataView, from: number, to: number, numbers: readonly number[]): number[] {
  for (let at = from; at + 4 <= to; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== 1) continue;
    let next = at + 4;
    return numbers.map((number) => {
      if (number !== ELSEWHERE) return number;
      next += 8;
      return u64(view, next - 8);
    });
  }
  return [...numbers];
}

function entriesOf(bytes: Uint8Array, view: DataView): Entry[] {
  const directory = directoryOf(view);
  if (!directory) throw damaged(say`its end is missing, so it was cut short or is no .xlsx workbook`);
  const entries: Entry[] = [];
  let at = directory.offset;
  for (let i = 0; i < directory.count; i++) {
    if (view.getUint32(at, true) !== DIRECTORY_ENTRY) throw damaged(say`its list of parts is broken`);
    const flags = view.getUint16(at + 8, true);
    const behindName = at + 46 + view.getUint16(at + 28, true);
    const extra = view.getUint16(at + 30, true);
    const name = bytes.subarray(at + 46, behindName);
    const numbers = [view.getUint32(at + 24, true), view.getUint32(at + 20, true), view.getUint32(at + 42, true)];
    const [size = 0, packed = 0, offset = 0] = longNumbers(view, behindName, behindName + extra, numbers);
    entries.push({
      path: strFromU8(name).replaceAll("\\", "/").replace(/^\//, ""),
      name,
      isLocked: (flags & 1) !== 0,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed,
      size,
      offset,
    });
    at = behindName + extra + view.getUint16(at + 32, true);
  }
  return entries.filter(({ path }) => !path.endsWith("/"));
}

/**
 * The name stands once more before the part: if the directory has another name it is damaged, and would hide a part.
 */
function checkName(bytes: Uint8Array, view: DataView, { path, name, offset }: Entry): void {
  const isThere =
    offset + 30 + name.length <= bytes.length &&
    view.getUint32(offset, true) === LOCAL_ENTRY &&
    view.getUint16(offset + 26, true) === name.length &&
    name.every((byte, i) => bytes[offset + 30 + i] === byte);
  if (!isThere) throw damaged(say`the part ${verbatim(path)} is not where the file says`);
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  return crc;
});

/** CRC-32 of ISO 3309, which zip uses. */
export function crc32(bytes: Uint8Array): number {
  let crc = -1;
  for (let i = 0; i < bytes.length; i++) crc = (crc >>> 8) ^ CRC_TABLE[(crc ^ bytes[i]!) & 255]!;
  return ~crc >>> 0;
}

/**
 * Packed bytes that are inflated at a time: beyond the stated size they give at most about a thousand times as many
 * bytes.
 */
const STEP = 16_384;

/** Inflates a part up to its stated size. */
function inflated(packed: Uint8Array, size: number, path: string): Uint8Array {
  const wrong = (): WorkbookError => damaged(say`the part ${verbatim(path)} is not as long as the file says`);
  const out = new Uint8Array(size);
  let length = 0;
  const inflate = new Inflate((chunk) => {
    if (length + chunk.length > size) throw wrong();
    out.set(chunk, length);
    length += chunk.length;
  });
  try {
    for (let from = 0; from < packed.length; from += STEP)
      inflate.push(packed.subarray(from, from + STEP), from + STEP >= packed.length);
  } catch (error) {
    if (error instanceof WorkbookError) throw error;
    throw damaged(say`the part ${verbatim(path)} cannot be unpacked`);
  }
  if (length !== size) throw wrong();
  return out;
}

function content(bytes: Uint8Array, view: DataView, entry: Entry): Uint8Array {
  const { path, isLocked, method, crc, packed, size, offset } = entry;
  if (isLocked) throw new WorkbookError(say`The file is locked with a password: save it without one.`);
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + packed > bytes.length) throw damaged(say`the part ${verbatim(path)} is cut short`);
  const stored = bytes.subarray(start, start + packed);
  if (method !== 0 && method !== 8)
    throw new WorkbookError(
      say`The file is packed in a way that is not read here (method ${method}): open it in Excel or LibreOffice and save it anew.`,
    );
  if (method === 0 && packed !== size) throw damaged(say`the part ${verbatim(path)} is not as long as the file says`);
  const out = method === 0 ? stored : inflated(stored, size, path);
  if (crc32(out) !== crc) throw damaged(say`the part ${verbatim(path)} is not what was packed (its check sum differs)`);
  return out;
}

/**
 * Reads the directory of an archive; a damaged archive is refused with a sentence. Part names ignore upper and lower
 * case.
 */
export function openArchive(bytes: Uint8Array): Archive {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let entries: Entry[];
  try {
    entries = entriesOf(bytes, view);
    for (const entry of entries) checkName(bytes, view, entry);
  } catch (error) {
    // The directory leads past the end of the file.
    throw error instanceof RangeError ? damaged(say`its list of parts is broken`) : error;
  }
  const byPath = new Map<string, Entry>();
  for (const entry of entries) {
    const key = entry.path.toLowerCase();
    if (byPath.has(key)) throw damaged(say`it has two parts that are called ${verbatim(entry.path)}`);
    byPath.set(key, entry);
  }
  let unpacked = 0;
  return {
    paths: entries.map(({ path }) => path),
    has: (path) => byPath.has(path.toLowerCase()),
    read(path) {
      const entry = byPath.get(path.toLowerCase());
      if (!entry) throw damaged(say`its part ${verbatim(path)} is missing`);
      unpacked += entry.size;
      if (unpacked > LARGEST) throw tooLarge();
      return content(bytes, view, entry);
    },
  };
}
