/** Makes a report of a data sheet in the workbook, and finds those that were made before. */
import { runChecks, type Answered } from "../checks";
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

async function read(port: WorkbookPort, sheet: string): Promise<Read> {
  const [names, values] = [await port.listNames(sheet), await port.readNames(sheet, RECORD_NAMES)];
  const record = readRecord(values);
  return { sheet, names, values, record, answered: runChecks(record) };
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
