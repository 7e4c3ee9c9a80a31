/**
 * The rules of entry of the sheets as the engine writes them for Excel. They are most of what the engine writes of a sheet without its
 * cells: with those of 40 data sheets at once the page did not react for 0.3 s. So they are taken out of the engine's data, and the engine
 * is asked for the rules of one sheet at a time, and once for sheets with the same rules.
 */
import { writtenSheet } from "../../evaluation/export";
import { withoutHeldGroups } from "../../evaluation/tight-minus";
import { all, first, parseXml } from "../../../file/xml";
import { doubled, plainNumber } from "./conditions";

/** What a rule asks for; a rule for days may name its day, such as "yesterday". */
interface Criterion {
  readonly type: string;
  readonly values?: readonly string[];
  readonly dateValue?: string;
}

/** A rule in the data of a file. */
export interface FileRule {
  readonly criterion: Criterion;
  readonly ranges: readonly string[];
  readonly isBlocking?: boolean;
}

/** The rule for numbers that compares like a rule for days. */
const AS_NUMBERS: Readonly<Record<string, string>> = {
  dateIs: "isEqual",
  dateIsBefore: "isLessThan",
  dateIsOnOrBefore: "isLessOrEqualTo",
  dateIsAfter: "isGreaterThan",
  dateIsOnOrAfter: "isGreaterOrEqualTo",
  dateIsBetween: "isBetween",
  dateIsNotBetween: "isNotBetween",
};

const TODAY = "=TODAY()";

/** The days that a rule can name, as the engine counts them; "last" week, month and year begin on this day and end today. */
const DAYS: Readonly<Record<string, string>> = {
  today: TODAY,
  yesterday: "=TODAY()-1",
  tomorrow: "=TODAY()+1",
  lastWeek: "=TODAY()-6",
  lastMonth: "=EDATE(TODAY()+1,-1)",
  lastYear: "=EDATE(TODAY()+1,-12)",
};

/** A criterion that the engine writes as Excel reads it; `isOfDays` if its rule must be made one for days afterwards. */
function forFile({ type, values = [], ...rest }: Criterion): {
  readonly criterion: Criterion;
  readonly isOfDays: boolean;
} {
  const asNumbers = AS_NUMBERS[type];
  const day = asNumbers && rest.dateValue ? DAYS[rest.dateValue] : undefined;
  // The engine does not write these: it ended with an error, and the workbook could not be saved.
  if (asNumbers && day !== undefined)
    return type === "dateIs" && rest.dateValue?.startsWith("last")
      ? { criterion: { type: "isBetween", values: [day, TODAY] }, isOfDays: true }
      : { criterion: { type: asNumbers, values: [day] }, isOfDays: true };
  if (asNumbers && values.some((value) => value.startsWith("=")))
    return { criterion: { type: asNumbers, values: values.map(plainNumber) }, isOfDays: true };
  if (type === "isValueInList") return { criterion: { type, values: values.map(doubled), ...rest }, isOfDays: false };
  const isOfNumbers = Object.values(AS_NUMBERS).includes(type);
  return { criterion: { type, values: isOfNumbers ? values.map(plainNumber) : values, ...rest }, isOfDays: false };
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
    const told = rules.map(({ criterion, ranges, isBlocking }) => ({ ...forFile(criterion), ranges, isBlocking }));
    const dataValidationRules = told.map(({ criterion, ranges, isBlocking }) => ({ criterion, ranges, isBlocking }));
    const ofDays = new Set(told.flatMap(({ isOfDays, ranges }) => (isOfDays ? [ranges.join(" ")] : [])));
    const key = JSON.stringify(told);
    if (!known.has(key)) {
      const text = rules.length === 0 ? undefined : withoutHeldGroups(await writtenSheet({ dataValidationRules }));
      const list = text === undefined ? undefined : listIn(text);
      for (const one of list ? all(list, "dataValidation") : [])
        if (ofDays.has(one.getAttribute("sqref") ?? "")) one.setAttribute("type", "date");
      known.set(key, list);
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
