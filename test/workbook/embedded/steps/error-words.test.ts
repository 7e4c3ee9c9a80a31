/** When the page has another language, what the errors of cells say is in it; no other cell is calculated again. */
import "../engine-in-node";
import { addFunction, EvaluationError } from "@odoo/o-spreadsheet";
import { newWorkbook } from "../../../../src/workbook/embedded";
import { runBatch } from "../../../../src/workbook/embedded/engine";
import { wordErrorsAgain } from "../../../../src/workbook/embedded/steps/error-words";
import { counter } from "../evaluation/sheets";

let language = "en";
const refused = () => new EvaluationError(language === "en" ? "enter the stress" : "Spannung eingeben", "#N/A");
addFunction("REFUSED", { description: "Gives an error.", args: [], compute: refused as never });
addFunction("HALF", {
  description: "Gives a number, and an error below it.",
  args: [],
  compute: (() => [[{ value: 1 }, refused()]]) as never,
});

const CONTENTS = ["=REFUSED()", "=A1+1", "=COUNTED(2)", '=IFERROR(A1,"-")', "=HALF()"];

test("errors say it in the new language, also those that are passed on or that a formula spills", async () => {
  const { model } = newWorkbook();
  runBatch(
    model,
    CONTENTS.map((content, row) => ({ type: "UPDATE_CELL", sheetId: "sheet1", row, col: 0, content })),
  );
  const said = () =>
    [0, 1, 2, 3, 4, 5].map((row) => {
      const cell = model.getters.getEvaluatedCell({ sheetId: "sheet1", row, col: 0 });
      return ("message" in cell && cell.message) || cell.value;
    });
  const of = (sentence: string) => [sentence, sentence, 2, "-", 1, sentence];
  expect(said()).toEqual(of("enter the stress"));
  language = "de";
  counter.calls = 0;
  await wordErrorsAgain(model);
  expect(said()).toEqual(of("Spannung eingeben"));
  expect(counter.calls).toBe(0);
});
