/** The issues of the reports of a test: which there are, and what has changed since one of them was locked. */
import {
  changesSince,
  ISSUE_COLUMNS,
  ISSUE_HASH,
  kept,
  keptIn,
  readingsText,
  type Changed,
  type IssueMark,
} from "../../../report/issue";
import { REPORT_OF } from "../../../report/report";
import { asTyped } from "../../../reduction/message";
import { labelOf } from "../../../record/cells";
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
    const hash = one(report, ISSUE_HASH);
    if (one(report, REPORT_OF) !== sheet || hash === "") return [];
    return [
      {
        report: report.sheet,
        number: Number(one(report, "issue_number")),
        day: String(one(report, "issue_day")),
        by: String(one(report, "issue_by")),
        hash: String(hash),
      },
    ];
  });

export const readingsHash = (values: NamedValues): Promise<string> =>
  sha256(new TextEncoder().encode(readingsText(values)));

/** Every value of the sheet that is not what the issue kept. */
export async function comparedWith(port: WorkbookPort, sheet: string, report: string): Promise<readonly Changed[]> {
  const issue = keptIn(await port.readNames(report, ISSUE_COLUMNS));
  if (issue.length === 0) throw new WorkbookError(asTyped(text.report.noIssue(report)));
  const { values, names } = await readTest(port, sheet, RECORD);
  return changesSince(issue, kept(values, names));
}

/** "Readings of load 3 (readings_03), row 5": what changed, in the words of the sheet. */
export const calledInIssue = ({ name, row }: Changed): string =>
  /^(times|readings)_\d\d$/.test(name) || row > 1 ? text.report.rowOf(labelOf(name), row) : labelOf(name);
