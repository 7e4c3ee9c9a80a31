/** Rows copied in another program, pasted into cells with a look of their own. */
import "../engine-in-node";
import { newWorkbook } from "../../../../src/workbook/embedded";
import type { Model } from "../../../../src/workbook/embedded/engine";
import { setDecimalMark } from "../../../../src/workbook/embedded/typing/locale";

/** A sheet with three framed rows of two cells; the last holds 7 and 8. */
function framed(): { model: any; cell: (row: number, col: number) => any } {
  const { model } = newWorkbook();
  setDecimalMark(model, ",");
  const any = model as any;
  const sheetId = model.getters.getActiveSheetId();
  for (const row of [0, 1, 2])
    for (const col of [0, 1])
      any.dispatch("UPDATE_CELL", {
        ...{ sheetId, row, col, content: row === 2 ? String(7 + col) : "" },
        ...{ style: { fillColor: "#FFF8E0", fontSize: 9 }, format: "0.000" },
      });
  const cell = (row: number, col: number) => (model as Model as any).getters.getCell({ sheetId, row, col });
  return { model: any, cell };
}

const paste = (model: any, text: string, pasteOption?: "onlyFormat"): void =>
  void model.dispatch("PASTE_FROM_OS_CLIPBOARD", {
    clipboardContent: { text },
    target: [{ left: 0, right: 0, top: 0, bottom: 0 }],
    pasteOption,
  });

test("the cells keep their look, and what is below the last row stays", () => {
  const { model, cell } = framed();
  paste(model, "0,25\t1,5\r\n1\t2.11.2026\r\n");
  expect(cell(0, 0)).toMatchObject({ content: "0.25", format: "0.000", style: { fillColor: "#FFF8E0", fontSize: 9 } });
  expect(cell(1, 1).style).toMatchObject({ fillColor: "#FFF8E0" });
  expect(model.getters.getEvaluatedCell({ ...{ sheetId: model.getters.getActiveSheetId() }, row: 1, col: 1 }).value).toBe(46328); // prettier-ignore
  expect([cell(2, 0).content, cell(2, 1).content]).toEqual(["7", "8"]);
});

test("a blank cell of the text empties a cell, which keeps its look", () => {
  const { model, cell } = framed();
  paste(model, "1\t2\r\n3\t4\r\n\t9\r\n");
  expect(cell(2, 0)?.content ?? "").toBe("");
  expect(cell(2, 0).style).toMatchObject({ fillColor: "#FFF8E0" });
  expect(cell(2, 1).content).toBe("9");
});

test("with the point as decimal mark, a number of a clause is no day", () => {
  const { model, cell } = framed();
  setDecimalMark(model, ".");
  paste(model, "4.3.12\t31.12.2026");
  expect([cell(0, 0).content, cell(0, 1).content]).toEqual(["4.3.12", "31.12.2026"]);
});

test("a cell of text format keeps a day and a number with a point as they were copied", () => {
  const { model, cell } = framed();
  const sheetId = model.getters.getActiveSheetId();
  for (const col of [0, 1]) model.dispatch("UPDATE_CELL", { sheetId, row: 0, col, format: "@" });
  paste(model, "1.2.26\t2.5");
  expect([cell(0, 0).content, cell(0, 1).content]).toEqual(["1.2.26", "2.5"]);
});

test("pasting the format alone of a text changes nothing", () => {
  const { model, cell } = framed();
  paste(model, "1\t2\r\n3\t4\r\n5\t6", "onlyFormat");
  expect([cell(2, 0).content, cell(2, 1).content]).toEqual(["7", "8"]);
  expect(cell(2, 0).style).toMatchObject({ fillColor: "#FFF8E0", fontSize: 9 });
});
