/** IF and IFERROR evaluate only the branch that they give, and give what the engine gives by itself. */
import "../engine-in-node";
import { addFunction, functionCache } from "@odoo/o-spreadsheet";
import { demoSheet } from "../../../../src/datasheet";
import { Model } from "../../../../src/workbook/embedded/engine";
import { withBranches } from "../../../../src/workbook/embedded/evaluation/branches";
import fc from "../../../properties";
import { opened } from "../opened";

let asked: unknown[] = [];
addFunction("ASKED", {
  description: "Gives its argument and notes that it was evaluated",
  args: [{ name: "value", description: "", type: ["ANY"], acceptErrors: true }],
  compute: (cell: { readonly value: unknown }) => {
    asked.push(cell.value);
    return cell;
  },
} as never);

function workbook(cells: Record<string, string>, namedRanges: Record<string, string> = {}) {
  asked = [];
  const model = new Model({ sheets: [{ id: "s", name: "S", cells }], namedRanges } as object);
  return {
    model,
    valueAt: (col: number, row = 0) => model.getters.getEvaluatedCell({ sheetId: "s", col, row }).value,
    type: (col: number, row: number, content: string) =>
      model.dispatch("UPDATE_CELL", { sheetId: "s", col, row, content }),
  };
}

const CELLS = { A1: "1", A2: "0", A3: "=1/0", A4: "text", B1: "2", B2: "-3" };
const shown = (formula: string): unknown => workbook({ ...CELLS, H1: formula }).valueAt(7);

/** Evaluates every formula of the workbook by the engine's own code. */
function evaluateAsTheEngine(model: Model): void {
  const { getters } = model;
  for (const sheetId of getters.getSheetIds())
    for (const cell of getters.getCells(sheetId))
      if (cell.isFormula && !cell.compiledFormula.isBadExpression)
        Object.assign(cell.compiledFormula, { execute: functionCache[cell.compiledFormula.normalizedFormula] });
  model.dispatch("EVALUATE_CELLS");
}

test.each([
  ["=IF(A1=1,ASKED(5),ASKED(6))", 5, [5]],
  ["=IF(A1=2,ASKED(5),ASKED(6))", 6, [6]],
  ["=IF(ASKED(A1)=1,IF(A2=1,ASKED(7),ASKED(8)),ASKED(9))", 8, [1, 8]],
  ["=IFERROR(ASKED(4),ASKED(3))", 4, [4]],
  ["=IFERROR(A3,ASKED(3))", 3, [3]],
  ["=IF(A3,ASKED(5),ASKED(6))", "#DIV/0!", []],
  ["=1+IF(A2,ASKED(5),2)&IF(A1,ASKED(8),9)", "38", [8]],
  ["=SUM(IF(A1:A2,ASKED(5),ASKED(6)))", 11, [5, 6]],
])("%s gives %s, and %s is evaluated", (formula, value, evaluated) => {
  expect([shown(formula), asked]).toEqual([value, evaluated]);
});

test.each([
  ["=IF(A2,1)", 0],
  ["=IF(A1,,4)", 0],
  ["=IF(A2,4,)", 0],
  ["=IFERROR(A3,)", 0],
  ["=IF(A1,A3,1)", "#DIV/0!"],
  ["=IF(A2,A3,1)", 1],
  ['=IF("no",1,2)', "#ERROR"],
])("%s gives %s", (formula, value) => {
  expect(shown(formula)).toBe(value);
});

test("a branch that is evaluated later follows the cells of the name that it reads", () => {
  const { valueAt, type } = workbook(
    { A1: "0", B1: "2", C1: "=B1+1", H1: "=IF(A1=1,factor*10,0)" },
    { factor: "S!C1" },
  );
  const seen = [valueAt(7)];
  for (const [col, content] of [
    [0, "1"],
    [1, "5"],
    [0, "0"],
    [1, "7"],
    [0, "1"],
  ] as const) {
    type(col, 0, content);
    seen.push(valueAt(7));
  }
  expect(seen).toEqual([0, 30, 60, 0, 0, 80]);
});

/** Formulas of IF and IFERROR within each other, over numbers, texts, blanks and errors. */
const formulas = fc.letrec<{ formula: string }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 5, depthSize: "large" },
    fc.constantFrom("A1", "A2", "A3", "A4", "A9", "B1", "B2", "2", '""', '"a, (b"', "TRUE", "SUM(A1:B2)", "named"),
    fc
      .tuple(fc.constantFrom("IF", "IFERROR", "AND", "SUM", "ASKED"), tie("formula"), tie("formula"), tie("formula"))
      .map(([name, a, b, c]) => {
        if (name === "ASKED") return `ASKED(${a})`;
        return name === "IFERROR" ? `IFERROR(${a},${b})` : `${name}(${a},${b},${c})`;
      }),
    fc
      .tuple(tie("formula"), fc.constantFrom("+", "*", "&", "=", "<"), tie("formula"))
      .map(([a, sign, b]) => `(${a}${sign}${b})`),
    tie("formula").map((one) => `-(${one})`),
  ),
})).formula;

test("every formula gives what the engine gives that evaluates both branches", () => {
  fc.assert(
    fc.property(fc.array(formulas, { minLength: 20, maxLength: 20 }), (all) => {
      const cells = Object.fromEntries(all.map((formula, index) => [`H${index + 1}`, `=${formula}`]));
      const { model, valueAt } = workbook({ ...CELLS, ...cells }, { named: "S!B2" });
      const values = all.map((_, row) => valueAt(7, row));
      evaluateAsTheEngine(model);
      expect(values).toEqual(all.map((_, row) => valueAt(7, row)));
    }),
    { numRuns: 50 },
  );
});

test("so does every cell of the demonstration", async () => {
  const plan = demoSheet("SI");
  const { port } = await opened(plan);
  const { model } = port.workbook;
  const sheetId = model.getters.getActiveSheetId();
  const cells = () =>
    plan.cells.map(({ row, col }) => {
      const { value, type, format } = model.getters.getEvaluatedCell({ sheetId, row, col });
      return [row, col, value, type, format];
    });
  const before = cells();
  const formulas = model.getters.getCells(sheetId).flatMap((cell) => (cell.isFormula ? [cell.compiledFormula] : []));
  const choosing = formulas.filter(({ normalizedFormula }) => /\bIF(ERROR)?\(/.test(normalizedFormula));
  expect(choosing.length).toBeGreaterThan(500);
  expect(choosing.filter((one) => one.execute === functionCache[one.normalizedFormula])).toEqual([]);
  evaluateAsTheEngine(model);
  expect(cells()).toEqual(before);
});

test("code of another form is left as it is", () => {
  expect(withBranches("debugger;\nconst _1 = ref(deps[0]);\nreturn _1;")).toBeUndefined();
  expect(withBranches("return ctx['A_1'](deps[0]);")).toBe("ctx['A_1'](deps[0])");
});
