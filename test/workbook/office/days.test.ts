/** @jest-environment jsdom */
/** Workbooks that count their days from 1904 (an option of Excel, and in old times the standard on the Mac). */
import { OfficePort } from "../../../src/workbook/office";
import { StrictExcel } from "../../excel/strict-excel";

test.each([true, false])("the port says whether the workbook counts its days from 1904: %s", async (isFrom1904) => {
  const excel = new StrictExcel({ sheets: ["Data"] });
  excel.switches.countsFrom1904 = isFrom1904;
  expect(await new OfficePort().countsFrom1904()).toBe(isFrom1904);
  expect(excel.faults).toEqual([]);
});
