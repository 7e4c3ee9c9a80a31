/**
 * A sheet plan calculated by the engine of the embedded sheet with the functions of the project. Equal plans are
 * calculated once per run of the tests, and a file that asks only for calculated plans does not load the engine.
 */
import { cellAddress } from "../../src/workbook/address";
import type { FunctionSettings } from "../../src/workbook/embedded";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { oncePerRun } from "../run-folder";

export interface Calculated {
  /** "B4 #N/A why" for every cell that shows an error. */
  readonly errors: string[];
  /** Every cell that is not blank, by address. */
  readonly values: ReadonlyMap<string, CellValue>;
  /** The cell of a name, or the cell `index` rows below. */
  value(name: string, index?: number): CellValue;
}

/** `blankAs` is how the host passes a blank cell to a function: null like Excel on the web, or 0 like desktop Excel. */
export async function calculate(plan: SheetPlan, blankAs: FunctionSettings["blankAs"] = null): Promise<Calculated> {
  const { errors, values } = await oncePerRun("calculated", [plan, blankAs], async () => {
    const { calculateNow } = await import("./calculated-sheet");
    return calculateNow(plan, blankAs);
  });
  const byAddress = new Map(values.map(([address, value]) => [address, value] as const));
  return {
    errors: [...errors],
    values: byAddress,
    value: (name, index = 0) => byAddress.get(cellAddress(plan.names[name].row + index, plan.names[name].col)) ?? "",
  };
}
