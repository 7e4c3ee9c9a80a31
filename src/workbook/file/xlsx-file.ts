/** Looks into an .xlsx file as a package of parts, as far as the hosts need it. */
import { strFromU8, strToU8, zipSync } from "fflate";
import { openArchive } from "./zip";

/** Whether the bytes begin like a zip package; an old .xls, or a file locked with a password, does not. */
export const isXlsx = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** Whether the file has charts. */
export const hasCharts = (bytes: Uint8Array): boolean =>
  openArchive(bytes).paths.some((path) => /^xl\/charts\//.test(path));

/** Whether the file has PivotTables or slicers. */
export const hasPivots = (bytes: Uint8Array): boolean =>
  openArchive(bytes).paths.some((path) => /^xl\/(pivotTables|slicers)\//.test(path));

const NOTES =
  /(^|\/)(comments\d*|threadedComment\d*|persons?\d*)\.xml$|(^|\/)(threadedComments|persons)\/|vmlDrawing\d*\.vml$/i;

/** The file without notes and comments; undefined if it has none. A damaged file is refused with a sentence. */
export function withoutNotes(bytes: Uint8Array): Uint8Array | undefined {
  const archive = openArchive(bytes);
  const kept = archive.paths.filter((path) => !NOTES.test(path));
  if (kept.length === archive.paths.length) return undefined;
  const changed = kept
    .map((path): [string, Uint8Array] => [path, archive.read(path)])
    .map(([path, content]): [string, Uint8Array] => {
      const change = changes.find(([pattern]) => pattern.test(path))?.[1];
      return [path, change ? strToU8(change(strFromU8(content))) : content];
    });
  return zipSync(Object.fromEntries(changed));
}

const changes: readonly (readonly [RegExp, (text: string) => string])[] = [
  [
    /\.rels$/,
    (text) =>
      text.replace(/<Relationship\b[^>]*\bType="[^"]*\/(comments|vmlDrawing|threadedComment|person)"[^>]*\/>/g, ""),
  ],
  [/^xl\/worksheets\/[^/]+\.xml$/, (text) => text.replace(/<legacyDrawing\b[^>]*\/>/g, "")],
  [
    /^\[Content_Types\]\.xml$/,
    (text) =>
      text.replace(/<Override\b[^>]*\bPartName="[^"]*(comments\d*|threadedComment\d*|person\d*)\.xml"[^>]*\/>/gi, ""),
  ],
];
