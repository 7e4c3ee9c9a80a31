/** A formula that reads several formulas which the engine cannot read names the first of them, whichever was evaluated first. */
import "../engine-in-node";
import { Model } from "../../../../src/workbook/embedded/engine";
import { evaluationOf } from "../../../../src/workbook/embedded/evaluation/plugin";

test("the first cell of a range that lacks a value is the origin, for formulas evaluated before it and behind it", () => {
  const unread = "=LET(x,1,x)";
  const cells = { A1: "=SUM(B1:C2)", B1: "4", B2: unread, C1: unread, C2: unread, D1: "=SUM(B1:C2)" };
  const model = new Model({ sheets: [{ id: "s1", name: "One", colNumber: 9, rowNumber: 9, cells }] } as object);
  const { evaluatedCells } = evaluationOf(model).evaluator;
  for (const col of [0, 3])
    expect(evaluatedCells.get({ sheetId: "s1", col, row: 0 })).toMatchObject({
      value: "#NAME?",
      errorOriginPosition: { sheetId: "s1", col: 1, row: 1 },
    });
});

test("of a range, a cell that was evaluated before is the origin, also if a later cell is evaluated while the range is read", () => {
  const unread = "=LET(x,1,x)";
  const cells = { A1: unread, A2: "=SUM(A1:B1)", B1: unread };
  const model = new Model({ sheets: [{ id: "s1", name: "One", colNumber: 9, rowNumber: 9, cells }] } as object);
  expect(evaluationOf(model).evaluator.evaluatedCells.get({ sheetId: "s1", col: 0, row: 1 })).toMatchObject({
    value: "#NAME?",
    errorOriginPosition: { sheetId: "s1", col: 0, row: 0 },
  });
});
