/** Tables that a person makes on the page: Excel takes each, and no cell is changed for it. */
import "../../engine-in-node";
import { newWorkbook, openXlsx, saveXlsx } from "../../../../../src/workbook/embedded";
import { runBatch, type Command } from "../../../../../src/workbook/embedded/engine";
import { complaintsOf } from "../../../../ooxml/complaints";
import { elements, Package } from "../../../../ooxml/package";

const STYLE = {
  firstColumn: false,
  lastColumn: false,
  bandedRows: true,
  bandedColumns: false,
  automaticAutofill: false,
};

/** Headings in the first row, the rows of the table with and without a row of totals, and the columns in the file. */
const CASES: readonly [
  what: string,
  headings: string[],
  rows: number,
  hasTotals: boolean,
  columns: string[] | undefined,
][] = [
  ["texts that differ", ["depth", "Depth in m", "1"], 4, false, ["depth", "Depth in m", "1"]],
  ["a text of two lines", ["depth\nin m", "b"], 4, true, ["depth_x000a_in m", "b"]],
  ["the same in capitals, and with a blank", ["a", "A", "a "], 4, false, undefined],
  ["a blank one", ["a", ""], 4, false, undefined],
  ["a formula", ["a", '="b"'], 4, true, undefined],
  ["a long one", ["a", "x".repeat(256)], 4, false, undefined],
  ["only totals below", ["a", "b"], 2, true, undefined],
];

test.each(CASES)("%s", async (_, headings, rows, totalRow, columns) => {
  const workbook = newWorkbook();
  const sheetId = workbook.model.getters.getActiveSheetId();
  const zone = { left: 0, right: headings.length - 1, top: 0, bottom: rows - 1 };
  const config = { ...STYLE, totalRow, hasFilters: true, numberOfHeaders: 1, styleId: "TableStyleMedium5" };
  const made = runBatch(workbook.model, [
    ...headings.map((content, col): Command => ({ type: "UPDATE_CELL", sheetId, col, row: 0, content })),
    { type: "CREATE_TABLE", sheetId, ranges: [{ _sheetId: sheetId, _zone: zone }], config, tableType: "static" },
  ]);
  expect(made).toEqual([]);
  const bytes = await saveXlsx(workbook);
  expect(complaintsOf(bytes)).toEqual([]);
  const table = new Package(bytes).xml("xl/tables/table1.xml").documentElement;
  expect(table.getAttribute("headerRowCount")).toBe(columns ? "1" : "0");
  expect(elements(table, "autoFilter")).toHaveLength(columns ? 1 : 0);
  const names = elements(table, "tableColumn").map((one) => one.getAttribute("name"));
  expect(names).toEqual(columns ?? headings.map((__, at) => `Column${at + 1}`));
  const opened = openXlsx(bytes).workbook.model.getters;
  const cells = headings.map((__, col) =>
    opened.getCellText({ sheetId: opened.getSheetIds()[0]!, col, row: 0 }, { showFormula: true }),
  );
  expect(cells).toEqual(headings);
});
