/** The names of an .xlsx file: names of the workbook stay, names of a sheet get a free name in the engine. */
import { quoted, unquoted } from "../../../address";
import { plainText } from "../../../file/escapes";
import { all } from "../../../file/xml";
import { planName } from "../../../rules/names";
import { calledIn, freeNames, type LocalNames } from "../../names";

export interface Names {
  /** Ranges ("'Sheet 1'!A1:B2") by engine name. */
  readonly ranges: Record<string, string>;
  /** By sheet name: local name to engine name. */
  readonly local: Map<string, LocalNames>;
  readonly dropped: readonly string[];
  /** By sheet name: the names of the sheet that led to no cells. */
  readonly lost: Map<string, string[]>;
}

const RANGE = /^(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/;
const POSSIBLE_NAME = /^[\p{L}_][\p{L}\p{N}_.]*$/u;

/** The names of the file: names of the workbook stay, names of a sheet get a free engine name. */
export function readNames(workbook: Document, sheetNames: readonly string[]): Names {
  const dropped: string[] = [];
  const lost = new Map<string, string[]>();
  const global: [string, string][] = [];
  const ofSheet = new Map<string, [string, string][]>();
  for (const element of all(workbook, "definedName")) {
    const name = element.getAttribute("name") ?? "";
    if (name.startsWith("_xlnm.") || element.getAttribute("hidden") === "1") continue;
    const range = RANGE.exec(plainText(element.textContent).trim());
    const [, inQuotes, bare, cells] = range ?? [];
    const sheet = unquoted(inQuotes, bare);
    const localTo = element.getAttribute("localSheetId");
    const owner = sheetNames[Number(localTo ?? 0)];
    if (!sheet || !cells || !owner || !sheetNames.includes(sheet) || !POSSIBLE_NAME.test(name)) {
      if (owner) lost.set(owner, [...(lost.get(owner) ?? []), name]);
      dropped.push(name);
      continue;
    }
    const entry: [string, string] = [name, `${quoted(sheet)}!${cells.replaceAll("$", "")}`];
    if (localTo === null) global.push(entry);
    else ofSheet.set(owner, [...(ofSheet.get(owner) ?? []), [planName(name), entry[1]]]);
  }
  const ranges = Object.fromEntries(global);
  const local = new Map<string, LocalNames>();
  for (const [sheet, entries] of ofSheet) {
    const called = freeNames(
      entries.map(([name]) => name),
      Object.keys(ranges),
    );
    for (const [name, range] of entries) ranges[called.get(name)!] = range;
    local.set(sheet, called);
  }
  return { ranges, local, dropped, lost };
}

/** A name of a sheet, by the sheet and the name. */
const OF_SHEET = /(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!([\p{L}_][\p{L}\p{N}_.]*)(?![(:!$])/gu;

/** A local name may be in any letter case; a name of another sheet is written "'Sheet 2'!name". */
export function renamer(names: Names, sheet: string) {
  const find = (of: string, name: string) => calledIn(names.local.get(of), planName(name));
  return {
    rename: (name: string) => find(sheet, name) ?? name,
    // Most formulas name no sheet, and the expression would look for one at each of their letters.
    qualified: (formula: string) =>
      formula.includes("!")
        ? formula.replace(OF_SHEET, (whole, quoted, bare, name) => find(unquoted(quoted, bare), name) ?? whole)
        : formula,
  };
}
