/** @jest-environment jsdom */
import { OfficePort } from "../../../src/workbook/office";
import { StrictExcel, type Options } from "../../excel/strict-excel";

// On the Mac a download through a link does nothing, without a word (office-js issues 2700, 3385 and 4681).
test.each<[Options["platform"], boolean]>([
  ["web", true],
  ["desktop", true],
  ["mac", false],
])("in Excel (%s) a file is saved: %s", (platform, saves) => {
  new StrictExcel({ platform });
  expect(new OfficePort().savesFiles).toBe(saves);
});
