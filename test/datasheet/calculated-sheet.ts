/** Loads the engine and calculates a sheet plan; tests call `calculate` of sheet-in-engine.ts. */
import "../workbook/embedded/engine-in-node";
import { boxAddress, cellAddress, quoted } from "../../src/workbook/address";
import type { FunctionSettings } from "../../src/workbook/embedded";
import { Model } from "../../src/workbook/embedded/engine";
import { toEngineFormat } from "../../src/workbook/embedded/look/formats";
import { freeNames, resolveNames } from "../../src/workbook/embedded/names";
import { typed } from "../../src/workbook/embedded/typing/text";
import { checkPlan } from "../../src/workbook/rules/plan-check";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { haveRealFunctions, registerRealFunctions } from "../workbook/embedded/real-functions";

/** The errors of a sheet ("B4 #N/A why"), and its cells that are not blank with their addresses. */
export interface CalculatedCells {
  readonly errors: readonly string[];
  readonly values: readonly (readonly [address: string, value: CellValue])[];
}

/**
 * A workbook with what the values of a plan follow from: contents, formats, merges and names, without the look of the cells.
 * The engine reads it as it reads a file; inserting the sheet cell by cell takes twice the time.
 */
function withValuesOf(plan: SheetPlan): Model {
  const names = freeNames(Object.keys(plan.names), []);
  const formats = [...new Set(plan.cells.flatMap(({ format }) => (format ? [format] : [])))];
  const filled = plan.cells.flatMap((cell) => {
    const { row, col, formula, value = "", format } = cell;
    const content = formula !== undefined ? resolveNames(formula, names) : typed(value, format);
    return content === "" ? [] : [[cellAddress(row, col), content] as const];
  });
  const formatted = plan.cells.flatMap(({ row, col, format }) =>
    format ? [[cellAddress(row, col), 1 + formats.indexOf(format)] as const] : [],
  );
  return new Model({
    sheets: [
      {
        id: "sheet1",
        name: plan.name,
        colNumber: Math.max(plan.cols, 26),
        rowNumber: Math.max(plan.rows, 100),
        merges: plan.merges.map(boxAddress),
        cells: Object.fromEntries(filled),
        formats: Object.fromEntries(formatted),
      },
    ],
    formats: Object.fromEntries(formats.map((format, index) => [1 + index, toEngineFormat(format)])),
    namedRanges: Object.fromEntries(
      Object.entries(plan.names).map(([name, box]) => [names.get(name)!, `${quoted(plan.name)}!${boxAddress(box)}`]),
    ),
  } as object);
}

export async function calculateNow(plan: SheetPlan, blankAs: FunctionSettings["blankAs"]): Promise<CalculatedCells> {
  await registerRealFunctions({ blankAs });
  checkPlan(plan);
  const cells = cellsOf(withValuesOf(plan), plan);
  await haveRealFunctions();
  return cells;
}

/** The cells of a plan in the sheet in front. */
export function cellsOf({ getters }: Model, { rows, cols }: Pick<SheetPlan, "rows" | "cols">): CalculatedCells {
  const sheetId = getters.getActiveSheetId();
  const errors: string[] = [];
  const values: [string, CellValue][] = [];
  for (let row = 0; row < rows; row++)
    for (let col = 0; col < cols; col++) {
      const found = getters.getEvaluatedCell({ sheetId, row, col });
      if (found.value !== null && found.value !== "") values.push([cellAddress(row, col), found.value as CellValue]);
      if (found.type === "error")
        errors.push(`${cellAddress(row, col)} ${found.value} ${(found as { message?: string }).message ?? ""}`);
    }
  return { errors, values };
}
