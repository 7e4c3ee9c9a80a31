/** A German sheet gives the same results as the English one, name by name. */
import { demoSheet } from "../../../src/datasheet";
import { isSpill, isTable } from "../../../src/specification/field";
import { ALL_PARTS } from "../../../src/specification/parts";
import { textOf } from "../../../src/record/cells";
import { readRecord, type NamedValues } from "../../../src/record/record";
import { wordsOf } from "../../../src/specification/text/words";
import { namedValues } from "../read-sheet";
import { isTranslation } from "./meaning";

/** Names of cells with sentences of the sheet's own. */
const SENTENCES = new Set(
  ALL_PARTS.flatMap((part) =>
    isTable(part)
      ? part.columns.flatMap(({ name, kind }) => (kind === "remark" ? [name] : []))
      : !isSpill(part) && part.kind === "remark"
        ? [part.name]
        : [],
  ),
);
/** What a person would have typed in German. */
const TYPED = Object.keys(wordsOf("de").demo);
const OWN_WORDS = [
  ...TYPED,
  "test_summary",
  "sheet_language",
  "design_from",
  "adopted_quantity",
  "adopted_cv_range",
  "wetting_stages",
  "field_recompression_from",
];

/** The values of a sheet with the words of its lists and states in English. */
const inEnglish = (values: NamedValues): NamedValues =>
  Object.fromEntries(
    Object.entries(values).map(([name, rows]) => [
      name,
      rows.map((row) => row.map((cell) => (typeof cell === "string" ? textOf(name, cell) : cell))),
    ]),
  );

/** Whether the cells hold the same, texts by their meaning. */
const meanTheSame = (english: NamedValues[string], german: NamedValues[string]): boolean =>
  english.every((row, index) =>
    row.every((cell, col) => cell === german[index][col] || isTranslation(String(cell), String(german[index][col]))),
  );

const withoutNames = (words: object, names: readonly string[]): object =>
  Object.fromEntries(Object.entries(words).filter(([name]) => !names.includes(name)));

test.each(["SI", "US"] as const)("with the values of the %s demonstration", async (system) => {
  const english = await namedValues(demoSheet(system));
  const german = inEnglish(await namedValues(demoSheet(system, "de")));
  const differing = Object.keys(english).filter(
    (name) => !SENTENCES.has(name) && !meanTheSame(english[name], german[name]),
  );
  expect(differing.sort()).toEqual(OWN_WORDS.filter((name) => differing.includes(name)).sort());
  expect([german.sheet_language, german.design_from, german.field_recompression_from]).toEqual([
    [["Deutsch"]],
    [[expect.stringContaining("Laborkurve")]],
    [[expect.stringMatching(/^Ent- und Wiederbelastung [\d,]+ bis [\d,]+$/)]],
  ]);
  const [before, after] = [readRecord(english), readRecord(german)];
  expect(after.faults).toEqual([]);
  expect(after.results).toEqual(before.results);
  expect(after.words).toEqual({ ...before.words, ...after.words, ...withoutNames(before.words, TYPED) });
  expect(after.loads).toEqual(
    before.loads.map((load, index) => ({
      ...load,
      words: {
        ...load.words,
        load_remark: after.loads[index].words.load_remark,
        time_remark: after.loads[index].words.time_remark,
      },
    })),
  );
});
