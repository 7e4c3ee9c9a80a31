/** What the workbook says beside the data sheet's record: a firm's limits, answers given to questions, what befell the cells. */
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
import type { NamedValues, TestRecord } from "../../../record/record";
import type { SheetName, SheetPlan, SheetValues, WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";

/** The sheets that have a name, with what they hold. */
const having = (sheets: readonly SheetValues[], name: string): SheetValues[] =>
  sheets.filter(({ values }) => values[name]);

export interface LimitsInWorkbook extends FirmLimits {
  /** The sheet of limits; the first where there are several. */
  readonly sheet?: string;
}

async function limitsIn(port: WorkbookPort, sheets: readonly SheetValues[]): Promise<LimitsInWorkbook> {
  const [first, ...others] = having(sheets, LIMITS_SHEET_NAME);
  if (!first) return readLimits({});
  const { sheet, values } = first;
  const limits = readLimits(values, await port.listNames(sheet));
  const names = others.map((other) => other.sheet);
  const more = names.length ? [text.checks.otherLimits(names, sheet)] : [];
  return { ...limits, sheet, remarks: [...limits.remarks, ...more] };
}

const answersIn = (sheets: readonly SheetValues[], dataSheet: string): Acknowledgement[] =>
  having(sheets, ANSWERS_SHEET_NAME)
    .flatMap(({ values }) => readAnswers(values))
    .filter((one) => one.sheet === dataSheet);

/** Adds rows below those of a table that has room, or on a new sheet of it: nothing is written over. */
export async function appendRows(
  port: WorkbookPort,
  names: readonly string[],
  plan: () => SheetPlan,
  rows: readonly (readonly (string | number)[])[],
): Promise<string> {
  for (const { sheet, values } of having(await port.readSheets(names), names[1]).reverse()) {
    const columns = appended(values, names, rows);
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
  /** Every sheet, with what else was asked for. */
  readonly sheets: readonly SheetValues[];
}

/** Limits, answers and findings for a data sheet; `values` as `readNames` gives those of the record. Reads `also` of every sheet. */
export async function reviewState(
  port: WorkbookPort,
  sheet: string,
  values: NamedValues,
  record: TestRecord,
  also: readonly string[] = [],
): Promise<ReviewState> {
  const [names, contents, shown, hidden, sheets] = await Promise.all([
    port.listNames(sheet),
    port.readContents(sheet, CONTENT_NAMES),
    port.readNames(sheet, ["load_number", ...CONTENT_NAMES]),
    port.hidden(sheet),
    port.readSheets([...LIMIT_NAMES, ...ANSWER_NAMES, ...also]),
  ]);
  const findings = integrity({ names, values: { ...values, ...shown }, contents, hidden, record });
  return { names, limits: await limitsIn(port, sheets), answers: answersIn(sheets, sheet), findings, sheets };
}
