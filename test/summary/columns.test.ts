/** The columns of a summary, without a workbook. */
import "../workbook/embedded/engine-in-node";
import { readRecord } from "../../src/record/record";
import { COLUMN_NAMES, COLUMNS, sheetOfKey, SUMMARY_UNITS } from "../../src/summary/columns";
import { wordsOf } from "../../src/specification/text/words";
import { languageOfSummary, SUMMARY_LANGUAGE, summarySheet } from "../../src/summary/summary-sheet";
import { Model } from "../../src/workbook/embedded/engine";
import { translatesAnswers } from "../translates-answers";

test("no two columns have the same name", () => expect(new Set(COLUMN_NAMES).size).toBe(COLUMN_NAMES.length));

test("a German summary has every text in German, in columns as wide as its words, and the same names and units", () => {
  const [english, german] = [summarySheet("SI"), summarySheet("SI", "de")];
  expect(german.names).toEqual(english.names);
  const shape = ({ cells }: typeof english) => cells.map((cell) => ({ ...cell, value: undefined }));
  expect(shape(german)).toEqual(shape(english));
  const same = german.cells.filter(({ value }, index) => value === english.cells[index].value);
  const SYMBOLS = ["w0", "e0", "OCR", "Cc", "Cr", "Cs", "CR", "RR"];
  expect(same.filter(({ kind }) => kind !== "unit").map(({ value }) => value)).toEqual(SYMBOLS);
  const words = german.cells.filter(({ kind }) => kind === "heading").map(({ col, value }) => [col, String(value).split(" ")] as const); // prettier-ignore
  expect(words.filter(([col, all]) => all.some((one) => one.length > german.columnWidths[col] - 1))).toEqual([]);
});

describe("words that a data sheet gives in its own language", () => {
  translatesAnswers();
  const COLUMN_OF = { quality_class: "summary_quality_class", wetting_stages: "summary_wetting_stages" };
  const german = { quality_class: "gut bis befriedigend", wetting_stages: "2 Stufen; diese: Laststufe 3" };
  const english = { quality_class: "good to fair", wetting_stages: "2 stages; these results: load 3" };

  test.each([
    ["de", english],
    ["en", german],
    ["de", german],
    ["en", english],
  ] as const)("are in the language of the summary (%s), live and as a constant of a file: %p", (language, onSheet) => {
    const wanted = language === "de" ? german : english;
    const cells = { A1: onSheet.quality_class, A2: onSheet.wetting_stages, A3: "3", B1: "0.01", B2: "0.02" };
    const at: Record<string, string> = { quality_class: "A1", wetting_stages: "A2", wetting_load: "A3", load_wetting_strain: "B1:B9" }; // prettier-ignore
    const record = readRecord({
      ...{ quality_class: [[onSheet.quality_class]], wetting_stages: [[onSheet.wetting_stages]], wetting_load: [[3]] },
      ...{ load_stress: [[10], [20], [40]], stress_unit: [["kPa"]], load_wetting_strain: [[""], [0.01], [0.02]] },
    });
    for (const name of ["quality_class", "wetting_stages"] as const) {
      const { formula, value } = COLUMNS.find((column) => column.name === COLUMN_OF[name])!;
      const content = formula!((needed) => at[needed]!, SUMMARY_UNITS.SI, wordsOf(language));
      const model = new Model({ sheets: [{ id: "s", cells: { ...cells, H8: content } }] });
      const live = model.getters.getEvaluatedCell({ sheetId: "s", row: 7, col: 7 }).value;
      const constant = value(record, { open: 0, day: 46_000 }, SUMMARY_UNITS.SI, wordsOf(language));
      expect([name, live, constant]).toEqual([name, wanted[name], wanted[name]]);
    }
  });
});

test("a summary says its language by name; one that does not is English", () => {
  const said = (language: "en" | "de") => {
    const { names, cells } = summarySheet("US", language);
    const { row, col } = names[SUMMARY_LANGUAGE];
    return { [SUMMARY_LANGUAGE]: [[cells.find((cell) => cell.row === row && cell.col === col)!.value!]] };
  };
  expect([languageOfSummary(said("de")), languageOfSummary(said("en")), languageOfSummary({})]).toEqual([
    "de",
    "en",
    "en",
  ]);
});

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

test.each([
  ["down a column", "en", "A2:A6", { A3: "0.35", A6: "0.002" }, "Compression index Cc; C alpha-epsilon; "],
  ["across a row", "en", "B1:F1", { C1: "0.35", F1: "0.002" }, "Compression index Cc; C alpha-epsilon; "],
  [
    "down a column, in German",
    "de",
    "A2:A6",
    { A3: "0.35", A4: "0.04" },
    "Kompressionsbeiwert Cc; Wiederbel.-beiwert Cr; ",
  ],
] as const)("the adopted values are named if their list lies %s", (_, language, list, cells, said) => {
  const { formula } = COLUMNS.find(({ name }) => name === "summary_adopted")!;
  const content = formula!(() => list, SUMMARY_UNITS.SI, wordsOf(language));
  const model = new Model({ sheets: [{ id: "s", cells: { ...cells, H8: content } }] });
  expect(model.getters.getEvaluatedCell({ sheetId: "s", row: 7, col: 7 }).value).toBe(said);
});
