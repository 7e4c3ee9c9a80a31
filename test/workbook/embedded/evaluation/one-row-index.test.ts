/** INDEX in the embedded sheet, as Excel calculates it. */
import "../engine-in-node";
import { Model } from "../../../../src/workbook/embedded/engine";

const shown = (formula: string): unknown => {
  const model = new Model({
    sheets: [
      {
        id: "s",
        cells: { A1: "5", B1: "7", C1: "9", A2: "11", B2: "13", A3: "15", E1: formula },
      },
    ],
  });
  return model.getters.getEvaluatedCell({ sheetId: "s", row: 0, col: 4 }).value;
};

// [MS-OI29500] 2.1.973: Office takes the row number as that of the column if the array has only one row.
test.each([
  ["=INDEX(A1:C1,2)", 7],
  ["=INDEX(A1:C1,3)", 9],
  ["=COUNT(INDEX(A1:D1,4))", 0],
  ["=SUM(INDEX(A1:C1,0))", 21],
  ["=INDEX(A1:C1,MATCH(9,A1:C1,0))", 9],
])("of one row, a single number is that of the column: %s", (formula, value) => {
  expect(shown(formula)).toBe(value);
});

test("a number beyond the row is an error", () => {
  expect(String(shown("=INDEX(A1:C1,4)"))).toMatch(/^#/);
});

test.each([
  ["=INDEX(A1:A3,2)", 11],
  ["=INDEX(A1:C1,1,2)", 7],
  ["=INDEX(A1:C1,0,3)", 9],
  ["=INDEX(A1:B2,2,2)", 13],
  ["=SUM(INDEX(A1:B2,2))", 24],
  ["=INDEX(A1,1)", 5],
])("of other ranges, and with both numbers, it is as before: %s", (formula, value) => {
  expect(shown(formula)).toBe(value);
});
