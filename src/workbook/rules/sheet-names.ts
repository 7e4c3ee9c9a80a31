/** Names for new sheets, by Excel's rules; the embedded sheet follows them, since its workbooks are saved for Excel. */
import { say, verbatim, type Message } from "../../reduction/message";

const LONGEST_SHEET_NAME = 31;

/** Control characters, code points that are not characters, and halves of a surrogate pair. */
const UNFIT = /[\0-\x1f\x7f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/**
 * The wanted sheet name, made valid for Excel (at most 31 characters, no control character, none of : \ / ? * [ ], no
 * apostrophe at an end, not "History", which Excel reserves), with " 2", " 3", ... added if a sheet of that name, in
 * any case, exists.
 */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const used = new Set([...taken, "History"].map((name) => name.toLowerCase()));
  const base = trimmed(wanted.replace(/[:\\/?*[\]]/g, "-").replace(UNFIT, "")).trim() || "Sheet";
  for (let count = 1; ; count++) {
    const suffix = count === 1 ? "" : ` ${count}`;
    const name =
      shortened(base, LONGEST_SHEET_NAME - suffix.length)
        .replace(UNFIT, "")
        .trimEnd() + suffix;
    if (!used.has(name.toLowerCase())) return name;
  }
}

/** Whether Excel takes this name of a sheet. */
export const isSheetName = (name: string): boolean => freeSheetName(name, []) === name.trim();

/** A name of so many letters at most; a number at its end, which tells it from another name, is kept. */
function shortened(name: string, most: number): string {
  if (name.length <= most) return name;
  const [end = ""] = / \d{1,3}$/.exec(name) ?? [];
  return name.slice(0, most - end.length).trimEnd() + end;
}

const trimmed = (name: string): string => name.replace(/^'+|'+$/g, "");

/** The sheet name with ’ for each apostrophe, since the embedded sheet refuses apostrophes. */
export const withoutApostrophes = (name: string): string => trimmed(name).replaceAll("'", "’");

export const noSheet = (sheet: string): Message => say`There is no sheet called "${verbatim(sheet)}" in this workbook.`;

export const hiddenSheet = (sheet: string, veryHidden = false): Message =>
  veryHidden
    ? say`The sheet "${verbatim(sheet)}" is hidden by a macro or another add-in, and only these can show it: ask whoever made the workbook.`
    : say`The sheet "${verbatim(sheet)}" is hidden: show it (right click on a sheet's tab, Unhide), and try again.`;
