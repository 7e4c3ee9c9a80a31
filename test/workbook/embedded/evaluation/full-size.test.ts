/** Ranges beyond the sheet on the page count as in Excel, and AGGREGATE leaves out what its option says. */
import "../engine-in-node";
import { Model } from "../../../../src/workbook/embedded/engine";

/** What formulas answer on a sheet of 5 columns and 10 rows. */
function answers(cells: Readonly<Record<string, string>>, formulas: readonly string[], hidden: readonly number[] = []) {
  const rows = Object.fromEntries(hidden.map((row) => [row, { isHidden: true }]));
  const model = new Model({
    sheets: [
      { id: "s", name: "S", colNumber: 5, rowNumber: 10, cells, rows },
      { id: "t", name: "T" },
    ],
  } as object);
  const at = { sheetId: "t", col: 0, row: 0 };
  return formulas.map((formula) => {
    model.dispatch("UPDATE_CELL", { ...at, content: `=${formula}` });
    return model.getters.getEvaluatedCell(at).value;
  });
}

const ROWS = 1_048_576;
const COLUMNS = 16_384;

test.each([
  ["ROWS(S!A:A)", ROWS],
  ["ROWS(S!A1:B10)", 10],
  ["ROWS(S!A1:A2000)", 2000],
  ["ROWS(S!1:1)", 1],
  ["COLUMNS(S!1:2)", COLUMNS],
  ["COLUMNS(S!A1:Z1)", 26],
  ["COUNTBLANK(S!A:A)", ROWS - 3],
  ["COUNTBLANK(S!1:1)", COLUMNS - 1],
  ["COUNTBLANK(S!A1:A20)", 17],
  ['COUNTIF(S!A:A,"<>7")', ROWS - 1],
  ["COUNTIF(S!A:A,7)", 1],
  ['COUNTIFS(S!A:A,"<>7",S!B:B,"")', ROWS - 1],
  ["SUM(S!A:A)", 9],
  ["COUNTBLANK(S!A1:A10)", 7],
])("%s is %d on a sheet of 10 rows and 5 columns", (formula, answer) => {
  expect(answers({ A1: "7", A2: "2", A3: "text" }, [formula])).toEqual([answer]);
});

test("a reference that leads nowhere has no size", () => {
  expect(answers({}, ["ISERROR(ROWS(NOSHEET!A:A))", "ISERROR(COUNTBLANK(NOSHEET!A1:A2000))"])).toEqual([true, true]);
});

const CELLS = { A1: "4", A2: "=1/0", A3: "9", A4: "1", A5: "=SUBTOTAL(9,A3:A4)", A6: "4" };

test("AGGREGATE works as its function, without what its option leaves out", () => {
  // By hand: the cells are 4, #DIV/0!, 9, 1, a subtotal of 10, 4; the fourth row is hidden.
  const asked: readonly (readonly [string, number | string])[] = [
    ["AGGREGATE(9,6,S!A1:A6)", 28],
    ["AGGREGATE(9,2,S!A1:A6)", 18],
    ["AGGREGATE(9,3,S!A1:A6)", 17],
    ["AGGREGATE(9,7,S!A1:A6)", 27],
    ["AGGREGATE(9,4,S!A1:A6)", "#DIV/0!"],
    ["AGGREGATE(9,5,S!A3:A4)", 9],
    ["AGGREGATE(9,,S!A3:A6)", 14],
    ["AGGREGATE(1,6,S!A1:A2,S!A6)", 4],
    ["AGGREGATE(2,6,S!A1:A6)", 5],
    ["AGGREGATE(4,6,S!A1:A6)", 10],
    ["AGGREGATE(5,6,S!A1:A6)", 1],
    ["AGGREGATE(12,6,S!A1:A6)", 4],
    ["AGGREGATE(13,6,S!A1:A6)", 4],
    ["AGGREGATE(14,6,S!A1:A6,2)", 9],
    ["AGGREGATE(15,6,S!A1:A6/(S!A1:A6>3),1)", 4],
    ["AGGREGATE(16,2,S!A3:A6,0.5)", 4],
    ["AGGREGATE(14,6,S!A1:A6)", "#VALUE!"],
    ["AGGREGATE(20,6,S!A1:A6)", "#VALUE!"],
    ["AGGREGATE(9,6,{1,2})", "#VALUE!"],
  ];
  const found = answers(CELLS, asked.map(([formula]) => formula), [3]); // prettier-ignore
  expect(asked.map(([formula], at) => [formula, found[at]])).toEqual(asked);
});

test("AGGREGATE and SUBTOTAL are calculated again when rows are hidden and shown", () => {
  const cells = { A1: "1", A2: "2", A3: "4", B1: "=AGGREGATE(9,5,A1:A3)", B2: "=SUBTOTAL(109,A1:A3)", B3: "=1+B1" };
  const model = new Model({ sheets: [{ id: "s", name: "S", colNumber: 5, rowNumber: 10, cells }] } as object);
  const shows = () => [0, 1, 2, 3].map((row) => model.getters.getEvaluatedCell({ sheetId: "s", col: 1, row }).value);
  const rows = (type: "HIDE_COLUMNS_ROWS" | "UNHIDE_COLUMNS_ROWS") =>
    model.dispatch(type, { sheetId: "s", dimension: "ROW", elements: [1] });
  model.dispatch("UPDATE_CELL", { sheetId: "s", col: 1, row: 3, content: "=aggregate(4,5,A2:A2)" });
  expect(shows()).toEqual([7, 7, 8, 2]);
  rows("HIDE_COLUMNS_ROWS");
  expect(shows()).toEqual([5, 5, 6, 0]);
  rows("UNHIDE_COLUMNS_ROWS");
  expect(shows()).toEqual([7, 7, 8, 2]);
  // A formula without them is not followed any more.
  model.dispatch("UPDATE_CELL", { sheetId: "s", col: 1, row: 0, content: "=2" });
  expect(model.getters.getCellsWithTrackedFormula("SUBTOTAL")).toHaveLength(2);
});

test("rows can be hidden after a sheet with SUBTOTAL was deleted, and the sheet comes back by undo", () => {
  const subtotal = { A1: "1", A2: "2", B1: "=SUBTOTAL(109,A1:A2)" };
  const model = new Model({
    sheets: [
      { id: "s", name: "S", cells: subtotal },
      { id: "t", name: "T", cells: subtotal },
    ],
  } as object);
  const shows = () => model.getters.getEvaluatedCell({ sheetId: "s", col: 1, row: 0 }).value;
  const hide = () => model.dispatch("HIDE_COLUMNS_ROWS", { sheetId: "s", dimension: "ROW", elements: [1] });
  model.dispatch("DELETE_SHEET", { sheetId: "t", sheetName: "T" });
  expect(hide()).toMatchObject({ isSuccessful: true });
  expect(shows()).toBe(1);
  model.dispatch("REQUEST_UNDO");
  model.dispatch("REQUEST_UNDO");
  expect(model.getters.getCellsWithTrackedFormula("SUBTOTAL")).toHaveLength(2);
  hide();
  expect(shows()).toBe(1);
});
