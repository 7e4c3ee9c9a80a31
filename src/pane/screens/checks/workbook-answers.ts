/**
 * Reads what the workbook contains besides the record of the data sheet: a firm's limits, the answers to questions,
 * changes of the cells, and the masses of the other data sheets.
 */
import type { OtherTest } from "../../../checks";
import { nth } from "../../../reduction/numeric/lists";
import { asTyped } from "../../../reduction/message";
import {
  ANSWER_NAMES,
  ANSWERS_SHEET_NAME,
  answerRow,
  answersSheet,
  appended,
  readAnswers,
  type Acknowledgement,
} from "../../../checks/answers";
import { CONTENT_NAMES, integrity, type CellFinding } from "../../../checks/integrity";
import { LIMIT_NAMES, LIMITS_SHEET_NAME, readLimits, type FirmLimits } from "../../../checks/limits";
import { COMPARED_NAMES } from "../../../checks/questions/other-tests";
import { readRecord } from "../../../record/record";
import { ISSUE_HASH, ISSUE_NAMES } from "../../../report/issue";
import { REPORT_OF } from "../../../report/report";
import { DATA_SHEET_NAME } from "../../../specification/readings";
import type { SheetLanguage } from "../../../specification/text/language";
import { withRows } from "../../../workbook/table-sheet";
import type { Looked, SheetPlan, WorkbookPort } from "../../../workbook/port";
import type { Beside, Want } from "../../live/want";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";

/** The other sheets: a firm's limits, the answers to questions, the issues of reports, and the other data sheets. */
export const BESIDE: readonly Beside[] = [
  { mark: LIMITS_SHEET_NAME, names: LIMIT_NAMES, places: true },
  { mark: ANSWERS_SHEET_NAME, names: ANSWER_NAMES },
  { mark: ISSUE_HASH, names: [REPORT_OF, ...ISSUE_NAMES] },
  { mark: DATA_SHEET_NAME, names: COMPARED_NAMES },
];

/** What the reviewer's questions need from the workbook. */
export const REVIEW: Want = { contents: CONTENT_NAMES, hidden: true, beside: BESIDE };

/** The sheets that have a name, with their values. */
const having = <T extends Pick<Looked, "values">>(sheets: readonly T[], name: string): T[] =>
  sheets.filter(({ values }) => values[name]);

export interface LimitsInWorkbook extends FirmLimits {
  /** The sheet of limits; the first one if there are several. */
  readonly sheet?: string;
}

/** The limits of the firm from the sheet of limits among these sheets. */
export function limitsIn(sheets: readonly Pick<Looked, "sheet" | "values" | "names">[]): LimitsInWorkbook {
  const [first, ...others] = having(sheets, LIMITS_SHEET_NAME);
  if (!first) return readLimits({});
  const { sheet, values, names } = first;
  const limits = readLimits(values, names);
  const unread = others.map((other) => other.sheet);
  const more = unread.length ? [asTyped(text.checks.otherLimits(unread, sheet))] : [];
  return { ...limits, sheet, remarks: [...limits.remarks, ...more] };
}

const answersIn = (sheets: readonly Looked[], dataSheet: string): Acknowledgement[] =>
  having(sheets, ANSWERS_SHEET_NAME)
    .flatMap(({ values }) => readAnswers(values))
    .filter((one) => one.sheet === dataSheet);

/** Adds rows below the rows of a table that has room, or in a new sheet if no table has room. It overwrites nothing. */
export async function appendRows(
  port: WorkbookPort,
  names: readonly string[],
  plan: () => SheetPlan,
  rows: readonly (readonly (string | number)[])[],
): Promise<string> {
  for (const { sheet, values } of having(await port.readSheets(names), nth(names, 1)).reverse()) {
    const columns = appended(values, names, rows);
    if (!columns) continue;
    await port.fillNames(sheet, columns, [], names);
    return sheet;
  }
  return port.insertSheet(withRows(plan(), names, rows));
}

/** The data sheets among these sheets: those that have a name which is compared. */
export const testsAmong = (sheets: readonly Pick<Looked, "sheet" | "values">[]): OtherTest[] =>
  sheets
    .filter(({ values }) => COMPARED_NAMES.some((name) => name in values))
    .map(({ sheet, values }) => ({ sheet, record: readRecord(values) }));

/** Keeps an answer in the sheet of answers; a new one is in this language. */
export const acknowledge = (
  port: WorkbookPort,
  one: Acknowledgement,
  language: SheetLanguage = "en",
): Promise<string> => appendRows(port, ANSWER_NAMES, () => answersSheet(language), [answerRow(one)]);

export interface ReviewState {
  readonly limits: LimitsInWorkbook;
  readonly answers: readonly Acknowledgement[];
  /** The other data sheets of the workbook. */
  readonly others: readonly OtherTest[];
  readonly findings: readonly CellFinding[];
}

/** The limits, answers and other tests for a test that was read together with the sheets of `BESIDE`. */
export const besideOf = (sheet: string, beside: readonly Looked[]): Omit<ReviewState, "findings"> => ({
  limits: limitsIn(beside),
  answers: answersIn(beside, sheet),
  others: testsAmong(beside),
});

/** The limits, answers, other tests and findings for a test that was read with `REVIEW`. */
export const reviewOf = ({ sheet, names, values, contents, hidden, record, beside }: Reading): ReviewState => ({
  ...besideOf(sheet, beside),
  findings: integrity({ names, values, contents, hidden, record }),
});
