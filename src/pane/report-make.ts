/** Makes a report of a data sheet in the workbook, and finds those that were made before. */
import { runChecks, type Answered } from "../checks";
import { answerTo, type Acknowledgement } from "../checks/answers-sheet";
import { readRecord, RECORD_NAMES } from "../datasheet/record";
import {
  byOf,
  LIMIT_NAMES,
  missingFromReport,
  REPORT_OF,
  reportSheet,
  whyOf,
  type KeptLimit,
  type Missing,
  type ReportSource,
} from "../report/report";
import type { Selection, WorkbookPort } from "../workbook/port";
import { reviewState } from "./checks-state";

export interface Prospect {
  /** Names of the reports of this sheet, oldest first. */
  readonly reports: readonly string[];
  readonly missing: readonly Missing[];
  readonly answered: readonly Answered[];
}

type Made = Pick<ReportSource, "paper" | "preparedBy" | "now">;
type Read = Omit<ReportSource, keyof Made>;

/** Names of the sheets that say that they are a report of `sheet`. */
export async function reportsOf(port: WorkbookPort, sheet: string): Promise<string[]> {
  const found: string[] = [];
  for (const name of await port.sheetNames()) {
    const of = (await port.readNames(name, [REPORT_OF]))[REPORT_OF]?.[0]?.[0];
    if (of === sheet) found.push(name);
  }
  return found;
}

/** What a reviewer answered to the questions that stand open, by their ids. */
function acknowledgedOf(
  answers: readonly Acknowledgement[],
  sheet: string,
  answered: readonly Answered[],
): Record<string, string> {
  const found: Record<string, string> = {};
  for (const one of answered) {
    const answer = answerTo(answers, sheet, one);
    if (!answer) continue;
    const { reason, by, when } = answer.given;
    const stale = answer.stale ? `; the check then said: ${answer.given.found}` : "";
    found[one.check.id] = `${reason} (${by}, ${when}${stale})`;
  }
  return found;
}

async function read(port: WorkbookPort, sheet: string): Promise<Read> {
  const values = await port.readNames(sheet, RECORD_NAMES);
  const record = readRecord(values);
  const { names, limits, answers, findings } = await reviewState(port, sheet, values, record);
  const answered = runChecks(record, limits.thresholds);
  return {
    sheet,
    names,
    values,
    record,
    answered,
    acknowledged: acknowledgedOf(answers, sheet, answered),
    cellFindings: findings.map(({ sentence }) => sentence),
    changedLimits: limits.changed.map(({ name, default: usual, value, unit, by, why }) =>
      [
        `${name} is ${value} ${unit}`.trim(),
        ` in place of ${usual}`,
        ` (${by || "no name"}: ${why || "no reason"})`,
      ].join(""),
    ),
  };
}

/** What a report of the sheet would lack, before it is made. */
export async function prospectOf(port: WorkbookPort, sheet: string): Promise<Prospect> {
  const source = await read(port, sheet);
  return { reports: await reportsOf(port, sheet), missing: missingFromReport(source), answered: source.answered };
}

const one = (values: Record<string, Selection["values"]>, name: string) => values[name]?.[0]?.[0] ?? "";

/** Limits of error that a person has set on a report, with who or why: a number without either is the report's own. */
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
  /** The report whose limits of error were taken over. */
  readonly carriedFrom?: string;
}

/** One new sheet, or none at all and an error. */
export async function makeReport(port: WorkbookPort, sheet: string, made: Made): Promise<MadeReport> {
  const latest = (await reportsOf(port, sheet)).at(-1);
  const limits = latest === undefined ? {} : await limitsOf(port, latest);
  const { plan } = reportSheet({ ...(await read(port, sheet)), ...made, limits });
  const report = await port.insertSheet(plan);
  return { report, ...(Object.keys(limits).length > 0 ? { carriedFrom: latest } : {}) };
}
