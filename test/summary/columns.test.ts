/** The columns of a summary, without a workbook. */
import { COLUMN_NAMES, sheetOfKey } from "../../src/summary/columns";

test("no two columns have the same name", () => expect(new Set(COLUMN_NAMES).size).toBe(COLUMN_NAMES.length));

test.each([
  [`=IF(COUNT('Boring 1'!times_01)>=0,"Boring 1","")`, "Boring 1"],
  [`=IF(COUNT(Demo!times_01)>=0,"Demo","")`, "Demo"],
  [`=IF(COUNT('It''s'!times_01)>=0,"It's","")`, "It's"],
  ["=IF(COUNT(#REF!)>=0,1,2)", undefined],
  ["typed", undefined],
  ["", undefined],
])("the first cell %p leads to the sheet %p", (content, sheet) => {
  expect(sheetOfKey(content)).toBe(sheet);
});
