/** Rows and columns of the page that are larger, or deeper in groups, than Excel takes: it would call the file damaged. */
import "../../engine-in-node";
import { newWorkbook, saveXlsx } from "../../../../../src/workbook/embedded";
import { runBatch, type Command } from "../../../../../src/workbook/embedded/engine";
import { complaintsOf } from "../../../../ooxml/complaints";
import { elements, Package } from "../../../../ooxml/package";

test.each(["ROW", "COL"] as const)("%s: as large and as deep as Excel takes", async (dimension) => {
  const workbook = newWorkbook();
  const sheetId = workbook.model.getters.getActiveSheetId();
  const groups = Array.from({ length: 9 }, (_, level): Command => {
    return { type: "GROUP_HEADERS", sheetId, dimension, start: level, end: 20 - level };
  });
  const sized: Command = { type: "RESIZE_COLUMNS_ROWS", sheetId, dimension, elements: [0], size: 4000 };
  expect(runBatch(workbook.model, [...groups, sized])).toEqual([]);
  const bytes = await saveXlsx(workbook);
  expect(complaintsOf(bytes)).toEqual([]);
  const file = new Package(bytes);
  const lines = elements(file.xml(file.sheets[0]!.path), dimension.toLowerCase());
  expect(lines[0]!.getAttribute(dimension === "ROW" ? "ht" : "width")).toBe(dimension === "ROW" ? "409.5" : "255");
  expect(Math.max(...lines.map((one) => Number(one.getAttribute("outlineLevel"))))).toBe(7);
});
