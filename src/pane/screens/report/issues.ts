/** The issues of the reports of a test: which there are, and what has changed since one of them was locked. */
import {
  changesSince,
  ISSUE_COLUMNS,
  ISSUE_HASH,
  ISSUE_VALUES_HASH,
  issueText,
  kept,
  keptIn,
  readingsText,
  type Changed,
  type IssueMark,
  type Kept,
} from "../../../report/issue";
import { REPORT_OF } from "../../../report/report";
import { asTyped } from "../../../reduction/message";
import { labelOnSheet } from "../../live/sheet-language";
import { RECORD } from "../../live/want";
import { FIELDS, MORE_FIELDS } from "../../../specification/fields";
import { formatOf, isDate, type Measure, type System } from "../../../specification/measures";
import { loadOfReadings } from "../../../specification/readings";
import { readTest } from "../../live/workbook-store";
import type { NamedValues } from "../../../record/record";
import { isoDay, isoMoment } from "../../../workbook/day-number";
import { WorkbookError, type CellValue, type Looked, type WorkbookPort } from "../../../workbook/port";
import { contentText, numberText } from "../../text/number";
import { text } from "../../text";
import { sha256 } from "../../ui/sha256";

export interface IssueOf extends IssueMark {
  /** The sheet of the report. */
  readonly report: string;
}

const one = ({ values }: Looked, name: string): CellValue => values[name]?.[0]?.[0] ?? "";

/** The issues of the reports of a sheet, oldest first. */
export const issuesOf = (sheet: string, beside: readonly Looked[]): IssueOf[] =>
  beside
    .flatMap((report): IssueOf[] => {
      const [hash, valuesHash] = [one(report, ISSUE_HASH), one(report, ISSUE_VALUES_HASH)];
      if (one(report, REPORT_OF) !== sheet || hash === "") return [];
      return [
        {
          report: report.sheet,
          number: Number(one(report, "issue_number")),
          day: String(one(report, "issue_day")),
          by: String(one(report, "issue_by")),
          hash: String(hash),
          ...(valuesHash !== "" && { valuesHash: String(valuesHash) }),
        },
      ];
    })
    .sort((a, b) => a.number - b.number);

export const readingsHash = (values: NamedValues): Promise<string> =>
  sha256(new TextEncoder().encode(readingsText(values)));

/** The SHA-256 of what an issue says of itself and of its locked values. */
export const issueHash = (mark: IssueMark, locked: readonly Kept[]): Promise<string> =>
  sha256(new TextEncoder().encode(issueText(mark, locked)));

export interface Comparison {
  /** Every value of the sheet that is not what the issue kept: what a person entered first. */
  readonly changes: readonly Changed[];
  /**
   * "changed": what the issue keeps is not what was locked, since its SHA-256 is another; "unknown": the issue has no
   * SHA-256 of its values.
   */
  readonly lock: "kept" | "changed" | "unknown";
  /** The units of the sheet, by which its cells show their numbers. */
  readonly system: System;
}

/** Compares the sheet with what an issue keeps, and this with the SHA-256 that the issue has of it. */
export async function comparedWith(port: WorkbookPort, sheet: string, issue: IssueOf): Promise<Comparison> {
  const locked = keptIn(await port.readNames(issue.report, ISSUE_COLUMNS));
  if (locked.length === 0) throw new WorkbookError(asTyped(text.report.noIssue(issue.report)));
  const { values, names } = await readTest(port, sheet, RECORD);
  const isKept = issue.valuesHash === (await issueHash(issue, locked));
  return {
    changes: enteredFirst(changesSince(locked, kept(values, names))),
    lock: issue.valuesHash === undefined ? "unknown" : isKept ? "kept" : "changed",
    system: ["in", "ft"].includes(String(values.length_unit?.[0]?.[0] ?? "").trim()) ? "US" : "SI",
  };
}

/** "Readings of load 3 (readings_03), row 5": what changed, in the words of the sheet. */
export const calledInIssue = ({ name, row }: Changed): string =>
  loadOfReadings(name) !== undefined || row > 1 ? text.report.rowOf(labelOnSheet(name), row) : labelOnSheet(name);

const ALL_FIELDS = new Map([...FIELDS, ...MORE_FIELDS].map((field) => [field.name, field]));

/** What a person entered before what follows from it. */
const enteredFirst = (changes: readonly Changed[]): Changed[] => {
  const isEntered = ({ name }: Changed): boolean => ALL_FIELDS.get(name)?.kind === "input";
  return [...changes.filter(isEntered), ...changes.filter((one) => !isEntered(one))];
};

/** A number as a cell of this measure shows it; undefined if the cell shows it as it was typed. */
function asShown(value: number, measure: Measure, system: System): string | undefined {
  if (isDate(measure)) return measure === "date" ? isoDay(value) : isoMoment(value);
  const format = formatOf(measure, system);
  return format && numberText(value, format);
}

/** Two numbers with as few significant digits as tell them apart, four at least; in percent where their cells are. */
function toldApart(from: number, to: number, isPercent: boolean): { readonly from: string; readonly to: string } {
  for (let figures = 4; ; figures++) {
    const said = (value: number): string =>
      contentText(Number(((isPercent ? 100 : 1) * value).toPrecision(figures))) + (isPercent ? "%" : "");
    if (figures === 12 || said(from) !== said(to)) return { from: said(from), to: said(to) };
  }
}

/**
 * The two values of a change as their cells show them, a blank as a word; with more digits where the cells show both alike.
 * A cell without a number format shows what was typed.
 */
export function saidOfChange(
  { name, from, to }: Pick<Changed, "name" | "from" | "to">,
  system: System,
): { readonly from: string; readonly to: string } {
  const measure = ALL_FIELDS.get(name)?.measure;
  const shown = (value: CellValue): string => {
    if (value === "") return text.report.blank;
    return (typeof value === "number" && measure && asShown(value, measure, system)) || contentText(value);
  };
  const said = { from: shown(from), to: shown(to) };
  return said.from === said.to && typeof from === "number" && typeof to === "number"
    ? toldApart(from, to, said.from.endsWith("%"))
    : said;
}
