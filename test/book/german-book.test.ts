/** The calculation book of a German sheet is German, with decimal commas and the units of the sheet. */
import { bookSheet } from "../../src/book/book-sheet";
import { calculationBook } from "../../src/book/calculation-book";
import { demoSheet, fillSheet, type SheetValues } from "../../src/datasheet";
import { inOneLanguage } from "../../src/pane/live/sheet-language";
import { readRecord } from "../../src/record/record";
import { namedValues } from "../datasheet/read-sheet";
import { englishLeft, englishWords } from "../datasheet/german/english-words";

/** The texts of the book of the demonstration with these values. */
async function textsOf(typed: SheetValues): Promise<string[]> {
  const values = await namedValues(fillSheet(demoSheet("SI", "de"), typed));
  const { cells } = bookSheet("T", calculationBook(readRecord(values), values), [], "de", inOneLanguage("de"));
  return cells.flatMap(({ value }) => (typeof value === "string" ? [value] : []));
}

const CASES: readonly (readonly [string, SheetValues])[] = [
  ["as the demonstration is", {}],
  [
    "with a stage of wetting, and a swelling pressure",
    { load_stress: [12.5, 25, 25], load_mark: ["", "", "Wässern"], swelling_method: "Rückbelastung", liquid_limit: "" },
  ],
  [
    "with picks by hand and adopted values",
    {
      ...{ pick_load: ["Kurve", "Kurve"], pick_of: ["Erstbelastung bis", "Krümmung"], pick_after: [1600, 95] },
      ...{ pick_reason: ["flacher", "nach Auge"], pick_by: ["AB", "AB"] },
      ...{ adopted_value: ["", "", "", 0.07], adopted_by: ["", "", "", "AB"], adopted_cv: [2.5] },
    },
  ],
];

test.each(CASES)("%s", async (_, typed) => {
  const texts = await textsOf(typed);
  expect(texts.length).toBeGreaterThan(300);
  expect(englishLeft(texts)).toEqual([]);
  expect(texts.filter((text) => /\d\.\d/.test(text))).toEqual([]);
});

test("the words of an English line are seen", () =>
  expect(englishWords("Casagrande: where the bisector meets the virgin line")).toContain("bisector"));
