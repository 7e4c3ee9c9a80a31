/** Every word of a list and of a state has one word in each language, and comes back from it as the same English word. */
import { blankSheet, demoSheet } from "../../src/datasheet";
import { registerSheet } from "../../src/datasheet/register-sheet";
import { choicesOf, englishWord, languageOfWord, textOf } from "../../src/record/cells";
import { REGISTER_KINDS } from "../../src/record/register";
import { unitNamed, unitsOf } from "../../src/reduction/units";
import { FIELDS_APART_FROM_READINGS } from "../../src/specification/fields";
import {
  ASKING_WORDS,
  everyWord,
  hasWord,
  haveWord,
  isWord,
  OTHER_LANGUAGES,
  STATES,
  TYPED_WORDS,
  wordIn,
} from "../../src/specification/list-words";
import { choices as german } from "../../src/specification/text/de/choices";
import { SHEET_LANGUAGES } from "../../src/specification/text/language";
import fc from "../properties";

/** Every list of the data sheet by its cell, the kinds of a register, and the words without a list. */
const LISTS: ReadonlyMap<string, readonly string[]> = new Map([
  ...FIELDS_APART_FROM_READINGS.flatMap(({ name, choices }) => (choices ? [[name, choices] as const] : [])),
  ["register_kind", REGISTER_KINDS],
  ["states", STATES],
  ["typed words", TYPED_WORDS],
  ["words by which a formula asks", ASKING_WORDS],
]);
const ALL = [...new Set([...LISTS.values()].flat())];
const small = (words: readonly string[]): string[] => words.map((word) => word.toLowerCase());

test("every language of a sheet but English has its words", () => {
  expect(["en", ...OTHER_LANGUAGES].sort()).toEqual([...SHEET_LANGUAGES].sort());
});

test("a unit of time is read by its word in each language, and by its English word", () => {
  for (const quantity of ["cv", "conductivity"] as const)
    for (const unit of unitsOf(quantity))
      expect(everyWord(unit).map((word) => unitNamed(word, unitsOf(quantity)))).toEqual(
        everyWord(unit).map(() => unit),
      );
  expect(everyWord("m2/yr")).toEqual(["m2/yr", "m2/a"]);
  expect(wordIn("de", "ft2/day")).toBe("ft2/d");
  expect(["m2/a", "M/A", "ft2/d", "m2/yr", "kPa"].map(englishWord)).toEqual([
    "m2/yr",
    "m/yr",
    "ft2/day",
    "m2/yr",
    "kPa",
  ]);
  expect(["m2/a", "m2/yr"].map(languageOfWord)).toEqual(["de", undefined]);
});

describe.each(OTHER_LANGUAGES)("the words in %s", (language) => {
  test.each([...LISTS])("of %s differ from one another, in any case", (_, words) => {
    const own = small(words.map((word) => wordIn(language, word)));
    expect(new Set(own).size).toBe(words.length);
  });

  test("are different for different English words, and none is another English word", () => {
    const own = small(ALL.map((word) => wordIn(language, word)));
    expect(new Set(own).size).toBe(ALL.length);
    const english = small(ALL);
    expect(ALL.filter((word, index) => english.includes(own[index]) && own[index] !== word.toLowerCase())).toEqual([]);
  });

  test("lead back to the English words in any case and with spaces around them", () => {
    const words = ALL.filter((word) => !REGISTER_KINDS.some((kind) => kind === word));
    fc.assert(
      fc.property(
        fc.constantFrom(...words),
        fc.constantFrom(
          (word: string) => word,
          (word: string) => word.toUpperCase(),
          (word: string) => ` ${word} `,
        ),
        (word, typed) =>
          englishWord(typed(wordIn(language, word)))
            .trim()
            .toLowerCase() === word.toLowerCase(),
      ),
    );
  });

  test("have no comma, which would part them, and no sign that parts the lines of cells", () => {
    expect(
      ALL.map((word) => wordIn(language, word)).filter((word) => /[,|;\n"<>]/.test(word) && !ALL.includes(word)),
    ).toEqual([]);
  });
});

test("the table has no word that no list has", () => {
  expect(Object.keys(german).filter((word) => !ALL.includes(word))).toEqual([]);
});

test("only cells with a list or a state are read so", () => {
  expect(textOf("project", "Feldkurve")).toBe("Feldkurve");
  expect(textOf("design_curve", "Feldkurve")).toBe("field");
  expect(textOf("load_branch", "entlastet")).toBe("unloading");
  expect(textOf("pick_load", "Kurve")).toBe("curve");
  expect(choicesOf("drainage")).toEqual(["double", "single"]);
  expect(choicesOf("stress_unit")).toEqual([]);
});

test("formulas take a word of any language", () => {
  expect(isWord("{a}", "fall")).toBe('OR({a}="fall",{a}="fällt")');
  expect(isWord("{a}", "d100")).toBe('{a}="d100"');
  expect(haveWord("{a}", "inundated", "wetting")).toBe(
    '({a}="inundated")+({a}="geflutet")+({a}="wetting")+({a}="Wässern")',
  );
  expect(hasWord("{a}", "curve")).toBe('IFERROR(MATCH("curve",{a},0),0)+IFERROR(MATCH("Kurve",{a},0),0)>0');
  // A register counts the rows of both words, and Excel compares without regard to case: "Ring" would be counted twice.
  expect(everyWord("ring")).toEqual(["ring"]);
});

test("no formula of a sheet compares a cell with the word of one language alone", () => {
  const plans = SHEET_LANGUAGES.flatMap((language) => [blankSheet("SI", { language }), registerSheet("SI", language)]);
  const compared = (formula: string) => [...formula.matchAll(/(?:=|<>)"([^"]+)"/g)].map(([, word]) => word);
  const forms = ALL.map(everyWord).filter(({ length }) => length > 1);
  const faults = plans.flatMap(({ cells }) =>
    cells.flatMap(({ formula = "" }) => {
      const words = compared(formula);
      return forms
        .filter((form) => form.some((word) => words.includes(word)) && !form.every((word) => words.includes(word)))
        .map(([word]) => `${word}: ${formula.slice(0, 200)}`);
    }),
  );
  expect([...new Set(faults)]).toEqual([]);
});

test("no formula of a sheet has a word that still has to be put there", () => {
  const plans = SHEET_LANGUAGES.flatMap((language) => [
    blankSheet("SI", { language }),
    demoSheet("US", language),
    registerSheet("SI", language),
  ]);
  const left = plans.flatMap(({ cells }) => cells.filter(({ formula = "" }) => /"<[^"0-9>][^"]*>"/.test(formula)));
  expect(left).toEqual([]);
});
