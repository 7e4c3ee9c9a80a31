/**
 * What the engine would look for in every sheet after each change is looked for where somebody asks, or where something changed: the places
 * of columns and rows, and the colours. The answers are those of the engine.
 */
import "../engine-in-node";
import { registries } from "@odoo/o-spreadsheet";
import { newWorkbook } from "../../../../src/workbook/embedded";
import fc from "../../../properties";

type Plugin = new (...config: never[]) => Record<string, (...given: never[]) => unknown>;
// The engine's types do not include the inner parts of its plugins.
const pluginOf = (list: "statefulUIPluginRegistry" | "coreViewsPluginRegistry", key: string): Plugin =>
  registries[list].get(key) as unknown as Plugin;

const dispatch = (model: object, type: string, payload: object) =>
  // The engine's types list commands with their payloads.
  (model as { dispatch(type: string, payload: object): unknown }).dispatch(type, payload);

function threeSheets() {
  const { model } = newWorkbook();
  for (const at of [1, 2]) dispatch(model, "CREATE_SHEET", { sheetId: `s${at}`, name: `S${at}`, position: at });
  return model;
}

const SHEETS = ["sheet1", "s1", "s2"];

test("after an entry, the places of the sheet in front are found, and those of another once, when they are asked for", () => {
  const found = jest.spyOn(
    pluginOf("statefulUIPluginRegistry", "header_positions").prototype,
    "computeHeaderPositionsOfSheet",
  );
  const model = threeSheets();
  found.mockClear();
  for (const content of ["1", "2"]) dispatch(model, "UPDATE_CELL", { sheetId: "s1", row: 3, col: 0, content });
  expect(found.mock.calls).toEqual([["sheet1"], ["sheet1"]]);
  for (const row of [4, 5]) expect(model.getters.getRowDimensions("s2", row).start).toBeGreaterThan(0);
  expect(found.mock.calls).toEqual([["sheet1"], ["sheet1"], ["s2"]]);
  found.mockRestore();
});

test("the places are the sums of the sizes before, whatever was changed", () => {
  const rows = fc.uniqueArray(fc.nat(20), { minLength: 1 });
  fc.assert(
    fc.property(
      rows,
      rows,
      fc.integer({ min: 5, max: 90 }),
      fc.constantFrom(...SHEETS),
      (high, hidden, size, sheetId) => {
        const model = threeSheets();
        dispatch(model, "RESIZE_COLUMNS_ROWS", { sheetId, dimension: "ROW", elements: high, size });
        dispatch(model, "HIDE_COLUMNS_ROWS", { sheetId, dimension: "ROW", elements: hidden });
        dispatch(model, "UPDATE_CELL", { sheetId, row: 2, col: 1, content: "x" });
        const { getters } = model;
        let start = 0;
        for (let row = 0; row < 25; row++) {
          expect(getters.getRowDimensions(sheetId, row).start).toBe(start);
          if (!getters.isRowHidden(sheetId, row)) start += getters.getRowSize(sheetId, row);
        }
        expect(getters.getColRowOffset("ROW", 0, 25, sheetId)).toBe(start);
      },
    ),
    { numRuns: 30 },
  );
});

test("a sheet that comes to the front shows the rows that it has then, where it was scrolled to", () => {
  const model = threeSheets();
  const bring = (sheetIdTo: string) =>
    dispatch(model, "ACTIVATE_SHEET", { sheetIdFrom: model.getters.getActiveSheetId(), sheetIdTo });
  const { getters } = model;
  dispatch(model, "RESIZE_SHEETVIEW", { width: 400, height: 230, gridOffsetX: 0, gridOffsetY: 0 });
  const bottom = (): number => getters.getActiveMainViewport().bottom;
  bring("s1");
  const before = bottom();
  dispatch(model, "SET_VIEWPORT_OFFSET", { offsetX: 0, offsetY: getters.getRowDimensions("s1", 40).start });
  bring("sheet1");
  dispatch(model, "UPDATE_CELL", { sheetId: "s1", row: 41, col: 0, content: "1" });
  const tall = Array.from({ length: 20 }, (_, row) => row);
  dispatch(model, "RESIZE_COLUMNS_ROWS", { sheetId: "s2", dimension: "ROW", elements: tall, size: 100 });
  bring("s1");
  expect(getters.getActiveMainViewport().top).toBe(40);
  bring("s2");
  expect([before > 5, bottom()]).toEqual([true, 2]);
});

test("the colours of one changed sheet are looked for in that sheet; the list has those of all", () => {
  const model = threeSheets();
  const looked = jest.spyOn(pluginOf("coreViewsPluginRegistry", "custom_colors").prototype, "getColorsFromCells");
  const paint = (sheetId: string, fillColor: string) =>
    dispatch(model, "SET_FORMATTING", {
      sheetId,
      target: [{ left: 0, right: 0, top: 0, bottom: 0 }],
      style: { fillColor },
    });
  paint("s1", "#123456");
  paint("s2", "#654321");
  expect(looked.mock.calls).toEqual([["s1"], ["s2"]]);
  expect(model.getters.getCustomColors()).toEqual(expect.arrayContaining(["#123456", "#654321"]));
  dispatch(model, "REQUEST_UNDO", {});
  expect(model.getters.getCustomColors()).toEqual(["#123456"]);
  dispatch(model, "REQUEST_REDO", {});
  expect(model.getters.getCustomColors()).toEqual(expect.arrayContaining(["#123456", "#654321"]));
  looked.mockRestore();
});
