/**
 * Sheets with an apostrophe in their name, which the engine cannot have: they are renamed before the engine reads a
 * file.
 */
import { say, verbatim, type Message } from "../../../reduction/message";
import { nth } from "../../../reduction/numeric/lists";
import { quoted } from "../../address";
import { freeSheetName, withoutApostrophes } from "../../rules/sheet-names";
import { STRINGS } from "./package";
import type { Parts } from "./parts";
import { all, textInXml } from "../../file/xml";

/** The spellings of a sheet name before "!" in the text of an element. */
const spellings = (name: string): string[] => {
  const inFront = textInXml(`${quoted(name)}!`);
  return ["'", "&apos;", "&#39;"].map((apostrophe) => inFront.replaceAll("'", apostrophe));
};

/** Renames such sheets in all parts, references too. Returns a sentence for each. */
export function renameApostrophes(parts: Parts, workbook: Document): Message[] {
  const sheets = all(workbook, "sheet");
  const names = sheets.map((sheet) => sheet.getAttribute("name") ?? "");
  const renamed = names.flatMap((name, at): (readonly [string, string])[] => {
    if (!name.includes("'")) return [];
    const now = freeSheetName(withoutApostrophes(name), [...names.slice(0, at), ...names.slice(at + 1)]);
    names[at] = now;
    nth(sheets, at).setAttribute("name", now);
    return [[name, now]];
  });
  if (renamed.length > 0)
    for (const path of parts.paths().filter((path) => path.endsWith(".xml") && path !== STRINGS)) {
      const text = parts.get(path)!;
      let changed = text;
      for (const [before, now] of renamed)
        for (const spelling of spellings(before)) changed = changed.replaceAll(spelling, `'${textInXml(now)}'!`);
      if (changed !== text) parts.set(path, changed);
    }
  return renamed.map(
    ([before, now]) =>
      say`The sheet "${verbatim(before)}" is called "${verbatim(now)}" here: the sheet on this page allows no apostrophe in a name.`,
  );
}
