/** Formulas hold once what they have in common, and each shows its own text and value. */
import "../engine-in-node";
import { CompiledFormula } from "@odoo/o-spreadsheet";
import { Model } from "../../../../src/workbook/embedded/engine";

function workbook(cells: Record<string, string>, namedRanges: Record<string, string> = {}) {
  const model = new Model({ sheets: [{ id: "s", name: "S", cells }], namedRanges } as object);
  const at = (row: number) => ({ sheetId: "s", col: 1, row });
  return {
    model,
    formula: (row: number) => (model.getters.getCell(at(row)) as any).compiledFormula,
    text: (row: number) => model.getters.getCellText(at(row), { showFormula: true }),
    value: (row: number) => model.getters.getEvaluatedCell(at(row)).value,
  };
}

const NAMES = { ring: "S!A1", ring_2: "S!A2", tin: "S!A3" };
const MASSES = { A1: "10", A2: "20", A3: "3" };

test("formulas that differ in their names have the same code, and each reads its own names", () => {
  const formulas = ["=ring-tin*2", "=ring_2-tin*2", "=tin-tin*2", "=IF(ring>1,ring,tin)", "=IF(ring_2>1,ring_2,tin)"];
  const cells = Object.fromEntries(formulas.map((one, row) => [`B${row + 1}`, one]));
  const { formula, text, value } = workbook({ ...MASSES, ...cells }, NAMES);
  expect(formulas.map((_, row) => value(row))).toEqual([4, 14, -3, 10, 20]);
  expect(formulas.map((_, row) => text(row))).toEqual(formulas);
  expect(formula(0).execute).toBe(formula(1).execute);
  expect(formula(3).execute).toBe(formula(4).execute);
  expect(formula(2).execute).not.toBe(formula(0).execute);
});

test("formulas that differ in references, numbers and texts share their words, and each shows its own text", () => {
  const formulas = ['=A1*2&"g"', '=A2*3&"kg"', '= A3 * 4 & "t"'];
  const cells = Object.fromEntries(formulas.map((one, row) => [`B${row + 1}`, one]));
  const { formula, text, value } = workbook({ ...MASSES, ...cells });
  expect(formula(0).tokens).toBe(formula(1).tokens);
  expect(formula(2).tokens).not.toBe(formula(0).tokens);
  for (let twice = 0; twice < 2; twice++) expect([0, 1, 2].map(text)).toEqual(['=A1*2&"g"', '=A2*3&"kg"', '=A3*4&"t"']);
  expect([0, 1, 2].map(value)).toEqual(["20g", "60kg", "12t"]);
});

test("a formula that cannot be read keeps its own text and error beside others", () => {
  const formulas = ["=ring tin", "=ring", "=SUM(", "=NOSUCH(1)", "=ALSONOT(1)"];
  const cells = Object.fromEntries(formulas.map((one, row) => [`B${row + 1}`, one]));
  const { text, value, model } = workbook({ ...MASSES, ...cells }, NAMES);
  expect(formulas.map((_, row) => text(row))).toEqual(formulas);
  expect(value(1)).toBe(10);
  expect(value(0)).toBe("#BAD_EXPR");
  const message = (row: number) => (model.getters.getEvaluatedCell({ sheetId: "s", col: 1, row }) as any).message;
  expect([message(3), message(4)]).toEqual(['Unknown function: "NOSUCH"', 'Unknown function: "ALSONOT"']);
});

test("a name that gets another word is written so in its formula alone, also where the formula cannot be read", () => {
  const unread = ['=NOSUCH(A1,ring,"ring")+ ring', "=ring(A1)+NOSUCH(ring_2)"];
  const cells = { B1: "=ring*2", B2: "=ring_2*2", B3: unread[0]!, B4: unread[1]! };
  const { model, text, value } = workbook({ ...MASSES, ...cells }, NAMES);
  const range = (row: number) => ({ _sheetId: "s", _zone: { left: 0, right: 0, top: row, bottom: row } });
  model.dispatch("UPDATE_NAMED_RANGE", {
    oldRangeName: "ring",
    newRangeName: "cutter",
    ranges: [range(0)],
  } as never);
  expect([text(0), text(1), value(0), value(1)]).toEqual(["=cutter*2", "=ring_2*2", 20, 40]);
  expect([text(2), text(3)]).toEqual(['=NOSUCH(A1,cutter,"ring")+ cutter', unread[1]]);
});

test("a formula pasted from another page, whose words have lost their values, leaves the code of typed formulas alone", () => {
  const { model, formula, value } = workbook({ ...MASSES, B1: "=(A1:A3/7)" });
  const copied = JSON.parse(JSON.stringify(formula(0)));
  for (const token of copied.tokens) if (token.type === "REFERENCE") token.value = "__NO_REAL_VALUE__";
  CompiledFormula.CompileForSerializedFormula("s", copied);
  model.dispatch("UPDATE_CELL", { sheetId: "s", col: 1, row: 9, content: "=(A2:A3/7)" });
  expect([value(0), value(1), value(2), value(9), value(10)].map((one) => Number(one) * 7)).toEqual([10, 20, 3, 20, 3]);
});

test("a formula with the text of one before reads the cells of its own sheet and workbook", () => {
  const two = (mass: string) =>
    new Model({
      sheets: [
        { id: "s", name: "S", cells: { A1: mass, B1: "=A1*2+ring", B2: '=A1&"g"' } },
        { id: "t", name: "T", cells: { A1: "7", B1: "=A1*2+ring", B2: '=A1&"g"' } },
      ],
      namedRanges: { ring: "S!A1" },
    } as object);
  const [one, other] = [two("1"), two("100")];
  const values = (model: Model) =>
    ["s", "t"].flatMap((sheetId) =>
      [0, 1].map((row) => model.getters.getEvaluatedCell({ sheetId, col: 1, row }).value),
    );
  expect(values(one)).toEqual([3, "1g", 15, "7g"]);
  expect(values(other)).toEqual([300, "100g", 114, "7g"]);
  other.dispatch("UPDATE_CELL", { sheetId: "s", col: 0, row: 0, content: "5" } as never);
  expect(values(one)).toEqual([3, "1g", 15, "7g"]);
  expect(values(other)).toEqual([15, "5g", 19, "7g"]);
});

test("a formula that cannot be read can be pasted from another page, which has compiled it", () => {
  const { model, formula } = workbook({ ...MASSES, B1: '=NOSUCH(A1,"[")+A2' });
  const copied = JSON.parse(JSON.stringify(formula(0)).replaceAll("NOSUCH", "NOTHERE"));
  const { getters } = model as unknown as {
    getters: { getTranslatedCellFormula(sheetId: string, right: number, down: number, copied: object): string };
  };
  expect(getters.getTranslatedCellFormula("s", 0, 1, copied)).toBe('=NOTHERE(A2,"[")+A3');
});
