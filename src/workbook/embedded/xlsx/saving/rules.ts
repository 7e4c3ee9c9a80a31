/**
 * The rules of entry of the sheets as the engine writes them for Excel. They are most of what the engine writes of a sheet without its
 * cells: with those of 40 data sheets at once the page did not react for 0.3 s. So they are taken out of the engine's data, and the engine
 * is asked for the rules of one sheet at a time, and once for sheets with the same rules.
 */
import { writtenSheet } from "../../evaluation/export";
import { withoutHeldGroups } from "../../evaluation/tight-minus";
import { first, parseXml } from "../../../file/xml";

/** A rule in the data of a file. */
export interface FileRule {
  readonly criterion: object;
  readonly ranges: readonly string[];
  readonly isBlocking?: boolean;
}

/** The list of rules in the part of a sheet; undefined if it is empty, as for boxes to tick, which the format does not allow. */
function listIn(text: string): Element | undefined {
  const list = first(parseXml(text), "dataValidations");
  return list?.childElementCount ? list : undefined;
}

/** The list of the rules of each sheet, to be copied into its part; undefined for a sheet without rules. `rest` lets the page react. */
export async function writtenRules(
  sheets: readonly (readonly FileRule[])[],
  rest: () => Promise<void>,
): Promise<(Element | undefined)[]> {
  const known = new Map<string, Element | undefined>();
  const lists: (Element | undefined)[] = [];
  for (const rules of sheets) {
    await rest();
    const dataValidationRules = rules.map(({ criterion, ranges, isBlocking }) => ({ criterion, ranges, isBlocking }));
    const key = JSON.stringify(dataValidationRules);
    if (!known.has(key)) {
      const text = rules.length === 0 ? undefined : withoutHeldGroups(await writtenSheet({ dataValidationRules }));
      known.set(key, text === undefined ? undefined : listIn(text));
    }
    lists.push(known.get(key));
  }
  return lists;
}

/** Elements of a sheet that must come after its rules. */
const BEHIND: ReadonlySet<string> = new Set(["hyperlinks", "drawing", "tableParts"]);

/** Puts a copy of the rules into the part of a sheet as the engine has written it. Returns the rules. */
export function putRules(document: Document, list: Element | undefined): Element[] {
  if (!list) return [];
  const root = document.documentElement;
  const own = document.importNode(list, true);
  root.insertBefore(own, [...root.children].find(({ localName }) => BEHIND.has(localName)) ?? null);
  return [...own.children];
}
