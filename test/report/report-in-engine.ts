/** A data sheet and its report in the embedded sheet's engine, with the project's own functions. */
import "../workbook/embedded/engine-in-node";
import { runChecks } from "../../src/checks";
import { readRecord, RECORD_NAMES } from "../../src/record/record";
import { reportSheet, type ReportSource } from "../../src/report/report";
import { EmbeddedPort, newWorkbook, type FunctionSettings } from "../../src/workbook/embedded";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

const settings: FunctionSettings = { blankAs: null };
let registered: Promise<void> | undefined;

export async function emptyWorkbook(): Promise<EmbeddedPort> {
  await (registered ??= registerRealFunctions(settings));
  return new EmbeddedPort(newWorkbook());
}

/** What a report of a sheet is made from. */
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
  /** The data sheet's name, and the report's. */
  readonly sheet: string;
  readonly report: string;
  readonly plan: SheetPlan;
  readonly missing: ReturnType<typeof reportSheet>["missing"];
}

/** A data sheet with its report. */
export async function reported(data: SheetPlan, more: Partial<ReportSource> = {}): Promise<Reported> {
  const port = await emptyWorkbook();
  const sheet = await port.insertSheet(data);
  const { plan, missing } = reportSheet(await sourceOf(port, sheet, more));
  return { port, sheet, plan, missing, report: await port.insertSheet(plan) };
}

/** Every cell of the report, as it is shown: by "row,col", with what the cell holds. */
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
