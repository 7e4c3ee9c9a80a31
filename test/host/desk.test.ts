/** Whether the workbook of the page counts as saved. */
import "../workbook/embedded/engine-in-node";
import { Desk } from "../../src/host/desk";
import type { HostVoice } from "../../src/host/voice";
import { EmbeddedPort, newWorkbook, type SheetView } from "../../src/workbook/embedded";
import { runBatch, type Command } from "../../src/workbook/embedded/engine";

/** A desk with a table in its workbook, and nothing of its page. */
function withTable() {
  const workbook = newWorkbook();
  const { model } = workbook;
  const sheetId = model.getters.getActiveSheetId();
  const ranges = [{ _sheetId: sheetId, _zone: { left: 0, right: 0, top: 0, bottom: 2 } }];
  const config = { hasFilters: true, totalRow: false, firstColumn: false, lastColumn: false, numberOfHeaders: 1 };
  const look = { bandedRows: true, bandedColumns: false, automaticAutofill: false, styleId: "TableStyleLight9" };
  const commands: Command[] = [
    ...["Load", "1", "2"].map((content, row) => ({ type: "UPDATE_CELL", sheetId, col: 0, row, content })),
    { type: "CREATE_TABLE", sheetId, ranges, config: { ...config, ...look }, tableType: "static" },
  ];
  expect(runBatch(model, commands)).toEqual([]);
  // The desk asks neither the view nor the voice whether the workbook is saved.
  const desk = new Desk(new EmbeddedPort(workbook), {} as SheetView, {} as HostVoice);
  return { desk, model, sheetId };
}

test("a filter that a person sets is work that is in no file", () => {
  const { desk, model, sheetId } = withTable();
  expect(desk.isSaved).toBe(true);
  const value = { filterType: "values" as const, hiddenValues: ["2"] };
  expect(model.dispatch("UPDATE_FILTER", { sheetId, col: 0, row: 0, value }).isSuccessful).toBe(true);
  expect(desk.isSaved).toBe(false);
  desk.markSaved();
  expect(desk.isSaved).toBe(true);
});

test("an entry that is taken back again is no such work", () => {
  const { desk, model, sheetId } = withTable();
  model.dispatch("UPDATE_CELL", { sheetId, col: 3, row: 3, content: "5" });
  expect(desk.isSaved).toBe(false);
  model.dispatch("REQUEST_UNDO");
  expect(desk.isSaved).toBe(true);
});
