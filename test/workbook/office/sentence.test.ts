/** @jest-environment jsdom */
/** Every error code in the typings has a sentence, except codes of things that the add-in never asks for. */
import { say } from "../../../src/reduction/message";
import { readFileSync } from "fs";
import { told } from "../../../src/workbook/office/sentence";
import { StrictExcel } from "../../excel/strict-excel";

/**
 * Links to other workbooks, queries, pictures of ranges, fills and formulas of bindings: the add-in never asks for
 * them.
 */
const NEVER_ASKED = [
  "DirtySupportingFormula",
  "OpenWorkbookLinksBlocked",
  "PowerQueryRefreshResourceChallenge",
  "RangeImageExceedsLimit",
  "RefreshWorkbookLinksBlocked",
  "UnsupportedFillType",
];

const typings = readFileSync(require.resolve("@types/office-js/index.d.ts"), "utf8");
const enumeration =
  /declare namespace Excel \{[\s\S]*?\n {4}enum ErrorCodes \{([\s\S]*?)\n {4}\}/.exec(typings)?.[1] ?? "";
const codes = [...enumeration.matchAll(/= "(\w+)"/g)].map(([, code]) => code);

test("the typings list the codes of Excel", () => expect(codes.length).toBeGreaterThan(25));

test.each(codes.filter((code) => !NEVER_ASKED.includes(code)))("%s: the sentence says why, and what to do", (code) => {
  new StrictExcel();
  const error = new (OfficeExtension.Error as any)({ code, message: "in the language of Excel" });
  const { message } = told(error, say`read the selection`);
  expect(message).toMatch(/^Excel could not read the selection: .+\.$/);
  expect(message).not.toContain("in the language of Excel");
});
