/** A data sheet and its report in the engine of the embedded sheet, with the functions of the project. */
import "../workbook/embedded/engine-in-node";
import { runChecks } from "../../src/checks";
import { readRecord, RECORD_NAMES } from "../../src/record/record";
import { reportSheet, type ReportSource } from "../../src/report/report";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { opened } from "../workbook/embedded/opened";
import { haveRealFunctions } from "../workbook/embedded/real-functions";

export async function emptyWorkbook(): Promise<EmbeddedPort> {
  await haveRealFunctions();
  return new EmbeddedPort(newWorkbook());
}

/** The source of the report of a sheet. */
export async function sourceOf(
  port: EmbeddedPort,
  sheet: string,
  more: Partial<ReportSource> = {},
): Promise<ReportSource> {
  const names = await port.listNames(sheet);
  const values = await port.readNames(sheet, RECORD_NAMES);
  const record = readRecord(values);
  return {
    sheet,
    names,
    values,
    record,
    answered: runChecks(record),
    paper: "A4",
    preparedBy: "A. Nobody",
    now: new Date(2026, 2, 9, 14, 5),
    ...more,
  };
}

export interface Reported {
  readonly port: EmbeddedPort;
  /** Name of the data sheet, and name of the report. */
  readonly sheet: string;
  readonly report: string;
  readonly plan: SheetPlan;
  readonly missing: ReturnType<typeof reportSheet>["missing"];
}

/** A data sheet with its report. */
export async function reported(data: SheetPlan, more: Partial<ReportSource> = {}): Promise<Reported> {
  const { port, sheet } = await opened(data);
  const { plan, missing } = reportSheet(await sourceOf(port, sheet, more));
  return { port, sheet, plan, missing, report: await port.insertSheet(plan) };
}

/** Every cell of the report by "row,col": its shown value and its content. */
export function cellsOf({
  port,
  report,
  plan,
}: Reported): { row: number; col: number; value: CellValue; text: string }[] {
  const { getters } = port.workbook.model;
  const sheetId = getters.getSheetIdByName(report)!;
  return plan.cells.map(({ row, col }) => {
    const { value, formattedValue } = getters.getEvaluatedCell({ sheetId, row, col });
    return { row, col, value: (value ?? "") as CellValue, text: formattedValue };
  });
}
