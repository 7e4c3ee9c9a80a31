/** Loads the engine and calculates a sheet plan; tests call `calculate` of sheet-in-engine.ts. */
import "../workbook/embedded/engine-in-node";
import { boxAddress, cellAddress, quoted } from "../../src/workbook/address";
import type { FunctionSettings } from "../../src/workbook/embedded";
import { helpers } from "@odoo/o-spreadsheet";
import { Model, runBatch } from "../../src/workbook/embedded/engine";
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

/** What the values of a plan follow from, without the look of the cells: contents by address, and what stays if a cell is typed into. */
function contentsOf(plan: SheetPlan) {
  const names = freeNames(Object.keys(plan.names), []);
  const formats = [...new Set(plan.cells.flatMap(({ format }) => (format ? [format] : [])))];
  const contents = new Map(
    plan.cells.flatMap((cell) => {
      const { row, col, formula, value = "", format } = cell;
      const content = formula !== undefined ? resolveNames(formula, names) : typed(value, format);
      return content === "" ? [] : [[cellAddress(row, col), content] as const];
    }),
  );
  const form = {
    sheet: {
      id: "sheet1",
      name: plan.name,
      colNumber: Math.max(plan.cols, 26),
      rowNumber: Math.max(plan.rows, 100),
      merges: plan.merges.map(boxAddress),
      formats: Object.fromEntries(
        plan.cells.flatMap(({ row, col, format }) =>
          format ? [[cellAddress(row, col), 1 + formats.indexOf(format)] as const] : [],
        ),
      ),
    },
    formats: Object.fromEntries(formats.map((format, index) => [1 + index, toEngineFormat(format)])),
    namedRanges: Object.fromEntries(
      Object.entries(plan.names).map(([name, box]) => [names.get(name)!, `${quoted(plan.name)}!${boxAddress(box)}`]),
    ),
  };
  return { contents, form };
}

type Contents = ReturnType<typeof contentsOf>;

/** A workbook with the sheet. The engine reads it as it reads a file; inserting the sheet cell by cell takes twice the time. */
const withContents = ({ contents, form: { sheet, ...form } }: Contents): Model =>
  new Model({ ...form, sheets: [{ ...sheet, cells: Object.fromEntries(contents) }] } as object);

/** A sheet of which more cells differ is calculated from the start, which takes no longer. */
const MOST_TYPED = 300;

/** A sheet that was calculated, by its form. */
const calculated = new Map<string, { readonly model: Model; contents: ReadonlyMap<string, string> }>();

/**
 * A workbook with the values of a plan. If only some cells differ from those of the sheet before, they are typed into it, as a person types:
 * test/record/sheet-remarks.test.ts takes 13 s of processor time and not 17 s.
 */
function withValuesOf(plan: SheetPlan, blankAs: FunctionSettings["blankAs"]): Model {
  const made = contentsOf(plan);
  const { contents, form } = made;
  const key = JSON.stringify([blankAs, form]);
  const before = calculated.get(key);
  const entries = before
    ? [...new Set([...contents.keys(), ...before.contents.keys()])].filter(
        (address) => contents.get(address) !== before.contents.get(address),
      )
    : [];
  if (before && entries.length <= MOST_TYPED) {
    const refused = runBatch(
      before.model,
      entries.map((address) => {
        const { top: row, left: col } = helpers.toZone(address);
        return { type: "UPDATE_CELL", sheetId: form.sheet.id, row, col, content: contents.get(address) ?? "" };
      }),
    );
    if (refused.length > 0) throw new Error(`the cells cannot be typed into: ${refused.join(", ")}`);
    before.contents = contents;
    return before.model;
  }
  const model = withContents(made);
  // A sheet of another form would not be asked for soon.
  if (calculated.size > 3) calculated.clear();
  calculated.set(key, { model, contents });
  return model;
}

/** The cells of a plan, calculated from the start. */
export async function calculateAnew(plan: SheetPlan): Promise<CalculatedCells> {
  await haveRealFunctions();
  return cellsOf(withContents(contentsOf(plan)), plan);
}

export async function calculateNow(plan: SheetPlan, blankAs: FunctionSettings["blankAs"]): Promise<CalculatedCells> {
  await registerRealFunctions({ blankAs });
  checkPlan(plan);
  const cells = cellsOf(withValuesOf(plan, blankAs), plan);
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
