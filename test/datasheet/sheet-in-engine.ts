/** A sheet plan calculated by the engine of the embedded sheet with the functions of the project. */
import "../workbook/embedded/engine-in-node";
import { cellAddress } from "../../src/workbook/address";
import { EmbeddedPort, newWorkbook, type FunctionSettings } from "../../src/workbook/embedded";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

export interface Calculated {
  /** "B4 #N/A why" for every cell that shows an error. */
  readonly errors: string[];
  /** Every cell that is not blank, by address. */
  readonly values: ReadonlyMap<string, CellValue>;
  /** The cell of a name, or the cell `index` rows below. */
  value(name: string, index?: number): CellValue;
}

const settings: FunctionSettings = { blankAs: null };
let registered = false;

/** `blankAs` is how the host passes a blank cell to a function: null like Excel on the web, or 0 like desktop Excel. */
export async function calculate(plan: SheetPlan, blankAs: FunctionSettings["blankAs"] = null): Promise<Calculated> {
  settings.blankAs = blankAs;
  if (!registered) await registerRealFunctions(settings);
  registered = true;
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(plan);
  const { getters } = port.workbook.model;
  const sheetId = getters.getActiveSheetId();
  const cell = (row: number, col: number) => getters.getEvaluatedCell({ sheetId, row, col });
  const errors: string[] = [];
  const values = new Map<string, CellValue>();
  for (let row = 0; row < plan.rows; row++)
    for (let col = 0; col < plan.cols; col++) {
      const found = cell(row, col);
      if (found.value !== null && found.value !== "") values.set(cellAddress(row, col), found.value as CellValue);
      if (found.type === "error")
        errors.push(`${cellAddress(row, col)} ${found.value} ${(found as { message?: string }).message ?? ""}`);
    }
  return {
    errors,
    values,
    value: (name, index = 0) => (cell(plan.names[name].row + index, plan.names[name].col).value ?? "") as CellValue,
  };
}
