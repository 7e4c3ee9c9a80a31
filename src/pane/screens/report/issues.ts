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
import { readTest } from "../../live/workbook-store";
import type { NamedValues } from "../../../record/record";
import { WorkbookError, type CellValue, type Looked, type WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { sha256 } from "../../ui/sha256";

export interface IssueOf extends IssueMark {
  /** The sheet of the report. */
  readonly report: string;
}

const one = ({ values }: Looked, name: string): CellValue => values[name]?.[0]?.[0] ?? "";

/** The issues of the reports of a sheet, oldest first. */
export const issuesOf = (sheet: string, beside: readonly Looked[]): IssueOf[] =>
  beside.flatMap((report): IssueOf[] => {
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
  });

export const readingsHash = (values: NamedValues): Promise<string> =>
  sha256(new TextEncoder().encode(readingsText(values)));

/** The SHA-256 of what an issue says of itself and of its locked values. */
export const issueHash = (mark: IssueMark, locked: readonly Kept[]): Promise<string> =>
  sha256(new TextEncoder().encode(issueText(mark, locked)));

export interface Comparison {
  /** Every value of the sheet that is not what the issue kept. */
  readonly changes: readonly Changed[];
  /**
   * "changed": what the issue keeps is not what was locked, since its SHA-256 is another; "unknown": the issue has no
   * SHA-256 of its values.
   */
  readonly lock: "kept" | "changed" | "unknown";
}

/** Compares the sheet with what an issue keeps, and this with the SHA-256 that the issue has of it. */
export async function comparedWith(port: WorkbookPort, sheet: string, issue: IssueOf): Promise<Comparison> {
  const locked = keptIn(await port.readNames(issue.report, ISSUE_COLUMNS));
  if (locked.length === 0) throw new WorkbookError(asTyped(text.report.noIssue(issue.report)));
  const { values, names } = await readTest(port, sheet, RECORD);
  const isKept = issue.valuesHash === (await issueHash(issue, locked));
  return {
    changes: changesSince(locked, kept(values, names)),
    lock: issue.valuesHash === undefined ? "unknown" : isKept ? "kept" : "changed",
  };
}

/** "Readings of load 3 (readings_03), row 5": what changed, in the words of the sheet. */
export const calledInIssue = ({ name, row }: Changed): string =>
  /^(times|readings)_\d\d$/.test(name) || row > 1 ? text.report.rowOf(labelOnSheet(name), row) : labelOnSheet(name);
