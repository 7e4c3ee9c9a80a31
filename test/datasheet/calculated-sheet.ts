/** Loads the engine and calculates a sheet plan; tests call `calculate` of sheet-in-engine.ts. */
import "../workbook/embedded/engine-in-node";
import { cellAddress } from "../../src/workbook/address";
import { EmbeddedPort, newWorkbook, type FunctionSettings } from "../../src/workbook/embedded";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

const settings: FunctionSettings = { blankAs: null };
let registered = false;

/** The errors of a sheet ("B4 #N/A why"), and its cells that are not blank with their addresses. */
export interface CalculatedCells {
  readonly errors: readonly string[];
  readonly values: readonly (readonly [address: string, value: CellValue])[];
}

export async function calculateNow(plan: SheetPlan, blankAs: FunctionSettings["blankAs"]): Promise<CalculatedCells> {
  settings.blankAs = blankAs;
  if (!registered) await registerRealFunctions(settings);
  registered = true;
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(plan);
  const { getters } = port.workbook.model;
  const sheetId = getters.getActiveSheetId();
  const errors: string[] = [];
  const values: [string, CellValue][] = [];
  for (let row = 0; row < plan.rows; row++)
    for (let col = 0; col < plan.cols; col++) {
      const found = getters.getEvaluatedCell({ sheetId, row, col });
      if (found.value !== null && found.value !== "") values.push([cellAddress(row, col), found.value as CellValue]);
      if (found.type === "error")
        errors.push(`${cellAddress(row, col)} ${found.value} ${(found as { message?: string }).message ?? ""}`);
    }
  return { errors, values };
}
