/** The engine keeps once that a formula reads the cells of a name, however often the formula is evaluated. */
import "../engine-in-node";
import { Model } from "../../../../src/workbook/embedded/engine";
import { evaluationOf } from "../../../../src/workbook/embedded/evaluation/plugin";

function workbook() {
  const cells = { A1: "1", A2: "2", B1: "=mass*2", B2: "=mass*3", B3: "=mass*4", C1: "=SUM(list)+B2", D1: "=other" };
  const model = new Model({
    sheets: [{ id: "s", name: "S", colNumber: 10, rowNumber: 20, cells }],
    namedRanges: { mass: "S!A1", list: "S!A1:A9", other: "S!B2" },
  } as object);
  const value = (col: number, row: number): unknown => model.getters.getEvaluatedCell({ sheetId: "s", col, row }).value;
  const write = (col: number, row: number, content: string): void =>
    void model.dispatch("UPDATE_CELL", { sheetId: "s", col, row, content } as never);
  const waiting = (): number =>
    Object.values(evaluationOf(model as never).evaluator.formulaDependencies().forest.s).reduce<number>(
      (sum, tree) => sum + (tree as unknown as { buffer: unknown[] }).buffer.length,
      0,
    );
  return { value, write, waiting };
}

test("after a changed cell the engine has nothing to sort in that it had before", () => {
  const { write, waiting } = workbook();
  write(0, 0, "5");
  write(0, 0, "6");
  expect(waiting()).toBe(0);
});

test("every reader follows, also one that is new, that stands between others, or that reads other cells than before", () => {
  const { value, write } = workbook();
  write(0, 0, "10");
  expect([value(1, 0), value(1, 1), value(1, 2), value(2, 0), value(3, 0)]).toEqual([20, 30, 40, 42, 30]);
  write(1, 3, "=mass*5");
  write(1, 1, "=mass+1");
  write(4, 1, "=mass");
  write(0, 0, "100");
  expect([value(1, 0), value(1, 1), value(1, 2), value(1, 3), value(4, 1)]).toEqual([200, 101, 400, 500, 100]);
  expect([value(2, 0), value(3, 0)]).toEqual([203, 101]);
});
