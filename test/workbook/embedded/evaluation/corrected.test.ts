/** A formula that reads, by a name, a cell that waits to be evaluated again. */
import "../engine-in-node";
import { Model } from "../../../../src/workbook/embedded/engine";

test("a formula first evaluated while the cell of its name waits to be evaluated again shows what the cell shows", () => {
  const cells = {
    // A1 evaluates C1 while E1 is blank, and then D1, which fills E1. B1 comes next.
    A1: "=C1+D1",
    B1: "=waiting*10",
    C1: "=E1*1",
    D1: "=TRANSPOSE(D3:D4)",
    D3: "1",
    D4: "2",
  };
  const { getters } = new Model({
    sheets: [{ id: "sheet1", name: "Sheet 1", colNumber: 10, rowNumber: 10, cells }],
    namedRanges: { waiting: "'Sheet 1'!C1" },
  } as object);
  const value = (col: number): unknown => getters.getEvaluatedCell({ sheetId: "sheet1", col, row: 0 }).value;
  expect([value(2), value(1)]).toEqual([2, 20]);
});
