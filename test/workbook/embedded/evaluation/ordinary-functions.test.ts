/**
 * Ordinary functions on blank cells, texts, errors, truth values and single cells. `ordinary-functions.tsv` has formulas with
 * the answers of LibreOffice 7.4.7, which calculated them from an .xlsx file; `IN_EXCEL` has those that Excel answers
 * otherwise, with the source.
 */
import "../engine-in-node";
import { readFileSync } from "node:fs";
import path from "node:path";
import { engine as german } from "../../../../src/pane/text/de/engine";
import { settingsFor } from "../../../../src/workbook/embedded/typing/locale";
import { Model } from "../../../../src/workbook/embedded/engine";
import { withoutLogTen } from "../../../../src/workbook/embedded/evaluation/log-ten";
import { withTightMinus } from "../../../../src/workbook/embedded/evaluation/tight-minus";

const CELLS = {
  ...{ A2: "x", A3: "5", A4: "=1/0", A5: "TRUE", A6: '=""', A7: "'7", A8: "0", A9: "-2.5" },
  ...{ C1: "1", C2: "2", C3: "3", D1: "a", D2: "b", D3: "c", E1: "1", E3: "3" },
};

const COUNTED =
  "Microsoft, COUNT: of a reference only numbers count, and a number in quotation marks counts (from memory)";
const SUMMED =
  "Microsoft, SUM, AVERAGE, MAX: a number in quotation marks counts, a truth value in a cell does not (from memory)";
const LOGICAL = "Excel takes no text but TRUE and FALSE for a truth value (from memory)";

const FILTERED = "Microsoft, FILTER: * of conditions for and, + for or (from memory)";
const SORTED = "Microsoft, SORT and SORTBY: order 1 or -1 (from memory)";

const IN_EXCEL: readonly (readonly [formula: string, answer: string | number, source: string])[] = [
  ["COUNT(A1:A9)", 3, COUNTED],
  ["COUNT(A5)", 0, COUNTED],
  ["SUM(A5)", 0, SUMMED],
  ["SUM(A5:A9)", -2.5, SUMMED],
  ['SUM("7",1)', 8, SUMMED],
  ['MAX("7",A3)', 7, SUMMED],
  ["MAX(A5:A9)", 0, SUMMED],
  ["AVERAGE(A5,A3)", 5, SUMMED],
  ["IF(A7,1,2)", "#VALUE!", LOGICAL],
  ['NOT("7")', "#VALUE!", LOGICAL],
  ["MROUND(7,-2)", "#NUM!", "Microsoft, MROUND: number and multiple have the same sign (from memory)"],
  ["QUOTIENT(7,0)", "#DIV/0!", "Microsoft, QUOTIENT (from memory)"],
  ["STANDARDIZE(3,2,0)", "#NUM!", "Microsoft, STANDARDIZE: a standard deviation of 0 or less (from memory)"],
  ["SUMSQ(A5:A9)", 6.25, SUMMED],
  ["DEVSQ(B1:B3)", "#NUM!", "Microsoft, DEVSQ (from memory)"],
  ["GEOMEAN(A8:A9)", "#NUM!", "Microsoft, GEOMEAN: a value of 0 or less (from memory)"],
  ["MODE(C1:C3)", "#N/A", "Microsoft, MODE: no value occurs twice (from memory)"],
  ["RANK.EQ(5,C1:C3)", "#N/A", "Microsoft, RANK: the value is not among the data (from memory)"],
  ["PERCENTRANK(C1:C3,4)", "#N/A", "Microsoft, PERCENTRANK: a value beyond the data (from memory)"],
  ["PERCENTRANK.EXC(C1:C3,0.5)", "#N/A", "Microsoft, PERCENTRANK.EXC (from memory)"],
  ["REPT(A5,2)", "TRUETRUE", "Excel joins a truth value as a word (from memory)"],
  ["CODE(A6)", "#VALUE!", "Microsoft, CODE (from memory)"],
  ['NUMBERVALUE("1,440")', 1440, "Microsoft, NUMBERVALUE: signs of the computer, here English (from memory)"],
  ['NUMBERVALUE("12.5%")', 0.125, "Microsoft, NUMBERVALUE (from memory)"],
  ['NUMBERVALUE("1 440.5")', 1440.5, "Microsoft, NUMBERVALUE: spaces do not count (from memory)"],
  ["XMATCH(2.5,C1:C3,-1)", 2, "Microsoft, XMATCH; LibreOffice 7.4 has none (from memory)"],
  ["XMATCH(2.5,C1:C3,1)", 3, "as above"],
  ['XMATCH("b",D1:D3)', 2, "as above"],
  ["XMATCH(5,C1:C3)", "#N/A", "as above"],
  ['COUNTIF(A1:A9,">0")', 1, "Excel compares numbers with numbers alone (from memory)"],
  [
    'TEXT(1.5,"0.00E+00")',
    "1.50E+00",
    "Microsoft, number format codes: E+ shows the sign of the exponent always (from memory)",
  ],
  ['TEXT(0.00012,"0.00E+00")', "1.20E-04", "as above"],
  ["SUM(FILTER(C1:C3,(C1:C3>1)*(C1:C3<3)))", 2, FILTERED],
  ["SUM(FILTER(C1:C3,(C1:C3>2)+(C1:C3<2)))", 4, FILTERED],
  ["SUM(FILTER(C1:C3,C1:C3>1,C1:C3>2))", 5, "Microsoft, FILTER: the third argument is no condition (from memory)"],
  ['FILTER(C1:C3,C1:C3>9,"none")', "none", "Microsoft, FILTER: the third argument if nothing is left (from memory)"],
  ["SUM(FILTER(C1:C3,C1:C3>9,C1:C3))", 6, "as above"],
  ['FILTER(C1:C3,C1:C3>9,"")', "", "as above"],
  [
    "IFERROR(FILTER(C1:C3,C1:C3>9),0)",
    0,
    "Microsoft, FILTER: #CALC! if nothing is left and nothing is said for it (from memory)",
  ],
  ['FILTER(C1:C3,C1:C2>9,"none")', "#VALUE!", "Microsoft, FILTER: another number of rows (from memory)"],
  ["SUM(FILTER(C1:C3,D1:D3))", "#VALUE!", "Microsoft, FILTER: a condition that is no truth value (from memory)"],
  ["SUM(FILTER(C1:C3,C1:C2>1))", "#VALUE!", "Microsoft, FILTER: another number of rows (from memory)"],
  ["INDEX(SORT(C1:C3,1,-1),1)", 3, SORTED],
  ["INDEX(SORT(D1:D3,1,-1),1)", "c", SORTED],
  ["INDEX(SORT(C1:C3),1)", 1, SORTED],
  ["INDEX(SORT(C1:C3,1,1),3)", 3, SORTED],
  ["INDEX(SORT(TRANSPOSE(C1:C3),1,-1,TRUE),1,1)", 3, SORTED],
  ["SUM(SORT(C1:C3,2))", "#VALUE!", SORTED],
  ["SUM(SORT(C1:C3,1,2))", "#VALUE!", SORTED],
  ["INDEX(SORTBY(D1:D3,C1:C3,-1),1)", "c", SORTED],
  ["INDEX(SORTBY(D1:D3,C1:C3),1)", "a", SORTED],
  ["INDEX(SORTBY(D1:D3,E1:E3*0,1,C1:C3,-1),1)", "c", SORTED],
  ["SUM(SORTBY(C1:C3,C1:C2,1))", "#VALUE!", SORTED],
];

const ENGINE_ERRORS: Readonly<Record<string, string>> = { "#ERROR": "#VALUE!", "#REF": "#REF!", "#BAD_EXPR": "#NAME?" };
/** Errors that are told apart; the engine has one code for several others. */
const TOLD = new Set(["#DIV/0!", "#N/A"]);

function comparable(value: unknown): string | number {
  if (typeof value === "boolean") return String(value).toUpperCase();
  const text = ENGINE_ERRORS[String(value)] ?? String(value ?? "");
  if (text.startsWith("#")) return TOLD.has(text) ? text : "another error";
  return text.trim() !== "" && Number.isFinite(Number(text)) ? Number(Number(text).toPrecision(9)) : text;
}

const COLUMN = 40;

/** What each formula answers, in a column beside the cells that it reads. */
function answersOf(formulas: readonly string[], settings: object = settingsFor(".")): (string | number)[] {
  const sheets = [{ id: "s", name: "S", colNumber: 60, rowNumber: 100, cells: CELLS }];
  const model = new Model({ sheets, settings } as object);
  const at = { sheetId: "s", col: COLUMN, row: 20 };
  return formulas.map((formula) => {
    model.dispatch("UPDATE_CELL", { ...at, content: `=${formula}` });
    return comparable(model.getters.getEvaluatedCell(at).value);
  });
}

let errors: jest.SpyInstance;
beforeAll(() => void (errors = jest.spyOn(console, "error").mockImplementation(() => undefined)));
afterAll(() => errors.mockRestore());

test("formulas answer as LibreOffice answers them", () => {
  const rows = readFileSync(path.join(__dirname, "ordinary-functions.tsv"), "utf8").trimEnd().split("\n");
  const pairs = rows.map((row) => row.split("\t") as [string, string]);
  const answers = answersOf(pairs.map(([formula]) => formula));
  const other = pairs.flatMap(([formula, answer], i) =>
    answers[i] === comparable(answer) ? [] : [`${formula}: ${answers[i]}, not ${answer}`],
  );
  expect(pairs.length).toBeGreaterThan(1200);
  expect(other).toEqual([]);
});

test("NUMBERVALUE takes the signs of the workbook where none are given (Microsoft, NUMBERVALUE; from memory)", () => {
  const signs = ['NUMBERVALUE("2,5")', 'NUMBERVALUE("1.440,5")', 'NUMBERVALUE("2.5",".")'];
  expect(answersOf(signs, settingsFor(","))).toEqual([2.5, 1440.5, 2.5]);
});

test("formulas that Excel answers otherwise than LibreOffice answer as in Excel", () => {
  const answers = answersOf(IN_EXCEL.map(([formula]) => formula));
  expect(IN_EXCEL.map(([formula], i) => [formula, answers[i]])).toEqual(
    IN_EXCEL.map(([formula, answer]) => [formula, comparable(answer)]),
  );
});

test.each([
  ["=-A1^2", "=(-A1)^2"],
  ["=--2^2", "=(-(-2))^2"],
  ["=SUM(-A1^2,-(1+2)^2)", "=SUM((-A1)^2,(-(1+2))^2)"],
  ["=-SUM(A1,B1)^2", "=(-SUM(A1,B1))^2"],
  ["=- ring ^2+1", "=(- ring) ^2+1"],
  ["=1-2^2", "=1-2^2"],
  ["=A1%-B1^2", "=A1%-B1^2"],
  ["=(A1)-B1^2", "=(A1)-B1^2"],
  ["=2^-1", "=2^-1"],
  ['="a-b^2"', '="a-b^2"'],
  ["=1E-3^2", "=1E-3^2"],
  ["=-5%^2", "=(-5%)^2"],
  ["=SUM(-A1:A3^2)", "=SUM((-A1:A3)^2)"],
  ["=-+A1^2", "=(-+A1)^2"],
  ["=+A1^2", "=+A1^2"],
  ["=A1#-B1^2", "=A1#-B1^2"],
  ["=10^-3*5", "=10^(-3)*5"],
  ["=A1/+B1*C1", "=A1/(+B1)*C1"],
  ["=A1*-B1*C1", "=A1*-B1*C1"],
])("the sign in %s belongs to what stands behind it: %s", (formula, spelt) => {
  expect(withTightMinus(formula)).toBe(spelt);
});

test.each([
  ["=LOG10(100)", "=LOG(100)", 2],
  ["=1+log10 (A1)", "=1+LOG(A1)", 3],
  ["=LOG10(LOG10(10^C1))", "=LOG(LOG(10^C1))", 1],
  ['="LOG10("&LEN("LOG10(1)")', '="LOG10("&LEN("LOG10(1)")', "LOG10(8"],
])("%s is calculated as %s", (formula, spelt, value) => {
  const cells = { A1: "100", C1: "10", B1: formula };
  const model = new Model({ sheets: [{ id: "s", name: "S", cells }] } as object);
  const at = { sheetId: "s", col: 1, row: 0 };
  expect(model.getters.getCellText(at, { showFormula: true })).toBe(spelt);
  expect(model.getters.getEvaluatedCell(at).value).toBe(value);
});

test("a cell in column LOG stays a cell", () => {
  expect(withoutLogTen("=LOG10+LOG10*2")).toBe("=LOG10+LOG10*2");
});

test("a cell shows the formula with the parentheses that it was given", () => {
  const model = new Model({ sheets: [{ id: "s", name: "S", cells: { A1: "3", B1: "=1-2^2" } }] } as object);
  const at = { sheetId: "s", col: 1, row: 0 };
  const shown = () => [model.getters.getCellText(at, { showFormula: true }), model.getters.getEvaluatedCell(at).value];
  expect(shown()).toEqual(["=1-2^2", -3]);
  model.dispatch("UPDATE_CELL", { ...at, content: "=-A1^2" });
  expect(shown()).toEqual(["=(-A1)^2", 9]);
});

test("an empty text that is calculated with is #VALUE!, and says so in the words of the page", () => {
  const model = new Model({ sheets: [{ id: "s", name: "S", cells: { A1: '=""', B1: "=A1+1" } }] } as object);
  const shown = model.getters.getEvaluatedCell({ sheetId: "s", col: 1, row: 0 });
  const { message = "" } = shown as { readonly message?: string };
  expect([shown.value, message]).toEqual(["#VALUE!", "An empty text is no number: it cannot be calculated with."]);
  expect(german[message]).toMatch(/^Ein leerer Text ist keine Zahl/);
});

test("FILTER of which nothing is left is #CALC!, and says what to do in the words of the page (Microsoft, FILTER; exceljet.net, How to fix the #CALC! error)", () => {
  const cells = { A1: "1", A2: "2", B1: "=FILTER(A1:A2,A1:A2>9)", C1: "=ISERROR(B1)" };
  const model = new Model({ sheets: [{ id: "s", name: "S", cells }] } as object);
  const shown = (col: number) => model.getters.getEvaluatedCell({ sheetId: "s", col, row: 0 });
  expect([shown(1).value, shown(2).value]).toEqual(["#CALC!", true]);
  const { message = "" } = shown(1) as { readonly message?: string };
  expect(message).toMatch(/^Nothing is left of the array/);
  expect(german[message]).toMatch(/^Von der Matrix bleibt nichts/);
});

test("SEARCH that finds nothing names what it looked for", () => {
  const model = new Model({ sheets: [{ id: "s", name: "S", cells: { A1: '=SEARCH("ri?g","tin")' } }] } as object);
  const { message = "" } = model.getters.getEvaluatedCell({ sheetId: "s", col: 0, row: 0 }) as { message?: string };
  expect(message).toMatch(/cannot find 'ri\?g/);
});
