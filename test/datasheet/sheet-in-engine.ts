/** A sheet plan calculated by the embedded sheet's engine with the project's own functions. */
import "../workbook/embedded/engine-in-node";
import { cellAddress } from "../../src/datasheet/address";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

export interface Calculated {
  /** "B4 #N/A why" for every cell that shows an error. */
  readonly errors: string[];
  /** The cell of a name, or the cell `index` rows down. */
  value(name: string, index?: number): CellValue;
}

let registered = false;

export async function calculate(plan: SheetPlan): Promise<Calculated> {
  if (!registered) await registerRealFunctions({ blankAs: null });
  registered = true;
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(plan);
  const { getters } = port.workbook.model;
  const sheetId = getters.getActiveSheetId();
  const cell = (row: number, col: number) => getters.getEvaluatedCell({ sheetId, row, col });
  const errors: string[] = [];
  for (let row = 0; row < plan.rows; row++)
    for (let col = 0; col < plan.cols; col++) {
      const found = cell(row, col);
      if (found.type === "error")
        errors.push(`${cellAddress(row, col)} ${found.value} ${(found as { message?: string }).message ?? ""}`);
    }
  return {
    errors,
    value: (name, index = 0) => (cell(plan.names[name].row + index, plan.names[name].col).value ?? "") as CellValue,
  };
}
