/**
 * A formula that reads, by a name, a cell that waits to be evaluated again; a formula that reads one which the engine cannot end; and a cell
 * that is filled where a formula stood.
 */
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

test("a formula follows the names and the sheet that it reads after a formula which the engine ends with an error", () => {
  const cells = {
    A1: "5",
    // The first two are evaluated before the formulas that they read.
    B1: "=IFERROR(D1,0)+mass",
    B2: '=IFERROR(Other!A1,0)+INDIRECT("A1")',
    D1: "=COUNTIF(IF(E1,E1:E3,5),1)",
  };
  const other = { A1: "=COUNTIF(IF(B1,B1:B3,5),1)" };
  const { getters, dispatch } = new Model({
    sheets: [
      { id: "s", name: "S", colNumber: 10, rowNumber: 20, cells },
      { id: "o", name: "Other", colNumber: 10, rowNumber: 20, cells: other },
    ],
    namedRanges: { mass: "S!A1" },
  } as object);
  const values = () => [0, 1].map((row) => getters.getEvaluatedCell({ sheetId: "s", row, col: 1 }).value);
  expect(values()).toEqual([5, 5]);
  // The engine's types list commands with their payloads.
  dispatch("UPDATE_CELL" as never, { sheetId: "s", row: 0, col: 0, content: "7" } as never);
  expect(values()).toEqual([7, 7]);
});

test.each(["undone", "deleted"])(
  "a cell filled where a formula was %s keeps its value when what that formula read changes",
  (how) => {
    const cells = { A1: "1", A2: "2", B9: "5", E3: "=TRANSPOSE(A1:A2)" };
    const { getters, dispatch } = new Model({
      sheets: [{ id: "s", name: "S", colNumber: 10, rowNumber: 20, cells }],
    } as object);
    const put = (row: number, col: number, content: string) =>
      // The engine's types list commands with their payloads.
      dispatch("UPDATE_CELL" as never, { sheetId: "s", row, col, content } as never);
    const values = () => [4, 5].map((col) => getters.getEvaluatedCell({ sheetId: "s", row: 2, col }).value);
    put(2, 5, "=SUM(B1:B9)");
    expect(values()).toEqual(["#SPILL!", 5]);
    if (how === "undone") dispatch("REQUEST_UNDO");
    else put(2, 5, "");
    put(8, 1, "6");
    expect(values()).toEqual([1, 2]);
    put(1, 0, "3");
    expect(values()).toEqual([1, 3]);
    put(2, 4, "");
    expect(values()).toEqual([null, null]);
  },
);

test("where formulas make one another be evaluated again without an end, those that read them have a value and follow what is typed next", () => {
  // C4 fills C5, which could let B3 fill its cells; C4 reads B3. B3 is kept from C3.
  const cells = {
    B2: "1",
    B3: "=SEQUENCE(2,2)",
    C3: "=SUM(B1:B4)",
    C4: "=IF(B1:B2>1,B2:B3,9)",
    D5: "=IFERROR(C3,4)+A1",
  };
  const model = new Model({ sheets: [{ id: "s", name: "S", colNumber: 9, rowNumber: 9, cells }] } as object);
  const value = (col: number, row: number): unknown => model.getters.getEvaluatedCell({ sheetId: "s", col, row }).value;
  const type = (col: number, row: number, content: string): void =>
    void model.dispatch("UPDATE_CELL", { sheetId: "s", col, row, content });
  // The engine says that it gives up.
  const told = jest.spyOn(console, "warn").mockImplementation(() => undefined);
  type(1, 0, "1");
  expect(told).toHaveBeenCalled();
  told.mockRestore();
  expect([value(1, 2), value(2, 2), value(2, 3), value(2, 4), value(3, 4)]).toEqual(["#SPILL!", "#SPILL!", 9, 9, 4]);
  type(0, 0, "2");
  expect(value(3, 4)).toBe(6);
});

test("a cell that a formula no longer fills has its format, so that a 5 typed into a percentage is 5 %", () => {
  const model = new Model({ sheets: [{ id: "s", name: "S", cells: { B1: "=SEQUENCE(2)" } }] } as object);
  const place = { sheetId: "s", col: 1, row: 1 };
  model.dispatch("SET_FORMATTING", { sheetId: "s", target: [{ left: 1, right: 1, top: 1, bottom: 1 }], format: "0%" });
  expect(model.getters.getEvaluatedCell(place)).toMatchObject({ value: 2, formattedValue: "200%", format: "0%" });
  model.dispatch("UPDATE_CELL", { ...place, row: 0, content: "1" });
  expect(model.getters.getEvaluatedCell(place)).toMatchObject({ value: null, formattedValue: "", format: "0%" });
});
