/** A formula is exported as one if Excel knows its functions: as the engine decides by parsing the formula again. */
import "../engine-in-node";
import { addFunction, helpers, iterateAstNodes, parse, registries } from "@odoo/o-spreadsheet";
import { newWorkbook } from "../../../../src/workbook/embedded";

const told = (compute: () => number) => ({ description: "", args: [], compute: compute as never });
addFunction("KNOWN.ONE", { ...told(() => 1), isExported: true });
addFunction(
  "UNKNOWN.ONE",
  told(() => 1),
);

interface Held {
  readonly compiledFormula: { areAllFunctionsExportableToExcel(): boolean };
}

/** The rule of the engine itself. */
const byParsing = (formula: string): boolean =>
  [...iterateAstNodes(parse(formula))].every(
    (node) => node.type !== "FUNCALL" || registries.functionRegistry.get(node.value.toUpperCase()).isExported === true,
  );

test.each([
  ["=SUM(A1:A3)+known.one()", true],
  ["=UNKNOWN.ONE()", false],
  ["=IF(A1>0, SUM(B1), unknown.one ())", false],
  ['="UNKNOWN.ONE()"&A1', true],
  ["=mass*(1+2)", true],
  ["=(A1+B1)*TRUE", true],
])("%s: %s", (content, isKnown) => {
  const { model } = newWorkbook();
  const sheetId = model.getters.getActiveSheetId();
  model.dispatch("UPDATE_CELL", { sheetId, row: 9, col: 9, content });
  const cell = model.getters.getCell({ sheetId, row: 9, col: 9 }) as unknown as Held;
  expect(helpers.isFormula(content)).toBe(true);
  expect(cell.compiledFormula.areAllFunctionsExportableToExcel()).toBe(isKnown);
  expect(byParsing(content)).toBe(isKnown);
});

test("a formula that cannot be read is none", () => {
  const { model } = newWorkbook();
  const sheetId = model.getters.getActiveSheetId();
  model.dispatch("UPDATE_CELL", { sheetId, row: 9, col: 9, content: "=SUM((" });
  const cell = model.getters.getCell({ sheetId, row: 9, col: 9 }) as unknown as Held;
  expect(cell.compiledFormula.areAllFunctionsExportableToExcel()).toBe(false);
});
