/** Makes a report of a data sheet in the workbook, and finds earlier reports. */
import { runChecks, type Answered } from "../../../checks";
import { limitCalled } from "../../../checks/limit-words";
import { limitUnit } from "../../../checks/limits";
import { answerTo, type Acknowledgement } from "../../../checks/answers";
import {
  byOf,
  LIMIT_NAMES,
  missingFromReport,
  REPORT_CURVE,
  REPORT_LANGUAGE,
  REPORT_NAMES,
  REPORT_OF,
  reportSheet,
  whyOf,
  type KeptLimit,
  type Missing,
  type ReportSource,
} from "../../../report/report";
import { say, verbatim, type Message } from "../../../reduction/message";
import { ISSUE_NAMES, lockedValues, type IssueMark } from "../../../report/issue";
import type { TestRecord } from "../../../record/record";
import type { Course } from "../../../workbook/in-slices";
import { refuseNotYet } from "../../../workbook/rules/busy";
import type { Looked, Selection, WorkbookPort } from "../../../workbook/port";
import { languageNamed } from "../../../specification/text/language";
import { LANGUAGES, type Language } from "../../text/language";
import { inOneLanguage } from "../../live/sheet-language";
import { inWords } from "../../text/messages";
import type { Beside, Want } from "../../live/want";
import { readTest, type Reading } from "../../live/workbook-store";
import { timeStamp } from "../../../workbook/time-stamp";
import { REVIEW, reviewOf } from "../checks/workbook-answers";
import { issueHash, issuesOf, readingsHash, type IssueOf } from "./issues";

/** The sheets that are reports, beside a test. */
export const REPORTS: Beside = { mark: REPORT_OF, names: [...REPORT_NAMES, ...ISSUE_NAMES] };

/** What a report needs from the workbook. */
export const REPORT: Want = { ...REVIEW, beside: [...(REVIEW.beside ?? []), REPORTS] };

/** The choices of the person for a report; the report stores them. */
export interface ReportChoices {
  readonly language: Language;
  /** The ordinate of the compression curve on the first page. */
  readonly curve: "e" | "strain";
}

export interface Prospect {
  /** The names of the reports of this sheet, oldest first. */
  readonly reports: readonly string[];
  /** The language of the latest report, or else of the sheet, and the curve that the sheet says; void ratio otherwise. */
  readonly choices: ReportChoices;
  readonly issues: readonly IssueOf[];
  readonly missing: readonly Missing[];
  readonly answered: readonly Answered[];
}

type Paper = ReportSource["paper"];
type Made = Pick<ReportSource, "preparedBy" | "now"> & Partial<ReportChoices> & { readonly paper?: Paper | undefined };
/** Whose initials lock the report as an issue; if they are left out, the report is not locked. */
type Locking = { readonly lockedBy?: string | undefined };
type Read = Omit<ReportSource, keyof Made | "inWords">;

/** The names of the sheets that are marked as a report of `sheet`, oldest first. */
export const reportsOf = (sheet: string, sheets: readonly Looked[]): string[] =>
  sheets.filter(({ values }) => values[REPORT_OF]?.[0]?.[0] === sheet).map((found) => found.sheet);

/** The reviewer's answers to open questions, by the id of the question. */
function acknowledgedOf(
  answers: readonly Acknowledgement[],
  sheet: string,
  answered: readonly Answered[],
): Record<string, Message> {
  const found: Record<string, Message> = {};
  for (const one of answered) {
    const answer = answerTo(answers, sheet, one);
    if (!answer) continue;
    const { given } = answer;
    const [reason, by, when] = [verbatim(given.reason), verbatim(given.by), verbatim(given.when)];
    found[one.check.id] = answer.stale
      ? say`${reason} (${by}, ${when}; the check then said: ${verbatim(answer.given.found)})`
      : say`${reason} (${by}, ${when})`;
  }
  return found;
}

/**
 * The choices of a report: the language of the report before, or else of the sheet, and the curve that the sheet says; a sheet that does not
 * say it keeps the curve of the report before. An unknown word counts as no choice.
 */
function choicesOf({ words, sheetLanguage }: TestRecord, report: Looked | undefined): ReportChoices {
  const kept = (name: string) => report?.values[name]?.[0]?.[0];
  return {
    language: LANGUAGES.find((one) => one === kept(REPORT_LANGUAGE)) ?? languageNamed(sheetLanguage),
    curve: (words.curve_shown ?? kept(REPORT_CURVE)) === "strain" ? "strain" : "e",
  };
}

interface Found {
  readonly source: Read;
  readonly choices: ReportChoices;
  /** The names of the reports of this sheet, oldest first. */
  readonly reports: readonly string[];
}

function find(reading: Reading): Found {
  const { sheet, names, values, record, beside } = reading;
  const { limits, answers, others, findings } = reviewOf(reading);
  const answered = runChecks(record, limits.thresholds, others);
  const source = {
    sheet,
    names,
    values,
    record,
    answered,
    acknowledged: acknowledgedOf(answers, sheet, answered),
    cellFindings: findings.map(({ sentence }) => sentence),
    changedLimits: limits.changed.map(({ name, default: usual, value, unit, by, why }) => {
      const amount = unit ? say`${value} ${limitUnit(unit)}` : value;
      const who = by ? verbatim(by) : say`no name`;
      return say`“${limitCalled(name)}” is ${amount} in place of ${usual} (${who}: ${why ? verbatim(why) : say`no reason`})`;
    }),
  };
  const reports = reportsOf(sheet, beside);
  return {
    source,
    reports,
    choices: choicesOf(
      record,
      beside.find((found) => found.sheet === reports.at(-1)),
    ),
  };
}

/** What a report of the test would lack, found before it is made. */
export function prospectOf(reading: Reading): Prospect {
  const { source, reports, choices } = find(reading);
  const issues = issuesOf(reading.sheet, reading.beside);
  return { reports, choices, issues, missing: missingFromReport(source), answered: source.answered };
}

const one = (values: Record<string, Selection["values"]>, name: string) => values[name]?.[0]?.[0] ?? "";

/**
 * The limits of error that a person set on a report, with name or reason. A limit with neither is the default of the
 * report.
 */
async function limitsOf(port: WorkbookPort, report: string): Promise<Record<string, KeptLimit>> {
  const values = await port.readNames(
    report,
    LIMIT_NAMES.flatMap((name) => [name, byOf(name), whyOf(name)]),
  );
  const kept: Record<string, KeptLimit> = {};
  for (const name of LIMIT_NAMES) {
    const value = one(values, name);
    const [by, why] = [String(one(values, byOf(name))).trim(), String(one(values, whyOf(name))).trim()];
    if (typeof value === "number" && value >= 0 && (by || why)) kept[name] = { value, by, why };
  }
  return kept;
}

export interface MadeReport {
  readonly report: string;
  /** Sentences about what the host did not accept of the sheet. */
  readonly remarks: readonly string[];
  /** The report from which the limits of error were copied. */
  readonly carriedFrom?: string;
}

/** What the next issue of the report of a test says of itself. */
async function markOf({ sheet, values, names, beside }: Reading, by: string, now: Date): Promise<IssueMark> {
  const mark: IssueMark = {
    number: Math.max(0, ...issuesOf(sheet, beside).map(({ number }) => number)) + 1,
    day: timeStamp(now),
    by: by.trim(),
    hash: await readingsHash(values),
  };
  return { ...mark, valuesHash: await issueHash(mark, lockedValues(values, names)) };
}

/** The paper until a person chooses: Letter for sheets in inches, otherwise A4. */
export const paperOf = (record: TestRecord): Paper => (record.words.length_unit === "in" ? "Letter" : "A4");

/**
 * Reads the test. An issue keeps values for good: where Excel calculates on request, results may be older than the readings beside them, so
 * it is asked for a calculation first.
 */
async function readFor(port: WorkbookPort, sheet: string, isIssue: boolean): Promise<Reading> {
  const reading = await readTest(port, sheet, REPORT);
  if (!isIssue || !reading.isOnRequest) return reading;
  await port.calculate();
  return readTest(port, sheet, REPORT);
}

/** Makes one new sheet. If it fails, no sheet is left, and the error is thrown. */
export async function makeReport(
  port: WorkbookPort,
  sheet: string,
  { lockedBy, ...made }: Made & Locking,
  course?: Course,
): Promise<MadeReport> {
  const reading = await readFor(port, sheet, lockedBy !== undefined);
  refuseNotYet(reading.values);
  const { source, reports } = find(reading);
  const latest = reports.at(-1);
  const limits = latest === undefined ? {} : await limitsOf(port, latest);
  const issue = lockedBy === undefined ? undefined : await markOf(reading, lockedBy, made.now);
  const remarks: string[] = [];
  const { plan } = reportSheet({
    ...source,
    ...made,
    paper: made.paper ?? paperOf(reading.record),
    limits,
    issue,
    inWords: inOneLanguage(made.language ?? "en"),
  });
  const report = await port.insertSheet(
    { ...plan, reads: { sheet: reading.sheet, names: reading.names } },
    (remark) => {
      remarks.push(inWords(remark));
    },
    course,
  );
  return { report, remarks, ...(Object.keys(limits).length > 0 ? { carriedFrom: latest } : {}) };
}
