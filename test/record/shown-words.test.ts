/** Words of a cell in one language, whatever the language of the sheet that shows them. */
import "../workbook/embedded/engine-in-node";
import { shownWords, wordedExpression, wordedText } from "../../src/record/shown-words";
import { Model } from "../../src/workbook/embedded/engine";
import { translatesAnswers } from "../translates-answers";

translatesAnswers();

const shownFor = (text: string, formula: string): unknown => {
  const model = new Model({ sheets: [{ id: "s", cells: { A1: text, B1: `=${formula}` } }] });
  return model.getters.getEvaluatedCell({ sheetId: "s", row: 0, col: 1 }).value;
};

test.each([
  ["quality_class", "de", "very good to excellent", "sehr gut bis ausgezeichnet"],
  ["quality_class", "en", "sehr gut bis ausgezeichnet", "very good to excellent"],
  ["quality_class", "de", "sehr gut bis ausgezeichnet", "sehr gut bis ausgezeichnet"],
  ["dial_sense", "de", "fall", "fällt"],
  ["dial_sense", "en", "fällt", "fall"],
  ["quality_class", "de", "a class of my own", "a class of my own"],
] as const)("the cell %s, in the language %s: %s is shown as %s", (name, language, text, shown) => {
  const words = shownWords(name, language);
  expect([wordedText(text, words), shownFor(text, wordedExpression("A1", words))]).toEqual([shown, shown]);
});
