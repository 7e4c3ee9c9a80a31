/** Says what kind of file was opened in place of an .xlsx workbook, in a sentence with the remedy. */
import { say, verbatim, type Message } from "../../../reduction/message";
import { isXlsx } from "../../file/xlsx-file";
import type { Archive } from "../../file/zip";

const TO_XLSX = say`open it in Excel or LibreOffice and save it as .xlsx`;

const startsWith = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, i) => bytes[i] === byte);

/** Whether a word occurs in the bytes with two bytes per character, as in the directory of a compound file. */
function hasWideWord(bytes: Uint8Array, word: string): boolean {
  const wide = Uint8Array.from([...word].flatMap((one) => [one.charCodeAt(0), 0]));
  for (let at = bytes.indexOf(wide[0]!); at >= 0; at = bytes.indexOf(wide[0]!, at + 1))
    if (wide.every((byte, i) => bytes[at + i] === byte)) return true;
  return false;
}

/** Whether the bytes are text; UTF-16 only with a byte order mark. */
const isText = (bytes: Uint8Array): boolean =>
  startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff]) || !bytes.subarray(0, 4096).includes(0);

/** A sentence for bytes that are not a zip archive; undefined for a zip archive. */
export function noArchive(bytes: Uint8Array): Message | undefined {
  if (isXlsx(bytes)) return undefined;
  if (bytes.length === 0) return say`The file is empty and not an .xlsx workbook: choose another one.`;
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    if (hasWideWord(bytes, "EncryptedPackage"))
      return say`This workbook is locked with a password: open it in Excel and save it without one (File, Info, Protect Workbook, Encrypt with Password, clear the field).`;
    if (hasWideWord(bytes, "Workbook") || hasWideWord(bytes, "Book"))
      return say`This is a workbook of the old .xls kind: open it in Excel and save it as .xlsx.`;
    return say`This is a workbook of the old .xls kind, or one locked with a password: save it from Excel as .xlsx without a password.`;
  }
  if (startsWith(bytes, [0x25, 0x50, 0x44, 0x46]))
    return say`This is a PDF file and not an .xlsx workbook: choose another one.`;
  if (!isText(bytes)) return say`This is not an .xlsx workbook, whatever its name says: choose another one.`;
  const head = new TextDecoder().decode(bytes.subarray(0, 200)).trimStart();
  return head.startsWith("<")
    ? say`This is a web page or an XML file, whatever its name says, and not an .xlsx workbook: ${TO_XLSX}.`
    : say`This is a file of text, as .csv and .txt are, whatever its name says, and not an .xlsx workbook: ${TO_XLSX}; readings of a logger are taken in as they are under Readings.`;
}

/** A sentence for an archive that holds no workbook of .xlsx. */
export function noWorkbook(archive: Archive): Message {
  const inside = archive.paths.find((path) => /\.xls[xmb]?$/i.test(path));
  if (archive.has("content.xml") && archive.has("mimetype"))
    return say`This is an OpenDocument file, as .ods is: ${TO_XLSX}.`;
  if (archive.has("xl/workbook.bin")) return say`This is a workbook of the binary .xlsb kind: ${TO_XLSX}.`;
  if (archive.has("word/document.xml") || archive.has("ppt/presentation.xml"))
    return say`This is a document of Word or PowerPoint and no workbook: choose another file.`;
  if (inside !== undefined)
    return say`This is a zip archive that holds ${verbatim(inside)}: unpack it first, and open that.`;
  return say`This is a zip archive and not an .xlsx workbook, or a damaged one: choose another file, or get this one once more from where it came from.`;
}
