/** Every text of the data sheet stands in the tables of each language, and no table has a text that the sheet lacks. */
import { blankSheet, wettingSeries } from "../../src/datasheet";
import { FIELDS } from "../../src/specification/fields";
import { ALL_PARTS } from "../../src/specification/parts";
import { isSpill, isTable } from "../../src/specification/field";
import { LANGUAGE_NAMES, SHEET_LANGUAGES, languageOf } from "../../src/specification/text/language";
import { everyWord, STATES, TYPED_WORDS, wordIn } from "../../src/specification/list-words";
import { labelIn, textInFormula, wordsOf } from "../../src/specification/text/words";
import { CELLS } from "../../src/record/cells";
import { EQUIPMENT, liveState } from "../../src/record/register";
import { checkPlan } from "../../src/workbook/rules/plan-check";
import { LOADS } from "../../src/specification/readings";
import type { SheetPlan } from "../../src/workbook/port";

const english = blankSheet("SI");
const OTHERS = SHEET_LANGUAGES.filter((language) => language !== "en");

/** The texts between quotation marks in a formula. */
const textsOf = (formula: string): string[] => [...formula.matchAll(/"((?:[^"]|"")*)"/g)].map(([, text]) => text);
const textsIn = ({ cells }: SheetPlan): string[] => [...new Set(cells.flatMap(({ formula = "" }) => textsOf(formula)))];

/**
 * Texts of formulas that stay: arguments and answers of the worksheet functions, units, and the words of lists and states in
 * every language, which formulas compare.
 */
const COMPARED = [...english.cells.flatMap(({ choices = [] }) => choices), ...STATES, ...TYPED_WORDS];
const KEPT = new Set([
  ...COMPARED.flatMap(everyWord),
  ...["salt", "void_index", "e_100", "C_c", "stress", "e", "curve", "picked by hand", "remark", "mean", "loads"],
  ...["S0", "Sf", "low", "high", "ratio", "Cc", "Cr", "words", "meets the laboratory line", "de_e0", "class"],
  ...["strain_class", "e_in_situ", "e_final", "mv", "M", "cv", "from", "potential", "index", "pressure", "Together"],
  ...["start", "blank", "readings", "error", "English", "; ok~", "; ok~|~"],
]);
const MARKS = /^[^A-Za-z]*$/;

test("a sheet says its language by name; a sheet that does not is English", () => {
  for (const language of SHEET_LANGUAGES)
    expect(languageOf({ sheet_language: [[LANGUAGE_NAMES[language]]] })).toBe(language);
  expect([languageOf({}), languageOf({ sheet_language: [["Latin"]] })]).toEqual(["en", "en"]);
});

describe.each(OTHERS)("the sheet in %s", (language) => {
  const words = wordsOf(language);
  const plan = blankSheet("SI", { language });
  const has = (table: Readonly<Record<string, string>>, text: string): boolean =>
    [text, `  ${text}`, text.replace(/\d+$/, "{0}")].some((one) => Object.hasOwn(table, one));

  test("has a word for every title, heading, unit and label", () => {
    const said = english.cells.filter(({ kind, value }) => kind !== "input" && typeof value === "string");
    const lacking = said
      .map(({ value }) => String(value))
      .filter(
        (text) =>
          !MARKS.test(text) &&
          text !== LANGUAGE_NAMES.en &&
          !text.startsWith("Minutes since") &&
          !has(words.titles, text) &&
          !has(words.labels, text),
      );
    expect([...new Set(lacking)]).toEqual([]);
  });

  test("has a label for every name, on the sheet and away from it", () => {
    const labels = [
      ...ALL_PARTS.flatMap((part): string[] =>
        isTable(part) ? part.columns.map(({ label }) => label) : isSpill(part) ? [] : [part.label],
      ),
      ...FIELDS.filter(({ name }) => name !== "preconsolidation_spread").map(({ label }) => label),
      // A label that follows on another one stands among the parts above.
      ...CELLS.map(({ label }) => label).filter((label) => !label.includes(", ") && !label.startsWith("Precon")),
    ];
    expect([...new Set(labels.map((label) => label.trim()))].filter((label) => !has(words.labels, label))).toEqual([]);
    expect(labelIn(words, "Times of load 7")).not.toBe("Times of load 7");
  });

  test("tells the cells apart as English does", () => {
    const labels = [...new Set(CELLS.map(({ label }) => label))];
    const own = labels.map((label) => labelIn(words, label));
    expect(own.filter((label, index) => own.indexOf(label) !== index)).toEqual([]);
  });

  test("has a note for every note, and a word for every word of a list but names and units", () => {
    const notes = english.cells.flatMap(({ note }) => note ?? []);
    expect(notes.filter((note) => !has(words.notes, note))).toEqual([]);
    const units = new Set(
      ["length", "depth", "stress", "cv", "density", "mv", "conductivity"].flatMap((name) => {
        const { row, col } = english.names[`${name}_unit`];
        return english.cells.find((cell) => cell.row === row && cell.col === col)?.choices ?? [];
      }),
    );
    const names = ["Casagrande", "Pacheco Silva", "Janbu", "d0", "d90", "d100"];
    const listed = english.cells.flatMap(({ choices = [] }) => choices);
    const plain = listed.filter((choice) => !units.has(choice) && !names.includes(choice));
    const all = new Set([...plain, ...STATES, ...TYPED_WORDS]);
    expect([...all].filter((choice) => wordIn(language, choice) === choice)).toEqual([]);
  });

  test("has the words of its own language in every list and at its start", () => {
    const own = (word: unknown) => (typeof word === "string" ? wordIn(language, word) : word);
    const lists = ({ cells }: SheetPlan) =>
      cells.flatMap(({ choices, value }) => (choices ? [{ choices, value }] : []));
    expect(lists(plan)).toEqual(
      lists(english).map(({ choices, value }) => ({ choices: choices.map(own), value: own(value) })),
    );
  });

  test("shows no English text by a formula but words of functions and of lists", () => {
    const left = textsIn(english).filter((text) => textInFormula(words, text) === text);
    const same = new Set(Object.entries(words.formulas).flatMap(([from, to]) => (from === to ? [from] : [])));
    const SAME_LABEL = ["Ring, "];
    expect(
      left.filter((text) => !KEPT.has(text) && !same.has(text) && !MARKS.test(text) && !SAME_LABEL.includes(text)),
    ).toEqual([]);
  });

  test("changes no word that a formula compares or passes on", () => {
    expect([...KEPT].filter((text) => textInFormula(words, text) !== text)).toEqual([]);
  });

  test("has every text that a live register shows", () => {
    const compared = new Set(EQUIPMENT.flatMap(everyWord));
    const left = textsOf(liveState("Register", EQUIPMENT)).filter((text) => textInFormula(words, text) === text);
    expect(left.filter((text) => !MARKS.test(text) && !compared.has(text))).toEqual([]);
  });

  test("has no text that the sheet lacks", () => {
    const texts = textsIn(english);
    const ofSeries = textsIn(wettingSeries("SI"));
    const ofRegister = textsOf(liveState("Register", EQUIPMENT));
    const unused = Object.keys(words.formulas).filter(
      (text) => !text.includes("{0}") && ![texts, ofSeries, ofRegister].some((all) => all.includes(text)),
    );
    const notes = new Set(english.cells.flatMap(({ note }) => note ?? []));
    expect([...unused, ...Object.keys(words.notes).filter((note) => !notes.has(note))]).toEqual([]);
  });

  test("differs from the English sheet in words alone", () => {
    const shape = ({ rows, cols, names, merges, pages, columnWidths, rowHeights, open, cells }: SheetPlan) => ({
      ...{ rows, cols, names, merges, pages, columnWidths, rowHeights, open },
      cells: cells.map(({ row, col, kind, format, align }) => ({ row, col, kind, format, align })),
      inputs: cells.flatMap(({ kind, value, choices }) => (kind === "input" && !choices ? [value] : [])),
    });
    expect(shape(plan)).toEqual(shape(english));
    const rules = ({ entries = [] }: SheetPlan) => entries.map((rule) => ({ ...rule, message: undefined }));
    expect(rules(plan)).toEqual(rules(english));
  });

  test("keeps Excel's limits: 255 characters of a text in a formula, 225 of a message, 8192 of a formula", () => {
    expect(textsIn(plan).filter((text) => text.length > 255)).toEqual([]);
    expect((plan.entries ?? []).map(({ message }) => message).filter(({ length }) => length > 225)).toEqual([]);
    expect(() => checkPlan(plan)).not.toThrow();
    expect(() => checkPlan(blankSheet("US", { language, loads: 2 * LOADS }))).not.toThrow();
  });

  test("titles the messages of the host in 32 characters at most", () => {
    const { notNumber, notDate, notListed } = words.host;
    expect([notNumber, notDate, notListed].filter(({ length }) => length > 32)).toEqual([]);
    expect(plan.hostWords).toBe(words.host);
  });

  test("says every entry in its own language", () => {
    const messages = ({ entries = [] }: SheetPlan) => entries.map(({ message }) => message);
    expect(messages(plan).filter((message, index) => message === messages(english)[index])).toEqual([]);
  });
});
