/** What the workbook says beside the data sheet's record: a firm's limits, answers given to questions, what befell the cells. */
import {
  ANSWER_NAMES,
  ANSWERS_SHEET_NAME,
  answerRow,
  answersSheet,
  appended,
  readAnswers,
  type Acknowledgement,
} from "../checks/answers-sheet";
import { CONTENT_NAMES, integrity, type CellFinding } from "../checks/integrity";
import { LIMIT_NAMES, LIMITS_SHEET_NAME, readLimits, type FirmLimits } from "../checks/limits";
import type { NamedValues, TestRecord } from "../datasheet/record";
import type { SheetName, SheetPlan, WorkbookPort } from "../workbook/port";
import { text } from "./text";

/** The sheets that have a name. */
async function sheetsWith(port: WorkbookPort, name: string): Promise<string[]> {
  const found: string[] = [];
  for (const sheet of await port.sheetNames()) if ((await port.readNames(sheet, [name]))[name]) found.push(sheet);
  return found;
}

export interface LimitsInWorkbook extends FirmLimits {
  /** The sheet of limits; the first where there are several. */
  readonly sheet?: string;
}

export async function limitsOf(port: WorkbookPort): Promise<LimitsInWorkbook> {
  const [sheet, ...others] = await sheetsWith(port, LIMITS_SHEET_NAME);
  if (sheet === undefined) return readLimits({});
  const limits = readLimits(await port.readNames(sheet, LIMIT_NAMES), await port.listNames(sheet));
  const more = others.length ? [text.checks.otherLimits(others, sheet)] : [];
  return { ...limits, sheet, remarks: [...limits.remarks, ...more] };
}

export async function answersOf(port: WorkbookPort, dataSheet: string): Promise<Acknowledgement[]> {
  const answers: Acknowledgement[] = [];
  for (const sheet of await sheetsWith(port, ANSWERS_SHEET_NAME))
    answers.push(...readAnswers(await port.readNames(sheet, ANSWER_NAMES)));
  return answers.filter((one) => one.sheet === dataSheet);
}

/** Adds rows below those of a table that has room, or on a new sheet of it: nothing is written over. */
export async function appendRows(
  port: WorkbookPort,
  names: readonly string[],
  plan: () => SheetPlan,
  rows: readonly (readonly (string | number)[])[],
): Promise<string> {
  for (const sheet of (await sheetsWith(port, names[1])).reverse()) {
    const columns = appended(await port.readNames(sheet, names), names, rows);
    if (!columns) continue;
    await port.fillNames(sheet, columns);
    return sheet;
  }
  const sheet = await port.insertSheet(plan());
  await port.fillNames(sheet, appended(await port.readNames(sheet, names), names, rows)!);
  return sheet;
}

export const acknowledge = (port: WorkbookPort, one: Acknowledgement): Promise<string> =>
  appendRows(port, ANSWER_NAMES, answersSheet, [answerRow(one)]);

export interface ReviewState {
  readonly names: readonly SheetName[];
  readonly limits: LimitsInWorkbook;
  readonly answers: readonly Acknowledgement[];
  readonly findings: readonly CellFinding[];
}

/** Limits, answers and findings for a data sheet; `values` as `readNames` gives those of the record. */
export async function reviewState(
  port: WorkbookPort,
  sheet: string,
  values: NamedValues,
  record: TestRecord,
): Promise<ReviewState> {
  const names = await port.listNames(sheet);
  const contents = await port.readContents(sheet, CONTENT_NAMES);
  const shown = await port.readNames(sheet, ["load_number", ...CONTENT_NAMES]);
  const hidden = await port.hidden(sheet);
  const findings = integrity({ names, values: { ...values, ...shown }, contents, hidden, record });
  return { names, limits: await limitsOf(port), answers: await answersOf(port, sheet), findings };
}
