/** Formulas of one form are spelled for Excel as if the engine had been asked for each of them. */
import "../../engine-in-node";
import { strFromU8, unzipSync } from "fflate";
import { demoSheet } from "../../../../../src/datasheet";
import { newWorkbook, openXlsx, saveXlsx } from "../../../../../src/workbook/embedded";
import { Model, plainData } from "../../../../../src/workbook/embedded/engine";
import { spellings } from "../../../../../src/workbook/embedded/xlsx/saving/spelling";
import { haveRealFunctions } from "../../real-functions";

beforeAll(haveRealFunctions);

/** Each is asked alone. */
const oneByOne = async (formulas: readonly string[]): Promise<Map<string, string>> => {
  const found = new Map<string, string>();
  for (const formula of formulas)
    for (const [asked, spelling] of await spellings([formula])) found.set(asked, spelling);
  return found;
};

const FORMULAS = [
  ...["=A1+B2", "=$C$3+ring", "=ring_2+'Sheet 2'!A1", "=SUM(A1:B2)", "=SUM(B3:C9)", "=SUM(list)", "=SUM(list;A1)"],
  ...["=CONCAT(A1,B1)", "=CONCAT(A2,ring)", '=IF(A1="1/2",B1,"a ""b""")', '=IF(A2="1/2",B2,"x")', '=IF(A1="x",B1,"x")'],
  ...["=LOG10(A1)", "=LOG10(ring)", "=LOG10+1", "=TRUE", "=FALSE", "=IF(A1,TRUE,ring)", "=IF(A2,FALSE,ring)", "=NOW()"],
  ...[
    "=ROUND(A1)",
    "=ROUND(B1)",
    "=ROUND(ring)",
    "=ROUND(A1,2)",
    "=-A1%",
    "=-ring%",
    "=(A1)",
    "=((B1))",
    "=A1:A3",
    "=#REF+A1",
  ],
  ...[
    "=XLOOKUP(A1,B1:B9,C1:C9)",
    "=XLOOKUP(ring,list,list_2)",
    "=FILTER(A1:A9,B1:B9)",
    "=CLAY.T50(A1:A9,list)",
    "=A1 + B1",
  ],
];

test("whatever the form: dates, missing arguments, newer functions, constants, texts", async () => {
  const together = await spellings(FORMULAS);
  const alone = await oneByOne(FORMULAS);
  expect(Object.fromEntries(together)).toEqual(Object.fromEntries(alone));
  expect(together.get("=CONCAT(A2,ring)")).toBe("_xlfn.CONCAT(A2,ring)");
});

test("every formula of the demonstration, and few are asked", async () => {
  const formulas = demoSheet("SI").cells.flatMap(({ formula }) => formula?.replace(/[{}]/g, "") ?? []);
  const exported = jest.spyOn(Model.prototype, "exportXLSX");
  const together = await spellings(formulas);
  expect(exported.mock.calls.length).toBeLessThan(3);
  exported.mockRestore();
  const some = [...new Set(formulas)].filter((_, i) => i % 7 === 0);
  const alone = await oneByOne(some);
  expect(some.map((formula) => together.get(formula))).toEqual(some.map((formula) => alone.get(formula)));
});

test.each([
  ["=-(A1^2)", "-(A1^2)", -9],
  ["=-A1^2", "-A1^2", 9],
  ["=(-A1)^2", "-A1^2", 9],
  ["=-(-A1^2)", "-(-A1^2)", -9],
  ["=(-A1*2)^2", "(-A1*2)^2", 36],
  ["=10^(-A1*2)", "10^(-A1*2)", 1e-6],
  ["=10^-A1*2", "10^-A1*2", 0.002],
  ["=2^-(A1^2)", "2^-(A1^2)", 2 ** -9],
  ["=6/(-A1*2)", "6/(-A1*2)", -1],
  ["=6/-A1*2", "6/-A1*2", -4],
  ["=5-(-SQRT(4)*2)", "5-(-SQRT(4)*2)", 9],
  ["=SQRT(-A1*-A1)", "SQRT(-A1*-A1)", 3],
  ["=2*((A1+1)^2)", "2*(A1+1)^2", 32],
])("%s stays the same in Excel, where a sign comes before every other operator: %s", async (formula, spelt, value) => {
  const cells = { A1: "3", B1: formula };
  const model = new Model({ sheets: [{ id: "s", name: "S", cells }] } as object);
  const at = { sheetId: "s", col: 1, row: 0 };
  const shown = () => model.getters.getCellText(at, { showFormula: true });
  const spelling = (await spellings([shown()])).get(shown())!;
  expect([spelling, model.getters.getEvaluatedCell(at).value]).toEqual([spelt, value]);
  model.dispatch("UPDATE_CELL", { ...at, content: `=${spelling}` });
  const again = await spellings([shown()]);
  expect([again.get(shown()), model.getters.getEvaluatedCell(at).value]).toEqual([spelt, value]);
});

test("the rules of a sheet keep the parentheses that Excel needs", async () => {
  const rule = "=-(A1^2)<10^(-A1*2)";
  const { model, ...workbook } = newWorkbook();
  const sheetId = model.getters.getActiveSheetId();
  const ranges = [{ _sheetId: sheetId, _zone: { left: 0, right: 0, top: 0, bottom: 3 } }];
  const entries = { id: "entries", criterion: { type: "customFormula", values: [rule] } };
  const looks = { type: "CellIsRule", operator: "customFormula", values: [rule], style: { fillColor: "#FF0000" } };
  model.dispatch("ADD_DATA_VALIDATION_RULE", { sheetId, ranges, rule: entries } as never);
  model.dispatch("ADD_CONDITIONAL_FORMAT", { sheetId, ranges, cf: { id: "looks", rule: looks } } as never);
  const file = await saveXlsx({ model, ...workbook });
  const sheet = strFromU8(unzipSync(file)["xl/worksheets/sheet0.xml"]!);
  expect(sheet.match(/<formula1?>[^<]*/g)).toEqual(
    Array(2).fill(expect.stringMatching(/>-\(A1\^2\)&lt;10\^\(-A1\*2\)$/)),
  );
  const [opened] = (plainData(openXlsx(file).workbook.model) as any).sheets;
  expect(opened.dataValidationRules[0].criterion.values).toEqual([rule]);
  expect(opened.conditionalFormats[0].rule.values).toEqual([rule]);
});
